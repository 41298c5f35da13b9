using BendMath.Evidence;
using BendMath.Guards;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// How far from round a ring is, from diameters at several angles. Diameters cannot show a shape with three lobes: measure points for that.
/// Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: D_max − D_min of the readings, and their mean.
/// Range: the readings only.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed class OutOfRound
{
    private readonly double _cos;

    private readonly double _sin;

    private readonly bool _hasOval;

    private OutOfRound(DiameterReading[] readings)
    {
        Readings = Array.AsReadOnly(readings);
        Matrix<double> design =
            Matrix<double>.Build.Dense(readings.Length, 3,
                (i, k) => k == 0 ? 1 : k == 1 ? Math.Cos(2 * readings[i].Radians) : Math.Sin(2 * readings[i].Radians));
        Matrix<double> normal = design.TransposeThisAndMultiply(design) / readings.Length;

        // Three directions apart by 60° give a determinant of 1/4; where it vanishes fewer than three directions were measured.
        _hasOval = readings.Length >= 3 && normal.Determinant() > 1e-4;
        if (_hasOval)
        {
            Vector<double> fit = design.QR().Solve(Vector<double>.Build.Dense(readings.Length, i => readings[i].Meters));
            (_cos, _sin) = (fit[1], fit[2]);
        }
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<DiameterReading> Readings { get; }

    /// <summary>The largest diameter.</summary>
    public Length Largest => Length.FromMeters(Readings.Max(reading => reading.Meters));

    /// <summary>The smallest diameter.</summary>
    public Length Smallest => Length.FromMeters(Readings.Min(reading => reading.Meters));

    /// <summary>Mean of the readings.</summary>
    public Length Mean => Length.FromMeters(MeanMeters);

    /// <summary>Largest less smallest diameter.</summary>
    public Length Difference => Largest - Smallest;

    /// <summary>Out-of-round as a share of the mean diameter.</summary>
    /// <remarks>
    /// Equation: (D_max − D_min)/D_mean, in percent with 100.
    /// Range: the readings only; between them the ring may be further out.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Ratio Ovality => Ratio.FromDecimalFractions(Difference.Meters / MeanMeters);

    /// <summary>
    /// How much the diameters of the best oval differ from their mean either way, or null when fewer than three directions were measured.
    /// </summary>
    /// <remarks>
    /// Equation: D(φ) = D₀ + A·cos 2φ + B·sin 2φ by least squares; √(A² + B²).
    /// Range: at least three directions that are not almost alike; a diameter shows no odd lobes.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length? OvalAmplitude => _hasOval ? Length.FromMeters(Math.Sqrt(_cos * _cos + _sin * _sin)) : null;

    /// <summary>
    /// Direction of the longest diameter of the best oval, from −90° to 90°; squeeze the ring there. Null when fewer than three directions
    /// were measured.
    /// </summary>
    /// <remarks>
    /// Equation: φ = ½·atan2(B, A).
    /// Range: as <see cref="OvalAmplitude"/>; without meaning where that is lost in the scatter.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Angle? LongAxis => _hasOval ? Angle.FromRadians(Math.Atan2(_sin, _cos) / 2) : null;

    private double MeanMeters => Readings.Average(reading => reading.Meters);

    /// <summary>Judges the roundness.</summary>
    /// <param name="readings">Two to 1,000 diameters.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two readings, or one is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too many.</exception>
    public static OutOfRound Of(IReadOnlyList<DiameterReading> readings)
    {
        DiameterReading[] list = Guard.Items(readings, nameof(readings), 2);
        return list.Length <= 1000 ? new(list) : throw Guard.Fault(nameof(readings), list.Length, "must hold at most 1,000");
    }

    /// <summary>Difference and ovality.</summary>
    public override string ToString() =>
        Invariant($"{Difference.Millimeters:0.##} mm out of round, {Ovality.Percent:0.##} % of {MeanMeters * 1e3:0.##} mm");
}
