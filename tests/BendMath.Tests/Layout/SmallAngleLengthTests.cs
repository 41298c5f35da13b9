using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Layout;

/// <summary>How much bar a small angle ring takes, where the fiber that keeps its length matters most.</summary>
public sealed class SmallAngleLengthTests
{
    /// <summary>
    /// Common practice, no source: a circle of 10 in takes about 31 to 32 in of this bar before trimming. The plain circumference of the
    /// inside, 31.4 in, is the least; what the library says lies above it and, for this bar, up to 2 % above what is said.
    /// </summary>
    [Theory]
    [InlineData(Release.Free)]
    [InlineData(Release.HeldFlat)]
    public void A_circle_takes_more_than_its_plain_circumference_and_about_what_is_said(Release release)
    {
        Assert.InRange(Blank(SmallAngle.PerfectlyPlastic, release), Math.PI * 10, 32 * 1.02);
        Assert.InRange(Blank(SmallAngle.Hardening, release), Math.PI * 10, 32 * 1.02);
    }

    /// <summary>The ends of the range the neutral axis can lie in, as lengths of bar for a circle of 10 in.</summary>
    [Fact]
    public void Equal_area_axis_and_centroid_bound_the_length()
    {
        Assert.Equal(32.15, Bounds.Low, 0.01);
        Assert.Equal(32.86, Bounds.High, 0.01);
    }

    [Theory]
    [InlineData(Release.Free)]
    [InlineData(Release.HeldFlat)]
    public void Hardening_bar_needs_a_length_between_equal_area_axis_and_centroid(Release release) =>
        Assert.InRange(Blank(SmallAngle.Hardening, release), Bounds.Low, Bounds.High);

    [Theory]
    [InlineData(Release.Free)]
    [InlineData(Release.HeldFlat)]
    public void Bar_without_hardening_needs_less_length(Release release) =>
        Assert.True(Blank(SmallAngle.PerfectlyPlastic, release) < Blank(SmallAngle.Hardening, release) - 0.05);

    /// <summary>
    /// The loaded neutral axis obeys the bounds whatever the law. Release moves the fiber that keeps its length away from the centroid, by
    /// (Δκ/κ_f)(ȳ − y_n) when held flat; without hardening that takes the blank just below the lower bound.
    /// </summary>
    [Fact]
    public void Without_hardening_the_loaded_length_obeys_the_bounds_and_the_released_one_falls_just_below()
    {
        LoadedBend loaded = SmallAngle.PerfectlyPlastic.LoadedFor(SmallAngle.TenInches, Release.HeldFlat);
        Assert.InRange(2 * Math.PI * (5 + loaded.NeutralAxisFromInside.Inches), Bounds.Low, Bounds.High);

        FinishedRing ring = loaded.Release(Release.HeldFlat).Ring;
        double axis = loaded.NeutralAxisFromInside.Inches;
        double centroid = SmallAngle.Bar.FlangeOut.Properties.CentroidFromInside.Inches;
        double lostOverKept = loaded.Curvature / ring.Curvature - 1;
        Assert.Equal(axis - lostOverKept * (centroid - axis), ring.LengthPreservingFiberFromInside.Inches, 1e-9);
        Assert.InRange(Blank(SmallAngle.PerfectlyPlastic, Release.HeldFlat), Bounds.Low - 0.05, Bounds.Low);
        Assert.InRange(Blank(SmallAngle.PerfectlyPlastic, Release.Free), Bounds.Low - 0.05, Bounds.Low);
    }

    /// <summary>
    /// The handbook rule, π·10 + π·(0.75/3 + 0.125) = 32.594 in, lies between the bounds too, above what the library says for this bar.
    /// </summary>
    [Fact]
    public void The_handbook_rule_lies_between_the_bounds_and_above_the_computed_length()
    {
        double rule =
            SmallAngle.Bar.HandbookBlankLength(Length.FromInches(10), FlangeDirection.Out).Inches;
        Assert.Equal(32.594, rule, 5e-4);
        Assert.InRange(rule, Bounds.Low, Bounds.High);
        Assert.InRange(rule - Blank(SmallAngle.Hardening, Release.Free), 0.05, 0.45);
    }

    /// <summary>2π(R + y_p) and 2π(R + ȳ) in inches.</summary>
    private static (double Low, double High) Bounds => (
        2 * Math.PI * (5 + SmallAngle.Bar.FlangeOut.Properties.EqualAreaAxisFromInside.Inches),
        2 * Math.PI * (5 + SmallAngle.Bar.FlangeOut.Properties.CentroidFromInside.Inches));

    private static double Blank(BendAnalysis analysis, Release release) =>
        analysis.LoadedFor(SmallAngle.TenInches, release).Release(release).Ring.BlankLengthFor(Angle.FromDegrees(360)).Inches;
}
