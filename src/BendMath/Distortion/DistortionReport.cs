using BendMath.Distortion.Checks;
using BendMath.Guards;

namespace BendMath.Distortion;

/// <summary>All distortion checks that apply to a bend, the worst first. Immutable and thread-safe.</summary>
public sealed partial class DistortionReport
{
    private DistortionReport(LoadedBend loaded, IReadOnlyList<DistortionFinding> findings, IReadOnlyList<string> notChecked)
    {
        Loaded = loaded;
        Findings = findings;
        NotChecked = notChecked;
    }

    /// <summary>The bend.</summary>
    public LoadedBend Loaded { get; }

    /// <summary>The findings, sorted by level and then by margin, the worst first.</summary>
    public IReadOnlyList<DistortionFinding> Findings { get; }

    /// <summary>Forms of distortion that can befall this section and that no check covers, and checks that could not be made.</summary>
    public IReadOnlyList<string> NotChecked { get; }

    /// <summary>The worst level of what is checked; <see cref="NotChecked"/> may hold worse.</summary>
    public RiskLevel Level => Findings[0].Level;

    /// <summary>
    /// What would lower the worst finding, each way with its number; empty where the risk is low or nothing the library knows of helps.
    /// </summary>
    public IReadOnlyList<DistortionRemedy> Advice => Findings[0].Remedies;

    /// <summary>Makes the report with <see cref="DistortionSettings.Default"/>.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public static DistortionReport Of(LoadedBend loaded) => Of(loaded, DistortionSettings.Default);

    /// <summary>Makes the report with leg-to-radius bounds of the shop's own.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="legToRadius">The bounds.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DistortionReport Of(LoadedBend loaded, LegToRadiusCheck legToRadius) =>
        Of(loaded, new DistortionSettings(legToRadius: Guard.NotNull(legToRadius, nameof(legToRadius))));

    /// <summary>Makes the report with what the shop knows of supports and bounds.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="settings">The settings.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DistortionReport Of(LoadedBend loaded, DistortionSettings settings)
    {
        Guard.NotNull(loaded, nameof(loaded));
        Judgment[] judgments =
        [
            Guard.NotNull(settings, nameof(settings)).LegToRadius.Of(loaded),
            OuterFiberCheck.Judge(loaded),
            FreeEdgeCheck.Judge(loaded, settings),
            LegAngleCheck.Judge(loaded, settings),
            RollOverCheck.Judge(loaded, settings),
            TwistCheck.Judge(loaded, settings),
            DishCheck.Judge(loaded, settings),
            TubeRatioCheck.Judge(loaded, settings),
            TubeWallCheck.Judge(loaded),
            TubeOvalityCheck.Judge(loaded, settings),
            TubeWrinklingCheck.Judge(loaded, settings),
            WallSinkingCheck.Judge(loaded, settings),
            WallWrinklingCheck.Judge(loaded, settings),
            PipeWallCheck.Judge(loaded, settings),
            KeystoneCheck.Judge(loaded),
            .. settings.Rules.Select(rule => new Judgment(StrainRuleCheck.Of(loaded, rule))),
        ];
        return new(
            loaded,
            [.. judgments.Select(judgment => judgment.Finding).OfType<DistortionFinding>().OrderByDescending(finding => finding.Level).ThenBy(finding => finding.Margin)],
            [.. NotBuilt(loaded.Analysis.Section), .. judgments.Select(judgment => judgment.NotMade).OfType<string>()]);
    }

    /// <summary>The worst level and the number of findings.</summary>
    public override string ToString() => $"{Level} risk, {Counted.Text(Findings.Count, "check")}";

    /// <summary>Forms of distortion that can befall the section and that no check of this library covers.</summary>
    private static IEnumerable<string> NotBuilt(OrientedSection section)
    {
        if (!section.Features.OutstandsAreKnown)
        {
            yield return "legs and walls: nobody said which parts of the outline stand out or are thin";
        }

        if (FlatWall.Of(section) is not null)
        {
            yield return "side walls of the tube: whether those in the plane of the ring bulge";
        }
    }
}
