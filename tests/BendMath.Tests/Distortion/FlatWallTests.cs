using BendMath.Distortion;
using BendMath.Distortion.Checks;
using UnitsNet;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion;

public sealed class FlatWallTests
{
    private static readonly SquareTube Square = new(Mm(40), Mm(2), CornerRadii.Of(Mm(4), Mm(2)));

    /// <summary>
    /// A strip clamped at both edges under an even push, rigid plastic: hinges at the edges and at any place between; the work of the push
    /// against that of the hinges, least over the place. With M_p = σt²/4 and the push σt/R the mechanism appears where b²/(Rt) is the
    /// value at which the check calls the risk high.
    /// </summary>
    [Fact]
    public void A_wall_gives_way_at_its_weakest_mechanism()
    {
        // Push times b² over M_p, for a middle hinge at share x of the width.
        double weakest = Enumerable.Range(1, 9999).Select(i => i / 1e4).Min(x => 4 * (1 / x + 1 / (1 - x)));

        // σt/R·b² = weakest·σt²/4.
        double ratio = weakest / 4;
        double radius = 38 * 38 / (ratio * 2);
        Assert.Equal(RiskLevel.High,
            WallSinkingCheck.Judge(At(Square.Orientations[0], 0.999 * radius - 1), DistortionSettings.Default).Finding!.Level);
        Assert.Equal(RiskLevel.Medium,
            WallSinkingCheck.Judge(At(Square.Orientations[0], 1.001 * radius - 1), DistortionSettings.Default).Finding!.Level);
        Assert.Equal(RiskLevel.Low,
            WallSinkingCheck.Judge(At(Square.Orientations[0], 2.001 * radius), DistortionSettings.Default).Finding!.Level);
        Assert.Equal(RiskLevel.Medium,
            WallSinkingCheck.Judge(At(Square.Orientations[0], 0.8 * radius), new(new(holdsTube: true))).Finding!.Level);
        Assert.Null(WallSinkingCheck.Judge(At(Tube.Section, 200), DistortionSettings.Default).Finding);
    }

    /// <summary>
    /// A long plate, hinged along both edges, in half-waves of length λ: N·b²/(π²D) = C₁(b/λ)² + 2 + (λ/b)² with D = E_s·t³/9 and C₁ = 1/4
    /// + 3/4·E_t/E_s (deformation theory, incompressible, E. Z. Stowell 1948, from memory), least over λ found by trying; and its elastic
    /// end, k = 4 of EN 1993-1-5, Table 4.1.
    /// </summary>
    [Theory]
    [InlineData(1500)]
    [InlineData(0)]
    [InlineData(20000)]
    public void A_plate_wrinkles_in_its_weakest_wave(double tangent)
    {
        StressStrainLaw law = tangent > 0
            ? new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(tangent))
            : new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290));
        double strain = WallWrinklingCheck.Critical(law, new(0.038, 0.002));
        double secant = law.StressAt(Ratio.FromDecimalFractions(strain)).Megapascals / strain;
        double share = law.TangentModulusAt(Ratio.FromDecimalFractions(strain)).Megapascals / secant;
        double waves =
            Enumerable.Range(200, 2000).Select(i => i / 1e3).Min(wave => (0.25 + 0.75 * share) / (wave * wave) + 2 + wave * wave);

        // σ·t·b² = waves·π²·E_s·t³/9 and σ = E_s·e.
        Near.Relative(waves * Math.PI * Math.PI / 9 * (2.0 / 38) * (2.0 / 38), strain, 1e-6);
        double elastic = WallWrinklingCheck.Critical(law, new(0.5, 0.002));
        Near.Relative(4 * Math.PI * Math.PI / 12 / (1 - 0.25) * (2.0 / 500) * (2.0 / 500), elastic, 1e-12);
    }

    [Fact]
    public void The_report_of_a_square_tube_holds_both_and_a_round_tube_neither()
    {
        DistortionReport square = DistortionReport.Of(At(Square.Orientations[0], 200));
        Assert.NotNull(square.Find("wall sinking"));
        Assert.NotNull(square.Find("wall wrinkling"));
        Assert.Contains(square.NotChecked, text => text.Contains("side walls", StringComparison.Ordinal));
        Assert.DoesNotContain(DistortionReport.Of(At(Tube.Section, 200)).NotChecked,
            text => text.Contains("side walls", StringComparison.Ordinal));
        Assert.Null(DistortionReport.Of(At(Tube.Section, 200)).Find("wall sinking"));
    }
}
