using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath.Sections.Outlines;

/// <summary>
/// One edge of an outline, run from its start to its end: a straight line, or a circular arc x = x_c + r·cos φ, y = y_c + r·sin φ with φ
/// turning from the start angle through the sweep. Angles count from the x axis toward the y axis. Immutable and thread-safe.
/// </summary>
public sealed record OutlineEdge
{
    internal OutlineEdge(Edge edge) => Edge = edge;

    /// <summary>Whether the edge is an arc; otherwise it is straight.</summary>
    public bool IsArc => Edge.IsArc;

    /// <summary>Where the edge begins.</summary>
    public OutlinePoint Start => new(Edge.Z1, Edge.Y1);

    /// <summary>Where the edge ends.</summary>
    public OutlinePoint End => new(Edge.Z2, Edge.Y2);

    /// <summary>Center of an arc, or null.</summary>
    public OutlinePoint? Center => IsArc ? new(Edge.CenterZ, Edge.CenterY) : null;

    /// <summary>Radius of an arc, or null.</summary>
    public Length? Radius => IsArc ? UnitsNet.Length.FromMeters(Edge.Radius) : null;

    /// <summary>Direction from the center to the start of an arc, or null.</summary>
    public Angle? StartAngle => IsArc ? Angle.FromRadians(Edge.StartAngle) : null;

    /// <summary>Turn from the start to the end of an arc, positive counter-clockwise, or null.</summary>
    public Angle? Sweep => IsArc ? Angle.FromRadians(Edge.Sweep) : null;

    /// <summary>Length along the edge.</summary>
    public Length Length => Length.FromMeters(Edge.Length);

    internal Edge Edge { get; }

    private (OutlinePoint, OutlinePoint, OutlinePoint?, double, int) Identity =>
        (Start, End, Center, Picometers.Of(Edge.Radius), Math.Sign(Edge.Sweep));

    /// <summary>A straight edge.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="end">Where it ends.</param>
    /// <exception cref="ArgumentNullException">A point is null.</exception>
    public static OutlineEdge Line(OutlinePoint start, OutlinePoint end) => new(
        Edge.Line(Guard.NotNull(start, nameof(start)).Up, start.Right, Guard.NotNull(end, nameof(end)).Up, end.Right));

    /// <summary>An arc from its center, radius and angles, or a full circle.</summary>
    /// <param name="center">Center of the circle.</param>
    /// <param name="radius">Greater than zero.</param>
    /// <param name="startAngle">Direction from the center to the start, from the x axis toward the y axis.</param>
    /// <param name="sweep">Turn from start to end, positive counter-clockwise, not zero, at most 360° either way.</param>
    /// <exception cref="ArgumentNullException">The center is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive, an angle is not finite, or the sweep is zero or more than
    /// 360°.</exception>
    public static OutlineEdge Arc(OutlinePoint center, Length radius, Angle startAngle, Angle sweep)
    {
        const double Circle = 2 * Math.PI;
        const double Slack = 1e-9;
        Guard.NotNull(center, nameof(center));
        double r = Guard.Positive(radius, nameof(radius));
        double from = Guard.Finite(startAngle, nameof(startAngle));
        double turn = Guard.Finite(sweep, nameof(sweep));
        if (turn == 0 || Math.Abs(turn) > Circle + Slack)
        {
            throw Guard.Fault(nameof(sweep), sweep, "must not be 0°, and at most 360° either way");
        }

        return new(Edge.Arc(center.Up, center.Right, r, from, Math.Abs(turn) > Circle - Slack ? (turn > 0 ? Circle : -Circle) : turn));
    }

    /// <summary>An arc of less than a full circle between two points.</summary>
    /// <param name="start">Where it begins.</param>
    /// <param name="end">Where it ends, as far from the center as the start, to a millionth.</param>
    /// <param name="center">Center of the circle.</param>
    /// <param name="counterClockwise">Whether it turns from the x axis toward the y axis.</param>
    /// <exception cref="ArgumentNullException">A point is null.</exception>
    /// <exception cref="ArgumentException">Start and end are the same point, or not at the same distance from the center.</exception>
    public static OutlineEdge Arc(OutlinePoint start, OutlinePoint end, OutlinePoint center, bool counterClockwise)
    {
        Guard.NotNull(start, nameof(start));
        Guard.NotNull(end, nameof(end));
        Guard.NotNull(center, nameof(center));
        Edge edge = Edge.Fillet(start.Up, start.Right, end.Up, end.Right, center.Up, center.Right, counterClockwise);
        Edge back = edge.Reversed();
        double radius = Guard.Positive(UnitsNet.Length.FromMeters(edge.Radius), nameof(center));
        double other = Edge.Line(center.Up, center.Right, back.Y1, back.Z1).Length;
        if (Math.Abs(other - radius) > LoopReader.Closeness * radius)
        {
            throw Guard.Refused(nameof(end), $"must be as far from the center as the start, {Guard.MillimetersText(radius)}",
                $"is {Guard.MillimetersText(other)} from it");
        }

        return edge.Sweep != 0
            ? new(edge)
            : throw Guard.Refused(nameof(end), "must differ from the start",
                $"both are at {start}; a full circle is given by center, radius and angles");
    }

    /// <summary>Equal when ends, center, radius and sense are, to a picometer.</summary>
    /// <param name="other">Another edge.</param>
    public bool Equals(OutlineEdge? other) => other is not null && Identity.Equals(other.Identity);

    /// <inheritdoc/>
    public override int GetHashCode() => Identity.GetHashCode();

    /// <summary>Ends, and for an arc the radius and sweep.</summary>
    public override string ToString() =>
        IsArc
            ? Invariant($"arc from {Start} to {End}, radius {Edge.Radius * 1e3:0.######} mm, sweep {Edge.Sweep * 180 / Math.PI:0.######}°")
                : Invariant($"line from {Start} to {End}");
}
