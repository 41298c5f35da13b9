using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>A point of a bar, where it lies on the straight bar and where on the finished ring. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: as for <see cref="RingPlaces"/>; height = z·cos δ − y·sin δ with the dish angle δ.
/// Range: an even ring, sections plane.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed class RingPlace
{
    private readonly DevelopedLayout _layout;

    private readonly double _along;

    private readonly double _angle;

    internal RingPlace(DevelopedLayout layout, double along, double level, double axial, double angle)
    {
        _layout = layout;
        _along = along;
        Level = level;
        AxialMeters = axial;
        _angle = angle;
    }

    /// <summary>Distance from the start of the blank along the unbent bar: the mark.</summary>
    public Length Along => Length.FromMeters(_along);

    /// <summary>Distance from the inside face.</summary>
    public Length FromInside => Length.FromMeters(Level);

    /// <summary>Position along the axis of the ring, on the unbent bar: from the heel of an angle.</summary>
    public Length Axial => Length.FromMeters(AxialMeters);

    /// <summary>Angle on the ring from the start of the arc.</summary>
    public Angle Angle => Angle.FromRadians(_angle);

    /// <summary>Radius from the axis of the ring.</summary>
    public Length Radius => Length.FromMeters(R);

    /// <summary>Place from the center toward the start of the arc.</summary>
    public Length X => Length.FromMeters(R * Math.Cos(_angle));

    /// <summary>Place across, in the direction of the turn.</summary>
    public Length Y => Length.FromMeters(R * Math.Sin(_angle));

    /// <summary>Place along the axis of the ring, from the heel of its inside face; a dished ring leans.</summary>
    public Length Height => Length.FromMeters(_layout.Ring.AxialAt(Level, AxialMeters));

    /// <summary>
    /// How much the fiber through the point is longer than it was, negative when shorter: a small hole stretches along the bar by that.
    /// </summary>
    public Ratio Strain => Ratio.FromDecimalFractions(_layout.Ring.TotalCurvature * R - 1);

    internal double Level { get; }

    internal double AxialMeters { get; }

    internal double Depth => _layout.Section.Height;

    private double R => _layout.Ring.RadiusAt(Level, AxialMeters);

    /// <summary>A hole drilled there before bending.</summary>
    /// <param name="diameter">Diameter of the hole, greater than zero and not greater than the depth of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public BentHole Hole(Length diameter)
    {
        double size = Guard.Positive(diameter, nameof(diameter));
        return size <= Depth ? new(this, size)
            : throw Guard.Fault(nameof(diameter), diameter,
                $"must not be greater than the depth of the bar, {Guard.MillimetersText(Depth)}");
    }

    /// <summary>Both places.</summary>
    public override string ToString() =>
        Invariant(
            $"{_along * 1e3:0.##} mm along the bar: {Angle.Degrees:0.###}° at radius {R * 1e3:0.##} mm, strain {Strain.Percent:0.##} %");
}
