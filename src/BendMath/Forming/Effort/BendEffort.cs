using BendMath.Bending.MomentCurves;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Effort;

/// <summary>
/// What it takes to bend: moments, forces, work, and whether a person can do it. At the most tightly bent section; friction comes on top. A
/// bent bar under load is a loaded spring, and a lever must never be lengthened beyond what the bender is built for: where the pull is too
/// much, take a lighter bar, a wider ring, more advantage or a powered bender. Immutable and thread-safe.
/// </summary>
public sealed class BendEffort
{
    /// <summary>Hold-down over bending moment below which it is the rounding of a symmetric section, not a moment.</summary>
    private const double Rounding = 1e-9;

    private BendEffort(FormedBend formed, HandDrive drive)
    {
        Formed = formed;
        Drive = drive;
    }

    /// <summary>The formed bar.</summary>
    public FormedBend Formed { get; }

    /// <summary>How the hand drives the bender, as far as known.</summary>
    public HandDrive Drive { get; }

    /// <summary>Bending moment in the plane of the ring.</summary>
    public Torque BendingMoment => Formed.Loaded.BendingMoment;

    /// <summary>
    /// Moment M_r about the radial axis that keeps the section flat, signed as <see cref="LoadedBend.HoldDownMoment"/> is; zero for a bar
    /// that bends in its own plane.
    /// </summary>
    public Torque HoldDownMoment => Torque.FromNewtonMeters(HoldDown);

    /// <summary>Couple the hold-down must supply along the bent part, signed as its moment: newton-meters per meter of bar.</summary>
    /// <remarks>
    /// Equation: m = κ·M_r.
    /// Range: any held-flat bend; zero for a section symmetric about the plane of the ring.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Force HoldDownCouplePerLength => Force.FromNewtons(HoldDown * Formed.Loaded.State.Curvature);

    /// <summary>Force of the nose in three-point bending, or null for wrap bending.</summary>
    public Force? NoseForce => Formed.Contact?.NoseForce;

    /// <summary>Hand force square to the end of the lever, or null; <see cref="WhyNoHandForce"/> says why.</summary>
    /// <remarks>
    /// Equation: F = M_b/(L·A) where the lever turns the bar around the die; F = F_nose/A where it closes a nose on supports.
    /// Range: no friction; a real pull is larger.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Force? HandForce => Pull is { } pull ? Force.FromNewtons(pull) : null;

    /// <summary>Why there is no hand force, or null when there is one.</summary>
    public string? WhyNoHandForce => Pull is not null ? null
        : Formed.Contact is null ? "no lever length is given"
        : "not known: the hand closes the nose on the supports through a screw, lever or pump whose mechanical advantage nobody has "
            + "given; see the force of the nose";

    /// <summary>
    /// Whether nose and hand force are only the least it takes: where the bar lies down on a nose or in a closed pair, they start to lay it
    /// down, and pressing it all the way takes more than is calculated here.
    /// </summary>
    public bool IsLeast => Formed.Contact is { WrapsNose: true };

    /// <summary>
    /// Whether the hand force is within what the person can and may pull; null when there is no hand force or no limit was given, or when
    /// the force is the least it takes and that is within.
    /// </summary>
    public bool? IsWithinPullLimit => Pull is not { } pull || Drive.Limit is not { } limit ? null
        : pull > limit * (1 + 1e-12) ? false
        : IsLeast ? null
        : true;

    /// <summary>
    /// Lever length at which the hand force is at the limit; null when it cannot be said. An answer about forces only: the bender must be
    /// built for such a lever.
    /// </summary>
    /// <remarks>
    /// Equation: L = M_b/(A·F_limit) for wrap bending; L·F/F_limit for three-point bending, whose advantage grows with its lever.
    /// Range: a lever and an advantage that are given; no friction; not where the force is the least it takes.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length? LeverLengthAtLimit => Drive.Limit is not { } limit || IsLeast ? null
        : Formed.Contact is null ? Length.FromMeters(Formed.Loaded.Moment / (Gain * limit))
        : Pull is { } pull && Drive.Lever is { } lever ? Length.FromMeters(lever * pull / limit)
        : null;

    /// <summary>
    /// Mechanical advantage at which the hand force is at the limit, as <see cref="HandDrive.Advantage"/> counts it; below 1 there is
    /// strength to spare. Null when it cannot be said.
    /// </summary>
    /// <remarks>
    /// Equation: A = M_b/(L·F_limit) for wrap bending, F_nose/F_limit for three-point bending.
    /// Range: no friction; not where the force is the least it takes.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public double? AdvantageAtLimit => Drive.Limit is not { } limit || IsLeast ? null
        : Formed.Contact is { } contact ? contact.NoseForce.Newtons / limit
        : Drive.Lever is { } lever ? Formed.Loaded.Moment / (lever * limit)
        : null;

    /// <summary>Work to bend a unit of length of the straight bar: joules per meter.</summary>
    /// <remarks>
    /// Equation: w = ∫₀^κ M_b dκ.
    /// Range: held flat, from straight; quadrature to ten digits. Friction comes on top.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    public Force WorkPerLength => Force.FromNewtons(BendingWork.Of(Formed.Loaded.Analysis, Formed.Loaded.State));

    /// <summary>Work that comes back on release of a unit of length: what flies when the bar lets go. Joules per meter.</summary>
    /// <remarks>
    /// Equation: u = ½·(M_b·Δκ + M_r·Δκ_r).
    /// Range: released free, elastic; the part of the bar that is under load.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    public Force StoredEnergyPerLength
    {
        get
        {
            LoadedBend loaded = Formed.Loaded;
            (double f, double r) = loaded.State.Left(loaded.Analysis.Moments, free: true, loaded.Analysis.Unloading);
            return Force.FromNewtons((loaded.Moment * (loaded.State.Curvature - f) - loaded.HoldDown * r) / 2);
        }
    }

    private double Gain => Drive.Advantage ?? 1;

    private double? Pull => Formed.Contact is { } contact
        ? Drive.Advantage is { } gain ? contact.NoseForce.Newtons / gain : null
        : Drive.Lever is { } lever ? Formed.Loaded.Moment / (lever * Gain) : null;

    private double HoldDown => Formed.Loaded.HoldDown is var moment && Math.Abs(moment) > Rounding * Formed.Loaded.Moment ? moment : 0;

    /// <summary>The effort of a formed bar.</summary>
    /// <param name="formed">The formed bar.</param>
    /// <param name="leverLength">Length of the lever from the axis of the bend to the hand, greater than zero; null when not known.</param>
    /// <exception cref="ArgumentNullException">The formed bar is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The lever length is not positive and finite.</exception>
    public static BendEffort Of(FormedBend formed, Length? leverLength = null) =>
        new(Guard.NotNull(formed, nameof(formed)), new HandDrive(leverLength));

    /// <summary>The effort of a formed bar on a bender whose drive is known.</summary>
    /// <param name="formed">The formed bar.</param>
    /// <param name="drive">Lever, advantage and what the person can pull.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static BendEffort Of(FormedBend formed, HandDrive drive) =>
        new(Guard.NotNull(formed, nameof(formed)), Guard.NotNull(drive, nameof(drive)));

    /// <summary>Work to bend a length of straight bar, such as the developed length of the ring.</summary>
    /// <param name="length">Length of straight bar, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    /// <remarks>
    /// Equation: W = w·L₀.
    /// Range: every section of it bent as the formed one; friction comes on top.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    public Energy WorkFor(Length length) => Energy.FromJoules(Guard.Positive(length, nameof(length)) * WorkPerLength.Newtons);

    /// <summary>Energy that comes back at once when a length of bar under load lets go.</summary>
    /// <param name="length">Length of bar under load, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    /// <remarks>
    /// Equation: U = u·L₀.
    /// Range: the whole length bent as the formed section; in three-point bending an upper bound, since the moment falls to nothing at the
    /// supports.
    /// Source: <see cref="Sources.Dies"/>
    /// </remarks>
    public Energy StoredEnergyFor(Length length) =>
        Energy.FromJoules(Guard.Positive(length, nameof(length)) * StoredEnergyPerLength.Newtons);

    /// <summary>Bending and hold-down moment.</summary>
    public override string ToString() =>
        Invariant($"bending {BendingMoment.NewtonMeters:0.#} N·m, hold-down {HoldDownMoment.NewtonMeters:0.#} N·m");
}
