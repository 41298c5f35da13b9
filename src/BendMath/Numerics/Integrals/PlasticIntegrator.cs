using BendMath.Numerics.Geometry;

namespace BendMath.Numerics.Integrals;

/// <summary>
/// Integrates a smooth law over a section under the linear strain e = κ(y − y_n), κ &gt; 0. Laws of straight lines have
/// <see cref="RampIntegrator"/>. Where a band is deep compared with its distance from the neutral axis, the polynomial part of the section
/// is integrated by the law's antiderivatives; where it is shallow they would lose digits, and twelve Gauss points between the breaks of
/// the law leave no remainder. An arc part is integrated over its angle φ, where the section is a trigonometric polynomial of degree four
/// at most, between the breaks of the law and over at most 1.6 rad: twelve points leave less than 1e−15 of the integral.
/// </summary>
internal static class PlasticIntegrator
{
    private const double LongestArc = 1.6;

    /// <summary>Ratio of the strains at both ends of a band from which on the antiderivatives lose less than two digits.</summary>
    private const double Deep = 1.25;

    public static PlasticSums Integrate<TLaw>(BandProfile profile, in TLaw law, double curvature, double neutralAxis)
        where TLaw : struct, IPlasticLaw
    {
        PlasticSums sums = default;
        double core = law.ElasticLimit / curvature;
        foreach (ref readonly Band band in profile.Bands.AsSpan())
        {
            if (band.Top > neutralAxis + core)
            {
                AddSide(profile, band, law, new(curvature, neutralAxis, 1), Math.Max(band.Bottom, neutralAxis + core), band.Top, ref sums);
            }

            if (band.Bottom < neutralAxis - core)
            {
                AddSide(profile, band, law, new(curvature, neutralAxis, -1), Math.Min(band.Top, neutralAxis - core), band.Bottom, ref sums);
            }
        }

        return sums;
    }

    /// <summary>∫∫e_p de dA, by Gauss points between the breaks of the law.</summary>
    public static double Work<TLaw>(BandProfile profile, in TLaw law, double curvature, double neutralAxis)
        where TLaw : struct, IPlasticLaw
    {
        double sum = 0;
        double core = law.ElasticLimit / curvature;
        foreach (ref readonly Band band in profile.Bands.AsSpan())
        {
            for (int side = -1; side <= 1; side += 2)
            {
                double near = side > 0 ? Math.Max(band.Bottom, neutralAxis + core) : Math.Min(band.Top, neutralAxis - core);
                double far = side > 0 ? band.Top : band.Bottom;
                if (side * (far - near) > 0)
                {
                    sum += WorkOf(profile, band, law, new(curvature, neutralAxis, side), near, far);
                }
            }
        }

        return sum;
    }

    private static double WorkOf<TLaw>(BandProfile profile, in Band band, in TLaw law, in StrainField field, double near, double far)
        where TLaw : struct, IPlasticLaw
    {
        GaussRule rule = GaussRule.Twelve;
        double strain = Math.Max(field.At(near), law.ElasticLimit);
        double start = law.PrimitivesAt(law.ElasticLimit).P0;
        double sum = 0;
        double from = near;
        bool last;
        do
        {
            strain = law.NextBreak(strain);
            double knot = field.NeutralAxis + field.Side * strain / field.Curvature;
            last = field.Side * (far - knot) <= 0;
            double to = last ? far : knot;
            double half = Math.Abs(to - from) / 2;
            for (int i = 0; i < rule.Nodes.Length; i++)
            {
                double y = (from + to) / 2 + half * rule.Nodes[i];
                sum += half * rule.Weights[i] * (band.Width0 + (y - band.Bottom) * band.Width1) * Gathered(law, field, y, start);
            }

            for (int k = band.FirstArc; k < band.EndArc; k++)
            {
                ArcTerm arc = profile.Arcs[k];
                double low = arc.AngleAt(Math.Min(from, to));
                double turn = arc.AngleAt(Math.Max(from, to)) - low;
                int parts = (int)Math.Ceiling(turn / LongestArc);
                for (int i = 0; i < parts * rule.Nodes.Length; i++)
                {
                    int node = i % rule.Nodes.Length;
                    double sine = Math.Sin(low + turn * (2 * (i / rule.Nodes.Length) + 1 + rule.Nodes[node]) / (2 * parts));
                    double weight = turn / (2 * parts) * rule.Weights[node] * arc.Radius * arc.Radius * (1 - sine) * (1 + sine);
                    sum += weight * arc.WidthFactor * Gathered(law, field, arc.CenterY + arc.Radius * sine, start);
                }
            }

            from = to;
        }
        while (!last);
        return sum;
    }

    private static double Gathered<TLaw>(in TLaw law, in StrainField field, double level, double start)
        where TLaw : struct, IPlasticLaw => law.PrimitivesAt(Math.Max(field.At(level), law.ElasticLimit)).P0 - start;

    /// <summary>One band on one side of the neutral axis, from the level nearer to the axis to the farther one.</summary>
    private static void AddSide<TLaw>(
        BandProfile profile, in Band band, in TLaw law, in StrainField field, double near, double far, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double centroid = profile.Moments.CentroidY;
        double strain = Math.Max(field.At(near), law.ElasticLimit);
        double last = field.At(far);
        if (last > Deep * strain)
        {
            AddDeep(band, centroid, law.PrimitivesAt(last) - law.PrimitivesAt(strain), field, ref sums);
        }
        else
        {
            AddShallow(band, centroid, law, field, near, far, strain, ref sums);
        }

        if (band.EndArc > band.FirstArc)
        {
            AddArcs(profile, band, law, field, near, far, strain, ref sums);
        }
    }

    /// <summary>
    /// The polynomials of the band written in the strain: y = y_n ± e/κ, w = w₀ + w₁e, q = q₀ + q₁e + q₂e², d = d₀ + d₁e, each multiplied
    /// out.
    /// </summary>
    private static void AddDeep(in Band band, double centroid, in StrainPrimitives p, in StrainField field, ref PlasticSums sums)
    {
        double scale = 1 / field.Curvature;
        double d1 = field.Side * scale;
        double d0 = field.NeutralAxis - centroid;
        double u = field.NeutralAxis - band.Bottom;
        double w0 = scale * (band.Width0 + u * band.Width1);
        double w1 = scale * band.Width1 * d1;
        double q0 = scale * (band.Moment0 + u * (band.Moment1 + u * band.Moment2));
        double q1 = scale * (band.Moment1 + 2 * u * band.Moment2) * d1;
        double q2 = scale * band.Moment2 * d1 * d1;
        double middle = w0 * d1 + w1 * d0;
        double last = w1 * d1;
        sums.P0 += field.Side * (w0 * p.P0 + w1 * p.P1);
        sums.Pb += field.Side * (w0 * d0 * p.P0 + middle * p.P1 + last * p.P2);
        sums.Pr += field.Side * (q0 * p.P0 + q1 * p.P1 + q2 * p.P2);
        sums.C0 += w0 * p.C0 + w1 * p.C1;
        sums.C1 += w0 * d0 * p.C0 + middle * p.C1 + last * p.C2;
        sums.C2 += w0 * d0 * d0 * p.C0 + (middle + w0 * d1) * d0 * p.C1 + (middle * d1 + last * d0) * p.C2 + last * d1 * p.C3;
        sums.Cr0 += q0 * p.C0 + q1 * p.C1 + q2 * p.C2;
        sums.Cr1 += q0 * d0 * p.C0 + (q0 * d1 + q1 * d0) * p.C1 + (q1 * d1 + q2 * d0) * p.C2 + q2 * d1 * p.C3;
    }

    /// <summary>Between the breaks of the law, whose strains are kept as in <see cref="AddArcs"/>.</summary>
    private static void AddShallow<TLaw>(
        in Band band, double centroid, in TLaw law, in StrainField field, double near, double far, double strain, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double from = near;
        bool last;
        do
        {
            strain = law.NextBreak(strain);
            double knot = field.NeutralAxis + field.Side * strain / field.Curvature;
            last = field.Side * (far - knot) <= 0;
            double to = last ? far : knot;
            AddPanel(band, centroid, law, field, from, to, ref sums);
            from = to;
        }
        while (!last);
    }

    private static void AddPanel<TLaw>(
        in Band band, double centroid, in TLaw law, in StrainField field, double near, double far, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double half = Math.Abs(far - near) / 2;
        double middle = (far + near) / 2;
        GaussRule rule = GaussRule.Twelve;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double y = middle + half * rule.Nodes[i];
            double v = y - band.Bottom;
            double weight = half * rule.Weights[i];
            (double plastic, double rate) = law.At(Math.Max(field.At(y), law.ElasticLimit));
            sums.Add(
                weight * (band.Width0 + v * band.Width1),
                weight * (band.Moment0 + v * (band.Moment1 + v * band.Moment2)),
                y - centroid,
                field.Side * plastic,
                rate);
        }
    }

    /// <summary>
    /// The strain of each break is kept, not taken back from its level: rounding could put that before the break, which would be found
    /// again without end.
    /// </summary>
    private static void AddArcs<TLaw>(
        BandProfile profile, in Band band, in TLaw law, in StrainField field, double near, double far, double strain, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double from = near;
        bool last;
        do
        {
            strain = law.NextBreak(strain);
            double knot = field.NeutralAxis + field.Side * strain / field.Curvature;
            last = field.Side * (far - knot) <= 0;
            double to = last ? far : knot;
            for (int i = band.FirstArc; i < band.EndArc; i++)
            {
                AddArc(profile.Arcs[i], profile.Moments.CentroidY, law, field, Math.Min(from, to), Math.Max(from, to), ref sums);
            }

            from = to;
        }
        while (!last);
    }

    private static void AddArc<TLaw>(
        in ArcTerm arc, double centroid, in TLaw law, in StrainField field, double low, double high, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double start = arc.AngleAt(low);
        double end = arc.AngleAt(high);
        int parts = (int)Math.Ceiling((end - start) / LongestArc);
        GaussRule rule = GaussRule.Twelve;
        for (int part = 0; part < parts; part++)
        {
            double half = (end - start) / parts / 2;
            double middle = start + (2 * part + 1) * half;
            for (int i = 0; i < rule.Nodes.Length; i++)
            {
                double sine = Math.Sin(middle + half * rule.Nodes[i]);
                double y = arc.CenterY + arc.Radius * sine;
                double weight = half * rule.Weights[i] * arc.Radius * arc.Radius * (1 - sine) * (1 + sine);
                (double plastic, double rate) = law.At(Math.Max(field.At(y), law.ElasticLimit));
                sums.Add(weight * arc.WidthFactor, weight * arc.MomentFactor, y - centroid, field.Side * plastic, rate);
            }
        }
    }

    /// <summary>Strain magnitude on one side of the neutral axis: +1 beyond it, −1 toward the inside face.</summary>
    private readonly struct StrainField(double curvature, double neutralAxis, int side)
    {
        public double Curvature { get; } = curvature;

        public double NeutralAxis { get; } = neutralAxis;

        public int Side { get; } = side;

        public double At(double level) => Side * Curvature * (level - NeutralAxis);
    }
}
