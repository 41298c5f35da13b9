namespace BendMath.Stock;

/// <summary>Which listed sizes a text that means none comes nearest to.</summary>
internal static class NearestSizes
{
    private const int Shown = 3;

    public static string Sentence(IReadOnlyList<StandardSize> nearest) =>
        $"the nearest {(nearest.Count == 1 ? "size is" : "sizes are")} {string.Join(", ", nearest.Select(size => size.FullName))}";

    /// <summary>By dimensions, among the shapes that the words name.</summary>
    public static IReadOnlyList<StandardSize> Of(SizeSpelling spelling, SizeSystem? system) => First(
        Listed(system ?? spelling.System).OrderBy(size => (SizeSpelling.Bit(size.Kind) & spelling.Kinds) == 0).ThenBy(size => Distance(spelling, size)));

    /// <summary>By letters.</summary>
    public static IReadOnlyList<StandardSize> OfText(string text, SizeSystem? system)
    {
        string squeezed = Squeezed(text.Length > LengthReader.LongestText ? text.Substring(0, LengthReader.LongestText) : text);
        return First(Listed(system).OrderBy(size => Edits(squeezed, Squeezed(size.Designation))));
    }

    private static IEnumerable<StandardSize> Listed(SizeSystem? system) => StandardSizes.All.Where(size => system is null || size.System == system);

    private static StandardSize[] First(IEnumerable<StandardSize> sizes) => [.. sizes.Take(Shown)];

    private static double Distance(SizeSpelling spelling, StandardSize size)
    {
        IReadOnlyList<double> designated = size.DesignatedNumbers;
        int shared = Math.Min(spelling.Numbers.Count, designated.Count);
        double distance = 0.2 * Math.Abs(spelling.Numbers.Count - designated.Count);
        for (int i = 0; i < shared; i++)
        {
            double larger = Math.Max(spelling.Numbers[i], designated[i]);
            distance += larger > 0 ? Math.Abs(spelling.Numbers[i] - designated[i]) / larger : 0;
        }

        bool otherUnit = spelling.IsMetric is { } metric && metric != size.System.IsMetric;
        return distance + (otherUnit ? 1 : 0) + ScheduleDistance(spelling.Schedule, size.Schedule);
    }

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
