using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// A place of a bar with several bends, on the straight bar and on the finished shape. The finished shape lies in a plane: it starts at the
/// origin with its left face and points along x; a left bend turns toward y. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: on a straight, along its direction; in a bend, on a circle of R(y) = (1 + e_f(y))/κ_t about its center, turned by κ_t per
/// unbent length; strain e_f = κ_t·R(y) − 1.
/// Range: even bends in one plane, sections plane.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed record BarPlace
{
    private readonly double _along;

    private readonly double _fromLeft;

    private readonly double _x;

    private readonly double _y;

    private readonly double _heading;

    private readonly double _strain;

    internal BarPlace(int part, double along, double fromLeft, double x, double y, double heading, double strain)
    {
        Part = part;
        _along = along;
        _fromLeft = fromLeft;
        _x = x;
        _y = y;
        _heading = heading;
        _strain = strain;
    }

    /// <summary>Which part it lies on, counted from the start: 1 for the first.</summary>
    public int Part { get; }

    /// <summary>Distance from the start of the blank along the unbent bar.</summary>
    public Length Along => Length.FromMeters(_along);

    /// <summary>Distance from the left face of the bar.</summary>
    public Length FromLeft => Length.FromMeters(_fromLeft);

    /// <summary>Finished place along the first direction of the bar.</summary>
    public Length X => Length.FromMeters(_x);

    /// <summary>Finished place to the left of it.</summary>
    public Length Y => Length.FromMeters(_y);

    /// <summary>Direction of the finished bar there; positive to the left, whole turns included.</summary>
    public Angle Heading => Angle.FromRadians(_heading);

    /// <summary>
    /// How much the bar is stretched along there, negative for shortened: a hole drilled before bending grows or shrinks so much in length.
    /// Zero on a straight.
    /// </summary>
    public Ratio Strain => Ratio.FromDecimalFractions(_strain);

    /// <summary>Both places, in millimeters and degrees.</summary>
    public override string ToString() =>
        Invariant(
            $"{_along * 1e3:0.##} mm along the bar: x {_x * 1e3:0.##} mm, y {_y * 1e3:0.##} mm, heading {_heading * 180 / Math.PI:0.##}°");
}
