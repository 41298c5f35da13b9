namespace BendMath.Materials;

/// <summary>
/// Stress over strain of hot-rolled steel: the elastic line, a plateau to ε_sh, hardening f_y + (f_u − f_y)·[0.4x + 2x/(1 + 400x⁵)^(1/5)]
/// with x = (ε − ε_sh)/(ε_u − ε_sh), constant
/// beyond ε_u; as printed, or as true stress f·(1 + ε) over true strain ln(1 + ε).
/// </summary>
internal readonly struct HotRolledCurve
{
    private const double LongestPanel = 0.6;

    private readonly double _yield;

    private readonly double _ultimate;

    private readonly bool _isTrue;

    public HotRolledCurve(double modulus, double yield, double ultimate, bool isTrue)
    {
        _yield = yield;
        _ultimate = ultimate;
        _isTrue = isTrue;
        double ratio = yield / ultimate;
        PlateauEnd = Math.Min(0.03, Math.Max(0.015, 0.1 * ratio - 0.055));
        UltimateStrain = Math.Max(0.06, 0.6 * (1 - ratio));
        YieldStrain = yield / modulus;
        for (int i = 0; isTrue && i < 40; i++)
        {
            YieldStrain = yield / modulus * Math.Exp(YieldStrain);
        }
    }

    /// <summary>ε_sh, engineering.</summary>
    public double PlateauEnd { get; }

    /// <summary>ε_u, engineering.</summary>
    public double UltimateStrain { get; }

    /// <summary>Where the law leaves the elastic line.</summary>
    public double YieldStrain { get; }

    /// <summary>A strain of the law for an engineering strain.</summary>
    public double Own(double engineering) => _isTrue ? Math.Log(1 + engineering) : engineering;

    /// <summary>Stress and slope at a strain not below that of yield.</summary>
    public (double Stress, double Slope) At(double strain)
    {
        double grown = _isTrue ? Math.Exp(strain) : 1;
        double engineering = _isTrue ? grown - 1 : strain;
        double x = (engineering - PlateauEnd) / (UltimateStrain - PlateauEnd);
        double stress = _yield;
        double slope = 0;
        if (x > 0)
        {
            double within = Math.Min(x, 1);
            double bend = 1 + 400 * within * within * within * within * within;
            double root = Math.Pow(bend, -0.2);
            stress += (_ultimate - _yield) * within * (0.4 + 2 * root);
            slope = x < 1 ? (_ultimate - _yield) * (0.4 + 2 * root / bend) / (UltimateStrain - PlateauEnd) : 0;
        }

        return _isTrue ? (stress * grown, (slope * grown + stress) * grown) : (stress, slope);
    }

    /// <summary>
    /// Yield, end of the plateau and ultimate strain, and panels between the last two: the root is singular where 400x⁵ = −1, nearest at
    /// x = 0.3017·exp(±iπ/5), and no panel is longer
    /// than six tenths of its distance from there.
    /// </summary>
    public double[] Knots()
    {
        List<double> knots = [YieldStrain, Own(PlateauEnd)];
        double radius = Math.Pow(400, -0.2);
        double real = radius * Math.Cos(Math.PI / 5);
        double off = radius * Math.Sin(Math.PI / 5);
        double x = 0;
        while (x < 1)
        {
            x = Math.Min(1, x + LongestPanel * Math.Sqrt((x - real) * (x - real) + off * off));
            knots.Add(Own(PlateauEnd + x * (UltimateStrain - PlateauEnd)));
        }

        return [.. knots];
    }
}
