namespace BendMath.Numerics;

/// <summary>What the integration over a section asks of a stress–strain law: its plastic strain e_p = e − σ/E, for e ≥ 0.</summary>
internal interface IPlasticLaw
{
    /// <summary>Strain up to which e_p is exactly zero.</summary>
    double ElasticLimit { get; }

    /// <summary>e_p at a strain e &gt; 0.</summary>
    double PlasticStrain(double strain);

    /// <summary>de_p/de = 1 − E_t/E at a strain e &gt; 0.</summary>
    double PlasticRate(double strain);

    /// <summary>The strain up to which, from the given one on, the law is smooth enough for <see cref="Rule"/>.</summary>
    double NextBreak(double strain);

    /// <summary>The rule that integrates e_p times a quadratic to rounding between two breaks.</summary>
    GaussRule Rule { get; }
}

/// <summary>
/// Integrals over the section of the plastic strain and of its rate c = de_p/de, with d = y − ȳ and b = z − z̄:
/// P0 = ∫e_p, Pb = ∫e_p·d, Pr = ∫e_p·b; C0 = ∫c, C1 = ∫c·d, C2 = ∫c·d², Cr0 = ∫c·b, Cr1 = ∫c·d·b.
/// Everything else follows from them: N/E = κA(ȳ − y_n) − P0, M_b/E = κI_b − Pb, M_r/E = κI_br − Pr.
/// </summary>
internal struct PlasticSums
{
    public double P0;
    public double Pb;
    public double Pr;
    public double C0;
    public double C1;
    public double C2;
    public double Cr0;
    public double Cr1;

    public void Add(double weightW, double weightQ, double d, double plastic, double rate)
    {
        P0 += weightW * plastic;
        Pb += weightW * plastic * d;
        Pr += weightQ * plastic;
        C0 += weightW * rate;
        C1 += weightW * rate * d;
        C2 += weightW * rate * d * d;
        Cr0 += weightQ * rate;
        Cr1 += weightQ * rate * d;
    }
}

/// <summary>
/// Integrates a law over a section under the linear strain e = κ(y − y_n), κ &gt; 0. Each band is cut where the law changes its formula.
/// On a piece the polynomial part of the section is integrated by a Gauss rule, exact where the law is piecewise linear (cubic integrand,
/// two points); an arc part is integrated over its angle φ, where the integrand is a trigonometric polynomial of degree four at most:
/// twelve points over at most 1.6 rad leave a remainder below 1e−18 of the integral. No difference of large numbers occurs, so a thin
/// plastic zone is as accurate as a deep one.
/// </summary>
internal static class PlasticIntegrator
{
    private const double LongestArc = 1.6;

    public static PlasticSums Integrate<TLaw>(BandProfile profile, in TLaw law, double curvature, double neutralAxis)
        where TLaw : struct, IPlasticLaw
    {
        PlasticSums sums = default;
        double core = law.ElasticLimit / curvature;
        foreach (Band band in profile.Bands)
        {
            if (band.Top > neutralAxis + core)
            {
                AddSide(profile, band, law, curvature, neutralAxis, 1, Math.Max(band.Bottom, neutralAxis + core), band.Top, ref sums);
            }

            if (band.Bottom < neutralAxis - core)
            {
                AddSide(profile, band, law, curvature, neutralAxis, -1, Math.Min(band.Top, neutralAxis - core), band.Bottom, ref sums);
            }
        }

        return sums;
    }

    /// <summary>
    /// One band on one side of the neutral axis, from the level nearer to the axis to the farther one. The strain of each break is kept, not taken back
    /// from its level: rounding could put that before the break, which would then be found again without end.
    /// </summary>
    private static void AddSide<TLaw>(
        BandProfile profile, in Band band, in TLaw law, double curvature, double neutralAxis, int side, double near, double far, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double from = near;
        double strain = Math.Max(Math.Abs(from - neutralAxis) * curvature, law.ElasticLimit);
        while (true)
        {
            strain = law.NextBreak(strain);
            double knot = neutralAxis + side * strain / curvature;
            bool last = side * (far - knot) <= 0;
            double to = last ? far : knot;
            double low = side > 0 ? from : to;
            double high = side > 0 ? to : from;
            AddPolynomial(band, profile.Moments.CentroidY, law, curvature, neutralAxis, side, low, high, ref sums);
            for (int i = band.FirstArc; i < band.EndArc; i++)
            {
                AddArc(profile.Arcs[i], profile.Moments.CentroidY, law, curvature, neutralAxis, side, low, high, ref sums);
            }

            if (last)
            {
                return;
            }

            from = to;
        }
    }

    private static void AddPolynomial<TLaw>(
        in Band band, double centroid, in TLaw law, double curvature, double neutralAxis, int side, double low, double high, ref PlasticSums sums)
        where TLaw : struct, IPlasticLaw
    {
        double half = (high - low) / 2;
        double middle = (high + low) / 2;
        GaussRule rule = law.Rule;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double y = middle + half * rule.Nodes[i];
            double v = y - band.Bottom;
            double weight = half * rule.Weights[i];
            double strain = side * curvature * (y - neutralAxis);
            sums.Add(
                weight * (band.Width0 + v * band.Width1),
                weight * (band.Moment0 + v * (band.Moment1 + v * band.Moment2)),
                y - centroid,
                side * law.PlasticStrain(strain),
                law.PlasticRate(strain));
        }
    }

    private static void AddArc<TLaw>(
        in ArcTerm arc, double centroid, in TLaw law, double curvature, double neutralAxis, int side, double low, double high, ref PlasticSums sums)
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
                double angle = middle + half * rule.Nodes[i];
                double cosine = Math.Cos(angle);
                double y = arc.CenterY + arc.Radius * Math.Sin(angle);
                double weight = half * rule.Weights[i] * arc.Radius * arc.Radius * cosine * cosine;
                double strain = Math.Max(side * curvature * (y - neutralAxis), law.ElasticLimit);
                sums.Add(
                    weight * arc.WidthFactor, weight * arc.MomentFactor, y - centroid, side * law.PlasticStrain(strain), law.PlasticRate(strain));
            }
        }
    }
}
