using BendMath.Cutting;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Planning;

public sealed class PlanCutsTests
{
    /// <summary>
    /// Two jobs of one bar share its bars; put together by hand, two long blanks and one short one fill a bar that either job alone would
    /// waste.
    /// </summary>
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
        Near.Relative(group.BarCount * 6, group.PieceLength.Meters + group.SawLoss.Meters + group.UsefulOffcuts.Meters + group.Scrap.Meters,
            1e-12, "pieces, saw cuts and offcuts are the bars");
        Near.Relative(group.BarCount * 6 * Workshop.Rim.Properties.MassPerLength(Workshop.Steel.Density).KilogramsPerMeter,
            cuts.BarMassOf(group).Kilograms, 1e-12);
        Assert.Equal([wide, small], cuts.PlansOf(group));
    }

    [Fact]
    public void A_plan_without_a_bar_or_longer_than_one_is_left_out_and_says_why()
    {
        PlanCuts cuts =
            PlanCuts.For([Plan("no bar", 250, 1, null), Plan("short bar", 250, 1, 1), Plan("good", 250, 1, 6)], Length.Zero,
                TestContext.Current.CancellationToken);
        Assert.Equal(["no bar: no length of bar is given", "short bar: the blank is longer than a bar"], cuts.LeftOut);
        Assert.Equal("good", Assert.Single(cuts.Plans).Job.Name);
        PlanCuts none = PlanCuts.For([Plan("no bar", 250, 1, null)], Length.Zero, TestContext.Current.CancellationToken);
        Assert.Null(none.List);
        Assert.Equal("no bar: no length of bar is given", none.ToString());
        Assert.Throws<ArgumentException>("group", () => none.BarMassOf(cuts.List!.Groups[0]));
    }

    /// <summary>
    /// 40 × 20 mm of steel weighs 6 m · 6.28 kg/m = 37.7 kg a bar, 10 × 5 mm 2.36 kg (area times 7.85 kg/dm³, by hand): the second is not
    /// cut from the first for having its name.
    /// </summary>
    [Fact]
    public void Drawn_bars_of_one_name_and_different_size_are_not_cut_from_one_bar()
    {
        RingPlan thin = Plan("thin trim", 300, 1, 6, Trim(10, 5)), thick = Plan("thick trim", 500, 1, 6, Trim(40, 20));
        PlanCuts cuts = PlanCuts.For([thin, thick], Length.Zero, TestContext.Current.CancellationToken);
        Assert.Equal([2.355, 37.68], cuts.List!.Groups.Select(group => Math.Round(cuts.BarMassOf(group).Kilograms, 6)));
        Assert.Equal([thin], cuts.PlansOf(cuts.List.Groups[0]));
        Assert.Equal([thick], cuts.PlansOf(cuts.List.Groups[1]));
        Assert.Equal(2, cuts.List.Groups.Select(group => group.Name).Distinct(StringComparer.Ordinal).Count());

        static OrientedSection Trim(double width, double height) =>
            new CustomBar("edge trim", new FlatBar(Length.FromMillimeters(width), Length.FromMillimeters(height)).HardWay.Outline).AsDrawn;
    }

    [Fact]
    public void Sharp_and_filleted_angles_are_not_cut_from_one_bar_and_two_ways_to_lie_are()
    {
        EqualAngle sharp = Angle(AngleFillets.Sharp),
            filleted = Angle(AngleFillets.Of(Length.FromMillimeters(7), Length.FromMillimeters(3.5)));
        PlanCuts cuts = PlanCuts.For(
            [Plan("sharp", 400, 1, 6, sharp.FlangeOut), Plan("filleted", 400, 1, 6, filleted.FlangeOut),
                Plan("sharp, flange in", 400, 1, 6, sharp.FlangeIn)],
            Length.Zero,
            TestContext.Current.CancellationToken);
        Assert.Equal([2, 1], cuts.List!.Groups.Select(group => cuts.PlansOf(group).Count));

        static EqualAngle Angle(AngleFillets fillets) => new(Length.FromMillimeters(50), Length.FromMillimeters(5), fillets);
    }

    [Fact]
    public void More_pieces_than_a_list_takes_are_refused_as_what_the_plans_ask_for() => Assert.Contains(
        "plans must ask for at most 5,000 pieces in all, but is 5001",
        Assert.Throws<ArgumentOutOfRangeException>("plans",
            () =>
                PlanCuts.For([Plan("a", 250, 5000, 6), Plan("b", 250, 1, 6)], Length.Zero, TestContext.Current.CancellationToken)).Message,
        StringComparison.Ordinal);

    private static RingPlan Plan(string name, double wanted, int quantity, double? bar, OrientedSection? section = null) =>
        RingPlan.For(new RingJob(
        name,
        section is null ? Workshop.RimSteel : BendAnalysis.Of(section, Workshop.Steel),
        new(Workshop.Inside(wanted), ArcExtent.FullRing, quantity),
        new(Workshop.Rack, new WrapBending()),
        new(EndAllowance.None, Length.FromMillimeters(2), bar is { } meters ? Length.FromMeters(meters) : null)));
}
