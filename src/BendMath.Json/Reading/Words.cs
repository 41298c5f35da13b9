namespace BendMath.Json.Reading;

/// <summary>Lists of allowed words in a sentence.</summary>
internal static class Words
{
    public static string Listed(IReadOnlyList<string> words, string last)
    {
        string[] quoted = [.. words.Select(word => $"\"{word}\"")];
        return quoted.Length < 2 ? string.Concat(quoted) : $"{string.Join(", ", quoted.Take(quoted.Length - 1))} {last} {quoted[quoted.Length - 1]}";
    }
}
