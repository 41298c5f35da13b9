namespace BendMath.Numerics;

/// <summary>
/// Gives the moments of what lies above or below any level of a section at the cost of the one band the level cuts: those of whole bands
/// are summed once. Each sum runs away from the level, so its terms have one sign and a thin tail is as accurate as a deep one. The polynomial part of
/// the cut band is closed form; its arcs take twelve Gauss points over their angle, which is exact to rounding for a trigonometric
/// polynomial of degree four.
/// </summary>
internal sealed class TailTable
{
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
        for (int i = bands.Length - 1; i > 0; i--)
        {
            _above[i - 1] = Extended(_above[i], bands[i], bands[i].Bottom, bands[i].Top, 1, full: true);
        }

        for (int i = 1; i < bands.Length; i++)
        {
            _below[i] = Extended(_below[i - 1], bands[i - 1], bands[i - 1].Top, bands[i - 1].Bottom, -1, full: true);
        }
    }

    public double Top => _bands[_bands.Length - 1].Top;

    public double Bottom => _bands[0].Bottom;

    /// <summary>The part above a level.</summary>
    /// <param name="level">Below the top.</param>
    /// <param name="full">Whether W2, Q0 and Q1 are wanted too.</param>
    public TailMoments Above(double level, bool full)
    {
        int i = _bands.Length - 1;
        while (i > 0 && level < _bands[i].Bottom)
        {
            i--;
        }

        double from = Math.Max(level, _bands[i].Bottom);
        TailMoments tail = Extended(_above[i], _bands[i], from, _bands[i].Top, 1, full);
        return from > level ? tail.SeenFrom(from - level) : tail;
    }

    /// <summary>The part below a level.</summary>
    /// <param name="level">Above the bottom.</param>
    /// <param name="full">Whether W2, Q0 and Q1 are wanted too.</param>
    public TailMoments Below(double level, bool full)
    {
        int i = 0;
        while (i < _bands.Length - 1 && level > _bands[i].Top)
        {
            i++;
        }

        double from = Math.Min(level, _bands[i].Top);
        TailMoments tail = Extended(_below[i], _bands[i], from, _bands[i].Bottom, -1, full);
        return from < level ? tail.SeenFrom(level - from) : tail;
    }

    /// <summary>The tail beyond the far end of a band, seen from a level in it, and the part of the band between.</summary>
    private TailMoments Extended(in TailMoments beyond, in Band band, double level, double far, int side, bool full)
    {
        double x = side * (far - level);
        double v = level - band.Bottom;
        double width = band.Width0 + v * band.Width1;
        double slope = side * band.Width1;
        TailMoments tail = default;
        tail.W0 = beyond.W0 + x * (width + x * slope / 2);
        tail.W1 = beyond.W1 + x * (beyond.W0 + x * (width / 2 + x * slope / 3));
        if (full)
        {
            double moment = band.Moment0 + v * (band.Moment1 + v * band.Moment2);
            double momentSlope = side * (band.Moment1 + 2 * v * band.Moment2);
            tail.W2 = beyond.W2 + x * (2 * beyond.W1 + x * (beyond.W0 + x * (width / 3 + x * slope / 4)));
            tail.Q0 = beyond.Q0 + x * (moment + x * (momentSlope / 2 + x * band.Moment2 / 3));
            tail.Q1 = beyond.Q1 + x * (beyond.Q0 + x * (moment / 2 + x * (momentSlope / 3 + x * band.Moment2 / 4)));
        }

        for (int i = band.FirstArc; i < band.EndArc; i++)
        {
            AddArc(_arcs[i], level, far, side, ref tail);
        }

        return tail;
    }

    private static void AddArc(in ArcTerm arc, double level, double far, int side, ref TailMoments tail)
    {
        double start = arc.AngleAt(level);
        double half = (arc.AngleAt(far) - start) / 2;
        GaussRule rule = GaussRule.Twelve;
        for (int i = 0; i < rule.Nodes.Length; i++)
        {
            double angle = start + half * (1 + rule.Nodes[i]);
            double cosine = arc.Radius * Math.Cos(angle);
            double x = side * (arc.CenterY + arc.Radius * Math.Sin(angle) - level);
            double weight = side * half * rule.Weights[i] * cosine * cosine;
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
