namespace BendMath.Json.Reading;

/// <summary>Lists of allowed words in a sentence.</summary>
internal static class Words
{
    private const int Longest = 40;

    /// <summary>Text of a file as it may stand in a sentence: on one line, and not longer than a person reads.</summary>
    public static string Short(string text) =>
        string.Concat(text.Take(Longest).Select(c => char.IsControl(c) ? $"\\u{(int)c:x4}" : $"{c}")) + (text.Length > Longest ? "…" : string.Empty);

    /// <summary>A number with its noun, one in the singular.</summary>
    public static string Counted(int count, string noun) => FormattableString.Invariant($"{count} {noun}{(count == 1 ? string.Empty : "s")}");

    public static string Listed(IReadOnlyList<string> words, string last)
    {
        string[] quoted = [.. words.Select(word => $"\"{word}\"")];
        return quoted.Length < 2 ? string.Concat(quoted) : $"{string.Join(", ", quoted.Take(quoted.Length - 1))} {last} {quoted[quoted.Length - 1]}";
    }
}
