using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Distortion.Checks;

/// <summary>Radius of a tube bend in diameters, R/D, with the diameter in walls, D/t, beside it. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: D/R against 1/3 without a mandrel and 1/1.5 with one, R to the middle of the tube.
/// Range: "about", for round tube; thinner walls, larger D/t, need more.
/// Source: <see cref="Sources.GrooverTube"/>
/// </remarks>
internal static class TubeRatioCheck
{
    private const double Free = 1 / 3.0;

    private const double Supported = 1 / 1.5;

    private const string Validity = "Round tube, a rule of thumb of a textbook; thin walls need more.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        OrientedSection section = loaded.Analysis.Section;
        if (section.Features is not { TubeDiameter: { } diameter, WallThickness: { } wall })
        {
            return default;
        }

        double middle = loaded.State.InsideRadius + section.Height / 2;
        double demand = section.Height / middle;
        double limit = settings.Support.HoldsTube ? Supported : Free;
        RiskLevel level = Judgment.Level(demand, limit, Supported);
        string sentence = Invariant(
            $"The radius to the middle of the tube is {1 / demand:0.0#} diameters; about 3 do without a mandrel, 1.5 with one. The tube "
                + $"is {diameter.Meters / wall.Meters:0.#} walls in diameter.");
        return new DistortionFinding(DistortionCheck.TubeRatio, "tube radius in diameters", demand, limit, level, sentence,
            Sources.GrooverTube, Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            demand <= Supported ? Remedies.Support("hold the tube in shape with a mandrel or a filling") : null,
        ])
        {
            Equation =
                new("d_D", "h/(R + h/2)", new("h", "depth of the bar", section.Depth),
                    DemandEquation.LoadedRadius(loaded.State.InsideRadius)),
        };
    }
}
