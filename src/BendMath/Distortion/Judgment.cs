namespace BendMath.Distortion;

/// <summary>What a check says of a bend: a finding, or why it could not be made, or neither where it does not apply.</summary>
internal readonly record struct Judgment(DistortionFinding? Finding, string? NotMade = null)
{
    private const double Rounding = 1e-12;

    public bool IsHarmless => NotMade is null && (Finding is null || Finding.Level == RiskLevel.Low);

    public static implicit operator Judgment(DistortionFinding finding) => new(finding);

    public static Judgment Missing(string reason) => new(null, reason);

    /// <summary>Exactly at a bound counts as inside it.</summary>
    public static RiskLevel Level(double demand, double low, double medium) =>
        demand <= low * (1 + Rounding) ? RiskLevel.Low : demand <= medium * (1 + Rounding) ? RiskLevel.Medium : RiskLevel.High;
}
