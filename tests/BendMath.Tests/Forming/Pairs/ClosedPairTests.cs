using BendMath.Evidence;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Forming.Pairs;

/// <summary>
/// Geometry of closed pairs against a construction of its own: a mate is lowered onto a die by bisection until it is a stack away from it
/// at its nearest point, and the contacts are read off.
/// </summary>
public sealed class ClosedPairTests
{
    /// <summary>
    /// Hand calculation: die 200 mm, bar 12 mm, mate 212 mm matches. With a mate of 250 mm the bar's outside lies on 250 mm, its inside on
    /// 238 mm; φ = asin(80/250), sin φ = 0.32.
    /// </summary>
    [Fact]
    public void A_wider_mate_stops_at_the_middle()
    {
        ClosedPair pair = ClosedPair.Of(With(MatingDie.OfFace(Millimeters(250), Millimeters(80))), Bar);
        Assert.Equal(PairTouch.Middle, pair.Touch);
        Assert.False(pair.LiesOnDie);
        Near.Relative(0.212, pair.MatchingRadius.Meters, 1e-12, "matching radius");
        Near.Relative(0.238, pair.InsideRadius.Meters, 1e-12, "inside radius");
        Near.Relative(0.238 * 0.32, pair.ContactHalfSpan.Meters, 1e-12, "half-span");
        Near.Relative(0.238 * (1 - Math.Cos(Math.Asin(0.32))), pair.Stroke.Meters, 1e-12, "stroke");
        Assert.Equal(Length.Zero, pair.GapAtMiddle);
        double edge = 212 - (250 - Math.Sqrt(250 * 250 - 80 * 80));
        Near.Relative(Math.Sqrt(80 * 80 + edge * edge) - 212, pair.GapAtEnds.Millimeters, 1e-9, "gap at the ends");
    }

    /// <summary>
    /// Hand calculation: the same with a mate of 190 mm: it rests on the bar at its ends, and the gap at the middle is the difference of
    /// the rises over 80 mm.
    /// </summary>
    [Fact]
    public void A_tighter_mate_touches_at_its_ends()
    {
        ClosedPair pair = ClosedPair.Of(With(MatingDie.OfFace(Millimeters(190), Millimeters(80))), Bar);
        Assert.Equal(PairTouch.Ends, pair.Touch);
        Near.Relative(0.2, pair.InsideRadius.Meters, 1e-12, "inside radius");
        Near.Relative(Rise(190) - Rise(212), pair.GapAtMiddle.Millimeters, 1e-9, "gap at the middle");
        Assert.Equal(Length.Zero, pair.GapAtEnds);

        static double Rise(double radius) => radius - Math.Sqrt(radius * radius - 80 * 80);
    }

    /// <summary>Shims make up for a mate that is too wide: 212 + 38 mm is matched by 38 mm of shims.</summary>
    [Fact]
    public void A_matched_pair_touches_everywhere_and_wraps()
    {
        Die die = With(MatingDie.OfFace(Millimeters(250), Millimeters(80), Millimeters(38)));
        ClosedPair pair = ClosedPair.Of(die, Bar);
        Assert.Equal(PairTouch.Everywhere, pair.Touch);
        Near.Relative(0.050, pair.StackThickness.Meters, 1e-12, "stack");
        Assert.Equal((Length.Zero, Length.Zero), (pair.GapAtMiddle, pair.GapAtEnds));
        FormedBend formed = new PairBending().Form(BendAnalysis.Of(Bar, Workshop.Steel), die);
        FormedBend wrapped = new WrapBending().Form(BendAnalysis.Of(Bar, Workshop.Steel), die);
        Assert.Equal(wrapped.RingWhen(Release.Free), formed.RingWhen(Release.Free));
        Assert.True(formed.Contact!.WrapsNose);
        Assert.DoesNotContain(formed.Advisories, advisory => advisory.Code.StartsWith("mate-", StringComparison.Ordinal));
    }

    /// <summary>
    /// Pyramid of two round supports, of radius r, half-span a and rise s: the outside radius is (a² + s²)/(2s) − r (elementary geometry of
    /// three-roll benders).
    /// </summary>
    [Fact]
    public void Round_supports_touch_nearer_to_the_middle()
    {
        MatingDie mate = MatingDie.OfSupports(Millimeters(100), Millimeters(15), Millimeters(25));
        Near.Relative((100 * 100 + 15 * 15) / 30.0 - 25, mate.Radius.Millimeters, 1e-12, "radius");
        ClosedPair pair = ClosedPair.Of(With(mate), Bar);
        double outside = mate.Radius.Millimeters;
        Near.Relative(100 * outside / (outside + 25) * (outside - 12) / outside, pair.ContactHalfSpan.Millimeters, 1e-12,
            "half-span, carried to the inside");
    }

    /// <summary>The mate is lowered by bisection; the nearest points and the gaps are found on a fine row of points along it.</summary>
    [Property(MaxTest = 60)]
    public Property Lowering_the_mate_finds_the_same_contacts() => Prop.ForAll(Pairs.ToArbitrary(), pair =>
    {
        ClosedPair closed = ClosedPair.Of(pair.Die(Millimeters), Bar);
        double stack = 12 + pair.Shims;
        double low = -1000, high = 1000;
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = pair.Nearest(middle) < stack ? (middle, high) : (low, middle);
        }

        double gapAtMiddle = pair.FromDie(0, high + pair.Mate.Rise.Millimeters) - stack;
        double gapAtEnds =
            pair.FromDie(pair.Mate.HalfSpan.Millimeters, high + pair.Mate.SupportRadius.Millimeters) - pair.Mate.SupportRadius.Millimeters
                - stack;
        if (Math.Abs(closed.MatchingRadius.Millimeters / pair.Mate.Radius.Millimeters - 1) > 1e-4)
        {
            Assert.Equal(gapAtMiddle < gapAtEnds ? PairTouch.Middle : PairTouch.Ends, closed.Touch);
        }

        Near.Absolute(gapAtMiddle, closed.GapAtMiddle.Millimeters, 1e-6, "gap at the middle");
        Near.Absolute(gapAtEnds, closed.GapAtEnds.Millimeters, 1e-6, "gap at the ends");
    });

    /// <summary>
    /// The circle through nose and contacts has the inside radius, and the same contacts on the outside of the stack touch the mate square.
    /// </summary>
    [Property(MaxTest = 60)]
    public Property The_contacts_lie_on_their_circle() => Prop.ForAll(Pairs.ToArbitrary(), pair =>
    {
        ClosedPair closed = ClosedPair.Of(pair.Die(Millimeters), Bar);
        double a = closed.ContactHalfSpan.Meters, s = closed.Stroke.Meters, r = closed.InsideRadius.Meters;
        Near.Relative(r, (a * a + s * s) / (2 * s), 1e-9, "circle through three points");
        Near.Relative(pair.Mate.HalfSpan.Meters, a / r * (r + closed.StackThickness.Meters + pair.Mate.SupportRadius.Meters), 1e-12,
            "half-span of the mate");
    });

    [Property(MaxTest = 40)]
    public Property Inches_are_millimeters_and_sizes_scale() =>
        Prop.ForAll(Pairs.ToArbitrary(), Sold.Part.Select(part => Sold.Between(0.1, 10, part)).ToArbitrary(), (pair, scale) =>
    {
        ClosedPair metric = ClosedPair.Of(pair.Die(Millimeters), Bar);
        ClosedPair inches =
            ClosedPair.Of(pair.Die(value => Length.FromInches(value / 25.4)),
                new FlatBar(Length.FromInches(25 / 25.4), Length.FromInches(12 / 25.4)).EasyWay);
        ClosedPair scaled =
            ClosedPair.Of(pair.Die(value => Millimeters(scale * value)),
                new FlatBar(Millimeters(25 * scale), Millimeters(12 * scale)).EasyWay);
        foreach ((Func<ClosedPair, Length> read,
            string what) in new (Func<ClosedPair, Length>, string)[] { (p => p.InsideRadius, "radius"),
                (p => p.ContactHalfSpan, "half-span"), (p => p.Stroke, "stroke"), (p => p.GapAtMiddle, "middle"),
                    (p => p.GapAtEnds, "ends") })
        {
            Near.Absolute(read(metric).Meters, read(inches).Meters, 1e-11, what);
            Near.Absolute(scale * read(metric).Meters, read(scaled).Meters, 1e-11 * Math.Max(1, scale), what);
        }
    });

    /// <summary>A mate that stops at the middle is a three-point bender of that half-span and stroke, with the die for a nose.</summary>
    [Fact]
    public void A_wider_mate_forms_as_three_points()
    {
        BendAnalysis analysis = BendAnalysis.Of(Bar, Workshop.Steel);
        Die die = With(MatingDie.OfFace(Millimeters(500), Millimeters(120)));
        ClosedPair pair = ClosedPair.Of(die, Bar);
        FormedBend formed = new PairBending().Form(analysis, die);
        FormedBend points = new IncrementalThreePointBending(pair.Setup).FormAtStroke(analysis, pair.Stroke);
        Near.Relative(points.RingWhen(Release.Free).InsideRadius.Meters, formed.RingWhen(Release.Free).InsideRadius.Meters, 1e-12, "ring");
        Advisory stop = Assert.Single(formed.Advisories, advisory => advisory.Code == "mate-stops-at-middle");
        Assert.Contains("500 mm where 212 mm", stop.Message, StringComparison.Ordinal);
        Assert.True(
            Assert.Single(new PairBending().Form(analysis, With(MatingDie.OfFace(Millimeters(190), Millimeters(80)))).Advisories,
                advisory => advisory.Code == "mate-touches-at-ends").IsMinor);
    }

    /// <summary>As a mate widens past the match, the ring goes from that of the die to wider ones without a jump.</summary>
    [Fact]
    public void The_ring_does_not_jump_where_the_pair_matches()
    {
        BendAnalysis analysis = BendAnalysis.Of(Bar, Workshop.Steel);
        double Ring(double mate) =>
            new PairBending().Form(analysis, With(MatingDie.OfFace(Millimeters(mate), Millimeters(80))))
                .RingWhen(Release.Free).InsideRadius.Millimeters;
        double matched = Ring(212);
        Assert.Equal(matched, Ring(200));
        Near.Relative(matched, Ring(212.01), 1e-9, "just wider");
        Assert.True(Ring(420) > matched);
    }

    [Fact]
    public void A_rack_holds_pairs_and_the_die_to_make_comes_with_its_mate()
    {
        BendAnalysis analysis = BendAnalysis.Of(Bar, Workshop.Steel);
        DieRack rack = new([With(MatingDie.OfFace(Millimeters(212), Millimeters(80))), Workshop.Die("without a mate", 250)]);
        DieChoice choice = DieChoice.For(rack, analysis, Workshop.Inside(230), new PairBending(), Release.Free);
        Assert.Equal("it has no mating face", choice.Predictions[1].Refusal);
        Assert.Equal("pair", choice.Best!.Die.Name);
        Near.Relative(
            DieChoice.For(rack, analysis, Workshop.Inside(230), new WrapBending(), Release.Free).IdealStampedRadius!.Value.Meters,
                choice.IdealStampedRadius!.Value.Meters, 1e-9, "die to make");
    }

    [Theory]
    [InlineData(10, 8, "leaves no room")]
    [InlineData(220, 219, "slips between")]
    public void A_pair_that_cannot_take_the_bar_says_why(double radius, double halfSpan, string why)
    {
        Die die =
            new("pair", Millimeters(radius < 200 ? 200 : 150), ReferenceFace.InsideOfBar,
                mate: MatingDie.OfFace(Millimeters(radius), Millimeters(halfSpan)));
        if (radius > 200)
        {
            die =
                new("pair", Millimeters(150), ReferenceFace.InsideOfBar,
                    mate: MatingDie.OfSupports(Millimeters(halfSpan), Millimeters(halfSpan), Length.Zero));
        }

        Assert.Contains(why, Assert.Throws<ArgumentOutOfRangeException>("section", () => ClosedPair.Of(die, Bar)).Message,
            StringComparison.Ordinal);
        Assert.False(new PairBending().TryForm(BendAnalysis.Of(Bar, Workshop.Steel), die, out _, out string? refusal));
        Assert.Contains(why, refusal, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mate_that_is_no_mate_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("halfSpan", () => MatingDie.OfFace(Millimeters(100), Millimeters(101)));
        Assert.Throws<ArgumentOutOfRangeException>("rise", () => MatingDie.OfSupports(Millimeters(100), Millimeters(101), Length.Zero));
        Assert.Throws<ArgumentOutOfRangeException>("supportRadius",
            () => MatingDie.OfSupports(Millimeters(100), Millimeters(100), Millimeters(100)));
        Assert.Throws<ArgumentException>("die", () => ClosedPair.Of(Workshop.Die("A", 200), Bar));
    }

    private static OrientedSection Bar { get; } = new FlatBar(Millimeters(25), Millimeters(12)).EasyWay;

    private static Gen<Pair> Pairs { get; } =
        from die in Sold.Part
        from span in Sold.Part
        from off in Sold.Part
        from support in Sold.Part
        from shims in Sold.Part
        let radius = Sold.Between(100, 1000, die)
        let thick = shims < 0.5 ? 0 : 20 * shims
        let mate = (radius + 12 + thick) * Sold.Between(0.8, 2, off)
        let half = Math.Min(mate, radius) * (0.1 + 0.6 * span)
        select new Pair(radius, mate, half, support < 0.5 ? null : 40 * support, thick);

    private static Length Millimeters(double value) => Length.FromMillimeters(value);

    private static Die With(MatingDie mate) => new("pair", Millimeters(200), ReferenceFace.InsideOfBar, mate: mate);

    /// <summary>
    /// In millimeters: a hollow face, or supports where a radius of theirs is given. The die's center is the origin; y points from the die
    /// toward the mate.
    /// </summary>
    private sealed record Pair(double Radius, double Hollow, double HalfSpan, double? Support, double Shims)
    {
        public MatingDie Mate => MateIn(Millimeters);

        private double HollowRise => Hollow - Math.Sqrt(Hollow * Hollow - HalfSpan * HalfSpan);

        public Die Die(Func<double, Length> millimeters) =>
            new("pair", millimeters(Radius), ReferenceFace.InsideOfBar, mate: MateIn(millimeters));

        /// <summary>Distance of a point from the face of the die, for a mate whose ends are at a height above the die's top.</summary>
        public double FromDie(double x, double height) => Math.Sqrt(x * x + (height + Radius) * (height + Radius)) - Radius;

        /// <summary>The nearest distance between mate and die when the tips of the mate are at a height.</summary>
        public double Nearest(double height)
        {
            if (height + Radius < 0)
            {
                return height;
            }

            double ends = Support is { } r ? FromDie(HalfSpan, height + r) - r : FromDie(HalfSpan, height);
            double nearest = Math.Min(ends, FromDie(0, height + Mate.Rise.Millimeters));
            for (int i = 1; Support is null && i < 50; i++)
            {
                double x = HalfSpan * i / 50;
                nearest =
                    Math.Min(nearest,
                        FromDie(x, height + Math.Sqrt(Hollow * Hollow - x * x) - Math.Sqrt(Hollow * Hollow - HalfSpan * HalfSpan)));
            }

            return nearest;
        }

        private MatingDie MateIn(Func<double, Length> millimeters) => Support is { } r
            ? MatingDie.OfSupports(millimeters(HalfSpan), millimeters(HollowRise), millimeters(r), millimeters(Shims))
            : MatingDie.OfFace(millimeters(Hollow), millimeters(HalfSpan), millimeters(Shims));
    }
}
