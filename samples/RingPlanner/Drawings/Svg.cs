using System.Globalization;
using System.Net;
using System.Text;

namespace RingPlanner.Drawings;

/// <summary>A line drawing, written by hand because it is small: lines, circles, arcs and words.</summary>
internal sealed class Svg(double width, double height)
{
    private readonly StringBuilder _text = new();

    public Svg Line(double x1, double y1, double x2, double y2, string kind = "line") =>
        Add($"<line class=\"{kind}\" x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\"/>");

    public Svg Circle(double x, double y, double radius, string kind = "line") =>
        Add($"<circle class=\"{kind}\" cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\"/>");

    public Svg Rectangle(double x, double y, double w, double h, string kind) =>
        Add($"<rect class=\"{kind}\" x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(w)}\" height=\"{N(h)}\"/>");

    public Svg Path(string data, string kind) => Add($"<path class=\"{kind}\" d=\"{data}\"/>");

    /// <param name="x">Place the words hang on.</param>
    /// <param name="y">Base line.</param>
    /// <param name="words">The words.</param>
    /// <param name="anchor">start, middle or end.</param>
    public Svg Words(double x, double y, string words, string anchor = "middle") =>
        Add($"<text x=\"{N(x)}\" y=\"{N(y)}\" text-anchor=\"{anchor}\">{WebUtility.HtmlEncode(words)}</text>");

    /// <summary>A dimension along a horizontal line, with its words above the middle.</summary>
    public Svg Across(double x1, double x2, double y, string words) =>
        Line(x1, y, x2, y, "thin").Line(x1, y - 5, x1, y + 5, "thin").Line(x2, y - 5, x2, y + 5, "thin").Words((x1 + x2) / 2, y - 6, words);

    public static string N(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    public override string ToString() => $"""
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {N(width)} {N(height)}" width="{N(width)}" height="{N(height)}" role="img" class="sketch">
        <style>.line{"{"}fill:none;stroke:#1c1c1c;stroke-width:1.6{"}"}.thin{"{"}fill:none;stroke:#555;stroke-width:1{"}"}.center{"{"}fill:none;stroke:#555;stroke-width:1;stroke-dasharray:12 4 2 4{"}"}.hole{"{"}fill:#fff;stroke:#1c1c1c;stroke-width:1.6{"}"}.bar{"{"}fill:#d9d9d9;stroke:#1c1c1c;stroke-width:1.6{"}"}.spoiled{"{"}fill:#fff;stroke:#1c1c1c;stroke-width:1.2;stroke-dasharray:5 4{"}"}.sketch text{"{"}font:13px "DejaVu Sans",system-ui,sans-serif;fill:#1c1c1c;paint-order:stroke;stroke:#fff;stroke-width:4px{"}"}</style>
        {_text}</svg>
        """;

    private Svg Add(string element)
    {
        _text.Append(element).Append('\n');
        return this;
    }
}
