using System.Globalization;
using BendMath.Evidence;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Radial leg, width or diameter over the loaded inside radius, against two bounds. Exactly at a bound counts as inside it.
/// </summary>
/// <remarks>
/// Equation: ρ = b/R_i; low for ρ ≤ low bound, medium for ρ ≤ high bound, else high.
/// Range: cold bending of mild steel on a hand bender; 0.15 is a 3/4 in leg at an inside radius of 5 in, which usually bends clean; the
/// upper bound 0.25 is a setting, not a finding.
/// Source: <see cref="Sources.CommonPractice"/>
/// </remarks>
internal static class LegToRadiusCheck
{
    private const string Validity = "Cold bending of mild steel on a hand bender; says nothing about walls and free edges.";

    public static Judgment Judge(LoadedBend loaded, DistortionSettings settings)
    {
        SectionFeatures features = loaded.Analysis.Section.Features;
        return Of(features.RadialDepth.Meters, loaded.State.InsideRadius, settings, features.WallThickness is not null, loaded);
    }

    public static DistortionFinding Of(double leg, double radius, DistortionSettings settings, bool hollow = false,
        LoadedBend? loaded = null)
    {
        double ratio = leg / radius;
        double low = settings.LowLegToRadius;
        RiskLevel level = Judgment.Level(ratio, low, settings.MediumLegToRadius);
        string rule =
            level != RiskLevel.Low
            ? "For a low risk use a leg of at most {3:0.#} mm or an inside radius of at least {4:0.#} mm while loaded; above {6:0.##} the "
                + "risk counts as high."
            : hollow ? "Up to {5:0.##} counts as low, which says nothing about the wall."
            : "Up to {5:0.##} such bends usually come out clean.";
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "The bar is {0:0.###} of the inside radius deep ({1:0.#} mm at {2:0.#} mm). " + rule,
            ratio,
            leg * 1e3,
            leg / ratio * 1e3,
            low * leg / ratio * 1e3,
            leg / low * 1e3,
            low,
            settings.MediumLegToRadius);
        bool practice = level == RiskLevel.Low && low == DistortionSettings.Default.LowLegToRadius && !hollow;
        return new(DistortionCheck.LegToRadius, "leg to radius", ratio, low, level, sentence,
            practice ? Sources.CommonPractice : Sources.Setting, Validity, () =>
        [
            Remedies.AtLeastRadius(leg / low),
            Remedies.AtMostLeg("leg", low * leg / ratio),
            loaded is null ? null : Remedies.Orientation(loaded, level, other => Judge(other, settings)),
        ])
        {
            Equation =
                new("d_r", "b_r/R", new("b_r", "leg, width or diameter in the plane of the ring", Length.FromMeters(leg)),
                    DemandEquation.LoadedRadius(radius)),
        };
    }
}
