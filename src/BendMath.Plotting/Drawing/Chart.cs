using System.Globalization;
using BendMath.Numerics.Geometry;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// A quantity against another: black lines told apart by pattern and gray, words beside them, round numbers on the axes. Places are in
/// units of the axes.
/// </summary>
internal sealed class Chart
{
    private const double Above = 44;

    private const double Below = 52;

    private const double AxisColumn = 66;

    private const double Margin = 18;

    private static readonly double[] RoundSteps = [1, 2, 5, 10];

    private readonly double _k;

    private readonly double _across;

    private readonly double _up;

    private Spot _corner;

    private Spot _opposite = new(1, 1);

    public Chart(int width, int height, string title, string bottom, string left)
    {
        _k = Paper.Magnification(width, height);
        _across = width / _k - AxisColumn - Margin;
        _up = height / _k - Above - Below;
        Plot = new();
        Paper.Frame(Plot, title, bottom, left, _k);
        Plot.Layout.Fixed(new PixelPadding((float)(AxisColumn * _k), (float)(Margin * _k), (float)(Below * _k), (float)(Above * _k)));
    }

    /// <summary>The gray of areas and of wide lines.</summary>
    public static Color Gray { get; } = new(215, 215, 215);

    public Plot Plot { get; }

    /// <summary>Width and height between the axes, in pixels of a figure of the usual size.</summary>
    public Spot Size => new(_across, _up);

    /// <summary>Limits of the axes, with round numbers on both.</summary>
    public void Limits(double left, double right, double bottom, double top)
    {
        _corner = new(left, bottom);
        _opposite = new(right, top);
        Plot.Axes.SetLimits(left, right, bottom, top);
        Plot.Axes.Bottom.TickGenerator = Ticks(left, right, _across / 70);
        Plot.Axes.Left.TickGenerator = Ticks(bottom, top, _up / 45);
    }

    /// <summary>A place in units of the axes as pixels of a figure of the usual size, from the corner where the axes meet.</summary>
    public Spot Pixel(double x, double y) =>
        new((x - _corner.X) / (_opposite.X - _corner.X) * _across, (y - _corner.Y) / (_opposite.Y - _corner.Y) * _up);

    /// <summary>The reverse of <see cref="Pixel"/>.</summary>
    public Spot At(Spot pixel) =>
        new(_corner.X + pixel.X / _across * (_opposite.X - _corner.X), _corner.Y + pixel.Y / _up * (_opposite.Y - _corner.Y));

    public void Curve(double[] xs, double[] ys, double width = 1.8, LinePattern? pattern = null, Color? color = null)
    {
        ScottPlot.Plottables.Scatter curve = Plot.Add.ScatterLine(xs, ys);
        curve.LineWidth = (float)(width * _k);
        curve.LinePattern = pattern ?? LinePattern.Solid;
        curve.Color = color ?? Colors.Black;
        curve.MarkerSize = 0;
    }

    public void Line(double x1, double y1, double x2, double y2, double width = 0.8, LinePattern? pattern = null, Color? color = null) =>
        Curve([x1, x2], [y1, y2], width, pattern, color);

    public void Marks(double[] xs, double[] ys, MarkerShape shape, double size = 8)
    {
        ScottPlot.Plottables.Scatter marks = Plot.Add.ScatterPoints(xs, ys);
        marks.MarkerShape = shape;
        marks.MarkerSize = (float)(size * _k);
        marks.MarkerLineWidth = (float)(1.4 * _k);
        marks.Color = Colors.Black;
    }

    /// <summary>A gray stretch from the bottom to the top.</summary>
    public void Band(double from, double to)
    {
        ScottPlot.Plottables.HorizontalSpan band = Plot.Add.HorizontalSpan(from, to);
        band.FillColor = new Color(232, 232, 232);
        band.LineWidth = 0;
    }

    /// <summary>A gray area between two curves over the same places.</summary>
    public void Area(double[] xs, double[] low, double[] high)
    {
        Coordinates[] forth = [.. xs.Zip(low, (x, y) => new Coordinates(x, y))];
        IEnumerable<Coordinates> back = xs.Zip(high, (x, y) => new Coordinates(x, y)).Reverse();
        ScottPlot.Plottables.Polygon area = Plot.Add.Polygon([.. forth.Concat(back)]);
        area.FillColor = Gray;
        area.LineWidth = 0;
        area.MarkerSize = 0;
    }

    public void Words(string text, double x, double y, Alignment alignment, bool onWhite = false, double padding = 4)
    {
        ScottPlot.Plottables.Text words = Plot.Add.Text(text, x, y);
        Paper.Style(words.LabelStyle, 12 * _k);
        words.LabelStyle.Alignment = alignment;
        words.LabelStyle.Padding = (float)((onWhite ? 2 : padding) * _k);
        words.LabelStyle.BackgroundColor = onWhite ? Colors.White : Colors.Transparent;
    }

    private static NumericManual Ticks(double low, double high, double most)
    {
        double least = (high - low) / most;
        double power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        double step = RoundSteps.Select(factor => factor * power).First(candidate => candidate >= least * (1 - 1e-9));
        int first = (int)Math.Ceiling(low / step - 1e-9);
        int last = (int)Math.Floor(high / step + 1e-9);
        double[] at = [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(i => i * step)];
        return new(at,
            Array.ConvertAll(at,
                value => Math.Round(value / step).Equals(0) ? "0" : value.ToString("0.######", CultureInfo.InvariantCulture)));
    }
}
