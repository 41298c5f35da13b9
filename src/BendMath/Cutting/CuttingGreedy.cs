namespace BendMath.Cutting;

/// <summary>
/// First plans: the longest piece first, into the first bar it fits or into the one it fills best, and bar after bar as full as it can be.
/// </summary>
internal static class CuttingGreedy
{
    /// <summary>Up to so many pieces the fullest of all open bars is looked for.</summary>
    private const int ManyPieces = 1000;

    /// <param name="problem">The problem.</param>
    /// <param name="cancellation">Ends it after the first plan, which is always made.</param>
    public static CuttingPlan Best(CuttingProblem problem, CancellationToken cancellation)
    {
        CuttingPlan? best = null;
        for (int preferred = 0; preferred < problem.Bars.Length && (best is null || !cancellation.IsCancellationRequested); preferred++)
        {
            Offer(Decreasing(problem, preferred, bestFit: false));
            if (problem.Demand.Sum() <= ManyPieces)
            {
                Offer(Decreasing(problem, preferred, bestFit: true));
            }
        }

        Offer(FullestBars(problem, cancellation));
        return best!;

        void Offer(CuttingPlan? plan)
        {
            if (plan?.Shrunk(problem) is { } shrunk)
            {
                best = best is null || shrunk.Cost(problem) < best.Cost(problem) ? shrunk : best;
            }
        }
    }

    /// <summary>First-fit or best-fit decreasing.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="preferred">The bar to open where it fits and is at hand; otherwise the shortest that does.</param>
    /// <param name="bestFit">Into the open bar that is then fullest, instead of into the first that fits.</param>
    public static CuttingPlan Decreasing(CuttingProblem problem, int preferred, bool bestFit)
    {
        int[] left = [.. problem.Supply];
        List<(int Bar, int[] Counts)> bars = [];
        List<double> room = [];
        int[] leftOut = new int[problem.Sizes.Length];
        for (int i = 0; i < problem.Sizes.Length; i++)
        {
            int first = 0;
            for (int n = 0; n < problem.Demand[i]; n++)
            {
                int at = bestFit ? Fullest(room, problem.Sizes[i]) : First(room, problem.Sizes[i], first);
                if (at < 0)
                {
                    int open = Opened(problem, left, preferred, problem.Sizes[i]);
                    if (open < 0)
                    {
                        leftOut[i] += problem.Demand[i] - n;
                        break;
                    }

                    left[open] -= left[open] < int.MaxValue ? 1 : 0;
                    at = bars.Count;
                    bars.Add((open, new int[problem.Sizes.Length]));
                    room.Add(problem.Rooms[open]);
                }

                first = at;
                bars[at].Counts[i]++;
                room[at] -= problem.Sizes[i];
            }
        }

        return new(bars, leftOut);
    }

    /// <summary>Each bar with the longest piece left and whatever fills it best; null when stopped.</summary>
    private static CuttingPlan? FullestBars(CuttingProblem problem, CancellationToken cancellation)
    {
        int[] left = [.. problem.Supply];
        int[] demand = [.. problem.Demand];
        List<(int Bar, int[] Counts)> bars = [];
        int[] leftOut = new int[problem.Sizes.Length];
        for (int i = 0; i < problem.Sizes.Length; i++)
        {
            while (demand[i] > 0)
            {
                if (cancellation.IsCancellationRequested)
                {
                    return null;
                }

                int chosen = -1;
                int[]? counts = null;
                double share = 0;
                demand[i]--;
                for (int j = 0; j < left.Length; j++)
                {
                    double room = problem.Rooms[j] - problem.Sizes[i];
                    if (left[j] == 0 || room < 0)
                    {
                        continue;
                    }

                    CuttingKnapsack.Filling filling = CuttingKnapsack.Fill(problem.Sizes, problem.Sizes, demand, room, 2000);
                    double filled = (problem.Sizes[i] + filling.Value) / problem.Bars[j];
                    if (filled > share)
                    {
                        (chosen, share, counts) = (j, filled, filling.Counts);
                    }
                }

                if (counts is null)
                {
                    leftOut[i]++;
                    continue;
                }

                for (int k = 0; k < counts.Length; k++)
                {
                    demand[k] -= counts[k];
                }

                counts[i]++;
                left[chosen] -= left[chosen] < int.MaxValue ? 1 : 0;
                bars.Add((chosen, counts));
            }
        }

        return new(bars, leftOut);
    }

    private static int First(List<double> room, double size, int from)
    {
        for (int b = from; b < room.Count; b++)
        {
            if (room[b] >= size)
            {
                return b;
            }
        }

        return -1;
    }

    private static int Fullest(List<double> room, double size)
    {
        int best = -1;
        for (int b = 0; b < room.Count; b++)
        {
            best = room[b] >= size && (best < 0 || room[b] < room[best]) ? b : best;
        }

        return best;
    }

    private static int Opened(CuttingProblem problem, int[] left, int preferred, double size)
    {
        if (left[preferred] > 0 && problem.Rooms[preferred] >= size)
        {
            return preferred;
        }

        int best = -1;
        for (int j = 0; j < left.Length; j++)
        {
            best = left[j] > 0 && problem.Rooms[j] >= size && (best < 0 || problem.Bars[j] < problem.Bars[best]) ? j : best;
        }

        return best;
    }
}
