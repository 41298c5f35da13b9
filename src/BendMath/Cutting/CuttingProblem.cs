namespace BendMath.Cutting;

/// <summary>
/// Pieces of different sizes from bars of different lengths. A piece takes its length and a kerf, a bar has room for its length and a kerf,
/// since the last piece needs no cut.
/// </summary>
internal sealed class CuttingProblem
{
    /// <param name="lengths">Lengths of the kinds of pieces, the longest first, no two alike.</param>
    /// <param name="demand">How many of each kind.</param>
    /// <param name="bars">Lengths of the bars.</param>
    /// <param name="supply">How many of each, <see cref="int.MaxValue"/> for as many as it takes.</param>
    /// <param name="kerf">Width of a saw cut.</param>
    public CuttingProblem(double[] lengths, int[] demand, double[] bars, int[] supply, double kerf)
    {
        Sizes = [.. lengths.Select(length => length + kerf)];
        Demand = demand;
        Bars = bars;
        Supply = supply;
        Rooms = [.. bars.Select(bar => BarCuts.Room(bar, kerf))];
        PerRoom = Enumerable.Range(0, bars.Length).Min(j => bars[j] / Rooms[j]);
        Penalty = (1.0 + demand.Sum()) * bars.Max();
        Kerf = kerf;
    }

    public double Kerf { get; }

    public double[] Sizes { get; }

    public int[] Demand { get; }

    public double[] Bars { get; }

    public double[] Rooms { get; }

    public int[] Supply { get; }

    public bool IsLimited => Array.Exists(Supply, count => count < int.MaxValue);

    /// <summary>The least length of bar per room.</summary>
    public double PerRoom { get; }

    /// <summary>What a piece left out counts as: more than all bars together could save.</summary>
    public double Penalty { get; }

    /// <summary>Two lengths of bars closer than this share are the same length.</summary>
    public const double Same = 1e-9;

    public double Material(int[] counts)
    {
        double sum = 0;
        for (int i = 0; i < counts.Length; i++)
        {
            sum += counts[i] * Sizes[i];
        }

        return sum;
    }
}

/// <summary>Bars with the number of pieces of each kind, and the pieces left out.</summary>
internal sealed class CuttingPlan(List<(int Bar, int[] Counts)> bars, int[] leftOut)
{
    public List<(int Bar, int[] Counts)> Bars { get; } = bars;

    public int[] LeftOut { get; } = leftOut;

    public double Cost(CuttingProblem problem) => Bars.Sum(bar => problem.Bars[bar.Bar]) + LeftOut.Sum() * problem.Penalty;

    /// <summary>Each bar exchanged for the shortest one at hand that holds its pieces.</summary>
    public CuttingPlan Shrunk(CuttingProblem problem)
    {
        int[] left = [.. problem.Supply];
        foreach ((int bar, _) in Bars)
        {
            left[bar] -= left[bar] < int.MaxValue ? 1 : 0;
        }

        List<(int Bar, int[] Counts)> shrunk = [];
        foreach ((int bar, int[] counts) in Bars)
        {
            double material = problem.Material(counts);
            int best = bar;
            for (int j = 0; j < left.Length; j++)
            {
                best = left[j] > 0 && problem.Rooms[j] >= material && problem.Bars[j] < problem.Bars[best] ? j : best;
            }

            if (best != bar)
            {
                left[best] -= left[best] < int.MaxValue ? 1 : 0;
                left[bar] += left[bar] < int.MaxValue ? 1 : 0;
            }

            shrunk.Add((best, counts));
        }

        return new(shrunk, LeftOut);
    }
}

/// <summary>A plan, a length of bars below which none can come, and how far the search went.</summary>
internal sealed record CuttingOutcome(CuttingPlan Plan, double LowerBound, CutSearchStatus End);
