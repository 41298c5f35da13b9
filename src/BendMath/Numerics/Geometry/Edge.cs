namespace BendMath.Numerics.Geometry;

/// <summary>
/// One edge of an outline in the plane (z to the right, y up): a straight line, or a circular arc
/// z = CenterZ + Radius·cos φ, y = CenterY + Radius·sin φ with φ running from StartAngle through Sweep (positive counter-clockwise).
/// A line has Radius 0. Lengths in meters, angles in radians.
/// </summary>
internal readonly record struct Edge
{
    private Edge(double y1, double z1, double y2, double z2, double centerY, double centerZ, double radius, double startAngle, double sweep)
    {
        Y1 = y1;
        Z1 = z1;
        Y2 = y2;
        Z2 = z2;
        CenterY = centerY;
        CenterZ = centerZ;
        Radius = radius;
        StartAngle = startAngle;
        Sweep = sweep;
    }

    public double Y1 { get; }

    public double Z1 { get; }

    public double Y2 { get; }

    public double Z2 { get; }

    public double CenterY { get; }

    public double CenterZ { get; }

    public double Radius { get; }

    public double StartAngle { get; }

    public double Sweep { get; }

    public bool IsArc => Radius > 0;

    public bool IsCircle => Math.Abs(Sweep) == 2 * Math.PI;

    public double Length => IsArc ? Radius * Math.Abs(Sweep) : Math.Sqrt((Y2 - Y1) * (Y2 - Y1) + (Z2 - Z1) * (Z2 - Z1));

    public static Edge Line(double y1, double z1, double y2, double z2) => new(y1, z1, y2, z2, 0, 0, 0, 0, 0);

    public static Edge Arc(double centerY, double centerZ, double radius, double startAngle, double sweep) => new(
        centerY + radius * Math.Sin(startAngle),
        centerZ + radius * Math.Cos(startAngle),
        centerY + radius * Math.Sin(startAngle + sweep),
        centerZ + radius * Math.Cos(startAngle + sweep),
        centerY,
        centerZ,
        radius,
        startAngle,
        sweep);

    /// <summary>
    /// An arc of less than a full circle whose end points are given exactly, so that neighboring edges share them to the last bit.
    /// Quarter circles between the directions of the axes take their angles exactly, without a trigonometric function.
    /// </summary>
    public static Edge Fillet(double y1, double z1, double y2, double z2, double centerY, double centerZ, bool counterClockwise)
    {
        double v1 = y1 - centerY;
        double u1 = z1 - centerZ;
        double v2 = y2 - centerY;
        double u2 = z2 - centerZ;
        double radius = Math.Sqrt(v1 * v1 + u1 * u1);
        if ((u1 == 0 && v2 == 0) || (v1 == 0 && u2 == 0))
        {
            double quarter = u1 == 0 ? (v1 > 0 ? Math.PI / 2 : -Math.PI / 2) : u1 > 0 ? 0 : Math.PI;
            if (u1 * v2 - v1 * u2 > 0 == counterClockwise)
            {
                return new(y1, z1, y2, z2, centerY, centerZ, radius, quarter, counterClockwise ? Math.PI / 2 : -Math.PI / 2);
            }
        }

        double start = Math.Atan2(v1, u1);
        double sweep = Math.Atan2(v2, u2) - start;
        if (counterClockwise && sweep < 0)
        {
            sweep += 2 * Math.PI;
        }
        else if (!counterClockwise && sweep > 0)
        {
            sweep -= 2 * Math.PI;
        }

        return new(y1, z1, y2, z2, centerY, centerZ, radius, start, sweep);
    }

    /// <summary>The point at a share of the length, from the start of the edge.</summary>
    public (double Y, double Z) PointAt(double share)
    {
        double angle = StartAngle + share * Sweep;
        return IsArc ? (CenterY + Radius * Math.Sin(angle), CenterZ + Radius * Math.Cos(angle))
            : (Y1 + share * (Y2 - Y1), Z1 + share * (Z2 - Z1));
    }

    /// <summary>Whether the arc has a point in the direction φ from its center, give or take the slack.</summary>
    public bool Faces(double angle, double slack = 0)
    {
        double from = (Sweep > 0 ? StartAngle : StartAngle + Sweep) - slack;
        double turns = Math.Ceiling((from - angle) / (2 * Math.PI));
        return angle + turns * 2 * Math.PI <= from + Math.Abs(Sweep) + 2 * slack;
    }

    /// <summary>Distance of a point from the edge, its ends included.</summary>
    public double DistanceTo(double y, double z)
    {
        if (IsArc)
        {
            double v = y - CenterY;
            double u = z - CenterZ;
            return Faces(Math.Atan2(v, u))
                ? Math.Abs(Math.Sqrt(v * v + u * u) - Radius)
                : Math.Sqrt(Math.Min(Square(y - Y1, z - Z1), Square(y - Y2, z - Z2)));
        }

        double dy = Y2 - Y1;
        double dz = Z2 - Z1;
        double along = Math.Max(0, Math.Min(1, ((y - Y1) * dy + (z - Z1) * dz) / Square(dy, dz)));
        return Math.Sqrt(Square(y - Y1 - along * dy, z - Z1 - along * dz));
    }

    /// <summary>The nearest point of the circle of an arc; of a line, the point itself, which is taken to lie on it.</summary>
    public (double Y, double Z) OnCarrier(double y, double z)
    {
        double share = IsArc ? Radius / Math.Sqrt(Square(y - CenterY, z - CenterZ)) : 1;
        return IsArc ? (CenterY + share * (y - CenterY), CenterZ + share * (z - CenterZ)) : (y, z);
    }

    /// <summary>Lowest and highest y and z.</summary>
    public (double LowY, double HighY, double LowZ, double HighZ) Bounds() =>
    (
        IsArc && Faces(-Math.PI / 2) ? CenterY - Radius : Math.Min(Y1, Y2),
        IsArc && Faces(Math.PI / 2) ? CenterY + Radius : Math.Max(Y1, Y2),
        IsArc && Faces(Math.PI) ? CenterZ - Radius : Math.Min(Z1, Z2),
        IsArc && Faces(0) ? CenterZ + Radius : Math.Max(Z1, Z2)
    );

    /// <summary>Lowest and highest y and z of a loop.</summary>
    public static (double LowY, double HighY, double LowZ, double HighZ) Bounds(Edge[] loop)
    {
        (double lowY, double highY, double lowZ, double highZ) = loop[0].Bounds();
        foreach (Edge edge in loop)
        {
            (double fromY, double toY, double fromZ, double toZ) = edge.Bounds();
            lowY = Math.Min(lowY, fromY);
            highY = Math.Max(highY, toY);
            lowZ = Math.Min(lowZ, fromZ);
            highZ = Math.Max(highZ, toZ);
        }

        return (lowY, highY, lowZ, highZ);
    }

    /// <summary>The angle through which the edge is seen from a point off it, positive counter-clockwise.</summary>
    public double AngleSeenFrom(double y, double z)
    {
        double y1 = Y1 - y;
        double z1 = Z1 - z;
        double y2 = Y2 - y;
        double z2 = Z2 - z;
        double seen = Math.Atan2(z1 * y2 - y1 * z2, z1 * z2 + y1 * y2);
        if (!IsArc || Square(y - CenterY, z - CenterZ) >= Radius * Radius)
        {
            return seen;
        }

        // From inside the circle the arc is seen as its chord is, unless the point lies between the two.
        bool between = IsCircle || (z2 - z1) * y1 - (y2 - y1) * z1 > 0 == Sweep > 0;
        return between ? (IsCircle ? 0 : seen) + (Sweep > 0 ? 2 : -2) * Math.PI : seen;
    }

    /// <summary>The edge between end points that differ from its own by no more than closeness.</summary>
    public Edge Between(double y1, double z1, double y2, double z2) => new(y1, z1, y2, z2, CenterY, CenterZ, Radius, StartAngle, Sweep);

    /// <summary>The edge with all else of an arc taken from its ends and center, and a full circle begun on the right.</summary>
    public Edge FromEnds()
    {
        if (IsCircle)
        {
            return Arc(CenterY, CenterZ, Radius, 0, Sweep).Between(CenterY, CenterZ + Radius, CenterY, CenterZ + Radius);
        }

        if (!IsArc)
        {
            return this;
        }

        Edge edge = Fillet(Y1, Z1, Y2, Z2, CenterY, CenterZ, Sweep > 0);
        return Math.Abs(edge.Sweep - Sweep) < 0.1 ? edge : this;
    }

    /// <summary>The edge run backwards.</summary>
    public Edge Reversed() => new(Y2, Z2, Y1, Z1, CenterY, CenterZ, Radius, IsArc ? StartAngle + Sweep : 0, IsArc ? -Sweep : 0);

    public Edge Moved(double dy, double dz) => new(
        Y1 + dy, Z1 + dz, Y2 + dy, Z2 + dz, IsArc ? CenterY + dy : 0, IsArc ? CenterZ + dz : 0, Radius, StartAngle, Sweep);

    /// <summary>The edge seen in the mirror y → height − y, run backwards so that a loop keeps its sense of rotation.</summary>
    public Edge MirroredInY(double height) => new(
        height - Y2, Z2, height - Y1, Z1, IsArc ? height - CenterY : 0, CenterZ, Radius, IsArc ? -(StartAngle + Sweep) : 0, Sweep);

    /// <summary>The edge seen in the mirror z → width − z, run backwards so that a loop keeps its sense of rotation.</summary>
    public Edge MirroredInZ(double width) => MirroredInY(0).TurnedByQuarters(2).Moved(0, width);

    /// <summary>The edge turned counter-clockwise: y′ = y·cos α + z·sin α, z′ = z·cos α − y·sin α.</summary>
    public Edge Turned(double angle) => Turned(angle, Math.Sin(angle), Math.Cos(angle));

    /// <summary>The edge turned by a multiple of a right angle, without rounding the points.</summary>
    public Edge TurnedByQuarters(int quarters) => (quarters & 3) switch
    {
        1 => Turned(Math.PI / 2, 1, 0),
        2 => Turned(Math.PI, 0, -1),
        3 => Turned(-Math.PI / 2, -1, 0),
        _ => this,
    };

    private Edge Turned(double angle, double s, double c) => new(
        Y1 * c + Z1 * s, Z1 * c - Y1 * s, Y2 * c + Z2 * s, Z2 * c - Y2 * s, CenterY * c + CenterZ * s, CenterZ * c - CenterY * s, Radius,
            IsArc ? StartAngle + angle : 0, Sweep);

    private static double Square(double dy, double dz) => dy * dy + dz * dz;
}
