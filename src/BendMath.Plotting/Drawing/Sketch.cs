using ScottPlot;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// Puts lines, arrows and words on a plot. Places are in pixels of a figure of the usual size, from the corner of the section.
/// </summary>
/// <param name="plot">The plot.</param>
/// <param name="unitsPerPixel">Units of the axes per such pixel.</param>
/// <param name="magnification">Pixels of the figure per such pixel.</param>
internal sealed class Sketch(Plot plot, double unitsPerPixel, double magnification)
{
    public const string FontName = "DejaVu Sans";

    public const double FontSize = 13;

    public const double LineHeight = 17;

    private const double HeadLength = 8;

    private const double HeadWidth = 3;

    /// <summary>A generous estimate that needs no font, so that the layout is the same on every machine.</summary>
    public static double WidthOf(string text) => 0.6 * FontSize * text.Split('\n').Max(line => line.Length);

    public void Line(Spot from, Spot to, double width = 1, LinePattern? pattern = null)
    {
        ScottPlot.Plottables.LinePlot line = plot.Add.Line(At(from), At(to));
        line.Color = Colors.Black;
        line.LineWidth = (float)(width * magnification);
        line.LinePattern = pattern ?? LinePattern.Solid;
        line.MarkerSize = 0;
    }

    /// <summary>A line with a head at its tip.</summary>
    public void Arrow(Spot tail, Spot tip, double width = 1, double head = 1)
    {
        Spot ahead = (tip - tail).Unit;
        Spot neck = tip - ahead * (HeadLength * head);
        Line(tail, neck, width);
        Filled([tip, neck + ahead.Left * (HeadWidth * head), neck - ahead.Left * (HeadWidth * head)]);
    }

    public void Filled(Spot[] corners)
    {
        ScottPlot.Plottables.Polygon polygon = plot.Add.Polygon(Array.ConvertAll(corners, At));
        polygon.FillColor = Colors.Black;
        polygon.LineWidth = 0;
        polygon.MarkerSize = 0;
    }

    public void Dot(Spot center, double size, MarkerShape shape, Color color)
    {
        ScottPlot.Plottables.Marker marker = plot.Add.Marker(At(center), shape, (float)(size * magnification), color);
        marker.LineWidth = (float)(1.4 * magnification);
    }

    public void Words(string text, Spot at, Alignment alignment, bool onWhite = false)
    {
        ScottPlot.Plottables.Text words = plot.Add.Text(text, At(at));
        words.LabelStyle.Alignment = alignment;
        words.LabelStyle.FontName = FontName;
        words.LabelStyle.FontSize = (float)(FontSize * magnification);
        words.LabelStyle.ForeColor = Colors.Black;
        words.LabelStyle.Padding = (float)(onWhite ? magnification : 0);
        words.LabelStyle.BackgroundColor = onWhite ? Colors.White : Colors.Transparent;
    }

    public Coordinates At(Spot spot) => new(spot.X * unitsPerPixel, spot.Y * unitsPerPixel);
}
