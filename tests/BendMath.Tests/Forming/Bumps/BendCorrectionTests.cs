using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Forming.Bumps;

public sealed class BendCorrectionTests
{
    [Fact]
    public void A_ring_that_is_right_asks_for_no_change()
    {
        BendCorrection next =
            BendCorrection.For(new(Workshop.Die("A", 250), Workshop.RimSteel, Workshop.Inside(270), Release.Free), Workshop.Inside(270));
        Near.Relative(1, next.CurvatureRatio, 1e-12);
        Near.Relative(250, next.StampedRadius.Millimeters, 1e-12);
        Near.Relative(15, next.StrokeFor(Workshop.Bender, Length.FromMillimeters(15)).Millimeters, 1e-12);
    }

    /// <summary>
    /// Where the bar follows the die, the stamp is known from the model itself: the correction must find the die that leaves the wanted
    /// ring, whatever face the stamp means.
    /// </summary>
    [Theory]
    [InlineData(250, 240, 0)]
    [InlineData(250, 265, 0)]
    [InlineData(283, 255, 30)]
    public void On_a_wrapping_bender_the_next_die_is_exact(double stamp, double nextStamp, double offset)
    {
        ReferenceFace face = ReferenceFace.OffsetBy(Length.FromMillimeters(offset));
        WrapBending wrap = new();
        FinishedRing measured = wrap.Form(Workshop.RimSteel, Workshop.Die("A", stamp, face)).RingWhen(Release.Free);
        FinishedRing wanted = wrap.Form(Workshop.RimSteel, Workshop.Die("B", nextStamp, face)).RingWhen(Release.Free);
        BendCorrection next =
            BendCorrection.For(
                new(Workshop.Die("A", stamp, face), Workshop.RimSteel, BendRadius.Inside(measured.InsideRadius), Release.Free),
                BendRadius.Inside(wanted.InsideRadius));
        Near.Relative(nextStamp, next.StampedRadius.Millimeters, 1e-8);
        Assert.Equal(nextStamp > stamp, next.IsBentTooMuch);
        Assert.Contains(nextStamp > stamp ? "opened" : "bent again", next.Sentence, StringComparison.Ordinal);
    }

    /// <summary>
    /// On a pinching bender a correction of some percent comes out within a fifth of itself, held against the full model of the contacts.
    /// </summary>
    [Theory]
    [InlineData(0.96)]
    [InlineData(1.05)]
    public void On_a_pinching_bender_the_next_stroke_is_near(double change)
    {
        IncrementalThreePointBending pinch = new(Workshop.Bender);
        Length stroke = Length.FromMillimeters(15);
        FinishedRing measured = pinch.FormAtStroke(Workshop.RimSteel, stroke).RingWhen(Release.Free);
        FinishedRing wanted = pinch.FormAtStroke(Workshop.RimSteel, change * stroke).RingWhen(Release.Free);
        BendCorrection next =
            BendCorrection.For(new(Workshop.Die("A", 250), Workshop.RimSteel, BendRadius.Inside(measured.InsideRadius), Release.Free),
                BendRadius.Inside(wanted.InsideRadius));
        Near.Absolute(change - 1, next.StrokeFor(Workshop.Bender, stroke) / stroke - 1, 0.2 * Math.Abs(change - 1), "share of the stroke");
    }

    [Fact]
    public void What_cannot_be_is_refused_by_name()
    {
        MeasuredRing ring = new(Workshop.Die("A", 250), Workshop.RimSteel, Workshop.Inside(270), Release.Free);
        Assert.Throws<ArgumentOutOfRangeException>("wanted", () => BendCorrection.For(ring, Workshop.Inside(0.001)));
        Assert.Throws<ArgumentOutOfRangeException>("stroke",
            () => BendCorrection.For(ring, Workshop.Inside(260)).StrokeFor(Workshop.Bender, Length.FromMillimeters(131)));
        Assert.Throws<ArgumentException>("ring", () => BendCorrection.For(
            new(Workshop.Die("A", 20, ReferenceFace.OutsideOfBar), Workshop.RimSteel, Workshop.Inside(270), Release.Free),
                Workshop.Inside(260)));
    }
}
