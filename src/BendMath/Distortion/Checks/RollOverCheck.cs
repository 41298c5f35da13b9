using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Rolling over of a bar that is at least as stiff in the plane of the ring as across it: lateral buckling between sideways supports.
///
/// </summary>
/// <remarks>
/// Equation: L/L_cr with L_cr of <see cref="LateralBuckling.LargestSupportDistance"/>; low up to half of it, high above it.
/// Range: as of <see cref="LateralBuckling"/>; a bar has a crook of its own, so half the distance as the lower bound is a setting.
/// Source: <see cref="Sources.TimoshenkoGere"/>
/// </remarks>
internal static class RollOverCheck
{
    private const double Low = 0.5;

    private const string Validity =
        "Sections symmetric about the plane of the ring, without warping, the bar between the supports straight, the moment even; the "
            + "smaller of deformation and incremental theory. Half the distance as the lower bound is a setting.";

    /// <summary>Whether the bar can roll over at all.</summary>
    public static bool Applies(LoadedBend loaded)
    {
        AreaMoments m = loaded.Analysis.Section.Profile.Moments;
        return m.SecondY >= m.SecondZ * (1 - 1e-9);
    }

    public static bool IsSymmetric(LoadedBend loaded)
    {
        AreaMoments m = loaded.Analysis.Section.Profile.Moments;
        return Math.Abs(m.Product) <= 1e-9 * Math.Sqrt(m.SecondY * m.SecondZ);
    }

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (!Applies(loaded))
        {
            return default;
        }

        if (!IsSymmetric(loaded))
        {
            return Judgment.Missing(
                "rolling over between supports: the formula is for sections symmetric about the plane of the ring; how far this one "
                    + "drifts unheld is its roll-over angle");
        }

        if (LateralBuckling.Of(loaded, settings) is not { } buckling)
        {
            return Judgment.Missing("rolling over sideways: the torsion constant of the section is not known and not given");
        }

        double critical = buckling.Largest;
        if (settings.Support.UnsupportedLength is not { } length)
        {
            return Judgment.Missing(Invariant(
                $"rolling over sideways: the distance between supports is not given; low up to {Low * critical * 1e3:0.#} mm, and "
                    + $"at {critical * 1e3:0.#} mm the bar buckles"));
        }

        double demand = length.Meters / critical;
        RiskLevel level = Judgment.Level(demand, Low, 1);
        string sentence = Invariant(
            $"At this moment the bar buckles sideways between supports {critical * 1e3:0.#} mm apart (deformation "
                + $"theory {buckling.DistanceByDeformationTheory.Millimeters:0.#} mm, "
                + $"incremental {buckling.DistanceByIncrementalTheory.Millimeters:0.#} mm); yours are {length.Millimeters:0.#} mm apart, "
                + $"and up to half the distance counts as low.");
        return new DistortionFinding(DistortionCheck.RollOver, "rolling over", demand, Low, level, sentence, Sources.TimoshenkoGere,
            Validity, () =>
            [Remedies.AtMostDistance(Low * critical), Remedies.Orientation(loaded, level, other => Judge(other, settings))]);
    }
}
