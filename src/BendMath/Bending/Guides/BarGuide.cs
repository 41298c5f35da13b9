using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Bending.Guides;

/// <summary>
/// What keeps a bar flat while it is bent, and how much it gives: slot, platen, hold-down, rollers. Sections symmetric about the plane of
/// the ring do not lean, whatever the guide.
/// Immutable and thread-safe.
/// </summary>
public abstract record BarGuide
{
    private protected BarGuide()
    {
    }

    /// <summary>No guide against turning of the bar about its own axis: it turns to its end state.</summary>
    public static BarGuide FreeToTurn { get; } = new TurningGuide(0);

    /// <summary>
    /// A guide against turning of the bar about its own axis. Its center line stays in the plane of the die; its section leans until
    /// bending and guide are in balance, and without a guide until moment and curvature are parallel. Such a ring never comes off tighter
    /// than the die.
    /// </summary>
    /// <param name="stiffness">k_φ: moment per unit of length and radian, zero or more; 1 N is 1 N·mm per millimeter and radian.</param>
    /// <exception cref="ArgumentOutOfRangeException">The stiffness is negative or not finite.</exception>
    /// <remarks>
    /// Equation: κ·M_r − κ_r·M_b + k_φ·φ = 0 with κ = κ_t·cos φ and κ_r = κ_t·sin φ; the first root from φ = 0 in the direction the bar is
    /// pushed.
    /// Range: uniform turning, the middle of a long bend; near ends that cannot turn the bar's own torsion guides it. Friction between leg
    /// and die, which helps, is left out.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public static BarGuide AgainstTurning(Force stiffness) => new TurningGuide(Guard.NonNegative(stiffness, nameof(stiffness)));

    /// <summary>The loaded state at an inside radius, in meters.</summary>
    internal abstract BentState StateAt(BendAnalysis analysis, double insideRadius);
}

/// <summary>
/// A guide against curvature out of the plane of the ring. The bar may walk along the axis of the die; a rigid guide holds it flat, none
/// at all lets it lean until no moment about the
/// radial axis is left. A stiffness is a property of the bender, the same for every die. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: M_r = −k·κ_r.
/// Range: k/(E·I_r) is the number to look at: above 3 nearly rigid, below 0.002 nearly none.
/// Source: <see cref="Sources.Mechanisms"/>
/// </remarks>
public sealed record OutOfPlaneGuide : BarGuide
{
    private OutOfPlaneGuide(double stiffness) => Stiffness = stiffness;

    /// <summary>A guide that does not give: the bar is held flat.</summary>
    public static OutOfPlaneGuide Rigid { get; } = new(double.PositiveInfinity);

    /// <summary>No guide: the bar leans as it likes.</summary>
    public static OutOfPlaneGuide None { get; } = new(0);

    internal double Stiffness { get; }

    /// <summary>Whether the guide does not give.</summary>
    public bool IsRigid => double.IsInfinity(Stiffness);

    /// <summary>The stiffness k in newton square meters.</summary>
    /// <exception cref="InvalidOperationException">The guide is rigid.</exception>
    public double NewtonSquareMeters =>
        IsRigid ? throw new InvalidOperationException("A rigid guide has no finite stiffness; see IsRigid.") : Stiffness;

    /// <summary>A guide of a bending stiffness.</summary>
    /// <param name="newtonSquareMeters">k, moment over curvature, zero or more: 1 N·m² is 10⁶ N·mm².</param>
    /// <exception cref="ArgumentOutOfRangeException">The stiffness is negative or not finite.</exception>
    public static OutOfPlaneGuide Of(double newtonSquareMeters) => new(Guard.NonNegative(newtonSquareMeters, nameof(newtonSquareMeters)));

    /// <summary>Two guides beside the nose, one on either side.</summary>
    /// <param name="force">Side force that one of them takes, greater than zero.</param>
    /// <param name="deflection">What it gives under that force, greater than zero.</param>
    /// <param name="distance">Distance ℓ of either from the nose, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite.</exception>
    /// <remarks>
    /// Equation: k = c·ℓ³/2 with c = F/u: a curvature κ_r moves the bar by κ_r·ℓ²/2 at each guide, which pushes back on the lever ℓ.
    /// Range: curvature uniform between the guides.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public static OutOfPlaneGuide OfStations(Force force, Length deflection, Length distance)
    {
        double lever = Guard.Positive(distance, nameof(distance));
        return new(Guard.Positive(force, nameof(force)) / Guard.Positive(deflection, nameof(deflection)) * lever * lever * lever / 2);
    }

    /// <summary>A straight guide clamped to the bar, which bends along with it.</summary>
    /// <param name="elasticModulus">Young's modulus of the guide, greater than zero.</param>
    /// <param name="secondMoment">Second moment of its section about the radial axis, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite.</exception>
    /// <remarks>
    /// Equation: k = E·I.
    /// Range: an elastic guide.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public static OutOfPlaneGuide Clamped(Pressure elasticModulus, AreaMomentOfInertia secondMoment) =>
        new(Guard.Positive(elasticModulus, nameof(elasticModulus)) * Guard.Positive(secondMoment, nameof(secondMoment)));

    /// <summary>The stiffness beside that of the straight bar about the radial axis: the number to look at.</summary>
    /// <param name="analysis">The bar.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="InvalidOperationException">The guide is rigid.</exception>
    /// <remarks>
    /// Equation: k/(E·I_r).
    /// Range: above 3 the dish is half a degree to one degree more than held flat, below 0.002 within one degree of a bar not held; half
    /// the lean is left at about 0.06 to 0.1.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public double RatioFor(BendAnalysis analysis) =>
        NewtonSquareMeters / (Guard.NotNull(analysis, nameof(analysis)).Law.E * analysis.Moments.SecondZ);

    /// <summary>The stiffness.</summary>
    public override string ToString() => IsRigid ? "rigid guide"
        : Stiffness == 0 ? "no guide"
        : Invariant($"guide of {Stiffness:G4} N·m² against bending out of the plane");

    /// <summary>The guide of a share s = k/(k + E·I_r) between none, 0, and rigid, 1.</summary>
    internal static OutOfPlaneGuide OfShare(double share, BendAnalysis analysis) =>
        share >= 1 ? Rigid : new(share / (1 - share) * analysis.Law.E * analysis.Moments.SecondZ);

    internal override BentState StateAt(BendAnalysis analysis, double insideRadius) =>
        LeaningState.AtRadius(analysis.Section, analysis.Law, insideRadius, Stiffness);
}
