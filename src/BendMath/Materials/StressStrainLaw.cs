using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Stress as a function of strain, the same in tension and compression: σ(−e) = −σ(e). Strain is engineering strain, tension positive.
/// A law is elastic, σ = E·e, up to its yield and nowhere steeper than E. Immutable and thread-safe.
/// </summary>
public abstract record StressStrainLaw
{
    private protected StressStrainLaw(double elasticModulus) => E = elasticModulus;

    /// <summary>Young's modulus E, the slope of the elastic line and of unloading.</summary>
    public Pressure ElasticModulus => Pressure.FromPascals(E);

    /// <summary>Stress at which the law leaves the elastic line.</summary>
    public abstract Pressure YieldStress { get; }

    internal double E { get; }

    /// <summary>Strain at the end of the elastic line, σ_y/E.</summary>
    internal abstract double YieldStrain { get; }

    /// <summary>The same kind of law with another yield stress, all else kept.</summary>
    /// <param name="yieldStress">The new yield stress, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield stress is not a positive finite pressure, or the law allows none so high.</exception>
    public abstract StressStrainLaw WithYield(Pressure yieldStress);

    /// <summary>Stress at a strain, positive in tension.</summary>
    /// <param name="strain">Engineering strain, positive in tension.</param>
    public Pressure StressAt(Ratio strain) => Pressure.FromPascals(Stress(Guard.Finite(strain, nameof(strain))));

    /// <summary>Slope dσ/de of the law at a strain; at a kink, the slope of the part farther from zero.</summary>
    /// <param name="strain">Engineering strain, positive in tension.</param>
    public Pressure TangentModulusAt(Ratio strain) => Pressure.FromPascals(E * (1 - PlasticRate(Math.Abs(Guard.Finite(strain, nameof(strain))))));

    internal double Stress(double strain) => E * (strain - Math.Sign(strain) * PlasticStrain(Math.Abs(strain)));

    /// <summary>e − σ/E for e ≥ 0.</summary>
    internal abstract double PlasticStrain(double strain);

    /// <summary>1 − E_t/E for e ≥ 0.</summary>
    internal abstract double PlasticRate(double strain);

    /// <summary>Every integral of the plastic strain over a section under e = κ(y − y_n).</summary>
    internal abstract PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis);

    /// <summary>The three that the search for the neutral axis needs.</summary>
    internal virtual AxialSums Balance(BandProfile profile, double curvature, double neutralAxis)
    {
        PlasticSums sums = Integrate(profile, curvature, neutralAxis);
        return new(sums.P0, sums.C0, sums.C1);
    }
}
