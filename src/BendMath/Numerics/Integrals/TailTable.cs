using System.Runtime.CompilerServices;
using BendMath.Numerics.Geometry;

namespace BendMath.Numerics.Integrals;

/// <summary>
/// Gives the moments of what lies above or below any level of a section at the cost of the one band the level cuts: those of whole bands
/// are summed once. Each sum runs away from the level, so its terms have one sign and a thin tail is as accurate as a deep one. The
/// polynomial part of the cut band is closed form; its arcs take twelve Gauss points over their angle, which is exact to rounding for a
/// trigonometric polynomial of degree four.
/// </summary>
internal sealed class TailTable
{
    private const double Third = 1.0 / 3;

    private readonly Band[] _bands;

    private readonly ArcTerm[] _arcs;

    /// <summary>Above the top of each band, seen from there.</summary>
    private readonly TailMoments[] _above;

    /// <summary>Below the bottom of each band, seen from there.</summary>
    private readonly TailMoments[] _below;

    public TailTable(Band[] bands, ArcTerm[] arcs)
    {
        _bands = bands;
        _arcs = arcs;
        _above = new TailMoments[bands.Length];
        _below = new TailMoments[bands.Length];
        Bottom = bands[0].Bottom;
        Top = bands[bands.Length - 1].Top;
        for (int i = bands.Length - 1; i > 0; i--)
        {
            _above[i - 1] = Extended(_above[i], bands[i], bands[i].Bottom, bands[i].Top, 1);
        }

        for (int i = 1; i < bands.Length; i++)
        {
            _below[i] = Extended(_below[i - 1], bands[i - 1], bands[i - 1].Top, bands[i - 1].Bottom, -1);
        }
    }

    public double Top { get; }

    public double Bottom { get; }

    /// <summary>The part above a level below the top.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TailMoments Above(double level)
    {
        int i = BandAbove(level);
        double from = Math.Max(level, _bands[i].Bottom);
        TailMoments tail = Extended(_above[i], _bands[i], from, _bands[i].Top, 1);
        return from > level ? tail.SeenFrom(from - level) : tail;
    }

    /// <summary>The part below a level above the bottom.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TailMoments Below(double level)
    {
        int i = BandBelow(level);
        double from = Math.Min(level, _bands[i].Top);
        TailMoments tail = Extended(_below[i], _bands[i], from, _bands[i].Bottom, -1);
        return from < level ? tail.SeenFrom(level - from) : tail;
    }

    /// <summary>Area of the part above a level below the top, and its first moment about the level.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double Area, double First) AreaAbove(double level)
    {
        int i = BandAbove(level);
        ref readonly Band band = ref _bands[i];
        if (level < band.Bottom || band.EndArc > band.FirstArc)
        {
            return AreaOf(Above(level));
        }

        return Extended(_above[i], band.Width0 + (level - band.Bottom) * band.Width1, band.Width1, band.Top - level);
    }

    /// <summary>Area of the part below a level above the bottom, and its first moment about the level, both positive.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (double Area, double First) AreaBelow(double level)
    {
        int i = BandBelow(level);
        ref readonly Band band = ref _bands[i];
        double x = level - band.Bottom;
        if (level > band.Top || band.EndArc > band.FirstArc)
        {
            return AreaOf(Below(level));
        }

        return Extended(_below[i], band.Width0 + x * band.Width1, -band.Width1, x);
    }

    /// <summary>W1, W2 and Q1 of the part above a level below the top.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Above(double level, out double first, out double second, out double mixed)
    {
        int i = BandAbove(level);
        ref readonly Band band = ref _bands[i];
        if (level < band.Bottom || band.EndArc > band.FirstArc)
        {
            Parts(Above(level), out first, out second, out mixed);
            return;
        }

        Extended(_above[i], band, level - band.Bottom, band.Top - level, 1, out first, out second, out mixed);
    }

    /// <summary>W1, W2 and Q1 of the part below a level above the bottom.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Below(double level, out double first, out double second, out double mixed)
    {
        int i = BandBelow(level);
        ref readonly Band band = ref _bands[i];
        if (level > band.Top || band.EndArc > band.FirstArc)
        {
            Parts(Below(level), out first, out second, out mixed);
            return;
        }

        Extended(_below[i], band, level - band.Bottom, level - band.Bottom, -1, out first, out second, out mixed);
    }

    private static void Parts(in TailMoments tail, out double first, out double second, out double mixed)
    {
        first = tail.W1;
        second = tail.W2;
        mixed = tail.Q1;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Extended(
        in TailMoments beyond, in Band band, double v, double x, double side, out double first, out double second, out double mixed)
    {
        double width = band.Width0 + v * band.Width1;
        double slope = side * band.Width1 * x;
        double moment = band.Moment0 + v * (band.Moment1 + v * band.Moment2);
        double momentSlope = side * (band.Moment1 + 2 * v * band.Moment2);
        first = beyond.W1 + x * (beyond.W0 + x * (width * 0.5 + slope * Third));
        second = beyond.W2 + x * (2 * beyond.W1 + x * (beyond.W0 + x * (width * Third + slope * 0.25)));
        mixed = beyond.Q1 + x * (beyond.Q0 + x * (moment * 0.5 + x * (momentSlope * Third + x * band.Moment2 * 0.25)));
    }

    private static (double Area, double First) AreaOf(in TailMoments tail) => (tail.W0, tail.W1);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (double Area, double First) Extended(in TailMoments beyond, double width, double slope, double x) => (
        beyond.W0 + x * (width + x * slope * 0.5),
        beyond.W1 + x * (beyond.W0 + x * (width * 0.5 + x * slope * Third)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int BandAbove(double level)
    {
        Band[] bands = _bands;
        int i = bands.Length - 1;
        while (i > 0 && level < bands[i].Bottom)
        {
            i--;
        }

        return i;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private int BandBelow(double level)
    {
        Band[] bands = _bands;
        int i = 0;
        while (i < bands.Length - 1 && level > bands[i].Top)
        {
            i++;
        }

        return i;
    }

    /// <summary>The tail beyond the far end of a band, seen from a level in it, and the part of the band between.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private TailMoments Extended(in TailMoments beyond, in Band band, double level, double far, int side)
    {
        double x = side * (far - level);
        double v = level - band.Bottom;
        double slope = side * band.Width1;
        double width = band.Width0 + v * band.Width1;
        double moment = band.Moment0 + v * (band.Moment1 + v * band.Moment2);
        double momentSlope = side * (band.Moment1 + 2 * v * band.Moment2);
        TailMoments tail = default;
        (tail.W0, tail.W1) = Extended(beyond, width, slope, x);
        tail.W2 = beyond.W2 + x * (2 * beyond.W1 + x * (beyond.W0 + x * (width * Third + x * slope * 0.25)));
        tail.Q0 = beyond.Q0 + x * (moment + x * (momentSlope * 0.5 + x * band.Moment2 * Third));
        tail.Q1 = beyond.Q1 + x * (beyond.Q0 + x * (moment * 0.5 + x * (momentSlope * Third + x * band.Moment2 * 0.25)));
        if (band.EndArc > band.FirstArc)
        {
            AddArcs(band, level, far, side, ref tail);
        }

        return tail;
    }

    private void AddArcs(in Band band, double level, double far, int side, ref TailMoments tail)
    {
        for (int i = band.FirstArc; i < band.EndArc; i++)
        {
            AddArc(_arcs[i], level, far, side, ref tail);
        }
    }

    private static void AddArc(in ArcTerm arc, double level, double far, int side, ref TailMoments tail)
    {
        double start = arc.AngleAt(level);
        double half = (arc.AngleAt(far) - start) / 2;
        GaussRule rule = GaussRule.Twelve;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double sine = Math.Sin(start + half * (1 + rule.Nodes[i]));
            double x = side * (arc.CenterY + arc.Radius * sine - level);
            double weight = side * half * rule.Weights[i] * arc.Radius * arc.Radius * (1 - sine) * (1 + sine);
            double w = weight * arc.WidthFactor;
            double q = weight * arc.MomentFactor;
            tail.W0 += w;
            tail.W1 += w * x;
            tail.W2 += w * x * x;
            tail.Q0 += q;
            tail.Q1 += q * x;
        }
    }
}
