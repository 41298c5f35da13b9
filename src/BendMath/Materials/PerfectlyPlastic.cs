using System.Globalization;
using BendMath.Materials;
using BendMath.Numerics;
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
    private readonly BilinearLaw _law;

    private readonly double _yield;

    /// <summary>Makes the law from its modulus and yield stress.</summary>
    /// <param name="elasticModulus">Young's modulus E, greater than zero.</param>
    /// <param name="yieldStress">Yield stress σ_y, greater than zero and less than E.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the yield stress is not below the modulus.</exception>
    public PerfectlyPlastic(Pressure elasticModulus, Pressure yieldStress)
        : base(Guard.Positive(elasticModulus, nameof(elasticModulus)))
    {
        _yield = LawRules.YieldBelowModulus(yieldStress, E);
        _law = new(_yield / E, 1);
    }

    /// <inheritdoc/>
    public override Pressure YieldStress => Pressure.FromPascals(_yield);

    internal override double YieldStrain => _law.ElasticLimit;

    /// <inheritdoc/>
    public override StressStrainLaw WithYield(Pressure yieldStress) => new PerfectlyPlastic(ElasticModulus, yieldStress);

    /// <summary>Kind of law and its numbers.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture, "perfectly plastic, yield {0:0.#} MPa, E {1:0.#} GPa", _yield / 1e6, E / 1e9);

    internal override double PlasticStrain(double strain) => _law.PlasticStrain(strain);

    internal override double PlasticRate(double strain) => _law.PlasticRate(strain);

    internal override PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis) =>
        PlasticIntegrator.Integrate(profile, _law, curvature, neutralAxis);
}
