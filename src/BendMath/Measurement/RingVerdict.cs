using System.Globalization;
using BendMath.Evidence;
using BendMath.Guards;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// A measured diameter (or radius) held against the wanted one. Who claims that a ring is good, or that it is bad, takes the error of the
/// measurement against himself; in between it cannot be told. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: d = measured − wanted; told when the error is at most ||d| − T|.
/// Range: measured and wanted are the same measure, both diameters or both radii.
/// Source: <see cref="Sources.Iso14253"/>
/// </remarks>
public sealed record RingVerdict
{
    private readonly double _wanted;

    private readonly double _tolerance;

    private RingVerdict(MeasuredLength measured, double wanted, double tolerance)
    {
        Measured = measured;
        _wanted = wanted;
        _tolerance = tolerance;
        double off = Off;
        double error = measured.ErrorMeters;

        // What rounding leaves of a difference that is the tolerance still is within it.
        double limit = tolerance + 1e-12 * wanted;
        IsWithin = Math.Abs(off) + error <= limit ? true : Math.Abs(off) - error > limit ? false : null;
    }

    /// <summary>What was measured, with its error.</summary>
    public MeasuredLength Measured { get; }

    /// <summary>What was wanted.</summary>
    public Length Wanted => Length.FromMeters(_wanted);

    /// <summary>Difference that is accepted either way.</summary>
    public Length Tolerance => Length.FromMeters(_tolerance);

    /// <summary>Measured less wanted: positive for a ring too wide.</summary>
    public Length Difference => Length.FromMeters(Off);

    /// <summary>
    /// Whether the ring is within the tolerance, error of the measurement included; null where the limit lies within that error and it
    /// cannot be told. Which way a ring is beyond it, <see cref="Difference"/> says.
    /// </summary>
    /// <remarks>
    /// Equation: within when |d| + U ≤ T; beyond when |d| − U &gt; T; d measured less wanted, U error at about 95 %, T tolerance.
    /// Range: any measure whose error is stated.
    /// Source: <see cref="Sources.Iso14253"/>
    /// </remarks>
    public bool? IsWithin { get; }

    /// <summary>Chance that the ring is within the tolerance.</summary>
    /// <remarks>
    /// Equation: Φ((T − d)/u) − Φ((−T − d)/u), u = U/2.
    /// Range: normally distributed errors and no knowledge of the ring but this measurement.
    /// Source: <see cref="Sources.Gum"/>
    /// </remarks>
    public Ratio ChanceWithin => Ratio.FromDecimalFractions(Chance());

    /// <summary>The largest error with which this reading could be told, or zero when it lies on the limit.</summary>
    public Length ErrorThatWouldTell => Length.FromMeters(Math.Abs(Math.Abs(Off) - _tolerance));

    /// <summary>The verdict in one sentence.</summary>
    public string Sentence => string.Format(
        CultureInfo.InvariantCulture,
        IsWithin switch
        {
            true => "Good: {0:0.##} mm {1}, within {2:0.##} mm even with the error of {3:0.##} mm.",
            null =>
                "Cannot be told: {0:0.##} mm {1} with an error of {3:0.##} mm, and {2:0.##} mm is accepted. Measure with an error of at "
                    + "most {4:0.##} mm.",
            _ => "Not good: {0:0.##} mm {1}, beyond {2:0.##} mm even with the error of {3:0.##} mm.",
        },
        Math.Abs(Off) * 1e3,
        Off >= 0 ? "too wide" : "too tight",
        _tolerance * 1e3,
        Measured.Error.Millimeters,
        ErrorThatWouldTell.Millimeters);

    private double Off => Measured.Meters - _wanted;

    /// <summary>Judges a measured ring.</summary>
    /// <param name="measured">The diameter or radius as measured.</param>
    /// <param name="wanted">The same measure as wanted, greater than zero.</param>
    /// <param name="tolerance">Difference that is accepted either way, zero or more.</param>
    /// <exception cref="ArgumentNullException">The measured length is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static RingVerdict Of(MeasuredLength measured, Length wanted, Length tolerance) => new(
        Guard.NotNull(measured, nameof(measured)), Guard.Positive(wanted, nameof(wanted)), Guard.NonNegative(tolerance, nameof(tolerance)));

    /// <summary>The verdict.</summary>
    public override string ToString() => Sentence;

    private double Chance()
    {
        double error = Measured.ErrorMeters / 2;
        return error == 0 ? (IsWithin == true ? 1 : 0)
            : Math.Max(0, Normal.CDF(0, error, _tolerance - Off) - Normal.CDF(0, error, -_tolerance - Off));
    }
}
