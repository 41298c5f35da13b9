using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// A length as measured, with its error: the true value lies within the error of it in about 95 of 100 cases, which is two standard errors.
/// Errors of readings are stated in the same sense, and carry it over to what is computed from them. Immutable and thread-safe.
/// </summary>
public sealed record MeasuredLength
{
    private readonly double _value;

    private readonly double _error;

    /// <summary>A measured length.</summary>
    /// <param name="value">The value, greater than zero.</param>
    /// <param name="error">Its error either way, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public MeasuredLength(Length value, Length error)
        : this(Guard.Positive(value, nameof(value)), Guard.Place(error, nameof(error)), null)
    {
    }

    internal MeasuredLength(double value, double error, LengthRange? worstCase)
    {
        _value = value;
        _error = error;
        WorstCase = worstCase;
    }

    /// <summary>The value.</summary>
    public Length Value => Length.FromMeters(_value);

    /// <summary>Its error either way: two standard errors, about 95 %.</summary>
    public Length Error => Length.FromMeters(_error);

    /// <summary>
    /// Where the value lies when every reading is off by all of its error in the worst way, or null where no readings are known.
    /// </summary>
    public LengthRange? WorstCase { get; }

    /// <summary>Twice the length: a diameter from a radius.</summary>
    public MeasuredLength Twice => new(2 * _value, 2 * _error, WorstCase?.Twice);

    internal double Meters => _value;

    internal double ErrorMeters => _error;

    /// <summary>Diameter of the face of a closed ring a tape was laid around from outside. A tape shows the length of its middle, so its
    /// thickness counts.</summary>
    /// <param name="reading">What the tape shows once around, greater than zero.</param>
    /// <param name="readingError">Error of the reading either way, zero or more.</param>
    /// <param name="tapeThickness">Thickness of the tape, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or the tape is too thick or the error too large for a
    /// diameter to be left.</exception>
    /// <remarks>
    /// Equation: D = P/π − t, ΔD = ΔP/π.
    /// Range: a closed ring; of one out of round it is the mean diameter, from above by the square of the ovality.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static MeasuredLength DiameterByTapeAround(Length reading, Length readingError, Length tapeThickness) =>
        Diameter(reading, readingError, tapeThickness, -1);

    /// <summary>Diameter of the face of a closed ring a tape was laid along from inside.</summary>
    /// <param name="reading">What the tape shows once around, greater than zero.</param>
    /// <param name="readingError">Error of the reading either way, zero or more.</param>
    /// <param name="tapeThickness">Thickness of the tape, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or the error is too large for a diameter to be
    /// left.</exception>
    /// <remarks>
    /// Equation: D = P/π + t, ΔD = ΔP/π.
    /// Range: a closed ring; the tape must touch all around.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static MeasuredLength DiameterByTapeWithin(Length reading, Length readingError, Length tapeThickness) =>
        Diameter(reading, readingError, tapeThickness, 1);

    /// <summary>Value and error in millimeters.</summary>
    public override string ToString() => Invariant($"{_value * 1e3:0.##} ± {_error * 1e3:0.##} mm");

    private static MeasuredLength Diameter(Length reading, Length readingError, Length tapeThickness, int sign)
    {
        double length = Guard.Positive(reading, nameof(reading));
        double error = Guard.Place(readingError, nameof(readingError)) / Math.PI;
        double thickness = Guard.NonNegative(tapeThickness, nameof(tapeThickness));
        double diameter = length / Math.PI + sign * thickness;
        return diameter <= Guard.LeastMeters
            ? throw Guard.Fault(nameof(tapeThickness), tapeThickness,
                $"must be less than {Guard.MillimetersText(length / Math.PI)}, the reading over π")
            : error >= diameter
                ? throw Guard.Fault(nameof(readingError), readingError,
                    $"must be less than the reading, {Guard.Text(reading)}, by enough to leave a diameter")
            : diameter + error > Guard.MostMeters
                ? throw Guard.Fault(nameof(tapeThickness), tapeThickness,
                    $"must leave a diameter of at most {Guard.MillimetersText(Guard.MostMeters)}")
            : new(diameter, error, new(Length.FromMeters(diameter - error), Length.FromMeters(diameter + error)));
    }
}
