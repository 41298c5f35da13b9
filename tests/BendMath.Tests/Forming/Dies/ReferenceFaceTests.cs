using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Forming.Dies;

/// <summary>What the stamp on a die can mean for the ring that comes off it.</summary>
public sealed class StampedFaceTests
{
    /// <summary>
    /// Common practice, no source: a die stamped 5 in leaves about a 9 in circle of this bar, not 10. Lying on a face of 5 in the bar can
    /// only come out wider than 10 in.
    /// </summary>
    [Fact]
    public void Wrapping_a_five_inch_inside_face_leaves_more_than_ten_inches() =>
        Assert.InRange(Diameter(new WrapBending(), SmallAngle.FiveInches), 10.05, 10.5);

    [Fact]
    public void Wrapping_with_the_stamp_on_the_outside_leaves_less_than_nine_inches() =>
        Assert.InRange(Diameter(new WrapBending(), SmallAngle.DieOf(5, ReferenceFace.OutsideOfBar)), 8.6, 8.9);

    [Fact]
    public void Pinching_over_an_edge_reaches_nine_inches_at_some_stroke()
    {
        IncrementalThreePointBending model = new(SmallAngle.Setup);
        Length? stroke = model.StrokeFor(SmallAngle.Hardening, SmallAngle.Nine, Release.Free);
        Assert.NotNull(stroke);
        FormedBend formed = model.FormAtStroke(SmallAngle.Hardening, stroke.Value);
        Assert.Equal(9, formed.RingWhen(Release.Free).InsideDiameter.Inches, 1e-6);
        Assert.True(formed.Contact!.ThreeContactRadius > formed.RingWhen(Release.Free).InsideRadius);
    }

    private static double Diameter(FormingModel model, Die die) =>
        model.Form(SmallAngle.Hardening, die).RingWhen(Release.Free).InsideDiameter.Inches;
}
