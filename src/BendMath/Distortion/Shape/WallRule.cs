using BendMath.Numerics.Integrals;

namespace BendMath.Distortion.Shape;

/// <summary>
/// Stress resultants of a wall at one place and their slopes: ∫ over its thickness of the stress along the ring (H) and across it (X) times
/// a power of ζ, the distance from its middle.
/// </summary>
internal struct WallSums
{
    /// <summary>∫σ_h dζ, the force per width along the ring.</summary>
    public double N;

    /// <summary>∫σ_h·ζ dζ.</summary>
    public double NMoment;

    /// <summary>∫σ_x dζ, which vanishes in equilibrium.</summary>
    public double X;

    /// <summary>∫σ_x·ζ dζ.</summary>
    public double XMoment;

    public double HH0;
    public double HH1;
    public double HH2;
    public double HX0;
    public double HX1;
    public double HX2;
    public double XX0;
    public double XX1;
    public double XX2;
}

/// <summary>One place of a wall: its strains e_h = P + ζ·Q and e_x = a + ζ·K, and the length of wall it stands for.</summary>
internal struct WallPlace
{
    public double P;
    public double Q;
    public double K;
    public double Weight;
    public WallRule Rule;
}

/// <summary>
/// Integration through the thickness of a wall that is strained e_h = p + ζ·q along the ring and e_x = a + ζ·k across it.
/// </summary>
internal sealed class WallRule
{
    private readonly double[] _places;

    private readonly double[] _weights;

    /// <param name="thickness">Thickness of the wall.</param>
    /// <param name="radius">Radius of the middle of the wall; infinite for a flat one. A fiber at ζ is 1 + ζ/r as wide as one in the
    /// middle.</param>
    public WallRule(double thickness, double radius = double.PositiveInfinity)
    {
        GaussRule rule = GaussRule.Twelve;
        _places = new double[rule.Nodes.Length];
        _weights = new double[_places.Length];
        for (int i = 0; i < _places.Length; i++)
        {
            _places[i] = rule.Nodes[i] * thickness / 2;
            _weights[i] = rule.Weights[i] * thickness / 2 * (1 + _places[i] / radius);
        }
    }

    public static int Points => GaussRule.Twelve.Nodes.Length;

    /// <param name="law">The law of the wall.</param>
    /// <param name="p">e_h in the middle.</param>
    /// <param name="q">Change of e_h through the wall.</param>
    /// <param name="a">e_x in the middle.</param>
    /// <param name="k">Change of e_x through the wall.</param>
    /// <param name="strains">Equivalent strains of the points, kept from one call to the next.</param>
    /// <param name="sums">The integrals.</param>
    public void Integrate(in TwoWayLaw law, double p, double q, double a, double k, Span<double> strains, out WallSums sums)
    {
        sums = default;
        for (int i = 0; i < _places.Length; i++)
        {
            double z = _places[i];
            double w = _weights[i];
            law.At(p + z * q, a + z * k, ref strains[i], out TwoWayStress s);
            double wz = w * z;
            double wzz = wz * z;
            sums.N += w * s.AlongRing;
            sums.NMoment += wz * s.AlongRing;
            sums.X += w * s.Across;
            sums.XMoment += wz * s.Across;
            sums.HH0 += w * s.SlopeHH;
            sums.HH1 += wz * s.SlopeHH;
            sums.HH2 += wzz * s.SlopeHH;
            sums.HX0 += w * s.SlopeHX;
            sums.HX1 += wz * s.SlopeHX;
            sums.HX2 += wzz * s.SlopeHX;
            sums.XX0 += w * s.SlopeXX;
            sums.XX1 += wz * s.SlopeXX;
            sums.XX2 += wzz * s.SlopeXX;
        }
    }

    /// <summary>Mean strain −ν_s·(e_h + e_x)/(1 − ν_s) of the thickness.</summary>
    public double Thinning(in TwoWayLaw law, double p, double q, double a, double k, ReadOnlySpan<double> strains)
    {
        GaussRule rule = GaussRule.Twelve;
        double sum = 0;
        for (int i = 0; i < _places.Length; i++)
        {
            double ratio = law.SecantRatio(strains[i]);
            sum -= rule.Weights[i] / 2 * ratio / (1 - ratio) * (p + a + _places[i] * (q + k));
        }

        return sum;
    }
}
