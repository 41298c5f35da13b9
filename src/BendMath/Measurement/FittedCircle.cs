using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Outlines;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// The best circle through measured points of a ring or arc: the sum of the squared distances from it is least. Its intervals tell how far
/// the scatter of the points leaves the circle open; that a ring is out of round, or a rule wrong, they cannot tell. Immutable and
/// thread-safe.
/// </summary>
/// <remarks>
/// Equation: min Σdᵢ², dᵢ = √((xᵢ − a)² + (yᵢ − b)²) − R, by Levenberg and Marquardt from Taubin's fit; covariance s²(JᵀJ)⁻¹, s² = Σdᵢ²/(n
/// − 3); intervals with Student's t of n − 3 degrees of freedom.
/// Range: independent errors of like size in all points, small against the rise of the arc.
/// Source: <see cref="Sources.CircleFitting"/>, <see cref="Sources.Gum"/>
/// </remarks>
public sealed class FittedCircle
{
    private readonly BestCircle _fit;

    private readonly double _covered;

    private readonly double[] _deviations;

    private FittedCircle(OutlinePoint[] points, BestCircle fit)
    {
        Points = Array.AsReadOnly(points);
        _fit = fit;
        _deviations = fit.Deviations;
        _covered = Covered(points, fit);
        Deviations = Array.AsReadOnly([.. _deviations.Select(deviation => Length.FromMeters(deviation))]);
        Advisories = [.. Doubts()];
    }

    /// <summary>The points.</summary>
    public IReadOnlyList<OutlinePoint> Points { get; }

    /// <summary>Center, to the right.</summary>
    public Length CenterX => Length.FromMeters(_fit.X);

    /// <summary>Center, upward.</summary>
    public Length CenterY => Length.FromMeters(_fit.Y);

    /// <summary>Radius of the face the points were taken on.</summary>
    public Length Radius => Length.FromMeters(_fit.Radius);

    /// <summary>Radius with its error at 95 %, for a verdict; three points leave no error to tell, so they give none.</summary>
    public MeasuredLength? MeasuredRadius => HalfWidth(_fit.Errors?.Radius, 0.95) is { } half ? new(_fit.Radius, half, null) : null;

    /// <summary>Standard deviation of a point from the circle, or null for three points.</summary>
    public Length? Scatter => Quantity(_fit.Scatter);

    /// <summary>Standard error of the radius, or null for three points.</summary>
    public Length? RadiusError => Quantity(_fit.Errors?.Radius);

    /// <summary>Standard error of the center to the right, or null for three points.</summary>
    public Length? CenterXError => Quantity(_fit.Errors?.X);

    /// <summary>Standard error of the center upward, or null for three points.</summary>
    public Length? CenterYError => Quantity(_fit.Errors?.Y);

    /// <summary>Distances of the points from the circle, outward positive, in their order.</summary>
    public IReadOnlyList<Length> Deviations { get; }

    /// <summary>Out-of-round of the points: from the one furthest inside to the one furthest outside.</summary>
    public Length OutOfRound => Length.FromMeters(_deviations.Max() - _deviations.Min());

    /// <summary>How much of the circle the points cover: all of it but the largest gap between neighbors.</summary>
    public Angle CoveredArc => Angle.FromRadians(_covered);

    /// <summary>What is doubtful about the fit.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    /// <summary>Fits a circle.</summary>
    /// <param name="points">From 3 to 10,000 points of one face, in any order.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than three points, one is missing, fewer than three differ, or they lie on a
    /// straight line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There are too many points.</exception>
    public static FittedCircle Of(IReadOnlyList<OutlinePoint> points)
    {
        OutlinePoint[] list = Guard.Items(points, nameof(points), 3);
        if (list.Length > 10_000)
        {
            throw Guard.Fault(nameof(points), list.Length, "must hold at most 10,000");
        }

        if (list.Distinct().Take(3).Count() < 3)
        {
            throw Guard.Refused(nameof(points), "must hold at least three that differ", "most of them coincide");
        }

        return BestCircle.Through([.. list.Select(point => point.Right)], [.. list.Select(point => point.Up)]) is { } fit
            && fit.Radius <= Guard.MostMeters
            ? new(list, fit)
            : throw Guard.Refused(nameof(points), "must show a curve", "as far as can be told they lie on a straight line");
    }

    /// <summary>The interval that holds the true radius with a confidence, or null for three points.</summary>
    /// <param name="confidence">From 50 % to 99.9 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public LengthRange? RadiusWithin(Ratio confidence) => Within(_fit.Radius, _fit.Errors?.Radius, confidence, 0);

    /// <summary>The interval that holds the true place of the center to the right with a confidence, or null for three points.</summary>
    /// <param name="confidence">From 50 % to 99.9 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public LengthRange? CenterXWithin(Ratio confidence) => Within(_fit.X, _fit.Errors?.X, confidence, -Guard.MostMeters);

    /// <summary>The interval that holds the true place of the center upward with a confidence, or null for three points.</summary>
    /// <param name="confidence">From 50 % to 99.9 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public LengthRange? CenterYWithin(Ratio confidence) => Within(_fit.Y, _fit.Errors?.Y, confidence, -Guard.MostMeters);

    /// <summary>Radius, error and out-of-round.</summary>
    public override string ToString() =>
        Invariant(
            $"radius {_fit.Radius * 1e3:0.###}{(MeasuredRadius is { } measured ? Invariant($" ± {measured.Error.Millimeters:0.###}") : string.Empty)} mm from {Counted.Text(Points.Count, "point")} over {CoveredArc.Degrees:0}°, {OutOfRound.Millimeters:0.##} mm out of round");

    private static Length? Quantity(double? meters) => meters is { } value ? Length.FromMeters(value) : null;

    private static double Covered(OutlinePoint[] points, BestCircle fit)
    {
        double[] angles = [.. points.Select(point => Math.Atan2(point.Up - fit.Y, point.Right - fit.X)).OrderBy(angle => angle)];
        double gap = angles[0] + 2 * Math.PI - angles[angles.Length - 1];
        for (int i = 1; i < angles.Length; i++)
        {
            gap = Math.Max(gap, angles[i] - angles[i - 1]);
        }

        return 2 * Math.PI - gap;
    }

    private double? HalfWidth(double? error, double confidence) =>
        error is { } value ? Math.Min(Guard.MostMeters, value * StudentT.InvCDF(0, 1, Points.Count - 3, (1 + confidence) / 2)) : null;

    private LengthRange? Within(double middle, double? error, Ratio confidence, double least)
    {
        double share = Guard.Positive(confidence, nameof(confidence));
        return share is < 0.5 or > 0.999 * (1 + 1e-12) ? throw Guard.Fault(nameof(confidence), confidence, "must be from 50 % to 99.9 %")
            : HalfWidth(error, share) is { } half
                ? new(Length.FromMeters(Math.Max(least, middle - half)), Length.FromMeters(Math.Min(Guard.MostMeters, middle + half)))
            : null;
    }

    private IEnumerable<Advisory> Doubts()
    {
        if (Points.Count == 3)
        {
            yield return new("no-spare-point", "A circle goes through any three points: nothing tells how good it is. Measure more.",
                Sources.Definition);
        }
        else if (Points.Count < 6)
        {
            yield return new("few-points",
                Invariant(
                    $"{Points.Count} points leave {Points.Count - 3} to tell the scatter from: the interval is wide and rough. Measure "
                        + $"six or more."), Sources.Setting);
        }

        if (CoveredArc.Degrees < 90)
        {
            yield return new("short-arc",
                Invariant(
                    $"The points cover {CoveredArc.Degrees:0.#}° of the circle. An error of the point in the middle moves the radius by "
                        + $"about {Math.Cos(_covered / 2) / (1 - Math.Cos(_covered / 2)):0.#} times as much: measure over more of the "
                        + $"ring."), Sources.Definition);
        }

        if (_fit.Errors?.Radius > 0.1 * _fit.Radius)
        {
            yield return new("radius-open", "The scatter of the points leaves the radius open by more than a tenth; its interval is rough.",
                Sources.Setting);
        }
    }
}
