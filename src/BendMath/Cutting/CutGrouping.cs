namespace BendMath.Cutting;

/// <summary>From lines of a cut list to a problem of numbers, and back to named pieces.</summary>
internal static class CutGrouping
{
    public static CutGroup Solve(BarKind? kind, string name, CutPiece[] lines, BarSupply[] supplies, double kerf, double useful,
        CancellationToken cancellation)
    {
        // Lines of one length are one size of piece; names are dealt out afterwards.
        CutPiece[][] sizes = [.. lines.GroupBy(line => line.Meters).OrderByDescending(size => size.Key).Select(size => size.ToArray())];
        CuttingProblem problem = new(
            [.. sizes.Select(size => size[0].Meters)], [.. sizes.Select(size => size.Sum(line => line.Quantity))],
            [.. supplies.Select(supply => supply.Meters)], [.. supplies.Select(supply => supply.Quantity ?? int.MaxValue)], kerf);
        CuttingOutcome outcome = CuttingSolver.Solve(problem, cancellation);
        Queue<CutPiece>[] waiting =
            [.. sizes.Select(size => new Queue<CutPiece>(size.SelectMany(line => Enumerable.Repeat(line, line.Quantity))))];
        List<(BarSupply Supply, CutPiece[] Pieces)> bars = [];
        var inOrder = outcome.Plan.Bars.OrderBy(bar => bar.Counts, Comparer<int[]>.Create(LongestFirst)).ThenBy(bar => bar.Bar);
        foreach ((int bar, int[] counts) in inOrder)
        {
            bars.Add((supplies[bar], [.. counts.SelectMany((count, size) => Take(waiting[size], count))]));
        }

        List<CutBar> cut = [];
        for (int i = 0; i < bars.Count;)
        {
            int next = i + 1;
            while (next < bars.Count && ReferenceEquals(bars[next].Supply, bars[i].Supply)
                && bars[next].Pieces.SequenceEqual(bars[i].Pieces))
            {
                next++;
            }

            cut.Add(new(bars[i].Supply, next - i, Array.AsReadOnly(bars[i].Pieces), kerf, useful));
            i = next;
        }

        CutPiece[] missing =
            [.. waiting.SelectMany(left => left.GroupBy(piece => piece).Select(same => new CutPiece(same.Key.Name, same.Key.Length, same.Count(), same.Key.Kind)))];
        return new(kind, name, cut.AsReadOnly(), Array.AsReadOnly(missing), outcome.LowerBound, outcome.End);
    }

    private static CutPiece[] Take(Queue<CutPiece> waiting, int count) => [.. Enumerable.Range(0, count).Select(_ => waiting.Dequeue())];

    private static int LongestFirst(int[]? one, int[]? other)
    {
        for (int i = 0; i < one!.Length; i++)
        {
            if (one[i] != other![i])
            {
                return other[i].CompareTo(one[i]);
            }
        }

        return 0;
    }
}
