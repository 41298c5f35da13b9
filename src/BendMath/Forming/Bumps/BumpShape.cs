using BendMath.Numerics;
using BendMath.Sections.Outlines;

namespace BendMath.Forming.Bumps;

/// <summary>
/// The plane curve of a bumped bar: κ_p is the turn per unit of unbent length, and the centroid line is stretched by the strain that stays.
/// </summary>
internal sealed class BumpShape(MomentEnvelope bar, double centroid, double height)
{
    /// <summary>Turn of one step of integration; Simpson's rule on its sine and cosine is then good to 1e-12 of the step.</summary>
    private const double TurnOfStep = 0.02;

    private const double FullTurn = 2 * Math.PI;

    /// <summary>
    /// Deviation from an even curve: y'' = κ_p − mean, y equal at both ends; from the lowest to the highest. Between bumps y' falls and
    /// rises once, and pieces are cut finely enough for the trapezoidal rule on y' to be good to 0.1 %.
    /// </summary>
    public static double FacetRise(MomentEnvelope bar, double from, double to)
    {
        const int Steps = 256;
        double step = (to - from) / Steps;
        double mean = bar.Turn(from, to) / (to - from);
        Span<double> y = stackalloc double[Steps + 1];
        double slope = 0;
        for (int i = 0; i < Steps; i++)
        {
            double next = slope + bar.Turn(from + i * step, from + (i + 1) * step) - mean * step;
            y[i + 1] = y[i] + step * (slope + next) / 2;
            slope = next;
        }

        double low = 0;
        double high = 0;
        for (int i = 0; i <= Steps; i++)
        {
            double level = y[i] - y[Steps] * i / Steps;
            low = Math.Min(low, level);
            high = Math.Max(high, level);
        }

        return high - low;
    }

    /// <summary>Where the curvature first reaches half its mean from either end.</summary>
    public (double Leading, double Trailing) Tails(double mean, double first, double last)
    {
        if (mean == 0)
        {
            return (0, bar.Length);
        }

        return (Rise(0, first), Rise(bar.Length, last));

        // κ_p rises from the end of the bar to the outermost bump.
        double Rise(double outside, double inside)
        {
            double Off(double place) => bar.Permanent(place) / mean - 0.5;
            return Off(inside) > 0 ? Bracketed.Root(Off, outside, inside) : inside;
        }
    }

    public RingTrim Trim(double from, double most, double mean)
    {
        double turn = bar.Turn(from, most);
        double end = turn > FullTurn ? WhereTurned(from, most, FullTurn) : most;
        double turned = Math.Min(turn, FullTurn);
        OutlinePoint gap = Chord(from, end);
        return new(from, end, turned, Math.Sqrt(gap.Right * gap.Right + gap.Up * gap.Up), most - end,
            turn >= FullTurn ? 0 : mean > 0 ? (FullTurn - turn) / mean : null);
    }

    public OutlinePoint[] Points(RadiusReference line, int count)
    {
        double level = line switch
        {
            RadiusReference.InsideFace => 0,
            RadiusReference.Centroid => centroid,
            _ => height,
        };
        double outward = level - centroid;
        OutlinePoint[] points = new OutlinePoint[count];
        Walker walker = new(bar);
        for (int i = 0; i < count; i++)
        {
            walker.To(i == count - 1 ? bar.Length : bar.Length * i / (count - 1));
            points[i] = new(walker.X + outward * Math.Sin(walker.Direction), walker.Y - outward * Math.Cos(walker.Direction) + outward);
        }

        return points;
    }

    private OutlinePoint Chord(double from, double to)
    {
        Walker walker = new(bar, from);
        walker.To(to);
        return new(walker.X, walker.Y);
    }

    private double WhereTurned(double from, double most, double turn) =>
        Bracketed.Root(place => bar.Turn(from, place) / turn - 1, from, most);

    private struct Walker(MomentEnvelope bar, double start = 0)
    {
        private double _at = start;

        public double X;

        public double Y;

        public double Direction;

        public void To(double s)
        {
            double total = bar.Turn(_at, s);
            int steps = 1 + (int)(total / TurnOfStep) + (int)((s - _at) / bar.Length * 200);
            double from = _at;
            for (int i = 1; i <= steps; i++)
            {
                double end = i == steps ? s : from + (s - from) * i / steps;
                Step(end);
            }
        }

        private void Step(double end)
        {
            double middle = (_at + end) / 2;
            double half = Direction + bar.Turn(_at, middle);
            double last = half + bar.Turn(middle, end);
            double e0 = Along(_at);
            double e1 = Along(middle);
            double e2 = Along(end);
            double sixth = (end - _at) / 6;
            X += sixth * (e0 * Math.Cos(Direction) + 4 * e1 * Math.Cos(half) + e2 * Math.Cos(last));
            Y += sixth * (e0 * Math.Sin(Direction) + 4 * e1 * Math.Sin(half) + e2 * Math.Sin(last));
            Direction = last;
            _at = end;
        }

        private readonly double Along(double s) => 1 + bar.Curve.Stretch(bar.At(s));
    }
}
