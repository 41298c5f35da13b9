using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>Thinning of the outside wall of a bent tube and thickening of its inside wall. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: circumference kept, t_out = t·R/(R + D/2), t_in = t·R/(R − D/2); wall free, the square roots of these factors; R to the middle
/// of the tube. Low up to 10 % thinning, high above 20 %.
/// Range: constant volume, neutral axis in the middle; reality lies between both. The bounds are settings.
/// Source: <see cref="Sources.Tang2000"/>
/// </remarks>
internal static class TubeWallCheck
{
    private const double Low = 0.1;

    private const double Medium = 0.2;

    private const string Validity =
        "Constant volume, neutral axis in the middle of the tube, circumference kept: the worst case. The bounds are settings.";

    public static Judgment Judge(LoadedBend loaded)
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
        return new DistortionFinding(DistortionCheck.TubeWall,
            "tube wall thinning", thinning, Low, level, sentence, Sources.Tang2000, Validity,
                () => [Remedies.Radius(loaded, Judge), Remedies.Orientation(loaded, level, Judge)]);
    }
}
