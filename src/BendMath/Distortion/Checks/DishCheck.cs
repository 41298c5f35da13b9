using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Lean of the section of a released ring that is not symmetric about its plane, and the hold-down moment that keeps it flat while it is
/// bent.
/// </summary>
/// <remarks>
/// Equation: tan of the dish angle, Δκ_r/κ_f; low up to 0.01, high above 0.03.
/// Range: elastic unloading of a ring that was held flat while bent; no measurement was found to hold it against. The bounds are settings.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
internal static class DishCheck
{
    private const double Low = 0.01;

    private const double Medium = 0.03;

    private const string Validity =
        "A ring held flat while it was bent, elastic release; derived, no measurement was found. The bounds are settings.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (RollOverCheck.IsSymmetric(loaded) || !loaded.IsHeldFlat)
        {
            return default;
        }

        ReleasedBend released = loaded.Release(Release.Free);
        if (released.IsStraight || Math.Abs(released.Ring.DishAngle.Degrees) > 89)
        {
            return Judgment.Missing("dish: the bar springs back straight, or nearly");
        }

        double angle = released.Ring.DishAngle.Radians;
        double slope = Math.Abs(Math.Tan(angle));
        bool held = settings.Release == Release.HeldFlat;
        RiskLevel level = held ? RiskLevel.Low : Judgment.Level(slope, Low, Medium);
        string sentence = Invariant(
            $"Left free, the section of the ring leans {Math.Abs(angle) * 180 / Math.PI:0.00}°, {100 * slope:0.0} mm in 100 mm, wider at "
                + $"the {(angle > 0 ? "toe of the axial leg" : "heel")}; a hold-down moment of {Math.Abs(loaded.HoldDown):0.#} N·m keeps "
                + $"the bar flat while it is bent.{(held ? " Held flat where it is used, it does not lean." : string.Empty)}");
        return new DistortionFinding(DistortionCheck.Dish, "dish", slope, Low, level, sentence, Sources.Mechanics, Validity, () =>
            [Remedies.Support("hold the ring flat where it is used, or flatten it afterward"),
                Remedies.Orientation(loaded, level, other => Judge(other, settings))])
        {
            Equation = new("d_β", "sin(β·π/180)/cos(β·π/180)", new DemandTerm("β", "dish angle", Math.Abs(angle) * 180 / Math.PI, "°")),
        };
    }
}
