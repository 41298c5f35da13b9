using BendMath.Stock.Geometry;
using ScottPlot;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// What lines, marks and areas of a chart mean, sample by sample, in a corner where nothing else is. Sizes are in pixels of a figure of the
/// usual size.
/// </summary>
internal sealed class ChartKey
{
    public const double LineHeight = 18;

    private const double Samples = 34;

    private const double CharacterWidth = 6.9;

    private const double Margin = 8;

    private const int LongestLine = 34;

    private readonly List<(string Text, int Lines, Action<Chart, Spot, Spot> Sample)> _rows = [];

    public double Height => LineHeight * _rows.Sum(row => row.Lines) + Margin;

    public double Width => Samples + WidthOf(string.Join("\n", _rows.Select(row => row.Text))) + Margin;

    /// <summary>A generous estimate that needs no font.</summary>
    public static double WidthOf(string text) => CharacterWidth * text.Split('\n').Max(line => line.Length);

    /// <param name="text">What it means; long text is broken into lines.</param>
    /// <param name="sample">Draws it between two places of the chart.</param>
    public void Add(string text, Action<Chart, Spot, Spot> sample)
    {
        string broken = Broken(text);
        _rows.Add((broken, broken.Count(c => c == '\n') + 1, sample));
    }

    /// <summary>The rectangle in the upper left corner, or in the lower right one above a strip.</summary>
    public Box Corner(Spot size, bool upperLeft, double strip) => upperLeft
        ? new(new(Margin + Width / 2, size.Y - Margin - Height / 2), Width, Height)
        : new(new(size.X - Margin - Width / 2, strip + Margin + Height / 2), Width, Height);

    public void Draw(Chart chart, Box box)
    {
        double top = box.Top - Margin / 2;
        foreach ((string text, int lines, Action<Chart, Spot, Spot> sample) in _rows)
        {
            double middle = top - LineHeight / 2;
            sample(chart, new(box.Left + 4, middle), new(box.Left + Samples - 6, middle));
            Spot words = chart.At(new(box.Left + Samples, top - lines * LineHeight / 2));
            chart.Words(text, words.X, words.Y, Alignment.MiddleLeft, padding: 0);
            top -= lines * LineHeight;
        }
    }

    private static string Broken(string text)
    {
        List<string> lines = [string.Empty];
        foreach (string word in text.Split(' '))
        {
            string line = lines[lines.Count - 1];
            if (line.Length > 0 && line.Length + 1 + word.Length > LongestLine)
            {
                lines.Add(word);
            }
            else
            {
                lines[lines.Count - 1] = line.Length == 0 ? word : line + " " + word;
            }
        }

        return string.Join("\n", lines);
    }
}
