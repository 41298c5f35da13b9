using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Sinking of the flat walls of a square or rectangular tube: the stress along the ring pushes the stretched outside wall toward the center
/// and the compressed inside wall away from it, both into the tube.
/// </summary>
/// <remarks>
/// Equation: b²/(R·t) of the inside wall; a strip of the wall, clamped at both edges, becomes a mechanism under the push σ·t/R at b²/(R·t)
/// = 4. High above it, low up to half of it.
/// Range: an empty tube without a mandrel, rigid plastic, the strength across the wall not used up by the stress along it; derived, no
/// measurement was found.
/// Source: <see cref="Sources.DistortionChecks"/>
/// </remarks>
internal static class WallSinkingCheck
{
    private const double Low = 2;

    private const double Medium = 4;

    private const string Validity =
        "A strip of the wall clamped at both edges, rigid plastic; derived, no measurement was found. Half of the mechanism as low is a "
            + "setting.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (FlatWall.Of(loaded.Analysis.Section) is not { } wall)
        {
            return default;
        }

        double radius = loaded.State.InsideRadius + wall.Thickness / 2;
        double ratio = wall.Width * wall.Width / (radius * wall.Thickness);
        HeldRisk risk = new(Judgment.Level(ratio, Low, Medium), settings.Support.HoldsTube);
        string sentence = Invariant(
            $"The walls along the axis of the ring are pushed into the tube; b²/(R·t) is {ratio:0.0#}, and at 4 an empty tube gives way."
                + $"{risk.Note("Filled or on a mandrel", " A filling or a mandrel holds them.")}");
        return new DistortionFinding(DistortionCheck.WallSinking, "wall sinking", ratio, Low, risk.Level, sentence,
            Sources.DistortionChecks, Validity, () =>
        [
            risk.Remedy("hold the walls from inside: a filling or a mandrel"),
            loaded.IsPulled ? null : Remedies.AtLeastRadius(wall.Width * wall.Width / (Low * wall.Thickness)),
            Remedies.Orientation(loaded, risk.Level, other => Judge(other, settings)),
        ]);
    }
}
