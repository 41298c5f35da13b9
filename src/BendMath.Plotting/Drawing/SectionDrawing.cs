using System.Globalization;
using BendMath.Sections.Outlines;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// Lays the figure out in pixels of a figure of the usual size, from the corner of the section at z = 0 on the inside face: a column of
/// names to the left, dimensions to the right and below, and under them the way to the center of the bend.
/// </summary>
internal sealed class SectionDrawing
{
    private const double Above = 44;

    private const double Below = 52;

    private const double AxisColumn = 62;

    private const double Margin = 10;

    private const double NameColumn = 262;

    private const double RightColumn = 84;

    private const double OverSection = 30;

    private const double UnderSection = 120;

    private const double Beyond = 16;

    private static readonly double[] RoundSteps = [1, 2, 5, 10];

    private readonly SectionFigure _figure;

    private readonly Sketch _sketch;

    private readonly SectionShape _shape;

    private readonly double _perMeter;

    private readonly string _unit;

    private SectionDrawing(SectionFigure figure, Sketch sketch, SectionShape shape)
    {
        _figure = figure;
        _sketch = sketch;
        _shape = shape;
        (_perMeter, _unit) = Paper.Unit(figure.IsInInches);
    }

    public static Plot Draw(SectionFigure figure, int width, int height)
    {
        double k = Paper.Magnification(width, height);
        double across = width / k - AxisColumn - Margin;
        double up = height / k - Above - Below;
        double free = across - NameColumn - RightColumn;
        double tall = up - OverSection - UnderSection;
        SectionProperties figures = figure.Section.Properties;
        double pixelsPerMeter = Math.Min(free / figures.Width.Meters, tall / figures.Depth.Meters);
        SectionShape shape = SectionShape.Of(figure.Section, pixelsPerMeter);
        double unitsPerPixel = Paper.Unit(figure.IsInInches).PerMeter / pixelsPerMeter;
        double left = NameColumn + (free - shape.Width) / 2;
        double under = UnderSection + (tall - shape.Depth) / 2;

        Plot plot = new();
        new SectionDrawing(figure, new(plot, unitsPerPixel, k), shape).Draw(plot, k);
        plot.Axes.SetLimits(-left * unitsPerPixel, (across - left) * unitsPerPixel, -under * unitsPerPixel, (up - under) * unitsPerPixel);
        plot.Layout.Fixed(new PixelPadding((float)(AxisColumn * k), (float)(Margin * k), (float)(Below * k), (float)(Above * k)));
        plot.Axes.SquareUnits();
        return plot;
    }

    private void Draw(Plot plot, double k)
    {
        Paper.Frame(plot, _figure.Title, $"z, along the axis of the ring ({_unit})", $"y, outward from the inside face ({_unit})", k);
        plot.Axes.Bottom.TickGenerator = Ticks(_shape.Width);
        plot.Axes.Left.TickGenerator = Ticks(_shape.Depth);
        plot.PlottableList.Add(
            new SectionArea(Array.ConvertAll(_shape.Polygons, polygon => Array.ConvertAll(polygon, _sketch.At)), (float)(1.6 * k)));
        SectionProperties p = _figure.Section.Properties;
        double perMeter = _shape.Scale;
        Spot centroid = new(p.CentroidAxial.Meters * perMeter, p.CentroidFromInside.Meters * perMeter);
        double equalArea = p.EqualAreaAxisFromInside.Meters * perMeter;
        foreach (double face in new[] { 0, _shape.Depth })
        {
            _sketch.Line(new(-Beyond, face), new(_shape.Width + 3.1 * Beyond, face), 0.8);
        }

        _sketch.Line(new(-Beyond, equalArea), new(_shape.Width + 0.7 * Beyond, equalArea), 1.4, LinePattern.Dashed);
        Names(centroid, equalArea);
        Dimensions(centroid, equalArea);
        ToCenter();
        _sketch.Dot(centroid, 11, MarkerShape.FilledCircle, Colors.White);
        _sketch.Dot(centroid, 11, MarkerShape.OpenCircleWithCross, Colors.Black);
    }

    /// <summary>Round numbers along the section only, at least 24 pixels apart.</summary>
    private NumericManual Ticks(double pixels)
    {
        double extent = pixels / _shape.Scale * _perMeter;
        double least = 24 * extent / pixels;
        double power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        double step = RoundSteps.Select(factor => factor * power).First(candidate => candidate >= least);
        double[] at = [.. Enumerable.Range(0, (int)Math.Floor(extent / step * (1 + 1e-9)) + 1).Select(i => i * step)];
        return new(at, Array.ConvertAll(at, value => value.ToString("0.######", CultureInfo.InvariantCulture)));
    }

    private void Names(Spot centroid, double equalArea)
    {
        List<(string Text, Spot Anchor)> names = [($"inside face, y = 0", new(-Beyond, 0))];
        Spot axis = new(-Beyond, equalArea);
        if (Math.Abs(centroid.Y - equalArea) < 1e-9 * _shape.Depth)
        {
            names.Add(($"centroid and\nequal-area axis, y = {Number(equalArea)}", axis));
        }
        else
        {
            names.Add(($"centroid, y = {Number(centroid.Y)}", centroid));
            names.Add(($"equal-area axis, y = {Number(equalArea)}", axis));
        }

        names.Add(($"outside face, y = {Number(_shape.Depth)}", new(-Beyond, _shape.Depth)));
        names = [.. names.OrderBy(name => name.Anchor.Y)];
        double[] heights = [.. names.Select(name => name.Text.Contains('\n') ? 2.2 * Sketch.LineHeight : 1.2 * Sketch.LineHeight)];
        double[] middles = LabelColumn.Spread([.. names.Select(name => name.Anchor.Y)], heights);
        for (int i = 0; i < names.Count; i++)
        {
            Spot end = new(-Beyond - 34, middles[i]);
            _sketch.Line(end, names[i].Anchor, 0.6);
            _sketch.Words(names[i].Text, end - new Spot(4, 0), Alignment.MiddleRight);
        }
    }

    private void Dimensions(Spot centroid, double equalArea)
    {
        double width = _shape.Width;
        double depth = _shape.Depth;
        double right = width + 2.6 * Beyond;
        new Dimension(Number(depth), new(right, 0), new(right, depth)).Draw(_sketch);
        double lowLeft = _shape.Polygons[0].Where(spot => spot.X < 1e-6 * width).Select(spot => spot.Y).DefaultIfEmpty(0).Min();
        double lowRight = _shape.Polygons[0].Where(spot => spot.X > (1 - 1e-6) * width).Select(spot => spot.Y).DefaultIfEmpty(0).Min();
        new Dimension(Number(width), new(0, -34), new(width, -34), reach: (new(0, lowLeft), new(width, lowRight))).Draw(_sketch);

        Box room = new(new((width + Beyond) / 2, depth / 2), width + Beyond + 8, depth + 48);
        Spot[] marks =
            [centroid, .. Enumerable.Range(1, 8).Select(i => centroid * (i / 8.0) + new Spot(-Beyond, centroid.Y) * (1 - i / 8.0))];
        DimensionPlacer placer = new(_shape, room, marks, equalArea);
        bool oneWall = _figure.Section.WallThickness is not null;
        List<Dimension> placed = [.. placer.Place(oneWall, Number)];
        OutlineEdge[] circles =
            [.. _shape.Outline.Loops.Where(loop => loop.Edges.All(edge => edge.IsArc && edge.Center == loop.Edges[0].Center)).Select(loop => loop.Edges[0])];
        if (placed.Count == 0 && circles.Length == 2 && _shape.Outline.Loops.Count == 2)
        {
            double inner = circles[1].Radius!.Value.Meters * _shape.Scale;
            double outer = circles[0].Radius!.Value.Meters * _shape.Scale;
            placed.Add(placer.AcrossRing(_shape.At(circles[0].Center!), inner, outer, Number(outer - inner)));
        }

        placed.ForEach(dimension => dimension.Draw(_sketch));
    }

    private void ToCenter()
    {
        Spot top = new(_shape.Width / 2, -54);
        _sketch.Arrow(top, top - new Spot(0, 34), 2, 1.5);
        _sketch.Words("to the center of the bend", top - new Spot(0, 50), Alignment.MiddleCenter);
    }

    private string Number(double pixels) =>
        (pixels / _shape.Scale * _perMeter).ToString(_figure.IsInInches ? "0.###" : "0.##", CultureInfo.InvariantCulture);
}
