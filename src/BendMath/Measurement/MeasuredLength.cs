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

    /// <summary>Value and error in millimeters.</summary>
    public override string ToString() => Invariant($"{_value * 1e3:0.##} ± {_error * 1e3:0.##} mm");
}
