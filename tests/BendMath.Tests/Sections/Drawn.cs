using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Tests.Sections;

/// <summary>Outlines drawn in millimeters.</summary>
internal static class Drawn
{
    public static OutlinePoint At(double x, double y) => new(Length.FromMillimeters(x), Length.FromMillimeters(y));

    public static OutlineLoop Polygon(params (double X, double Y)[] corners) =>
        OutlineLoop.Polygon([.. corners.Select(corner => At(corner.X, corner.Y))]);

    public static OutlineLoop Rectangle(double x, double y, double width, double height) =>
        Polygon((x, y), (x + width, y), (x + width, y + height), (x, y + height));

    public static OutlineLoop Circle(double x, double y, double radius) => OutlineLoop.Circle(At(x, y), Length.FromMillimeters(radius));

    public static OutlineEdge Line(double x1, double y1, double x2, double y2) => OutlineEdge.Line(At(x1, y1), At(x2, y2));

    public static OutlineEdge Arc(double x1, double y1, double x2, double y2, double centerX, double centerY,
        bool counterClockwise = true) =>
        OutlineEdge.Arc(At(x1, y1), At(x2, y2), At(centerX, centerY), counterClockwise);

    public static OutlineEdge Turn(double centerX, double centerY, double radius, double start, double sweep) =>
        OutlineEdge.Arc(At(centerX, centerY), Length.FromMillimeters(radius), Angle.FromDegrees(start), Angle.FromDegrees(sweep));

    public static OutlineLoop Loop(params OutlineEdge[] edges) => new(edges);

    /// <summary>A flat with rounded ends: lines 40 mm long, half circles of 5 mm.</summary>
    public static OutlineLoop Slot() => Loop(Line(0, 0, 40, 0), Arc(40, 0, 40, 10, 40, 5), Line(40, 10, 0, 10), Arc(0, 10, 0, 0, 0, 5));

    public static OutlineLoop Reversed(OutlineLoop loop) => new([.. loop.Edges.Reverse().Select(edge => edge.IsArc
        ? OutlineEdge.Arc(edge.Center!, edge.Radius!.Value, edge.StartAngle!.Value + edge.Sweep!.Value, -edge.Sweep.Value)
        : OutlineEdge.Line(edge.End, edge.Start))]);

    public static CustomBar Bar(params OutlineLoop[] loops) => new("bar from a drawing", new Outline(loops));
}
