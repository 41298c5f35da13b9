using BendMath.Stock.Geometry;

namespace BendMath.Sections;

/// <summary>How one end of a flat wall is held by the rest of the section.</summary>
/// <param name="Moves">Whether it can move along the normal of the wall.</param>
/// <param name="Corner">Which corner turns with it: a number from 1 on shared by the walls that meet there, 0 if it turns freely, −1 if it
/// cannot turn.</param>
internal readonly record struct WallEnd(bool Moves, int Corner)
{
    /// <summary>By another wall that keeps its direction, or that cannot turn for symmetry.</summary>
    public static WallEnd Clamped { get; } = new(false, -1);

    /// <summary>By a wall that turns with it and meets no resistance.</summary>
    public static WallEnd Hinged { get; } = new(false, 0);

    /// <summary>The middle of a wall that is symmetric about the plane of the ring.</summary>
    public static WallEnd Middle { get; } = new(true, -1);

    /// <summary>A free edge.</summary>
    public static WallEnd Free { get; } = new(true, 0);

    /// <summary>A corner of a tube.</summary>
    public static WallEnd AtCorner(int corner) => new(false, corner);
}

/// <summary>
/// A flat wall, or half of a symmetric one: s runs over its middle from z₀, y₀ under the angle β to the axis of the ring.
/// </summary>
/// <param name="Name">What it is called beside the other walls of the section.</param>
/// <param name="Place">y₀ and z₀, in meters.</param>
/// <param name="Direction">sin β and cos β.</param>
/// <param name="Width">Its width, or half of it, in meters.</param>
/// <param name="Thickness">In meters.</param>
/// <param name="Start">How it is held at s = 0.</param>
/// <param name="End">How it is held at the end.</param>
internal sealed record FlatWallStrip(
    string Name,
    (double Y, double Z) Place,
    (double Sin, double Cos) Direction,
    double Width,
    double Thickness,
    WallEnd Start,
    WallEnd End);

/// <summary>The flat walls of a section that the stress along the ring can push out of place.</summary>
/// <param name="Walls">The walls; of a pair that is symmetric about the plane of the ring, one.</param>
/// <param name="InPairs">Whether each wall has its counterpart.</param>
/// <param name="IsWhole">Whether the walls are all of the section, with sharp corners.</param>
/// <param name="IsTube">Whether they enclose a bore.</param>
/// <param name="LeastShare">What incremental theory gives, at least, of the displacement by deformation theory.</param>
internal sealed record WallLayout(IReadOnlyList<FlatWallStrip> Walls, bool InPairs, bool IsWhole, bool IsTube, double LeastShare)
{
    /// <summary>Share for an angle with the flange out and for a tee.</summary>
    public const double OutwardShare = 0.7;

    /// <summary>Share for every other leg or flange.</summary>
    public const double OtherShare = 0.45;

    private const double TubeShare = 0.5;

    /// <summary>One leg or flange along the axis of the ring, or a pair of them.</summary>
    public static WallLayout AxialLeg(string name, double y, double z, double width, double thickness, bool inPairs, double share) =>
        new([Leg(name, y, z, width, thickness)], inPairs, false, false, share);

    /// <summary>A flange along the axis at either face.</summary>
    public static WallLayout AxialFlanges(double depth, double z, double width, double thickness) => new(
        [
            Leg("flange at the inside face", thickness / 2, z, width, thickness),
            Leg("flange at the outside face", depth - thickness / 2, z, width, thickness),
        ],
        false,
        false,
        false,
        OtherShare);

    /// <summary>Both legs of an angle that lies on its bisector.</summary>
    public static WallLayout SlantedLegs(double leg, double thickness, double depth, bool heelIn, bool isWhole)
    {
        double half = Math.Sqrt(0.5);
        double y = heelIn ? thickness * half : depth - thickness * half;
        FlatWallStrip legs = new(
            "legs", (y, 0), (heelIn ? half : -half, half), leg - thickness / 2, thickness, WallEnd.Clamped, WallEnd.Free);
        return new([legs], true, isWhole, false, OtherShare);
    }

    /// <summary>A web along the axis between two radial flanges.</summary>
    public static WallLayout AxialWeb(double y, double z, double width, double thickness) => new(
        [new("web", (y, z), (0, 1), width / 2, thickness, WallEnd.Hinged, WallEnd.Middle)], true, false, false, OtherShare);

    /// <summary>A square or rectangular tube, by the middles of its walls.</summary>
    public static WallLayout Box(double depth, double width, double thickness, bool isWhole)
    {
        double half = (width - thickness) / 2;
        double t = thickness;
        return new(
            [
                new("inside wall", (t / 2, width / 2), (0, 1), half, t, WallEnd.Middle, WallEnd.AtCorner(1)),
                new("side wall", (t / 2, width / 2 + half), (1, 0), depth - t, t, WallEnd.AtCorner(1), WallEnd.AtCorner(2)),
                new("outside wall", (depth - t / 2, width / 2), (0, 1), half, t, WallEnd.Middle, WallEnd.AtCorner(2)),
            ],
            true,
            isWhole,
            true,
            TubeShare);
    }

    private static FlatWallStrip Leg(string name, double y, double z, double width, double thickness) =>
        new(name, (y, z), (0, 1), width, thickness, WallEnd.Clamped, WallEnd.Free);
}
