using System.Text.RegularExpressions;

namespace BendMath.Tests.Documentation;

/// <summary>
/// Code in the documentation is code that was compiled. A page includes a region of a source file with
/// <c>[!code-csharp[](path/File.cs#region)]</c>; a page that cannot include (the README) repeats the region in a code block under
/// <c>&lt;!-- snippet: path/File.cs#region --&gt;</c>.
/// </summary>
internal static partial class SnippetRules
{
    /// <param name="page">Name of the page, for the report.</param>
    /// <param name="text">The page.</param>
    /// <param name="read">Text of a file named from the page, or null when there is none.</param>
    public static IEnumerable<string> Violations(string page, string text, Func<string, string?> read)
    {
        text = text.ReplaceLineEndings("\n");
        foreach (Match match in Include().Matches(text))
        {
            if (Region(match.Groups["file"].Value, match.Groups["region"].Value, read) is { Fault: { } fault })
            {
                yield return $"{page} includes {match.Value}: {fault}";
            }
        }

        foreach (Match block in Block().Matches(text))
        {
            string code = block.Groups["code"].Value.TrimEnd('\n');
            if (string.IsNullOrWhiteSpace(code))
            {
                yield return $"{page} has an empty code block";
            }
            else if (block.Groups["language"].Value is "csharp" or "cs" or "c#" && CodeFault(block, code, read) is { } fault)
            {
                yield return $"{page}: the code block that starts '{code.Split('\n')[0]}' {fault}";
            }
        }
    }

    /// <summary>Links a page cannot follow once it stands outside the source tree.</summary>
    public static IEnumerable<string> DeadLinks(string page, string text) => Link().Matches(text)
        .Select(match => match.Groups["target"].Value)
        .Where(target => !target.StartsWith("https://", StringComparison.Ordinal))
        .Select(target => $"{page} links to {target}, which a package page cannot reach");

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Link();

    private static string? CodeFault(Match block, string code, Func<string, string?> read)
    {
        if (!block.Groups["snippet"].Success)
        {
            return "names no snippet it was taken from";
        }

        (string? region, string? fault) = Region(block.Groups["file"].Value, block.Groups["region"].Value, read);
        return fault ?? (region == code ? null : "differs from the region it names");
    }

    private static (string? Text, string? Fault) Region(string file, string region, Func<string, string?> read)
    {
        if (read(file) is not { } source)
        {
            return (null, $"{file} does not exist");
        }

        string[] lines = source.ReplaceLineEndings("\n").Split('\n');
        int begin = Array.FindIndex(lines, line => line.Trim() == $"#region {region}");
        int end = begin < 0 ? -1 : Array.FindIndex(lines, begin, line => line.Trim().StartsWith("#endregion", StringComparison.Ordinal));
        if (region.Length == 0 || begin < 0 || end < 0)
        {
            return (null, $"{file} has no region '{region}'");
        }

        string[] inner = lines[(begin + 1)..end];
        string[] written = [.. inner.Where(line => line.Trim().Length > 0)];
        if (written.Length == 0)
        {
            return (null, $"region '{region}' of {file} is empty");
        }

        int indent = written.Min(line => line.Length - line.TrimStart().Length);
        return (string.Join('\n', inner.Select(line => line.Length > indent ? line[indent..] : string.Empty)).Trim('\n'), null);
    }

    [GeneratedRegex(@"\[!code-[\w-]+\[[^\]]*\]\((?<file>[^)#?]+)#?(?<region>[^)?]*)[^)]*\)\]")]
    private static partial Regex Include();

    [GeneratedRegex(@"(?<snippet><!-- snippet: (?<file>[^#\s]+)#(?<region>\S+) -->\n+)?^```(?<language>[^\n`]*)\n(?<code>.*?)^```[ \t]*$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
