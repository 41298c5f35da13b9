using BendMath.Numerics;

namespace BendMath;

/// <summary>All distortion checks that apply to a bend, the worst first. Immutable and thread-safe.</summary>
public sealed class DistortionReport
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

    /// <summary>Makes the report with the bounds of common practice.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public static DistortionReport Of(LoadedBend loaded) => Of(loaded, LegToRadiusCheck.CommonPractice);

    /// <summary>Makes the report with leg-to-radius bounds of the shop's own.</summary>
    /// <param name="loaded">The bend.</param>
    /// <param name="legToRadius">The bounds.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DistortionReport Of(LoadedBend loaded, LegToRadiusCheck legToRadius)
    {
        DistortionFinding? strain = OuterFiberCheck.Of(loaded);
        DistortionFinding leg = Guard.NotNull(legToRadius, nameof(legToRadius)).Of(loaded);
        DistortionFinding[] findings = strain is null ? [leg] : [leg, strain];
        return new(
            loaded,
            [.. findings.OrderByDescending(finding => finding.Level).ThenBy(finding => finding.Margin)],
            [.. NotBuilt(loaded.Analysis.Section), .. strain is null ? ["outside face strain: the elongation of the material is not given"] : Array.Empty<string>()]);
    }

    /// <summary>The worst level and the number of findings.</summary>
    public override string ToString() => $"{Level} risk, {Counted.Text(Findings.Count, "check")}";

    /// <summary>Forms of distortion that can befall the section and that no check of this library covers.</summary>
    private static IEnumerable<string> NotBuilt(OrientedSection section)
    {
        SectionFeatures features = section.Features;
        if (features.WallThickness is not null)
        {
            yield return "flattening of the tube, wrinkles on its inside, thinning of its outside wall";
        }

        if (features.Outstands.Any(leg => leg.FreeEdge == FreeEdge.Side))
        {
            yield return "opening or closing of the leg that lies along the axis of the ring";
        }

        if (features.Outstands.Any(leg => leg.FreeEdge == FreeEdge.Inside))
        {
            yield return "buckling of the compressed free edge of the radial leg";
        }

        AreaMoments moments = section.Profile.Moments;
        if (moments.SecondY > moments.SecondZ * (1 + 1e-9))
        {
            yield return "rolling over sideways and thickening of the inside edge, since the bar is bent the hard way";
        }
        else if (moments.SecondY > moments.SecondZ * (1 - 1e-9))
        {
            yield return "twisting out of its plane while it is bent, since it is no stiffer one way than the other";
        }
    }
}
