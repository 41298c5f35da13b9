using BendMath.Learning;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>Which second ring tells the explanations of the first apart.</summary>
public sealed class TrialRingTellApartTests
{
    private static readonly RingDiagnosis First = RingDiagnosis.Of(
        new(Shop.Die("B"), Workshop.RimSteel, Workshop.Inside(235), Release.Free), new WrapBending(Workshop.Bender));

    /// <summary>Every pair of predictions, formed one by one, and their least difference.</summary>
    [Fact]
    public void The_recommended_die_has_the_largest_of_the_smallest_differences()
    {
        TrialRing second = TrialRing.ToTellApart(First, Workshop.Rack, Length.FromMillimeters(0.5));
        double[] smallest = [.. Workshop.Rack.Select(die =>
        {
            double[] d =
                [.. First.Hypotheses.Where(e => e.Fits).Select(e => e.Model!.Form(Workshop.RimSteel, die).RingWhen(Release.Free).InsideDiameter.Millimeters)];
            return d.SelectMany((one, i) => d.Skip(i + 1).Select(other => Math.Abs(one - other))).Min();
        })];
        Assert.Equal(4, second.Options.Count);
        Assert.All(second.Options.Zip(smallest),
            pair => Near.Absolute(pair.Second, pair.First.SmallestSeparation!.Value.Millimeters, 1e-9));
        Assert.Equal(smallest.Max(), second.Best!.SmallestSeparation!.Value.Millimeters, 1e-9);
        Near.Absolute(0, second.Options.Single(option => option.Die.Name == "B").SmallestSeparation!.Value.Millimeters, 1e-5,
            "on the measured die they agree");
        Assert.StartsWith(
            $"Bend the second ring on die {second.Best.Die.Name}: the stamped face, the stroke and the curvature ratio predict "
                + $"rings there that differ by at least ", second.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Coarse_measuring_tells_nothing_apart()
    {
        TrialRing second = TrialRing.ToTellApart(First, Workshop.Rack, Length.FromMillimeters(100));
        Assert.Null(second.Best);
        Assert.StartsWith("None of your dies tells the stamped face, the stroke and the curvature ratio apart: at most, on die ",
            second.Sentence, StringComparison.Ordinal);
        Assert.StartsWith("None of your dies",
            TrialRing.ToTellApart(First, new DieRack([Shop.Die("B")]), Length.FromMillimeters(0.5)).Sentence,
            StringComparison.Ordinal);
    }

    [Fact]
    public void With_one_explanation_or_none_there_is_nothing_to_tell_apart()
    {
        RingDiagnosis wide = RingDiagnosis.Of(new(Shop.Die("B"), Workshop.RimSteel, Workshop.Inside(300), Release.Free), Shop.Wrap);
        Assert.Equal(
            "Only the curvature ratio fits this ring: a second ring on another die would confirm it, there is nothing to tell apart.",
            TrialRing.ToTellApart(wide, Workshop.Rack, Length.FromMillimeters(1)).Sentence);
        RingDiagnosis none = RingDiagnosis.Of(new(Shop.Die("B"), Workshop.RimSteel, Workshop.Inside(2000), Release.Free), Shop.Wrap);
        Assert.StartsWith("No explanation fits this ring", TrialRing.ToTellApart(none, Workshop.Rack, Length.FromMillimeters(1)).Sentence,
            StringComparison.Ordinal);
    }
}
