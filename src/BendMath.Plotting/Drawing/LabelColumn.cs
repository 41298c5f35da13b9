namespace BendMath.Plotting.Drawing;

/// <summary>Spreads labels in a column so that none covers another and each lies as near to what it names as can be.</summary>
internal static class LabelColumn
{
    /// <summary>
    /// The middles of the labels: least squares of the shifts with the order kept, by pooling neighbors that would overlap.
    /// </summary>
    /// <param name="wanted">Where each label would like to be, rising.</param>
    /// <param name="heights">Their heights.</param>
    public static double[] Spread(IReadOnlyList<double> wanted, IReadOnlyList<double> heights)
    {
        double[] offsets = new double[wanted.Count];
        for (int i = 1; i < offsets.Length; i++)
        {
            offsets[i] = offsets[i - 1] + (heights[i - 1] + heights[i]) / 2;
        }

        List<(double Mean, int Count)> pools = [];
        for (int i = 0; i < offsets.Length; i++)
        {
            (double Mean, int Count) pool = (wanted[i] - offsets[i], 1);
            while (pools.Count > 0 && pools[pools.Count - 1].Mean > pool.Mean)
            {
                (double mean, int count) = pools[pools.Count - 1];
                pool = ((mean * count + pool.Mean * pool.Count) / (count + pool.Count), count + pool.Count);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        return [.. pools.SelectMany(pool => Enumerable.Repeat(pool.Mean, pool.Count)).Select((mean, i) => mean + offsets[i])];
    }
}
