using BendMath.Guards;

namespace BendMath;

/// <summary>
/// Why a value was refused, in parts: the argument, the rule it broke and what was found instead. A form or a file reader puts its own name
/// of the field before the rule. Immutable and thread-safe.
/// </summary>
public sealed record ArgumentFault
{
    private const string RuleKey = "BendMath.Rule";

    private const string FoundKey = "BendMath.Found";

    private ArgumentFault(string argument, string rule, string? found)
    {
        Argument = argument;
        Rule = rule;
        Found = found;
    }

    /// <summary>The parameter that was refused.</summary>
    public string Argument { get; }

    /// <summary>The rule with its bounds, as the rest of a sentence: <c>must be smaller than the leg, 30 mm</c>.</summary>
    public string Rule { get; }

    /// <summary>What was found, as the rest of that sentence: <c>is 35 mm</c>; null where the rule says it all.</summary>
    public string? Found { get; }

    /// <summary>The fault an exception of this library carries.</summary>
    /// <param name="refused">What a constructor or method threw.</param>
    /// <returns>The fault; null when an argument was null, or when the exception is not of this library.</returns>
    /// <exception cref="ArgumentNullException">The exception is null.</exception>
    public static ArgumentFault? Of(ArgumentException refused) =>
        Guard.NotNull(refused, nameof(refused)).ParamName is { } argument && refused.Data[RuleKey] is string rule
            ? new(argument, rule, refused.Data[FoundKey] as string) : null;

    /// <summary>The fault as one sentence about a field.</summary>
    /// <param name="subject">What the user calls the argument, such as <c>the wall</c>; not empty.</param>
    /// <returns>Such as <c>the wall must be smaller than the leg, 30 mm, but is 35 mm.</c></returns>
    /// <exception cref="ArgumentNullException">The subject is null.</exception>
    /// <exception cref="ArgumentException">The subject is empty.</exception>
    public string About(string subject) => Sentence(Guard.NotEmpty(subject, nameof(subject)), Rule, Found);

    /// <summary>The sentence about the argument.</summary>
    public override string ToString() => Sentence(Argument, Rule, Found);

    internal static ArgumentException Refused(string argument, string rule, string? found) =>
        Carrying(new ArgumentException(Sentence(argument, rule, found), argument), rule, found);

    internal static ArgumentOutOfRangeException OutOfRange(string argument, string rule, string? found) =>
        Carrying(new ArgumentOutOfRangeException(argument, Sentence(argument, rule, found)), rule, found);

    /// <summary>Texts only: .NET Framework refuses data of an exception that it cannot serialize.</summary>
    private static TException Carrying<TException>(TException refused, string rule, string? found)
        where TException : ArgumentException
    {
        refused.Data[RuleKey] = rule;
        refused.Data[FoundKey] = found;
        return refused;
    }

    private static string Sentence(string subject, string rule, string? found) =>
        found is null ? $"{subject} {rule}." : $"{subject} {rule}, but {found}.";
}
