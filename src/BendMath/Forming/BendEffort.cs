using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>What it takes to bend: moments and forces at the most tightly bent section. Immutable and thread-safe.</summary>
public sealed class BendEffort
{
    /// <summary>Hold-down over bending moment below which it is the rounding of a symmetric section, not a moment.</summary>
    private const double Rounding = 1e-9;

    private readonly double? _lever;

    private BendEffort(FormedBend formed, double? lever)
    {
        Formed = formed;
        _lever = lever;
    }

    /// <summary>The formed bar.</summary>
    public FormedBend Formed { get; }

    /// <summary>Bending moment in the plane of the ring.</summary>
    public Torque BendingMoment => Formed.Loaded.BendingMoment;

    /// <summary>Moment about the radial axis that keeps the section flat, as a magnitude; zero for a bar that bends in its own plane.</summary>
    public Torque HoldDownMoment => Torque.FromNewtonMeters(HoldDown);

    /// <summary>Couple the hold-down must supply along the bent part, as a magnitude: newton-metres per metre of bar.</summary>
    /// <remarks>
    /// Equation: m = κ·|M_r|.
    /// Range: any held-flat bend; zero for a section symmetric about the plane of the ring.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Force HoldDownCouplePerLength => Force.FromNewtons(HoldDown * Formed.Loaded.State.Curvature);

    /// <summary>Force of the nose in three-point bending, or null for wrap bending.</summary>
    public Force? NoseForce => Formed.Contact?.NoseForce;

    /// <summary>Hand force square to the end of a lever that turns the bar around the die, or null; <see cref="WhyNoHandForce"/> says why.</summary>
    /// <remarks>
    /// Equation: F = M_b/L.
    /// Range: wrap bending, no mechanical advantage and no friction; a real pull is larger.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Force? HandForce => _lever is { } lever && WhyNoHandForce is null ? Force.FromNewtons(Formed.Loaded.Moment / lever) : null;

    /// <summary>Why there is no hand force, or null when there is one.</summary>
    public string? WhyNoHandForce => Formed.Contact is not null
        ? "not known: the hand closes the nose on the supports through a screw, lever or pump nobody has described; see the force of the nose"
        : _lever is null ? "no lever length is given" : null;

    private double HoldDown => Math.Abs(Formed.Loaded.HoldDown) is var moment && moment > Rounding * Formed.Loaded.Moment ? moment : 0;

    /// <summary>The effort of a formed bar.</summary>
    /// <param name="formed">The formed bar.</param>
    /// <param name="leverLength">Length of the lever from the axis of the bend to the hand, greater than zero; null when not known.</param>
    /// <exception cref="ArgumentNullException">The formed bar is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The lever length is not positive and finite.</exception>
    public static BendEffort Of(FormedBend formed, Length? leverLength = null) => new(
        Guard.NotNull(formed, nameof(formed)), leverLength is { } lever ? Guard.Positive(lever, nameof(leverLength)) : null);

    /// <summary>Bending and hold-down moment.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture, "bending {0:0.#} N·m, hold-down {1:0.#} N·m", BendingMoment.NewtonMeters, HoldDownMoment.NewtonMeters);
}
