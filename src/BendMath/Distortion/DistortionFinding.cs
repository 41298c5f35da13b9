using BendMath.Evidence;
using BendMath.Numerics;

namespace BendMath.Distortion;

/// <summary>How likely a form of distortion is.</summary>
public enum RiskLevel
{
    /// <summary>At or within the lower bound.</summary>
    Low,

    /// <summary>Between the bounds: make a trial.</summary>
    Medium,

    /// <summary>Above the upper bound.</summary>
    High,
}

/// <summary>The answer of one distortion check. Immutable and thread-safe.</summary>
public sealed record DistortionFinding
{
    private readonly Func<IEnumerable<DistortionRemedy?>>? _remedies;

    // Looking for a remedy may mean many bends: it waits until somebody asks.
    private IReadOnlyList<DistortionRemedy>? _found;

    internal DistortionFinding(
        DistortionCheck kind, string check, double demand, double limit, RiskLevel level, string sentence, Source source, string validity,
        Func<IEnumerable<DistortionRemedy?>>? remedies = null)
    {
        Kind = kind;
        Check = check;
        Demand = demand;
        Limit = limit;
        Level = level;
        Sentence = sentence;
        Source = source;
        Validity = validity;
        _remedies = remedies;
    }

    /// <summary>Which check this is the answer of.</summary>
    public DistortionCheck Kind { get; }

    /// <summary>What is checked, in words.</summary>
    public string Check { get; }

    /// <summary>What the bend asks of the bar: a ratio or a strain, without unit.</summary>
    public double Demand { get; }

    /// <summary>The bound up to which the risk is low, in the same measure.</summary>
    public double Limit { get; }

    /// <summary>
    /// Limit over demand less one: positive on the safe side. Where the bar is supported it stays that of a bar that is not, and the level
    /// may be lower than it says.
    /// </summary>
    public double Margin => Limit / Demand - 1;

    /// <summary>The demand as an equation, or null where it has no closed form.</summary>
    internal DemandEquation? Equation { get; init; }

    /// <summary>Low, medium or high.</summary>
    public RiskLevel Level { get; }

    /// <summary>What a person needs to know, with the numbers.</summary>
    public string Sentence { get; }

    /// <summary>What the bound rests on.</summary>
    public Source Source { get; }

    /// <summary>For what the check holds, and what it leaves out.</summary>
    public string Validity { get; }

    /// <summary>
    /// What would lower the level, each with its number; empty where it is low already, or where nothing the library knows of helps.
    /// </summary>
    public IReadOnlyList<DistortionRemedy> Remedies => _found ?? Once.Keep(ref _found, FindRemedies());

    /// <summary>
    /// How the demand follows, as an equation that can be done again on paper; where it has no closed form, with the sentence of the check
    /// in place of one.
    /// </summary>
    /// <param name="inInches">Whether lengths are put in in inches; in millimeters otherwise.</param>
    public WorkedStep WorkingFor(bool inInches = false) => Equation?.Of(this, inInches)
        ?? new(Check, "d_" + new string([.. Check.Where(char.IsLetterOrDigit)]), Sentence, [], Demand, string.Empty, Source,
            isSearched: true);

    /// <summary>Equal when all but the remedies, which follow from the bend, is equal.</summary>
    /// <param name="other">Another finding.</param>
    public bool Equals(DistortionFinding? other) => other is not null
        && Check == other.Check && Demand == other.Demand && Limit == other.Limit && Level == other.Level && Sentence == other.Sentence
            && Source == other.Source && Validity == other.Validity;

    /// <inheritdoc/>
    public override int GetHashCode() => (Check, Demand, Limit, Level, Sentence).GetHashCode();

    /// <summary>Check, level and sentence.</summary>
    public override string ToString() => Invariant($"{Check}, {Level}: {Sentence}");

    private IReadOnlyList<DistortionRemedy> FindRemedies() =>
        Level == RiskLevel.Low || _remedies is null ? [] : [.. _remedies().OfType<DistortionRemedy>()];
}
