namespace BendMath.Numerics;

/// <summary>
/// Area, centroid and second moments of a region bounded by lines and circular arcs, exact: each edge contributes its chord
/// (polygon formula) plus, for an arc, the circular segment between chord and arc. Outer loops run counter-clockwise, holes clockwise.
/// Lengths in metres; second moments about the centroid.
/// </summary>
internal readonly struct AreaMoments
{
    private AreaMoments(double area, double centroidY, double centroidZ, double secondY, double secondZ, double product, double perimeter)
    {
        Area = area;
        CentroidY = centroidY;
        CentroidZ = centroidZ;
        SecondY = secondY;
        SecondZ = secondZ;
        Product = product;
        Perimeter = perimeter;
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

    public static AreaMoments Of(IReadOnlyList<Edge[]> loops)
    {
        // First about a vertex, which finds the centroid; then about the centroid, so that no large parallel-axis term cancels.
        Edge first = loops[0][0];
        Sums rough = Sum(loops, first.Y1, first.Z1);
        double y = first.Y1 + rough.Y / rough.Area;
        double z = first.Z1 + rough.Z / rough.Area;
        Sums sums = Sum(loops, y, z);
        double dy = sums.Y / sums.Area;
        double dz = sums.Z / sums.Area;
        double perimeter = 0;
        foreach (Edge[] loop in loops)
        {
            foreach (Edge edge in loop)
            {
                perimeter += edge.Length;
            }
        }

        return new(
            sums.Area, y + dy, z + dz, sums.YY - sums.Area * dy * dy, sums.ZZ - sums.Area * dz * dz, sums.YZ - sums.Area * dy * dz, perimeter);
    }

    private static Sums Sum(IReadOnlyList<Edge[]> loops, double originY, double originZ)
    {
        Sums sums = default;
        foreach (Edge[] loop in loops)
        {
            foreach (Edge edge in loop)
            {
                sums.AddTriangle(edge.Y1 - originY, edge.Z1 - originZ, edge.Y2 - originY, edge.Z2 - originZ);
                if (edge.IsArc)
                {
                    sums.AddSegment(edge.CenterY - originY, edge.CenterZ - originZ, edge.Radius, edge.StartAngle + edge.Sweep / 2, edge.Sweep / 2);
                }
            }
        }

        return sums;
    }

    private struct Sums
    {
        public double Area;
        public double Y;
        public double Z;
        public double YY;
        public double ZZ;
        public double YZ;

        /// <summary>The triangle from the origin to the chord.</summary>
        public void AddTriangle(double y1, double z1, double y2, double z2)
        {
            double twice = z1 * y2 - z2 * y1;
            Area += twice / 2;
            Y += twice * (y1 + y2) / 6;
            Z += twice * (z1 + z2) / 6;
            YY += twice * (y1 * y1 + y1 * y2 + y2 * y2) / 12;
            ZZ += twice * (z1 * z1 + z1 * z2 + z2 * z2) / 12;
            YZ += twice * (2 * y1 * z1 + y1 * z2 + y2 * z1 + 2 * y2 * z2) / 24;
        }

        /// <summary>
        /// The circular segment of half angle α (signed like the sweep) about the direction φ. With u along φ and v across, from the center:
        /// A = r²(α − sin α cos α), ∫u dA = ⅔r³sin³α, ∫u² dA = r⁴(α − ¼ sin 4α)/4, ∫v² dA = r⁴(α − ⅔ sin 2α + ¹⁄₁₂ sin 4α)/4.
        /// </summary>
        public void AddSegment(double centerY, double centerZ, double r, double phi, double alpha)
        {
            double sinAlpha = Math.Sin(alpha);
            double sin2 = Math.Sin(2 * alpha);
            double sin4 = Math.Sin(4 * alpha);
            double area = r * r * (alpha - sin2 / 2);
            double u = 2.0 / 3 * r * r * r * sinAlpha * sinAlpha * sinAlpha;
            double r4 = r * r * r * r / 4;
            double uu = r4 * (alpha - sin4 / 4);
            double vv = r4 * (alpha - 2.0 / 3 * sin2 + sin4 / 12);
            double sine = Math.Sin(phi);
            double cosine = Math.Cos(phi);
            double y = u * sine;
            double z = u * cosine;
            Area += area;
            Y += area * centerY + y;
            Z += area * centerZ + z;
            YY += area * centerY * centerY + 2 * centerY * y + uu * sine * sine + vv * cosine * cosine;
            ZZ += area * centerZ * centerZ + 2 * centerZ * z + uu * cosine * cosine + vv * sine * sine;
            YZ += area * centerY * centerZ + centerY * z + centerZ * y + (uu - vv) * sine * cosine;
        }
    }
}
