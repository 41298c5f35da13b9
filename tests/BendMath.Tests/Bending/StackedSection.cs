using BendMath.Numerics.Geometry;
using BendMath.Sections.Outlines;

namespace BendMath.Tests.Bending;

/// <summary>
/// Sections of textbook examples that no stock shape has: trapezoids stacked from the inside face outward, symmetric about the plane of the
/// ring.
/// </summary>
internal static class StackedSection
{
    /// <param name="unit">Meters in one unit of the example.</param>
    /// <param name="layers">Depth and the widths at the inside and the outside of each layer.</param>
    public static OrientedSection Of(double unit, params (double Depth, double InsideWidth, double OutsideWidth)[] layers) =>
        Of(unit, layers, null);

    public static OrientedSection Of(double unit, (double Depth, double InsideWidth, double OutsideWidth)[] layers, double? capRise)
    {
        List<(double Y, double Half)> right = [];
        double y = 0;
        foreach ((double depth, double inside, double outside) in layers)
        {
            right.Add((y, inside / 2 * unit));
            y += depth * unit;
            right.Add((y, outside / 2 * unit));
        }

        double half = right.Max(point => point.Half);
        (double Y, double Z)[] points =
        [
            .. right.Select(point => (point.Y, half + point.Half)),
            .. Enumerable.Reverse(right).Select(point => (point.Y, half - point.Half)),
        ];
        List<Edge> edges = [];
        for (int i = 0; i < points.Length; i++)
        {
            (double y1, double z1) = points[i];
            (double y2, double z2) = points[(i + 1) % points.Length];
            if (i == right.Count - 1 && capRise is { } rise)
            {
                double chord = (z1 - z2) / 2;
                double radius = (chord * chord + rise * unit * rise * unit) / (2 * rise * unit);
                double alpha = Math.Asin(chord / radius);
                edges.Add(Edge.Arc(y1 + rise * unit - radius, half, radius, Math.PI / 2 - alpha, 2 * alpha));
            }
            else if (y1 != y2 || z1 != z2)
            {
                edges.Add(Edge.Line(y1, z1, y2, z2));
            }
        }

        return new CustomBar("example", new Outline([[.. edges]], [])).AsDrawn;
    }
}
