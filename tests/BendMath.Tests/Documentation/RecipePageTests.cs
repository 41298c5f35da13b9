using System.Text.RegularExpressions;

namespace BendMath.Tests.Documentation;

public sealed class RecipePageTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "docs", "recipes");

    private static readonly string Index = File.ReadAllText(Path.Combine(Folder, "index.md"));

    private static readonly IReadOnlyDictionary<string, string> Pages = Directory.EnumerateFiles(Folder, "*.md")
        .Where(file => Path.GetFileName(file) != "index.md").ToDictionary(file => Path.GetFileName(file), File.ReadAllText);

    [Fact]
    public void Every_question_is_answered_and_most_with_code() => Assert.Empty(RecipePageRules.Violations(Index, Pages));

    [Fact]
    public void Every_snippet_of_a_question_is_shown()
    {
        string[] shown = [.. Pages.Values.SelectMany(page => Regex.Matches(page, @"Documentation/(\w+Recipes\.cs#q\d+)\)").Select(match => match.Groups[1].Value))];
        string[] written = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Documentation"), "*Recipes.cs")
            .SelectMany(file => Regex.Matches(File.ReadAllText(file), @"#region (q\d+)").Select(match => $"{Path.GetFileName(file)}#{match.Groups[1].Value}"))];
        Assert.Equal(written.Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_menu_lists_every_page()
    {
        string menu = File.ReadAllText(Path.Combine(Folder, "toc.yml"));
        Assert.All(Pages.Keys.Append("index.md"), page => Assert.Contains($"href: {page}\n", menu.ReplaceLineEndings("\n"), StringComparison.Ordinal));
    }

    [Fact]
    public void An_anchor_that_is_missing_is_reported() => Assert.Equal(
        ["question 1 has 0 anchors and 1 rows in the index"], Broken("""<a id="q1"></a>""", """<a id="plain-ring"></a>"""));

    [Fact]
    public void An_anchor_that_stands_twice_is_reported() => Assert.Contains(
        "question 1 has 2 anchors and 1 rows in the index", Broken("<a id=\"q2\"></a>\n\n## 2.", "<a id=\"q1\"></a>\n\n## 1."));

    [Fact]
    public void Other_words_are_reported() => Assert.Contains(
        Broken("## 1. How long do I cut", "## 1. How short do I cut"), violation => violation.StartsWith("question 1 reads 'How short do I cut", StringComparison.Ordinal));

    [Fact]
    public void The_snippet_of_another_question_is_reported() => Assert.Contains(
        "question 1 shows the snippet of another", Broken("LengthRecipes.cs#q1)", "LengthRecipes.cs#q2)"));

    [Fact]
    public void Too_few_snippets_are_reported()
    {
        Dictionary<string, string> plain = Pages.ToDictionary(page => page.Key, page => page.Value.Replace("[!code-csharp", "[!code", StringComparison.Ordinal));
        Assert.Equal(["only 0 answers have a snippet"], RecipePageRules.Violations(Index, plain));
    }

    [Fact]
    public void A_wrong_link_and_an_empty_answer_are_reported()
    {
        string index = Regex.Replace(Index, @"\]\(length\.md#q1\) \|[^|]*\|", "](length.md#q2) | |");
        Assert.Equal(
            ["question 1 stands on length.md and the index links to length.md#q2", "question 1 has no answer"],
            RecipePageRules.Violations(index, Pages));
    }

    [Fact]
    public void A_question_too_many_is_reported() => Assert.Contains(
        "length.md answers question 33, which does not exist",
        RecipePageRules.Violations(Index, Pages.ToDictionary(page => page.Key, page => page.Key == "length.md" ? page.Value + "\n<a id=\"q33\"></a>\n\n## 33. More?\n\nNo.\n" : page.Value)));

    private static IEnumerable<string> Broken(string text, string instead)
    {
        Assert.Contains(text, Pages["length.md"], StringComparison.Ordinal);
        return RecipePageRules.Violations(Index, Pages.ToDictionary(page => page.Key, page => page.Key == "length.md" ? page.Value.Replace(text, instead, StringComparison.Ordinal) : page.Value));
    }
}
