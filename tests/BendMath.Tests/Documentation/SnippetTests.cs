namespace BendMath.Tests.Documentation;

public sealed class SnippetTests
{
    private const string Source = "class A\n{\n    #region bend\n    var x = 1;\n\n    var y = 2;\n    #endregion\n    #region hollow\n    #endregion\n}\n";

    [Fact]
    public void Every_snippet_on_every_page_is_a_region_of_a_compiled_file()
    {
        string[] pages = [.. Pages()];
        Assert.True(pages.Length >= 8, $"only {pages.Length} pages were found");
        Assert.Empty(pages.SelectMany(page => SnippetRules.Violations(
            Path.GetRelativePath(Repository.Root, page), File.ReadAllText(page), file => Read(Path.GetDirectoryName(page)!, file))));
    }

    [Theory]
    [InlineData("[!code-csharp[](A.cs#bend)]")]
    [InlineData("<!-- snippet: A.cs#bend -->\n```csharp\nvar x = 1;\n\nvar y = 2;\n```\n")]
    [InlineData("```sh\ndotnet test\n```\n\n```text\nplain\n```\n")]
    public void A_sound_page_is_not_reported(string page) => Assert.Empty(Violations(page));

    [Theory]
    [InlineData("[!code-csharp[](B.cs#bend)]", "B.cs does not exist")]
    [InlineData("[!code-csharp[](A.cs#twist)]", "A.cs has no region 'twist'")]
    [InlineData("[!code-csharp[](A.cs)]", "A.cs has no region ''")]
    [InlineData("[!code-csharp[](A.cs#hollow)]", "region 'hollow' of A.cs is empty")]
    [InlineData("```csharp\n```\n", "page.md has an empty code block")]
    [InlineData("```sh\n\n```\n", "page.md has an empty code block")]
    [InlineData("```csharp\nvar z = 3;\n```\n", "starts 'var z = 3;' names no snippet")]
    [InlineData("<!-- snippet: A.cs#bend -->\n```csharp\nvar x = 2;\n```\n", "differs from the region")]
    [InlineData("```sh\ndotnet test\n```\n\n```csharp\nvar z = 3;\n```\n", "starts 'var z = 3;' names no snippet")]
    public void A_faulty_page_is_reported_by_name(string page, string expected) =>
        Assert.Contains(Violations(page), violation => violation.StartsWith("page.md", StringComparison.Ordinal) && violation.Contains(expected, StringComparison.Ordinal));

    /// <summary>The page of a package stands alone: a link within the source tree is dead there.</summary>
    [Fact]
    public void Every_package_has_a_page_that_names_it_and_whose_links_work_elsewhere()
    {
        string[] projects = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.csproj", SearchOption.AllDirectories)];
        Assert.NotEmpty(projects);
        Assert.All(projects, project => Assert.StartsWith(
            $"# {Path.GetFileNameWithoutExtension(project)}\n", File.ReadAllText(Path.Combine(Path.GetDirectoryName(project)!, "README.md")).ReplaceLineEndings("\n"), StringComparison.Ordinal));
        Assert.Empty(PackagePages().SelectMany(page => SnippetRules.DeadLinks(Path.GetRelativePath(Repository.Root, page), File.ReadAllText(page))));
    }

    [Theory]
    [InlineData("see [limits](docs/limitations.md)", "page.md links to docs/limitations.md, which a package page cannot reach")]
    [InlineData("![icon](images/icon.png)", "page.md links to images/icon.png, which a package page cannot reach")]
    [InlineData("[top](#first)", "page.md links to #first, which a package page cannot reach")]
    public void A_dead_link_is_reported_by_name(string page, string expected) => Assert.Equal([expected], SnippetRules.DeadLinks("page.md", page));

    [Fact]
    public void A_link_that_works_anywhere_is_not_reported() => Assert.Empty(SnippetRules.DeadLinks("page.md", "[MIT](https://opensource.org/license/mit)"));

    private static IEnumerable<string> PackagePages() => Directory.EnumerateDirectories(Path.Combine(Repository.Root, "src"))
        .Select(folder => Path.Combine(folder, "README.md")).Where(File.Exists);

    private static IEnumerable<string> Violations(string page) => SnippetRules.Violations("page.md", page, file => file == "A.cs" ? Source : null);

    private static IEnumerable<string> Pages() => Directory.EnumerateFiles(Repository.Root, "*.md")
        .Concat(Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories))
        .Concat(PackagePages())
        .Where(page => !page.Contains("_site", StringComparison.Ordinal));

    /// <summary>A path starts at the page's folder, or at the root of the repository.</summary>
    private static string? Read(string folder, string file) =>
        new[] { Path.Combine(folder, file), Path.Combine(Repository.Root, file) }.Where(File.Exists).Select(File.ReadAllText).FirstOrDefault();
}
