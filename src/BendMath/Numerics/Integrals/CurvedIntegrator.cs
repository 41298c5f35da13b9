using BendMath.Numerics.Geometry;

namespace BendMath.Numerics.Integrals;

/// <summary>Integrals over a part of a curved section, with r the radius of a fiber and d = y − ȳ.</summary>
internal struct CurvedSums
{
    /// <summary>∫dA/r.</summary>
    public double Inverse;

    /// <summary>∫d/r dA.</summary>
    public double First;

    /// <summary>∫d²/r dA.</summary>
    public double Second;

    public void Add(double weight, double d, double r)
    {
        double part = weight / r;
        Inverse += part;
        First += part * d;
        Second += part * d * d;
    }
}

/// <summary>
/// Integrates dA/r over a section bent to an inside radius R, r = R + y. A polynomial piece is cut wherever r has doubled, so that the pole
/// at r = 0 lies at least three half-widths from its middle and twelve Gauss points leave (3 + √8)⁻²⁴ ≈ 1e−18. An arc is integrated over
/// its angle; there the pole lies at φ = −π/2 ± i·arcosh((R + y_c)/radius), or at a real angle before the arc when the circle reaches
/// beyond the center of the bend, and no piece is longer than its distance from the pole.
/// </summary>
internal static class CurvedIntegrator
{
    private const double LongestArc = 1;

    /// <summary>The part of the section between the inside face and a level.</summary>
    public static CurvedSums Below(BandProfile profile, double insideRadius, double level)
    {
        CurvedSums sums = default;
        foreach (Band band in profile.Bands)
        {
            double top = Math.Min(band.Top, level);
            if (top <= band.Bottom)
            {
                break;
            }

            AddPolynomial(band, profile.Moments.CentroidY, insideRadius, top, ref sums);
            for (int i = band.FirstArc; i < band.EndArc; i++)
            {
                AddArc(profile.Arcs[i], profile.Moments.CentroidY, insideRadius, band.Bottom, top, ref sums);
            }
        }

        return sums;
    }

    private static void AddPolynomial(in Band band, double centroid, double insideRadius, double top, ref CurvedSums sums)
    {
        GaussRule rule = GaussRule.Twelve;
        double to = band.Bottom;
        while (to < top)
        {
            double from = to;
            to = Math.Min(top, insideRadius + 2 * from);
            double half = (to - from) / 2;
            double middle = (to + from) / 2;
            for (int i = 0; i < rule.Nodes.Length; i++)
            {
                double y = middle + half * rule.Nodes[i];
                sums.Add(half * rule.Weights[i] * (band.Width0 + (y - band.Bottom) * band.Width1), y - centroid, insideRadius + y);
            }
        }
    }

    private static void AddArc(in ArcTerm arc, double centroid, double insideRadius, double bottom, double top, ref CurvedSums sums)
    {
        GaussRule rule = GaussRule.Twelve;
        double ratio = (insideRadius + arc.CenterY) / arc.Radius;
        double pole = ratio < 1 ? -Math.Asin(ratio) : -Math.PI / 2;
        double off = ratio > 1 ? Math.Log(ratio + Math.Sqrt((ratio - 1) * (ratio + 1))) : 0;
        double end = arc.AngleAt(top);
        double to = arc.AngleAt(bottom);
        while (to < end)
        {
            double from = to;
            to = Math.Min(end, from + Math.Min(LongestArc, Math.Sqrt((from - pole) * (from - pole) + off * off)));
            double half = (to - from) / 2;
            double middle = (to + from) / 2;
            for (int i = 0; i < rule.Nodes.Length; i++)
            {
                double angle = middle + half * rule.Nodes[i];
                double cosine = arc.Radius * Math.Cos(angle);
                double y = arc.CenterY + arc.Radius * Math.Sin(angle);
                sums.Add(half * rule.Weights[i] * cosine * cosine * arc.WidthFactor, y - centroid, insideRadius + y);
            }
        }
    }
}
