using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Distortion.Checks;

/// <summary>Strain of the outside face against the elongation of the material. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: e_out = (h − y_n)·κ; low up to half the elongation, high above it.
/// Range: sound edges; a sheared or notched edge cracks earlier. Half the elongation as the lower bound is a setting, not a finding.
/// Source: <see cref="Sources.Setting"/>
/// </remarks>
internal static class OuterFiberCheck
{
    private const double LowShare = 0.5;

    public static Judgment Judge(LoadedBend loaded)
    {
        BarMaterial material = loaded.Analysis.Material;
        if (material.Elongation is not { } elongation)
        {
            return Judgment.Missing("outside face strain: the elongation of the material is not given");
        }

        double strain = loaded.OuterFiberStrain.DecimalFractions;
        double limit = LowShare * elongation.DecimalFractions;
        RiskLevel level = Judgment.Level(strain, limit, 2 * limit);
        string sentence = Invariant(
            $"The outside face stretches {100 * strain:0.0} %; {material.Name} breaks at about {elongation.Percent:0.#} %, and up to half "
                + $"of that counts as low.{(level == RiskLevel.Low ? string.Empty : " Use a wider ring or a shallower bar, and take nicks "
                + "off the edge.")}");
        return new DistortionFinding(DistortionCheck.OuterFiber,
            "outside face strain", strain, limit, level, sentence, Sources.Setting,
            "Sound edges; a sheared or notched edge cracks earlier.",
            () => [Remedies.Radius(loaded, Judge), Remedies.Orientation(loaded, level, Judge)])
        {
            Equation = new("d_e", "e_o/100", new DemandTerm("e_o", "strain of the outside face", 100 * strain, "%")),
        };
    }
}
