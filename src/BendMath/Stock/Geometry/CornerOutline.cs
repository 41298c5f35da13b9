using BendMath.Numerics.Geometry;

namespace BendMath.Stock.Geometry;

/// <summary>A corner of a polygon in the section plane, rounded by a tangent arc where the radius is not zero. Meters.</summary>
internal readonly struct Corner(double y, double z, double radius = 0)
{
    public double Y { get; } = y;

    public double Z { get; } = z;

    public double Radius { get; } = radius;
}

/// <summary>
/// Outlines from polygons whose corners carry a radius each: exact lines and tangent arcs, whose neighbors share their end points to the
/// last bit. Corners run counter-clockwise (z to the right, y up) around material and clockwise around a hole. That the arcs of neighboring
/// corners leave room for each other is for the shape to check.
/// </summary>
internal static class CornerOutline
{
    /// <summary>A side that neighboring arcs use up but for rounding is left out.</summary>
    private const double NoSide = 1e-12;

    public static Edge[] Of(params Corner[] corners)
    {
        Rounding[] rounded = new Rounding[corners.Length];
        for (int i = 0; i < corners.Length; i++)
        {
            rounded[i] = new(corners[(i + corners.Length - 1) % corners.Length], corners[i], corners[(i + 1) % corners.Length]);
        }

        List<Edge> edges = new(2 * corners.Length);
        for (int i = 0; i < corners.Length; i++)
        {
            int next = (i + 1) % corners.Length;
            ref Rounding from = ref rounded[i];
            ref Rounding to = ref rounded[next];
            double side = Distance(corners[i].Y, corners[i].Z, corners[next].Y, corners[next].Z);
            from.HasSideAfter = side - from.Reach - to.Reach > NoSide * side;
            if (!from.HasSideAfter && to.Reach == 0)
            {
                from.ExitY = to.EntryY;
                from.ExitZ = to.EntryZ;
            }
            else if (!from.HasSideAfter)
            {
                to.EntryY = from.ExitY;
                to.EntryZ = from.ExitZ;
            }
        }

        for (int i = 0; i < corners.Length; i++)
        {
            Rounding corner = rounded[i];
            Rounding next = rounded[(i + 1) % corners.Length];
            if (corner.Reach > 0)
            {
                edges.Add(
                    Edge.Fillet(corner.EntryY, corner.EntryZ, corner.ExitY, corner.ExitZ, corner.CenterY, corner.CenterZ,
                        corner.TurnsLeft));
            }

            if (corner.HasSideAfter)
            {
                edges.Add(Edge.Line(corner.ExitY, corner.ExitZ, next.EntryY, next.EntryZ));
            }
        }

        return [.. edges];
    }

    /// <summary>A rectangle with its inside face at y = 0 and its edge at z = 0.</summary>
    public static Edge[] Rectangle(double depth, double width, double radius = 0) =>
        Of(new(0, 0, radius), new(0, width, radius), new(depth, width, radius), new(depth, 0, radius));

    /// <summary>The bore of a rectangular tube of given outside dimensions.</summary>
    public static Edge[] Bore(double depth, double width, double wall, double radius) =>
        Of(new(wall, wall, radius), new(depth - wall, wall, radius), new(depth - wall, width - wall, radius),
            new(wall, width - wall, radius));

    public static Edge[] Circle(double center, double radius, bool hole = false) =>
        [Edge.Arc(center, center, radius, 0, hole ? -2 * Math.PI : 2 * Math.PI)];

    /// <summary>Inside and outside exchanged: y → height − y.</summary>
    public static Corner[] Mirrored(Corner[] corners, double height) =>
        [.. Enumerable.Reverse(corners).Select(corner => new Corner(height - corner.Y, corner.Z, corner.Radius))];

    /// <summary>Bent the other way: y and z exchanged.</summary>
    public static Corner[] Transposed(Corner[] corners) =>
        [.. Enumerable.Reverse(corners).Select(corner => new Corner(corner.Z, corner.Y, corner.Radius))];

    /// <summary>Turned by 45° so that the bisector of y and z points outward, then moved.</summary>
    public static Corner[] OnBisector(Corner[] corners, double moveY, double moveZ)
    {
        double half = Math.Sqrt(0.5);
        return [
            .. corners.Select(
                corner => new Corner((corner.Y + corner.Z) * half + moveY, (corner.Z - corner.Y) * half + moveZ, corner.Radius))];
    }

    private static double Distance(double y1, double z1, double y2, double z2) => Math.Sqrt((y2 - y1) * (y2 - y1) + (z2 - z1) * (z2 - z1));

    /// <summary>
    /// The arc of one corner. With unit vectors a and b from the corner along both sides and θ between them: it touches the sides at r·(1 +
    /// cos θ)/sin θ from the corner, and its center is at (a + b)·r/sin θ. At a right angle along the axes all of it is free of rounding
    /// but for sums.
    /// </summary>
    private struct Rounding
    {
        public Rounding(Corner before, Corner corner, Corner after)
        {
            double lengthBefore = Distance(corner.Y, corner.Z, before.Y, before.Z);
            double lengthAfter = Distance(corner.Y, corner.Z, after.Y, after.Z);
            double ay = (before.Y - corner.Y) / lengthBefore;
            double az = (before.Z - corner.Z) / lengthBefore;
            double by = (after.Y - corner.Y) / lengthAfter;
            double bz = (after.Z - corner.Z) / lengthAfter;
            double turn = ay * bz - az * by;
            double sine = Math.Abs(turn);
            TurnsLeft = turn > 0;
            Reach = corner.Radius * (1 + ay * by + az * bz) / sine;
            EntryY = corner.Y + ay * Reach;
            EntryZ = corner.Z + az * Reach;
            ExitY = corner.Y + by * Reach;
            ExitZ = corner.Z + bz * Reach;
            CenterY = corner.Y + (ay + by) * corner.Radius / sine;
            CenterZ = corner.Z + (az + bz) * corner.Radius / sine;
            HasSideAfter = false;
        }

        public double Reach { get; }

        public double EntryY { get; set; }

        public double EntryZ { get; set; }

        public double ExitY { get; set; }

        public double ExitZ { get; set; }

        public double CenterY { get; }

        public double CenterZ { get; }

        public bool TurnsLeft { get; }

        public bool HasSideAfter { get; set; }
    }
}
