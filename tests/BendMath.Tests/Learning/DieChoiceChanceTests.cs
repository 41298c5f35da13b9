using System.Globalization;
using BendMath.Distortion;
using BendMath.Forming.Bumps;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Learning;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>Which die to take, with what chance, and what to change. Invented rings of the invented workshop.</summary>
public sealed class DieChoiceChanceTests
{
    private static readonly BendRadius Wanted = BendRadius.InsideDiameter(Length.FromMillimeters(540));

    private static readonly Length Tolerance = Length.FromMillimeters(5);

    private static readonly MeasuredRing[] Rings = Shop.Rings(("A", 0.1), ("B", 0.12), ("C", 0.095), ("D", 0.105));

    [Fact]
    public void With_measured_rings_the_highest_chance_wins_and_is_named()
    {
        RingFit fit = RingFit.Of(Rings, Workshop.RimSteel, Shop.Wrap);
        DieChoice advice = Advise(fit.Model);
        Assert.Equal("C", advice.Best!.Die.Name);
        Assert.All(advice.Predictions, one => Assert.True(one.IsIntervalMeasured));
        Assert.Equal(advice.Predictions.Max(one => one.Chance!.Value.DecimalFractions), advice.Best.Chance!.Value.DecimalFractions, 1e-12);
        Assert.All(advice.Predictions,
            one =>
                Near.Relative(fit.Forecast(one.Die, Release.Free).ChanceWithin(Wanted, Tolerance)!.Value.DecimalFractions,
                    one.Chance!.Value.DecimalFractions, 1e-12));
        Assert.All(advice.Predictions, one => Assert.Equal(DistortionReport.Of(one.Formed!.Loaded).Level, one.Risk));
        Assert.StartsWith("Take die C: ", advice.Sentences[0], StringComparison.Ordinal);
        Assert.Contains(" of 100 rings; risk of distortion ", advice.Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Without_measured_rings_the_interval_is_that_of_the_yield_range_and_no_chance_is_named()
    {
        BendAnalysis ranged = BendAnalysis.Of(Workshop.Rim, Workshop.Mild(290, Workshop.Range(235, 355)));
        DieChoice advice = DieChoice.For(Workshop.Rack, ranged, Wanted, Shop.Wrap, Release.Free, Tolerance);
        Assert.Equal("B", advice.Best!.Die.Name);
        Assert.All(advice.Predictions, one =>
        {
            Assert.False(one.IsIntervalMeasured);
            Assert.Null(one.Chance);
            Assert.Equal("no measured rings, so no scatter is known", one.ChanceNote);
            LengthRange scan =
                RingBounds.Of(Shop.Wrap, ranged, one.Die, Release.Free, ArcExtent.FullRing.Turn,
                    new(ranged.Material.YieldRange)).InsideDiameter!;
            Assert.Equal(scan, one.Interval);
        });
        Assert.Contains(
            "bounds for yield 235 to 355 MPa, not a measured scatter; no chance can be named: no measured rings, so no scatter is known; ",
                advice.Sentences[0], StringComparison.Ordinal);
        Assert.All(Advise(Shop.Wrap).Predictions, one => Assert.Null(one.Interval));
        Assert.Contains("the yield of mild steel is given as one number", Advise(Shop.Wrap).Sentences[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_die_that_leaves_no_ring_has_neither_chance_nor_risk()
    {
        DieChoice advice = DieChoice.For(
            new DieRack([Workshop.Die("tiny", 20, ReferenceFace.OutsideOfBar), Workshop.Die("vast", 60_000)]), Workshop.RimSteel, Wanted,
                Shop.Wrap, Release.Free, Tolerance);
        Assert.Null(advice.Best);
        Assert.Equal(["No die of the rack leaves a ring."], advice.Sentences);
        Assert.All(advice.Predictions, one => Assert.True(one.Chance is null && one.Risk is null && one.Ring is null));
        Assert.Empty(advice.Changes);
    }

    public static TheoryData<string, double, Release> Strokes() => new()
    {
        { "pinch", 540, Release.Free },
        { "pinch", 600, Release.HeldFlat },
        { "pinch corrected", 540, Release.Free },
        { "pinch line", 600, Release.HeldFlat },
        { "bump", 540, Release.Free },
        { "bump", 620, Release.HeldFlat },
        { "bump corrected", 540, Release.Free },
    };

    /// <summary>The stroke, applied by the model's own means from the outside, leaves the wanted ring.</summary>
    [Theory]
    [MemberData(nameof(Strokes))]
    public void The_stroke_that_is_named_leaves_the_wanted_ring(string kind, double diameter, Release release)
    {
        FormingModel model = Model(kind);
        BendRadius wanted = BendRadius.InsideDiameter(Length.FromMillimeters(diameter));
        DieChoice advice = DieChoice.For(Workshop.Rack, Workshop.RimSteel, wanted, model, release, Tolerance);
        ShopChange change = advice.Changes.Single(one => one.Setting is { IsStroke: true });
        Assert.True(change.Hits, change.Sentence);
        FormingModel plain = model is CurvatureRatioCorrection { Basis: var basis } ? basis : model;
        FormedBend formed = plain is BumpBending bump
            ? bump.FormAtStroke(Workshop.RimSteel, change.Value!.Value)
            : ((IncrementalThreePointBending)plain).FormAtStroke(Workshop.RimSteel, change.Value!.Value);
        formed = model is CurvatureRatioCorrection correction ? correction.Correct(formed)! : formed;
        Near.Relative(diameter, formed.RingWhen(release).InsideDiameter.Millimeters, 1e-7, "diameter");
        Near.Relative(diameter, change.Formed!.RingWhen(release).InsideDiameter.Millimeters, 1e-7, "diameter of the change");
        Assert.StartsWith($"At the setting of die {advice.Best!.Die.Name}, close ", change.Sentence, StringComparison.Ordinal);
    }

    /// <summary>
    /// For the ring a die leaves as it is set, the stroke to set is the one that is set: with the nose the die brings along, and with what
    /// the bender gives.
    /// </summary>
    [Theory]
    [InlineData("pinch", 0)]
    [InlineData("pinch", 180)]
    [InlineData("pinch that gives", 0)]
    [InlineData("pinch that gives", 180)]
    [InlineData("bump", 0)]
    [InlineData("bump", 180)]
    public void The_ring_a_die_leaves_needs_no_other_stroke(string kind, double nose)
    {
        FormingModel model = kind == "pinch that gives"
            ? new IncrementalThreePointBending(
                new(Workshop.Bender.HalfSpan, Workshop.Bender.NoseRadius,
                    Force.FromKilonewtons(1) / Length.FromMillimeters(1)))
            : Model(kind);
        Die die =
            new("own", Length.FromMillimeters(300), ReferenceFace.InsideOfBar, noseRadius: nose > 0 ? Length.FromMillimeters(nose) : null);
        FormedBend formed = model.Form(Workshop.RimSteel, die);
        BendRadius wanted = BendRadius.Inside(formed.RingWhen(Release.Free).InsideRadius);
        ShopChange change =
            ShopChange.For(model, Workshop.RimSteel, die, new DieRack([die]), wanted, Release.Free)
                .Single(one => one.Setting is { IsStroke: true });
        Near.Relative(formed.Contact!.SetStroke.Millimeters, change.Value!.Value.Millimeters, 1e-6, "stroke to set");
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture,
                $"close {formed.Contact.SetStroke.Millimeters:0.00} mm instead of {formed.Contact.SetStroke.Millimeters:0.00} mm, 0.00 "
                    + $"mm "), change.Sentence, StringComparison.Ordinal);
        Near.Relative(wanted.Value.Meters, change.Formed!.RingWhen(Release.Free).InsideRadius.Meters, 1e-6, "ring of the change");
    }

    /// <summary>
    /// A pair closes until it is solid: nothing at the bender changes its ring but shims or another mate, and where its mate stops at the
    /// middle no bar lies on its die.
    /// </summary>
    [Fact]
    public void A_pair_changes_by_shims_or_mate()
    {
        Die pair =
            new("pair", Length.FromMillimeters(300), ReferenceFace.InsideOfBar,
                mate: MatingDie.OfFace(Length.FromMillimeters(500), Length.FromMillimeters(150)));
        ShopChange change =
            Assert.Single(
                ShopChange.For(new PairBending(), Workshop.RimSteel, pair, new DieRack([pair]), Workshop.Inside(250), Release.Free));
        Assert.StartsWith("Die pair, closed with its mate until it is solid, leaves a ring ", change.Sentence, StringComparison.Ordinal);
        Assert.Contains(" but for shims or another mate nothing at the bender makes it tighter: ", change.Sentence,
            StringComparison.Ordinal);
    }

    /// <summary>
    /// Who reads the advice alone is told what carries the prediction beyond what was measured, and what the model is not good for.
    /// </summary>
    [Fact]
    public void The_advice_says_what_is_doubtful_about_the_best_die()
    {
        RingFit fit = RingFit.Of(Rings, Workshop.RimSteel, Shop.Wrap);
        DieChoice far =
            DieChoice.For(new DieRack([Workshop.Die("vast", 700)]), Workshop.RimSteel, Workshop.Inside(700), fit.Model,
                Release.Free, Tolerance);
        Assert.StartsWith("The model leaves an inside radius of ", far.Sentences[1], StringComparison.Ordinal);
        Assert.StartsWith("No measured ring supports \"wrap bending\" in this shop", Advise(Shop.Wrap).Sentences[1],
            StringComparison.Ordinal);
        Assert.StartsWith("Beside it, ", Advise(fit.Model).Sentences[1], StringComparison.Ordinal);
        BendRadius left = BendRadius.Inside(Shop.Wrap.Form(Workshop.RimSteel, Shop.Die("C")).RingWhen(Release.Free).InsideRadius);
        Assert.Contains(" mm inside diameter, as wanted; ",
            DieChoice.For(Workshop.Rack, Workshop.RimSteel, left, Shop.Wrap, Release.Free, Tolerance).Sentences[0],
                StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bump", 0.01)]
    [InlineData("bump", -0.01)]
    [InlineData("bump corrected", 0.01)]
    public void The_feed_that_is_named_leaves_the_wanted_ring(string kind, double share)
    {
        FormingModel model = Model(kind);
        double diameter = model.Form(Workshop.RimSteel, Shop.Die("C")).RingWhen(Release.Free).InsideDiameter.Millimeters * (1 + share);
        BendRadius wanted = BendRadius.InsideDiameter(Length.FromMillimeters(diameter));
        ShopChange change =
            ShopChange.For(model, Workshop.RimSteel, Shop.Die("C"), Workshop.Rack, wanted, Release.Free)
                .Single(one => one.Setting is { IsStroke: false });
        Assert.True(change.Hits, change.Sentence);
        BumpBending plain = (BumpBending)(model is CurvatureRatioCorrection { Basis: var basis } ? basis : model);
        Length stroke = plain.Form(Workshop.RimSteel, Shop.Die("C")).Contact!.Stroke;
        FormedBend formed = new BumpBending(plain.Setup, change.Value!.Value).FormAtStroke(Workshop.RimSteel, stroke);
        formed = model is CurvatureRatioCorrection correction ? correction.Correct(formed)! : formed;
        Near.Relative(diameter, formed.RingWhen(Release.Free).InsideDiameter.Millimeters, 1e-7);
    }

    [Fact]
    public void What_no_stroke_or_feed_reaches_is_said()
    {
        IReadOnlyList<ShopChange> changes =
            ShopChange.For(Model("bump"), Workshop.RimSteel, Shop.Die("C"), Workshop.Rack, Workshop.Inside(9), Release.Free);
        Assert.All(changes, change => Assert.False(change.Hits, change.Sentence));
        Assert.StartsWith("No stroke leaves the wanted ring", changes[0].Sentence, StringComparison.Ordinal);
        Assert.Contains("no feed from 2.6 to 130.0 mm leaves the wanted ring", changes[1].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrapping_changes_by_the_die_only()
    {
        ShopChange tighter =
            Assert.Single(ShopChange.For(Shop.Wrap, Workshop.RimSteel, Shop.Die("C"), Workshop.Rack, Workshop.Inside(290), Release.Free));
        Assert.Equal("B", tighter.OtherDie!.Name);
        Assert.Contains("nothing at the bender makes it tighter: bend over die B, which leaves a ring ", tighter.Sentence,
            StringComparison.Ordinal);
        ShopChange wider =
            Assert.Single(ShopChange.For(Shop.Wrap, Workshop.RimSteel, Shop.Die("D"), Workshop.Rack, Workshop.Inside(500), Release.Free));
        Assert.Null(wider.OtherDie);
        Assert.Contains("there is no die in the rack that leaves a wider one; a die for it would be stamped ", wider.Sentence,
            StringComparison.Ordinal);
        double ideal =
            DieChoice.For(Workshop.Rack, Workshop.RimSteel, Workshop.Inside(500), Shop.Wrap,
                Release.Free).IdealStampedRadius!.Value.Millimeters;
        Assert.EndsWith(FormattableString.Invariant($"stamped {ideal:0.0} mm."), wider.Sentence, StringComparison.Ordinal);
    }

    private static DieChoice Advise(FormingModel model) =>
        DieChoice.For(Workshop.Rack, Workshop.RimSteel, Wanted, model, Release.Free, Tolerance);

    private static FormingModel Model(string kind)
    {
        IncrementalThreePointBending pinching = new(Workshop.Bender);
        BumpBending bumping = new(Workshop.Bender, Length.FromMillimeters(40));
        return kind switch
        {
            "pinch" => pinching,
            "pinch corrected" =>
                RingFit.Of(
                    [.. new[] { ("A", 0.1), ("B", 0.12), ("C", 0.09) }.Select(one => Shop.Ring(Shop.Die(one.Item1), Workshop.RimSteel, one.Item2, pinching))], Workshop.RimSteel, pinching).Model,
            "pinch line" =>
                RingFit.Of(
                    [.. new[] { ("A", 0.1), ("B", 0.13), ("C", 0.15) }.Select(one => Shop.Ring(Shop.Die(one.Item1), Workshop.RimSteel, one.Item2, pinching))], Workshop.RimSteel, pinching, line: true).Model,
            "bump corrected" =>
                RingFit.Of(
                    [.. new[] { ("A", -0.1), ("B", -0.08) }.Select(one => Shop.Ring(Shop.Die(one.Item1), Workshop.RimSteel, one.Item2, bumping))], Workshop.RimSteel, bumping).Model,
            _ => bumping,
        };
    }
}
