namespace BendMath.Json;

/// <summary>One thing wrong with a JSON file: where it stands and what is wrong, with the value. Immutable and thread-safe.</summary>
public sealed record JsonFault
{
    internal JsonFault(string place, int? line, string rule)
    {
        Place = place;
        Line = line;
        Rule = rule;
    }

    /// <summary>Where it stands, such as <c>jobs[0].stock.leg</c>; <c>file</c> for the file as a whole.</summary>
    public string Place { get; }

    /// <summary>The line of the file, counted from 1; null where there is none.</summary>
    public int? Line { get; }

    /// <summary>What is wrong, in one sentence with the value.</summary>
    public string Rule { get; }

    /// <summary>Place, line and sentence.</summary>
    public override string ToString() => Line is { } line ? Invariant($"{Place} (line {line}): {Rule}") : $"{Place}: {Rule}";
}
