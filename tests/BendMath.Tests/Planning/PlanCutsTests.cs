using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Planning;

public sealed class PlanCutsTests
{
    /// <summary>Two jobs of one bar share its bars; put together by hand, two long blanks and one short one fill a bar that either job alone would waste.</summary>
    [Fact]
    public void Jobs_of_one_bar_are_cut_from_the_same_bars()
    {
        RingPlan wide = Plan("wide rim", 300, quantity: 2, bar: 6);
        RingPlan small = Plan("small rim", 200, quantity: 3, bar: 6);
        double two = wide.Ring!.CutLength.Meters, one = small.Ring!.CutLength.Meters;
        PlanCuts cuts = PlanCuts.For([wide, small], Length.FromMillimeters(100), TestContext.Current.CancellationToken);
        CutGroup group = Assert.Single(cuts.List!.Groups);
        Assert.True(cuts.List.IsProven);
        double needed = 2 * two + 3 * one + 5 * 0.002;
        Assert.Equal(Math.Ceiling(needed / 6), group.BarCount);
        Near.Relative(2 * two + 3 * one, group.PieceLength.Meters, 1e-12);
        Near.Relative(group.BarCount * 6, group.PieceLength.Meters + group.SawLoss.Meters + group.UsefulOffcuts.Meters + group.Scrap.Meters, 1e-12, "pieces, saw cuts and offcuts are the bars");
        Near.Relative(group.BarCount * 6 * Workshop.Rim.Properties.MassPerLength(Workshop.Steel.Density).KilogramsPerMeter, cuts.BarMassOf(group).Kilograms, 1e-12);
        Assert.Equal([wide, small], cuts.PlansOf(group));
    }

    [Fact]
    public void A_plan_without_a_bar_or_longer_than_one_is_left_out_and_says_why()
    {
        PlanCuts cuts = PlanCuts.For([Plan("no bar", 250, 1, null), Plan("short bar", 250, 1, 1), Plan("good", 250, 1, 6)], Length.Zero, TestContext.Current.CancellationToken);
        Assert.Equal(["no bar: no length of bar is given", "short bar: the blank is longer than a bar"], cuts.LeftOut);
        Assert.Equal("good", Assert.Single(cuts.Plans).Job.Name);
        PlanCuts none = PlanCuts.For([Plan("no bar", 250, 1, null)], Length.Zero, TestContext.Current.CancellationToken);
        Assert.Null(none.List);
        Assert.Equal("no bar: no length of bar is given", none.ToString());
        Assert.Throws<ArgumentException>("group", () => none.BarMassOf(cuts.List!.Groups[0]));
    }

    private static RingPlan Plan(string name, double wanted, int quantity, double? bar) => RingPlan.For(new RingJob(
        name,
        Workshop.RimSteel,
        new(Workshop.Inside(wanted), ArcExtent.FullRing, quantity),
        new(Workshop.Rack, new WrapBending()),
        new(BlankEnds.None, Length.FromMillimeters(2), bar is { } meters ? Length.FromMeters(meters) : null)));
}
