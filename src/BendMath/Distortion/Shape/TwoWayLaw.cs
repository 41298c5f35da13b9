namespace BendMath.Distortion.Shape;

/// <summary>Stresses of a thin wall strained along the ring (h) and across it (x), and how they change.</summary>
internal struct TwoWayStress
{
    public double AlongRing;
    public double Across;
    public double SlopeHH;
    public double SlopeHX;
    public double SlopeXX;
}

/// <summary>
/// A stress–strain law in two directions by Hencky's deformation theory, plane stress: with p = e_h + e_x, d = e_h − e_x, E_s = σ(e)/e and
/// ν_s = ½ − (½ − ν)·E_s/E, e² = ¼p²/(1 − ν_s)² + ¾d²/(1 + ν_s)², σ_h + σ_x = E_s·p/(1 − ν_s), σ_h − σ_x = E_s·d/(1 + ν_s). It has a
/// potential, so its slopes are symmetric.
/// </summary>
internal readonly struct TwoWayLaw(StressStrainLaw law, double poissonsRatio)
{
    /// <summary>A residual this small, relative to the strain, is squared by the last step.</summary>
    private const double Settled = 1e-5;

    /// <summary>
    /// Least tangent modulus over E in the slopes, which only guide the search: where a perfectly plastic wall is strained across the ring
    /// alone, nothing would resist.
    /// </summary>
    private const double LeastTangent = 1e-5;

    private const int Enough = 60;

    private readonly double _compressible = 0.5 - poissonsRatio;

    private readonly double _yieldStrain = law.YieldStrain;

    public StressStrainLaw Law => law;

    public double PoissonsRatio => poissonsRatio;

    public double Modulus => law.E;

    /// <param name="along">Strain e_h along the ring.</param>
    /// <param name="across">Strain e_x across it.</param>
    /// <param name="strain">Last equivalent strain of this point, from where the search starts; zero if there is none. On return the one
    /// found.</param>
    /// <param name="stress">Stresses and slopes.</param>
    public void At(double along, double across, ref double strain, out TwoWayStress stress)
    {
        double p = along + across;
        double d = along - across;
        double a = p * p / 4;
        double b = 3 * d * d / 4;
        double e = Radius(a, b, 1, out double u, out double w);
        double q = 1;
        double slope = 0;
        if (e > _yieldStrain || law.PlasticStrain(e) > 0)
        {
            e = Solve(a, b, strain > 0 ? strain : e, out q, out slope);
            u = 0.5 + _compressible * q;
            w = 1.5 - _compressible * q;
        }

        strain = e;
        double modulus = law.E;
        double sum = modulus * q / u;
        double difference = modulus * q / w;
        double pp = sum;
        double dd = difference;
        double pd = 0;
        if (slope != 0)
        {
            double byP = p / (2 * u * u);
            double byD = 3 * d / (2 * w * w);
            double change = modulus * slope / (2 * e + _compressible * slope * (2 * a / (u * u * u) - 2 * b / (w * w * w)));
            pp += byP * byP * change;
            pd = byP * byD * change;
            dd += byD * byD * change;
        }

        stress.AlongRing = (sum * p + difference * d) / 2;
        stress.Across = (sum * p - difference * d) / 2;
        stress.SlopeHH = (pp + dd) / 2 + pd;
        stress.SlopeXX = (pp + dd) / 2 - pd;
        stress.SlopeHX = (pp - dd) / 2;
    }

    /// <summary>Poisson's ratio ν_s of the strained wall.</summary>
    public double SecantRatio(double strain) => 0.5 - _compressible * Share(strain);

    private double Share(double strain) => strain <= 0 ? 1 : 1 - law.PlasticStrain(strain) / strain;

    private double Radius(double a, double b, double share, out double u, out double w)
    {
        u = 0.5 + _compressible * share;
        w = 1.5 - _compressible * share;
        return Math.Sqrt(a / (u * u) + b / (w * w));
    }

    /// <summary>Newton's method on r(e) − e inside the bracket that ν ≤ ν_s ≤ ½ gives. On return q = E_s/E and dq/de at the root.</summary>
    private double Solve(double a, double b, double start, out double q, out double slope)
    {
        double full = 0.5 + _compressible;
        double low = Math.Sqrt(a / (full * full) + b / 2.25);
        double high = Math.Sqrt(4 * a + b / ((1.5 - _compressible) * (1.5 - _compressible)));
        double e = Math.Min(high, Math.Max(low, start));
        for (int i = 0; ; i++)
        {
            (double plastic, double rate) = law.PlasticAt(e);
            q = 1 - plastic / e;
            slope = (Math.Max(LeastTangent, 1 - rate) - q) / e;
            double r = Radius(a, b, q, out double u, out double w);
            double gap = r - e;
            if (gap > 0)
            {
                low = e;
            }
            else
            {
                high = e;
            }

            double step = gap / (1 + _compressible * slope * (a / (u * u * u) - b / (w * w * w)) / r);
            if (Math.Abs(gap) <= Settled * e || i == Enough)
            {
                q += slope * step;
                return e + step;
            }

            double next = e + step;
            e = next >= low && next <= high ? next : low + (high - low) / 2;
        }
    }
}
