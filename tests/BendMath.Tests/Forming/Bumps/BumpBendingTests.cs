using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace BendMath.Tests.Forming.Bumps;

/// <summary>
/// What bump-by-bump bending tends to: small feed, rigid metal, elastic bar, wide nose; and the two ends of the bar. Every expected value
/// is derived on the page on forming models.
/// </summary>
public sealed class BumpBendingTests
{
    private const double A = BumpCase.HalfSpan;

    /// <summary>
    /// As the feed vanishes both equations of the steady state add up, with the contact in the middle: κ₀/2 − W/(2M₀²) + κ_p/2 + M₀/(3EI) =
    /// κ_nom. A feed f leaves valleys M₀·f/(2a) deep between bumps, so the mean falls short by κ_p′·M₀·f/(4a) less what the greater moment
    /// makes up for. The error is of the first order, and its factor is known.
    /// </summary>
    [Fact]
    public void Error_of_a_feed_is_of_first_order_with_the_derived_factor()
    {
        HardeningFlat metal = BumpCase.Closed;
        double peak = Brent.FindRoot(k => Sum(metal, k) - BumpCase.Nominal, 2 * metal.YieldCurvature, 100, 1e-15, 200);
        double moment = metal.MomentAt(peak);
        double steady = metal.PermanentAfter(moment);
        double[] errors = [.. Enumerable.Range(0, 6).Select(i => steady - Curvature(BumpCase.Hardening, A / 32 / Math.Pow(2, i)))];
        Assert.All(errors, error => Assert.True(error > 0));
        double slope = Math.Log2(errors[0] / errors[5]) / 5;
        Assert.InRange(slope, 0.9, 1.1);

        double slopeOfPermanent = (1 / metal.SlopeAt(peak)) - (1 / metal.Stiffness);
        double perMoment = 1e-6 * peak;
        double slopeOfSum =
            (Sum(metal, peak + perMoment) - Sum(metal, peak - perMoment))
                / (metal.MomentAt(peak + perMoment) - metal.MomentAt(peak - perMoment));
        double factor = slopeOfPermanent * moment / 4 * (1 - (slopeOfPermanent / (2 * slopeOfSum)));
        Near.Relative(factor, errors[5] * 32 * 32, 0.01, "error over f/a");
    }

    /// <summary>Rigid power law, feed f: R/R_nom = (4n + 1)/(4n + 2)·(1 + f/((8n + 2)a)).</summary>
    [Theory]
    [InlineData(0.1, 0.5833333333333333)]
    [InlineData(0.2, 0.6428571428571429)]
    [InlineData(0.4, 0.7222222222222222)]
    public void A_rigid_ring_of_a_power_law_has_the_radius_of_the_limit(double n, double limit)
    {
        double feed = A / 1000;
        double ratio = BumpCase.Nominal / Curvature(BumpCase.Rigid(n), feed);
        Near.Relative(limit, ratio, 1e-3, "R/R_nom");
        Near.Relative(limit * (1 + (feed / A / ((8 * n) + 2))), ratio, 3e-5, "R/R_nom with the share of the feed");
    }

    /// <summary>
    /// Without hardening every bump is a hinge: those behind the nose and the one under it make κ_p·(1 + f/a)/2 of κ_nom wherever f divides
    /// a. The rest is the elastic bar, M_p/(3EI) = κ_y/2 on each side, and the plastic zone ahead of the nose, at most ½∫(1 − (M/M_p)²)dκ −
    /// κ_y/2 = (20/27 − 1/2)·κ_y.
    /// </summary>
    [Theory]
    [InlineData(4)]
    [InlineData(16)]
    [InlineData(64)]
    [InlineData(256)]
    public void A_bar_without_hardening_is_a_row_of_hinges(int parts)
    {
        double hinges = Curvature(BumpCase.WithoutHardening, A / parts) * (1 + (1.0 / parts)) / 2;
        Assert.InRange((BumpCase.Nominal - hinges) / BumpCase.Closed.YieldCurvature, 1, 0.5 + (20 / 27.0));
    }

    /// <summary>κ₀ = (3/2)·κ_nom, the beam on two supports, so nothing stays up to κ_nom = (2/3)·κ_y.</summary>
    [Fact]
    public void An_elastic_bar_springs_back_straight()
    {
        double nominal = 0.66 * BumpCase.Closed.YieldCurvature;
        BumpedBar bar = BumpCase.Feeding(0.01).BendWhole(BumpCase.Hardening, BumpCase.M(0.5), BumpCase.Stroke(nominal));
        Assert.True(bar.IsStraight);
        Assert.All(bar.Outcomes,
            outcome => Near.Relative(1.5 * nominal, outcome.PeakCurvature.InverseMeters, 1e-9, "curvature under the nose"));
        Assert.Null(bar.FirstBiteKink);
        Assert.Null(bar.MeanRing(Length.Zero, bar.BarLength));
        Assert.True(BumpCase.Feeding(0.01).FormAtStroke(BumpCase.Hardening, BumpCase.Stroke(nominal)).IsStraightWhen(Release.Free));
        BumpedBar bent =
            BumpCase.Feeding(0.01).BendWhole(BumpCase.Hardening, BumpCase.M(0.5), BumpCase.Stroke(0.67 * BumpCase.Closed.YieldCurvature));
        Assert.False(bent.IsStraight);
    }

    /// <summary>
    /// A nose wider than the ring a point would leave: the bar lies on it and the ring is that of a die with the radius of the nose.
    /// </summary>
    [Fact]
    public void A_wide_nose_is_wrapped()
    {
        ThreePointSetup wide = new(BumpCase.M(A), Length.FromMillimeters(110));
        FormedBend formed = BumpCase.Feeding(0.002, wide).FormAtStroke(BumpCase.Hardening, BumpCase.Stroke(BumpCase.Nominal));
        FinishedRing wrapped =
            new WrapBending().Form(BumpCase.Hardening, new("nose", Length.FromMillimeters(110), ReferenceFace.InsideOfBar))
                .RingWhen(Release.HeldFlat);
        Near.Relative(wrapped.InsideRadius.Meters, formed.RingWhen(Release.HeldFlat).InsideRadius.Meters, 1e-6, "finished radius");
        Assert.True(formed.Contact!.WrapsNose);
        Assert.Contains(formed.Advisories, advisory => advisory.Code == "wraps-nose");

        BumpedBar bar = BumpCase.Feeding(0.002, wide).BendWhole(BumpCase.Hardening, BumpCase.M(0.6), BumpCase.Stroke(BumpCase.Nominal));
        Assert.All(bar.Outcomes, outcome => Assert.InRange(outcome.PeakCurvature.InverseMeters, 0, (1 / 0.114) + 1e-9));
        Assert.True(bar.Outcomes[0].LengthOnNose.Millimeters > 1);
        Near.Relative(1 / 0.114, bar.Outcomes[0].PeakCurvature.InverseMeters, 1e-9, "curvature on the nose");
        Assert.Throws<ArgumentOutOfRangeException>("stroke",
            () => BumpCase.Feeding(0.002, wide).FormAtStroke(BumpCase.Hardening, BumpCase.Stroke(1 / 0.113)));
    }

    /// <summary>Far from the ends a pass leaves what the steady state says.</summary>
    [Theory]
    [InlineData(0.002)]
    [InlineData(0.01)]
    [InlineData(0.03)]
    public void The_middle_of_a_pass_is_the_steady_state(double feed)
    {
        BumpedBar bar = BumpCase.Feeding(feed).BendWhole(BumpCase.Hardening, BumpCase.M(1.5), BumpCase.Stroke(BumpCase.Nominal));
        double from = A + (feed * Math.Round(0.9 / feed));
        double mean = bar.TurnBetween(BumpCase.M(from), BumpCase.M(from + (4 * feed))).Radians / (4 * feed);
        Near.Relative(Curvature(BumpCase.Hardening, feed), mean, 1e-6, "mean curvature");
    }

    /// <summary>
    /// Rigid power law: the first bite bends both sides, κ₁ = κ_nom·(2n + 1)/(2n), and leaves a kink of (4n + 1)/(4n): 3.5 at
    /// n = 0.1, 2.25 at 0.2, 2 at 0.25. κ_p falls from the outermost bump like (1 − x/a)^(1/n) and is half the mean at a/(2k)ⁿ
    /// from the end of the bar, k being the kink: 0.87 a without one and 0.74 a with the kink of 2.25 at n = 0.2.
    /// </summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.2)]
    [InlineData(0.25)]
    public void A_first_bite_at_full_stroke_leaves_the_kink_and_the_tails_of_the_limit(double n)
    {
        BumpedBar bar = Pass(BumpCase.Rigid(n), A / 800, 0.22);
        double kink = ((4 * n) + 1) / (4 * n);
        Near.Relative(kink, bar.FirstBiteKink!.Value, 0.02, "kink");
        Assert.Contains(bar.Advisories, advisory => advisory.Code == "first-bite-kink");
        Near.Relative(A * Math.Pow(0.5, n), bar.TrailingTail.Meters, 0.01, "trailing tail");
        Near.Relative(A * Math.Pow(0.5 / kink, n), bar.LeadingTail.Meters, 0.01, "leading tail");
    }

    /// <summary>A pass from the other end is the mirror image of the pass, with its kink at that end.</summary>
    [Fact]
    public void The_kink_of_a_pass_from_the_other_end_is_found_there()
    {
        BumpedBar bar = Pass(BumpCase.Hardening, 0.01, 0.5);
        BumpedBar mirrored = BumpCase.Feeding(0.01).Bend(
            BumpCase.Hardening, bar.BarLength,
                [.. bar.Outcomes.Select(outcome => new Bump(bar.BarLength - outcome.Bump.Position, outcome.Bump.Stroke))]);
        Near.Relative(bar.FirstBiteKink!.Value, mirrored.FirstBiteKink!.Value, 1e-6, "kink");
        Assert.Contains(mirrored.Advisories, advisory => advisory.Code == "first-bite-kink");
        Near.Relative(bar.LeadingTail.Meters, mirrored.TrailingTail.Meters, 1e-6, "tail");
    }

    /// <summary>
    /// With the elasticity and yield of steel: between 2 and 5, and far beyond without hardening. Lighter first bites leave none, and no
    /// other one either.
    /// </summary>
    [Theory]
    [InlineData(0, 5, 100)]
    [InlineData(0.1, 2, 5)]
    [InlineData(0.2, 2, 5)]
    [InlineData(-1, 2, 5)]
    public void Lighter_first_bites_avoid_the_kink(double n, double least, double most)
    {
        BendAnalysis analysis = n < 0 ? BumpCase.Hardening
            : n == 0 ? BumpCase.WithoutHardening
            : BumpCase.Of(new PowerHardening(Pressure.FromPascals(BumpCase.Modulus), Pressure.FromMegapascals(600), n));
        Assert.InRange(Pass(analysis, 0.002, 0.4).FirstBiteKink!.Value, least, most);

        BumpBending model = BumpCase.Feeding(0.002);
        Length length = BumpCase.M(0.7);
        IReadOnlyList<Bump> lighter = model.PassWithLighterFirstBites(analysis, length, BumpCase.Stroke(BumpCase.Nominal));
        BumpedBar bar = model.Bend(analysis, length, lighter);
        Near.Relative(1, bar.FirstBiteKink!.Value, 1e-4, "kink");
        Assert.DoesNotContain(bar.Advisories, advisory => advisory.Code == "first-bite-kink");
        double[] strokes = [.. lighter.Select(bump => bump.Stroke.Meters)];
        Assert.All(strokes.Zip(strokes.Skip(1)), pair => Assert.True(pair.Second >= pair.First * (1 - 1e-9)));
        Assert.InRange(strokes[0], 0.1 * strokes[^1], 0.5 * strokes[^1]);
        Assert.InRange(lighter.Count(bump => bump.Stroke.Meters < strokes[^1] * (1 - 1e-6)) * 0.002, 0.5 * A, 1.1 * A);
        double steady = Curvature(analysis, 0.002);
        for (double place = A; place < 0.63; place += 0.002)
        {
            Near.Relative(steady, bar.TurnBetween(BumpCase.M(place), BumpCase.M(place + 0.002)).Radians / 0.002, 1e-4,
                "curvature of a facet");
        }
    }

    /// <summary>Common practice, no source: the last half-span, or nearly so, stays straight.</summary>
    [Theory]
    [InlineData(0.85, 1, false)]
    [InlineData(0.98, 1, true)]
    public void Tails_are_nearly_a_half_span(double least, double most, bool perfectlyPlastic)
    {
        BendAnalysis analysis = perfectlyPlastic ? BumpCase.WithoutHardening : BumpCase.Hardening;
        BumpBending model = BumpCase.Feeding(0.004);
        BumpedBar bar =
            model.Bend(analysis, BumpCase.M(0.7),
                model.PassWithLighterFirstBites(analysis, BumpCase.M(0.7), BumpCase.Stroke(BumpCase.Nominal)));
        Assert.InRange(bar.LeadingTail.Meters / A, least, most);
        Assert.InRange(bar.TrailingTail.Meters / A, least, most);
    }

    private static double Sum(HardeningFlat metal, double peak)
    {
        double moment = metal.MomentAt(peak);
        return (peak / 2) - (metal.SquaredUpTo(peak) / (2 * moment * moment)) + (metal.PermanentAfter(moment) / 2)
            + (moment / (3 * metal.Stiffness));
    }

    private static double Curvature(BendAnalysis analysis, double feed) =>
        BumpCase.Finished(BumpCase.Feeding(feed).FormAtStroke(analysis, BumpCase.Stroke(BumpCase.Nominal)));

    private static BumpedBar Pass(BendAnalysis analysis, double feed, double length) =>
        BumpCase.Feeding(feed).BendWhole(analysis, BumpCase.M(length), BumpCase.Stroke(BumpCase.Nominal));
}
