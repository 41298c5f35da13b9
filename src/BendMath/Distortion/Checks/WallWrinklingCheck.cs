using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>Wrinkles of the compressed inside wall of a square or rectangular tube. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: e_cr = (π²/9)·(t/b)²·(2 + √(1 + 3·E_t/E_s)), moduli at that strain; medium up to three times that strain.
/// Range: a long flat plate held straight along both edges and free to turn there, deformation theory; the walls beside it hold it better.
/// Three times is a setting.
/// Source: <see cref="Sources.PlasticPlateBuckling"/>
/// </remarks>
internal static class WallWrinklingCheck
{
    private const double MediumTimes = 3;

    private const string Validity =
        "A long plate free to turn at both edges, deformation theory; up to three times its strain counts as medium, which is a setting.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (FlatWall.Of(loaded.Analysis.Section) is not { } wall || -loaded.Strain(wall.Thickness / 2) is var strain && strain <= 0)
        {
            return default;
        }

        double limit = Critical(loaded.Analysis.Law, wall);
        HeldRisk risk = new(Judgment.Level(strain, limit, MediumTimes * limit), settings.Support.HoldsTube);
        string sentence = Invariant(
            $"The inside wall is compressed by {100 * strain:0.0#} %; as a free plate it wrinkles at about {100 * limit:0.0#} %."
                + $"{risk.Note("Held from inside", " A filling or a mandrel holds it.")}");
        return new DistortionFinding(DistortionCheck.WallWrinkling, "wall wrinkling", strain, limit, risk.Level, sentence,
            Sources.PlasticPlateBuckling, Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            risk.Remedy("hold the walls from inside: a filling or a mandrel"),
            Remedies.Orientation(loaded, risk.Level, other => Judge(other, settings)),
        ]);
    }

    /// <summary>
    /// The strain that is its own critical one: between what a plate without hardening and an elastic one bear, 3 and 4 times (π²/9)(t/b)².
    /// A law whose stiffness comes back, as after a yield plateau, may have more than one; the lower end is tried first.
    /// </summary>
    public static double Critical(StressStrainLaw law, FlatWall wall)
    {
        double unit = Math.PI * Math.PI / 9 * (wall.Thickness / wall.Width) * (wall.Thickness / wall.Width);
        double Factor(double strain) =>
            2 + Math.Sqrt(1 + 3 * Math.Min(1, Math.Max(0, law.TangentModulus(strain) / law.SecantModulus(strain))));
        double high = 4 * unit;
        double low = 3 * unit;
        return high <= law.YieldStrain ? high
            : Factor(low) * unit <= low ? low
            : Factor(high) * unit >= high ? high
            : Bracketed.Root(strain => (strain - Factor(strain) * unit) / unit, low, high);
    }
}
