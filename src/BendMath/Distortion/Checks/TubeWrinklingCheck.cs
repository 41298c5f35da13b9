using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>Wrinkles on the compressed inside of a round tube. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: e_cr = (2/3)·(t/r)·√(E_t/E_s), moduli at that strain, r to the middle of the wall; beside it the pipeline rule 0.5·t/D. Low up
/// to the smaller, high above the larger.
/// Range: a free wall; one in a groove or over a mandrel bears far more. A law without hardening lets the wall wrinkle as soon as it
/// yields.
/// Source: <see cref="Sources.PipelineWrinkling"/>
/// </remarks>
internal static class TubeWrinklingCheck
{
    private const string Validity =
        "A free wall; in a groove, over a mandrel or with a filling it bears far more, by how much no source says. Both formulas from "
            + "memory.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        double strain = -loaded.Strain(0);
        if (loaded.Analysis.Section.Features is not { TubeDiameter: { } outside, WallThickness: { } wall } || strain <= 0)
        {
            return default;
        }

        double t = wall.Meters;
        double diameter = outside.Meters;
        double cylinder = Critical(loaded.Analysis.Law, diameter, t);
        double pipeline = 0.5 * t / diameter;
        double limit = Math.Min(cylinder, pipeline);
        HeldRisk risk = new(Judgment.Level(strain, limit, Math.Max(cylinder, pipeline)), settings.Support.HoldsTube);
        string sentence = Invariant(
            $"The inside of the tube is compressed by {100 * strain:0.0} %; a free wall wrinkles at about {100 * cylinder:0.0#} % by "
                + $"plastic buckling and {100 * pipeline:0.0#} % by the pipeline rule.{risk.Note("Held in shape", " A close groove or a "
                + "mandrel holds it.")}");
        return new DistortionFinding(DistortionCheck.TubeWrinkling, "tube wrinkling", strain, limit, risk.Level, sentence,
            Sources.PipelineWrinkling, Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            risk.Remedy("hold the tube in shape: a die with a close groove, a filling, a mandrel"),
        ]);
    }

    /// <summary>
    /// The first strain not below its own critical one. At the elastic critical strain the wall wrinkles whatever is left of its stiffness,
    /// which ends the search.
    /// </summary>
    public static double Critical(StressStrainLaw law, double diameter, double wall)
    {
        double elastic = 2 / 3.0 * wall / ((diameter - wall) / 2);
        if (elastic <= law.YieldStrain)
        {
            return elastic;
        }

        double Excess(double strain) => strain / elastic - Math.Sqrt(Math.Max(0, law.TangentModulus(strain) / law.SecantModulus(strain)));
        double low = law.YieldStrain;
        if (Excess(low) >= 0)
        {
            return low;
        }

        double high = Math.Min(elastic, 1.05 * low);
        while (Excess(high) < 0)
        {
            low = high;
            high = Math.Min(elastic, 1.05 * low);
        }

        return Bracketed.Root(Excess, low, high);
    }
}
