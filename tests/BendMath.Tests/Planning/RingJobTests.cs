using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Learning;
using BendMath.Lengths;
using BendMath.Stock.Tolerances;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Planning;

/// <summary>What contradicts itself is no job; a job has a plan.</summary>
public sealed class RingJobTests
{
    private static readonly RingJob Wrapped = Of(new WrapBending());

    private static readonly DieRack Mates = new([Workshop.Die("B", 250), Pair("P", 250)]);

    [Fact]
    public void The_same_job_with_another_yield_is_one_expression_that_is_checked()
    {
        RingJob harder = Wrapped.WithMaterial(Wrapped.Analysis.Material.WithYield(Pressure.FromMegapascals(320)));
        Assert.Equal(320, harder.Analysis.Law.YieldStress.Megapascals, 1e-9);
        Assert.Equal(290, Wrapped.Analysis.Law.YieldStress.Megapascals, 1e-9);
        Assert.Same(Wrapped.Bender, harder.Bender);
        Assert.True(RingPlan.For(harder).Ring!.Free.InsideDiameter > RingPlan.For(Wrapped).Ring!.Free.InsideDiameter);

        RingJob ranged = Wrapped.WithMaterial(Workshop.Mild(290, Workshop.Range(235, 360)));
        Assert.Equal(Workshop.Range(235, 360), ranged.Scatter.Yield);
        Assert.Null(ranged.WithMaterial(Workshop.Steel).Scatter.Yield);
        RingJob strict = ranged.With(scatter: ranged.Scatter);
        Assert.StartsWith("scatter must have a yield range about the yield",
            Refused("scatter", () => strict.WithMaterial(Workshop.Mild(400, Workshop.Range(380, 420)))), StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_are_changed_one_by_one_and_checked()
    {
        RingJob three =
            Wrapped.With(name: "hoop", wanted: Wrapped.Wanted.With(quantity: 3),
                cutting: Wrapped.Cutting.With(barLength: Length.FromMeters(6)));
        Assert.Equal("hoop", three.Name);
        Assert.Equal(3, three.Wanted.Quantity);
        Assert.Equal(6, three.Cutting.BarLength!.Value.Meters);
        Assert.Equal(Wrapped.Cutting.Kerf, three.Cutting.Kerf);
        Assert.Throws<ArgumentOutOfRangeException>("quantity", () => Wrapped.Wanted.With(quantity: 0));
        Assert.Throws<ArgumentException>("cutStyle", () => Wrapped.Cutting.With(cutStyle: LengthStyle.Millimeters(0)));
        Assert.Throws<ArgumentException>("correction", () => Calibration.None.With(correction: HypothesisKind.Stroke));
        Assert.Throws<ArgumentOutOfRangeException>("wanted",
            () => Wrapped.With(wanted: new(BendRadius.Outside(Length.FromMillimeters(20)), ArcExtent.FullRing)));
        Assert.Throws<ArgumentOutOfRangeException>("unsupportedLength",
            () => Wrapped.Distortion.Support.With(unsupportedLength: Length.Zero));
    }

    [Fact]
    public void A_stroke_scatters_only_where_there_is_one()
    {
        InputVariation stroke = new(stroke: Length.FromMillimeters(0.2));
        Assert.Equal(
            "scatter must not name a stroke for wrap bending, which has none, but names 0.2 mm. (Parameter 'scatter')",
                Refused("scatter", () => Wrapped.With(scatter: stroke)));
        Assert.NotNull(RingPlan.For(Of(new IncrementalThreePointBending(Workshop.Bender)).With(scatter: stroke)).Ring);

        // What decides is the model the plan rests on: a ring may tell that the bar was pinched after all, or that it was not.
        RingJob told = Of(new WrapBending(Workshop.Bender), [Measured("B", 240)], HypothesisKind.Stroke);
        Assert.NotNull(RingPlan.For(told.With(scatter: stroke)).Ring);
        RingJob not = Of(new IncrementalThreePointBending(Workshop.Bender), [Measured("B", 240)], HypothesisKind.ReferenceFace);
        Assert.Contains("a stroke for wrap bending", Refused("scatter", () => not.With(scatter: stroke)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pair_has_no_stroke()
    {
        RingJob pair = Of(new PairBending(), rack: Mates);
        Assert.Contains("a stroke for closing a die pair",
            Refused("scatter", () => pair.With(scatter: new(stroke: Length.FromMillimeters(0.2)))), StringComparison.Ordinal);
        Assert.NotNull(RingPlan.For(pair).Ring);
    }

    [Fact]
    public void The_mill_tolerance_is_that_of_the_bar()
    {
        FlatBar other = new(Length.FromMillimeters(40), Length.FromMillimeters(5));
        Assert.Contains("must hold the mill tolerance of the bar that is bent",
            Refused("scatter", () => Wrapped.With(scatter: new(mill: MillTolerance.En10058(other)))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_ratio_needs_a_ring_the_model_can_form()
    {
        MeasuredRing tiny = new(Workshop.Die("tiny", 60), Workshop.RimSteel, Workshop.Inside(240), Release.Free);
        Assert.Contains(
            "by the curvature ratio it does not: a curvature ratio does not explain it: incremental three-point bending cannot use die tiny",
            Refused("calibration", () => Of(new IncrementalThreePointBending(Workshop.Bender), [tiny], HypothesisKind.CurvatureRatio)),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(HypothesisKind.ReferenceFace, 300, "wrapping does not explain it")]
    [InlineData(HypothesisKind.Stroke, 20, "pinching does not explain it")]
    [InlineData(HypothesisKind.CurvatureRatio, 90, "would fit only with a curvature ratio")]
    public void A_correction_explains_its_ring(HypothesisKind kind, double measured, string why) =>
        Assert.Contains(why, Refused("calibration", () => Of(new WrapBending(Workshop.Bender), [Measured("B", measured)], kind)),
            StringComparison.Ordinal);

    [Fact]
    public void A_stroke_corrects_only_where_the_bender_is_known() => Assert.StartsWith(
        "calibration must come with the half-span and nose of the bender where it corrects by the stroke, but wrap bending has none.",
        Refused("calibration", () => Of(new WrapBending(), [Measured("B", 240)], HypothesisKind.Stroke)),
        StringComparison.Ordinal);

    [Fact]
    public void Rings_on_a_die_without_a_mate_correct_no_pair()
    {
        string refused =
            Refused("calibration",
                () => Of(new PairBending(), [Measured("B", 240), Measured("B", 242)], HypothesisKind.CurvatureRatio, Mates));
        Assert.Contains("must explain at least one of its rings, but by the curvature ratio it explains none", refused,
            StringComparison.Ordinal);
        Assert.Contains("it has no mating face", refused, StringComparison.Ordinal);
        Assert.NotNull(RingPlan.For(Of(new PairBending(), [Measured("B", 240), Measured("B", 242)], rack: Mates)).Ring);
    }

    [Fact]
    public void A_ring_is_not_closed_over_a_tenth_of_itself()
    {
        WantedRing closed = Wrapped.Wanted.With(joint: JointPreparation.CutTogether(Length.Zero));
        Assert.Contains(
            "must have a saw cut of less than a tenth of the ring that is closed",
            Refused("cutting", () => Wrapped.With(wanted: closed, cutting: Wrapped.Cutting.With(kerf: Length.FromMillimeters(200)))),
            StringComparison.Ordinal);
        Assert.Contains("must have a root opening of less than a tenth",
            Refused("wanted", () => Wrapped.With(wanted: closed.With(joint: JointPreparation.CutTogether(Length.FromMillimeters(200))))),
                StringComparison.Ordinal);

        // A ring that is wanted wide enough may come off a die too tight for the cut: the plan says so and goes on.
        RingJob wide = Wrapped.With(
            wanted: closed.With(radius: Workshop.Inside(800)), bender: new(new DieRack([Workshop.Die("A", 200)]), new WrapBending()),
                cutting: Wrapped.Cutting.With(kerf: Length.FromMillimeters(200)));
        RingPlan plan = RingPlan.For(wide);
        Assert.Null(plan.Ring!.Closure);
        Assert.Contains(plan.Advisories, advisory => advisory.Code == "no-closure");
    }

    /// <summary>
    /// A hexagon whose stiffest ring is all but straight: the stiffer the bar may be, the wider the ring, until no length says how wide.
    /// </summary>
    [Theory]
    [InlineData(760, false)]
    [InlineData(785, true)]
    public void A_bar_that_may_spring_straight_has_a_plan_that_says_so(double hardest, bool straight)
    {
        OrientedSection section = new HexagonBar(Length.FromMillimeters(23.756)).OnCorner;
        BarMaterial spring = new(
            "spring alloy (invented)",
            new PerfectlyPlastic(Pressure.FromGigapascals(70), Pressure.FromMegapascals(671.5)),
            Density.FromKilogramsPerCubicMeter(2800),
            yieldRange: Workshop.Range(570, hardest));
        Assert.Equal(straight, Plan(spring).Advisories.Any(advisory => advisory.Code == "may-spring-straight"));

        // Down to the last digits before the bar stays elastic on this die, every job has a plan. A symmetric bar that stays elastic is
        // bent about its middle.
        double half = section.Depth.Millimeters / 2;
        double limit = 70e3 * half / (1228.7 + half);
        List<string?> notes = [];
        for (double less = 0.03; less > 1e-3; less /= 1.02)
        {
            RingPlan plan = Plan(new(spring.Name, spring.Law, spring.Density, yieldRange: Workshop.Range(570, limit * (1 - less))));
            Assert.Equal(plan.Ring!.Range.MaySpringStraight, plan.Advisories.Any(advisory => advisory.Code == "may-spring-straight"));
            Assert.Equal(plan.Ring.Range.InsideDiameter is null, plan.Ring.Range.MaySpringStraight);
            notes.Add(plan.Ring.Range.Note);
        }

        Assert.Contains(notes, note => note is null);
        Assert.Contains(notes, note => note?.EndsWith("the bar springs back nearly straight", StringComparison.Ordinal) == true);
        Assert.Contains(notes, note => note?.EndsWith("the bar springs back straight", StringComparison.Ordinal) == true);

        RingPlan Plan(BarMaterial material) => RingPlan.For(new RingJob(
            "hoop",
            BendAnalysis.Of(section, material),
            new(BendRadius.Inside(Length.FromMillimeters(3000)), ArcExtent.FullRing),
            new(new DieRack([Workshop.Die("wide", 1228.7)]), new WrapBending()),
            new(EndAllowance.None, Length.Zero)));
    }

    [Fact]
    public void A_job_is_planned_without_counting_a_million_blanks()
    {
        RingPlan plan =
            RingPlan.For(
                Wrapped.With(cutting: Wrapped.Cutting.With(barLength: Length.FromKilometers(1000)),
                    wanted: Wrapped.Wanted.With(arc: ArcExtent.Of(Angle.FromDegrees(1e-3)))));
        Assert.Null(plan.Ring!.Bar);
        Assert.Contains(plan.Advisories, advisory => advisory.Code == "bar-not-counted");
        Assert.True(plan.Ring.Check.Rise > Length.Zero);
    }

    [Theory]
    [InlineData("hoop\u001b[31m", "001B")]
    [InlineData("two\nlines", "000A")]
    [InlineData("\0", "0000")]
    [InlineData("two\u2028lines", "2028")]
    public void A_name_is_one_line_that_steers_no_terminal(string name, string found)
    {
        Assert.Contains($"must be one line of printable characters, but holds U+{found}", Refused("name", () => Wrapped.With(name: name)),
            StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(nameof(name), () => Workshop.Die(name, 250));
        Assert.Throws<ArgumentException>(nameof(name), () => new BarMaterial(name, Workshop.Steel.Law, Workshop.Steel.Density));
    }

    [Fact]
    public void A_plan_is_of_a_job() => Assert.Throws<ArgumentNullException>("job", () => RingPlan.For(null!));

    private static string Refused(string parameter, Func<RingJob> make)
    {
        ArgumentException refused = Assert.ThrowsAny<ArgumentException>(make);
        Assert.Equal(parameter, refused.ParamName);
        return refused.Message;
    }

    private static RingJob Of(FormingModel model, MeasuredRing[]? rings = null, HypothesisKind? correction = null, DieRack? rack = null) =>
        new(
        "planter rim",
        Workshop.RimSteel,
        new(Workshop.Inside(260), ArcExtent.FullRing),
        new(rack ?? Workshop.Rack, model),
        new(EndAllowance.None, Length.FromMillimeters(2)),
        calibration: new(rings ?? [], correction));

    private static MeasuredRing Measured(string die, double inside) =>
        new(Workshop.Rack.Find(die)!, Workshop.RimSteel, Workshop.Inside(inside), Release.Free);

    private static Die Pair(string name, double stamp) => new(
        name, Length.FromMillimeters(stamp), ReferenceFace.InsideOfBar,
            mate: MatingDie.OfSupports(Length.FromMillimeters(120), Length.FromMillimeters(20), Length.Zero));
}
