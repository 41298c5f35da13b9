using BendMath.Distortion;
using BendMath.Distortion.Checks;
using static BendMath.Tests.Distortion.Bends;

namespace BendMath.Tests.Distortion;

/// <summary>Keystoning, twist, dish and the rules of codes.</summary>
public sealed class SolidCheckTests
{
    /// <summary>Constant volume, by definition: length times the square of the thickness stays.</summary>
    [Fact]
    public void A_fiber_keeps_its_volume()
    {
        LoadedBend bend = At(Flat.HardWay, 100);
        double Thickness(double strain) => 1 / Math.Sqrt(1 + strain);
        Near.Relative(
            Thickness(bend.InnerFiberStrain.DecimalFractions) - Thickness(bend.OuterFiberStrain.DecimalFractions),
            KeystoneCheck.Judge(bend).Finding!.Demand, 1e-12);
    }

    /// <summary>To first order the keystone is half the depth over the radius.</summary>
    [Fact]
    public void A_flat_on_edge_becomes_a_keystone()
    {
        DistortionFinding finding = KeystoneCheck.Judge(At(Flat.HardWay, 2500)).Finding!;
        Near.Relative(0.5 * 25 / 2512.5, finding.Demand, 1e-4);
        Assert.Null(KeystoneCheck.Judge(At(Flat.EasyWay, 250)).Finding);
        Assert.Null(KeystoneCheck.Judge(At(new RoundBar(Mm(10)).Section, 250)).Finding);
    }

    [Fact]
    public void Rounds_squares_and_hexagons_are_no_stiffer_one_way()
    {
        OrientedSection[] sections = [new RoundBar(Mm(12)).Section, new SquareBar(Mm(12)).Section, new HexagonBar(Mm(17)).OnFlat];
        foreach (OrientedSection section in sections)
        {
            DistortionFinding finding = TwistCheck.Judge(At(section, 200), DistortionSettings.Default).Finding!;
            Near.Relative(1, finding.Demand, 1e-9);
            Assert.Equal(RiskLevel.Medium, finding.Level);
        }

        Assert.Null(TwistCheck.Judge(At(Flat.EasyWay, 240), DistortionSettings.Default).Finding);
        Assert.Null(TwistCheck.Judge(At(Flat.HardWay, 240), DistortionSettings.Default).Finding);
    }

    [Fact]
    public void The_dish_is_that_of_the_released_ring()
    {
        LoadedBend rim = At(RimAngle.FlangeOut, 240);
        DistortionFinding free = DishCheck.Judge(rim, DistortionSettings.Default).Finding!;
        Near.Relative(Math.Abs(Math.Tan(rim.Release(Release.Free).Ring.DishAngle.Radians)), free.Demand, 1e-12);
        Assert.Contains(FormattableString.Invariant($"{Math.Abs(rim.HoldDownMoment.NewtonMeters):0.#} N·m"), free.Sentence,
            StringComparison.Ordinal);
        Assert.Equal(RiskLevel.Low, DishCheck.Judge(rim, new(release: Release.HeldFlat)).Finding!.Level);
        Assert.Null(DishCheck.Judge(At(RimAngle.HeelIn, 240), DistortionSettings.Default).Finding);
    }

    /// <summary>
    /// IACS Common Structural Rules: 4.8, 10 and 20 % strain at inside radii of 10, 4.5 and 2 thicknesses, e = t/(2r + t).
    /// </summary>
    [Theory]
    [InlineData(StrainRule.TenThicknesses, 10, 4.8)]
    [InlineData(StrainRule.FourAndHalfThicknesses, 4.5, 10)]
    [InlineData(StrainRule.TwoThicknesses, 2, 20)]
    public void Radius_rules_hold_at_their_strain(StrainRule rule, double times, double percent)
    {
        FlatBar plate = new(Mm(60), Mm(10));
        LoadedBend at = At(plate.EasyWay, 10 * times);
        Assert.Equal(RiskLevel.Low, StrainRuleCheck.Judge(at, rule).Finding!.Level);
        Assert.Equal(RiskLevel.High, StrainRuleCheck.Judge(At(plate.EasyWay, 9.99 * times), rule).Finding!.Level);
        Near.Absolute(percent, 100 * StrainRuleCheck.Judge(at, StrainRule.FivePercent).Finding!.Demand, 0.05);
    }

    /// <summary>ASME VIII UCS-79 (from memory): 50·t/R_f percent, R_f the final middle radius.</summary>
    [Fact]
    public void The_strain_rule_allows_five_percent()
    {
        FlatBar plate = new(Mm(60), Mm(10));
        Near.Relative(0.5 * 10 / 125, StrainRuleCheck.Judge(At(plate.EasyWay, 120), StrainRule.FivePercent).Finding!.Demand, 1e-12);
        Assert.Equal(RiskLevel.Low, StrainRuleCheck.Judge(At(plate.EasyWay, 95), StrainRule.FivePercent).Finding!.Level);
        Assert.Equal(RiskLevel.High, StrainRuleCheck.Judge(At(plate.EasyWay, 94.9), StrainRule.FivePercent).Finding!.Level);
        Assert.Null(DistortionReport.Of(At(plate.EasyWay, 95)).Find("extreme fiber strain of 5 %"));
        Assert.NotNull(
            DistortionReport.Of(At(plate.EasyWay, 95), new DistortionSettings(rules: [StrainRule.FivePercent]))
                .Find("extreme fiber strain of 5 %"));
    }
}
