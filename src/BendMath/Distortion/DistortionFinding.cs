using System.Globalization;

namespace BendMath;

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
    internal DistortionFinding(string check, double demand, double limit, RiskLevel level, string sentence, Source source)
    {
        Check = check;
        Demand = demand;
        Limit = limit;
        Level = level;
        Sentence = sentence;
        Source = source;
    }

    /// <summary>What is checked.</summary>
    public string Check { get; }

    /// <summary>What the bend asks of the bar: a ratio or a strain, without unit.</summary>
    public double Demand { get; }

    /// <summary>The bound up to which the risk is low, in the same measure.</summary>
    public double Limit { get; }

    /// <summary>Limit over demand less one: positive on the safe side.</summary>
    public double Margin => Limit / Demand - 1;

    /// <summary>Low, medium or high.</summary>
    public RiskLevel Level { get; }

    /// <summary>What a person needs to know, with the numbers.</summary>
    public string Sentence { get; }

    /// <summary>What the bound rests on.</summary>
    public Source Source { get; }

    /// <summary>Check, level and sentence.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0}, {1}: {2}", Check, Level, Sentence);
}
