using BendMath.Materials;
using UnitsNet;

namespace BendMath.Tests.Materials;

public sealed class HotRolledSteelTests
{
    private static readonly int[] Percents = [1, 2, 3, 5, 8, 10, 15, 20];

    public static TheoryData<ReferenceRow> Printed => ReferenceTable.Load("Definitions/hot-rolled-curve.csv").AsTheory();

    public static TheoryData<ReferenceRow> Coupon => ReferenceTable.Load("Handbook/hot-rolled-coupon.csv").AsTheory();

    public static TheoryData<string> Forms => [.. Enum.GetNames<HotRolledForm>()];

    [Theory]
    [MemberData(nameof(Printed))]
    public void Printed_curve_has_the_stresses_of_the_formula(ReferenceRow row)
    {
        HotRolledSteel steel = Steel(row.Number("yield_mpa"), row.Number("ultimate_mpa"), HotRolledForm.PrintedCurve);
        Comparison comparison =
            new Comparison(row).Printed("plateau_end", steel.PlateauEnd.DecimalFractions)
                .Printed("ultimate_strain", steel.UltimateStrain.DecimalFractions);
        foreach (int percent in Percents)
        {
            comparison.Printed($"at_{percent}", steel.StressAt(Ratio.FromPercent(percent)).Megapascals);
        }

        comparison.Verify(10);
    }

    /// <summary>
    /// The four lines meet the curve at both ends of hardening and stay within the −1.8 to 2.6 % that an independent program found for
    /// these five grades; not a published source.
    /// </summary>
    [Theory]
    [MemberData(nameof(Printed))]
    public void Four_lines_stay_near_the_curve(ReferenceRow row)
    {
        HotRolledSteel curve = Steel(row.Number("yield_mpa"), row.Number("ultimate_mpa"), HotRolledForm.PrintedCurve);
        HotRolledSteel lines = Steel(row.Number("yield_mpa"), row.Number("ultimate_mpa"), HotRolledForm.FourLines);
        double[] apart =
            [.. Enumerable.Range(1, 1000).Select(i => Ratio.FromDecimalFractions(i * curve.UltimateStrain.DecimalFractions / 1000)).Select(e => (lines.StressAt(e) / curve.StressAt(e)) - 1)];
        Assert.InRange(apart.Min(), -0.0185, 0);
        Assert.InRange(apart.Max(), 0, 0.0265);
        Assert.Equal(curve.UltimateStrength.Megapascals, lines.StressAt(curve.UltimateStrain).Megapascals, 1e-9);
    }

    /// <summary>
    /// Plateau as measured, 320 MPa, and the ultimate strength that K and n imply, 490 MPa. As true stress the law is within 4.5 % of the
    /// coupon; its row at 2 % is the floor of ε_sh, this
    /// heat's plateau ends later. The printed curve, read as it stands, is up to 13 % low.
    /// </summary>
    [Theory]
    [MemberData(nameof(Coupon))]
    public void True_stress_is_that_of_a_coupon(ReferenceRow row)
    {
        Ratio strain = Ratio.FromDecimalFractions(row.Number("true_strain"));
        double measured = row.Number("true_stress_mpa");
        Assert.InRange((Steel(320, 490, HotRolledForm.TrueStress).StressAt(strain).Megapascals / measured) - 1, -0.046, 0.045);
        Assert.InRange((Steel(320, 490, HotRolledForm.PrintedCurve).StressAt(strain).Megapascals / measured) - 1, -0.135, 0.025);
    }

    [Fact]
    public void Printed_curve_is_far_below_the_coupon_where_it_hardens() => Assert.InRange(
        Coupon.Select(data => data.Data)
            .Min(
                row =>
                    (Steel(320, 490, HotRolledForm.PrintedCurve).StressAt(Ratio.FromDecimalFractions(row.Number("true_strain"))).Megapascals
                        / row.Number("true_stress_mpa")) - 1), -0.135, -0.12);

    /// <summary>σ = f(exp(e) − 1)·exp(e), written from the definition.</summary>
    [Fact]
    public void True_stress_is_the_printed_one_on_the_area_that_is_left()
    {
        HotRolledSteel printed = Steel(275, 430, HotRolledForm.PrintedCurve);
        HotRolledSteel real = Steel(275, 430, HotRolledForm.TrueStress);
        foreach (double e in new[] { 0.002, 0.01, 0.0149, 0.02, 0.1, 0.19, 0.3 })
        {
            double grown = Math.Exp(e);
            Near.Relative(printed.StressAt(Ratio.FromDecimalFractions(grown - 1)).Pascals * grown,
                real.StressAt(Ratio.FromDecimalFractions(e)).Pascals, 1e-12, $"stress at {e}");
        }
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Tangent_modulus_is_the_slope_of_the_stress(string form)
    {
        HotRolledSteel steel = Steel(250, 400, Enum.Parse<HotRolledForm>(form));
        foreach (double e in new[] { 0.0005, 0.004, 0.013, 0.02, 0.05, 0.1, 0.2, 0.25 })
        {
            double step = 1e-6;
            double slope =
                (steel.StressAt(Ratio.FromDecimalFractions(e + step)) - steel.StressAt(Ratio.FromDecimalFractions(e - step))).Pascals
                    / (2 * step);
            Near.Absolute(slope, steel.TangentModulusAt(Ratio.FromDecimalFractions(e)).Pascals, 1e-7 * 210e9, $"slope at {e}");
        }
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void With_another_yield_the_elastic_line_ends_there(string form)
    {
        StressStrainLaw other = Steel(250, 400, Enum.Parse<HotRolledForm>(form)).WithYield(Pressure.FromMegapascals(300));
        Near.Relative(300, other.YieldStress.Megapascals, 1e-13);
        Near.Relative(300, other.StressAt(Ratio.FromDecimalFractions(300 / 210e3)).Megapascals, 1e-13);
    }

    /// <summary>Without a plateau's end in reach the bend is that of perfectly plastic steel at the stress of the plateau.</summary>
    [Fact]
    public void On_the_plateau_the_printed_law_is_perfectly_plastic()
    {
        LoadedBend loaded = Bend(Steel(320, 490, HotRolledForm.PrintedCurve), 400);
        StressStrainLaw law = loaded.LawFor(Steel(320, 490, HotRolledForm.PrintedCurve));
        Assert.IsType<PerfectlyPlastic>(law);
        Near.Relative(Bend(law, 400).BendingMoment.NewtonMeters, loaded.BendingMoment.NewtonMeters, 1e-12);
        HotRolledSteel steel = Steel(320, 490, HotRolledForm.TrueStress);
        Assert.Same(steel, Bend(steel, 100).LawFor(steel));
    }

    /// <summary>
    /// Stress 2/√3 times and plastic strain √3/2 times those of the test (von Mises, no change of volume), checked point by point.
    /// </summary>
    [Theory]
    [MemberData(nameof(Forms))]
    public void Plane_strain_is_stiffer_and_stronger(string form)
    {
        HotRolledSteel steel = Steel(250, 400, Enum.Parse<HotRolledForm>(form));
        BarMaterial material = new("steel", steel, Density.FromKilogramsPerCubicMeter(7850), poissonsRatio: 0.3);
        StressStrainLaw wide =
            BendAnalysis.Of(new FlatBar(Length.FromMillimeters(60), Length.FromMillimeters(5)).EasyWay, material,
                StressState.PlaneStrain).Law;
        double factor = 2 / Math.Sqrt(3);
        foreach (double e in new[] { 0.001, 0.01, 0.03, 0.1, 0.15 })
        {
            double stress = steel.StressAt(Ratio.FromDecimalFractions(e)).Pascals;
            double strain = ((e - (stress / 210e9)) / factor) + (factor * stress * (1 - 0.09) / 210e9);
            Near.Relative(factor * stress, wide.StressAt(Ratio.FromDecimalFractions(strain)).Pascals,
                e < 0.002 ? double.PositiveInfinity : 1e-12, $"stress at {e}");
        }

        Near.Relative(210e9 / 0.91, wide.StressAt(Ratio.FromDecimalFractions(1e-4)).Pascals / 1e-4, 1e-12);
    }

    [Fact]
    public void Beyond_the_ultimate_strain_an_advisory_says_so() =>
        Assert.Contains(Bend(Steel(250, 400, HotRolledForm.TrueStress), 5).Advisories,
            advisory => advisory.Code == "beyond-ultimate-strain");

    [Fact]
    public void Steel_without_a_plateau_or_without_hardening_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Steel(400, 400, HotRolledForm.TrueStress));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => new HotRolledSteel(Pressure.FromGigapascals(10), Pressure.FromMegapascals(250), Pressure.FromMegapascals(400)));
    }

    private static HotRolledSteel Steel(double yield, double ultimate, HotRolledForm form) =>
        new(Pressure.FromGigapascals(210), Pressure.FromMegapascals(yield), Pressure.FromMegapascals(ultimate), form);

    private static LoadedBend Bend(StressStrainLaw law, double radius) => BendAnalysis
        .Of(new FlatBar(Length.FromMillimeters(30), Length.FromMillimeters(6)).EasyWay,
        new BarMaterial("steel", law, Density.FromKilogramsPerCubicMeter(7850)))
        .LoadedTo(BendRadius.Inside(Length.FromMillimeters(radius)));
}
