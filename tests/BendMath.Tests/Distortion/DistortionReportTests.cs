using BendMath.Distortion;
using BendMath.Evidence;
using BendMath.Sections.Outlines;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Distortion;

/// <summary>A low risk of what is checked is no claim about what is not.</summary>
public sealed class DistortionReportTests
{
    [Fact]
    public void A_thin_tube_is_not_called_clean()
    {
        DistortionReport report = Of(new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(1)).Section);
        Assert.Equal(RiskLevel.High, report.Level);
        Assert.Equal(RiskLevel.High, report.Find("tube wrinkling")!.Level);
        Assert.Equal(RiskLevel.High, report.Find("tube ovality")!.Level);
        Assert.DoesNotContain(report.Findings, finding => finding.Sentence.Contains("clean", StringComparison.Ordinal));
        Assert.All(report.Findings, finding => Assert.NotEmpty(finding.Validity));
    }

    [Fact]
    public void An_angle_is_checked_for_its_axial_leg_and_flange_in_for_its_free_edge()
    {
        EqualAngle angle = new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp);
        Assert.NotNull(Of(angle.FlangeOut).Find("leg angle"));
        Assert.Null(Of(angle.FlangeOut).Find("compressed free edge"));
        Assert.NotNull(Of(angle.FlangeIn).Find("compressed free edge"));
    }

    [Fact]
    public void A_flat_rolls_over_the_hard_way_only()
    {
        FlatBar flat = new(Length.FromMillimeters(25), Length.FromMillimeters(5));
        Assert.Contains(Of(flat.HardWay).NotChecked, text => text.Contains("rolling over", StringComparison.Ordinal));
        Assert.Empty(Of(flat.EasyWay).NotChecked);
        Assert.NotNull(Of(new SquareBar(Length.FromMillimeters(12)).Section).Find("twist"));
    }

    /// <summary>An outline from a drawing does not say which of its parts are legs or walls.</summary>
    [Fact]
    public void An_unknown_outline_says_so() => Assert.Contains(
        Of(new CustomBar("slot", new Outline([Sections.Drawn.Slot()])).AsDrawn).NotChecked,
            text => text.Contains("nobody said", StringComparison.Ordinal));

    /// <summary>
    /// Of the bounds only 0.15 is common practice; 0.25 and half the elongation are settings, and so is every bound of the shop's own.
    /// </summary>
    [Fact]
    public void Settings_are_not_called_common_practice()
    {
        Assert.Equal(SourceKind.CommonPractice, Leg(DistortionSettings.Default, 240).Source.Kind);
        Assert.Equal(SourceKind.Setting, Leg(DistortionSettings.Default, 150).Source.Kind);
        Assert.Equal(SourceKind.Setting, Leg(DistortionSettings.Default, 100).Source.Kind);
        Assert.Equal(SourceKind.Setting, Leg(new DistortionSettings(lowLegToRadius: 0.2, mediumLegToRadius: 0.3), 240).Source.Kind);
        Assert.Equal(SourceKind.Setting,
            Assert.Single(Of(Workshop.Rim).Findings, finding => finding.Check == "outside face strain").Source.Kind);
    }

    private static DistortionFinding Leg(DistortionSettings settings, double radius) =>
        settings.LegToRadius(Length.FromMillimeters(30), Length.FromMillimeters(radius));

    private static DistortionReport Of(OrientedSection section) => DistortionReport.Of(
        BendAnalysis.Of(section, new("mild steel", Workshop.Steel.Law, Density.FromKilogramsPerCubicMeter(7850), Ratio.FromPercent(26)))
            .LoadedTo(Workshop.Inside(240)));
}
