using BendMath.Numerics.Integrals;

namespace BendMath.Numerics.Geometry;

/// <summary>∫dA, ∫y, ∫z, ∫y², ∫z² and ∫yz over a region, summed edge by edge about one origin.</summary>
internal struct RegionSums
{
    /// <summary>Below this sweep sector and triangle nearly cancel, and the segment is integrated on its own.</summary>
    private const double Shallow = 0.3;

    public double Area;
    public double Y;
    public double Z;
    public double YY;
    public double ZZ;
    public double YZ;

    public void Add(in Edge edge, double originY, double originZ)
    {
        AddTriangle(edge.Y1 - originY, edge.Z1 - originZ, edge.Y2 - originY, edge.Z2 - originZ);
        if (!edge.IsArc)
        {
            return;
        }

        if (Math.Abs(edge.Sweep) < Shallow)
        {
            AddShallowSegment(edge, originY, originZ);
        }
        else
        {
            AddSegment(edge, edge.CenterY - originY, edge.CenterZ - originZ);
        }
    }

    /// <summary>The triangle from the origin to the chord.</summary>
    private void AddTriangle(double y1, double z1, double y2, double z2)
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
    /// The circular segment: the sector less the triangle from the center. With u along z and v along y from the center, sweep ω and end
    /// points 1 and 2 the sector has A = r²ω/2, ∫u = r²(v₂ − v₁)/3, ∫v = r²(u₁ − u₂)/3, ∫u², ∫v² = r⁴ω/8 ± r²(u₂v₂ − u₁v₁)/8, ∫uv = r²(v₂²
    /// − v₁²)/8.
    /// </summary>
    private void AddSegment(in Edge edge, double centerY, double centerZ)
    {
        double v1 = edge.Y1 - edge.CenterY;
        double u1 = edge.Z1 - edge.CenterZ;
        double v2 = edge.Y2 - edge.CenterY;
        double u2 = edge.Z2 - edge.CenterZ;
        double r2 = edge.Radius * edge.Radius;
        double turn = r2 * r2 * edge.Sweep / 8;
        double skew = r2 * (u2 * v2 - u1 * v1) / 8;
        RegionSums triangle = default;
        triangle.AddTriangle(v1, u1, v2, u2);
        double area = r2 * edge.Sweep / 2 - triangle.Area;
        double y = r2 * (u1 - u2) / 3 - triangle.Y;
        double z = r2 * (v2 - v1) / 3 - triangle.Z;
        Area += area;
        Y += area * centerY + y;
        Z += area * centerZ + z;
        YY += area * centerY * centerY + 2 * centerY * y + turn - skew - triangle.YY;
        ZZ += area * centerZ * centerZ + 2 * centerZ * z + turn + skew - triangle.ZZ;
        YZ += area * centerY * centerZ + centerY * z + centerZ * y + r2 * (v2 * v2 - v1 * v1) / 8 - triangle.YZ;
    }

    /// <summary>
    /// The segment in axes along (t) and across (s) its chord: t = r·sin θ, s = r(cos θ − cos α) = 2r·sin ½(α − θ)·sin ½(α + θ), α half the
    /// sweep, by a Gauss rule that leaves a remainder below rounding.
    /// </summary>
    private void AddShallowSegment(in Edge edge, double originY, double originZ)
    {
        double half = Math.Abs(edge.Sweep) / 2;
        double area = 0, s1 = 0, s2 = 0, t2 = 0;
        GaussRule rule = GaussRule.Twelve;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double angle = half * (1 + rule.Nodes[i]) / 2;
            double s = 2 * edge.Radius * Math.Sin((half - angle) / 2) * Math.Sin((half + angle) / 2);
            double t = edge.Radius * Math.Sin(angle);
            double strip = half * rule.Weights[i] * edge.Radius * Math.Cos(angle) * s;
            area += strip;
            s1 += strip * s / 2;
            s2 += strip * s * s / 3;
            t2 += strip * t * t;
        }

        double chordY = edge.Y2 - edge.Y1;
        double chordZ = edge.Z2 - edge.Z1;
        double chord = Math.Sqrt(chordY * chordY + chordZ * chordZ);
        int sign = edge.Sweep > 0 ? 1 : -1;
        double alongY = chordY / chord;
        double alongZ = chordZ / chord;
        double acrossY = -sign * alongZ;
        double acrossZ = sign * alongY;
        double y = (edge.Y1 + edge.Y2) / 2 - originY;
        double z = (edge.Z1 + edge.Z2) / 2 - originZ;
        Area += sign * area;
        Y += sign * (area * y + s1 * acrossY);
        Z += sign * (area * z + s1 * acrossZ);
        YY += sign * (area * y * y + 2 * y * s1 * acrossY + s2 * acrossY * acrossY + t2 * alongY * alongY);
        ZZ += sign * (area * z * z + 2 * z * s1 * acrossZ + s2 * acrossZ * acrossZ + t2 * alongZ * alongZ);
        YZ += sign * (area * y * z + s1 * (y * acrossZ + z * acrossY) + s2 * acrossY * acrossZ + t2 * alongY * alongZ);
    }
}
