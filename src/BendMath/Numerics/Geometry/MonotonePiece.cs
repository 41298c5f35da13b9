using System.Buffers;

namespace BendMath.Numerics.Geometry;

/// <summary>
/// A part of an edge along which y is monotone, from Bottom to Top. Sign is +1 where a counter-clockwise loop climbs. A straight piece is
/// z = Z + Slope·(y − Bottom); a piece of an arc is z = Z + Side·s with s = √(r² − (y − CenterY)²). Z is taken from a given origin.
/// </summary>
internal readonly struct MonotonePiece
{
    private const double Shallow = 0.5;

    private MonotonePiece(double bottom, double top, int sign, double z, double slope)
    {
        double d = top - bottom;
        Bottom = bottom;
        Top = top;
        Sign = sign;
        Z = z;
        Slope = slope;
        Area = sign * d * (z + d * slope / 2);
        FirstMoment = bottom * Area + sign * d * d * (z / 2 + d * slope / 3);
    }

    private MonotonePiece(double bottom, double top, int sign, double z, double centerY, double radius, int side, double bottomAngle,
        double bottomHalf, double topHalf, double turn)
    {
        Bottom = bottom;
        Top = top;
        Sign = sign;
        Z = z;
        CenterY = centerY;
        Radius = radius;
        Side = side;
        BottomAngle = bottomAngle;
        BottomHalf = bottomHalf;
        (Area, FirstMoment) = ArcSums(top, topHalf, turn);
    }

    public double Bottom { get; }

    public double Top { get; }

    public int Sign { get; }

    public double Z { get; }

    public double Slope { get; }

    public double CenterY { get; }

    public double Radius { get; }

    public int Side { get; }

    /// <summary>Sign·∫z dy over the piece.</summary>
    public double Area { get; }

    /// <summary>Sign·∫z·y dy over the piece.</summary>
    public double FirstMoment { get; }

    /// <summary>The angle φ of the lower end of an arc, y = CenterY + r·sin φ.</summary>
    private double BottomAngle { get; }

    /// <summary>
    /// Half chord s = r·cos φ at the lower end of an arc. Near the top of a circle a root of (r − u)(r + u) would turn one rounding of u
    /// into 1e-8 of s.
    /// </summary>
    private double BottomHalf { get; }

    /// <summary>Half chord of an arc at a level.</summary>
    public double HalfChord(double level)
    {
        double u = level - CenterY;
        return Math.Sqrt(Math.Max(0, (Radius - u) * (Radius + u)));
    }

    /// <summary>z at a level, from the given origin.</summary>
    public double PlaceAt(double level) => Radius == 0 ? Z + Slope * (level - Bottom) : Z + Side * HalfChord(level);

    /// <summary>Both sums from the lower end of an arc up to a level inside it, where the half chord is s.</summary>
    public (double Area, double FirstMoment) ArcBelow(double level, double s) =>
        ArcSums(level, s, Math.Atan2(level - CenterY, s) - BottomAngle);

    /// <summary>
    /// The trapezoid below the chord of the part, and the circular segment between chord and arc: A = r²(ω − sin ω)/2 and, with the chord
    /// c, its rise d and its run e, ∫y dA = y_c·A − c²e/12. Sums of r²·φ alone would lose the digits by which the square of the radius
    /// exceeds the area.
    /// </summary>
    private (double Area, double FirstMoment) ArcSums(double level, double s, double turn)
    {
        double d = level - Bottom;
        double e = s - BottomHalf;
        double z1 = Z + Side * BottomHalf;
        double z2 = Z + Side * s;
        double segment = turn < Shallow
            ? Radius * Radius * ExcessOverSine(turn) / 2
            : (Radius * Radius * turn - ((level - CenterY) * BottomHalf - (Bottom - CenterY) * s)) / 2;
        double moment = CenterY * segment - (d * d + e * e) * e / 12;
        return (
            Sign * (d * (z1 + z2) / 2 + Side * segment),
            Sign * (d * (Bottom * (2 * z1 + z2) + level * (z1 + 2 * z2)) / 6 + Side * moment));
    }

    /// <summary>ω − sin ω for small ω.</summary>
    private static double ExcessOverSine(double turn)
    {
        double square = turn * turn;
        return turn * square / 6 * (1 - square / 20 * (1 - square / 42 * (1 - square / 72 * (1 - square / 110 * (1 - square / 156)))));
    }

    /// <summary>
    /// Cuts all edges into monotone pieces, in a pooled array that the caller returns. Along z the axes change places, which turns every
    /// loop the other way round.
    /// </summary>
    /// <param name="loops">Outer loop counter-clockwise, holes clockwise.</param>
    /// <param name="origin">Where the other coordinate starts to count.</param>
    /// <param name="axial">Whether the pieces are monotone in z rather than y.</param>
    /// <param name="count">Number of pieces.</param>
    public static MonotonePiece[] Rent(Edge[][] loops, double origin, bool axial, out int count)
    {
        int most = 0;
        foreach (Edge[] loop in loops)
        {
            foreach (ref readonly Edge edge in loop.AsSpan())
            {
                most += edge.IsArc ? 3 : 1;
            }
        }

        MonotonePiece[] pieces = ArrayPool<MonotonePiece>.Shared.Rent(most);
        count = 0;
        foreach (Edge[] loop in loops)
        {
            foreach (ref readonly Edge edge in loop.AsSpan())
            {
                if (edge.IsArc)
                {
                    AddArc(edge, origin, axial, pieces, ref count);
                }
                else if (axial ? edge.Z1 != edge.Z2 : edge.Y1 != edge.Y2)
                {
                    pieces[count++] = axial
                        ? Line(edge.Z2, edge.Y2 - origin, edge.Z1, edge.Y1 - origin)
                        : Line(edge.Y1, edge.Z1 - origin, edge.Y2, edge.Z2 - origin);
                }
            }
        }

        return pieces;
    }

    public static void Return(MonotonePiece[] pieces) => ArrayPool<MonotonePiece>.Shared.Return(pieces);

    private static MonotonePiece Line(double y1, double z1, double y2, double z2)
    {
        double slope = z1 == z2 ? 0 : (z2 - z1) / (y2 - y1);
        return y2 > y1 ? new(y1, y2, 1, z1, slope) : new(y2, y1, -1, z2, slope);
    }

    /// <summary>Cuts an arc at its highest and lowest points, φ = π/2 + kπ along y and φ = kπ along z.</summary>
    private static void AddArc(in Edge edge, double origin, bool axial, MonotonePiece[] pieces, ref int count)
    {
        const double Slack = 1e-12;
        double phase = axial ? 0 : 0.5;
        double low = edge.Sweep > 0 ? edge.StartAngle : edge.StartAngle + edge.Sweep;
        double high = edge.Sweep > 0 ? edge.StartAngle + edge.Sweep : edge.StartAngle;
        double center = axial ? edge.CenterZ : edge.CenterY;
        double offset = (axial ? edge.CenterY : edge.CenterZ) - origin;
        double start = axial ? edge.Z1 : edge.Y1;
        double end = axial ? edge.Z2 : edge.Y2;
        double startHalf = Math.Abs(axial ? edge.Y1 - edge.CenterY : edge.Z1 - edge.CenterZ);
        double endHalf = Math.Abs(axial ? edge.Y2 - edge.CenterY : edge.Z2 - edge.CenterZ);
        double from = low;
        (double yFrom, double halfFrom) = edge.Sweep > 0 ? (start, startHalf) : (end, endHalf);
        (double yEnd, double halfEnd) = edge.Sweep > 0 ? (end, endHalf) : (start, startHalf);
        int k = (int)Math.Floor(low / Math.PI - phase) + 1;
        while (true)
        {
            double cut = (k + phase) * Math.PI;
            bool last = cut >= high - Slack;
            double to = last ? high : cut;
            (double yTo, double halfTo) = last ? (yEnd, halfEnd) : (center + (k % 2 == 0 ? edge.Radius : -edge.Radius), 0);
            if (to - from > Slack)
            {
                // Between cuts k − 1 and k a counter-clockwise arc climbs along y for even k; along z, which it then falls, it lies above
                // its center for odd k.
                bool even = k % 2 == 0;
                int side = axial == even ? -1 : 1;
                int sign = (edge.Sweep > 0) ? side : -side;
                double middle = (k + phase - 0.5) * Math.PI;
                pieces[count++] = even
                    ? new(yFrom, yTo, sign, offset, center, edge.Radius, side, from - middle, halfFrom, halfTo, to - from)
                    : new(yTo, yFrom, sign, offset, center, edge.Radius, side, middle - to, halfTo, halfFrom, to - from);
            }

            if (last)
            {
                return;
            }

            from = to;
            yFrom = yTo;
            halfFrom = halfTo;
            k++;
        }
    }
}
