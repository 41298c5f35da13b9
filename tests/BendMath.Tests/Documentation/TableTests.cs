using System.Text.RegularExpressions;

namespace BendMath.Tests.Documentation;

/// <summary>Every row of a table on a page has as many cells as its head: one row that ran into another is how a table says something false.</summary>
public sealed partial class TableTests
{
    [Fact]
    public void Every_row_of_every_table_has_the_cells_of_its_head()
    {
        string[] pages = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories).Where(page => !page.Contains("_site", StringComparison.Ordinal))];
        Assert.True(pages.Length >= 10, $"only {pages.Length} pages");
        Assert.Empty(pages.SelectMany(page => Faults(Path.GetFileName(page), File.ReadAllText(page))));
    }

    [Fact]
    public void A_row_that_ran_into_another_is_found()
    {
        const string Page = "| a | `b|c` |\n| --- | --- |\n| 1 | 2 |\n| 1 | 2 | 3 |\n\ntext | text\n";
        Assert.Equal("page: a row of 3 cells in a table of 2: | 1 | 2 | 3 |", Assert.Single(Faults("page", Page)));
    }

    private static IEnumerable<string> Faults(string page, string text)
    {
        int columns = 0;
        foreach (string line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            if (!line.StartsWith('|'))
            {
                columns = 0;
                continue;
            }

            int cells = Code().Replace(line, string.Empty).Replace("\\|", string.Empty, StringComparison.Ordinal).Count(c => c == '|') - 1;
            columns = columns == 0 ? cells : columns;
            if (cells != columns)
            {
                yield return $"{page}: a row of {cells} cells in a table of {columns}: {line}";
            }
        }
    }

    [GeneratedRegex("`[^`]*`")]
    private static partial Regex Code();
}
