using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Materials;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
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

    /// <summary>2/√3: stress in plane strain over stress in the tensile test, by the yield condition of von Mises.</summary>
    private protected static double PlaneStrainFactor { get; } = 2 / Math.Sqrt(3);

    internal double E { get; }

    /// <summary>Strain up to which the law rests on data.</summary>
    internal virtual double DataStrain => double.PositiveInfinity;

    /// <summary>Exponent of strain far beyond yield, for the rigid power law; null for a law without one.</summary>
    internal virtual double? RigidExponent => null;

    /// <summary>Strain at the end of the elastic line, σ_y/E.</summary>
    internal abstract double YieldStrain { get; }

    /// <summary>What the law has in common with those of the same kind and another yield.</summary>
    internal abstract LawShape Shape { get; }

    /// <summary>Whether <see cref="WithYield"/> keeps the shape.</summary>
    internal virtual bool IsScaledByYield => true;

    /// <summary>Whether its sums over a section cost much more than those of a law of straight lines.</summary>
    internal virtual bool IsSmooth => false;

    /// <summary>The strain its shape is counted in.</summary>
    internal virtual double ReferenceStrain => YieldStrain;

    /// <summary>Whether the law can have a yield stress: it must lie on the elastic line.</summary>
    internal virtual bool Allows(Pressure yieldStress) => yieldStress.Pascals < E;

    /// <summary>Strains at which the law has a kink.</summary>
    internal virtual IReadOnlyList<double> Kinks => [YieldStrain];

    /// <summary>The same kind of law with another yield stress, all else kept.</summary>
    /// <param name="yieldStress">The new yield stress, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The yield stress is not a positive finite pressure, or the law allows none so
    /// high.</exception>
    public abstract StressStrainLaw WithYield(Pressure yieldStress);

    /// <summary>Stress at a strain, positive in tension.</summary>
    /// <param name="strain">Engineering strain, positive in tension.</param>
    /// <exception cref="ArgumentOutOfRangeException">The strain is not finite.</exception>
    public Pressure StressAt(Ratio strain) => Pressure.FromPascals(Stress(Guard.Finite(strain, nameof(strain))));

    /// <summary>Slope dσ/de of the law at a strain; at a kink, the slope of the part farther from zero.</summary>
    /// <param name="strain">Engineering strain, positive in tension.</param>
    /// <exception cref="ArgumentOutOfRangeException">The strain is not finite.</exception>
    public Pressure TangentModulusAt(Ratio strain) =>
        Pressure.FromPascals(E * (1 - PlasticRate(Math.Abs(Guard.Finite(strain, nameof(strain))))));

    internal double Stress(double strain) => E * (strain - Math.Sign(strain) * PlasticStrain(Math.Abs(strain)));

    /// <summary>What is doubtful of the law of a material at a strain.</summary>
    /// <param name="strain">The largest strain, without its sign.</param>
    /// <param name="acting">The law as it acts along the bar.</param>
    internal virtual IEnumerable<Advisory> DoubtsAt(double strain, StressStrainLaw acting) => [];

    /// <summary>e − σ/E for e ≥ 0.</summary>
    internal abstract double PlasticStrain(double strain);

    /// <summary>1 − E_t/E for e ≥ 0.</summary>
    internal abstract double PlasticRate(double strain);

    /// <summary>Both at once, for laws that find them together.</summary>
    internal virtual (double Plastic, double Rate) PlasticAt(double strain) => (PlasticStrain(strain), PlasticRate(strain));

    /// <summary>Every integral of the plastic strain over a section under e = κ(y − y_n).</summary>
    internal abstract PlasticSums Integrate(BandProfile profile, double curvature, double neutralAxis);

    /// <summary>Those of them that moments and release need.</summary>
    internal virtual PlasticMoments MomentsOf(BandProfile profile, double curvature, double neutralAxis) =>
        Integrate(profile, curvature, neutralAxis).Moments;

    /// <summary>∫∫e_p de dA, the plastic strain gathered along each fiber under e = κ(y − y_n).</summary>
    internal abstract double PlasticWork(BandProfile profile, double curvature, double neutralAxis);

    /// <summary>Those that the axial force of a section needs under e = (y − y_n)/ρ.</summary>
    internal virtual AxialSums AxialSumsOf(BandProfile profile, double neutralRadius, double neutralAxis)
    {
        PlasticSums sums = Integrate(profile, 1 / neutralRadius, neutralAxis);
        return new(sums.P0 * neutralRadius, sums.C0, sums.C1);
    }

    /// <summary>
    /// The law as it acts along a bar that cannot change its width: elastic with E/(1 − ν²); plastic without change of volume, so that by
    /// the yield condition of von Mises the stress is 2/√3 times, and the plastic strain √3/2 times, that of the tensile test.
    /// </summary>
    internal abstract StressStrainLaw InPlaneStrain(double poissonsRatio);

    private protected static Pressure Stiffened(double modulus, double poissonsRatio) =>
        Pressure.FromPascals(modulus / (1 - poissonsRatio * poissonsRatio));
}
