using BendMath.Sections.Outlines;
using BendMath.Tests.Sections;
using FsCheck;
using FsCheck.Fluent;

namespace BendMath.Tests.Properties;

/// <summary>
/// A star-shaped outline around the origin, in millimeters: corners at given distances and directions, each rounded by a tangent arc that
/// takes the given share of the shorter neighboring side. Every side keeps a straight part around its middle. No point lies nearer to the
/// origin than 10 mm.
/// </summary>
internal sealed record Star((double Distance, double Direction, double Share)[] Corners)
{
    public static Gen<Star> Any { get; } =
        from count in Gen.Choose(5, 9)
        from distances in Gen.Choose(200, 600).ArrayOf(count)
        from places in Gen.Choose(300, 700).ArrayOf(count)
        from shares in Gen.Elements(0, 100, 200, 300, 400).ArrayOf(count)
        select new Star(
            [.. Enumerable.Range(0, count).Select(i => (distances[i] / 10.0, 2 * Math.PI * (i + places[i] / 1000.0) / count, shares[i] / 1000.0))]);

    public static Gen<double> Angles { get; } = Gen.Choose(-180_000, 180_000).Select(angle => angle / 1000.0);

    public OutlineLoop Loop(Func<(double X, double Y), (double X, double Y)>? move = null, bool mirrored = false) =>
        new(Edges(move ?? (point => point), mirrored));

    /// <summary>The part from the middle of one side to the middle of another and back over the origin.</summary>
    public OutlineLoop Part(int from, int to)
    {
        OutlineEdge[] edges = Edges(point => point, mirrored: false);
        int count = Corners.Length;
        List<OutlineEdge> part = [];
        (double X, double Y) start = Middle(from);
        (double X, double Y) end = Middle(to);
        List<(int Side, OutlineEdge Edge)> numbered = [];
        int side = -1;
        foreach (OutlineEdge edge in edges)
        {
            side += edge.IsArc ? 0 : 1;
            numbered.Add((side, edge));
        }

        bool inside = false;
        foreach ((int number, OutlineEdge edge) in numbered.Concat(numbered))
        {
            bool line = !edge.IsArc;
            if (inside && line && number == to % count)
            {
                part.Add(OutlineEdge.Line(edge.Start, Drawn.At(end.X, end.Y)));
                break;
            }

            if (inside)
            {
                part.Add(edge);
            }
            else if (line && number == from)
            {
                inside = true;
                part.Add(OutlineEdge.Line(Drawn.At(start.X, start.Y), edge.End));
            }
        }

        part.Add(Drawn.Line(end.X, end.Y, 0, 0));
        part.Add(Drawn.Line(0, 0, start.X, start.Y));
        return new(part);
    }

    public override string ToString() =>
        string.Join("; ", Corners.Select(c => FormattableString.Invariant($"{c.Distance} mm at {c.Direction:R}, share {c.Share}")));

    private (double X, double Y) Point(int i)
    {
        (double distance, double direction, _) = Corners[(i + Corners.Length) % Corners.Length];
        return (distance * Math.Cos(direction), distance * Math.Sin(direction));
    }

    private (double X, double Y) Middle(int side)
    {
        ((double x1, double y1), (double x2, double y2)) = (Point(side), Point(side + 1));
        return ((x1 + x2) / 2, (y1 + y2) / 2);
    }

    /// <summary>Side i, from corner i to the next, then the arc of that corner.</summary>
    private OutlineEdge[] Edges(Func<(double X, double Y), (double X, double Y)> move, bool mirrored)
    {
        int count = Corners.Length;
        Rounding[] rounded = [.. Enumerable.Range(0, count).Select(i => Round(i))];
        List<OutlineEdge> edges = [];
        for (int i = 0; i < count; i++)
        {
            Rounding next = rounded[(i + 1) % count];
            edges.Add(OutlineEdge.Line(At(rounded[i].Exit), At(next.Entry)));
            if (next.Entry != next.Exit)
            {
                edges.Add(OutlineEdge.Arc(At(next.Entry), At(next.Exit), At(next.Center), next.TurnsLeft != mirrored));
            }
        }

        return [.. edges];

        OutlinePoint At((double X, double Y) point)
        {
            (double x, double y) = move(mirrored ? (-point.X, point.Y) : point);
            return Drawn.At(x, y);
        }
    }

    private Rounding Round(int i)
    {
        (double x, double y) = Point(i);
        (double ax, double ay, double a) = Toward(i - 1);
        (double bx, double by, double b) = Toward(i + 1);
        double reach = Corners[i].Share * Math.Min(a, b);
        double cosine = Math.Max(-1, Math.Min(1, ax * bx + ay * by));
        double half = Math.Acos(cosine) / 2;
        bool straight = half > Math.PI / 2 - 1e-3;
        if (reach == 0 || straight)
        {
            return new((x, y), (x, y), (x, y), true);
        }

        double toCenter = reach / Math.Cos(half);
        double length = Math.Sqrt((ax + bx) * (ax + bx) + (ay + by) * (ay + by));
        return new(
            (x + reach * ax, y + reach * ay),
            (x + reach * bx, y + reach * by),
            (x + toCenter * (ax + bx) / length, y + toCenter * (ay + by) / length),
            bx * ay - by * ax > 0);

        (double X, double Y, double Length) Toward(int other)
        {
            (double ox, double oy) = Point(other);
            double distance = Math.Sqrt((ox - x) * (ox - x) + (oy - y) * (oy - y));
            return ((ox - x) / distance, (oy - y) / distance, distance);
        }
    }

    private sealed record Rounding((double X, double Y) Entry, (double X, double Y) Exit, (double X, double Y) Center, bool TurnsLeft);
}
