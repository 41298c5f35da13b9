using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>Elastic up to the yield stress, then a straight line of a smaller slope.</summary>
/// <remarks>
/// Equation: σ = E·e for |e| ≤ e_y = σ_y/E, else ±(σ_y + E_t·(|e| − e_y)).
/// Range: fit the tangent modulus over the strains the bend really reaches; the line has no end, so it overstates the stress at large
/// strain.
/// Source: <see cref="Sources.BeerJohnston4"/>
/// </remarks>
public sealed record LinearHardening : StressStrainLaw
{
    private readonly Ramp[] _ramp;

    private readonly double _yield;

    private readonly double _tangent;

    /// <summary>Makes the law from its modulus, yield stress and tangent modulus.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="yieldStress">Yield stress σ_y, greater than zero and less than E.</param>
    /// <param name="tangentModulus">Slope E_t beyond yield, zero or more and less than E.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LinearHardening(Pressure elasticModulus, Pressure yieldStress, Pressure tangentModulus)
        : base(Guard.Positive(elasticModulus, nameof(elasticModulus)))
    {
        _yield = LawRules.YieldBelowModulus(yieldStress, E);
        _tangent = Guard.NonNegative(tangentModulus, nameof(tangentModulus));
        if (_tangent >= E)
        {
            throw Guard.Fault(nameof(tangentModulus), tangentModulus,
                $"must be smaller than the elastic modulus, {LawRules.Gigapascals(E)}");
        }

        _ramp = [new(_yield / E, 1 - _tangent / E)];
    }

    /// <inheritdoc/>
    public override Pressure YieldStress => Pressure.FromPascals(_yield);

    /// <summary>Slope E_t beyond yield.</summary>
    public Pressure TangentModulus => Pressure.FromPascals(_tangent);

    internal override double YieldStrain => _ramp[0].Start;

    internal override LawShape Shape => new LineShape(_tangent / E);

    /// <inheritdoc/>
    public override StressStrainLaw WithYield(Pressure yieldStress) => new LinearHardening(ElasticModulus, yieldStress, TangentModulus);

    /// <summary>Whether modulus, yield and tangent modulus are the same.</summary>
    /// <param name="other">The law to compare with.</param>
    public bool Equals(LinearHardening? other) =>
        other is not null && E.Equals(other.E) && _yield.Equals(other._yield) && _tangent.Equals(other._tangent);

    /// <inheritdoc/>
    public override int GetHashCode() => (E, _yield, _tangent).GetHashCode();

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString() =>
        Invariant($"linear hardening, yield {_yield / 1e6:0.#} MPa, tangent modulus {_tangent / 1e6:0.#} MPa, E {E / 1e9:0.#} GPa");

    internal override double PlasticStrain(double strain) => _ramp[0].Rate * Math.Max(0, strain - _ramp[0].Start);

    internal override double PlasticRate(double strain) => strain >= _ramp[0].Start ? _ramp[0].Rate : 0;

    internal override StressStrainLaw InPlaneStrain(double poissonsRatio)
    {
        double modulus = Stiffened(E, poissonsRatio).Pascals;
        double plastic = PlaneStrainFactor * PlaneStrainFactor * E * _tangent / (E - _tangent);
        return new LinearHardening(
            Pressure.FromPascals(modulus), Pressure.FromPascals(PlaneStrainFactor * _yield),
                Pressure.FromPascals(modulus * plastic / (modulus + plastic)));
    }

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.Integrate(profile, _ramp, curvature, neutralAxis);

    internal override PlasticMoments MomentsOf(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.MomentsOf(profile, _ramp, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.Work(profile, _ramp, curvature, neutralAxis);

    internal override AxialSums AxialSumsOf(BandProfile profile, double neutralRadius, double neutralAxis) =>
        RampIntegrator.AxialSumsOf(profile, _ramp, neutralRadius, neutralAxis);
}
