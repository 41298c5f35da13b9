using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// A round hole drilled along the axis of the ring before bending, and what bending makes of it. Immutable and thread-safe.
/// </summary>
public sealed class BentHole
{
    /// <summary>Least distance of a hole's center from the edge of a bar, in diameters.</summary>
    private const double EdgeDiameters = 1.5;

    private readonly double _diameter;

    internal BentHole(RingPlace place, double diameter)
    {
        Place = place;
        _diameter = diameter;
        Advisories = [.. Doubts()];
    }

    /// <summary>Where its center lies.</summary>
    public RingPlace Place { get; }

    /// <summary>Diameter as drilled.</summary>
    public Length Diameter => Length.FromMeters(_diameter);

    /// <summary>Size along the bar after bending.</summary>
    /// <remarks>
    /// Equation: d·(1 + e_f).
    /// Range: a hole small against the depth of the bar, so that the bar bends as if it were whole; the bar is weaker there and may stretch
    /// more.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length LengthAfter => Length.FromMeters(_diameter * (1 + Place.Strain.DecimalFractions));

    /// <summary>What to mind.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    /// <summary>Diameter, place and size after bending.</summary>
    public override string ToString() =>
        Invariant(
            $"hole of {_diameter * 1e3:0.##} mm at {Place.Along.Millimeters:0.##} mm, {LengthAfter.Millimeters:0.###} mm along the bar "
                + $"after bending");

    private IEnumerable<Advisory> Doubts()
    {
        double edge = Math.Min(Place.Level, Place.Depth - Place.Level);
        if (edge < EdgeDiameters * _diameter)
        {
            yield return new("hole-near-edge",
                Invariant(
                    $"The center of the hole is {edge * 1e3:0.##} mm from a face of the bar, less than {EdgeDiameters} diameters: the "
                        + $"strip beside it may tear or bulge."), Sources.CommonPractice);
        }

        if (Place.Level > 0.75 * Place.Depth)
        {
            yield return new("hole-outer-fiber",
                "The hole lies in the outer quarter of the bar, where it is stretched most and cracks start: move it inward or drill it "
                    + "after bending.", Sources.Setting);
        }

        if (_diameter > Place.Depth / 3)
        {
            yield return new("hole-weakens",
                Invariant(
                    $"The hole takes {100 * _diameter / Place.Depth:0} % of the depth of the bar: it will bend more sharply there than "
                        + $"beside it."), Sources.Setting);
        }

        yield return new("hole-in-bend",
            "A hole in a bend comes out longer or shorter than round, and the bar bends more sharply there: drill it small and ream it "
                + "afterwards, or drill after bending where it must fit.", Sources.CommonPractice, isMinor: true);
    }
}
