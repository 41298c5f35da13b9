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
public static class WallWrinklingCheck
{
    private const double MediumTimes = 3;

    private const string Validity =
        "A long plate free to turn at both edges, deformation theory; up to three times its strain counts as medium, which is a setting.";

    /// <summary>Checks a loaded bend; null when the bar is no square or rectangular tube.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="settings">Whether the tube is supported.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DistortionFinding? Of(LoadedBend loaded, DistortionSettings settings) =>
        Judge(Guard.NotNull(loaded, nameof(loaded)), Guard.NotNull(settings, nameof(settings))).Finding;

    /// <summary>Strain at which a long compressed plate wrinkles that is held straight along both edges.</summary>
    /// <param name="law">The stress–strain law.</param>
    /// <param name="width">Width of the plate between its edges, greater than zero.</param>
    /// <param name="thickness">Thickness, greater than zero and less than the width.</param>
    /// <exception cref="ArgumentNullException">The law is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    /// <remarks>
    /// Equation: e_cr = (π²/9)·(t/b)²·(2 + √(1 + 3·E_t/E_s)), moduli at that strain.
    /// Range: a long plate free to turn at both edges; incompressible.
    /// Source: <see cref="Sources.PlasticPlateBuckling"/>
    /// </remarks>
    public static Ratio CriticalStrain(StressStrainLaw law, Length width, Length thickness)
    {
        Guard.NotNull(law, nameof(law));
        double b = Guard.Positive(width, nameof(width));
        double t = Guard.Positive(thickness, nameof(thickness));
        return t < b ? Ratio.FromDecimalFractions(Critical(law, new(b, t)))
            : throw Guard.Fault(nameof(thickness), thickness, $"must be less than the width, {Guard.Text(width)}");
    }

    internal static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        if (FlatWall.Of(loaded.Analysis.Section) is not { } wall || -loaded.Strain(wall.Thickness / 2) is var strain && strain <= 0)
        {
            return default;
        }

        double limit = Critical(loaded.Analysis.Law, wall);
        RiskLevel free = Judgment.Level(strain, limit, MediumTimes * limit);
        RiskLevel level = settings.Support.HoldsTube && free == RiskLevel.High ? RiskLevel.Medium : free;
        string sentence = Invariant(
            $"The inside wall is compressed by {100 * strain:0.0#} %; as a free plate it wrinkles at about {100 * limit:0.0#} %.{(free == RiskLevel.Low ? string.Empty : settings.Support.HoldsTube ? " Held from inside it bears more, and no source says how much: make a trial." : " A filling or a mandrel holds it.")}");
        return new DistortionFinding("wall wrinkling", strain, limit, level, sentence, Sources.PlasticPlateBuckling, Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            settings.Support.HoldsTube || level != RiskLevel.High ? null
                : Remedies.Support("hold the walls from inside: a filling or a mandrel"),
            Remedies.Orientation(loaded, level, other => Judge(other, settings)),
        ]);
    }

    /// <summary>
    /// The strain that is its own critical one: between what a plate without hardening and an elastic one bear, 3 and 4 times (π²/9)(t/b)².
    /// A law whose stiffness comes back, as after a yield plateau, may have more than one; the lower end is tried first.
    /// </summary>
    private static double Critical(StressStrainLaw law, FlatWall wall)
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
