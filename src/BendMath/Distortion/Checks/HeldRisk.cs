namespace BendMath.Distortion.Checks;

/// <summary>
/// The risk of a part that may be held: a held one bears more than a free one, and no source says how much, so it counts as medium at
/// most.
/// </summary>
internal readonly record struct HeldRisk(RiskLevel Free, bool IsHeld)
{
    public RiskLevel Level => IsHeld && Free == RiskLevel.High ? RiskLevel.Medium : Free;

    /// <summary>What to say besides of a risk that is not low.</summary>
    public string Note(string held, string free) => Free == RiskLevel.Low ? string.Empty
        : IsHeld ? $" {held} it bears more, and no source says how much: make a trial."
        : free;

    public DistortionRemedy? Remedy(string support) => IsHeld || Level != RiskLevel.High ? null : Remedies.Support(support);
}
