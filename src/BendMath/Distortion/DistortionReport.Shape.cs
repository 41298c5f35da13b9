using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion;

public sealed partial class DistortionReport
{
    /// <summary>
    /// How far legs and flanges along the axis of the ring, or at 45° to it, move out of square; null where the section has none, or is an
    /// outline from a drawing.
    /// </summary>
    /// <param name="clearance">How far a leg can move before it touches a wall, slot or shoe that backs it on the side to which it moves,
    /// zero or more; null when nothing backs it.</param>
    /// <param name="flangesHeld">Whether the flanges beside a web that lies along the axis are kept from leaning, as in a slot.</param>
    /// <param name="cancellationToken">To stop the search.</param>
    /// <exception cref="ArgumentOutOfRangeException">The clearance is negative or not finite.</exception>
    /// <exception cref="InvalidOperationException">The bar is not held flat, or is pulled.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public LegShape? ShapeOfLegs(Length? clearance = null, bool flangesHeld = false, CancellationToken cancellationToken = default) =>
        LegShape.Of(Plain(), ClearanceOf(clearance, nameof(clearance)), flangesHeld, cancellationToken);

    /// <summary>How far a round tube flattens; null for every other bar.</summary>
    /// <param name="grooveClearance">How far the lips of a grooved die or shoe, which reaches to the middle of the tube, stand off it on
    /// either side, zero or more; null for a tube without a groove. One percent of the diameter is usual.</param>
    /// <param name="cancellationToken">To stop the search.</param>
    /// <exception cref="ArgumentOutOfRangeException">The clearance is negative or not finite.</exception>
    /// <exception cref="InvalidOperationException">The bar is not held flat, or is pulled.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public TubeShape? ShapeOfTube(Length? grooveClearance = null, CancellationToken cancellationToken = default) =>
        TubeShape.Of(Plain(), ClearanceOf(grooveClearance, nameof(grooveClearance)), cancellationToken);

    /// <summary>How far the walls of a square or rectangular tube sink; null for every other bar.</summary>
    /// <param name="sidesHeld">Whether the side walls are kept from turning, as in a close groove or a rigid guide.</param>
    /// <param name="cancellationToken">To stop the search.</param>
    /// <exception cref="InvalidOperationException">The bar is not held flat, or is pulled.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public WallShape? ShapeOfWalls(bool sidesHeld = false, CancellationToken cancellationToken = default) =>
        WallShape.Of(Plain(), sidesHeld, cancellationToken);

    /// <summary>
    /// When a flat bent the hard way begins to wave sideways; null for every other bar, and for one not deeper than one and a half times
    /// its thickness.
    /// </summary>
    /// <param name="supportDistance">Length of bar between two places that hold it sideways and against twist, greater than zero; null when
    /// nobody says.</param>
    /// <param name="cancellationToken">To stop the search.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not positive and finite.</exception>
    /// <exception cref="InvalidOperationException">The bar is not held flat, or is pulled.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public HardWayRipple? RippleOfFlat(Length? supportDistance = null, CancellationToken cancellationToken = default) =>
        HardWayRipple.Of(
            Plain(), supportDistance is { } value ? Guard.Positive(value, nameof(supportDistance)) : null, cancellationToken);

    private static double? ClearanceOf(Length? clearance, string name) => clearance is { } value ? Guard.NonNegative(value, name) : null;

    private LoadedBend Plain() => Loaded.IsHeldFlat && !Loaded.IsPulled
        ? Loaded
        : throw new InvalidOperationException(
            $"The shape of a section is computed for a bar that is held flat and not pulled, not for this one: {Loaded}.");
}
