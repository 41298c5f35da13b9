namespace BendMath.Numerics;

/// <summary>The greatest value of a smooth function near the best of a few samples.</summary>
internal static class Peak
{
    private const double Golden = 0.3819660112501051;

    private const int Steps = 24;

    /// <summary>
    /// Brent's search: through the best three places goes a parabola, its vertex is tried next, and a golden section where that does not
    /// help. A place good to a share s of the bracket leaves s² of the value, so it ends early.
    /// </summary>
    /// <param name="function">The function.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="middle">A place between the ends, better than both.</param>
    /// <param name="value">The value there.</param>
    /// <param name="high">Upper end.</param>
    public static (double Place, double Value) Within(Func<double, double> function, double low, double middle, double value, double high)
    {
        double enough = 2e-5 * (high - low);
        (double best, double second, double third) = (middle, middle, middle);
        (double atBest, double atSecond, double atThird) = (value, value, value);
        double step = 0, before = 0;
        for (int i = 0; i < Steps; i++)
        {
            double center = (low + high) / 2;
            if (Math.Abs(best - center) <= 2 * enough - (high - low) / 2)
            {
                break;
            }

            double r = (best - second) * (atThird - atBest);
            double q = (best - third) * (atSecond - atBest);
            double p = (best - third) * q - (best - second) * r;
            q = 2 * (q - r);
            if (q > 0)
            {
                p = -p;
            }

            q = Math.Abs(q);
            if (Math.Abs(before) > enough && Math.Abs(p) < Math.Abs(q * before / 2) && p > q * (low - best) && p < q * (high - best))
            {
                (before, step) = (step, p / q);
            }
            else
            {
                before = best < center ? high - best : low - best;
                step = Golden * before;
            }

            double place = best + (Math.Abs(step) >= enough ? step : step > 0 ? enough : -enough);
            double found = function(place);
            if (found >= atBest)
            {
                (low, high) = place >= best ? (best, high) : (low, best);
                (third, second, best) = (second, best, place);
                (atThird, atSecond, atBest) = (atSecond, atBest, found);
                continue;
            }

            (low, high) = place < best ? (place, high) : (low, place);
            if (found >= atSecond || second == best)
            {
                (third, second) = (second, place);
                (atThird, atSecond) = (atSecond, found);
            }
            else if (found >= atThird || third == best || third == second)
            {
                (third, atThird) = (place, found);
            }
        }

        return (best, atBest);
    }
}
