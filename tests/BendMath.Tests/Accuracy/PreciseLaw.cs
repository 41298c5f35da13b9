namespace BendMath.Tests.Accuracy;

/// <summary>
/// A stress–strain law as its equation is written, σ/E of the strain, in double-double; only rational exponents, so that no logarithm is
/// needed.
/// </summary>
internal abstract class PreciseLaw
{
    /// <summary>Strain at which the law changes its equation; 0 for a law with one equation.</summary>
    public abstract DoubleDouble Break { get; }

    /// <summary>The same law of the library.</summary>
    public abstract StressStrainLaw Library { get; }

    /// <summary>σ/E at a strain.</summary>
    public DoubleDouble Stress(DoubleDouble strain) => strain.High < 0 ? -Positive(-strain) : Positive(strain);

    protected abstract DoubleDouble Positive(DoubleDouble strain);
}

/// <summary>σ = E·e, then a line of slope E_t; E_t = 0 is perfectly plastic.</summary>
internal sealed class PreciseLines(double modulus, double yield, double tangent) : PreciseLaw
{
    private readonly DoubleDouble _slope = (DoubleDouble)tangent / modulus;

    public override DoubleDouble Break { get; } = (DoubleDouble)yield / modulus;

    public override StressStrainLaw Library => tangent == 0
        ? new PerfectlyPlastic(UnitsNet.Pressure.FromPascals(modulus), UnitsNet.Pressure.FromPascals(yield))
        : new LinearHardening(UnitsNet.Pressure.FromPascals(modulus), UnitsNet.Pressure.FromPascals(yield),
            UnitsNet.Pressure.FromPascals(tangent));

    protected override DoubleDouble Positive(DoubleDouble strain) => strain < Break ? strain : Break + (_slope * (strain - Break));
}

/// <summary>σ = K·√√e beyond e_y = (K/E)^(4/3): the power law with n = 1/4.</summary>
internal sealed class PreciseQuarterPower(double modulus, double strength) : PreciseLaw
{
    private readonly DoubleDouble _ratio = (DoubleDouble)strength / modulus;

    public override DoubleDouble Break => _ratio * DoubleDouble.CubeRoot(_ratio);

    public override StressStrainLaw Library =>
        new PowerHardening(UnitsNet.Pressure.FromPascals(modulus), UnitsNet.Pressure.FromPascals(strength), 0.25);

    protected override DoubleDouble Positive(DoubleDouble strain) =>
        strain < Break ? strain : _ratio * DoubleDouble.Sqrt(DoubleDouble.Sqrt(strain));
}

/// <summary>
/// e = σ/E + 0.002·(σ/σ₀.₂)ⁿ with whole n, solved for σ by Newton's method: first in double, then twice in double-double.
/// </summary>
internal sealed class PreciseRambergOsgood(double modulus, double proof, int exponent) : PreciseLaw
{
    private const double Offset = 0.002;

    private readonly DoubleDouble _ratio = (DoubleDouble)proof / modulus;

    public override DoubleDouble Break => 0;

    public override StressStrainLaw Library =>
        new RambergOsgood(UnitsNet.Pressure.FromPascals(modulus), UnitsNet.Pressure.FromPascals(proof), exponent);

    protected override DoubleDouble Positive(DoubleDouble strain)
    {
        double a = _ratio.High;
        double s = Math.Min(strain.High / a, Math.Pow(strain.High / Offset, 1.0 / exponent));
        for (int i = 0; i < 40; i++)
        {
            double power = Offset * Math.Pow(s, exponent - 1);
            double step = ((a * s) + (power * s) - strain.High) / (a + (exponent * power));
            s -= step;
            if (Math.Abs(step) <= 1e-15 * s)
            {
                break;
            }
        }

        DoubleDouble level = s;
        for (int i = 0; i < 2; i++)
        {
            DoubleDouble power = DoubleDouble.Power(level, exponent - 1) * Offset;
            level -= ((_ratio * level) + (power * level) - strain) / (_ratio + (power * exponent));
        }

        return _ratio * level;
    }
}
