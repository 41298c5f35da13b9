namespace BendMath.Cutting;

/// <summary>
/// A first plan from greedy rules, a bound from material and from the linear relaxation, a plan from the relaxation rounded down, branch
/// and bound for all, and where that stops at its limit, branch and bound for a few bars at a time. All limits are numbers of steps, so
/// that the same input gives the same plan on any machine.
/// </summary>
internal static class CuttingSolver
{
    private const int StepsForAll = 2_000_000;

    private const int StepsForRest = 60_000;

    private const int StepsForSome = 8000;

    /// <summary>Bars times kinds up to which the search may go that deep.</summary>
    private const int Deepest = 3000;

    public static CuttingOutcome Solve(CuttingProblem problem, CancellationToken cancellation)
    {
        CuttingPlan best = CuttingGreedy.Best(problem, cancellation);
        CuttingSums sums = new(problem, problem.Bars.Max() * (best.Bars.Count + best.LeftOut.Sum()));
        double[] prices = new double[problem.Sizes.Length];
        double bound = sums.AtLeast(problem.Material(problem.Demand) * problem.PerRoom);
        if (IsReached())
        {
            return new(best, bound, CutSearchStatus.Proven);
        }

        if (problem.Sizes.Length <= CuttingBound.MostKinds && !cancellation.IsCancellationRequested)
        {
            CuttingBound relaxed = CuttingBound.Of(problem, cancellation);
            prices = relaxed.Prices;
            bound = Math.Max(bound, sums.AtLeast(relaxed.Value));
            if (!IsReached())
            {
                Offer(Rounded(problem, relaxed, cancellation));
            }

            if (IsReached())
            {
                return new(best, bound, CutSearchStatus.Proven);
            }
        }

        if (best.Bars.Count * problem.Sizes.Length <= Deepest && !cancellation.IsCancellationRequested)
        {
            CuttingSearch search = CuttingSearch.Run(problem, sums, prices, best.Cost(problem), StepsForAll, cancellation);
            Offer(search.Found);
            if (search.IsComplete || IsReached())
            {
                return new(best, best.LeftOut.Sum() == 0 ? best.Cost(problem) : bound, CutSearchStatus.Proven);
            }
        }

        Offer(Improved(problem, prices, best, bound, cancellation));
        return new(best, bound,
            IsReached() ? CutSearchStatus.Proven
                : cancellation.IsCancellationRequested ? CutSearchStatus.Stopped : CutSearchStatus.LimitReached);

        bool IsReached() => best.Cost(problem) <= bound * (1 + CuttingProblem.Same);

        void Offer(CuttingPlan? plan)
        {
            if (plan?.Shrunk(problem) is { } shrunk && shrunk.Cost(problem) < best.Cost(problem))
            {
                best = shrunk;
            }
        }
    }

    /// <summary>As many whole bars as the relaxation has of each way of cutting; the rest of the pieces by themselves.</summary>
    private static CuttingPlan Rounded(CuttingProblem problem, CuttingBound relaxed, CancellationToken cancellation)
    {
        int[] demand = [.. problem.Demand];
        int[] supply = [.. problem.Supply];
        List<(int Bar, int[] Counts)> bars = [];
        foreach ((int bar, int[] counts, double amount) in relaxed.Ways)
        {
            int whole = (int)Math.Floor(amount + 1e-6);
            for (int n = 0; n < whole && supply[bar] > 0; n++)
            {
                int[] taken = [.. counts.Select((count, i) => Math.Min(count, demand[i]))];
                if (taken.Sum() == 0)
                {
                    break;
                }

                supply[bar] -= supply[bar] < int.MaxValue ? 1 : 0;
                bars.Add((bar, taken));
                for (int i = 0; i < demand.Length; i++)
                {
                    demand[i] -= taken[i];
                }
            }
        }

        CuttingPlan rest = Part(problem, relaxed.Prices, demand, supply, null, StepsForRest, cancellation);
        return new([.. bars, .. rest.Bars], rest.LeftOut);
    }

    /// <summary>
    /// Few bars at a time, those with most room to spare first, cut anew with branch and bound, as long as that saves something.
    /// </summary>
    private static CuttingPlan Improved(CuttingProblem problem, double[] prices, CuttingPlan plan, double bound,
        CancellationToken cancellation)
    {
        const int Window = 6;
        const int Windows = 30;
        for (int round = 0; round < 40; round++)
        {
            List<(int Bar, int[] Counts)> bars =
                [.. plan.Bars.OrderByDescending(bar => problem.Rooms[bar.Bar] - problem.Material(bar.Counts))];
            int[] supply = [.. problem.Supply];
            foreach ((int bar, _) in bars)
            {
                supply[bar] -= supply[bar] < int.MaxValue ? 1 : 0;
            }

            CuttingPlan? better = null;
            for (int first = 0, n = 0; first < bars.Count && n < Windows && better is null
                && !cancellation.IsCancellationRequested; first += Window / 2, n++)
            {
                // The bar with most to spare and those of the window.
                List<(int Bar, int[] Counts)> some = [.. bars.Take(1), .. bars.Skip(Math.Max(1, first)).Take(Window - 1)];
                List<(int Bar, int[] Counts)> others =
                    [.. bars.Skip(1).Take(Math.Max(0, first - 1)), .. bars.Skip(Math.Max(1, first) + Window - 1)];
                int[] left = [.. supply];
                int[] demand = [.. plan.LeftOut];
                foreach ((int bar, int[] counts) in some)
                {
                    left[bar] += left[bar] < int.MaxValue ? 1 : 0;
                    for (int i = 0; i < demand.Length; i++)
                    {
                        demand[i] += counts[i];
                    }
                }

                CuttingPlan old = new(some, plan.LeftOut);
                CuttingPlan part = Part(problem, prices, demand, left, old, StepsForSome, cancellation);
                better = ReferenceEquals(part, old) ? null : new([.. others, .. part.Bars], part.LeftOut);
            }

            if (better is null)
            {
                break;
            }

            plan = better;
            if (plan.Cost(problem) <= bound * (1 + CuttingProblem.Same))
            {
                break;
            }
        }

        return plan;
    }

    /// <summary>A plan for some of the pieces with the bars left: the one known where none better is found.</summary>
    private static CuttingPlan Part(CuttingProblem problem, double[] prices, int[] demand, int[] supply, CuttingPlan? known, int steps,
        CancellationToken cancellation)
    {
        int[] kinds = [.. Enumerable.Range(0, demand.Length).Where(i => demand[i] > 0)];
        int[] bars = [.. Enumerable.Range(0, supply.Length).Where(j => supply[j] > 0)];
        if (kinds.Length == 0 || bars.Length == 0)
        {
            return known ?? new([], demand);
        }

        CuttingProblem part = new(
            [.. kinds.Select(i => problem.Sizes[i] - problem.Kerf)], [.. kinds.Select(i => demand[i])],
                [.. bars.Select(j => problem.Bars[j])], [.. bars.Select(j => supply[j])], problem.Kerf);
        CuttingPlan start = CuttingGreedy.Best(part, cancellation);
        double knownCost =
            known is null ? double.PositiveInfinity : known.Bars.Sum(bar => problem.Bars[bar.Bar]) + known.LeftOut.Sum() * part.Penalty;
        double cost = Math.Min(start.Cost(part), knownCost);
        CuttingSums sums = new(part, part.Bars.Max() * (start.Bars.Count + start.LeftOut.Sum()));
        if (sums.AtLeast(part.Material(part.Demand) * part.PerRoom) < cost * (1 - CuttingProblem.Same)
            && start.Bars.Count * kinds.Length <= Deepest)
        {
            CuttingSearch search = CuttingSearch.Run(part, sums, [.. kinds.Select(i => prices[i])], cost, steps, cancellation);
            start = search.Found ?? start;
        }

        return known is not null && start.Cost(part) >= knownCost * (1 - CuttingProblem.Same)
            ? known
            : new([.. start.Bars.Select(bar => (bars[bar.Bar], Wide(bar.Counts)))], Wide(start.LeftOut));

        int[] Wide(int[] counts)
        {
            int[] wide = new int[demand.Length];
            for (int k = 0; k < kinds.Length; k++)
            {
                wide[kinds[k]] = counts[k];
            }

            return wide;
        }
    }
}
