using BendMath.Distortion.Checks;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>All distortion checks that apply to a bend, the worst first. Immutable and thread-safe.</summary>
public sealed partial class DistortionReport
{
    private static readonly Func<LoadedBend, DistortionSettings, Judgment>[] Checks =
    [
        LegToRadiusCheck.Judge,
        (loaded, _) => OuterFiberCheck.Judge(loaded),
        FreeEdgeCheck.Judge,
        LegAngleCheck.Judge,
        RollOverCheck.Judge,
        TwistCheck.Judge,
        DishCheck.Judge,
        TubeRatioCheck.Judge,
        (loaded, _) => TubeWallCheck.Judge(loaded),
        TubeOvalityCheck.Judge,
        TubeWrinklingCheck.Judge,
        WallSinkingCheck.Judge,
        WallWrinklingCheck.Judge,
        PipeWallCheck.Judge,
        (loaded, _) => KeystoneCheck.Judge(loaded),
    ];

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

    /// <summary>
    /// The leg that, without curling, would carry as much along the axis of the ring as the leg does while it curls; null when no leg lies
    /// along that axis.
    /// </summary>
    /// <remarks>
    /// Equation: t/2 + b·(sinh 2λ + sin 2λ)/(λ·(cosh 2λ + cos 2λ + 2)), λ⁴ = 3(1 − ν²)·(b²/(R·t))², ν = 0.3; b the width of the leg from
    /// the middle of the other leg, R to the middle of the leg.
    /// Range: a strip of a cylinder, clamped along the heel, free at its edge, elastic.
    /// Source: <see cref="Sources.DistortionChecks"/>
    /// </remarks>
    public Length? EffectiveLeg => LegAngleCheck.EffectiveLegOf(Loaded) is { } leg ? Length.FromMeters(leg) : null;

    /// <summary>
    /// The turn of a leg along the axis of the ring at which its free edge is neither stretched nor compressed any more: the size of a turn
    /// to expect, and no bound, for the rest of the leg pushes on. Null when there is no such leg, or it is too short for its edge to get
    /// there.
    /// </summary>
    /// <remarks>
    /// Equation: asin(|y_n − y_m|/b), y_n the neutral axis and y_m the middle of the leg, from the inside face; b the width of the leg from
    /// the middle of the other leg.
    /// Range: held flat, a leg that stays straight, heel and neutral axis where they were. If nothing resisted at the heel it would turn on
    /// to 1.5 times that sine (elastic) or √2 times (plastic), and as it gives way the neutral axis follows.
    /// Source: <see cref="Sources.DistortionChecks"/>
    /// </remarks>
    public Angle? TurnThatRelievesEdge => LegAngleCheck.TurnOf(Loaded) is { } radians ? Angle.FromRadians(radians) : null;

    /// <summary>The finding of a check, of the strain rules the worst; null where the check does not apply or could not be made.</summary>
    /// <param name="kind">The check.</param>
    /// <exception cref="ArgumentOutOfRangeException">The check is not defined.</exception>
    public DistortionFinding? Find(DistortionCheck kind)
    {
        Guard.Defined(kind, nameof(kind));
        return Findings.FirstOrDefault(finding => finding.Kind == kind);
    }

    /// <summary>Makes the report with <see cref="DistortionSettings.Default"/>.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public static DistortionReport Of(LoadedBend loaded) => Of(loaded, DistortionSettings.Default);

    /// <summary>Makes the report with what the shop knows of supports and bounds.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="settings">The settings.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DistortionReport Of(LoadedBend loaded, DistortionSettings settings)
    {
        Guard.NotNull(loaded, nameof(loaded));
        Guard.NotNull(settings, nameof(settings));
        Judgment[] judgments =
        [
            .. Checks.Select(check => check(loaded, settings)),
            .. settings.Rules.Select(rule => StrainRuleCheck.Judge(loaded, rule)),
        ];
        return new(
            loaded,
            [.. judgments.Select(judgment => judgment.Finding).OfType<DistortionFinding>()
                .OrderByDescending(finding => finding.Level).ThenBy(finding => finding.Margin)],
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
