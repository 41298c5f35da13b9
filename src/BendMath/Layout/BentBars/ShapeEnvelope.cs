using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>The smallest upright rectangle around a finished shape, both faces of the bar included. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: the least and greatest x and y over the ends of all parts and the points of their arcs where the bar runs along x or y, on
/// both faces.
/// Range: exact for even bends in one plane.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed record ShapeEnvelope
{
    private readonly double _left;

    private readonly double _right;

    private readonly double _bottom;

    private readonly double _top;

    internal ShapeEnvelope(double left, double right, double bottom, double top)
    {
        _left = left;
        _right = right;
        _bottom = bottom;
        _top = top;
    }

    /// <summary>Least x.</summary>
    public Length Left => Length.FromMeters(_left);

    /// <summary>Greatest x.</summary>
    public Length Right => Length.FromMeters(_right);

    /// <summary>Least y.</summary>
    public Length Bottom => Length.FromMeters(_bottom);

    /// <summary>Greatest y.</summary>
    public Length Top => Length.FromMeters(_top);

    /// <summary>Extent along x.</summary>
    public Length Width => Length.FromMeters(_right - _left);

    /// <summary>Extent along y.</summary>
    public Length Height => Length.FromMeters(_top - _bottom);

    /// <summary>Width and height in millimeters.</summary>
    public override string ToString() => Invariant($"{(_right - _left) * 1e3:0.#} × {(_top - _bottom) * 1e3:0.#} mm");
}
