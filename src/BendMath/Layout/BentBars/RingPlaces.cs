using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// Points of the straight bar and of the finished ring, each from the other: for holes and marks made before bending. On the ring the angle
/// counts from the start of the arc, x from the center through that start, y in the direction of the turn. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: θ = κ_t·(s − s_start); R(y, z) = (1 + e_f(y, z))/κ_t; x = R·cos θ, y = R·sin θ; strain e_f = κ_t·R − 1.
/// Range: an even ring, sections plane; a hole itself weakens the bar and is not in it.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed class RingPlaces
{
    private readonly double _start;

    private readonly double _turn;

    private RingPlaces(DevelopedLayout layout)
    {
        Layout = layout;
        _start = layout.Ends.StartMeters;
        _turn = layout.Arc.Radians;
    }

    /// <summary>The layout of the ring.</summary>
    public DevelopedLayout Layout { get; }

    /// <summary>The points of a layout.</summary>
    /// <param name="layout">Ring, section and ends.</param>
    /// <exception cref="ArgumentNullException">The layout is null.</exception>
    public static RingPlaces Of(DevelopedLayout layout) => new(Guard.NotNull(layout, nameof(layout)));

    /// <summary>Where a point of the straight bar comes to lie on the ring.</summary>
    /// <param name="along">From the start of the blank, between the marks of the arc.</param>
    /// <param name="fromInside">From the inside face, between zero and the depth of the bar.</param>
    /// <param name="axial">Along the axis of the ring, between zero and the width of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point does not lie on the ring.</exception>
    public RingPlace FromBar(Length along, Length fromInside, Length axial)
    {
        double s = Guard.Place(along, nameof(along)) - _start;
        double developed = Layout.DevelopedLength.Meters;
        double slack = 1e-12 * Layout.Blank;
        return s >= -slack && s <= developed + slack
            ? At(Math.Min(Math.Max(s, 0), developed) * Layout.Ring.TotalCurvature, fromInside, axial)
            : throw Guard.Fault(nameof(along), along,
                $"must lie between the marks of the arc, {Guard.MillimetersText(_start)} and {Guard.MillimetersText(_start + developed)}");
    }

    /// <summary>Where on the straight bar to mark a point wanted at an angle of the ring.</summary>
    /// <param name="angle">From the start of the arc, between zero and its turn.</param>
    /// <param name="fromInside">From the inside face, between zero and the depth of the bar.</param>
    /// <param name="axial">Along the axis of the ring, between zero and the width of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The point does not lie on the ring.</exception>
    public RingPlace FromAngle(Angle angle, Length fromInside, Length axial)
    {
        double theta = Guard.NonNegative(angle, nameof(angle));
        return theta <= _turn * (1 + 1e-12)
            ? At(Math.Min(theta, _turn), fromInside, axial)
            : throw Guard.Fault(nameof(angle), angle, $"must not be greater than the turn of the arc, {Guard.Text(Layout.Arc.Turn)}");
    }

    /// <summary>Where on the straight bar to mark a point wanted at a length along a face of the ring.</summary>
    /// <param name="line">The line of the ring the tape follows.</param>
    /// <param name="length">Length along that line from the start of the arc.</param>
    /// <param name="fromInside">From the inside face, between zero and the depth of the bar.</param>
    /// <param name="axial">Along the axis of the ring, between zero and the width of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value or the point does not lie on the ring.</exception>
    public RingPlace FromFace(RadiusReference line, Length length, Length fromInside, Length axial)
    {
        double radius = Layout.Ring.RadiusTo(Guard.Defined(line, nameof(line))).Meters;
        double theta = Guard.Place(length, nameof(length)) / radius;
        return theta <= _turn * (1 + 1e-12)
            ? At(Math.Min(theta, _turn), fromInside, axial)
            : throw Guard.Fault(nameof(length), length, $"must not be beyond the arc there, {Guard.MillimetersText(_turn * radius)}");
    }

    /// <summary>Layout.</summary>
    public override string ToString() => $"places on {Layout.Ring}";

    private RingPlace At(double angle, Length fromInside, Length axial)
    {
        FinishedRing ring = Layout.Ring;
        double y = Layout.Section.LevelOf(fromInside, nameof(fromInside));
        double width = Layout.Section.Properties.Width.Meters;
        double z = Guard.Place(axial, nameof(axial));
        return z <= width * (1 + 1e-12)
            ? new(Layout, _start + angle / ring.TotalCurvature, y, Math.Min(z, width), angle)
            : throw Guard.Fault(nameof(axial), axial, $"must not be greater than the width of the section, {Guard.MillimetersText(width)}");
    }
}
