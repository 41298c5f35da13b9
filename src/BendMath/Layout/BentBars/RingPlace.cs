using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// A point of a bar, where it lies on the straight bar and where on the finished ring: for holes and marks made before bending. On the ring
/// the angle counts from the start of the arc, x from the center through that start, y in the direction of the turn. Immutable and
/// thread-safe.
/// </summary>
/// <remarks>
/// Equation: θ = κ_t·(s − s_start); R(y, z) = (1 + e_f(y, z))/κ_t; x = R·cos θ, y = R·sin θ; strain e_f = κ_t·R − 1; height =
/// z·cos δ − y·sin δ with the dish angle δ.
/// Range: an even ring, sections plane; a hole itself weakens the bar and is not in it.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed class RingPlace
{
    /// <summary>Least distance of a hole's center from the edge of a bar, in diameters.</summary>
    private const double EdgeDiameters = 1.5;

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

    private double Depth => _layout.Section.Height;

    private double R => _layout.Ring.RadiusAt(Level, AxialMeters);

    /// <summary>Size along the bar, after bending, of a round hole drilled there along the axis of the ring before.</summary>
    /// <param name="diameter">Diameter as drilled, greater than zero and not greater than the depth of the bar.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    /// <remarks>
    /// Equation: d·(1 + e_f).
    /// Range: a hole small against the depth of the bar, so that the bar bends as if it were whole; the bar is weaker there and may stretch
    /// more.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length HoleLength(Length diameter) => Length.FromMeters(Hole(diameter) * (1 + Strain.DecimalFractions));

    /// <summary>What to mind about such a hole.</summary>
    /// <inheritdoc cref="HoleLength"/>
    public IReadOnlyList<Advisory> HoleAdvisories(Length diameter) => [.. Doubts(Hole(diameter))];

    /// <summary>Both places.</summary>
    public override string ToString() =>
        Invariant(
            $"{_along * 1e3:0.##} mm along the bar: {Angle.Degrees:0.###}° at radius {R * 1e3:0.##} mm, strain {Strain.Percent:0.##} %");

    private double Hole(Length diameter)
    {
        double size = Guard.Positive(diameter, nameof(diameter));
        return size <= Depth ? size
            : throw Guard.Fault(nameof(diameter), diameter,
                $"must not be greater than the depth of the bar, {Guard.MillimetersText(Depth)}");
    }

    private IEnumerable<Advisory> Doubts(double diameter)
    {
        double edge = Math.Min(Level, Depth - Level);
        if (edge < EdgeDiameters * diameter)
        {
            yield return new("hole-near-edge",
                Invariant(
                    $"The center of the hole is {edge * 1e3:0.##} mm from a face of the bar, less than {EdgeDiameters} diameters: the "
                        + $"strip beside it may tear or bulge."), Sources.CommonPractice);
        }

        if (Level > 0.75 * Depth)
        {
            yield return new("hole-outer-fiber",
                "The hole lies in the outer quarter of the bar, where it is stretched most and cracks start: move it inward or drill it "
                    + "after bending.", Sources.Setting);
        }

        if (diameter > Depth / 3)
        {
            yield return new("hole-weakens",
                Invariant(
                    $"The hole takes {100 * diameter / Depth:0} % of the depth of the bar: it will bend more sharply there than "
                        + $"beside it."), Sources.Setting);
        }

        yield return new("hole-in-bend",
            "A hole in a bend comes out longer or shorter than round, and the bar bends more sharply there: drill it small and ream it "
                + "afterwards, or drill after bending where it must fit.", Sources.CommonPractice, isMinor: true);
    }
}
