using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>Relations of bump-by-bump bending.</summary>
public sealed class BumpProperties
{
    [Property(MaxTest = 30)]
    public Property More_stroke_makes_a_tighter_ring() => Prop.ForAll(Passes.ToArbitrary(), Sold.Releases.ToArbitrary(), (pass, release) =>
    {
        Length one = pass.Form().RingWhen(release).InsideRadius;
        Length more = (pass with { Nominal = 1.02 * pass.Nominal }).Form().RingWhen(release).InsideRadius;
        Assert.True(more < one, $"{one} became {more}");
    });

    /// <summary>Of the steady state, without exception: no facet noise is left in the mean over one feed.</summary>
    [Property(MaxTest = 30)]
    public Property A_smaller_feed_makes_a_tighter_ring() =>
        Prop.ForAll(Passes.ToArbitrary(), Sold.Releases.ToArbitrary(), Sold.Part.ToArbitrary(), (pass, release, part) =>
    {
        Length one = pass.Form().RingWhen(release).InsideRadius;
        Length finer = (pass with { Feed = pass.Feed * (0.3 + (0.65 * part)) }).Form().RingWhen(release).InsideRadius;
        Assert.True(finer < one, $"{one} became {finer}");
    });

    /// <summary>Of a whole pass too: the mean from the first bump to the last.</summary>
    [Property(MaxTest = 10)]
    public Property More_stroke_and_a_smaller_feed_turn_the_whole_bar_more() => Prop.ForAll(Passes.ToArbitrary(), pass =>
    {
        double mean = pass.Bend().MeanCurvature.InverseMeters;
        Assert.True((pass with { Nominal = 1.02 * pass.Nominal }).Bend().MeanCurvature.InverseMeters > mean);
        Assert.True((pass with { Feed = pass.Feed / 2 }).Bend().MeanCurvature.InverseMeters > mean);
    });

    [Property(MaxTest = 15)]
    public Property Scaling_all_lengths_scales_lengths_and_forces() => Prop.ForAll(
        Passes.ToArbitrary(), Sold.Part.Select(part => Sold.Between(0.02, 50, part)).ToArbitrary(), (pass, s) =>
        {
            BumpedBar one = pass.Bend();
            BumpedBar scaled = pass.Bend(s);
            Near.Relative(one.MeanCurvature.InverseMeters, s * scaled.MeanCurvature.InverseMeters, 1e-6, "mean curvature");
            Near.Relative(s * one.LeadingTail.Meters, scaled.LeadingTail.Meters, 1e-6, "tail");
            Near.Relative(s * s * one.Outcomes[^1].NoseForce.Newtons, scaled.Outcomes[^1].NoseForce.Newtons, 1e-6, "nose force");
            Near.Relative(s * pass.Form().Contact!.FacetRise.Meters, pass.Form(s).Contact!.FacetRise.Meters, 1e-6, "facet");
        });

    /// <summary>
    /// Strokes of a bar never unbend it: permanent curvature is nowhere less after a further bump, and turns of parts add up.
    /// </summary>
    [Property(MaxTest = 15)]
    public Property A_further_bump_unbends_nothing_and_parts_add_up() =>
        Prop.ForAll(Passes.ToArbitrary(), Sold.Part.ToArbitrary(), Sold.Part.ToArbitrary(), (pass, place, more) =>
    {
        BumpedBar bar = pass.Bend();
        double a = pass.HalfSpan();
        double length = bar.BarLength.Meters;
        BumpedBar further =
            bar.Again(
                [new(Length.FromMeters(a + (place * (length - (2 * a)))), (pass with { Nominal = pass.Nominal * (1 + more) }).Stroke())]);
        for (int i = 0; i <= 200; i++)
        {
            Length at = Length.FromMeters(length * i / 200);
            Assert.True(further.PermanentCurvatureAt(at).InverseMeters >= bar.PermanentCurvatureAt(at).InverseMeters * (1 - 1e-12));
        }

        Length middle = Length.FromMeters(place * length);
        double parts = further.TurnBetween(Length.Zero, middle).Radians + further.TurnBetween(middle, further.BarLength).Radians;
        Near.Relative(further.TurnBetween(Length.Zero, further.BarLength).Radians, parts, 1e-10, "turn");
    });

    /// <summary>
    /// Half-span 4 to 12 depths, an edge for a nose, three contacts on a circle of at least 2 times the yield curvature and at most 0.35/a;
    /// feed from a twentieth of the half-span to half of it.
    /// </summary>
    private static Gen<Row> Passes { get; } =
        from bar in Sold.Bars
        from metal in Sold.AnyMetal
        from span in Sold.Part
        from part in Sold.Part
        from feed in Sold.Part
        let depth = bar.Section().Depth.Meters
        let depths = Sold.Between(4, 12, span)
        let least = 2 * metal.YieldStrain / (Sold.FarFace(bar) * depth)
        select new Row(new Bend(bar, metal, 0), depths, Sold.Between(least, 0.35 / (depths * depth), part), Sold.Between(0.05, 0.5, feed));

    /// <summary>Half-span in depths; curvature through the contacts in 1/m; feed in half-spans; the bar eight half-spans long.</summary>
    private sealed record Row(Bend Bar, double Spans, double Nominal, double Feed)
    {
        public double HalfSpan(double scale = 1) => Spans * Bar.Bar.Section(scale).Depth.Meters;

        public Length Stroke(double scale = 1)
        {
            double a = HalfSpan(scale);
            double nominal = Nominal / scale;
            return Length.FromMeters(nominal * a * a / (1 + Math.Sqrt(1 - (nominal * nominal * a * a))));
        }

        public FormedBend Form(double scale = 1) => Model(scale).FormAtStroke(Bar.Analysis(scale), Stroke(scale));

        public BumpedBar Bend(double scale = 1) =>
            Model(scale).BendWhole(Bar.Analysis(scale), Length.FromMeters(8 * HalfSpan(scale)), Stroke(scale));

        private BumpBending Model(double scale) =>
            new(new ThreePointSetup(Length.FromMeters(HalfSpan(scale)), Length.Zero), Length.FromMeters(Feed * HalfSpan(scale)));
    }
}
