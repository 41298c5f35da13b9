namespace BendMath.Numerics.Geometry;

/// <summary>The part of a section below a level and the chord at it.</summary>
internal readonly struct LevelCut
{
    public LevelCut(MonotonePiece[] pieces, int count, double level)
    {
        double area = 0, first = 0, width = 0, slope = 0;
        double bandBottom = double.NegativeInfinity;
        double bandTop = double.PositiveInfinity;
        bool straight = true;
        foreach (ref readonly MonotonePiece piece in pieces.AsSpan(0, count))
        {
            if (piece.Bottom >= level)
            {
                bandTop = piece.Bottom < bandTop ? piece.Bottom : bandTop;
                continue;
            }

            if (piece.Top <= level)
            {
                bandBottom = piece.Top > bandBottom ? piece.Top : bandBottom;
                area += piece.Area;
                first += piece.FirstMoment;
                continue;
            }

            bandBottom = piece.Bottom > bandBottom ? piece.Bottom : bandBottom;
            bandTop = piece.Top < bandTop ? piece.Top : bandTop;
            if (piece.Radius == 0)
            {
                double d = level - piece.Bottom;
                double part = piece.Sign * d * (piece.Z + d * piece.Slope / 2);
                area += part;
                first += piece.Bottom * part + piece.Sign * d * d * (piece.Z / 2 + d * piece.Slope / 3);
                width += piece.Sign * (piece.Z + d * piece.Slope);
                slope += piece.Sign * piece.Slope;
            }
            else
            {
                double s = piece.HalfChord(level);
                (double part, double moment) = piece.ArcBelow(level, s);
                area += part;
                first += moment;
                width += piece.Sign * (piece.Z + piece.Side * s);

                // At the very top of an arc, where rounding leaves no half chord, the slope is infinite and no use for a step.
                slope -= s > 0 ? piece.Sign * piece.Side * (level - piece.CenterY) / s : 0;
                straight = false;
            }
        }

        Area = area;
        FirstMoment = first;
        Width = width;
        WidthSlope = slope;
        BandBottom = bandBottom;
        BandTop = bandTop;
        IsStraight = straight;
    }

    /// <summary>Area below the level.</summary>
    public double Area { get; }

    /// <summary>∫y dA below the level.</summary>
    public double FirstMoment { get; }

    /// <summary>Chord at the level.</summary>
    public double Width { get; }

    /// <summary>dw/dy at the level.</summary>
    public double WidthSlope { get; }

    /// <summary>The nearest end of an edge at or below the level.</summary>
    public double BandBottom { get; }

    /// <summary>The nearest end of an edge at or above the level.</summary>
    public double BandTop { get; }

    /// <summary>Whether no arc crosses the level.</summary>
    public bool IsStraight { get; }
}
