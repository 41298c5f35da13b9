using BendMath.Evidence;
using BendMath.Guards;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// How flat a ring lies, from heights above a plate: how far it is from its best plane, and how its section leans, which is its dish.
/// Measure with z = 0 down, for an angle its radial leg on the plate and its axial leg up. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: largest less smallest height, or lean, of the readings.
/// Range: the readings only.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed class RingFlatness
{
    private readonly double[] _residuals;

    private readonly double _cos;

    private readonly double _sin;

    private readonly double[]? _leans;

    private RingFlatness(HeightReading[] readings, Vector<double> plane, double[] residuals, double[]? leans)
    {
        Readings = Array.AsReadOnly(readings);
        (_cos, _sin) = (plane[1], plane[2]);
        _residuals = residuals;
        _leans = leans;
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<HeightReading> Readings { get; }

    /// <summary>Highest less lowest reading of the inside edge, as the ring lies.</summary>
    public Length HeightDifference =>
        Length.FromMeters(Readings.Max(reading => reading.InnerMeters) - Readings.Min(reading => reading.InnerMeters));

    /// <summary>How far the ring is from its best plane: from the lowest to the highest point.</summary>
    /// <remarks>
    /// Equation: h(φ) = h₀ + A·cos φ + B·sin φ by least squares; largest less smallest of hᵢ − h(φᵢ).
    /// Range: an almost round ring, heights small against its radius; the inside edge.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length Flatness => Length.FromMeters(_residuals.Max() - _residuals.Min());

    /// <summary>
    /// How much higher the best plane lies on one side of the ring than on the other: the ring stands on something, or its ends are not
    /// level.
    /// </summary>
    /// <remarks>
    /// Equation: 2·√(A² + B²).
    /// Range: as <see cref="Flatness"/>.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length Tilt => Length.FromMeters(2 * Math.Sqrt(_cos * _cos + _sin * _sin));

    /// <summary>
    /// Mean lean of the section, to compare with <see cref="FinishedRing.DishAngle"/>'s meaning: positive when the inside edge stands
    /// higher. Null when the outside edge was not measured everywhere.
    /// </summary>
    /// <remarks>
    /// Equation: mean of asin((h_inner − h_outer)/w), w the distance between the edges.
    /// Range: a face that is straight from edge to edge; a tilt of the ring on the plate cancels around it.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Angle? Dish => _leans is { } leans ? Angle.FromRadians(leans.Average()) : null;

    /// <summary>Largest less smallest lean, or null: a twist of the bar.</summary>
    public Angle? LeanDifference => _leans is { } leans ? Angle.FromRadians(leans.Max() - leans.Min()) : null;

    /// <summary>Judges the flatness.</summary>
    /// <param name="readings">From 4 to 1,000 readings around the ring.</param>
    /// <param name="edgeDistance">Distance between the two edges, across the face on the plate; greater than zero.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than four readings, one is missing, or they are not spread around the
    /// ring.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too many readings, or the distance is not positive and finite or smaller
    /// than a difference of heights.</exception>
    public static RingFlatness Of(IReadOnlyList<HeightReading> readings, Length edgeDistance)
    {
        HeightReading[] list = Guard.Items(readings, nameof(readings), 4);
        double width = Guard.Positive(edgeDistance, nameof(edgeDistance));
        if (list.Length > 1000)
        {
            throw Guard.Fault(nameof(readings), list.Length, "must hold at most 1,000");
        }

        Matrix<double> design =
            Matrix<double>.Build.Dense(list.Length, 3,
                (i, k) => k == 0 ? 1 : k == 1 ? Math.Cos(list[i].Radians) : Math.Sin(list[i].Radians));
        Matrix<double> normal = design.TransposeThisAndMultiply(design) / list.Length;
        if (normal.Determinant() < 1e-3)
        {
            throw Guard.Refused(nameof(readings), "must be spread around the ring", "are too close together to show its plane");
        }

        double[]? leans = null;
        if (Array.TrueForAll(list, reading => reading.OuterMeters is not null))
        {
            double[] differences = [.. list.Select(reading => reading.InnerMeters - reading.OuterMeters!.Value)];
            leans = differences.Max(difference => Math.Abs(difference)) < width
                ? [.. differences.Select(difference => Math.Asin(difference / width))]
                : throw Guard.Fault(nameof(edgeDistance), edgeDistance,
                    $"must be greater than the difference of the heights of its "
                        + $"edges, {Guard.MillimetersText(differences.Max(difference => Math.Abs(difference)))}");
        }

        Vector<double> heights = Vector<double>.Build.Dense(list.Length, i => list[i].InnerMeters);
        Vector<double> plane = design.QR().Solve(heights);
        return new(list, plane, (heights - design * plane).ToArray(), leans);
    }

    /// <summary>Flatness and dish.</summary>
    public override string ToString() =>
        Dish is null ? Invariant($"{Flatness.Millimeters:0.##} mm from flat")
            : Invariant($"{Flatness.Millimeters:0.##} mm from flat, dish {(Dish?.Degrees):0.##}°");
}
