namespace BendMath.Numerics.Geometry;

/// <summary>
/// Area, centroid, second moments and extents of a region bounded by lines and circular arcs, exact: each edge contributes its chord
/// (polygon formula) plus, for an arc, the circular segment between chord and arc. The outer loop comes first and runs
/// counter-clockwise, holes clockwise. Lengths in meters; second moments about the centroid.
/// </summary>
internal readonly record struct AreaMoments
{
    private AreaMoments(in RegionSums sums, double originY, double originZ, double perimeter, double outerPerimeter)
    {
        double dy = sums.Y / sums.Area;
        double dz = sums.Z / sums.Area;
        Area = sums.Area;
        CentroidY = originY + dy;
        CentroidZ = originZ + dz;
        SecondY = sums.YY - sums.Area * dy * dy;
        SecondZ = sums.ZZ - sums.Area * dz * dz;
        Product = sums.YZ - sums.Area * dy * dz;
        Perimeter = perimeter;
        OuterPerimeter = outerPerimeter;
    }

    public double Area { get; }

    public double CentroidY { get; }

    public double CentroidZ { get; }

    /// <summary>∫(y − ȳ)² dA.</summary>
    public double SecondY { get; }

    /// <summary>∫(z − z̄)² dA.</summary>
    public double SecondZ { get; }

    /// <summary>∫(y − ȳ)(z − z̄) dA.</summary>
    public double Product { get; }

    /// <summary>Length of all loops, holes included.</summary>
    public double Perimeter { get; }

    /// <summary>Length of the outer loop.</summary>
    public double OuterPerimeter { get; }

    public static AreaMoments Of(Edge[][] loops)
    {
        // A corner lies close enough to the centroid, seen beside the extents, that the parallel-axis term costs no more than a digit.
        double y = loops[0][0].Y1;
        double z = loops[0][0].Z1;
        double perimeter = 0;
        double outer = 0;
        RegionSums sums = default;
        foreach (Edge[] loop in loops)
        {
            foreach (ref readonly Edge edge in loop.AsSpan())
            {
                perimeter += edge.Length;
                sums.Add(edge, y, z);
            }

            outer = outer == 0 ? perimeter : outer;
        }

        return new(sums, y, z, perimeter, outer);
    }

    /// <summary>Area inside one loop, positive when it runs counter-clockwise.</summary>
    public static double SignedArea(Edge[] loop)
    {
        RegionSums sums = default;
        foreach (ref readonly Edge edge in loop.AsSpan())
        {
            sums.Add(edge, loop[0].Y1, loop[0].Z1);
        }

        return sums.Area;
    }
}
