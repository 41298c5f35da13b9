using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath.Materials.Unloading;

/// <summary>
/// A metal with memory: its yield range moves with the plastic strain toward a saturated back stress, and may grow or shrink besides.
/// Bent, it hardens along one curve; let go, it
/// yields early in the other direction, and springs back more than the elastic line says (see <see cref="UnloadingRule.WithMemory"/>).
/// </summary>
/// <remarks>
/// Equation: σ = E(e − e_p); yield |σ − X| = σ₀ + H·p + Q(1 − exp(−b·p)); dX = γ·X_sat·de_p − γ·X·dp; p = ∫|de_p|.
/// Range: hardening up to <see cref="LargestStrain"/>; mild and structural steels are reported with σ₀ of 120 to 240 MPa, X_sat of 60 to
/// 200 MPa, γ of 30 to 600, Q of −60 to 100 MPa and b of 5 to 20 (from memory).
/// Source: <see cref="Sources.ArmstrongFrederick1966"/>
/// </remarks>
public sealed record KinematicHardening : StressStrainLaw
{
    private const double LeastStrain = 0.01;

    private const double Last = 1;

    private readonly BackStress _metal;

    private readonly TabulatedLaw _law;

    private readonly double _largest;

    private readonly double[] _kinks;

    /// <summary>Makes the law of one saturating back stress.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="elasticRange">Half the elastic range, σ₀, at a small offset: greater than zero and less than E.</param>
    /// <param name="saturatedBackStress">The back stress X_sat it moves toward, zero or more.</param>
    /// <param name="saturationRate">Rate γ at which it does, per plastic strain; greater than zero.</param>
    /// <param name="linearHardening">Growth H of the yield range with plastic strain, zero or more and less than E.</param>
    /// <param name="rangeChange">Growth Q of the yield range that saturates; negative where it shrinks, by less than σ₀.</param>
    /// <param name="rangeRate">Rate b at which that saturates, per plastic strain; greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the metal would soften below a strain of 1
    /// %.</exception>
    public KinematicHardening(
        Pressure elasticModulus,
        Pressure elasticRange,
        Pressure saturatedBackStress,
        double saturationRate,
        Pressure linearHardening,
        Pressure rangeChange,
        double rangeRate)
        : base(Guard.Positive(elasticModulus, nameof(elasticModulus)))
    {
        double yield = Guard.Positive(elasticRange, nameof(elasticRange));
        double saturation = Guard.NonNegative(saturatedBackStress, nameof(saturatedBackStress));
        double rate = Guard.Positive(saturationRate, nameof(saturationRate));
        double linear = Guard.NonNegative(linearHardening, nameof(linearHardening));
        double range = Guard.Finite(rangeChange, nameof(rangeChange));
        double slowing = Guard.Positive(rangeRate, nameof(rangeRate));
        Below(elasticRange, nameof(elasticRange), E, "the elastic modulus");
        Below(linearHardening, nameof(linearHardening), E, "the elastic modulus");
        if (range <= -yield)
        {
            throw Guard.Fault(nameof(rangeChange), rangeChange, $"must leave an elastic range of {Guard.Text(elasticRange)}");
        }

        _metal = new(E, yield, saturation, rate, linear, range, slowing);
        double flow = HardeningFlow(_metal);
        _largest = StrainAt(_metal, flow);
        if (_largest < LeastStrain)
        {
            throw Guard.Fault(nameof(rangeChange), rangeChange,
                $"must not let the metal soften below a strain of 1 %, as it does at {Guard.Text(Ratio.FromDecimalFractions(_largest))}");
        }

        _kinks = [yield / E, _largest];
        BackStress metal = _metal;
        double largest = _largest;
        _law = new(new PlasticTable(strain => First(metal, strain, largest), Knots(metal, flow)));
    }

    /// <summary>σ₀, where the first loading leaves the elastic line; the metal goes on to harden by X_sat and more.</summary>
    public override Pressure YieldStress => ElasticRange;

    /// <summary>Half the elastic range σ₀ of the straight bar.</summary>
    public Pressure ElasticRange => Pressure.FromPascals(_metal.Yield);

    /// <summary>The back stress X_sat it moves toward.</summary>
    public Pressure SaturatedBackStress => Pressure.FromPascals(_metal.Saturation);

    /// <summary>Rate γ at which the back stress saturates.</summary>
    public double SaturationRate => _metal.Rate;

    /// <summary>Growth H of the yield range with plastic strain.</summary>
    public Pressure LinearRange => Pressure.FromPascals(_metal.Linear);

    /// <summary>Growth Q of the yield range that saturates.</summary>
    public Pressure RangeChange => Pressure.FromPascals(_metal.Range);

    /// <summary>Rate b at which the range change saturates.</summary>
    public double RangeRate => _metal.RangeRate;

    /// <summary>
    /// The strain up to which the metal hardens; beyond it the law would soften and more than one neutral axis could be right. The stress
    /// is held constant from there, which is advised of,
    /// and a release with memory is refused.
    /// </summary>
    /// <remarks>
    /// Equation: γ·X_sat·exp(−γp) + H + Q·b·exp(−b·p) ≥ 0.
    /// Range: searched up to a plastic strain of 100 %.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Ratio LargestStrain => Ratio.FromDecimalFractions(_largest);

    internal BackStress Metal => _metal;

    internal override double YieldStrain => _metal.Yield / E;

    internal override double DataStrain => _largest;

    internal override IReadOnlyList<double> Kinks => _kinks;

    internal override LawShape Shape => new PointsShape(_kinks);

    internal override double ReferenceStrain => 1;

    internal override bool IsScaledByYield => false;

    internal override bool IsSmooth => true;

    /// <summary>The law with another elastic range σ₀; back stress and growth stay.</summary>
    /// <param name="yieldStress">The new σ₀.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not positive and finite, not below the modulus, or less than the range shrinks
    /// by.</exception>
    public override StressStrainLaw WithYield(Pressure yieldStress) => new KinematicHardening(
        ElasticModulus, Pressure.FromPascals(LawRules.YieldBelowModulus(yieldStress, E)), SaturatedBackStress, SaturationRate, LinearRange,
            RangeChange, RangeRate);

    /// <summary>Whether all numbers are the same.</summary>
    /// <param name="other">The law to compare with.</param>
    public bool Equals(KinematicHardening? other) => other is not null && _metal.Equals(other._metal);

    /// <inheritdoc/>
    public override int GetHashCode() => _metal.GetHashCode();

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString() => Invariant(
        $"kinematic hardening, elastic range ±{_metal.Yield / 1e6:0.#} MPa, back stress to {_metal.Saturation / 1e6:0.#} MPa "
            + $"at {_metal.Rate:0.##}, growth {_metal.Linear / 1e6:0.#} MPa and {_metal.Range / 1e6:0.#} MPa at {_metal.RangeRate:0.##}, "
            + $"E {E / 1e9:0.#} GPa");

    internal override IEnumerable<Advisory> DoubtsAt(double strain, StressStrainLaw acting)
    {
        if (strain > acting.DataStrain)
        {
            yield return new("beyond-hardening", Invariant(
                $"The largest strain is {100 * strain:0.##} %, beyond the {100 * acting.DataStrain:0.##} % up to which this metal "
                    + $"hardens; ")
                + "the stress is held constant from there, which is an assumption.", Sources.Mechanisms);
        }
    }

    internal override double PlasticStrain(double strain) => strain <= YieldStrain ? 0 : _law.At(strain).Plastic;

    internal override double PlasticRate(double strain) => strain < YieldStrain ? 0 : _law.At(strain).Rate;

    /// <summary>Stresses 2/√3 times, at plastic strains √3/2 times those of the tensile test.</summary>
    internal override StressStrainLaw InPlaneStrain(double poissonsRatio) => new KinematicHardening(
        Stiffened(E, poissonsRatio),
        PlaneStrainFactor * ElasticRange,
        PlaneStrainFactor * SaturatedBackStress,
        PlaneStrainFactor * SaturationRate,
        PlaneStrainFactor * PlaneStrainFactor * LinearRange,
        PlaneStrainFactor * RangeChange,
        PlaneStrainFactor * RangeRate);

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Integrate(profile, _law, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Work(profile, _law, curvature, neutralAxis);

    private static void Below(Pressure value, string name, double bound, string what)
    {
        if (value.Pascals >= bound)
        {
            throw Guard.Fault(name, value, $"must be smaller than {what}, {LawRules.Gigapascals(bound)}");
        }
    }

    private static (double Plastic, double Rate) First(in BackStress metal, double strain, double largest)
    {
        (double stress, double slope, double flow) = metal.Respond(metal.Untouched, Math.Min(strain, largest));
        return strain < largest ? (flow, 1 - slope / metal.Modulus) : (strain - stress / metal.Modulus, 1);
    }

    /// <summary>Strain of the first loading at a plastic strain.</summary>
    private static double StrainAt(in BackStress metal, double flow) =>
        flow + (metal.Radius(flow) + metal.Saturation * (1 - Math.Exp(-metal.Rate * flow))) / metal.Modulus;

    /// <summary>
    /// The plastic strain up to which the slope is not negative, 1 at most: it can only change its sign where Q &lt; 0, twice at most,
    /// and a fine grid finds the first.
    /// </summary>
    private static double HardeningFlow(in BackStress metal)
    {
        double before = 0;
        double step = 0.02 / Math.Max(metal.Rate, metal.RangeRate);
        while (metal.Range < 0 && before < Last)
        {
            double next = Math.Min(Last, Math.Max(before + step, before * 1.02));
            if (metal.FirstSlope(next) < 0)
            {
                BackStress copy = metal;
                double scale = metal.Rate * metal.Saturation + metal.Linear - metal.Range * metal.RangeRate;
                return metal.FirstSlope(before) < 0 ? 0 : Bracketed.Root(flow => copy.FirstSlope(flow) / scale, before, next);
            }

            before = next;
        }

        return Last;
    }

    /// <summary>
    /// The exponentials vary over 1/γ and 1/b, and the strain as a function of the flow is singular at a distance of π/γ; from there on
    /// panels grow with the flow.
    /// </summary>
    private static double[] Knots(in BackStress metal, double last)
    {
        double fastest = Math.Max(metal.Saturation > 0 ? metal.Rate : 1, metal.Range != 0 ? metal.RangeRate : 1);
        double shift = Math.Max(0, Math.Log(metal.FirstSlope(0) / metal.Modulus)) / fastest;
        List<double> knots = [metal.Yield / metal.Modulus];
        double flow = 0;
        while (flow < last)
        {
            double beyond = Math.Max(0, flow - shift);
            flow = Math.Min(last, flow + 0.6 * Math.Sqrt(beyond * beyond + Math.PI * Math.PI / (fastest * fastest)));
            knots.Add(StrainAt(metal, flow));
        }

        return [.. knots];
    }
}
