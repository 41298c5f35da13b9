using BendMath.Numerics;

namespace BendMath.Forming.Variation;

/// <summary>
/// The least and greatest answer over a box of inputs. Every corner is tried. An input to which the answer is monotone stays at the end
/// where the best corner has it. Where the answer may turn over the yield, it is sampled along the yield for each bar; bars are tried at
/// the ends and at one or three places between them of each dimension. Wherever the best sample has no better neighbor between its own, a
/// parabola through the three says whether the answer turns there, and it is searched.
/// </summary>
internal sealed class RingExtremes
{
    /// <summary>Parts of the range of an input over which the answer may turn.</summary>
    private const int Intervals = 8;

    private const int Rounds = 4;

    private readonly RingResponse _response;

    private readonly ScatterInput[] _inputs;

    /// <summary>The inputs that make another bar.</summary>
    private readonly int[] _dimensions;

    /// <summary>The input over which the answer may turn for one bar; −1 when there is none.</summary>
    private readonly int _turning;

    private readonly List<(double[] At, RingReply Reply)> _tried = [];

    /// <summary>
    /// Diameter and length are searched along the same places, and repeatability only scales them. There are at most five other inputs:
    /// yield, three dimensions, stroke.
    /// </summary>
    private readonly Dictionary<(double, double, double, double, double), RingReply> _known = [];

    public RingExtremes(RingResponse response)
    {
        _response = response;
        _inputs = response.Inputs;
        _turning = Array.FindIndex(_inputs, input => !input.IsMonotone && !input.ChangesBar);
        _dimensions = [.. Enumerable.Range(0, _inputs.Length).Where(i => _inputs[i].ChangesBar)];
        Try(response.Nominal);
        for (int corner = 0; corner < 1 << _inputs.Length && Refusal is null; corner++)
        {
            Try([.. _inputs.Select((input, i) => (corner >> i & 1) == 0 ? input.Low : input.High)]);
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
        double high = Greatest(value);
        double low = -Greatest(reply => -value(reply));
        return Refusal is null ? (low, high) : null;
    }

    /// <summary>The range while one input moves and the others stay nominal.</summary>
    public (double Low, double High)? OfOne(int input, Func<RingReply, double> value)
    {
        double[] nominal = _response.Nominal;
        double high = Along(nominal, input, at => ValueAt(at, value)).Value;
        double low = -Along(nominal, input, at => -ValueAt(at, value)).Value;
        double middle = ValueAt(nominal, value);
        return Refusal is null ? (Math.Min(low, middle), Math.Max(high, middle)) : null;
    }

    private double Greatest(Func<RingReply, double> value)
    {
        if (Refusal is not null)
        {
            return double.NaN;
        }

        double[] at = [.. _tried.OrderByDescending(one => value(one.Reply)).First().At];

        // The best over the yield, for a bar; the bar's own places are left as they are.
        double Best(double[] place) => _turning < 0 ? ValueAt(place, value) : Along(place, _turning, one => ValueAt(one, value)).Value;
        double best = Best(at);
        foreach (double[] bar in Bars(at))
        {
            double found = Best(bar);
            if (found > best)
            {
                (at, best) = (bar, found);
            }
        }

        bool improved = _dimensions.Length > 0;
        for (int round = 0; improved && round < Rounds && Refusal is null; round++)
        {
            improved = false;
            foreach (int dimension in _dimensions)
            {
                (double place, double found) = Along(at, dimension, Best);
                improved |= found > best + 1e-9 * Math.Abs(best);
                if (found > best)
                {
                    at[dimension] = place;
                    best = found;
                }
            }
        }

        return best;
    }

    /// <summary>The places of every dimension, in every combination.</summary>
    private IEnumerable<double[]> Bars(double[] at)
    {
        double[][] places = [.. _dimensions.Select(dimension => PlacesOf(_inputs[dimension]))];
        int count = places.Aggregate(1, (product, one) => product * one.Length);
        for (int i = 0; _dimensions.Length > 0 && i < count; i++)
        {
            double[] bar = [.. at];
            int rest = i;
            for (int k = 0; k < places.Length; k++)
            {
                bar[_dimensions[k]] = places[k][rest % places[k].Length];
                rest /= places[k].Length;
            }

            yield return bar;
        }
    }

    /// <summary>The best place along one input: the best of a few, and between its neighbors where a parabola turns.</summary>
    private (double Place, double Value) Along(double[] from, int input, Func<double[], double> value)
    {
        double[] at = [.. from];
        double[] places = PlacesOf(_inputs[input]);
        double[] values = [.. places.Select(Value)];
        int best = Array.IndexOf(values, values.Max());
        if (_inputs[input].IsMonotone || Refusal is not null || places[0] == places[places.Length - 1])
        {
            return (places[best], values[best]);
        }

        int middle = Math.Min(Math.Max(best, 1), places.Length - 2);
        if (best == middle)
        {
            return Peak.Within(Value, places[middle - 1], places[middle], values[middle], places[middle + 1]);
        }

        // The best is an end: does the parabola through the three places there turn before it?
        double left = (values[middle] - values[middle - 1]) / (places[middle] - places[middle - 1]);
        double right = (values[middle + 1] - values[middle]) / (places[middle + 1] - places[middle]);
        double bend = (right - left) / (places[middle + 1] - places[middle - 1]);
        double turn = bend < 0 ? (places[middle - 1] + places[middle]) / 2 - left / (2 * bend) : double.NaN;
        double low = Math.Min(places[middle], places[best]);
        double high = Math.Max(places[middle], places[best]);
        if (!(turn > low && turn < high))
        {
            return (places[best], values[best]);
        }

        double found = Value(turn);
        return found > values[best] ? Peak.Within(Value, low, turn, found, high) : (places[best], values[best]);

        double Value(double place)
        {
            at[input] = place;
            return value(at);
        }
    }

    private double[] PlacesOf(ScatterInput input)
    {
        if (input.IsMonotone)
        {
            return [input.Low, input.High];
        }

        if (!input.ChangesBar && _response.IsYieldCheap)
        {
            return [.. Enumerable.Range(0, Intervals + 1).Select(i => input.Low + (input.High - input.Low) * i / Intervals)];
        }

        bool nominal = input.Nominal > input.Low && input.Nominal < input.High;
        double middle = nominal ? input.Nominal : (input.Low + input.High) / 2;
        return input.ChangesBar && (_dimensions.Length > 1 || _turning >= 0)
            ? [input.Low, middle, input.High]
            : [input.Low, (input.Low + middle) / 2, middle, (middle + input.High) / 2, input.High];
    }

    private double ValueAt(double[] at, Func<RingReply, double> value)
    {
        RingReply reply = Reply(at);
        return reply.Refusal is null ? value(reply) : double.NegativeInfinity;
    }

    private void Try(double[] at) => _tried.Add((at, Reply(at)));

    private RingReply Reply(double[] at)
    {
        (double, double, double, double, double) key = (Key(0), Key(1), Key(2), Key(3), Key(4));
        if (!_known.TryGetValue(key, out RingReply reply))
        {
            reply = _response.Unscaled(at);
            _known.Add(key, reply);
        }

        reply = reply.Refusal is null ? _response.Scaled(reply, at) : reply;
        IsStraight |= reply.Refusal is not null && reply.IsStraight;
        if (reply.Refusal is { } refusal && Refusal is null)
        {
            string where =
                at.Length == 0 ? string.Empty : "at " + string.Join(" and ", at.Select((value, i) => _response.Text(i, value))) + " ";
            Refusal = $"no range: {where}{refusal}";
        }

        return reply;

        double Key(int input) => input < at.Length && !_inputs[input].ScalesRing ? at[input] : 0;
    }
}
