using System.Globalization;

namespace BendMath;

/// <summary>Strain of the outside face against the elongation of the material. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: e_out = (h − y_n)·κ; low up to half the elongation, high above it.
/// Range: sound edges; a sheared or notched edge cracks earlier. Half the elongation as the lower bound is a setting, not a finding.
/// Source: <see cref="Sources.Setting"/>
/// </remarks>
public static class OuterFiberCheck
{
    private const double LowShare = 0.5;

    /// <summary>Checks a loaded bend; null when the elongation of the material is unknown.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public static DistortionFinding? Of(LoadedBend loaded)
    {
        BarMaterial material = Guard.NotNull(loaded, nameof(loaded)).Analysis.Material;
        if (material.Elongation is not { } elongation)
        {
            return null;
        }

        double strain = loaded.OuterFiberStrain.DecimalFractions;
        double limit = LowShare * elongation.DecimalFractions;
        RiskLevel level = strain <= limit ? RiskLevel.Low : strain <= 2 * limit ? RiskLevel.Medium : RiskLevel.High;
        string sentence = string.Format(
            CultureInfo.InvariantCulture,
            "The outside face stretches {0:0.0} %; {1} breaks at about {2:0.#} %, and up to half of that counts as low.{3}",
            100 * strain,
            material.Name,
            elongation.Percent,
            level == RiskLevel.Low ? string.Empty : " Use a wider ring or a shallower bar, and take nicks off the edge.");
        return new("outside face strain", strain, limit, level, sentence, Sources.Setting);
    }
}
