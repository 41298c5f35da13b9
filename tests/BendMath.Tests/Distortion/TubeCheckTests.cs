using BendMath.Distortion;
using BendMath.Distortion.Checks;
using UnitsNet;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion;

public sealed class TubeCheckTests
{
    /// <summary>UFC/UFGS, Table 5-4 (the figures of ASME B31.1): wall to order over least wall.</summary>
    [Theory]
    [InlineData(6, 1.06)]
    [InlineData(5, 1.08)]
    [InlineData(4, 1.14)]
    [InlineData(3, 1.25)]
    public void The_pipe_table_is_met_at_its_rows(double radius, double factor) =>
        Assert.Equal(factor, PipeWallCheck.OrderFactor(radius), 12);

    [Fact]
    public void The_pipe_table_is_linear_between_its_rows_and_refused_outside()
    {
        Assert.Equal((1.25 + 1.14) / 2, PipeWallCheck.OrderFactor(3.5), 12);
        Assert.Equal((1.08 + 1.06) / 2, PipeWallCheck.OrderFactor(5.5), 12);
        Assert.Equal("radiusOverDiameter", Assert.Throws<ArgumentOutOfRangeException>(() => PipeWallCheck.OrderFactor(2.99)).ParamName);
        Assert.Equal("radiusOverDiameter", Assert.Throws<ArgumentOutOfRangeException>(() => PipeWallCheck.OrderFactor(6.01)).ParamName);
        DistortionReport wide = DistortionReport.Of(At(Tube.Section, 400), new DistortionSettings(requiredWall: Mm(3)));
        Assert.Contains(wide.NotChecked, text => text.Contains("from 3 to 6 diameters", StringComparison.Ordinal));
    }

    /// <summary>
    /// Constant volume, circumference kept: t/t_out = 1.083, 1.100, 1.125, 1.167 at R/D = 6, 5, 4, 3 (N. C. Tang 2000, from memory),
    /// recomputed.
    /// </summary>
    [Theory]
    [InlineData(6, 1.083)]
    [InlineData(5, 1.100)]
    [InlineData(4, 1.125)]
    [InlineData(3, 1.167)]
    public void The_wall_thins_at_constant_volume(double radius, double factor)
    {
        double Wall(WallFlow flow) => TubeWallCheck.OutsideWall(Mm(3), Mm(40), Mm(40 * radius), flow).Millimeters;
        Near.Absolute(factor, 3 / Wall(WallFlow.CircumferenceKept), 0.0005);
        Near.Relative(3 * Wall(WallFlow.CircumferenceKept), Math.Pow(Wall(WallFlow.Free), 2), 1e-12);
        double middle = TubeWallCheck.InsideWall(Mm(3), Mm(40), Mm(40 * radius), WallFlow.CircumferenceKept).Millimeters;
        Near.Relative(1 / 3.0 * 2, 1 / middle + 1 / Wall(WallFlow.CircumferenceKept), 1e-12, "1/t of both walls");
    }

    /// <summary>
    /// Brazier 1927 (from memory, re-derived): at κ = (√2/3)·t/(r²·√(1 − ν²)) the flattening is 2/9 and the tube collapses.
    /// </summary>
    [Fact]
    public void A_free_tube_collapses_at_the_limit_of_Brazier()
    {
        RoundTube thin = new(Mm(41), Mm(1));
        double curvature = Math.Sqrt(2) / 3 * 0.001 / (0.02 * 0.02 * Math.Sqrt(1 - 0.09));
        LoadedBend bend = BendAnalysis.Of(thin.Section, Steel).LoadedAt(ReciprocalLength.FromInverseMeters(curvature));
        Near.Relative(4 / 9.0, TubeOvalityCheck.Of(bend, DistortionSettings.Default)!.Demand, 1e-9);
        Assert.Equal(RiskLevel.High, TubeOvalityCheck.Of(At(thin.Section, 500), DistortionSettings.Default)!.Level);
        Assert.Equal(RiskLevel.Medium, TubeOvalityCheck.Of(At(thin.Section, 500), new(new(holdsTube: true)))!.Level);
        Near.Relative(0.08, TubeOvalityCheck.Measured(Mm(52), Mm(48), Mm(50)).DecimalFractions, 1e-12);
    }

    /// <summary>
    /// (2/3)·(t/r)·√(E_t/E_s), for a power law √(E_t/E_s) = √n (G. Gerard, from memory); without hardening the wall wrinkles as it yields.
    /// </summary>
    [Fact]
    public void A_free_wall_wrinkles_by_its_hardening()
    {
        PowerHardening power = new(Pressure.FromGigapascals(205), Pressure.FromMegapascals(600), 0.2);
        Near.Relative(2 / 3.0 * 0.1 * Math.Sqrt(0.2), TubeWrinklingCheck.CriticalStrain(power, Mm(42), Mm(2)).DecimalFractions, 1e-9,
            "power law");
        Near.Relative(290 / 210e3, TubeWrinklingCheck.CriticalStrain(Plastic.Law, Mm(42), Mm(2)).DecimalFractions, 1e-9,
            "perfectly plastic");
        PerfectlyPlastic strong = new(Pressure.FromGigapascals(210), Pressure.FromGigapascals(40));
        Near.Relative(2 / 3.0 * 0.1, TubeWrinklingCheck.CriticalStrain(strong, Mm(42), Mm(2)).DecimalFractions, 1e-9, "elastic");
        double linear = TubeWrinklingCheck.CriticalStrain(Steel.Law, Mm(42), Mm(2)).DecimalFractions;
        double secant = (290e6 + 1.5e9 * (linear - 290e6 / 210e9)) / linear;
        Near.Relative(2 / 3.0 * 0.1 * Math.Sqrt(1.5e9 / secant), linear, 1e-9, "linear hardening");
    }

    /// <summary>Groover, bending of tube: about 1.5 diameters with a mandrel, 3 without.</summary>
    [Theory]
    [InlineData(3.01, false, RiskLevel.Low)]
    [InlineData(2.99, false, RiskLevel.Medium)]
    [InlineData(1.49, false, RiskLevel.High)]
    [InlineData(1.51, true, RiskLevel.Low)]
    [InlineData(1.49, true, RiskLevel.High)]
    public void The_radius_counts_in_diameters(double diameters, bool supported, RiskLevel level) =>
        Assert.Equal(level, TubeRatioCheck.Of(At(Tube.Section, 33.7 * (diameters - 0.5)), new(new(holdsTube: supported)))!.Level);

}
