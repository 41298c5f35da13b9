using System.Text;

namespace RingPlanner.Papers;

/// <summary>Markdown, for a notebook or a ticket.</summary>
internal sealed class MarkdownPaper : Paper
{
    private readonly StringBuilder _text = new();

    private bool _inList;

    public override void Title(string text) => Block($"# {Escaped(text)}");

    public override void Heading(string text) => Block($"## {Escaped(text)}");

    public override void Gap() => EndList();

    public override void Fact(string label, string text) =>
        Item(label.Trim().Length > 0 ? $"**{Escaped(label.Trim())}**: {Escaped(text)}" : Escaped(text));

    public override void Marked(string mark, string text) => Item($"**{Escaped(mark)}** {Escaped(text)}");

    public override void Sentence(string text) => Block(Escaped(text));

    public override void Show(Listing listing)
    {
        EndList();
        Line(listing.Columns.Select(column => Escaped(column.Heading.Replace('\n', ' '))));
        Line(listing.Columns.Select(column => column.IsNumber ? "---:" : "---"));
        foreach (IReadOnlyList<string> row in listing.Rows)
        {
            Line(row.Select(Escaped));
        }

        _text.Append('\n');
    }

    public override string ToString() => _text.ToString().TrimEnd() + "\n";

    /// <summary>Signs that Markdown would read as its own are shown as they are.</summary>
    private static string Escaped(string text)
    {
        StringBuilder escaped = new(text.Length);
        foreach (char c in text)
        {
            if (c is '\\' or '*' or '_' or '`' or '|' or '<' or '>' or '[' or ']' or '#')
            {
                escaped.Append('\\');
            }

            escaped.Append(c);
        }

        return escaped.ToString();
    }

    private void Line(IEnumerable<string> cells) => _text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    private void Block(string text)
    {
        EndList();
        _text.Append(text).Append("\n\n");
    }

    private void Item(string text)
    {
        _text.Append("- ").Append(text).Append('\n');
        _inList = true;
    }

    private void EndList()
    {
        if (_inList)
        {
            _text.Append('\n');
            _inList = false;
        }
    }
}
