using System.Globalization;
using BendMath.Bending.NeutralAxes;
using UnitsNet;

namespace BendMath.Tests.Bending.NeutralAxes;

public sealed class NeutralAxisAnswersTests
{
    private static readonly BarMaterial Steel = new(
        "mild steel", new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(290)),
            Density.FromKilogramsPerCubicMeter(7850), Ratio.FromPercent(26));

    private static readonly BarMaterial Hardening = new(
        "mild steel", new PowerHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(600), 0.2),
            Density.FromKilogramsPerCubicMeter(7850), Ratio.FromPercent(26));

    /// <summary>
    /// Machinery's Handbook, 31st ed. (2020), p. 2691 (found): 3 × 3 × 3/8 in angle inside and outside a 20 ft stand-pipe. The book rounds
    /// π·240 to 754, which allows 0.02 in.
    /// </summary>
    [Fact]
    public void Machinerys_Handbook_stand_pipe_example()
    {
        EqualAngle angle = Angle3();
        Length outer = AtHeelDiameter(angle.FlangeOut, 240, flangeOut: true);
        Length inner = AtHeelDiameter(angle.FlangeIn, 240, flangeOut: false);
        Assert.Equal(758.319, outer.Inches, 0.022);
        Assert.Equal(749.681, inner.Inches, 0.022);
    }

    /// <summary>
    /// Middle fiber in print and measured: trade forum answer, 20 in outside diameter of 1/4 in flat (found; uses 3.14); Templeton 1855,
    /// hoop of 7/8 in bar, 16 1/2 in (found).
    /// </summary>
    [Theory]
    [InlineData(20, 0.25, 62.015, 0.04)]
    [InlineData(16.5, 0.875, 49, 0.13)]
    public void Rings_of_flat_and_bar_by_the_middle_fiber(double outside, double thickness, double length, double rounding)
    {
        FlatBar flat = new(Length.FromInches(1), Length.FromInches(thickness));
        NeutralAxisAnswers answers =
            NeutralAxisAnswers.For(BendAnalysis.Of(flat.EasyWay, Steel), BendRadius.OutsideDiameter(Length.FromInches(outside)));
        Assert.All(
            new[] { NeutralAxisMethod.Centroid, NeutralAxisMethod.EqualArea, NeutralAxisMethod.Loaded, NeutralAxisMethod.FlatStandard },
            method => Assert.Equal(length, answers.Find(method)!.BlankLength.Inches, rounding));
    }

    /// <summary>Measured, workshop forum (found): brass strip 1 mm on a 16 mm mandrel, 53.37 mm; 0.1 mm of reading.</summary>
    [Fact]
    public void A_measured_ferrule_agrees_with_the_middle_fiber()
    {
        FlatBar strip = new(Length.FromMillimeters(10), Length.FromMillimeters(1));
        NeutralAxisAnswers answers =
            NeutralAxisAnswers.For(BendAnalysis.Of(strip.EasyWay, Steel), BendRadius.InsideDiameter(Length.FromMillimeters(16)));
        Assert.Equal(53.37, answers.Find(NeutralAxisMethod.Loaded)!.BlankLength.Millimeters, 0.1);
        Assert.Equal(53.37, answers.Find(NeutralAxisMethod.FlatStandard)!.BlankLength.Millimeters, 0.1);
        Assert.Equal(0, answers.Find(NeutralAxisMethod.Centroid)!.FiberFromInside.Millimeters - 0.5, 1e-12);
    }

    /// <summary>Positions from the heel face solved by an independent program, three decimals; not a published source.</summary>
    [Theory]
    [InlineData(2, 0.25, 0.234, 0.349, 0.401, 0.477, 0.592)]
    [InlineData(3, 0.375, 0.352, 0.523, 0.602, 0.716, 0.888)]
    [InlineData(4, 0.5, 0.469, 0.698, 0.803, 0.954, 1.183)]
    [InlineData(8, 1, 0.938, 1.396, 1.605, 1.909, 2.367)]
    public void Rigid_power_law_of_sharp_angles(double leg, double thickness, double n0, double n2, double n3, double n5, double n10)
    {
        EqualAngle angle = new(Length.FromInches(leg), Length.FromInches(thickness), AngleFillets.Sharp);
        foreach ((double exponent, double expected) in new[] { (0, n0), (0.2, n2), (0.3, n3), (0.5, n5), (1, n10) })
        {
            double fiber = PowerFiber(angle.FlangeOut, exponent);
            Assert.Equal(expected, fiber / 0.0254, 0.00051);
            Assert.Equal(leg, (fiber + PowerFiber(angle.FlangeIn, exponent)) / 0.0254, 1e-10);
        }
    }

    [Fact]
    public void Rigid_power_law_runs_from_the_equal_area_axis_to_the_centroid()
    {
        OrientedSection section =
            new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3),
                AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5))).FlangeOut;
        Assert.Equal(section.Properties.EqualAreaAxisFromInside.Meters, PowerFiber(section, 0), 1e-14);
        Assert.Equal(section.Properties.CentroidFromInside.Meters, PowerFiber(section, 1), 1e-14);
        Assert.Equal(0.006, PowerFiber(new RoundBar(Length.FromMillimeters(12)).Section, 0.37), 1e-14);
    }

    [Fact]
    public void An_angle_has_every_answer_but_the_one_for_flats()
    {
        NeutralAxisAnswers answers =
            NeutralAxisAnswers.For(BendAnalysis.Of(Angle3().FlangeOut, Hardening), BendRadius.Inside(Length.FromInches(8)));
        Assert.Equal(
            Enum.GetValues<NeutralAxisMethod>().Where(method => method != NeutralAxisMethod.FlatStandard),
                answers.Answers.Select(answer => answer.Method));
        Assert.Equal(answers.Longest.BlankLength - answers.Shortest.BlankLength, answers.Spread);
        Assert.Equal(NeutralAxisMethod.EqualArea, answers.Shortest.Method);
        Assert.Equal(NeutralAxisMethod.Centroid, answers.Longest.Method);
        Assert.Equal(0.2, 0.2 + PowerFiber(Angle3().FlangeOut, 0.2) - answers.Find(NeutralAxisMethod.RigidPowerLaw)!.FiberFromInside.Meters,
            1e-14);
    }

    [Fact]
    public void The_fiber_after_release_gives_the_blank_of_the_finished_ring()
    {
        NeutralAxisAnswers answers =
            NeutralAxisAnswers.For(BendAnalysis.Of(Angle3().FlangeIn, Steel), BendRadius.Inside(Length.FromInches(8)));
        foreach ((NeutralAxisMethod method,
            Release release) in new[] { (NeutralAxisMethod.ReleasedFree, Release.Free),
                (NeutralAxisMethod.ReleasedHeldFlat, Release.HeldFlat) })
        {
            NeutralAxisAnswer answer = answers.Find(method)!;
            Length blank = answers.Loaded.Release(release).Ring.BlankLengthFor(Angle.FromDegrees(360));
            Assert.Equal(blank.Meters, answer.BlankLengthAt(answer.FoundAtInsideRadius).Meters, 1e-12);
        }
    }

    [Fact]
    public void A_bar_that_springs_back_straight_has_no_answer_after_release()
    {
        FlatBar flat = new(Length.FromMillimeters(25), Length.FromMillimeters(5));
        NeutralAxisAnswers answers = NeutralAxisAnswers.For(BendAnalysis.Of(flat.EasyWay, Steel), BendRadius.Inside(Length.FromMeters(50)));
        Assert.Null(answers.Find(NeutralAxisMethod.ReleasedFree));
        Assert.Null(answers.Find(NeutralAxisMethod.RigidPowerLaw));
        Assert.Null(answers.Find(NeutralAxisMethod.AngleRule));
        Assert.Contains(answers.Advisories, advisory => advisory.Code == "springs-straight");
    }

    /// <summary>The table of the page on the neutral axis is what the library computes.</summary>
    [Fact]
    public void The_page_on_the_neutral_axis_prints_what_the_library_computes()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "concepts", "neutral-axis.md"));
        NeutralAxisAnswers answers =
            NeutralAxisAnswers.For(BendAnalysis.Of(Angle3().FlangeOut, Hardening), BendRadius.Inside(Length.FromInches(8)));
        Assert.All(answers.Answers, answer => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture,
                $"| {answer.Name} | {answer.FiberFromInside.Inches:0.000} | {answer.BlankLength.Inches:0.00} |"), page,
                    StringComparison.Ordinal));
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{answers.Spread.Inches:0.00} in"), page, StringComparison.Ordinal);
    }

    /// <summary>A radius that leaves next to no inside radius is refused as what the caller gave, not as what was made of it.</summary>
    [Fact]
    public void A_radius_that_leaves_less_than_a_micrometer_inside_is_blamed_by_name()
    {
        BendAnalysis analysis = BendAnalysis.Of(Angle3().FlangeOut, Steel);
        Length centroid = analysis.Section.Properties.CentroidFromInside;
        foreach (double beyond in new[] { -1e-3, 0, 1e-12, 1e-7 })
        {
            BendRadius loaded = BendRadius.Centroid(centroid + Length.FromMeters(beyond));
            Assert.Contains("must leave an inside radius",
                Assert.Throws<ArgumentOutOfRangeException>("loaded", () => NeutralAxisAnswers.For(analysis, loaded)).Message,
                    StringComparison.Ordinal);
            Assert.Throws<ArgumentOutOfRangeException>("loaded", () => NeutralAxisAnswers.For(analysis, loaded, 0.2));
        }
    }

    private static EqualAngle Angle3() => new(Length.FromInches(3), Length.FromInches(0.375), AngleFillets.Sharp);

    private static double PowerFiber(OrientedSection section, double exponent) => NeutralAxisAnswers
        .For(BendAnalysis.Of(section, Steel), BendRadius.Inside(10 * section.Depth), exponent)
        .Find(NeutralAxisMethod.RigidPowerLaw)!.FiberFromInside.Meters;

    private static Length AtHeelDiameter(OrientedSection section, double inches, bool flangeOut)
    {
        Length diameter = Length.FromInches(inches);
        BendRadius radius = flangeOut ? BendRadius.InsideDiameter(diameter) : BendRadius.OutsideDiameter(diameter);
        return NeutralAxisAnswers.For(BendAnalysis.Of(section, Steel), radius).Find(NeutralAxisMethod.AngleRule)!.BlankLength;
    }
}
