using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>How freely the wall of a bent tube changes its length around the tube.</summary>
public enum WallFlow
{
    /// <summary>The circumference keeps its length: the outside wall thins most.</summary>
    CircumferenceKept,

    /// <summary>The wall is free around the tube: half of the stretch comes out of its thickness.</summary>
    Free,
}

/// <summary>Thinning of the outside wall of a bent tube and thickening of its inside wall. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: circumference kept, t_out = t·R/(R + D/2), t_in = t·R/(R − D/2); wall free, the square roots of these factors; R to the middle
/// of the tube. Low up to 10 % thinning, high above 20 %.
/// Range: constant volume, neutral axis in the middle; reality lies between both. The bounds are settings.
/// Source: <see cref="Sources.Tang2000"/>
/// </remarks>
public static class TubeWallCheck
{
    private const double Low = 0.1;

    private const double Medium = 0.2;

    private const string Validity =
        "Constant volume, neutral axis in the middle of the tube, circumference kept: the worst case. The bounds are settings.";

    /// <summary>Checks a loaded bend; null when the bar is no tube.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public static DistortionFinding? Of(LoadedBend loaded) => Judge(Guard.NotNull(loaded, nameof(loaded))).Finding;

    /// <summary>Wall at the outside of a bend.</summary>
    /// <param name="wall">Wall before bending, greater than zero.</param>
    /// <param name="diameter">Outside diameter, or depth of the tube in the plane of the ring; greater than zero.</param>
    /// <param name="middleRadius">Radius of the bend to the middle of the tube, greater than half the diameter.</param>
    /// <param name="flow">How freely the wall flows.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: t·R/(R + D/2) with the circumference kept, t·√(R/(R + D/2)) with the wall free.
    /// Range: constant volume, neutral axis in the middle.
    /// Source: <see cref="Sources.Tang2000"/>
    /// </remarks>
    public static Length OutsideWall(Length wall, Length diameter, Length middleRadius, WallFlow flow) =>
        Wall(wall, diameter, middleRadius, flow, 1);

    /// <summary>Wall at the inside of a bend.</summary>
    /// <param name="wall">Wall before bending, greater than zero.</param>
    /// <param name="diameter">Outside diameter, or depth of the tube in the plane of the ring; greater than zero.</param>
    /// <param name="middleRadius">Radius of the bend to the middle of the tube, greater than half the diameter.</param>
    /// <param name="flow">How freely the wall flows.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: t·R/(R − D/2) with the circumference kept, t·√(R/(R − D/2)) with the wall free.
    /// Range: constant volume, neutral axis in the middle.
    /// Source: <see cref="Sources.Tang2000"/>
    /// </remarks>
    public static Length InsideWall(Length wall, Length diameter, Length middleRadius, WallFlow flow) =>
        Wall(wall, diameter, middleRadius, flow, -1);

    internal static Judgment Judge(LoadedBend loaded)
    {
        OrientedSection section = loaded.Analysis.Section;
        if (section.Features.WallThickness is not { } wall)
        {
            return default;
        }

        double depth = section.Height;
        double inside = loaded.State.InsideRadius;
        double middle = inside + depth / 2;
        double thinning = depth / (2 * middle + depth);
        RiskLevel level = Judgment.Level(thinning, Low, Medium);
        string sentence = Invariant(
            $"The outside wall thins by {100 * (1 - Math.Sqrt(1 - thinning)):0.0} to {100 * thinning:0.0} %, "
                + $"to {wall.Millimeters * (1 - thinning):0.##} mm at worst, and the inside wall thickens "
                + $"to {wall.Millimeters * middle / inside:0.##} mm at most.");
        return new DistortionFinding(
            "tube wall thinning", thinning, Low, level, sentence, Sources.Tang2000, Validity,
                () => [Remedies.Radius(loaded, Judge), Remedies.Orientation(loaded, level, Judge)]);
    }

    private static Length Wall(Length wall, Length diameter, Length middleRadius, WallFlow flow, int side)
    {
        double t = Guard.Positive(wall, nameof(wall));
        double half = Guard.Positive(diameter, nameof(diameter)) / 2;
        double middle = Guard.Positive(middleRadius, nameof(middleRadius));
        bool kept = Guard.Defined(flow, nameof(flow)) == WallFlow.CircumferenceKept;
        if (middle <= half * (1 + 1e-9))
        {
            throw Guard.Fault(nameof(middleRadius), middleRadius, $"must be greater than half the diameter, {Guard.MillimetersText(half)}");
        }

        double factor = middle / (middle + side * half);
        return Length.FromMeters(t * (kept ? factor : Math.Sqrt(factor)));
    }
}
