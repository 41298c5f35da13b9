using BendMath.Distortion.Shape;
using BendMath.Evidence;
using BendMath.Numerics.Geometry;
using BendMath.Sections;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>How one leg or flange along the axis of the ring, or at 45° to it, moves out of square. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: m″ + n·κ·cos β = 0, m and n by Hencky's deformation theory, v = v′ = 0 at the clamp, m = m′ = 0 at the free edge; the
/// displacement of least stored work with N = 0.
/// Range: slopes small beside 1: 1 % at 14°, 2 % at 20°, beyond which the leg folds; residual stress of the bar and the straight bar ahead
/// of the bend left out.
/// Source: <see cref="Sources.DistortionChecks"/>, <see cref="Sources.Hencky1924"/>
/// </remarks>
public sealed record LegTurn
{
    private readonly double _width;

    private readonly double _edge;

    private readonly double _slope;

    private readonly double _released;

    private readonly double _leastShare;

    private readonly double? _clearance;

    private readonly double? _closed;

    internal LegTurn(
        string name, double width, double edge, double slope, double released, double leastShare, double? clearance, double? closed)
    {
        Name = name;
        _width = width;
        _edge = edge;
        _slope = slope;
        _released = released;
        _leastShare = leastShare;
        _clearance = clearance;
        _closed = closed;
    }

    /// <summary>Which wall of the section it is.</summary>
    public string Name { get; }

    /// <summary>
    /// How far the free edge moves along the normal of the leg while loaded, positive outward, away from the center of the ring; of a web
    /// between two flanges, its middle.
    /// </summary>
    public Length EdgeDisplacement => Length.FromMeters(_edge);

    /// <summary>
    /// Turn of the leg as a try square laid on the heel shows it: displacement of the edge over the width from the clamp; loaded, by
    /// deformation theory. Positive outward.
    /// </summary>
    public Angle Mean => Angle.FromRadians(_edge / _width);

    /// <summary>
    /// Turn at the free edge, loaded; of a web between two flanges, the turn at its corners, by which flanges that are not held lean.
    /// </summary>
    public Angle AtEdge => Angle.FromRadians(_slope);

    /// <summary>
    /// The smaller end of the turn to expect, in size: incremental theory, which follows the path of strain, gives no less. The signs are
    /// those of <see cref="Mean"/>.
    /// </summary>
    public Angle LeastMean => Angle.FromRadians(_leastShare * _edge / _width);

    /// <summary>The larger end of the turn to expect, in size; a wall that backs the leg lets through no more than its clearance.</summary>
    public Angle MostMean
    {
        get
        {
            double most = 1.05 * Math.Abs(_edge);
            return Angle.FromRadians(Math.Sign(_edge) * Math.Min(most, Math.Max(Math.Abs(_edge), _clearance ?? most)) / _width);
        }
    }

    /// <summary>Displacement of the edge after a free release, without backing.</summary>
    public Length ReleasedEdgeDisplacement => Length.FromMeters(_released);

    /// <summary>Mean turn after a free release.</summary>
    public Angle ReleasedMean => Angle.FromRadians(_released / _width);

    /// <summary>
    /// The mean turn of a leg that is not backed by a closed formula, for a check by hand; null for slanted legs and webs.
    /// </summary>
    /// <remarks>
    /// Equation: (λ·t/4 + (9/8)·λ²·(y_n − y_m))/b, λ = b²·κ/t, y_n the neutral axis of this solution, y_m the middle of the leg.
    /// Range: incompressible wall of one secant modulus. Edge outward: within 20 % for λ ≤ 1, half too high at 1.2; edge inward: sign and
    /// order only.
    /// Source: <see cref="Sources.DistortionChecks"/>
    /// </remarks>
    public Angle? ClosedFormula => _closed is { } closed ? Angle.FromRadians(closed) : null;

    /// <summary>Wall, mean turn and its band.</summary>
    public override string ToString() => Invariant(
        $"{Name}: turned by {Mean.Degrees:0.0}° ({LeastMean.Degrees:0.0} to {MostMean.Degrees:0.0}°)");
}

/// <summary>
/// The legs and flanges of a section as they move out of square when it is bent, and what that does to moment and neutral axis. Immutable
/// and thread-safe.
/// </summary>
public sealed class LegShape
{
    private const double MostTurn = 20 * Math.PI / 180;

    private LegShape(IReadOnlyList<LegTurn> turns, LoadedBend? bend)
    {
        Turns = turns;
        Bend = bend;
    }

    /// <summary>Whether a leg turns by more than 20° or finds no rest: it folds, and no size is given.</summary>
    public bool Folds => Bend is null;

    /// <summary>Each leg or flange; one of a pair that mirrors the other. Empty if it <see cref="Folds"/>.</summary>
    public IReadOnlyList<LegTurn> Turns { get; }

    /// <summary>
    /// The bend with moment, hold-down moment and neutral axis of the section that has moved; its ring after release and its blank length
    /// follow. Strains of points on the legs are those of legs that stay. Null if it <see cref="Folds"/>.
    /// </summary>
    public LoadedBend? Bend { get; }

    /// <summary>The legs in words.</summary>
    public override string ToString() => Folds ? "folds" : string.Join("; ", Turns);

    internal static LegShape? Of(LoadedBend loaded, double? clearance, bool flangesHeld, CancellationToken cancellation)
    {
        if (loaded.Analysis.Section.Features.Walls is not { IsTube: false } layout)
        {
            return null;
        }

        StripFrame frame = StripModel.Of(loaded, layout, flangesHeld);
        bool settled = frame.SettleFree(cancellation);
        if (settled && clearance is { } stop && frame.Strips.Any(strip => Math.Abs(Edge(frame, strip)) > stop))
        {
            settled = frame.SettleAgainstWall(stop, cancellation);
        }

        if (!settled || frame.Strips.Any(strip => Math.Abs(Edge(frame, strip)) > MostTurn * strip.Width))
        {
            return new([], null);
        }

        (double moment, double holdDown) = frame.Moments();
        LoadedBend bend = StripModel.Bent(loaded, frame.Curvature, frame.NeutralAxis, moment, layout.InPairs ? 0 : holdDown);
        AreaMoments section = loaded.Analysis.Moments;
        (double inPlane, double outOfPlane) = bend.State.Left(section, true, loaded.Analysis.Unloading);
        double[] released = frame.Released(section, frame.Curvature - inPlane, -outOfPlane);
        return new(
            [.. layout.Walls.Select((wall, i) => TurnOf(frame, wall, frame.Strips[i], released, layout.LeastShare, clearance))], bend);
    }

    private static double Edge(StripFrame frame, Strip strip) => frame.Deflection(strip, strip.Nodes - 1);

    private static LegTurn TurnOf(StripFrame frame, FlatWallStrip wall, Strip strip, double[] released, double share, double? clearance)
    {
        double b = strip.Width;
        double t = strip.Thickness;
        double ratio = b * b * frame.Curvature / t;
        bool isLeg = wall.End == WallEnd.Free;
        double? closed = isLeg && wall.Direction.Sin == 0
            ? (ratio * t / 4 + 9 * ratio * ratio * (frame.NeutralAxis - wall.Place.Y) / 8) / b
            : null;
        return new(
            wall.Name,
            b,
            Edge(frame, strip),
            frame.Slope(strip, isLeg ? strip.Nodes - 1 : 0),
            released[strip.Deflection(strip.Nodes - 1)],
            share,
            clearance,
            closed);
    }
}
