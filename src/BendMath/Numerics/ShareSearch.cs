namespace BendMath.Numerics;

/// <summary>
/// A stretch of shares from 0 to 1 over which a function stays within an error of zero, and where in it the function is zero.
/// </summary>
internal readonly struct ShareRange(double low, double high, double[] roots)
{
    public double Low { get; } = low;

    public double High { get; } = high;

    public double[] Roots { get; } = roots;
}

/// <summary>
/// All zeros of a continuous function of a share, and all stretches where it stays within an error of zero, from values at even points:
/// every change of sign is bracketed. A pair of
/// crossings between two points stays unseen, unless a parabola through three points shows an extreme there, which is then searched.
/// </summary>
internal sealed class ShareSearch
{
    private readonly Func<double, double> _function;

    private readonly List<(double Share, double Value)> _points = [];

    public ShareSearch(Func<double, double> function, int steps)
    {
        _function = function;
        for (int i = 0; i <= steps; i++)
        {
            _points.Add((i / (double)steps, function(i / (double)steps)));
        }

        for (int i = _points.Count - 2; i > 0; i--)
        {
            double before = _points[i].Value - _points[i - 1].Value;
            double after = _points[i + 1].Value - _points[i].Value;
            if (before * after < 0)
            {
                double shift = Math.Max(-0.9, Math.Min(0.9, (before + after) / (2 * (before - after))));
                double share = _points[i].Share + shift / steps;
                if (Math.Abs(shift) > 1e-6)
                {
                    _points.Insert(shift > 0 ? i + 1 : i, (share, function(share)));
                }
            }
        }
    }

    /// <summary>The stretches where the function is at most an error away from zero; single points where the error is zero.</summary>
    public IEnumerable<ShareRange> Within(double error)
    {
        double[] roots = Crossings(0);
        if (error == 0)
        {
            return roots.Select(root => new ShareRange(root, root, [root]));
        }

        double[] ends = [0, .. Crossings(error).Concat(Crossings(-error)).OrderBy(share => share), 1];
        List<ShareRange> found = [];
        double? open = null;
        for (int i = 0; i < ends.Length - 1; i++)
        {
            bool inside = ends[i + 1] > ends[i] && Math.Abs(_function((ends[i] + ends[i + 1]) / 2)) <= error;
            open = inside ? open ?? ends[i] : open;
            if (open is { } low && (!inside || i == ends.Length - 2))
            {
                double high = inside ? 1 : ends[i];
                found.Add(new(low, high, [.. roots.Where(root => root >= low && root <= high)]));
                open = null;
            }
        }

        return found;
    }

    private double[] Crossings(double level)
    {
        List<double> found = [];
        double size = _points.Max(point => Math.Abs(point.Value - level));
        for (int i = 0; i < _points.Count; i++)
        {
            (double share, double value) = _points[i];
            if (value == level)
            {
                found.Add(share);
            }
            else if (i > 0 && _points[i - 1].Value != level && value > level != _points[i - 1].Value > level)
            {
                found.Add(Bracketed.Root(at => (_function(at) - level) / size, _points[i - 1].Share, share));
            }
        }

        return [.. found];
    }
}
