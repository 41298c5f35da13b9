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
        Assert.Equal(factor, PipeWallCheck.Factor(radius)!.Value, 12);

    [Fact]
    public void The_pipe_table_is_linear_between_its_rows_and_refused_outside()
    {
        Assert.Equal((1.25 + 1.14) / 2, PipeWallCheck.Factor(3.5)!.Value, 12);
        Assert.Equal((1.08 + 1.06) / 2, PipeWallCheck.Factor(5.5)!.Value, 12);
        Assert.Null(PipeWallCheck.Factor(2.99));
        Assert.Null(PipeWallCheck.Factor(6.01));
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
        DistortionFinding finding = TubeWallCheck.Judge(At(new RoundTube(Mm(40), Mm(3)).Section, 40 * (radius - 0.5))).Finding!;
        Near.Absolute(factor, 1 / (1 - finding.Demand), 0.0005);
        double inside = 3 / (2 - (1 / (1 - finding.Demand)));
        Assert.Contains(FormattableString.Invariant($"thickens to {inside:0.##} mm"), finding.Sentence, StringComparison.Ordinal);
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
        Near.Relative(4 / 9.0, TubeOvalityCheck.Judge(bend, DistortionSettings.Default).Finding!.Demand, 1e-9);
        Assert.Equal(RiskLevel.High, TubeOvalityCheck.Judge(At(thin.Section, 500), DistortionSettings.Default).Finding!.Level);
        Assert.Equal(RiskLevel.Medium, TubeOvalityCheck.Judge(At(thin.Section, 500), new(new(holdsTube: true))).Finding!.Level);
        Near.Relative(0.08, TubeShape.MeasuredOvality(Mm(52), Mm(48), Mm(50)).DecimalFractions, 1e-12);
    }

    /// <summary>
    /// (2/3)·(t/r)·√(E_t/E_s), for a power law √(E_t/E_s) = √n (G. Gerard, from memory); without hardening the wall wrinkles as it yields.
    /// </summary>
    [Fact]
    public void A_free_wall_wrinkles_by_its_hardening()
    {
        PowerHardening power = new(Pressure.FromGigapascals(205), Pressure.FromMegapascals(600), 0.2);
        Near.Relative(2 / 3.0 * 0.1 * Math.Sqrt(0.2), TubeWrinklingCheck.Critical(power, 0.042, 0.002), 1e-9,
            "power law");
        Near.Relative(290 / 210e3, TubeWrinklingCheck.Critical(Plastic.Law, 0.042, 0.002), 1e-9,
            "perfectly plastic");
        PerfectlyPlastic strong = new(Pressure.FromGigapascals(210), Pressure.FromGigapascals(40));
        Near.Relative(2 / 3.0 * 0.1, TubeWrinklingCheck.Critical(strong, 0.042, 0.002), 1e-9, "elastic");
        double linear = TubeWrinklingCheck.Critical(Steel.Law, 0.042, 0.002);
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
        Assert.Equal(level,
            TubeRatioCheck.Judge(At(Tube.Section, 33.7 * (diameters - 0.5)), new(new(holdsTube: supported))).Finding!.Level);

}
