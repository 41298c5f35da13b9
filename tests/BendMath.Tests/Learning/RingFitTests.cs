using System.Globalization;
using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Tests.Forming;
using MathNet.Numerics;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>What several measured rings teach. Invented rings of the invented workshop.</summary>
public sealed class RingFitTests
{
    private static readonly (string, double)[] Scattered = [("A", 0.10), ("B", 0.12), ("C", 0.095), ("D", 0.105), ("B", 0.11)];

    [Fact]
    public void One_ring_gives_its_ratio_and_no_interval_and_says_why()
    {
        RingFit fit = RingFit.Of(Shop.Rings(("B", 0.1)), Workshop.RimSteel, Shop.Wrap);
        Near.Relative(Math.Exp(0.1), fit.Model.Ratio, 1e-9);
        Assert.Null(fit.Scatter);
        Assert.Null(fit.LeaveOneOutError);
        Assert.Contains("One ring shows no scatter, so there is no interval and no chance: bend and measure a second one.", fit.Sentences);
        DiePrediction forecast = fit.Forecast(Shop.Die("C"), Release.Free);
        Assert.Null(forecast.Interval);
        Assert.Null(forecast.Interval);
        Assert.Null(forecast.ChanceWithin(Workshop.Inside(300), Length.FromMillimeters(5)));
        Assert.StartsWith("one measured ring shows no scatter", forecast.IntervalNote, StringComparison.Ordinal);
        Near.Relative(Shop.Ring(Shop.Die("B"), Workshop.RimSteel, 0.1).Ring.InsideRadius.Meters,
            fit.Forecast(Shop.Die("B"), Release.Free).Ring!.InsideRadius.Meters, 1e-9);
    }

    /// <summary>
    /// Mean, standard deviation and t interval of five numbers, by MathNet and the table's t₀.₉₇₅ = 2.776 (from memory), carried back to
    /// the ring.
    /// </summary>
    [Fact]
    public void Several_rings_give_mean_scatter_and_prediction_interval()
    {
        RingFit fit = RingFit.Of(Shop.Rings(Scattered), Workshop.RimSteel, Shop.Wrap, line: false);
        double[] y = [.. Scattered.Select(one => one.Item2)];
        double mean = MathNet.Numerics.Statistics.Statistics.Mean(y);
        double s = MathNet.Numerics.Statistics.Statistics.StandardDeviation(y);
        Near.Relative(Math.Exp(mean), fit.Model.Ratio, 1e-9);
        Near.Relative(s, fit.Scatter!.Value.DecimalFractions, 1e-7);
        Assert.Equal(4, fit.DegreesOfFreedom);
        DiePrediction forecast = fit.Forecast(Shop.Die("C"), Release.Free);
        double reach = 2.776 * s * Math.Sqrt(1.2);
        FinishedRing plain = Shop.Wrap.Form(Workshop.RimSteel, Shop.Die("C")).RingWhen(Release.Free);
        double n = plain.LengthPreservingFiberFromInside.Meters;
        double middle = (plain.InsideRadius.Meters + n) * Math.Exp(-mean);
        Near.Relative(middle - n, forecast.Ring!.InsideRadius.Meters, 1e-9);
        Near.Relative(2 * (middle * Math.Exp(-reach) - n), forecast.Interval!.Low.Meters, 1e-4);
        Near.Relative(2 * (middle * Math.Exp(reach) - n), forecast.Interval.High.Meters, 1e-4);
        Assert.True(forecast.IsIntervalMeasured);
    }

    /// <summary>
    /// The chance of the interval's own limits is the interval's own share, to whichever line the wanted ring is measured.
    /// </summary>
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.95)]
    [InlineData(0.99)]
    public void Chance_and_interval_are_one_thing(double share)
    {
        DiePrediction forecast =
            RingFit.Of(Shop.Rings(Scattered), Workshop.RimSteel, Shop.Wrap, line: false).Forecast(Shop.Die("C"), Release.Free);
        LengthRange range = forecast.IntervalAt(Ratio.FromDecimalFractions(share))!;
        Length middle = (range.Low + range.High) / 2;
        Length half = (range.High - range.Low) / 2;
        Near.Absolute(share, forecast.ChanceWithin(BendRadius.InsideDiameter(middle), half)!.Value.DecimalFractions, 1e-9);
        Length outside = middle + forecast.Ring!.OutsideDiameter - forecast.Ring.InsideDiameter;
        Near.Absolute(share, forecast.ChanceWithin(BendRadius.OutsideDiameter(outside), half)!.Value.DecimalFractions, 1e-9);
        Assert.Equal(1, forecast.ChanceWithin(BendRadius.InsideDiameter(middle), Length.FromMeters(1e3))!.Value.DecimalFractions, 1e-3);
    }

    [Fact]
    public void A_line_is_found_from_rings_enough_and_used_by_the_model()
    {
        double slope = 0.02;
        string[] dies = ["A", "A", "B", "C", "D", "D"];
        double[] noise = [0.001, -0.001, 0.0015, -0.0005, 0.001, -0.002];
        MeasuredRing[] rings =
            [.. dies.Select((name, i) => Shop.Ring(Shop.Die(name), Workshop.RimSteel, 0.05 + slope * Shop.Variable(Shop.Die(name)) + noise[i]))];
        RingFit fit = RingFit.Of(rings, Workshop.RimSteel, Shop.Wrap);
        Assert.True(fit.IsLine);
        Assert.StartsWith("A line in the radius: it predicts each ring from the others to 0.", fit.FormReason, StringComparison.Ordinal);
        (double intercept, double found) =
            Fit.Line([.. fit.Rings.Select(ring => ring.RadiusOverDepth)], [.. fit.Rings.Select(ring => ring.LogRatio)]);
        double at = 9.1;
        Near.Relative(Math.Exp(intercept + found * at), fit.Model.RatioAt(at), 1e-9);
        FormedBend formed = fit.Model.Form(Workshop.RimSteel, Workshop.Die("between", 270));
        Assert.DoesNotContain(formed.Advisories,
            advisory => advisory.Code is "extrapolated" or "outside-measured-radii" or "no-measured-ring");
        Near.Relative(fit.Model.RatioAt(Shop.Variable(Workshop.Die("between", 270))), formed.CurvatureRatio, 1e-12);
        Near.Relative(Math.Exp(intercept + found * 20), fit.Model.RatioAt(20), 1e-9, "carried on");
        Assert.Equal(CurvatureRatioCorrection.MostCredible, fit.Model.RatioAt(1000), 1e-12);
        Assert.Contains(fit.Model.Form(Workshop.RimSteel, Workshop.Die("vast", 700)).Advisories,
            advisory => advisory.Code == "outside-measured-radii");
    }

    [Fact]
    public void Four_rings_or_two_dies_are_not_enough_for_a_line()
    {
        Assert.False(
            RingFit.Of(Shop.Rings(("A", 0.1), ("B", 0.2), ("C", 0.3), ("D", 0.4)), Workshop.RimSteel, Shop.Wrap).IsLine);
        Assert.EndsWith("and there is 1 ring on 1 die.", RingFit.Of(Shop.Rings(("A", 0.1)), Workshop.RimSteel, Shop.Wrap).FormReason,
            StringComparison.Ordinal);
        RingFit twoDies =
            RingFit.Of(Shop.Rings(("A", 0.1), ("B", 0.2), ("A", 0.1), ("B", 0.21), ("B", 0.2), ("A", 0.11)), Workshop.RimSteel, Shop.Wrap);
        Assert.False(twoDies.IsLine);
        Assert.Equal("One ratio for every radius: a line is tried from 5 rings on 3 dies on (a setting), and there are 6 rings on 2 dies.",
            twoDies.FormReason);
        Assert.False(RingFit.Of(Shop.Rings(Scattered), Workshop.RimSteel, Shop.Wrap).IsLine);
        Assert.Throws<ArgumentException>("rings",
            () => RingFit.Of(Shop.Rings(("A", 0.1), ("A", 0.2)), Workshop.RimSteel, Shop.Wrap, line: true));
    }

    [Fact]
    public void The_odd_ring_is_named_and_stays_in_the_fit()
    {
        MeasuredRing[] rings =
            [.. Shop.Rings(Scattered), Shop.Ring(Shop.Die("C"), Workshop.RimSteel, 0.35, note: "Tuesday"),
                .. Shop.Rings(("A", 0.108), ("D", 0.099))];
        RingFit fit = RingFit.Of(rings, Workshop.RimSteel, Shop.Wrap);
        Assert.Equal(6, fit.OddRing!.Number);
        Assert.Equal(8, fit.Rings.Count);
        string said = Assert.Single(fit.Advisories, advisory => advisory.Code == "odd-ring").Message;
        Assert.StartsWith("Look at ring 6 again (", said, StringComparison.Ordinal);
        Assert.Contains(", Tuesday): it lies ", said, StringComparison.Ordinal);
        Assert.Null(RingFit.Of(Shop.Rings(Scattered), Workshop.RimSteel, Shop.Wrap).OddRing);
    }

    /// <summary>Names of dies that were mixed up: the wider the die, the tighter the ring.</summary>
    [Theory]
    [InlineData(0.2, true)]
    [InlineData(0.02, false)]
    public void A_line_by_which_wider_dies_leave_tighter_rings_is_doubted(double slope, bool doubted)
    {
        MeasuredRing[] rings =
            [.. new[] { "A", "B", "B", "C", "D" }.Select((name, i) => Shop.Ring(Shop.Die(name), Workshop.RimSteel, slope * (Shop.Variable(Shop.Die(name)) - 9) + 0.001 * (i % 2)))];
        RingFit fit = RingFit.Of(rings, Workshop.RimSteel, Shop.Wrap);
        Assert.True(fit.IsLine);
        Assert.Equal(doubted,
            fit.Forecast(Shop.Die("D"), Release.Free).Ring!.InsideRadius < fit.Forecast(Shop.Die("A"), Release.Free).Ring!.InsideRadius);
        Assert.Equal(doubted,
            fit.Advisories.Any(
                advisory =>
                    advisory.Code == "wider-die-tighter-ring"
                        && advisory.Message.StartsWith("By this line die D leaves a tighter ring than die A,", StringComparison.Ordinal)));
    }

    /// <summary>
    /// Readings to the nearest mark often agree to the last digit, which leaves no scatter to hold an odd one against; it is odd beyond the
    /// 1 % that counts as agreement.
    /// </summary>
    [Theory]
    [InlineData(0.2, true)]
    [InlineData(0.085, true)]
    [InlineData(0.095, false)]
    public void A_ring_is_odd_where_all_others_agree_to_the_last_digit(double y, bool odd)
    {
        RingFit fit = RingFit.Of(Shop.Rings(("B", 0.1), ("B", 0.1), ("B", y), ("B", 0.1), ("B", 0.1)), Workshop.RimSteel, Shop.Wrap);
        Assert.Equal(odd ? 3 : null, fit.OddRing?.Number);
        if (odd)
        {
            string more =
                string.Create(CultureInfo.InvariantCulture,
                    $"it is {100 * Math.Abs(Math.Exp(y - 0.1) - 1):0.0} % {(y > 0.1 ? "more" : "less")} curved than the others predict, "
                        + $"and they agree to the last digit");
            Assert.Contains(more, Assert.Single(fit.Advisories, advisory => advisory.Code == "odd-ring").Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Rings_of_the_same_bar_speak_for_it_and_wider_groups_only_when_they_are_few()
    {
        BendAnalysis small =
            BendAnalysis.Of(new EqualAngle(Length.FromMillimeters(25), Length.FromMillimeters(3), AngleFillets.Sharp).FlangeOut,
                Workshop.Steel);
        BendAnalysis harder = BendAnalysis.Of(Workshop.Rim, Workshop.Mild(380, null));
        BendAnalysis flat =
            BendAnalysis.Of(new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5)).EasyWay, Workshop.Mild(250, null));
        MeasuredRing[] own = Shop.Rings(("A", 0.1), ("B", 0.11), ("C", 0.12));
        MeasuredRing[] kin = [.. new[] { "A", "B" }.Select(die => Shop.Ring(Shop.Die(die), small, 0.2))];
        MeasuredRing[] stock = [.. new[] { "A", "B" }.Select(die => Shop.Ring(Shop.Die(die), harder, 0.3))];
        MeasuredRing[] other = [.. new[] { "A", "B" }.Select(die => Shop.Ring(Shop.Die(die), flat, 0.4))];

        Check(RingGroup.SameBar, 4, [.. own, .. own[..1], .. kin, .. stock, .. other]);
        Check(RingGroup.SameOrientationAndMetal, 5, [.. own, .. kin, .. stock, .. other]);
        Check(RingGroup.SameStock, 5, [.. own, .. stock, .. other]);
        Check(RingGroup.All, 5, [.. own, .. other]);
        Check(RingGroup.SameBar, 3, own);
        Check(RingGroup.SameOrientationAndMetal, 3, [own[0], .. kin]);

        static void Check(RingGroup group, int count, MeasuredRing[] rings)
        {
            RingFit fit = RingFit.Of(rings, Workshop.RimSteel, Shop.Wrap);
            Assert.Equal(group, fit.Group);
            Assert.Equal(count, fit.Rings.Count);
            Assert.StartsWith($"From {count} measured rings of ", fit.Sentences[0], StringComparison.Ordinal);
            Assert.Equal(group != RingGroup.SameBar, fit.Advisories.Any(advisory => advisory.Code == "wider-group"));
        }
    }

    /// <summary>
    /// Drawn bars of one name have no shape in common, so four rings of the thick one speak for the thin one only as any bar would; its
    /// drawing speaks for a flat as the flat itself.
    /// </summary>
    [Fact]
    public void Rings_are_grouped_by_what_the_bar_is_and_not_by_its_name()
    {
        FlatBar flat = new(Length.FromMillimeters(10), Length.FromMillimeters(5));
        OrientedSection thin = new CustomBar("edge trim", flat.HardWay.Outline).AsDrawn;
        OrientedSection thick =
            new CustomBar("edge trim", new FlatBar(Length.FromMillimeters(40), Length.FromMillimeters(20)).HardWay.Outline).AsDrawn;
        Assert.Equal(thin.ToString(), thick.ToString());
        MeasuredRing[] mixed = [Ring(thick), Ring(thick), Ring(thick), Ring(thick), Ring(thin)];
        Assert.Equal(RingGroup.All, FitFor(thin, mixed).Group);
        Assert.Equal(RingGroup.SameBar, FitFor(thick, mixed).Group);
        MeasuredRing[] thinOnes = [.. Enumerable.Repeat(Ring(thin), 4), Ring(thick)];
        Assert.Equal((RingGroup.SameBar, 4), (FitFor(flat.HardWay, thinOnes).Group, FitFor(flat.HardWay, thinOnes).Rings.Count));
        Assert.StartsWith("From 4 measured rings of flat 10 × 5 mm, hard way", FitFor(flat.HardWay, thinOnes).Sentences[0],
            StringComparison.Ordinal);

        static RingFit FitFor(OrientedSection section, MeasuredRing[] rings) =>
            RingFit.Of(rings, BendAnalysis.Of(section, Workshop.Steel), Shop.Wrap);
        static MeasuredRing Ring(OrientedSection section) => Shop.Ring(Shop.Die("C"), BendAnalysis.Of(section, Workshop.Steel), 0.1);
    }

    [Fact]
    public void Another_bar_metal_or_meaning_of_the_stamp_is_not_predicted_in_silence()
    {
        FormingModel model = RingFit.Of(Shop.Rings(Scattered), Workshop.RimSteel, Shop.Wrap).Model;
        Assert.DoesNotContain(model.Form(Workshop.RimSteel, Workshop.Die("new", 280)).Advisories,
            advisory => advisory.Code == "extrapolated");
        Assert.Contains(model.Form(BendAnalysis.Of(Workshop.Rim, Workshop.Mild(760, null)), Shop.Die("B")).Advisories,
            advisory => advisory.Code == "extrapolated");
        Assert.Contains(model.Form(Workshop.RimSteel, Workshop.Die("B", 250, ReferenceFace.OffsetBy(Length.FromMillimeters(3)))).Advisories,
            advisory => advisory.Code == "extrapolated");
        Assert.Contains(model.Form(Workshop.RimSteel, Workshop.Die("small", 150)).Advisories,
            advisory => advisory.Code == "outside-measured-radii");
    }

    [Fact]
    public void A_ring_the_model_cannot_speak_of_is_left_out_and_named()
    {
        IncrementalThreePointBending pinching = new(Workshop.Bender);
        MeasuredRing narrow = new(Workshop.Die("narrow", 120), Workshop.RimSteel, Workshop.Inside(125), Release.Free);
        RingFit fit = RingFit.Of([narrow, .. Shop.Rings(("B", 0.1))], Workshop.RimSteel, pinching);
        Assert.Single(fit.Rings);
        Assert.Contains("half-span", Assert.Single(fit.LeftOut), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("rings", () => RingFit.Of([narrow], Workshop.RimSteel, pinching));
    }

    [Fact]
    public void Rings_that_agree_to_the_last_digit_show_no_scatter()
    {
        MeasuredRing ring = Shop.Ring(Shop.Die("B"), Workshop.RimSteel, 0.1);
        DiePrediction forecast = RingFit.Of([ring, ring, ring], Workshop.RimSteel, Shop.Wrap).Forecast(Shop.Die("C"), Release.Free);
        Assert.Null(forecast.Interval);
        Assert.StartsWith("the measured rings leave no scatter to see", forecast.IntervalNote, StringComparison.Ordinal);
    }

    /// <summary>The fit's model takes the place of any other in a whole plan.</summary>
    [Fact]
    public void A_whole_plan_runs_on_the_fit()
    {
        RingFit fit = RingFit.Of(Shop.Rings(Scattered), Workshop.RimSteel, Shop.Wrap);
        RingJob job = new(
            "rim",
            Workshop.RimSteel,
            new(BendRadius.InsideDiameter(Length.FromMillimeters(480)), ArcExtent.FullRing),
            new(Workshop.Rack, fit.Model),
            new(new EndAllowance(Length.FromMillimeters(60), Length.FromMillimeters(60), Length.FromMillimeters(4)),
                Length.FromMillimeters(2)));
        RingPlan plan = RingPlan.For(job);
        Assert.Same(fit.Model, plan.Model);
        Near.Relative(fit.Forecast(plan.Ring!.Prediction.Die, Release.Free).Ring!.InsideRadius.Meters, plan.Ring.Free.InsideRadius.Meters,
            1e-12);
        Assert.Contains("5 measured rings", plan.Model.Assumption, StringComparison.Ordinal);
    }
}
