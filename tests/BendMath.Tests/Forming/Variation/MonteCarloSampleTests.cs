using BendMath.Forming.Variation;
using UnitsNet;

namespace BendMath.Tests.Forming.Variation;

public sealed class RingSampleTests(ITestOutputHelper output)
{
    private static readonly int Jobs = TestTier.Cases(plain: 100, full: 500);

    private static readonly Angle Turn = Angle.FromDegrees(360);

    /// <summary>
    /// Two independent ways to the same range, on 500 invented jobs (a plain run: 100) of bars that are sold: every ring drawn at random
    /// lies inside the bounds, evenly drawn or not; and with draws that often stand at the ends of the ranges the rings drawn fill at least
    /// 90 % of the bounds, so that the bounds are not too wide either.
    /// </summary>
    [Fact]
    public void On_invented_jobs_the_rings_drawn_lie_inside_the_bounds_and_fill_nine_tenths_of_them()
    {
        Random random = new(20);
        int most = 0;
        int ranges = 0;
        for (int job = 0; job < Jobs; job++)
        {
            (FormingModel model, BendAnalysis analysis, Die die, InputVariation scatter) = InventedJob.Of(random);
            RingBounds bounds = RingBounds.Of(model, analysis, die, Release.Free, Turn, scatter);
            if (bounds.InsideDiameter is null)
            {
                Assert.Contains("springs back straight", bounds.Note, StringComparison.Ordinal);
                continue;
            }

            ranges++;
            Draw(false, 20);
            double filled = 0;
            for (int draws = 64; draws <= 4096 && filled < 0.9; draws *= 4)
            {
                MonteCarloSample hard = Draw(true, draws);
                filled =
                    Math.Min(Filled(bounds.InsideDiameter, hard.InsideDiameter!), Filled(bounds.DevelopedLength!, hard.DevelopedLength!));
                most = Math.Max(most, draws);
            }

            Assert.True(filled >= 0.9,
                $"job {job}, {model.Name}, {analysis.Section}, {scatter}: the rings drawn fill {filled:P1} of the bounds");

            MonteCarloSample Draw(bool oftenAtTheEnds, int draws)
            {
                MonteCarloSample sample =
                    MonteCarloSample.Of(model, analysis, die, Release.Free, Turn, scatter, draws, job, oftenAtTheEnds,
                        TestContext.Current.CancellationToken);
                Assert.Equal(0, sample.WithoutRing);
                AssertInside(bounds.InsideDiameter, sample.InsideDiameter!, analysis, model);
                AssertInside(bounds.DevelopedLength!, sample.DevelopedLength!, analysis, model);
                return sample;
            }
        }

        output.WriteLine($"{ranges} of {Jobs} jobs have a range; at most {most} draws filled nine tenths of it");
        Assert.True(ranges > 0.9 * Jobs);
    }

    [Fact]
    public void The_same_seed_draws_the_same_rings()
    {
        MonteCarloSample one = Draw(5, TestContext.Current.CancellationToken);
        MonteCarloSample same = Draw(5, TestContext.Current.CancellationToken);
        MonteCarloSample other = Draw(6, TestContext.Current.CancellationToken);
        Assert.Equal(one.InsideDiameter, same.InsideDiameter);
        Assert.NotEqual(one.InsideDiameter, other.InsideDiameter);
        Assert.Equal(5, one.Seed);
    }

    /// <summary>
    /// Only the curvature scatters, evenly between 0.9 and 1.1: how often the ring is within a tolerance, and its quantiles, are known in
    /// closed form. Three standard errors of the draws.
    /// </summary>
    [Fact]
    public void Chances_and_quantiles_are_those_of_an_even_spread()
    {
        BendAnalysis analysis = Workshop.RimSteel;
        Die die = Workshop.Die("B", 250);
        MonteCarloSample sample =
            MonteCarloSample.Of(new WrapBending(), analysis, die, Release.Free, Turn, new(curvature: Ratio.FromPercent(10)), count: 20_000,
                seed: 3, cancel: TestContext.Current.CancellationToken);
        FinishedRing ring = new WrapBending().Form(analysis, die).RingWhen(Release.Free);
        double fiber = ring.BlankLengthFor(Turn).Meters / (2 * Math.PI);

        // Share p of the rings lies below the radius whose curvature is 1.1 − 0.2·p of the nominal one.
        foreach (double share in new[] { 0.05, 0.5, 0.9 })
        {
            double expected = fiber / (1.1 - 0.2 * share) - (fiber - ring.InsideRadius.Meters);
            double error = 3 * Math.Sqrt(share * (1 - share) / 20_000) * fiber * 0.2 / 0.81;
            Near.Absolute(2 * expected, sample.InsideDiameterBelow(Ratio.FromDecimalFractions(share)).Meters, 2 * error,
                $"quantile {share}");
        }

        double tolerance = 0.020;
        double chance = (fiber / (fiber - tolerance / 2) - fiber / (fiber + tolerance / 2)) / 0.2;
        Near.Absolute(chance, sample.ChanceWithin(BendRadius.Inside(ring.InsideRadius), Length.FromMeters(tolerance)).DecimalFractions,
            3 * Math.Sqrt(chance * (1 - chance) / 20_000), "chance");
        Near.Absolute(chance,
            sample.ChanceWithin(BendRadius.OutsideDiameter(ring.OutsideDiameter), Length.FromMeters(tolerance)).DecimalFractions,
                3 * Math.Sqrt(chance * (1 - chance) / 20_000), "chance, outside");
    }

    [Fact]
    public void Draws_can_be_stopped_and_counted()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => Draw(1, stop.Token));
        MonteCarloSample straight = MonteCarloSample.Of(
            new WrapBending(), BendAnalysis.Of(Workshop.Rim, Workshop.Mild(235, null)), Workshop.Die("wide", 14_000), Release.Free, Turn,
            new(Workshop.Range(235, 360)), count: 200,
            cancel: TestContext.Current.CancellationToken);
        Assert.InRange(straight.WithoutRing, 1, 199);
        Assert.Equal(200, straight.Count);
        Assert.Contains("must name at least one input", Assert.Throws<ArgumentException>(() => MonteCarloSample.Of(
            new WrapBending(), Workshop.RimSteel, Workshop.Die("B", 250), Release.Free, Turn, new(),
                cancel: TestContext.Current.CancellationToken)).Message, StringComparison.Ordinal);
    }

    private static MonteCarloSample Draw(int seed, CancellationToken cancel) => MonteCarloSample.Of(
        new WrapBending(), Workshop.RimSteel, Workshop.Die("B", 250), Release.Free, Turn, new(Workshop.Range(235, 360)), count: 100,
            seed: seed, cancel: cancel);

    private static void AssertInside(LengthRange bounds, LengthRange drawn, BendAnalysis analysis, FormingModel model)
    {
        // The search between the ends of a range stops at a part in ten million of the answer.
        double slack = 2e-7 * bounds.High.Meters;
        Assert.True(
            drawn.Low.Meters >= bounds.Low.Meters - slack && drawn.High.Meters <= bounds.High.Meters + slack,
            $"{model.Name}, {analysis.Section}: {drawn} is not inside {bounds}");
    }

    private static double Filled(LengthRange bounds, LengthRange drawn) => (drawn.High - drawn.Low) / (bounds.High - bounds.Low);
}
