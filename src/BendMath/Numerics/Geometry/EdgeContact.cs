namespace BendMath.Numerics.Geometry;

/// <summary>A point where two neighboring edges of a loop meet by right, and the gap that was closed there.</summary>
internal readonly struct Joint(double y, double z, double gap)
{
    public double Y { get; } = y;

    public double Z { get; } = z;

    public double Gap { get; } = gap;
}

/// <summary>
/// Finds where two edges come closer than a tolerance. The nearest points of two lines or arcs are an end of one of them, a crossing of
/// their carriers, or the point where the carriers run parallel, so these candidates are all there are. Neighbors may meet at their joints.
/// </summary>
internal ref struct EdgeContact(in Edge first, in Edge second, ReadOnlySpan<Joint> joints, double tolerance)
{
    private readonly Edge _first = first;

    private readonly Edge _second = second;

    private readonly ReadOnlySpan<Joint> _joints = joints;

    public double Y { get; private set; }

    public double Z { get; private set; }

    public bool Find()
    {
        if (EndOn(_first.Y1, _first.Z1, _second) || EndOn(_first.Y2, _first.Z2, _second)
            || EndOn(_second.Y1, _second.Z1, _first) || EndOn(_second.Y2, _second.Z2, _first))
        {
            return true;
        }

        return (_first.IsArc, _second.IsArc) switch
        {
            (false, false) => LinesCross(),
            (true, true) => ArcsCross(),
            (false, true) => LineCrosses(_first, _second),
            _ => LineCrosses(_second, _first),
        };
    }

    private bool EndOn(double y, double z, in Edge other)
    {
        if (other.DistanceTo(y, z) > tolerance)
        {
            return false;
        }

        foreach (Joint joint in _joints)
        {
            if (Distance(y - joint.Y, z - joint.Z) <= tolerance)
            {
                return false;
            }
        }

        Y = y;
        Z = z;
        return true;
    }

    private bool LinesCross()
    {
        double ay = _first.Y2 - _first.Y1;
        double az = _first.Z2 - _first.Z1;
        double by = _second.Y2 - _second.Y1;
        double bz = _second.Z2 - _second.Z1;
        double cross = az * by - ay * bz;
        if (cross == 0)
        {
            return false;
        }

        double t = ((_second.Z1 - _first.Z1) * by - (_second.Y1 - _first.Y1) * bz) / cross;
        return Crossing(_first.Y1 + t * ay, _first.Z1 + t * az);
    }

    private bool LineCrosses(in Edge line, in Edge arc)
    {
        double dy = line.Y2 - line.Y1;
        double dz = line.Z2 - line.Z1;
        double length = Distance(dy, dz);
        dy /= length;
        dz /= length;
        double along = (arc.CenterY - line.Y1) * dy + (arc.CenterZ - line.Z1) * dz;
        double footY = line.Y1 + along * dy;
        double footZ = line.Z1 + along * dz;
        return Pair(footY, footZ, dy, dz, Distance(arc.CenterY - footY, arc.CenterZ - footZ), arc.Radius);
    }

    private bool ArcsCross()
    {
        double dy = _second.CenterY - _first.CenterY;
        double dz = _second.CenterZ - _first.CenterZ;
        double apart = Distance(dy, dz);
        double r1 = _first.Radius;
        double r2 = _second.Radius;
        if (apart <= tolerance)
        {
            return false;
        }

        // The common chord stands at u along the line of centers; circles apart from each other by more than the tolerance have none.
        if (apart > r1 + r2 + tolerance || apart < Math.Abs(r1 - r2) - tolerance)
        {
            return false;
        }

        dy /= apart;
        dz /= apart;
        double u = Math.Max(-r1, Math.Min(r1, (apart + (r1 - r2) * (r1 + r2) / apart) / 2));
        return Pair(_first.CenterY + u * dy, _first.CenterZ + u * dz, dz, -dy, Math.Abs(u), r1);
    }

    /// <summary>The two points at ± the half chord from its middle, or the middle where the chord just touches.</summary>
    private bool Pair(double middleY, double middleZ, double dy, double dz, double fromCenter, double radius)
    {
        if (fromCenter > radius + tolerance)
        {
            return false;
        }

        double half = Math.Sqrt(Math.Max(0, (radius - fromCenter) * (radius + fromCenter)));
        return Crossing(middleY + half * dy, middleZ + half * dz) || Crossing(middleY - half * dy, middleZ - half * dz)
            || (Math.Abs(radius - fromCenter) <= tolerance && Crossing(middleY, middleZ));
    }

    private bool Crossing(double y, double z)
    {
        if (_first.DistanceTo(y, z) > tolerance || _second.DistanceTo(y, z) > tolerance)
        {
            return false;
        }

        foreach (Joint joint in _joints)
        {
            if (IsJoint(joint, y, z))
            {
                return false;
            }
        }

        Y = y;
        Z = z;
        return true;
    }

    /// <summary>
    /// Where two edges run into each other smoothly, rounding moves their crossing along them. It is the joint itself when the edges do not
    /// part from each other on the way there by more than rounding and the gap that was closed.
    /// </summary>
    private readonly bool IsJoint(in Joint joint, double y, double z)
    {
        double apart = Distance(y - joint.Y, z - joint.Z);
        double noise = tolerance + 4 * joint.Gap;
        if (apart <= noise)
        {
            return true;
        }

        double middleY = (y + joint.Y) / 2;
        double middleZ = (z + joint.Z) / 2;
        (double y1, double z1) = _first.OnCarrier(middleY, middleZ);
        (double y2, double z2) = _second.OnCarrier(middleY, middleZ);
        return Distance(y1 - y2, z1 - z2) <= noise;
    }

    private static double Distance(double dy, double dz) => Math.Sqrt(dy * dy + dz * dz);
}
