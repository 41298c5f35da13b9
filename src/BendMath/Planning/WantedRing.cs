using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// The ring or arc that is wanted: size, extent, how many, how exact, and how a full ring is closed. Immutable and thread-safe.
/// </summary>
public sealed record WantedRing
{
    private const int MostPieces = 100_000;

    private const double LeastTolerance = 1e-6;

    private readonly Length? _tolerance;

    /// <summary>Says what is wanted.</summary>
    /// <param name="radius">The size and the line it is measured to.</param>
    /// <param name="arc">How much of the ring.</param>
    /// <param name="quantity">How many of them, from 1 to 100,000.</param>
    /// <param name="tolerance">Difference in diameter, or in twice the radius of an arc, that is accepted, greater than zero; null for
    /// <see cref="UsualTolerance"/> of the wanted diameter.</param>
    /// <param name="joint">How the ends of a full ring are cut and closed; null when nobody says.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">An arc is to be closed like a ring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The quantity or the tolerance is outside its range.</exception>
    public WantedRing(BendRadius radius, ArcExtent arc, int quantity = 1, Length? tolerance = null, JointPreparation? joint = null)
    {
        Radius = Guard.NotNull(radius, nameof(radius));
        Arc = Guard.NotNull(arc, nameof(arc));
        Quantity = quantity is >= 1 and <= MostPieces
            ? quantity
            : throw Guard.Fault(nameof(quantity), quantity, Invariant($"must be from 1 to {MostPieces:N0}"));
        _tolerance = tolerance is { } accepted ? Length.FromMeters(Guard.Positive(accepted, nameof(tolerance))) : null;
        Joint = joint is null || arc.IsFullRing
            ? joint
            : throw Guard.Refused(nameof(arc), "must be a full ring where it is trimmed or closed like one", $"is an {arc}");
    }

    /// <summary>
    /// The tolerance of a ring that states none, as a share of the wanted diameter: 2 %, but at least 0.001 mm. A setting, not a finding.
    /// </summary>
    public static Ratio UsualTolerance => Ratio.FromPercent(2);

    /// <summary>The size and the line it is measured to.</summary>
    public BendRadius Radius { get; }

    /// <summary>How much of the ring.</summary>
    public ArcExtent Arc { get; }

    /// <summary>How many of them.</summary>
    public int Quantity { get; }

    /// <summary>Difference in diameter, or in twice the radius of an arc, that is accepted.</summary>
    public Length Tolerance =>
        _tolerance ?? Length.FromMeters(Math.Max(LeastTolerance, 2 * Radius.Value.Meters * UsualTolerance.DecimalFractions));

    /// <summary>Whether the tolerance is stated; otherwise it is <see cref="UsualTolerance"/> of the wanted diameter.</summary>
    public bool IsToleranceGiven => _tolerance is not null;

    /// <summary>How the ends of a full ring are cut and closed, or null.</summary>
    public JointPreparation? Joint { get; }

    /// <summary>The same ring with some of it changed, checked as a new one; what is left out stays.</summary>
    /// <param name="radius">Another size, or null.</param>
    /// <param name="arc">Another extent, or null.</param>
    /// <param name="quantity">Another number of them, or null.</param>
    /// <param name="tolerance">Another accepted difference, or null.</param>
    /// <param name="joint">Another joint, or null.</param>
    /// <exception cref="ArgumentException">An arc is to be closed like a ring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The quantity or the tolerance is outside its range.</exception>
    public WantedRing With(BendRadius? radius = null, ArcExtent? arc = null, int? quantity = null, Length? tolerance = null,
        JointPreparation? joint = null) =>
        new(radius ?? Radius, arc ?? Arc, quantity ?? Quantity, tolerance ?? _tolerance, joint ?? Joint);

    /// <summary>Number, extent and size.</summary>
    public override string ToString() => Invariant($"{Quantity} × {Arc}, {Radius}");
}
