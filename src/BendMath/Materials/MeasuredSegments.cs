using BendMath.Numerics.Integrals;

namespace BendMath.Materials;

/// <summary>Plastic strain linear between knots, with the elastic line before the first and constant stress beyond the last.</summary>
internal readonly struct MeasuredSegments
{
    private readonly double[] _rates;

    /// <param name="strains">Strains of the knots, rising.</param>
    /// <param name="plastic">Plastic strains at the knots, zero at the first.</param>
    public MeasuredSegments(double[] strains, double[] plastic)
    {
        Strains = strains;
        Plastic = plastic;
        _rates = new double[strains.Length];
        for (int i = 0; i < strains.Length - 1; i++)
        {
            _rates[i] = Math.Min(1, Math.Max(0, (plastic[i + 1] - plastic[i]) / (strains[i + 1] - strains[i])));
        }

        _rates[strains.Length - 1] = 1;
        Ramps = new Ramp[strains.Length];
        for (int i = 0; i < strains.Length; i++)
        {
            Ramps[i] = new(strains[i], i == 0 ? _rates[0] : _rates[i] - _rates[i - 1]);
        }
    }

    public double[] Strains { get; }

    public double[] Plastic { get; }

    public double ElasticLimit => Strains[0];

    /// <summary>The same law as a sum of ramps: one where each line begins, with what its rate adds to the one before.</summary>
    public Ramp[] Ramps { get; }

    public double PlasticStrain(double strain)
    {
        int i = Segment(strain);
        return Plastic[i] + _rates[i] * Math.Max(0, strain - Strains[i]);
    }

    public double PlasticRate(double strain) => _rates[Segment(strain)];

    /// <summary>The last knot not beyond a strain; the first for a strain that rounding put before it.</summary>
    private int Segment(double strain)
    {
        int found = Array.BinarySearch(Strains, strain);
        return Math.Max(0, found >= 0 ? found : ~found - 1);
    }
}
