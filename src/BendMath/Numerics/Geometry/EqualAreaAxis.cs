namespace BendMath.Numerics.Geometry;

/// <summary>
/// The level that halves the area, the plastic modulus ∫|y − y_p| dA about it, and the extents, along y or along z. All from sums over
/// the edges below a level: A = ∮z dy and S = ∮z·y dy, where a cut along the level itself adds nothing.
/// </summary>
internal readonly record struct EqualAreaAxis
{
    private const int Tries = 12;

    private const double Small = 1e-4;

    private EqualAreaAxis(double level, double modulus, double low, double high)
    {
        Level = level;
        Modulus = modulus;
        Low = low;
        High = high;
    }

    public double Level { get; }

    public double Modulus { get; }

    /// <summary>The lowest point of the section.</summary>
    public double Low { get; }

    /// <summary>The highest point of the section.</summary>
    public double High { get; }

    /// <param name="loops">Outer loop counter-clockwise, holes clockwise.</param>
    /// <param name="moments">Of the same loops.</param>
    /// <param name="axial">Whether the level counts along z rather than y.</param>
    public static EqualAreaAxis Of(Edge[][] loops, in AreaMoments moments, bool axial)
    {
        MonotonePiece[] pieces = MonotonePiece.Rent(loops, axial ? moments.CentroidY : moments.CentroidZ, axial, out int count);
        try
        {
            return Of(pieces, count, moments.Area, axial ? moments.CentroidZ : moments.CentroidY);
        }
        finally
        {
            MonotonePiece.Return(pieces);
        }
    }

    private static EqualAreaAxis Of(MonotonePiece[] pieces, int count, double area, double centroid)
    {
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (ref readonly MonotonePiece piece in pieces.AsSpan(0, count))
        {
            low = piece.Bottom < low ? piece.Bottom : low;
            high = piece.Top > high ? piece.Top : high;
        }

        (double level, double below) = Halving(pieces, count, area, low, high, centroid);
        return new(level, centroid * area - 2 * below, low, high);
    }

    /// <summary>The level and the first moment of the part below it, about y = 0.</summary>
    private static (double Level, double FirstMoment) Halving(MonotonePiece[] pieces, int count, double area, double low, double high,
        double start)
    {
        double x = start;
        double bottom = low;
        double top = high;
        for (int i = 0; i < Tries; i++)
        {
            LevelCut cut = new(pieces, count, x);
            double excess = cut.Area - area / 2;
            if (excess > 0)
            {
                top = x;
            }
            else
            {
                bottom = x;
            }

            // The area below grows by w·δ + w′·δ²/2: exactly where only straight edges cross, and to rounding where δ is a small part of
            // the way to the next end of an edge.
            double root = cut.Width * cut.Width - 2 * cut.WidthSlope * excess;
            double step = -2 * excess / (cut.Width + Math.Sqrt(Math.Max(0, root)));
            double next = x + step;
            double room = Math.Min(x - cut.BandBottom, cut.BandTop - x);
            bool exact = cut.IsStraight ? next >= cut.BandBottom && next <= cut.BandTop : Math.Abs(step) <= Small * room;
            if (exact && root >= 0)
            {
                return (next, cut.FirstMoment - x * excess + step * step * (cut.Width / 2 + cut.WidthSlope * step / 3));
            }

            x = next > bottom && next < top ? next : bottom + (top - bottom) / 2;
        }

        Below function = new(pieces, count, area / 2);
        double level = Newton.Root(ref function, bottom, top, x, rises: true, 1e-16 * area);
        LevelCut last = new(pieces, count, level);
        return (level, last.FirstMoment + (area / 2 - last.Area) * level);
    }

    private readonly struct Below(MonotonePiece[] pieces, int count, double half) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            LevelCut cut = new(pieces, count, x);
            return (cut.Area - half, cut.Width);
        }
    }
}
