using ScottPlot;
using SkiaSharp;

namespace BendMath.Plotting.Drawing;

/// <summary>The metal: the outer polygon filled but for the holes, with a line around each.</summary>
internal sealed class SectionArea(Coordinates[][] polygons, float lineWidth) : IPlottable
{
    private static readonly Color Gray = Colors.Black.Lighten(0.82);

    /// <summary>The outer loop first, then the holes, in the unit of the axes.</summary>
    public IReadOnlyList<IReadOnlyList<Coordinates>> Polygons => polygons;

    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = new Axes();

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() =>
        new(polygons[0].Min(p => p.X), polygons[0].Max(p => p.X), polygons[0].Min(p => p.Y), polygons[0].Max(p => p.Y));

    public void Render(RenderPack rp)
    {
        using SKPath path = new() { FillType = SKPathFillType.EvenOdd };
        foreach (Coordinates[] polygon in polygons)
        {
            path.AddPoly(Array.ConvertAll(polygon, corner => Axes.GetPixel(corner).ToSKPoint()));
        }

        using SKPaint paint = new() { IsAntialias = true, Color = Gray.ToSKColor(), Style = SKPaintStyle.Fill };
        rp.Canvas.DrawPath(path, paint);
        paint.Color = SKColors.Black;
        paint.Style = SKPaintStyle.Stroke;
        paint.StrokeJoin = SKStrokeJoin.Round;
        paint.StrokeWidth = lineWidth;
        rp.Canvas.DrawPath(path, paint);
    }
}
