namespace BendMath.Evidence;

/// <summary>
/// Something doubtful about a result that is otherwise usable: a formula outside its range, an assumption no measurement supports, a value
/// to check at the bender. Immutable and thread-safe.
/// </summary>
public sealed record Advisory
{
    internal Advisory(string code, string message, Source source, bool isMinor = false)
    {
        IsMinor = isMinor;
        Code = code;
        Message = message;
        Source = source;
    }

    /// <summary>Stable identifier such as <c>tight-radius</c>; it does not change when the sentence is improved.</summary>
    public string Code { get; }

    /// <summary>One sentence for a person, with the numbers that led to it.</summary>
    public string Message { get; }

    /// <summary>What the limit behind the advisory rests on.</summary>
    public Source Source { get; }

    /// <summary>Whether its effect is known to be smaller than a shop can measure: a note, not a warning.</summary>
    public bool IsMinor { get; }

    /// <summary>Code and sentence.</summary>
    public override string ToString() => $"{Code}: {Message}";
}
