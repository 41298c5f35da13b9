using BendMath.Sections.Outlines;
using NetTopologySuite.Geometries;
using UnitsNet;

namespace BendMath.Tests.Sections;

/// <summary>
/// Source: area and centroid of polygons by NetTopologySuite, on points made here from the dimensions, 64 to 4096 a quarter circle. A
/// polygon in an arc errs by the square of its step (elementary geometry), which the observed order shows, and Richardson's extrapolation
/// removes.
/// </summary>
public sealed class PolygonRouteTests
{
    private static readonly int[] Points = [64, 128, 256, 512, 1024, 2048, 4096];

    private static readonly GeometryFactory Factory = new();

    [Fact]
    public void Rolled_angle() => Verify(
        new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3),
            AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5))).FlangeOut,
        points => Polygon(
        [
            .. Corner(0, 0), .. Corner(30, 0), .. Quarter(27.5, 0.5, 2.5, 0, points), .. Quarter(8, 8, 5, 270, points, clockwise: true),
            .. Quarter(0.5, 27.5, 2.5, 0, points), .. Corner(0, 30),
        ]));

    [Fact]
    public void Round_tube() => Verify(
        new RoundTube(Length.FromMillimeters(42.4), Length.FromMillimeters(3.2)).Section,
        points => Factory.CreatePolygon(Ring(Circle(21.2, 21.2, 21.2, points)), [Ring(Circle(21.2, 21.2, 18, points))]));

    [Fact]
    public void Flat_with_half_round_edges_from_a_drawing() => Verify(
        Drawn.Bar(Drawn.Slot()).AsDrawn,
        points =>
            Polygon(
                [.. Quarter(45, 5, 5, 270, points), .. Quarter(45, 5, 5, 0, points), .. Quarter(5, 5, 5, 90, points),
                    .. Quarter(5, 5, 5, 180, points)]));

    [Fact]
    public void Bar_with_a_shallow_crown_and_a_hole_from_a_drawing()
    {
        double rise = 50 - Math.Sqrt(50 * 50 - 100);
        OutlineLoop crown =
            Drawn.Loop(Drawn.Line(0, 0, 20, 0), Drawn.Line(20, 0, 20, 10), Drawn.Arc(20, 10, 0, 10, 10, 10 + rise - 50),
                Drawn.Line(0, 10, 0, 0));
        double half = Math.Asin(0.2) * 180 / Math.PI;
        Verify(
            Drawn.Bar(crown, Drawn.Circle(7, 5, 3)).AsDrawn,
            points => Factory.CreatePolygon(
                Ring([.. Corner(0, 0), .. Corner(20, 0), .. Arc(10, 10 + rise - 50, 50, 90 - half, 2 * half, points)]),
                [Ring(Circle(7, 5, 3, points))]));
    }

    private static void Verify(OrientedSection section, Func<int, Polygon> polygon)
    {
        double[] areas = [.. Points.Select(points => polygon(points).Area)];
        double[] y = [.. Points.Select(points => polygon(points).Centroid.Y)];
        double[] x = [.. Points.Select(points => polygon(points).Centroid.X)];
        Verify(section.Properties.Area.SquareMillimeters, areas, moves: true);
        Verify(section.Properties.CentroidFromInside.Millimeters, y, moves: false);
        Verify(section.Properties.CentroidAxial.Millimeters, x, moves: false);
    }

    /// <summary>A figure that symmetry keeps in place shows no order; the area always does.</summary>
    private static void Verify(double ours, double[] theirs, bool moves)
    {
        int last = theirs.Length - 1;
        double extrapolated = theirs[last] + (theirs[last] - theirs[last - 1]) / 3;
        Assert.Equal(extrapolated, ours, 1e-9 * Math.Abs(ours));
        if (!moves && Math.Abs(theirs[0] - ours) < 1e-9 * Math.Abs(ours))
        {
            return;
        }

        for (int i = 1; i < last; i++)
        {
            double order = Math.Log2((theirs[i] - theirs[i - 1]) / (theirs[i + 1] - theirs[i]));
            Assert.InRange(order, 1.9, 2.1);
        }
    }

    private static Coordinate[] Corner(double x, double y) => [new(x, y)];

    private static Coordinate[] Quarter(double x, double y, double radius, double start, int points, bool clockwise = false) =>
        Arc(x, y, radius, start, clockwise ? -90 : 90, points);

    private static Coordinate[] Circle(double x, double y, double radius, int points) => Arc(x, y, radius, 0, 360, 4 * points)[..^1];

    private static Coordinate[] Arc(double x, double y, double radius, double start, double sweep, int points) =>
    [
        .. Enumerable.Range(0, points + 1).Select(i => (start + sweep * i / points) * Math.PI / 180)
            .Select(angle => new Coordinate(x + radius * Math.Cos(angle), y + radius * Math.Sin(angle))),
    ];

    private static Polygon Polygon(Coordinate[] corners) => Factory.CreatePolygon(Ring(corners));

    private static LinearRing Ring(Coordinate[] corners) => Factory.CreateLinearRing([.. corners, corners[0]]);
}
