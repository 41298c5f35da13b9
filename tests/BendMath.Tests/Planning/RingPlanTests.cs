using BendMath.Evidence;
using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Measurement;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Planning;

/// <summary>Plans of the invented workshop.</summary>
public sealed class RingPlanTests
{
    private static readonly FormingModel Pinching = new IncrementalThreePointBending(Workshop.Bender);

    [Fact]
    public void A_plan_without_a_measured_ring_says_so()
    {
        RingPlan plan = RingPlan.For(Job(new WrapBending()));
        Assert.Contains(plan.Advisories, advisory => advisory.Code == "no-measured-ring");
        Assert.Null(plan.UsedRing);
        Assert.Empty(plan.Corrections);
        Assert.Same(plan.Job.Bender.Model, plan.Model);
        Assert.Equal("no range: the yield of mild steel is given as one number, and nothing else is said to scatter",
            plan.Ring!.Range.Note);
        Assert.Null(plan.Ring.Range.InsideDiameter);
    }

    [Fact]
    public void A_measured_ring_nobody_asked_to_use_is_pointed_out()
    {
        RingPlan plan = RingPlan.For(Job(new WrapBending(), measured: Measured("B", 262)));
        Assert.Contains(plan.Advisories, advisory => advisory.Code == "measured-ring-unused");
        Assert.Contains(plan.Advisories, advisory => advisory.Code == "no-measured-ring");
        Assert.Single(plan.Corrections);
        Assert.Same(plan.Job.Bender.Model, plan.Model);
    }

    [Theory]
    [InlineData(HypothesisKind.ReferenceFace, 240)]
    [InlineData(HypothesisKind.CurvatureRatio, 240)]
    [InlineData(HypothesisKind.CurvatureRatio, 275)]
    [InlineData(HypothesisKind.Stroke, 240)]
    public void A_correction_makes_the_plan_agree_with_the_measured_ring(HypothesisKind kind, double measured)
    {
        RingPlan plan = RingPlan.For(Job(Pinching, measured: Measured("B", measured), correction: kind));
        Assert.NotNull(plan.UsedRing);
        Assert.Equal(measured, plan.Choice.Predictions.Single(outcome => outcome.Die.Name == "B").Ring!.InsideRadius.Millimeters, 1e-6);
        Assert.DoesNotContain(plan.Advisories, advisory => advisory.Code is "no-measured-ring" or "measured-ring-unused");
        Assert.Equal(plan.Ring!.Prediction.Die.Name != "B", plan.Advisories.Any(advisory => advisory.Code == "extrapolated"));
    }

    [Fact]
    public void A_correction_that_explains_nothing_is_refused()
    {
        ArgumentException refused =
            Assert.Throws<ArgumentException>("calibration",
                () => Job(new WrapBending(), measured: Measured("B", 300), correction: HypothesisKind.ReferenceFace));
        Assert.Contains("wider than the 250 mm stamp", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("correction", () => Job(new WrapBending(), correction: HypothesisKind.Stroke));
    }

    /// <summary>The measured ring of the wanted size decides, not the first one noted.</summary>
    [Fact]
    public void The_nearest_measured_ring_corrects()
    {
        MeasuredRing far = Measured("A", 195);
        MeasuredRing near = Measured("B", 240);
        RingPlan plan = RingPlan.For(Plain(rings: [far, near], correction: HypothesisKind.ReferenceFace));
        Assert.Same(near, plan.UsedRing);
        Assert.Equal(2, plan.Corrections.Count);
    }

    [Fact]
    public void Rings_measured_to_different_faces_are_compared_at_the_inside_of_the_bar()
    {
        MeasuredRing tighter =
            new(Workshop.Rack.Find("A")!, Workshop.RimSteel, BendRadius.Outside(Length.FromMillimeters(262)), Release.Free);
        MeasuredRing near = Measured("B", 240);
        RingPlan plan = RingPlan.For(Plain(rings: [tighter, near], correction: HypothesisKind.ReferenceFace));
        Assert.Same(near, plan.UsedRing);
    }

    /// <summary>Every figure of a plan is the one the members it is built from give.</summary>
    [Fact]
    public void A_plan_holds_what_its_parts_say()
    {
        RingPlan plan = RingPlan.For(Job(Pinching, material: Workshop.Mild(290, Workshop.Range(235, 360))));
        PlannedRing ring = plan.Ring!;
        FormedBend formed = Pinching.Form(plan.Job.Analysis, ring.Prediction.Die);
        Assert.Same(plan.Choice.Best, ring.Prediction);
        Assert.Equal(formed.RingWhen(Release.Free).InsideDiameter.Meters, ring.Free.InsideDiameter.Meters);
        Assert.Equal(formed.RingWhen(Release.HeldFlat).InsideDiameter.Meters, ring.Flattened.InsideDiameter.Meters);
        Assert.True(ring.Free.DishAngle > Angle.Zero);
        Assert.Equal(0, ring.Flattened.DishAngle.Radians);
        Assert.Equal(2 * Math.PI / ring.Free.Curvature.InverseMeters + 0.22, ring.Layout.BlankLength.Meters, 1e-12);
        Assert.Equal(2, ring.Bar!.Pieces);
        Assert.Equal(ring.BlankMass.Kilograms, ring.Layout.MassOf(Workshop.Steel.Density).Kilograms);
        Assert.Equal(formed.Contact!.NoseForce.Newtons, ring.Effort.NoseForce!.Value.Newtons);
        Assert.Null(ring.Effort.HandForce);
        Assert.Equal(Math.Ceiling(ring.Layout.BlankLength.Millimeters), ring.CutLength.Millimeters, 1e-9);
        Assert.Equal(Math.PI * ring.Free.OutsideDiameter.Meters, ring.Check.TapeAroundOutside.Meters, 1e-12);
        Assert.Equal(ring.Free.InsideRadius.Meters, ChordAndRise.RadiusOf(ring.Check.Chord, ring.Check.Rise).Meters, 1e-12);
        Assert.True(ring.Check.RiseChangePerPercent < Length.Zero);
    }

    [Fact]
    public void A_plan_without_a_ring_stays_a_plan()
    {
        RingJob job = Plain();
        RingPlan plan = RingPlan.For(job.With(bender: job.Bender.With(rack: new DieRack([Workshop.Die("vast", 60_000)]))));
        Assert.Null(plan.Ring);
        Assert.EndsWith("no die leaves a ring", plan.ToString(), StringComparison.Ordinal);
    }

    /// <summary>
    /// The longest round chord that fits between the ends of a short arc, or into nine tenths of the diameter: a short one hides the error.
    /// </summary>
    [Theory]
    [InlineData(5)]
    [InlineData(40)]
    [InlineData(90)]
    [InlineData(200)]
    [InlineData(360)]
    public void The_chord_to_check_with_is_the_longest_that_fits(double degrees)
    {
        PlannedRing ring = RingPlan.For(Plain(arc: ArcExtent.Of(Angle.FromDegrees(degrees)))).Ring!;
        double inside = ring.Free.InsideRadius.Millimeters;
        double ends = 2 * inside * Math.Sin(degrees * Math.PI / 360);
        double reach = degrees < 180 ? Math.Min(ends, 1.8 * inside) : 1.8 * inside;
        Assert.InRange(ring.Check.Chord.Millimeters, 0.8 * reach, reach + 1e-9);
        Assert.Equal(degrees < 360, ring.Check.OpeningBetweenEnds is not null);
        Assert.Equal(degrees < 360 ? ends : 0, ring.Check.OpeningBetweenEnds?.Millimeters ?? 0, 1e-9);
    }

    [Theory]
    [InlineData(129, 200, true)]
    [InlineData(200, 129, true)]
    [InlineData(130, 130, false)]
    public void Ends_shorter_than_the_bender_leaves_straight_are_pointed_out(double start, double end, bool advised)
    {
        RingJob job = Plain(model: Pinching, ends: new(Length.FromMillimeters(start), Length.FromMillimeters(end), Length.Zero));
        Assert.Equal(advised, RingPlan.For(job).Advisories.Any(advisory => advisory.Code == "short-ends"));
    }

    [Fact]
    public void A_rack_that_does_not_serve_is_said_first()
    {
        RingPlan far = RingPlan.For(Plain(wanted: 1000));
        Assert.Equal("no-die-serves", far.Advisories[0].Code);
        Assert.False(far.Ring!.Serves);
        RingPlan near = RingPlan.For(Plain(wanted: 257));
        Assert.True(near.Ring!.Serves);
        Assert.DoesNotContain(near.Advisories, advisory => advisory.Code == "no-die-serves");
        RingPlan strict = RingPlan.For(Plain(wanted: 257, tolerance: Length.FromMillimeters(0.01)));
        Assert.False(strict.Ring!.Serves);
        Assert.True(strict.Job.Wanted.IsToleranceGiven);
        Assert.Equal(2 * 257 * 0.02, near.Job.Wanted.Tolerance.Millimeters, 1e-9);
    }

    [Fact]
    public void A_bar_too_short_for_one_blank_is_pointed_out()
    {
        RingPlan plan = RingPlan.For(Plain(bar: Length.FromMeters(1)));
        Assert.Equal(0, plan.Ring!.Bar!.Pieces);
        Assert.Contains(plan.Advisories, advisory => advisory.Code == "bar-too-short");
    }

    /// <summary>What release says reaches the plan, after what matters more.</summary>
    [Fact]
    public void Residual_stress_beyond_flow_reaches_the_plan_as_a_note()
    {
        RingPlan plan = RingPlan.For(Plain());
        Advisory note = Assert.Single(plan.Advisories, advisory => advisory.Code == "residual-beyond-flow");
        Assert.True(note.IsMinor);
        Assert.Same(note, plan.Advisories[^1]);
    }

    /// <summary>Beyond the bar, a stamped face explains nothing; it must not steer a plan.</summary>
    [Theory]
    [InlineData(HypothesisKind.ReferenceFace)]
    [InlineData(HypothesisKind.CurvatureRatio)]
    public void A_correction_that_does_not_fit_is_refused(HypothesisKind kind)
    {
        ArgumentException refused =
            Assert.Throws<ArgumentException>("calibration", () => Job(new WrapBending(), measured: Measured("B", 100), correction: kind));
        Assert.Contains($"by the {Hypothesis.Words(kind)} it does not", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>A radius to the outside is not nearer because its number is.</summary>
    [Fact]
    public void Measured_rings_are_compared_by_their_inside_radius()
    {
        MeasuredRing outside =
            new(Workshop.Rack.Find("A")!, Workshop.RimSteel, BendRadius.Outside(Length.FromMillimeters(262)), Release.Free);
        MeasuredRing inside = Measured("B", 242);
        RingPlan plan = RingPlan.For(Plain(rings: [outside, inside], correction: HypothesisKind.ReferenceFace));
        Assert.Same(inside, plan.UsedRing);
    }

    /// <summary>
    /// Several rings and a curvature ratio: the plan is that of their fit, with the interval and the chances the fit gives by itself.
    /// </summary>
    [Fact]
    public void Several_rings_are_fitted_together()
    {
        MeasuredRing[] rings = [Measured("A", 193), Measured("B", 243), Measured("B", 246), Measured("C", 291), Measured("D", 349)];
        RingPlan plan = RingPlan.For(Plain(rings: rings, correction: HypothesisKind.CurvatureRatio, tolerance: Length.FromMillimeters(10)));
        RingFit fit = RingFit.Of(rings, Workshop.RimSteel, new WrapBending());
        Assert.Equal(fit.Sentences, plan.Fit!.Sentences);
        Assert.Null(plan.UsedRing);
        Assert.Null(plan.TrialToTellApart);
        DiePrediction best = plan.Ring!.Prediction;
        DiePrediction alone = fit.Forecast(best.Die, Release.Free);
        Assert.Equal(alone.Interval, best.Interval);
        Assert.Equal(alone.ChanceWithin(plan.Job.Wanted.Radius, plan.Job.Wanted.Tolerance), best.Chance);
        Assert.Equal(plan.Choice.Predictions.Max(one => one.Chance!.Value.Percent), best.Chance!.Value.Percent, 0.5);
        Assert.Equal(TrialRing.ToNarrow(fit, Workshop.Rack, plan.Job.Wanted.Radius, Release.Free).Sentence, plan.TrialToNarrow!.Sentence);
        Assert.Equal(rings.Length, plan.Model.Evidence.Count);
    }

    /// <summary>One ring that several explanations fit: the plan names the die whose ring would tell them apart.</summary>
    [Fact]
    public void One_ring_asks_for_a_second()
    {
        RingPlan plan = RingPlan.For(Plain(rings: [Measured("B", 243)], correction: HypothesisKind.CurvatureRatio));
        Assert.Null(plan.Fit);
        Assert.Null(plan.TrialToNarrow);
        Assert.Equal(TrialRing.ToTellApart(plan.Corrections[0], Workshop.Rack, Calibration.UsualMeasuringError).Sentence,
            plan.TrialToTellApart!.Sentence);
        Assert.Null(RingPlan.For(Plain()).TrialToTellApart);
    }

    /// <summary>Ends as the model leaves them, a ring cut and closed as the job says.</summary>
    [Fact]
    public void Ends_and_closing_are_those_of_their_parts()
    {
        RingJob plain = Plain(model: Pinching);
        RingJob job = plain.With(
            wanted: plain.Wanted.With(joint: JointPreparation.CutTogether(Length.FromMillimeters(3))),
                cutting: plain.Cutting.With(ends: EndAllowance.FromModel(Length.FromMillimeters(9))));
        PlannedRing ring = RingPlan.For(job).Ring!;
        Assert.Equal(EndAllowance.For(ring.Prediction.Formed!, Length.FromMillimeters(9)), ring.Layout.Ends);
        Assert.Equal(RingClosure.For(ring.Layout, JointPreparation.CutTogether(Length.FromMillimeters(3))).ToString(),
            ring.Closure!.ToString());
        Assert.Contains(RingPlan.For(job).Advisories, advisory => advisory.Code == "welded-ring");
        Assert.DoesNotContain(RingPlan.For(job).Advisories, advisory => advisory.Code == "short-ends");
        Assert.Null(RingPlan.For(Plain()).Ring!.Closure);
        Assert.Contains("must be a full ring",
            Assert.Throws<ArgumentException>("arc", () => job.Wanted.With(arc: ArcExtent.Of(Angle.FromDegrees(90)))).Message,
                StringComparison.Ordinal);
    }

    /// <summary>After the ring is made: twice the inside radius of 260 mm is wanted, within 6 mm, and measured to within 1 mm.</summary>
    [Fact]
    public void A_plan_judges_what_was_made_of_it()
    {
        RingPlan plan = RingPlan.For(Plain(tolerance: Length.FromMillimeters(6)));
        Assert.False(plan.VerdictOn(new(Length.FromMillimeters(530), Length.FromMillimeters(1))).IsWithin);
        Assert.True(plan.VerdictOn(new(Length.FromMillimeters(523), Length.FromMillimeters(1))).IsWithin);
        Assert.Null(plan.VerdictOn(new(Length.FromMillimeters(526.5), Length.FromMillimeters(1))).IsWithin);
    }

    [Fact]
    public void Rings_that_contradict_the_correction_in_use_are_pointed_out()
    {
        FormingModel truth = RingDiagnosis.Of(Measured("B", 238), new WrapBending()).Find(HypothesisKind.CurvatureRatio)!.Model!;
        double second = truth.Form(Workshop.RimSteel, Workshop.Rack.Find("D")!).RingWhen(Release.Free).InsideRadius.Millimeters;
        MeasuredRing[] rings = [Measured("B", 238), Measured("D", second)];
        RingPlan face = RingPlan.For(Plain(rings: rings, correction: HypothesisKind.ReferenceFace));
        Assert.Contains("Use the curvature ratio",
            Assert.Single(face.Advisories, advisory => advisory.Code == "correction-disagrees").Message, StringComparison.Ordinal);
        RingPlan ratio = RingPlan.For(Plain(rings: rings, correction: HypothesisKind.CurvatureRatio));
        Assert.DoesNotContain(ratio.Advisories, advisory => advisory.Code == "correction-disagrees");
        Assert.Equal(2, ratio.Agreements.Count);
    }

    private static RingJob Plain(
        FormingModel? model = null, double wanted = 260, ArcExtent? arc = null, EndAllowance? ends = null, Length? bar = null,
        Length? tolerance = null,
        MeasuredRing[]? rings = null, HypothesisKind? correction = null) => new(
        "planter rim",
        Workshop.RimSteel,
        new(Workshop.Inside(wanted), arc ?? ArcExtent.FullRing, tolerance: tolerance),
        new(Workshop.Rack, model ?? new WrapBending()),
        new(ends ?? EndAllowance.None, Length.FromMillimeters(2), bar),
        calibration: new(rings ?? [], correction));

    private static MeasuredRing Measured(string die, double inside) =>
        new(Workshop.Rack.Find(die)!, Workshop.RimSteel, Workshop.Inside(inside), Release.Free);

    private static RingJob Job(FormingModel model, BarMaterial? material = null, MeasuredRing? measured = null,
        HypothesisKind? correction = null) => new(
        "planter rim",
        BendAnalysis.Of(Workshop.Rim, material ?? Workshop.Steel),
        new(Workshop.Inside(260), ArcExtent.FullRing),
        new(Workshop.Rack, model, new(Length.FromMeters(0.9))),
        new(new EndAllowance(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(20)),
            Length.FromMillimeters(2), Length.FromMeters(4)),
        calibration: new(measured is null ? [] : [measured], correction));
}
