using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// A ring as the shop measured it: across, with a tape, or with a straightedge, and against which face. The radius follows from the
/// reading; the reading itself is kept. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: R = D/2; R = L/(2π) for a tape once around; R = c²/(8h) + h/2 for a chord c with rise h; to the face that was measured.
/// Range: a round ring; a tape is taken to have no thickness (one of 0.15 mm reads 0.5 mm long around the outside).
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed record RingReading
{
    private readonly double? _tape;

    private readonly double? _chord;

    private readonly double _rise;

    private RingReading(BendRadius radius, double? tape = null, double? chord = null, double rise = 0)
    {
        Radius = radius;
        _tape = tape;
        _chord = chord;
        _rise = rise;
    }

    /// <summary>The radius that follows, with the line it is measured to.</summary>
    public BendRadius Radius { get; }

    /// <summary>Length on the tape, once around; null when no tape was used.</summary>
    public Length? Tape => _tape is { } meters ? Length.FromMeters(meters) : null;

    /// <summary>Length of the chord; null when none was used.</summary>
    public Length? Chord => _chord is { } meters ? Length.FromMeters(meters) : null;

    /// <summary>Greatest distance between chord and face; null when no chord was used.</summary>
    public Length? Rise => _chord is null ? null : Length.FromMeters(_rise);

    /// <summary>A ring measured across.</summary>
    /// <param name="size">Diameter or radius with the line it is measured to.</param>
    /// <exception cref="ArgumentNullException">The size is null.</exception>
    public static RingReading Of(BendRadius size) => new(Guard.NotNull(size, nameof(size)));

    /// <summary>A tape once around the inside face.</summary>
    /// <param name="tape">What the tape says, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    public static RingReading TapeAroundInside(Length tape) => Around(tape, inside: true);

    /// <summary>A tape once around the outside face.</summary>
    /// <inheritdoc cref="TapeAroundInside(Length)"/>
    public static RingReading TapeAroundOutside(Length tape) => Around(tape, inside: false);

    /// <summary>A chord with both ends on the inside face, and the rise from its middle out to the face.</summary>
    /// <param name="chord">Length of the chord, greater than zero.</param>
    /// <param name="rise">Greatest distance between chord and face, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive and finite, or the rise is too small for a finite
    /// radius.</exception>
    public static RingReading ChordAgainstInside(Length chord, Length rise) => Across(chord, rise, inside: true);

    /// <summary>A chord between two points of the outside face, and the rise from its middle out to the face.</summary>
    /// <inheritdoc cref="ChordAgainstInside(Length, Length)"/>
    public static RingReading ChordAgainstOutside(Length chord, Length rise) => Across(chord, rise, inside: false);

    /// <summary>How far the radius is off when the reading is: the diameter, the tape or the rise.</summary>
    /// <param name="readingError">Error of the reading, zero or more.</param>
    /// <remarks>
    /// Equation: dR = dD/2; dL/(2π); dh·|1/2 − c²/(8h²)|.
    /// Range: an error that is small beside the reading.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The error is negative or not finite, or the rise is too small for it.</exception>
    public Length RadiusErrorFor(Length readingError)
    {
        double error = Guard.NonNegative(readingError, nameof(readingError)) * (_tape is not null ? 1 / (2 * Math.PI)
            : _chord is { } chord ? Math.Abs(0.5 - chord / _rise * (chord / _rise) / 8) : 0.5);
        return error < double.PositiveInfinity
            ? Length.FromMeters(error)
            : throw Guard.Fault(nameof(readingError), readingError, "must be small beside the rise");
    }

    /// <summary>The reading in millimeters.</summary>
    public override string ToString()
    {
        string face = Radius.Reference == RadiusReference.InsideFace ? "inside" : "outside";
        return _tape is { } tape ? Invariant($"tape of {tape * 1e3:0.##} mm around the {face}")
            : _chord is { } chord ? Invariant($"rise of {_rise * 1e3:0.##} mm over a chord of {chord * 1e3:0.##} mm against the {face}")
            : Radius.ToString();
    }

    private static RingReading Around(Length tape, bool inside)
    {
        double length = Guard.Positive(tape, nameof(tape));
        return new(To(inside, length / (2 * Math.PI), nameof(tape)), tape: length);
    }

    private static RingReading Across(Length chord, Length rise, bool inside)
    {
        double radius = ChordAndRise.RadiusOf(chord, rise).Meters;
        return new(To(inside, radius, nameof(rise)), chord: Guard.Positive(chord, nameof(chord)), rise: Guard.Positive(rise, nameof(rise)));
    }

    private static BendRadius To(bool inside, double radius, string name)
    {
        Length length = Length.FromMeters(radius);
        Guard.Positive(length, name);
        return inside ? BendRadius.Inside(length) : BendRadius.Outside(length);
    }
}
