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
public static class TubeOvalityCheck
{
    private const double Low = 0.08;

    private const double Medium = 4 / 9.0;

    private const string Validity =
        "A long, free, elastic tube; one in a groove or on a mandrel is far stiffer, by how much no source says. 8 % is the bound of pipe "
            + "codes.";

    /// <summary>Checks a loaded bend; null when the bar is no round tube.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="settings">Whether the tube is supported.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DistortionFinding? Of(LoadedBend loaded, DistortionSettings settings) =>
        Judge(Guard.NotNull(loaded, nameof(loaded)), Guard.NotNull(settings, nameof(settings))).Finding;

    /// <summary>Ovality (D_max − D_min)/D of a measured tube.</summary>
    /// <param name="largest">Largest outside diameter, greater than zero.</param>
    /// <param name="smallest">Smallest outside diameter, greater than zero and not greater than the largest.</param>
    /// <param name="nominal">Outside diameter before bending, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is outside its range.</exception>
    /// <remarks>
    /// Equation: (D_max − D_min)/D.
    /// Range: any tube.
    /// Source: <see cref="Sources.PipeBendWall"/>
    /// </remarks>
    public static Ratio Measured(Length largest, Length smallest, Length nominal)
    {
        double most = Guard.Positive(largest, nameof(largest));
        double least = Guard.Positive(smallest, nameof(smallest));
        return least <= most
            ? Ratio.FromDecimalFractions((most - least) / Guard.Positive(nominal, nameof(nominal)))
            : throw Guard.Fault(nameof(smallest), smallest, $"must not be greater than the largest diameter, {Guard.Text(largest)}");
    }

    internal static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
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
        RiskLevel free = Judgment.Level(ovality, Low, Medium);
        RiskLevel level = settings.Support.HoldsTube && free == RiskLevel.High ? RiskLevel.Medium : free;
        string sentence =
            ovality <= Medium
                ? Invariant(
                    $"A free tube would flatten to an ovality of {100 * ovality:0.0} %; pipe codes allow 8 %.{(free == RiskLevel.Low ? string.Empty : settings.Support.HoldsTube ? " Held in shape it bears more, and no source says how much: make a trial." : " A grooved die, a filling or a mandrel holds it in shape.")}") : Invariant($"A free tube would collapse at this radius.{(free == RiskLevel.Low ? string.Empty : settings.Support.HoldsTube ? " Held in shape it bears more, and no source says how much: make a trial." : " A grooved die, a filling or a mandrel holds it in shape.")}");
        return new DistortionFinding("tube ovality", ovality, Low, level, sentence, Sources.Brazier1927, Validity, () =>
        [
            Remedies.Radius(loaded, other => Judge(other, settings)),
            settings.Support.HoldsTube || level != RiskLevel.High ? null
                : Remedies.Support("hold the tube in shape: a die with a close groove, a filling, a mandrel"),
        ]);
    }
}
