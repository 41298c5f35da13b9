using BendMath.Distortion;
using BendMath.Distortion.Checks;
using UnitsNet;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion.Checks;

/// <summary>
/// Plastic buckling of a leg held along one edge: closed forms of deformation theory (Stowell; Gerard), and the buckling factors of EN
/// 1993-1-5, Table 4.2; both from memory.
/// </summary>
public sealed class FreeEdgeCheckTests
{
    private static readonly PowerHardening Power = new(Pressure.FromGigapascals(2e5), Pressure.FromMegapascals(600), 0.2);

    /// <summary>Even compression: (t/b)²/3 whatever the law.</summary>
    [Fact]
    public void Even_compression_gives_a_third_of_the_square_for_every_law()
    {
        StressStrainLaw[] laws =
        [
            Steel.Law, Plastic.Law, Power, new RambergOsgood(Pressure.FromGigapascals(70), Pressure.FromMegapascals(240), 12),
        ];
        foreach (StressStrainLaw law in laws)
        {
            Near.Relative(0.01 / 3, Critical(law, 10, 1, 1), 1e-9, law.ToString());
        }
    }

    /// <summary>
    /// Strain falling to zero at the hinge, power law: (t/b)²·(n + 3)/(9n). The elastic line before it is made so steep that it does not
    /// count.
    /// </summary>
    [Fact]
    public void A_gradient_raises_it_by_the_exponent_of_a_power_law() => Near.Relative(
        0.01 * 3.5 / 4.5, Critical(new PowerHardening(Pressure.FromGigapascals(5.9e5), Pressure.FromMegapascals(600), 0.5), 10, 1, 0),
            1e-5);

    /// <summary>
    /// The same with the part x_c next to the hinge that stays elastic: ∫E_s dx = (K·eⁿ⁻¹·b/n)·(1 − (1 − n)·x_cⁿ), x_c = e_y/e.
    /// </summary>
    [Fact]
    public void An_elastic_part_next_to_the_hinge_counts()
    {
        double critical = Critical(Power, 10, 1, 0);
        double core = Math.Pow(600e6 / 2e14, 1.25) / critical;
        Near.Relative(0.01 * 3.2 / 1.8 * (1 - 0.8 * Math.Pow(core, 0.2)), critical, 1e-8);
    }

    /// <summary>k = 0.43, 0.57, 0.85 for strain ratios 1, 0, −1. The first, printed for 0.425, is rounded by 1.2 %.</summary>
    [Theory]
    [InlineData(0, 0.57)]
    [InlineData(-1, 0.85)]
    public void Elastic_gradients_follow_the_factors_of_the_standard(double ratio, double factor)
    {
        PerfectlyPlastic strong = new(Pressure.FromGigapascals(210), Pressure.FromGigapascals(80));
        Near.Relative(factor / 0.43, Critical(strong, 10, 1, ratio) / Critical(strong, 10, 1, 1), 0.012);
    }

    [Fact]
    public void A_leg_in_a_slot_is_left_to_a_trial()
    {
        LoadedBend tight = At(RimAngle.FlangeIn, 100);
        DistortionFinding free = FreeEdgeCheck.Judge(tight, DistortionSettings.Default).Finding!;
        DistortionFinding held = FreeEdgeCheck.Judge(tight, new(new(holdsFreeEdge: true))).Finding!;
        Assert.Equal((RiskLevel.High, RiskLevel.Medium), (free.Level, held.Level));
        Assert.Equal(free.Limit, held.Limit);
        Assert.Contains("no source", held.Sentence, StringComparison.Ordinal);
        Assert.Null(FreeEdgeCheck.Judge(At(RimAngle.FlangeOut, 100), DistortionSettings.Default).Finding);
    }

    /// <summary>
    /// Half a leg against the center on its bisector: the hinge lies closer to the neutral axis than on an upright leg of that length.
    /// </summary>
    [Fact]
    public void The_bisector_is_checked_along_its_leg()
    {
        DistortionFinding finding = FreeEdgeCheck.Judge(At(RimAngle.HeelOut, 240), DistortionSettings.Default).Finding!;
        LoadedBend bend = At(RimAngle.HeelOut, 240);
        Near.Relative(-bend.StrainAt(Mm(1.5 * Math.Sqrt(0.5))).DecimalFractions, finding.Demand, 1e-12);
    }

    private static double Critical(StressStrainLaw law, double width, double thickness, double ratio) =>
        FreeEdgeCheck.Critical(law, thickness / width, ratio);
}
