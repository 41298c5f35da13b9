using System.Text.RegularExpressions;

namespace BendMath.Tests.Documentation;

/// <summary>
/// The pages that answer questions: every question of the index stands on the page it links to, under the same words, with an answer, and most answers are computed by a snippet of the question's own name.
/// </summary>
internal static partial class RecipePageRules
{
    /// <summary>How many questions there are.</summary>
    public const int Questions = 32;

    /// <summary>How many of them must be answered with code at least.</summary>
    public const int LeastSnippets = 25;

    /// <param name="index">The page with the table of questions.</param>
    /// <param name="pages">The pages with the answers, by file name.</param>
    public static IEnumerable<string> Violations(string index, IReadOnlyDictionary<string, string> pages)
    {
        Answer[] answers = [.. pages.SelectMany(page => Answers(page.Key, page.Value))];
        Match[] rows = [.. Row().Matches(index.ReplaceLineEndings("\n")).Cast<Match>()];
        foreach (int number in Enumerable.Range(1, Questions))
        {
            Answer[] found = [.. answers.Where(answer => answer.Number == number)];
            Match[] listed = [.. rows.Where(row => row.Groups["number"].Value == $"{number}")];
            if (found.Length != 1 || listed.Length != 1)
            {
                yield return $"question {number} has {found.Length} anchors and {listed.Length} rows in the index";
                continue;
            }

            (Answer answer, GroupCollection row) = (found[0], listed[0].Groups);
            if (row["target"].Value != $"{answer.Page}#q{number}")
            {
                yield return $"question {number} stands on {answer.Page} and the index links to {row["target"].Value}";
            }

            if (row["question"].Value != answer.Question)
            {
                yield return $"question {number} reads '{answer.Question}' and '{row["question"].Value}' in the index";
            }

            if (row["line"].Value.Trim().Length == 0 || answer.Text.Trim().Length == 0)
            {
                yield return $"question {number} has no answer";
            }
        }

        foreach (Answer answer in answers.Where(answer => answer.Number is < 1 or > Questions))
        {
            yield return $"{answer.Page} answers question {answer.Number}, which does not exist";
        }

        foreach (Answer answer in answers.Where(answer => answer.Snippets.Any(snippet => snippet != answer.Number)))
        {
            yield return $"question {answer.Number} shows the snippet of another";
        }

        int computed = answers.Count(answer => answer.Snippets.Contains(answer.Number));
        if (computed < LeastSnippets)
        {
            yield return $"only {computed} answers have a snippet";
        }
    }

    private static IEnumerable<Answer> Answers(string page, string text) => Section().Matches(text.ReplaceLineEndings("\n")).Select(section => new Answer(
        page,
        int.Parse(section.Groups["number"].Value, System.Globalization.CultureInfo.InvariantCulture),
        section.Groups["question"].Value,
        Include().Replace(section.Groups["text"].Value, string.Empty),
        [.. Include().Matches(section.Groups["text"].Value).Select(include => int.Parse(include.Groups["number"].Value, System.Globalization.CultureInfo.InvariantCulture))]));

    [GeneratedRegex(@"^<a id=""q(?<number>\d+)""></a>\n\n## \k<number>\. (?<question>[^\n]+)\n(?<text>.*?)(?=^<a id=|\z)", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Section();

    [GeneratedRegex(@"^\| (?<number>\d+) \| \[(?<question>[^\]]+)\]\((?<target>[^)]+)\) \|(?<line>[^|]*)\|$", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"\[!code-csharp\[\]\([^)#]+#q(?<number>\d+)\)\]")]
    private static partial Regex Include();

    private sealed record Answer(string Page, int Number, string Question, string Text, IReadOnlyList<int> Snippets);
}
