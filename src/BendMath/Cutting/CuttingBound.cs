using MathNet.Numerics.LinearAlgebra;

namespace BendMath.Cutting;

/// <summary>
/// The linear relaxation by generation of columns: how many bars of each way of cutting, fractions allowed. Prices of the pieces for which
/// no way of cutting is worth more than its bar give a bound in every round, also before the last one (Farley). Limits on the number of
/// bars are left out, which only lowers it.
/// </summary>
internal sealed class CuttingBound
{
    /// <summary>Beyond so many kinds of pieces the rounds take too long for what they give.</summary>
    public const int MostKinds = 100;

    private const int MostRounds = 2000;

    private const int Steps = 100_000;

    private CuttingBound(double value, double[] prices, List<(int Bar, int[] Counts, double Amount)> ways)
    {
        Value = value;
        Prices = prices;
        Ways = ways;
    }

    /// <summary>Length of bars below which no plan can come.</summary>
    public double Value { get; }

    /// <summary>Prices of the kinds of pieces, none negative: no way of cutting is worth more than its bar.</summary>
    public double[] Prices { get; }

    /// <summary>The ways of cutting of the relaxation, and how many bars of each.</summary>
    public List<(int Bar, int[] Counts, double Amount)> Ways { get; }

    public static CuttingBound Of(CuttingProblem problem, CancellationToken cancellation)
    {
        int m = problem.Sizes.Length;
        Column[] basis = [.. Enumerable.Range(0, m).Select(i => Start(problem, i))];
        Vector<double> demand = Vector<double>.Build.Dense(m, i => problem.Demand[i]);
        Vector<double> amounts = demand;
        double value = 0;
        double[] prices = new double[m];
        for (int round = 0; round < MostRounds && !cancellation.IsCancellationRequested; round++)
        {
            Matrix<double> matrix = Matrix<double>.Build.Dense(m, m, (i, k) => basis[k].Counts[i]);
            var factors = matrix.LU();
            amounts = factors.Solve(demand);
            Vector<double> raw = matrix.Transpose().LU().Solve(Vector<double>.Build.Dense(m, k => basis[k].Cost));
            double[] worth = [.. raw.Select(price => Math.Max(0, price))];
            Column? entering = Dearest(problem, worth, out double share);
            double bound = share * Enumerable.Range(0, m).Sum(i => worth[i] * problem.Demand[i]);
            if (bound > value)
            {
                value = bound;
                prices = [.. worth.Select(price => price * share)];
            }

            int surplus = raw.MinimumIndex();
            entering = raw[surplus] < -CuttingProblem.Same * problem.Bars.Max() ? Column.Surplus(m, surplus) : entering;
            if (entering is null
                || !Exchange(basis, amounts, factors.Solve(Vector<double>.Build.Dense(m, i => entering.Counts[i])), entering))
            {
                break;
            }
        }

        return new(value, prices, [.. basis.Select((column, k) => (column.Bar, column.Counts, amounts[k])).Where(way => way.Bar >= 0)]);
    }

    /// <summary>
    /// The way of cutting that is worth most over its bar, or null where none is worth more; and the share to which prices must fall so
    /// that none is.
    /// </summary>
    private static Column? Dearest(CuttingProblem problem, double[] worth, out double share)
    {
        Column? entering = null;
        double gain = CuttingProblem.Same;
        share = double.PositiveInfinity;
        for (int j = 0; j < problem.Bars.Length; j++)
        {
            CuttingKnapsack.Filling filling = CuttingKnapsack.Fill(worth, problem.Sizes, problem.Demand, problem.Rooms[j], Steps);
            share = Math.Min(share, filling.Most > 0 ? problem.Bars[j] / filling.Most : double.PositiveInfinity);
            double over = filling.Value / problem.Bars[j] - 1;
            if (over > gain)
            {
                gain = over;
                entering = new(j, filling.Counts, problem.Bars[j]);
            }
        }

        share = double.IsInfinity(share) ? 0 : share;
        return entering;
    }

    /// <summary>The column that reaches zero first leaves; false where none does, which rounding alone can bring about.</summary>
    private static bool Exchange(Column[] basis, Vector<double> amounts, Vector<double> rates, Column entering)
    {
        int leaving = -1;
        double least = double.PositiveInfinity;
        for (int k = 0; k < basis.Length; k++)
        {
            if (rates[k] > 1e-9 && Math.Max(0, amounts[k]) / rates[k] is var ratio && ratio < least)
            {
                least = ratio;
                leaving = k;
            }
        }

        if (leaving >= 0)
        {
            basis[leaving] = entering;
        }

        return leaving >= 0;
    }

    /// <summary>As many of one kind as fit the bar that costs least for each.</summary>
    private static Column Start(CuttingProblem problem, int kind)
    {
        int bar = -1;
        int count = 0;
        for (int j = 0; j < problem.Bars.Length; j++)
        {
            int fit = (int)Math.Min(problem.Demand[kind], Math.Floor(problem.Rooms[j] / problem.Sizes[kind]));
            if (fit > 0 && (bar < 0 || problem.Bars[j] * count < problem.Bars[bar] * fit))
            {
                bar = j;
                count = fit;
            }
        }

        int[] counts = new int[problem.Sizes.Length];
        counts[kind] = count;
        return new(bar, counts, problem.Bars[bar]);
    }

    private sealed record Column(int Bar, int[] Counts, double Cost)
    {
        /// <summary>One piece too many of a kind.</summary>
        public static Column Surplus(int kinds, int kind)
        {
            int[] counts = new int[kinds];
            counts[kind] = -1;
            return new(-1, counts, 0);
        }
    }
}
