namespace BendMath.Forming;

/// <summary>
/// The least and greatest answer over a box of inputs. Every corner is tried; where the answer may turn over the first input, each corner of the others gets its best value of that one; then one input after the
/// other is moved over its range, from the best point so far, until nothing improves. An input to which the answer is monotone has its extremes at the corners already.
/// </summary>
internal sealed class RingExtremes
{
    private const int Intervals = 16;

    private const double Golden = 0.6180339887498949;

    private readonly RingResponse _response;

    private readonly List<(double[] At, RingReply Reply)> _tried = [];

    /// <summary>Diameter and length are searched along the same places. There are at most six inputs: yield, three dimensions, stroke, repeatability.</summary>
    private readonly Dictionary<(double, double, double, double, double, double), RingReply> _known = [];

    public RingExtremes(RingResponse response)
    {
        _response = response;
        Try(response.Nominal);
        for (int corner = 0; corner < 1 << response.Inputs.Length && Refusal is null; corner++)
        {
            Try([.. response.Inputs.Select((input, i) => (corner >> i & 1) == 0 ? input.Low : input.High)]);
        }
    }

    /// <summary>Why there is no range, or null.</summary>
    public string? Refusal { get; private set; }

    /// <summary>Whether there is none because the bar springs back straight somewhere.</summary>
    public bool IsStraight { get; private set; }

    public RingReply Nominal => _tried[0].Reply;

    /// <summary>Least and greatest value, or null when some input leaves no ring.</summary>
    public (double Low, double High)? Of(Func<RingReply, double> value)
    {
        double? high = Refusal is null ? Greatest(value) : null;
        double? low = Refusal is null ? -Greatest(reply => -value(reply)) : null;
        return Refusal is null ? (low!.Value, high!.Value) : null;
    }

    /// <summary>The range while one input moves and the others stay nominal.</summary>
    public (double Low, double High)? OfOne(int input, Func<RingReply, double> value)
    {
        double[] at = _response.Nominal;
        List<double> values = [value(Nominal)];
        ScatterInput moved = _response.Inputs[input];
        int steps = moved.IsMonotone ? 1 : Intervals;
        for (int i = 0; i <= steps && Refusal is null; i++)
        {
            at[input] = moved.Low + (moved.High - moved.Low) * i / steps;
            values.Add(value(Reply(at)));
        }

        return Refusal is null ? (values.Min(), values.Max()) : null;
    }

    private double Greatest(Func<RingReply, double> value)
    {
        (double[] at, double best) = Start(value);
        bool improved;
        do
        {
            improved = false;
            for (int input = 0; input < _response.Inputs.Length && Refusal is null; input++)
            {
                if (_response.Inputs[input].IsMonotone)
                {
                    continue;
                }

                (double place, double found) = Along(at, input, value, best);
                improved |= found > best + 1e-9 * Math.Abs(best);
                if (found > best)
                {
                    (at[input], best) = (place, found);
                }
            }
        }
        while (improved && Refusal is null);

        return best;
    }

    /// <summary>Two inputs may turn the answer together: which corner is best with the first input at an end says little of which is best in between.</summary>
    private (double[] At, double Value) Start(Func<RingReply, double> value)
    {
        (double[] at, RingReply reply) = _tried.OrderByDescending(one => value(one.Reply)).First();
        double[] start = [.. at];
        double best = value(reply);
        if (_response.Inputs.Length < 2 || _response.Inputs[0].IsMonotone)
        {
            return (start, best);
        }

        foreach ((double[] corner, RingReply _) in _tried.Where(one => one.At[0] == _response.Inputs[0].Low && HasMonotoneOf(one.At, at)).ToArray())
        {
            (double place, double found) = Along(corner, 0, value, double.NegativeInfinity);
            if (Refusal is null && found > best)
            {
                start = [.. corner];
                (start[0], best) = (place, found);
            }
        }

        return (start, best);
    }

    private bool HasMonotoneOf(double[] one, double[] other)
    {
        for (int i = 0; i < one.Length; i++)
        {
            if (_response.Inputs[i].IsMonotone && one[i] != other[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The best place along one input: the best of a scan, then a golden section between its neighbors.</summary>
    private (double Place, double Value) Along(double[] from, int input, Func<RingReply, double> value, double best)
    {
        double[] at = [.. from];
        ScatterInput moved = _response.Inputs[input];
        double step = (moved.High - moved.Low) / Intervals;
        double place = from[input];
        for (int i = 0; i <= Intervals && Refusal is null; i++)
        {
            Consider(moved.Low + i * step);
        }

        double low = Math.Max(moved.Low, place - step);
        double high = Math.Min(moved.High, place + step);
        if (Refusal is null && place > moved.Low && place < moved.High)
        {
            double a = high - Golden * (high - low), b = low + Golden * (high - low);
            double atA = Consider(a), atB = Consider(b);
            for (int i = 0; i < 20 && Refusal is null; i++)
            {
                if (atA >= atB)
                {
                    (high, b, atB) = (b, a, atA);
                    a = high - Golden * (high - low);
                    atA = Consider(a);
                }
                else
                {
                    (low, a, atA) = (a, b, atB);
                    b = low + Golden * (high - low);
                    atB = Consider(b);
                }
            }
        }

        return (place, best);

        double Consider(double candidate)
        {
            at[input] = candidate;
            RingReply reply = Reply(at);
            double found = Refusal is null ? value(reply) : best;
            if (found > best)
            {
                (place, best) = (candidate, found);
            }

            return found;
        }
    }

    private void Try(double[] at) => _tried.Add((at, Reply(at)));

    private RingReply Reply(double[] at)
    {
        var key = (At(0), At(1), At(2), At(3), At(4), At(5));
        if (_known.TryGetValue(key, out RingReply reply))
        {
            return reply;
        }

        reply = _response.At(at);
        _known.Add(key, reply);
        if (reply.Refusal is { } refusal)
        {
            string where = at.Length == 0 ? string.Empty : "at " + string.Join(" and ", at.Select((value, i) => _response.Text(i, value))) + " ";
            IsStraight = reply.IsStraight;
            Refusal = $"no range: {where}{refusal}";
        }

        return reply;

        double At(int input) => input < at.Length ? at[input] : 0;
    }
}
