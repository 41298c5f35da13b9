using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

public sealed class DieChoiceTests
{
    public static TheoryData<string, Release> Cases { get; } = new()
    {
        { "wrap", Release.Free }, { "wrap", Release.HeldFlat }, { "pinch", Release.Free }, { "pinch", Release.HeldFlat },
        { "tighter", Release.Free }, { "tighter", Release.HeldFlat }, { "looser", Release.Free }, { "looser", Release.HeldFlat },
        { "face", Release.Free },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_best_die_is_the_nearest_and_the_pair_brackets_the_wanted_ring(string kind, Release release)
    {
        DieChoice choice = Choose(kind, release, WantedBetween(kind, release, 0.4));
        double[] differences = [.. choice.Predictions.Select(outcome => outcome.Difference!.Value.Millimeters)];
        Assert.Equal(4, differences.Length);
        Assert.Equal(differences.Order(), differences);
        Assert.Equal(differences.Min(Math.Abs), Math.Abs(choice.Best!.Difference!.Value.Millimeters));
        Assert.Equal("B", choice.Best.Die.Name);
        Assert.Equal("B", choice.NextTighter!.Die.Name);
        Assert.Equal("C", choice.NextWider!.Die.Name);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_ideal_stamp_leaves_the_wanted_ring(string kind, Release release)
    {
        BendRadius wanted = WantedBetween(kind, release, 0.7);
        DieChoice choice = Choose(kind, release, wanted);
        Assert.NotNull(choice.IdealStampedRadius);
        Assert.InRange(choice.IdealStampedRadius.Value.Millimeters, 250, 300);
        Die ideal = new("ideal", choice.IdealStampedRadius.Value, choice.Best!.Die.Face);
        Assert.Equal(wanted.Value.Millimeters, Model(kind).Form(Workshop.RimSteel, ideal).RingWhen(release).InsideRadius.Millimeters, 1e-6);
    }

    [Fact]
    public void A_ring_the_die_leaves_exactly_counts_as_tight_enough()
    {
        BendRadius wanted =
            BendRadius.Inside(new WrapBending().Form(Workshop.RimSteel, Workshop.Rack.Find("C")!).RingWhen(Release.Free).InsideRadius);
        DieChoice choice = Choose("wrap", Release.Free, wanted);
        Assert.Equal("C", choice.Best!.Die.Name);
        Assert.Equal("C", choice.NextTighter!.Die.Name);
        Assert.Equal("D", choice.NextWider!.Die.Name);
        Assert.Equal(300, choice.IdealStampedRadius!.Value.Millimeters, 1e-6);
    }

    [Fact]
    public void The_difference_is_measured_to_the_line_that_was_asked_for()
    {
        BendRadius outside = BendRadius.Outside(Length.FromMillimeters(330));
        DiePrediction outcome = DieChoice.For(Workshop.Rack, Workshop.RimSteel, outside, new WrapBending(), Release.Free).Predictions[1];
        Assert.Equal(outcome.Ring!.OutsideRadius.Millimeters - 330, outcome.Difference!.Value.Millimeters, 1e-9);
    }

    [Fact]
    public void A_die_that_leaves_no_ring_says_why()
    {
        DieRack rack = new([Workshop.Die("tiny", 20, ReferenceFace.OutsideOfBar), Workshop.Die("vast", 60_000)]);
        DieChoice choice = DieChoice.For(rack, Workshop.RimSteel, Workshop.Inside(300), new WrapBending(), Release.Free);
        Assert.Null(choice.Best);
        Assert.Null(choice.NextTighter);
        Assert.Null(choice.NextWider);
        Assert.Equal("the stamp leaves no inside radius for this bar", choice.Predictions[0].Refusal);
        Assert.Equal("the bar springs back straight", choice.Predictions[1].Refusal);
        Assert.Equal("no die leaves a ring", choice.ToString());
        Assert.NotNull(choice.IdealStampedRadius);
    }

    [Fact]
    public void A_die_inside_the_span_of_the_bender_is_refused_by_pinching()
    {
        DieChoice choice =
            DieChoice.For(new DieRack([Workshop.Die("narrow", 120)]), Workshop.RimSteel, Workshop.Inside(300), Model("pinch"),
                Release.Free);
        Assert.Contains("half-span", choice.Predictions[0].Refusal!, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Model("pinch").Form(Workshop.RimSteel, Workshop.Die("narrow", 120)));
    }

    /// <summary>
    /// The die to make is given by the face the bar lies on, in the sense of the model, whatever the stamp is taken to mean.
    /// </summary>
    [Theory]
    [InlineData("wrap")]
    [InlineData("face")]
    public void The_inside_face_to_machine_is_the_loaded_radius_of_wrapping(string kind)
    {
        BendRadius wanted = Workshop.Inside(262);
        DieChoice choice = Choose(kind, Release.Free, wanted);
        Assert.Equal(Workshop.RimSteel.LoadedFor(wanted, Release.Free).InsideRadius.Millimeters,
            choice.IdealInsideFaceRadius!.Value.Millimeters, 1e-6);
        Length offset = choice.Model.FaceOf(Workshop.Die("any", 200)).OffsetFor(Workshop.Rim);
        Assert.Equal(kind == "face", offset > Length.Zero);
        Assert.Equal((choice.IdealInsideFaceRadius.Value + offset).Millimeters, choice.IdealStampedRadius!.Value.Millimeters, 1e-9);
    }

    /// <summary>The reasons lie with the wanted ring, not with a die nobody has: no trial die is blamed.</summary>
    [Theory]
    [InlineData("wrap", 0.5)]
    [InlineData("wrap", 0.001)]
    [InlineData("pinch", 0.5)]
    [InlineData("tighter", 0.5)]
    [InlineData("wrap", 1e6)]
    [InlineData("wrap", 9e8)]
    public void A_lawful_wanted_ring_of_any_size_is_answered(string kind, double inside)
    {
        DieChoice choice = Choose(kind, Release.Free, Workshop.Inside(inside));
        Assert.NotNull(choice.Best);
        Assert.True(
            choice.Ideal is null
                || choice.Ideal.RingWhen(Release.Free).InsideRadius.Millimeters is var found && Math.Abs(found / inside - 1) < 1e-6);
    }

    private static FormingModel Model(string kind) => kind switch
    {
        "wrap" => new WrapBending(),
        "pinch" => new IncrementalThreePointBending(Workshop.Bender),
        "tighter" => From(235, HypothesisKind.CurvatureRatio),
        "looser" => From(280, HypothesisKind.CurvatureRatio),
        _ => From(235, HypothesisKind.ReferenceFace),
    };

    private static FormingModel From(double measured, HypothesisKind kind) => RingDiagnosis.Of(
        new MeasuredRing(Workshop.Rack.Find("B")!, Workshop.RimSteel, Workshop.Inside(measured), Release.Free), new WrapBending())
            .Find(kind)!.Model!;

    private static DieChoice Choose(string kind, Release release, BendRadius wanted) =>
        DieChoice.For(Workshop.Rack, Workshop.RimSteel, wanted, Model(kind), release);

    /// <summary>A ring between those dies B and C leave.</summary>
    private static BendRadius WantedBetween(string kind, Release release, double share)
    {
        double[] rings =
            [.. new[] { "B", "C" }.Select(name => Model(kind).Form(Workshop.RimSteel, Workshop.Rack.Find(name)!).RingWhen(release).InsideRadius.Millimeters)];
        return Workshop.Inside(rings[0] + share * (rings[1] - rings[0]));
    }
}
