using BendMath.Distortion.Shape;
using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>The walls of a square or rectangular tube as they sink and bulge when it is bent. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: m″ + n·κ·cos β = 0 for inside, side and outside wall, m and n by Hencky's deformation theory; corners stay in place and turn
/// with the walls that meet there, their moments in balance; the shape of least stored work with N = 0.
/// Range: no mandrel or filling; sinks up to three wall thicknesses, beyond which the force across the wall matters and the tube collapses.
/// Corner radii left out of the walls.
/// Source: <see cref="Sources.DistortionChecks"/>, <see cref="Sources.Hencky1924"/>
/// </remarks>
public sealed class WallShape
{
    private const double MostThicknesses = 3;

    private readonly double _inside;

    private readonly double _outside;

    private readonly double _bulge;

    private readonly double _leastShare;

    private readonly double _held;

    private WallShape(double inside, double outside, double bulge, double leastShare, double held, LoadedBend? bend)
    {
        _inside = inside;
        _outside = outside;
        _bulge = bulge;
        _leastShare = leastShare;
        _held = held;
        Bend = bend;
    }

    /// <summary>Whether a wall sinks by more than three thicknesses or finds no rest; no size is given then.</summary>
    public bool Collapses => Bend is null;

    /// <summary>
    /// How far the middle of the inside wall sinks into the tube, loaded, by deformation theory; null if the tube <see cref="Collapses"/>.
    /// </summary>
    public Length? InsideWallSink => Size(_inside);

    /// <summary>How far the middle of the outside wall sinks into the tube; null if the tube <see cref="Collapses"/>.</summary>
    public Length? OutsideWallSink => Size(_outside);

    /// <summary>
    /// How far the side walls bulge out at most; zero where they stay or go in, null if the tube <see cref="Collapses"/>.
    /// </summary>
    public Length? SideWallBulge => Size(_bulge);

    /// <summary>
    /// The least of the larger sink to expect: incremental theory gives 0.55 to 0.66 of the computed figure, and 0.5 is counted on. Null if
    /// the tube <see cref="Collapses"/>.
    /// </summary>
    public Length? LeastSink => Size(_leastShare * Math.Max(_inside, _outside));

    /// <summary>The most: the larger of both sinks. Null if the tube <see cref="Collapses"/>.</summary>
    public Length? MostSink => Size(Math.Max(_inside, _outside));

    /// <summary>The sink by a closed formula, for walls whose corners are kept from turning.</summary>
    /// <remarks>
    /// Equation: 0.0117·λ²·(H − t), λ = b²·κ/t, b = B − t.
    /// Range: beyond yield, within 8 % up to λ = 1.6 for walls up to 30 thicknesses wide, within 15 % up to 60; where the corners turn, 2.2
    /// to 2.7 times that for square tubes.
    /// Source: <see cref="Sources.DistortionChecks"/>
    /// </remarks>
    public Length HeldFormula => Length.FromMeters(_held);

    /// <summary>The bend with moment and neutral axis of the tube that has changed its shape; null if it <see cref="Collapses"/>.</summary>
    public LoadedBend? Bend { get; }

    /// <summary>Both sinks.</summary>
    public override string ToString() => Collapses ? "collapses" : Invariant(
        $"inside wall sinks by {_inside * 1e3:0.00} mm, outside wall by {_outside * 1e3:0.00} mm");

    internal static WallShape? Of(LoadedBend loaded, bool sidesHeld, CancellationToken cancellation)
    {
        if (loaded.Analysis.Section.Features.Walls is not { IsTube: true } layout)
        {
            return null;
        }

        StripFrame frame = StripModel.Of(loaded, layout, sidesHeld);
        Strip inside = frame.Strips[0];
        Strip side = frame.Strips[1];
        double t = inside.Thickness;
        double ratio = 4 * inside.Width * inside.Width * loaded.State.Curvature / t;
        double held = 0.0117 * ratio * ratio * side.Width;
        bool settled = frame.SettleFree(cancellation);
        double insideSink = frame.Deflection(inside, 0);
        double outsideSink = -frame.Deflection(frame.Strips[2], 0);
        if (!settled || Math.Max(Math.Abs(insideSink), Math.Abs(outsideSink)) > MostThicknesses * t)
        {
            return new(0, 0, 0, 0, held, null);
        }

        double bulge = Enumerable.Range(0, side.Nodes).Max(node => -frame.Deflection(side, node));
        LoadedBend bend = StripModel.Bent(loaded, frame.Curvature, frame.NeutralAxis, frame.Moments().Bending, 0);
        return new(insideSink, outsideSink, bulge, layout.LeastShare, held, bend);
    }

    private Length? Size(double meters) => Collapses ? null : Length.FromMeters(meters);
}
