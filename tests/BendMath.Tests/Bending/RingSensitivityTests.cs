using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>The slopes of the finished radius against finite differences of whole calculations.</summary>
public sealed class RingSensitivityTests
{
    private static readonly Density Steel = Density.FromKilogramsPerCubicMeter(7850);

    private static readonly Pressure Modulus = Pressure.FromGigapascals(205);

    private static readonly StressStrainLaw[] Laws =
    [
        new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(290)),
        new LinearHardening(Modulus, Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500)),
        new PowerHardening(Modulus, Pressure.FromMegapascals(530), 0.2),
        new RambergOsgood(Modulus, Pressure.FromMegapascals(290), 12),
        MeasuredCurve.FromEngineering(Modulus,
            [(Ratio.FromDecimalFractions(290.0 / 205e3), Pressure.FromMegapascals(290)),
                (Ratio.FromPercent(3), Pressure.FromMegapascals(380)), (Ratio.FromPercent(15), Pressure.FromMegapascals(460))]),
    ];

    private static readonly OrientedSection[] Sections =
    [
        new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3),
            AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5))).FlangeOut,
        new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp).FlangeIn,
        new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)).Section,
    ];

    public static TheoryData<int, int, Release> Cases() =>
        [.. from law in Enumerable.Range(0, Laws.Length) from section in Enumerable.Range(0, Sections.Length) from release in new[] { Release.Free, Release.HeldFlat } select (law, section, release)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Slopes_are_those_of_small_changes(int law, int section, Release release)
    {
        const double Radius = 0.2437;
        RingSensitivity slopes = Released(Sections[section], Laws[law], Radius, release).Sensitivity;
        const double Step = 1e-5;
        double radius =
            (Finished(Sections[section], Laws[law], Radius * (1 + Step), release)
                - Finished(Sections[section], Laws[law], Radius * (1 - Step), release)) / (2 * Step * Radius);
        Near.Relative(radius, slopes.PerLoadedRadius, 1e-7);
        StressStrainLaw more = Laws[law].WithYield(Laws[law].YieldStress * (1 + Step)),
            less = Laws[law].WithYield(Laws[law].YieldStress * (1 - Step));
        double yield =
            (Finished(Sections[section], more, Radius, release) - Finished(Sections[section], less, Radius, release))
                / (2 * Step * Laws[law].YieldStress.Megapascals);
        Near.Relative(yield, slopes.PerMegapascalOfYield.Meters, 1e-6);
    }

    public static TheoryData<string> Shapes() => [.. Thick(1).Keys];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void The_slope_over_thickness_is_that_of_a_thicker_bar(string shape)
    {
        const double Radius = 0.24, Step = 1e-5;
        (OrientedSection section, double thickness) = Thick(1)[shape];
        double slope =
            (Finished(Thick(1 + Step)[shape].Section, Laws[1], Radius, Release.Free)
                - Finished(Thick(1 - Step)[shape].Section, Laws[1], Radius, Release.Free)) / (2 * Step * thickness);
        Near.Absolute(slope, Released(section, Laws[1], Radius, Release.Free).Sensitivity.PerThickness!.Value,
            Math.Max(1e-7, 1e-5 * Math.Abs(slope)));
    }

    [Fact]
    public void A_shape_with_two_thicknesses_has_no_slope_over_thickness()
    {
        Channel channel =
            new(Length.FromMillimeters(40), Length.FromMillimeters(20), Length.FromMillimeters(3), Length.FromMillimeters(4),
                FlangeFillets.Sharp);
        Assert.Null(Released(channel.FlangesOut, Laws[1], 0.3, Release.Free).Sensitivity.PerThickness);
    }

    private static Dictionary<string, (OrientedSection Section, double Thickness)> Thick(double factor)
    {
        Length t = Length.FromMillimeters(3 * factor), size = Length.FromMillimeters(10 * factor);
        Length leg = Length.FromMillimeters(30), wide = Length.FromMillimeters(25);
        AngleFillets fillets = AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2));
        CornerRadii corners = CornerRadii.Of(2 * t, t);
        return new()
        {
            ["angle, flange in"] = (new EqualAngle(leg, t, fillets).FlangeIn, 0.003),
            ["angle, heel out"] = (new EqualAngle(leg, t, fillets).HeelOut, 0.003),
            ["unequal angle"] = (new UnequalAngle(leg, Length.FromMillimeters(20), t, fillets).ShortLegOut, 0.003),
            ["flat, hard way"] = (new FlatBar(wide, t).HardWay, 0.003),
            ["flat, easy way"] = (new FlatBar(wide, t).EasyWay, 0.003),
            ["round tube"] = (new RoundTube(wide, t).Section, 0.003),
            ["square tube"] = (new SquareTube(wide, t, corners).Section, 0.003),
            ["rectangular tube"] = (new RectangularTube(leg, Length.FromMillimeters(20), t, corners).HardWay, 0.003),
            ["square"] = (new SquareBar(size).OnDiagonal, 0.01),
            ["hexagon"] = (new HexagonBar(size).OnCorner, 0.01),
            ["round"] = (new RoundBar(size).Section, 0.01),
        };
    }

    [Fact]
    public void A_perfectly_plastic_flat_far_beyond_yield_has_the_closed_form()
    {
        // Gardiner 1957 for a slender rectangle: κ_f/κ = 1 − 3x + 4x³ with x = R·σ_y/(E·h/1), so R_f = R/(1 − 3x + 4x³) and dR_f/dσ_y =
        // R_f²/R·(3 − 12x²)·x/σ_y.
        const double Thickness = 1e-3, Radius = 0.1;
        double x = Radius * 290e6 / (205e9 * Thickness);
        double finished = Radius / (1 - 3 * x + 4 * x * x * x);
        FlatBar flat = new(Length.FromMillimeters(20), Length.FromMeters(Thickness));
        RingSensitivity slopes = Released(flat.EasyWay, Laws[0], Radius - Thickness / 2, Release.HeldFlat).Sensitivity;
        Near.Relative(finished * finished / Radius * (3 - 12 * x * x) * x / 290, slopes.PerMegapascalOfYield.Meters, 1e-6);
        Near.Relative(finished * finished / (Radius * Radius) * (1 - 8 * x * x * x), slopes.PerLoadedRadius, 1e-6);
    }

    [Fact]
    public void No_slopes_without_a_ring_or_with_a_pull_or_without_hold_down()
    {
        BendAnalysis analysis = BendAnalysis.Of(Sections[0], new("mild steel", Laws[0], Steel));
        BendRadius radius = BendRadius.Inside(Length.FromMillimeters(240));
        Assert.Throws<InvalidOperationException>(
            () => analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(60))).Release(Release.Free).Sensitivity);
        Assert.Throws<InvalidOperationException>(
            () => analysis.LoadedTo(radius, Force.FromKilonewtons(1)).Release(Release.Free).Sensitivity);
        Assert.Throws<InvalidOperationException>(() => analysis.LoadedUnheldTo(radius).Release(Release.Free).Sensitivity);
    }

    private static ReleasedBend Released(OrientedSection section, StressStrainLaw law, double radius, Release release) =>
        BendAnalysis.Of(section, new("mild steel", law, Steel)).LoadedTo(BendRadius.Inside(Length.FromMeters(radius))).Release(release);

    private static double Finished(OrientedSection section, StressStrainLaw law, double radius, Release release) =>
        Released(section, law, radius, release).Ring.InsideRadius.Meters;
}
