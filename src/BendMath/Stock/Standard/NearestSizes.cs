using BendMath.Lengths;

namespace BendMath.Stock.Standard;

/// <summary>Which listed sizes a text that means none comes nearest to.</summary>
internal static class NearestSizes
{
    private const int Shown = 3;

    public static string Sentence(IReadOnlyList<StandardSize> nearest) =>
        $"the nearest {(nearest.Count == 1 ? "size is" : "sizes are")} {string.Join(", ", nearest.Select(size => size.FullName))}";

    /// <summary>By dimensions and shape.</summary>
    public static IReadOnlyList<StandardSize> Of(SizeSpelling spelling, SizeSystem? system) => First(
        Listed(system ?? spelling.System).OrderBy(size => Distance(spelling, size)));

    /// <summary>By what could be read of a text, or by its letters.</summary>
    public static IReadOnlyList<StandardSize> Of(string text, SizeSpelling spelling, SizeSystem? system)
    {
        if (spelling.Numbers.Count + Math.Min(spelling.Schedule.Length, 1) > 1)
        {
            return Of(spelling, system);
        }

        string squeezed = Squeezed(text.Length > LengthReader.LongestText ? text.Substring(0, LengthReader.LongestText) : text);
        return First(Listed(system).OrderBy(size => Edits(squeezed, Squeezed(size.Designation))));
    }

    private static IEnumerable<StandardSize> Listed(SizeSystem? system) =>
        StandardSizes.All.Where(size => system is null || size.System == system);

    private static StandardSize[] First(IEnumerable<StandardSize> sizes) => [.. sizes.Take(Shown)];

    /// <summary>The sum of relative differences, and for what else does not fit about as much as a size or two in a list.</summary>
    private static double Distance(SizeSpelling spelling, StandardSize size)
    {
        bool isOtherShape = (SizeSpelling.Bit(size.Kind) & spelling.Kinds) == 0;
        bool isOtherUnit = spelling.IsMetric is { } metric && metric != size.System.IsMetric;
        return Distance(spelling.Numbers, size.DesignatedNumbers) + ScheduleDistance(spelling.Schedule, size.Schedule)
            + (isOtherShape ? 0.5 : 0) + (isOtherUnit ? 1 : 0);
    }

    private static double Distance(List<double> wanted, IReadOnlyList<double> listed)
    {
        int shared = Math.Min(wanted.Count, listed.Count);
        double inOrder = Enumerable.Range(0, shared).Sum(i => Difference(wanted[i], listed[i]));
        if (wanted.Count == listed.Count)
        {
            return inOrder;
        }

        // With a number too few or too many the last may be the thickness of both.
        double atEnds =
            shared < 2 ? double.PositiveInfinity
                : Difference(wanted[0], listed[0]) + Difference(wanted[wanted.Count - 1], listed[listed.Count - 1]);
        return Math.Min(inOrder, atEnds) + 0.2 * Math.Abs(wanted.Count - listed.Count);
    }

    private static double Difference(double left, double right) => left == right ? 0 : Math.Abs(left - right) / Math.Max(left, right);

    /// <summary>Schedules are numbers, weights are words, and one is nearer to its like than to the other.</summary>
    private static double ScheduleDistance(string wanted, string listed)
    {
        bool areAlike = wanted.Length > 0 && listed.Length > 0 && char.IsDigit(wanted[0]) == char.IsDigit(listed[0]);
        return wanted == listed ? 0 : areAlike ? 0.05 : 0.1;
    }

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)).Select(char.ToUpperInvariant));

    /// <summary>The least number of letters to insert, drop or change.</summary>
    private static int Edits(string left, string right)
    {
        int[] above = [.. Enumerable.Range(0, right.Length + 1)];
        int[] row = new int[right.Length + 1];
        for (int i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int change = above[j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(above[j], row[j - 1]) + 1);
            }

            (above, row) = (row, above);
        }

        return above[right.Length];
    }
}
