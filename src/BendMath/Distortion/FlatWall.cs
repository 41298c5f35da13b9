namespace BendMath.Distortion;

/// <summary>
/// The walls of a square or rectangular tube that lie along the axis of the ring, between the middles of the walls beside them.
/// </summary>
internal readonly record struct FlatWall(double Width, double Thickness)
{
    /// <summary>Null where the bar is no such tube.</summary>
    public static FlatWall? Of(OrientedSection section) => section.Features is { HasFlatWalls: true, WallThickness: { } wall }
        ? new FlatWall(section.Properties.Width.Meters - wall.Meters, wall.Meters)
        : null;
}
