using System.Globalization;
using BendMath;
using BendMath.Cutting;
using RingPlanner.Papers;

namespace RingPlanner.Pages;

/// <summary>One cut list for all jobs of a file.</summary>
internal static class CutPage
{
    /// <param name="paper">The paper.</param>
    /// <param name="cuts">The list.</param>
    /// <param name="unitsOf">How the job of a plan wants to read sizes.</param>
    public static void Print(Paper paper, PlanCuts cuts, Func<RingPlan, Units> unitsOf)
    {
        paper.Heading("One cut list for all of it");
        foreach (CutGroup group in cuts.List?.Groups ?? [])
        {
            Group(paper, group, cuts, unitsOf(cuts.PlansOf(group)[0]));
        }

        foreach (string sentence in cuts.LeftOut)
        {
            paper.Fact("Left out", sentence);
        }
    }

    /// <summary>How many bars of which length.</summary>
    public static string Bars(CutGroup group, Units units) => string.Join(" and ", group.Bars
        .GroupBy(bar => bar.Supply.Length.Meters)
        .Select(
            same =>
                string.Create(CultureInfo.InvariantCulture, $"{same.Sum(bar => bar.Count)} × {units.Size(same.First().Supply.Length)}")));

    private static void Group(Paper paper, CutGroup group, PlanCuts cuts, Units units)
    {
        paper.Fact(units.Sentence(group.Name), $"{Bars(group, units)}, {units.Weight(cuts.BarMassOf(group))}; {Proof(group)}");
        Column[] columns =
            [new("bars", IsNumber: true), new("bar", IsNumber: true), new("cut from each", MayWrap: true), new("left over", IsNumber: true),
                new("keep it")];
        paper.Show(new(columns, [.. group.Bars.Select(bar => Row(bar, units))]));
    }

    private static string[] Row(CutBar bar, Units units) =>
    [
        bar.Count.ToString(CultureInfo.InvariantCulture),
        units.Size(bar.Supply.Length),
        string.Join(" + ",
            bar.Pieces.GroupBy(piece => piece.Name, StringComparer.Ordinal)
                .Select(
                    same =>
                        string.Create(CultureInfo.InvariantCulture, $"{same.Count()} × {same.Key} ({units.Size(same.First().Length)})"))),
        units.Size(bar.Offcut),
        bar.IsOffcutUseful ? "yes" : "no",
    ];

    private static string Proof(CutGroup group) => group.IsProven
        ? "no list takes less"
        : string.Create(CultureInfo.InvariantCulture, $"at most {group.Gap.Percent:0.0} % more than the least there can be");
}
