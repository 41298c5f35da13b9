namespace BendMath.Numerics;

/// <summary>
/// One edge of an outline in the plane (z to the right, y up): a straight line, or a circular arc
/// z = CenterZ + Radius·cos φ, y = CenterY + Radius·sin φ with φ running from StartAngle through Sweep (positive counter-clockwise).
/// A line has Radius 0. Lengths in metres, angles in radians.
/// </summary>
internal readonly struct Edge
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

    /// <summary>A quarter circle whose end points are given exactly, so that neighboring edges share them to the last bit.</summary>
    public static Edge Fillet(double y1, double z1, double y2, double z2, double centerY, double centerZ, bool counterClockwise)
    {
        double start = Math.Atan2(y1 - centerY, z1 - centerZ);
        double end = Math.Atan2(y2 - centerY, z2 - centerZ);
        double sweep = end - start;
        if (counterClockwise && sweep < 0)
        {
            sweep += 2 * Math.PI;
        }
        else if (!counterClockwise && sweep > 0)
        {
            sweep -= 2 * Math.PI;
        }

        double radius = Math.Sqrt((y1 - centerY) * (y1 - centerY) + (z1 - centerZ) * (z1 - centerZ));
        return new(y1, z1, y2, z2, centerY, centerZ, radius, start, sweep);
    }

    /// <summary>The edge seen in the mirror y → height − y, run backwards so that a loop keeps its sense of rotation.</summary>
    public Edge MirroredInY(double height) => new(
        height - Y2, Z2, height - Y1, Z1, IsArc ? height - CenterY : 0, CenterZ, Radius, IsArc ? -(StartAngle + Sweep) : 0, Sweep);

    /// <summary>The edge in axes turned by an angle: y′ = y·cos α + z·sin α, z′ = z·cos α − y·sin α.</summary>
    public Edge Turned(double angle)
    {
        double c = Math.Cos(angle);
        double s = Math.Sin(angle);
        return new(
            Y1 * c + Z1 * s, Z1 * c - Y1 * s, Y2 * c + Z2 * s, Z2 * c - Y2 * s, CenterY * c + CenterZ * s, CenterZ * c - CenterY * s, Radius, IsArc ? StartAngle + angle : 0, Sweep);
    }
}
