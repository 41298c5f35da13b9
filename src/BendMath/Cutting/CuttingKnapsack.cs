namespace BendMath.Cutting;

/// <summary>
/// The most valuable way to fill a room with pieces of limited number: depth first, the most valuable per size first, cut short by what the
/// rest could add at most.
/// </summary>
internal static class CuttingKnapsack
{
    /// <param name="values">Value of each kind; a kind without value is not taken.</param>
    /// <param name="sizes">Size of each kind.</param>
    /// <param name="counts">How many there are of each.</param>
    /// <param name="room">Room to fill.</param>
    /// <param name="steps">Number of steps after which the search stops.</param>
    public static Filling Fill(double[] values, double[] sizes, int[] counts, double room, int steps)
    {
        // A stable sort, so that equal kinds come in the same order everywhere.
        int[] order =
            [.. Enumerable.Range(0, sizes.Length).Where(i => values[i] > 0 && counts[i] > 0 && sizes[i] <= room).OrderByDescending(i => values[i] / sizes[i])];
        Search search = new(order, values, sizes, counts, steps);
        search.Go(0, room, 0);
        int[] taken = new int[sizes.Length];
        for (int k = 0; k < order.Length; k++)
        {
            taken[order[k]] = search.Best[k];
        }

        double most = search.Steps > 0 ? search.Value : order.Length > 0 ? room * values[order[0]] / sizes[order[0]] : 0;
        return new(taken, search.Value, most);
    }

    /// <summary>What was taken, its value, and a value no filling exceeds: the same where the search came to its end.</summary>
    public readonly record struct Filling(int[] Counts, double Value, double Most);

    private sealed class Search(int[] order, double[] values, double[] sizes, int[] counts, int steps)
    {
        private readonly int[] _taken = new int[order.Length];

        public int Steps { get; private set; } = steps;

        public int[] Best { get; } = new int[order.Length];

        public double Value { get; private set; }

        public void Go(int k, double room, double value)
        {
            if (value > Value)
            {
                Value = value;
                _taken.CopyTo(Best, 0);
            }

            while (k < order.Length && sizes[order[k]] > room)
            {
                k++;
            }

            if (k == order.Length || Steps <= 0 || value + room * values[order[k]] / sizes[order[k]] <= Value * (1 + 1e-12))
            {
                return;
            }

            Steps--;
            int i = order[k];
            for (int n = Math.Min(counts[i], (int)Math.Min(room / sizes[i], int.MaxValue)); n >= 0; n--)
            {
                _taken[k] = n;
                Go(k + 1, room - n * sizes[i], value + n * values[i]);
            }

            _taken[k] = 0;
        }
    }
}
