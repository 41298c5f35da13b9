using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>Diameter from a tape laid around a closed ring. A tape shows the length of its middle, so its thickness counts.</summary>
public static class TapeMeasure
{
    /// <summary>Diameter of the face a tape was laid around from outside.</summary>
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
    public static MeasuredLength DiameterAround(Length reading, Length readingError, Length tapeThickness) =>
        Diameter(reading, readingError, tapeThickness, -1);

    /// <summary>Diameter of the face a tape was laid along from inside.</summary>
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
    public static MeasuredLength DiameterWithin(Length reading, Length readingError, Length tapeThickness) =>
        Diameter(reading, readingError, tapeThickness, 1);

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
