using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>Flattening of a round tube that nothing holds in shape. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: ζ = κ²r⁴(1 − ν²)/t², r to the middle of the wall; ovality (D_max − D_min)/D = 2ζ; low up to 8 %, high above 4/9, where an
/// elastic tube collapses (ζ = 2/9).
/// Range: a long, free, elastic tube; a groove, a filling or a mandrel is far stiffer, and no formula for them is given. 8 % is the bound
/// of pipe codes at R ≥ 5 D and schedule 40 or thicker.
/// Source: <see cref="Sources.Brazier1927"/>
/// </remarks>
internal static class TubeOvalityCheck
{
    private const double Low = 0.08;

    private const double Medium = 4 / 9.0;

    private const string Validity =
        "A long, free, elastic tube; one in a groove or on a mandrel is far stiffer, by how much no source says. 8 % is the bound of pipe "
            + "codes.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (loaded.Analysis.Section.Features is not { TubeDiameter: { } diameter, WallThickness: { } wall })
        {
            return default;
        }

        double t = wall.Meters;
        double r = (diameter.Meters - t) / 2;
        double poisson = loaded.Analysis.Material.PoissonsRatio ?? 0.3;
        double root = loaded.State.Curvature * r * r / t;
        double ovality = 2 * root * root * (1 - poisson * poisson);
        HeldRisk risk = new(Judgment.Level(ovality, Low, Medium), settings.Support.HoldsTube);
        string note = risk.Note("Held in shape", " A grooved die, a filling or a mandrel holds it in shape.");
        string sentence = ovality <= Medium
            ? Invariant($"A free tube would flatten to an ovality of {100 * ovality:0.0} %; pipe codes allow 8 %.{note}")
            : $"A free tube would collapse at this radius.{note}";
        return new DistortionFinding(DistortionCheck.TubeOvality, "tube ovality", ovality, Low, risk.Level, sentence, Sources.Brazier1927,
            Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            risk.Remedy("hold the tube in shape: a die with a close groove, a filling, a mandrel"),
        ]);
    }
}
