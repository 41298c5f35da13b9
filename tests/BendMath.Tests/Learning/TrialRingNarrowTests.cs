using BendMath.Learning;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>
/// Which further ring narrows the interval at the wanted ring most: checked by adding a ring that lies where the fit says.
/// </summary>
public sealed class TrialRingNarrowTests
{
    private static readonly BendRadius Wanted = Workshop.Inside(225);

    [Fact]
    public void One_more_ring_where_the_fit_says_gives_the_predicted_width()
    {
        RingFit fit = Line();
        TrialRing next = TrialRing.ToNarrow(fit, Workshop.Rack, Wanted, Release.Free);
        double before = Width(fit);
        Near.Relative(before, next.IntervalWidth!.Value.Millimeters, 1e-4, "width before");
        (double intercept, double slope) =
            MathNet.Numerics.Fit.Line([.. fit.Rings.Select(ring => ring.RadiusOverDepth)], [.. fit.Rings.Select(ring => ring.LogRatio)]);
        foreach (TrialRingOption option in next.Options)
        {
            double y = intercept + slope * Shop.Variable(option.Die);
            MeasuredRing[] more = [.. fit.Rings.Select(ring => ring.Ring), Shop.Ring(option.Die, Workshop.RimSteel, y)];

            // That ring lies on the line, so it adds a degree of freedom but no scatter: put the scatter back.
            RingFit after = RingFit.Of(more, Workshop.RimSteel, Shop.Wrap, line: true);
            double scatter = fit.Scatter!.Value / after.Scatter!.Value;
            Near.Relative(Width(after) * scatter, option.IntervalWidth!.Value.Millimeters, 2e-3, option.Die.Name);
            Assert.True(option.IntervalWidth.Value.Millimeters < before);
        }

        Assert.Equal(next.Options.Min(option => option.IntervalWidth!.Value.Millimeters), next.Best!.IntervalWidth!.Value.Millimeters,
            1e-9);
        Assert.Equal("A", next.Best.Die.Name);
        Assert.StartsWith("Bend the next test ring on die A: the interval at the wanted ring, ", next.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void For_one_ratio_every_die_narrows_alike_and_the_nearest_is_taken()
    {
        TrialRing next =
            TrialRing.ToNarrow(RingFit.Of(Shop.Rings(("B", 0.1), ("C", 0.11), ("C", 0.09)), Workshop.RimSteel, Shop.Wrap), Workshop.Rack,
                Workshop.Inside(280), Release.Free);
        Assert.Single(next.Options.Select(option => Math.Round(option.IntervalWidth!.Value.Millimeters, 6)).Distinct());
        Assert.Equal("C", next.Best!.Die.Name);
        Assert.EndsWith("; the other dies would narrow it as much, this one is nearest to the wanted ring.", next.Sentence,
            StringComparison.Ordinal);
    }

    [Fact]
    public void After_one_ring_a_second_gives_the_first_interval()
    {
        TrialRing next =
            TrialRing.ToNarrow(RingFit.Of(Shop.Rings(("B", 0.1)), Workshop.RimSteel, Shop.Wrap), Workshop.Rack, Workshop.Inside(280),
                Release.Free);
        Assert.Null(next.IntervalWidth);
        Assert.Equal("No interval is known yet: bend one more ring, best on die C, whose ring comes nearest to the wanted one.",
            next.Sentence);
    }

    private static RingFit Line() => RingFit.Of(
        [.. new[] { ("C", 0.0012), ("C", -0.001), ("D", 0.0015), ("B", -0.002), ("D", 0.0005) }
            .Select(one => Shop.Ring(Shop.Die(one.Item1), Workshop.RimSteel, 0.02 * Shop.Variable(Shop.Die(one.Item1)) + one.Item2))],
        Workshop.RimSteel,
        Shop.Wrap,
        line: true);

    /// <summary>
    /// Width of the interval on the die that leaves the wanted ring by the line carried on to it, found by trying stamps.
    /// </summary>
    private static double Width(RingFit fit)
    {
        Length? stamp = fit.Model.StampFor(Workshop.RimSteel, Wanted, Release.Free, ReferenceFace.InsideOfBar);
        LengthRange range = fit.Forecast(new("made", stamp!.Value, ReferenceFace.InsideOfBar), Release.Free).Interval!;
        return (range.High - range.Low).Millimeters;
    }
}
