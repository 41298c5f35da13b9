using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>Elastic up to the yield stress, then constant stress: no hardening.</summary>
/// <remarks>
/// Equation: σ = E·e for |e| ≤ σ_y/E, else ±σ_y.
/// Range: small strains of a material with a long yield plateau; without hardening the springback is a little too small at tight radii.
/// Source: <see cref="Sources.BeerJohnston4"/>
/// </remarks>
public sealed record PerfectlyPlastic : StressStrainLaw
{
    private readonly Ramp[] _ramp;

    private readonly double _yield;

    /// <summary>Makes the law from its modulus and yield stress.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="yieldStress">Yield stress σ_y, greater than zero and less than E.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the yield stress is not below the
    /// modulus.</exception>
    public PerfectlyPlastic(Pressure elasticModulus, Pressure yieldStress)
        : base(Guard.Positive(elasticModulus, nameof(elasticModulus)))
    {
        _yield = LawRules.YieldBelowModulus(yieldStress, E);
        _ramp = [new(_yield / E, 1)];
    }

    /// <inheritdoc/>
    public override Pressure YieldStress => Pressure.FromPascals(_yield);

    internal override double YieldStrain => _ramp[0].Start;

    internal override LawShape Shape => new LineShape(0);

    /// <inheritdoc/>
    public override StressStrainLaw WithYield(Pressure yieldStress) => new PerfectlyPlastic(ElasticModulus, yieldStress);

    /// <summary>Whether modulus and yield are the same.</summary>
    /// <param name="other">The law to compare with.</param>
    public bool Equals(PerfectlyPlastic? other) => other is not null && E.Equals(other.E) && _yield.Equals(other._yield);

    /// <inheritdoc/>
    public override int GetHashCode() => (E, _yield).GetHashCode();

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString() => Invariant($"perfectly plastic, yield {_yield / 1e6:0.#} MPa, E {E / 1e9:0.#} GPa");

    internal override double PlasticStrain(double strain) => _ramp[0].Rate * Math.Max(0, strain - _ramp[0].Start);

    internal override double PlasticRate(double strain) => strain >= _ramp[0].Start ? _ramp[0].Rate : 0;

    internal override StressStrainLaw InPlaneStrain(double poissonsRatio) =>
        new PerfectlyPlastic(Stiffened(E, poissonsRatio), Pressure.FromPascals(PlaneStrainFactor * _yield));

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.Integrate(profile, _ramp, curvature, neutralAxis);

    internal override PlasticMoments MomentsOf(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.MomentsOf(profile, _ramp, curvature, neutralAxis);

    internal override double PlasticWork(BandProfile profile, double curvature, double neutralAxis) =>
        RampIntegrator.Work(profile, _ramp, curvature, neutralAxis);

    internal override AxialSums AxialSumsOf(BandProfile profile, double neutralRadius, double neutralAxis) =>
        RampIntegrator.AxialSumsOf(profile, _ramp, neutralRadius, neutralAxis);
}
