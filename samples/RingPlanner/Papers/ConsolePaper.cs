using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Spectre.Console;

namespace RingPlanner.Papers;

/// <summary>Text for a console, at most 100 columns wide.</summary>
internal sealed partial class ConsolePaper : Paper
{
    public const int Width = 100;

    private const int Label = 24;

    /// <summary>A blank that no line is broken at, of the private use area: it is printed as a plain blank.</summary>
    private const char Glue = '\uE000';

    private readonly StringBuilder _text = new();

    private readonly IAnsiConsole _console;

    public ConsolePaper(bool plain)
    {
        _console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = plain ? AnsiSupport.No : AnsiSupport.Yes,
            ColorSystem = plain ? ColorSystemSupport.NoColors : ColorSystemSupport.Standard,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(new StringWriter(_text, CultureInfo.InvariantCulture)),
        });
        _console.Profile.Width = Width;
        _console.Profile.Capabilities.Unicode = true;
    }

    public override void Title(string text)
    {
        _console.Write(new Text(text + "\n", new Style(decoration: Decoration.Bold)));
        _console.Write(new Text(new string('=', Width) + "\n"));
    }

    public override void Heading(string text)
    {
        _console.WriteLine();
        _console.Write(new Text(text + "\n", new Style(decoration: Decoration.Bold)));
    }

    public override void Gap()
    {
        _console.WriteLine();
        _console.WriteLine();
    }

    /// <summary>Long text wraps under itself.</summary>
    public override void Fact(string label, string text) => Row(2, Label, label, text);

    public override void Marked(string mark, string text) => Row(2, mark.Length, mark, text);

    public override void Sentence(string text) => Marked(string.Empty, text);

    public override void Show(Listing listing)
    {
        Table table = new Table().Border(TableBorder.Square);
        foreach (Column column in listing.Columns)
        {
            TableColumn shown = new(column.Heading);
            if (column.IsNumber)
            {
                shown.RightAligned();
            }

            if (!column.MayWrap)
            {
                shown.NoWrap();
            }

            table.AddColumn(shown);
        }

        foreach (IReadOnlyList<string> row in listing.Rows)
        {
            table.AddRow(row.Select(cell => new Text(cell)));
        }

        _console.Write(new Padder(table, new Padding(2, 0, 0, 0)));
    }

    /// <summary>All of it, without blanks at the ends of lines.</summary>
    public override string ToString() => string.Join('\n', _text.ToString().Replace(Glue, ' ').Split('\n').Select(line => line.TrimEnd()));

    private void Row(int indent, int width, string first, string second)
    {
        Grid grid = new();
        if (width > 0)
        {
            grid.AddColumn(new GridColumn().Width(width).NoWrap().Padding(indent, 0, 1, 0));
        }

        grid.AddColumn(new GridColumn().Width(Width - indent - width - 1).Padding(width > 0 ? 0 : indent, 0, 0, 0));
        grid.AddRow(width > 0 ? [new Text(first), Glued(second)] : [Glued(second)]);
        _console.Write(grid);
    }

    /// <summary>A number stays with its unit.</summary>
    private static Text Glued(string text) => new(BeforeUnit().Replace(text, Glue.ToString()));

    [GeneratedRegex(@"(?<=\d) (?=(mm|in|MPa|ksi|N|kN|N·m|lbf|lbf·ft|kg|lb|%)(?![A-Za-z]))")]
    private static partial Regex BeforeUnit();
}
