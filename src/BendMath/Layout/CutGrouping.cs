namespace BendMath.Layout;

/// <summary>From lines of a cut list to a problem of numbers, and back to named pieces.</summary>
internal static class CutGrouping
{
    public static CutGroup Solve(string name, CutPiece[] lines, BarSupply[] supplies, double kerf, double useful, CancellationToken cancellation)
    {
        // Lines of one length are one kind of piece; names are dealt out afterwards.
        CutPiece[][] kinds = [.. lines.GroupBy(line => line.Meters).OrderByDescending(kind => kind.Key).Select(kind => kind.ToArray())];
        CuttingProblem problem = new(
            [.. kinds.Select(kind => kind[0].Meters)], [.. kinds.Select(kind => kind.Sum(line => line.Quantity))],
            [.. supplies.Select(supply => supply.Meters)], [.. supplies.Select(supply => supply.Quantity ?? int.MaxValue)], kerf);
        CuttingOutcome outcome = CuttingSolver.Solve(problem, cancellation);
        Queue<CutPiece>[] waiting = [.. kinds.Select(kind => new Queue<CutPiece>(kind.SelectMany(line => Enumerable.Repeat(line, line.Quantity))))];
        List<(BarSupply Supply, CutPiece[] Pieces)> bars = [];
        foreach ((int bar, int[] counts) in outcome.Plan.Bars.OrderBy(bar => bar.Counts, Comparer<int[]>.Create(LongestFirst)).ThenBy(bar => bar.Bar))
        {
            bars.Add((supplies[bar], [.. counts.SelectMany((count, kind) => Take(waiting[kind], count))]));
        }

        List<CutBar> cut = [];
        for (int i = 0; i < bars.Count;)
        {
            int next = i + 1;
            while (next < bars.Count && ReferenceEquals(bars[next].Supply, bars[i].Supply) && bars[next].Pieces.SequenceEqual(bars[i].Pieces))
            {
                next++;
            }

            cut.Add(new(bars[i].Supply, next - i, Array.AsReadOnly(bars[i].Pieces), kerf, useful));
            i = next;
        }

        CutPiece[] missing = [.. waiting.SelectMany(left => left.GroupBy(piece => piece).Select(same => new CutPiece(same.Key.Name, same.Key.Length, same.Count(), same.Key.Group)))];
        return new(name, cut.AsReadOnly(), Array.AsReadOnly(missing), outcome.LowerBound, outcome.End);
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
