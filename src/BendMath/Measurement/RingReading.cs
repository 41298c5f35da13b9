using System.Globalization;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>How a ring was measured.</summary>
public enum ReadingKind
{
    /// <summary>Across, as a diameter or a radius to a line of the bar.</summary>
    Size,

    /// <summary>By a tape around the inside face.</summary>
    TapeAroundInside,

    /// <summary>By a tape around the outside face.</summary>
    TapeAroundOutside,

    /// <summary>By the rise over a chord against the inside face.</summary>
    ChordAgainstInside,

    /// <summary>By the rise under a chord against the outside face.</summary>
    ChordAgainstOutside,
}

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
    private readonly double _first;

    private readonly double _rise;

    private RingReading(ReadingKind kind, BendRadius radius, double first, double rise = 0)
    {
        Kind = kind;
        Radius = radius;
        _first = first;
        _rise = rise;
    }

    /// <summary>How it was measured.</summary>
    public ReadingKind Kind { get; }

    /// <summary>The radius that follows, with the line it is measured to.</summary>
    public BendRadius Radius { get; }

    /// <summary>Length on the tape, once around; null when no tape was used.</summary>
    public Length? Tape => Kind is ReadingKind.TapeAroundInside or ReadingKind.TapeAroundOutside ? Length.FromMeters(_first) : null;

    /// <summary>Length of the chord; null when none was used.</summary>
    public Length? Chord => IsChord ? Length.FromMeters(_first) : null;

    /// <summary>Greatest distance between chord and face; null when no chord was used.</summary>
    public Length? Rise => IsChord ? Length.FromMeters(_rise) : null;

    private bool IsChord => Kind is ReadingKind.ChordAgainstInside or ReadingKind.ChordAgainstOutside;

    /// <summary>A ring measured across.</summary>
    /// <param name="size">Diameter or radius with the line it is measured to.</param>
    /// <exception cref="ArgumentNullException">The size is null.</exception>
    public static RingReading Of(BendRadius size) => new(ReadingKind.Size, Guard.NotNull(size, nameof(size)), 2 * size.Radius);

    /// <summary>A tape once around the inside face.</summary>
    /// <param name="tape">What the tape says, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    public static RingReading TapeAroundInside(Length tape) => Around(tape, ReadingKind.TapeAroundInside);

    /// <summary>A tape once around the outside face.</summary>
    /// <inheritdoc cref="TapeAroundInside(Length)"/>
    public static RingReading TapeAroundOutside(Length tape) => Around(tape, ReadingKind.TapeAroundOutside);

    /// <summary>A chord with both ends on the inside face, and the rise from its middle out to the face.</summary>
    /// <param name="chord">Length of the chord, greater than zero.</param>
    /// <param name="rise">Greatest distance between chord and face, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive and finite, or the rise is too small for a finite
    /// radius.</exception>
    public static RingReading ChordAgainstInside(Length chord, Length rise) => Across(chord, rise, ReadingKind.ChordAgainstInside);

    /// <summary>A chord between two points of the outside face, and the rise from its middle out to the face.</summary>
    /// <inheritdoc cref="ChordAgainstInside(Length, Length)"/>
    public static RingReading ChordAgainstOutside(Length chord, Length rise) => Across(chord, rise, ReadingKind.ChordAgainstOutside);

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
        double error = Guard.NonNegative(readingError, nameof(readingError)) * (Tape is not null ? 1 / (2 * Math.PI)
            : IsChord ? Math.Abs(0.5 - _first / _rise * (_first / _rise) / 8) : 0.5);
        return error < double.PositiveInfinity
            ? Length.FromMeters(error)
            : throw Guard.Fault(nameof(readingError), readingError, "must be small beside the rise");
    }

    /// <summary>The reading in millimeters.</summary>
    public override string ToString() => Kind switch
    {
        ReadingKind.Size => Radius.ToString(),
        ReadingKind.TapeAroundInside => Text("tape of {0:0.##} mm around the inside"),
        ReadingKind.TapeAroundOutside => Text("tape of {0:0.##} mm around the outside"),
        ReadingKind.ChordAgainstInside => Text("rise of {1:0.##} mm over a chord of {0:0.##} mm against the inside"),
        _ => Text("rise of {1:0.##} mm over a chord of {0:0.##} mm against the outside"),
    };

    private static RingReading Around(Length tape, ReadingKind kind)
    {
        double length = Guard.Positive(tape, nameof(tape));
        return new(kind, To(kind == ReadingKind.TapeAroundInside, length / (2 * Math.PI), nameof(tape)), length);
    }

    private static RingReading Across(Length chord, Length rise, ReadingKind kind)
    {
        double radius = ChordAndRise.RadiusOf(chord, rise).Meters;
        return new(kind, To(kind == ReadingKind.ChordAgainstInside, radius, nameof(rise)), Guard.Positive(chord, nameof(chord)),
            Guard.Positive(rise, nameof(rise)));
    }

    private static BendRadius To(bool inside, double radius, string name)
    {
        Length length = Length.FromMeters(radius);
        Guard.Positive(length, name);
        return inside ? BendRadius.Inside(length) : BendRadius.Outside(length);
    }

    private string Text(string format) => string.Format(CultureInfo.InvariantCulture, format, _first * 1e3, _rise * 1e3);
}
