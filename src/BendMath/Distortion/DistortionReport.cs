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

    /// <summary>Checks that could not be made, and why.</summary>
    public IReadOnlyList<string> NotChecked { get; }

    /// <summary>The worst level.</summary>
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
            strain is null ? ["outside face strain: the elongation of the material is not given"] : []);
    }

    /// <summary>The worst level and the number of findings.</summary>
    public override string ToString() => $"{Level} risk, {Findings.Count} checks";
}
