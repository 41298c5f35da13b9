using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>The power law of hardening joined to the elastic line where the two meet.</summary>
/// <remarks>
/// Equation: σ = E·e for |e| ≤ e_y, else ±K·|e|ⁿ, with e_y = (K/E)^(1/(1 − n)).
/// Range: 0 ≤ n &lt; 1; K and n are usually fitted to true stress and true strain, total strain, one heat each: at bending strains of a few
/// percent the difference to engineering strain is small, but the yield they imply may not be that of the bar at hand.
/// Source: <see cref="Sources.Hollomon1945"/>
/// </remarks>
public sealed record PowerHardening : StressStrainLaw
{
    /// <summary>Change of a fitted strength coefficient from which on the curve is no longer that of the test.</summary>
    private const double MovedCurve = 1.25;

    private readonly Kernel _law;

    private readonly double _strength;

    private readonly double _exponent;

    private readonly double _fitted;

    /// <summary>Makes the law from its modulus, strength coefficient and exponent.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="strengthCoefficient">Strength coefficient K, greater than zero; it must give a yield below the modulus.</param>
    /// <param name="hardeningExponent">Hardening exponent n, zero or more and less than one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PowerHardening(Pressure elasticModulus, Pressure strengthCoefficient, double hardeningExponent)
        : this(elasticModulus, strengthCoefficient, hardeningExponent, fitted: null)
    {
    }

    private PowerHardening(Pressure elasticModulus, Pressure strengthCoefficient, double hardeningExponent, double? fitted)
        : base(Guard.Positive(elasticModulus, nameof(elasticModulus)))
    {
        _strength = Guard.Positive(strengthCoefficient, nameof(strengthCoefficient));
        _exponent = Guard.NonNegative(hardeningExponent, nameof(hardeningExponent));
        if (_exponent >= 1)
        {
            throw Guard.Fault(nameof(hardeningExponent), hardeningExponent, "must be smaller than 1");
        }

        double ratio = _strength / E;
        double yieldStrain = Math.Pow(ratio, 1 / (1 - _exponent));
        if (!(yieldStrain > 1e-12 && yieldStrain < 1))
        {
            throw Guard.Fault(nameof(strengthCoefficient), strengthCoefficient,
                $"must give a yield strain between 1e-12 and 1 with a modulus of {LawRules.Gigapascals(E)}");
        }

        _fitted = fitted ?? _strength;
        _law = new(yieldStrain, ratio, _exponent);
    }

    /// <summary>Stress at which the elastic line meets the power law.</summary>
    public override Pressure YieldStress => Pressure.FromPascals(E * _law.ElasticLimit);

    /// <summary>Strength coefficient K.</summary>
    public Pressure StrengthCoefficient => Pressure.FromPascals(_strength);

    /// <summary>
    /// Strength coefficient of the test; <see cref="StrengthCoefficient"/> differs from it after <see cref="WithYield"/>.
    /// </summary>
    public Pressure FittedStrengthCoefficient => Pressure.FromPascals(_fitted);

    /// <summary>Hardening exponent n.</summary>
    public double HardeningExponent => _exponent;

    internal override double YieldStrain => _law.ElasticLimit;

    internal override LawShape Shape => new PowerShape(_exponent);

    internal override bool IsSmooth => true;

    /// <summary>
    /// The law with the same exponent whose elastic line ends at another yield: K = σ_y·(E/σ_y)ⁿ. A pair fitted to strains of a few percent
    /// seldom has the yield of its bar, so this may move the whole curve far from the test: bending with it is advised of.
    /// </summary>
    /// <param name="yieldStress">The new yield stress, greater than zero and less than E.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield stress is not positive and finite, or not below the modulus.</exception>
    public override StressStrainLaw WithYield(Pressure yieldStress)
    {
        double yield = LawRules.YieldBelowModulus(yieldStress, E);
        return new PowerHardening(ElasticModulus, Pressure.FromPascals(yield * Math.Pow(E / yield, _exponent)), _exponent, _fitted);
    }

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString() =>
        Invariant($"power hardening, K {_strength / 1e6:0.#} MPa, n {_exponent:0.###}, E {E / 1e9:0.#} GPa");

    internal override double? RigidExponent => _exponent;

    internal override IEnumerable<Advisory> DoubtsAt(double strain, StressStrainLaw acting)
    {
        if (Math.Abs(Math.Log(_strength / _fitted)) > Math.Log(MovedCurve))
        {
            yield return new("power-law-moved",
                Invariant(
                    $"To have a yield of {YieldStress.Megapascals:0.#} MPa the strength coefficient was moved from the {_fitted / 1e6:0} "
                        + $"MPa of the test to {_strength / 1e6:0} MPa, and the whole curve with it; at strains of a few percent the test "
                        + $"is the better witness. Use the pair as fitted, or a measured curve."), Sources.Mechanics);
        }
    }

    internal override double PlasticStrain(double strain) => strain <= _law.ElasticLimit ? 0 : _law.At(strain).Plastic;

    internal override double PlasticRate(double strain) => strain < _law.ElasticLimit ? 0 : _law.At(strain).Rate;

    internal override (double Plastic, double Rate) PlasticAt(double strain) => strain < _law.ElasticLimit ? default : _law.At(strain);

    internal override StressStrainLaw InPlaneStrain(double poissonsRatio) => new PowerHardening(
        Stiffened(E, poissonsRatio), Pressure.FromPascals(_strength * Math.Pow(PlaneStrainFactor, 1 + _exponent)), _exponent,
            _fitted * Math.Pow(PlaneStrainFactor, 1 + _exponent));

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Integrate(profile, _law, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Work(profile, _law, curvature, neutralAxis);

    /// <summary>
    /// Twelve points for two and a half times the strain: the singularity of eⁿ at zero lies 2.3 half-widths away, which leaves a remainder
    /// below 4.4⁻²⁴ ≈ 3e−16.
    /// </summary>
    private readonly struct Kernel(double yieldStrain, double ratio, double exponent) : IPlasticLaw
    {
        public double ElasticLimit => yieldStrain;

        public (double Plastic, double Rate) At(double strain)
        {
            double stress = ratio * Math.Pow(strain, exponent);
            return (strain - stress, 1 - exponent * stress / strain);
        }

        public double NextBreak(double strain) => 2.5 * strain;

        /// <summary>
        /// With s = σ/E: ∫(e − s)·eᵏ de = e^(k + 2)/(k + 2) − s·e^(k + 1)/(n + k + 1), ∫c·eᵏ de = e^(k + 1)/(k + 1) − n·s·eᵏ/(n + k).
        /// </summary>
        public StrainPrimitives PrimitivesAt(double strain)
        {
            double stress = ratio * Math.Pow(strain, exponent);
            double square = strain * strain;
            return new()
            {
                P0 = strain * (strain / 2 - stress / (exponent + 1)),
                P1 = square * (strain / 3 - stress / (exponent + 2)),
                P2 = square * strain * (strain / 4 - stress / (exponent + 3)),
                C0 = strain - stress,
                C1 = strain * (strain / 2 - exponent * stress / (exponent + 1)),
                C2 = square * (strain / 3 - exponent * stress / (exponent + 2)),
                C3 = square * strain * (strain / 4 - exponent * stress / (exponent + 3)),
            };
        }
    }
}
