using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Tendency of rounds, squares, hexagons and the like to twist out of the plane of the ring: they are no stiffer one way than the other.
///
/// </summary>
/// <remarks>
/// Equation: I_b/I_r; low up to 0.5, medium up to 1, which is where rounds, squares and hexagons lie; above 1 the bar rolls over, see
/// <see cref="RollOverCheck"/>.
/// Range: sections symmetric about the plane of the ring with I_b/I_r between 0.5 and 1. Guided closely enough for
/// <see cref="RollOverCheck"/>, they count as low. The bounds are settings.
/// Source: <see cref="Sources.Setting"/>
/// </remarks>
internal static class TwistCheck
{
    private const double Low = 0.5;

    private const string Validity = "Sections symmetric about the plane of the ring; a tendency, no angle. The bounds are settings.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        AreaMoments m = loaded.Analysis.Section.Profile.Moments;
        double ratio = m.SecondY / m.SecondZ;
        if (ratio <= Low || ratio > 1 + 1e-9 || !RollOverCheck.IsSymmetric(loaded))
        {
            return default;
        }

        LateralBuckling? buckling = LateralBuckling.Of(loaded, settings);
        double? distance = buckling is null ? null : Low * buckling.Largest;
        bool guided = distance is { } most && settings.Support.UnsupportedLength is { } length && length.Meters <= most * (1 + 1e-12);
        string sentence = Invariant(
            $"The bar is {ratio:0.00} times as stiff in the plane of the ring as across it, so little keeps it from turning into a "
                + $"corkscrew; {(guided ? "guided as it is, it stays flat" : "watch that it stays flat, and turn it over between passes")}.");
        return new DistortionFinding(DistortionCheck.Twist, "twist", ratio, Low, guided ? RiskLevel.Low : RiskLevel.Medium, sentence,
            Sources.Setting, Validity,
            () =>
            [distance is { } meters ? Remedies.AtMostDistance(meters) : null,
                Remedies.Orientation(loaded, RiskLevel.Medium, other => Judge(other, settings))]);
    }
}
