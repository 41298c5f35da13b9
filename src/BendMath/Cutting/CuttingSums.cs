namespace BendMath.Cutting;

/// <summary>
/// All lengths that bars can have together, up to that of a plan: a bound rounds up to the next one. Where there are too many of them it
/// stays as it is.
/// </summary>
internal sealed class CuttingSums
{
    private const int Most = 20_000;

    private readonly double[]? _sums;

    public CuttingSums(CuttingProblem problem, double upTo)
    {
        // In nanometers, so that the order of adding does not matter.
        long[] bars = [.. problem.Bars.Select(bar => (long)Math.Round(bar * 1e9)).Distinct()];
        double limit = (upTo + problem.Bars.Max()) * 1e9;
        SortedSet<long> sums = [0];
        foreach (long bar in bars)
        {
            foreach (long start in sums.ToArray())
            {
                for (long sum = start + bar; sum <= limit && sums.Count <= Most; sum += bar)
                {
                    sums.Add(sum);
                }
            }
        }

        _sums = sums.Count <= Most && limit < 9e18 ? [.. sums.Select(sum => sum / 1e9)] : null;
    }

    public double AtLeast(double length)
    {
        if (_sums is null)
        {
            return length;
        }

        int at = Array.BinarySearch(_sums, length * (1 - CuttingProblem.Same));
        at = at < 0 ? ~at : at;
        return at < _sums.Length ? _sums[at] : length;
    }
}
