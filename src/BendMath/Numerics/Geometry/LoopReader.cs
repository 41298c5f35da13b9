namespace BendMath.Numerics.Geometry;

/// <summary>
/// Takes loops as somebody drew them and makes of them the loops of a section: ends joined, no point along a straight line, the outer loop
/// first and counter-clockwise, holes clockwise; or says what is wrong with them. All tolerances are shares of the larger extent.
/// </summary>
internal sealed class LoopReader
{
    /// <summary>Ends this close are joined.</summary>
    public const double Closeness = 1e-6;

    /// <summary>Edges this close touch, and shorter ones have no length.</summary>
    public const double Touching = 1e-9;

    /// <summary>A point this close to the line between its neighbors lies on it, and a smaller gap is rounding.</summary>
    private const double Rounding = 1e-12;

    private readonly Edge[][] _loops;

    private readonly Joint[][] _joints;

    private readonly double _extent;

    private readonly List<LoopRepair> _repairs = [];

    private LoopReader(Edge[][] drawn)
    {
        _loops = [.. drawn.Select(loop => (Edge[])loop.Clone())];
        _joints = [.. drawn.Select(loop => new Joint[loop.Length])];
        _extent = ExtentOf(drawn);
    }

    public static (Edge[][] Loops, IReadOnlyList<LoopRepair> Repairs, LoopFault? Fault) Read(Edge[][] drawn)
    {
        LoopReader reader = new(drawn);
        int outer = 0;
        LoopFault? fault =
            reader.Degenerate()
                ?? reader.Join() ?? LoopContacts.First(reader._loops, reader._joints, Touching * reader._extent) ?? reader.Nest(out outer);
        return (fault is null ? reader.Repaired(outer) : [], reader._repairs, fault);
    }

    private static double ExtentOf(Edge[][] loops)
    {
        (double lowY, double highY, double lowZ, double highZ) = Edge.Bounds([.. loops.SelectMany(loop => loop)]);
        return Math.Max(highY - lowY, highZ - lowZ);
    }

    private LoopFault? Degenerate()
    {
        for (int i = 0; i < _loops.Length; i++)
        {
            for (int j = 0; j < _loops[i].Length; j++)
            {
                Edge edge = _loops[i][j];
                if (edge.Length <= Touching * _extent)
                {
                    return new(LoopFaultKind.ZeroLength, i, j, i, j, edge.Y1, edge.Z1, edge.Length);
                }

                if (edge.IsCircle && _loops[i].Length > 1)
                {
                    return new(LoopFaultKind.CircleAmongEdges, i, j, i, j, edge.Y1, edge.Z1, 0);
                }
            }
        }

        return null;
    }

    /// <summary>
    /// Makes neighbors share their joint to the last bit: the end of a line where there is one, which is as it was drawn.
    /// </summary>
    private LoopFault? Join()
    {
        for (int i = 0; i < _loops.Length; i++)
        {
            Edge[] loop = _loops[i];
            LoopRepair joined = new(LoopRepairKind.Joined, i, 0, 0, 0, 0);
            for (int j = 0; j < loop.Length; j++)
            {
                int next = (j + 1) % loop.Length;
                Edge a = loop[j];
                Edge b = loop[next];
                double gap = Math.Sqrt((a.Y2 - b.Y1) * (a.Y2 - b.Y1) + (a.Z2 - b.Z1) * (a.Z2 - b.Z1));
                if (gap > Closeness * _extent)
                {
                    return new(LoopFaultKind.Open, i, j, i, next, a.Y2, a.Z2, gap);
                }

                (double y, double z) = a.IsArc ? (b.Y1, b.Z1) : (a.Y2, a.Z2);
                _joints[i][j] = new(y, z, gap);
                loop[j] = a.Between(a.Y1, a.Z1, y, z);
                loop[next] = loop[next].Between(y, z, loop[next].Y2, loop[next].Z2);
                if (gap > Rounding * _extent)
                {
                    joined =
                        new(LoopRepairKind.Joined, i, joined.Count + 1, joined.Count == 0 ? y : joined.Y, joined.Count == 0 ? z : joined.Z,
                            Math.Max(gap, joined.Size));
                }
            }

            if (joined.Count > 0)
            {
                _repairs.Add(joined);
            }
        }

        return null;
    }

    /// <summary>As no loops touch, one point of a loop tells where all of it lies.</summary>
    private LoopFault? Nest(out int outer)
    {
        double[] sizes = [.. _loops.Select(loop => Math.Abs(AreaMoments.SignedArea(loop)))];
        outer = Array.IndexOf(sizes, sizes.Max());
        for (int i = 0; i < _loops.Length; i++)
        {
            Edge first = _loops[i][0];
            if (i != outer && !IsInside(_loops[outer], first.Y1, first.Z1))
            {
                return new(LoopFaultKind.OutsideOuter, i, 0, outer, 0, first.Y1, first.Z1, 0);
            }

            for (int j = 0; j < _loops.Length; j++)
            {
                if (i != outer && j != outer && i != j && IsInside(_loops[j], first.Y1, first.Z1))
                {
                    return new(LoopFaultKind.InsideHole, i, 0, j, 0, first.Y1, first.Z1, 0);
                }
            }
        }

        return null;
    }

    private static bool IsInside(Edge[] loop, double y, double z) => Math.Abs(loop.Sum(edge => edge.AngleSeenFrom(y, z))) > Math.PI;

    private Edge[][] Repaired(int outer)
    {
        List<Edge[]> repaired = [];
        for (int i = 0; i < _loops.Length; i++)
        {
            Edge[] loop = Straightened(i);
            if (AreaMoments.SignedArea(loop) > 0 != (i == outer))
            {
                _repairs.Add(new(LoopRepairKind.Reversed, i, loop.Length, loop[0].Y1, loop[0].Z1, 0));
                loop = [.. Enumerable.Reverse(loop).Select(edge => edge.Reversed())];
            }

            repaired.Insert(i == outer ? 0 : repaired.Count, FromLowest(loop));
        }

        return [.. repaired];
    }

    /// <summary>Drops the points that lie on the straight line between their neighbors.</summary>
    private Edge[] Straightened(int index)
    {
        Edge[] loop = _loops[index];
        List<Edge> kept = [];
        LoopRepair repair = new(LoopRepairKind.Straightened, index, 0, 0, 0, 0);
        int first = Array.FindIndex(loop, 0, edge => edge.IsArc);
        for (int j = 0; first < 0 && j < loop.Length; j++)
        {
            first = Continues(loop[(j + loop.Length - 1) % loop.Length], loop[j]) ? -1 : j;
        }

        for (int j = 0; j < loop.Length; j++)
        {
            Edge edge = loop[(first + j) % loop.Length];
            if (kept.Count > 0 && Continues(kept[kept.Count - 1], edge))
            {
                repair =
                    new(repair.Kind, index, repair.Count + 1, repair.Count == 0 ? edge.Y1 : repair.Y,
                        repair.Count == 0 ? edge.Z1 : repair.Z, 0);
                edge = Edge.Line(kept[kept.Count - 1].Y1, kept[kept.Count - 1].Z1, edge.Y2, edge.Z2);
                kept.RemoveAt(kept.Count - 1);
            }

            kept.Add(edge);
        }

        if (repair.Count > 0)
        {
            _repairs.Add(repair);
        }

        return [.. kept];
    }

    private bool Continues(in Edge a, in Edge b) => !a.IsArc && !b.IsArc
        && Edge.Line(a.Y1, a.Z1, b.Y2, b.Z2).DistanceTo(b.Y1, b.Z1) <= Rounding * _extent;

    /// <summary>
    /// Starts at the leftmost of the lowest corners and takes arcs from their ends, so that no figure depends on how a loop was drawn.
    /// </summary>
    private static Edge[] FromLowest(Edge[] loop)
    {
        int start = 0;
        for (int j = 1; j < loop.Length; j++)
        {
            start = (loop[j].Y1, loop[j].Z1).CompareTo((loop[start].Y1, loop[start].Z1)) < 0 ? j : start;
        }

        return [.. loop.Skip(start).Concat(loop.Take(start)).Select(edge => edge.FromEnds())];
    }
}
