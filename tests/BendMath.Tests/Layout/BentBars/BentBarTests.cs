using BendMath.Layout.BentBars;
using BendMath.Lengths;
using BendMath.Sections.Outlines;
using BendMath.Tests.Forming;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Layout.BentBars;

public sealed class BentBarTests
{
    private static readonly OrientedSection Square = new SquareBar(Length.FromMillimeters(12)).Section;

    private static readonly EqualAngle Angle30 = new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp);

    [Fact]
    public void A_hook_is_its_straights_and_its_arcs()
    {
        FinishedRing ring = RingOf(Square, 100);
        BentBar hook = BentBar.For(
            [Straight(200), Bend(ring, Square, 180, left: true), Straight(50)],
                new EndAllowance(Length.FromMillimeters(30), Length.FromMillimeters(40), Length.FromMillimeters(5)),
                    Length.FromMillimeters(2));
        double arc = Math.PI / ring.Curvature.InverseMeters * 1e3;
        Near.Relative(250 + arc, hook.DevelopedLength.Millimeters, 1e-12);
        Near.Relative(325 + arc, hook.BlankLength.Millimeters, 1e-12);
        BendMark mark = hook.Bends.Single();
        Near.Relative(230, mark.StartMark.Millimeters, 1e-12);
        Near.Relative(230 + arc, mark.EndMark.Millimeters, 1e-12);
        Near.Relative(230 + arc / 2, mark.MiddleMark.Millimeters, 1e-12);
        Assert.Equal((true, true, 1, 1), (mark.IsStartFree, mark.IsEndFree, mark.Step, mark.Number));
        Near.Relative(95, mark.StraightAfter.Millimeters, 1e-9);

        // The left face turns about a center 100 mm to its left, and the bar comes back 200 mm above where it went; the envelope adds the
        // bar on both sides.
        Near.Absolute(150, hook.End.X.Millimeters, 1e-9);
        Near.Absolute(200, hook.End.Y.Millimeters, 1e-9);
        Near.Absolute(180, hook.End.Heading.Degrees, 1e-9);
        Near.Absolute(200 + 112, hook.AlongX.High.Millimeters, 1e-9);
        Near.Absolute(-12, hook.AlongY.Low.Millimeters, 1e-9);
        Near.Absolute(224, (hook.AlongY.High - hook.AlongY.Low).Millimeters, 1e-9);
        Near.Absolute(312, (hook.AlongX.High - hook.AlongX.Low).Millimeters, 1e-9);
    }

    /// <summary>
    /// Four quarter bends and four equal straights close a square with round corners; the envelope is that of its outer faces.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_frame_closes_on_itself(bool left)
    {
        FinishedRing ring = RingOf(Square, 60);
        BarPart[] parts = [.. Enumerable.Range(0, 4).SelectMany(_ => new[] { Straight(300), Bend(ring, Square, 90, left) })];
        BentBar frame = BentBar.For(parts, EndAllowance.None, Length.Zero);
        Near.Absolute(0, frame.End.X.Millimeters, 1e-9);
        Near.Absolute(0, frame.End.Y.Millimeters, 1e-9);
        Near.Absolute(left ? 360 : -360, frame.End.Heading.Degrees, 1e-9);
        Near.Relative(300 + 2 * 60 + 2 * 12, (frame.AlongX.High - frame.AlongX.Low).Millimeters, 1e-9);
        Near.Relative(300 + 2 * 60 + 2 * 12, (frame.AlongY.High - frame.AlongY.Low).Millimeters, 1e-9);
        Assert.DoesNotContain(frame.Advisories, advisory => advisory.Code == "over-itself");
    }

    /// <summary>An offset of two equal bends to both sides ends parallel to its start, set off by (2R + h)·(1 − cos θ).</summary>
    [Fact]
    public void An_offset_bends_to_both_sides()
    {
        FinishedRing ring = RingOf(Square, 100);
        BentBar offset =
            BentBar.For([Bend(ring, Square, 30, left: true), Bend(ring, Square, 30, left: false)], EndAllowance.None, Length.Zero);
        Near.Absolute(0, offset.End.Heading.Degrees, 1e-12);
        Near.Relative((2 * 100 + 12) * (1 - Math.Cos(Math.PI / 6)), offset.End.Y.Millimeters, 1e-9);
        Near.Relative((2 * 100 + 12) * 0.5, offset.End.X.Millimeters, 1e-9);
        Assert.Contains(offset.Advisories, advisory => advisory.Code == "turned-over");
    }

    [Fact]
    public void A_bend_to_the_other_side_shows_the_bar_turned_over()
    {
        BarPart outward = Bend(RingOf(Angle30.FlangeOut, 300), Angle30.FlangeOut, 45, left: true);
        BarPart inward = Bend(RingOf(Angle30.FlangeIn, 300), Angle30.FlangeIn, 45, left: false);
        BarPart wrong = Bend(RingOf(Angle30.FlangeOut, 300), Angle30.FlangeOut, 45, left: false);
        Assert.Equal(2, BentBar.For([outward, inward], EndAllowance.None, Length.Zero).Bends.Count);
        Assert.Throws<ArgumentException>("parts", () => BentBar.For([outward, wrong], EndAllowance.None, Length.Zero));
        Assert.Throws<ArgumentException>("parts",
            () => BentBar.For([outward, Bend(RingOf(Square, 300), Square, 45, left: true)], EndAllowance.None, Length.Zero));
        Assert.Throws<ArgumentException>("ring",
            () => BarPart.BendLeft(RingOf(Square, 300), Angle30.FlangeOut, ArcExtent.FullRing));
    }

    [Fact]
    public void The_order_says_which_end_is_free_and_how_much_straight_is_left()
    {
        FinishedRing ring = RingOf(Square, 100);
        BarPart bend = Bend(ring, Square, 90, left: true);
        BarPart[] parts = [Straight(100), bend, Straight(20), bend, Straight(20), bend, Straight(100)];
        double arc = bend.DevelopedLength.Millimeters;
        BentBar forward = BentBar.For(parts, EndAllowance.None, Length.Zero, Length.FromMillimeters(50));
        Assert.Equal([(true, true), (false, true), (false, true)], forward.Bends.Select(mark => (mark.IsStartFree, mark.IsEndFree)));
        Assert.Equal(2, forward.Advisories.Count(advisory => advisory.Code == "short-straight"));
        BentBar outside = BentBar.For(parts, EndAllowance.None, Length.Zero, Length.FromMillimeters(50), [3, 1, 2]);
        Assert.Equal([(3, true, true), (1, true, false), (2, false, false)],
            outside.Bends.Select(mark => (mark.Number, mark.IsStartFree, mark.IsEndFree)));
        Near.Relative(40 + arc, outside.Bends[1].StraightAfter.Millimeters, 1e-9, "the bar between the first and the third bend");
        Assert.Contains(outside.Advisories, advisory => advisory.Code == "boxed-in");
        Assert.Throws<ArgumentException>("order", () => BentBar.For(parts, EndAllowance.None, Length.Zero, order: [1, 2, 2]));
        Assert.Throws<ArgumentException>("parts", () => BentBar.For([Straight(100)], EndAllowance.None, Length.Zero));
    }

    [Fact]
    public void Points_run_along_the_fiber_and_end_at_the_end()
    {
        FinishedRing ring = RingOf(Square, 100);
        BentBar bar = BentBar.For([Straight(50), Bend(ring, Square, 90, left: false)], EndAllowance.None, Length.Zero);
        IReadOnlyList<OutlinePoint> outside = bar.Points(Length.Zero, Angle.FromDegrees(1));
        Assert.Equal(92, outside.Count);
        Near.Absolute(bar.End.X.Meters, outside[^1].X.Meters, 1e-12);
        Near.Absolute(bar.End.Y.Meters, outside[^1].Y.Meters, 1e-12);
        double length =
            outside.Zip(outside.Skip(1), (a, b) => Math.Sqrt(Math.Pow((b.X - a.X).Millimeters, 2) + Math.Pow((b.Y - a.Y).Millimeters, 2)))
                .Sum();
        Near.Relative(50 + 112 * Math.PI / 2, length, 1e-4, "the outside face");
    }

    [Property(MaxTest = 300)]
    public Property Straight_bar_to_shape_and_back_is_the_same_place() => Prop.ForAll(
        Sold.Part.ToArbitrary(), Sold.Part.ToArbitrary(), (along, across) =>
        {
            FinishedRing tight = RingOf(Square, 60);
            FinishedRing wide = RingOf(Square, 200);
            BentBar bar = BentBar.For(
                [Straight(80), Bend(tight, Square, 70, left: true), Straight(30), Bend(wide, Square, 100, left: false)],
                new EndAllowance(Length.FromMillimeters(25), Length.Zero, Length.Zero),
                Length.Zero);
            Length fromLeft = across * Square.Depth;
            BarPlace place = bar.PlaceAt(Length.FromMillimeters(25) + along * bar.DevelopedLength, fromLeft);
            double before = bar.Parts.Take(place.Part - 1).Sum(part => part.DevelopedLength.Meters) + 0.025;
            Length onFiber = Length.FromMeters(Math.Max(0, (place.Along.Meters - before) * (1 + place.Strain.DecimalFractions)));
            BarPlace back = bar.PlaceOn(place.Part, onFiber, fromLeft);
            Near.Absolute(place.Along.Millimeters, back.Along.Millimeters, 1e-9, "along");
            Near.Absolute(place.X.Millimeters, back.X.Millimeters, 1e-9, "x");
            Near.Absolute(place.Y.Millimeters, back.Y.Millimeters, 1e-9, "y");
        });

    /// <summary>
    /// Straights and ends may add up to more than one length may be; what is rounded and cut is still told, and no argument is blamed that
    /// nobody gave.
    /// </summary>
    [Fact]
    public void A_blank_may_be_longer_than_any_length()
    {
        Length most = Length.FromMeters(1e6);
        BentBar bar = BentBar.For([Bend(RingOf(Square, 100), Square, 180, left: true)], new EndAllowance(most, most, most), Length.Zero);
        LengthStyle whole = LengthStyle.Millimeters(0, LengthRounding.Up);
        Near.Relative(bar.BlankLength.Meters, bar.CutLengthIn(whole).Meters, 1e-9);
        Assert.Equal(0, bar.PiecesFrom(Length.FromMeters(6), whole).Pieces);
        Assert.Equal(0, bar.PiecesFrom(Length.FromMeters(6)).Pieces);
    }

    private static BarPart Straight(double millimeters) => BarPart.Straight(Length.FromMillimeters(millimeters));

    private static BarPart Bend(FinishedRing ring, OrientedSection section, double degrees, bool left) =>
        left
        ? BarPart.BendLeft(ring, section, ArcExtent.Of(Angle.FromDegrees(degrees)))
        : BarPart.BendRight(ring, section, ArcExtent.Of(Angle.FromDegrees(degrees)));

    private static FinishedRing RingOf(OrientedSection section, double inside) =>
        BendAnalysis.Of(section, Workshop.Steel).LoadedFor(Workshop.Inside(inside), Release.HeldFlat).Release(Release.HeldFlat).Ring;
}
