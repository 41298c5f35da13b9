using BendMath.Guards;

namespace BendMath.Json.Words;

/// <summary>Lists of allowed words in a sentence.</summary>
internal static class Listing
{
    private const int MostNames = 12;

    /// <summary>A number with its noun, one in the singular.</summary>
    public static string Counted(int count, string noun) => Invariant($"{count} {noun}{(count == 1 ? string.Empty : "s")}");

    /// <summary>Names a file gives: the first of them, and how many more there are.</summary>
    public static string Names(IReadOnlyList<string> names)
    {
        string[] shown = [.. names.Take(MostNames).Select(Quoted.Short)];
        return names.Count <= MostNames ? Listed(shown, "and")
            : Invariant($"{string.Join(", ", shown.Select(name => $"\"{name}\""))} and {names.Count - MostNames} more");
    }

    public static string Listed(IReadOnlyList<string> words, string last)
    {
        string[] quoted = [.. words.Select(word => $"\"{word}\"")];
        return quoted.Length < 2 ? string.Concat(quoted)
            : $"{string.Join(", ", quoted.Take(quoted.Length - 1))} {last} {quoted[quoted.Length - 1]}";
    }
}
