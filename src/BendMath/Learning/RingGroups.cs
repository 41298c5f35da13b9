namespace BendMath.Learning;

/// <summary>Chooses the rings that speak for a bar.</summary>
internal static class RingGroups
{
    /// <summary>The narrowest group of more rings than a few; failing that, the narrowest that holds as many as all do.</summary>
    public static (RingGroup Group, IReadOnlyList<T> Rings) For<T>(IReadOnlyList<T> rings, Func<T, MeasuredRing> ringOf,
        BendAnalysis analysis, int few)
    {
        IReadOnlyList<T>[] groups =
            [.. new[] { RingGroup.SameBar, RingGroup.SameOrientationAndMetal, RingGroup.SameStock, RingGroup.All }.Select(group => (IReadOnlyList<T>)[.. rings.Where(ring => IsIn(group, ringOf(ring), analysis))])];
        int chosen = Array.FindIndex(groups, group => group.Count > few);
        if (chosen < 0)
        {
            int most = groups.Max(group => group.Count);
            chosen = Array.FindIndex(groups, group => group.Count == most);
        }

        return ((RingGroup)chosen, groups[chosen]);
    }

    public static string Words(RingGroup group, BendAnalysis analysis) => group switch
    {
        RingGroup.SameBar => $"of {analysis.Section}, {analysis.Material.Name}",
        RingGroup.SameOrientationAndMetal => $"of {analysis.Section.Kind}, of {analysis.Material.Name}, whatever the size",
        RingGroup.SameStock => $"of {analysis.Section}, whatever the metal",
        _ => "of all bars and metals",
    };

    private static bool IsIn(RingGroup group, MeasuredRing ring, BendAnalysis analysis) => group switch
    {
        RingGroup.SameBar => ring.IsOf(analysis.Section) && ring.IsOf(analysis.Law),
        RingGroup.SameOrientationAndMetal => ring.Analysis.Section.IsOfKind(analysis.Section) && ring.IsOf(analysis.Law),
        RingGroup.SameStock => ring.IsOf(analysis.Section),
        _ => true,
    };
}
