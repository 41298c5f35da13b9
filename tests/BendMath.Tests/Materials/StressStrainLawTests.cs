using UnitsNet;

namespace BendMath.Tests.Materials;

/// <summary>Relations every law obeys by definition; no published value is needed.</summary>
public sealed class StressStrainLawTests
{
    private static readonly Pressure Modulus = Pressure.FromGigapascals(205);

    private static readonly Pressure Yield = Pressure.FromMegapascals(290);

    public static TheoryData<StressStrainLaw> Laws { get; } = new((StressStrainLaw[])
    [
        new PerfectlyPlastic(Modulus, Yield),
        new LinearHardening(Modulus, Yield, Pressure.FromMegapascals(1500)),
        new PowerHardening(Modulus, Pressure.FromMegapascals(600), 0.2),
        new RambergOsgood(Modulus, Yield, 12),
        Curve(),
    ]);

    [Theory]
    [MemberData(nameof(Laws))]
    public void Stress_is_odd_continuous_and_never_steeper_than_elastic(StressStrainLaw law)
    {
        double yieldStrain = law.YieldStress.Pascals / law.ElasticModulus.Pascals;
        Assert.Equal(0, law.StressAt(Ratio.Zero).Pascals);
        double before = 0;
        for (int i = 1; i <= 400; i++)
        {
            double strain = yieldStrain * i / 40;
            double stress = At(law, strain);
            Assert.Equal(-stress, At(law, -strain));
            Assert.InRange(stress - before, -1e-14 * law.YieldStress.Pascals, law.ElasticModulus.Pascals * yieldStrain / 40 * (1 + 1e-9));
            Assert.InRange(Slope(law, strain), 0, law.ElasticModulus.Pascals);
            before = stress;
        }

        Assert.InRange(Math.Abs(At(law, yieldStrain * (1 + 1e-9)) - At(law, yieldStrain * (1 - 1e-9))), 0,
            2.1e-9 * law.YieldStress.Pascals);
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void Slope_is_the_derivative_of_stress(StressStrainLaw law)
    {
        foreach (double strain in new[] { 0.0004, 0.0023, 0.0057, 0.017, 0.035, 0.081 })
        {
            double step = 1e-5 * strain;
            double difference = (At(law, strain + step) - At(law, strain - step)) / (2 * step);
            Assert.InRange(Slope(law, strain) - difference, -1e-6 * law.E, 1e-6 * law.E);
        }
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void A_new_yield_is_the_yield_and_keeps_the_modulus(StressStrainLaw law)
    {
        StressStrainLaw harder = law.WithYield(Pressure.FromMegapascals(355));
        Assert.Equal(355, harder.YieldStress.Megapascals, 1e-9);
        Assert.Equal(law.ElasticModulus, harder.ElasticModulus);
        Assert.Equal(law.GetType(), harder.GetType());
        StressStrainLaw back = harder.WithYield(law.YieldStress);
        foreach (double strain in new[] { 0.0004, 0.002, 0.02, 0.2 })
        {
            Assert.InRange(At(back, strain) / At(law, strain), 1 - 1e-12, 1 + 1e-12);
        }

        Assert.Equal("yieldStress", Assert.Throws<ArgumentOutOfRangeException>(() => law.WithYield(law.ElasticModulus)).ParamName);
    }

    [Fact]
    public void Without_hardening_the_hardening_laws_are_perfectly_plastic()
    {
        PerfectlyPlastic plastic = new(Modulus, Yield);
        Assert.Equal(0, Deviation(new LinearHardening(Modulus, Yield, Pressure.Zero), plastic));
        Assert.InRange(Deviation(new PowerHardening(Modulus, Yield, 0), plastic), 0, 1e-15);
        double coarse = Deviation(new LinearHardening(Modulus, Yield, Pressure.FromMegapascals(100)), plastic);
        double fine = Deviation(new LinearHardening(Modulus, Yield, Pressure.FromMegapascals(10)), plastic);
        Assert.Equal(10, coarse / fine, 1e-6);
    }

    [Fact]
    public void The_power_law_tends_to_perfectly_plastic_in_proportion_to_its_exponent()
    {
        PerfectlyPlastic plastic = new(Modulus, Yield);
        double Gap(double exponent) =>
            Deviation((PowerHardening)new PowerHardening(Modulus, Pressure.FromMegapascals(600), exponent).WithYield(Yield), plastic);
        Assert.Equal(10, Gap(1e-4) / Gap(1e-5), 0.01);
        Assert.InRange(Gap(1e-5), 1e-5, 1e-4);
    }

    [Fact]
    public void A_material_keeps_its_Poissons_ratio_and_refuses_one_out_of_range()
    {
        BarMaterial steel = new("mild steel", Curve(), Density.FromKilogramsPerCubicMeter(7850), poissonsRatio: 0.3);
        Assert.Equal(0.3, steel.WithYield(Yield).PoissonsRatio);
        Assert.Equal(0.5, new BarMaterial("rubbery", Curve(), steel.Density, poissonsRatio: 0.5).PoissonsRatio);
        Assert.Null(new BarMaterial("unknown", Curve(), steel.Density).PoissonsRatio);
        ArgumentOutOfRangeException high =
            Assert.Throws<ArgumentOutOfRangeException>(() => new BarMaterial("x", Curve(), steel.Density, poissonsRatio: 0.51));
        Assert.StartsWith("poissonsRatio must not be greater than 0.5, but is 0.51.", high.Message, StringComparison.Ordinal);
        Assert.Equal("poissonsRatio",
            Assert.Throws<ArgumentOutOfRangeException>(() => new BarMaterial("x", Curve(), steel.Density, poissonsRatio: -0.1)).ParamName);
    }

    /// <summary>A record is what it says: laws of the same numbers are equal, and each number counts.</summary>
    [Fact]
    public void Laws_are_equal_by_their_numbers()
    {
        Func<double, StressStrainLaw>[] laws =
        [
            x => new PerfectlyPlastic(Modulus, Yield * x),
            x => new PerfectlyPlastic(Modulus * x, Yield),
            x => new LinearHardening(Modulus * x, Yield, Pressure.FromMegapascals(1500)),
            x => new LinearHardening(Modulus, Yield * x, Pressure.FromMegapascals(1500)),
            x => new LinearHardening(Modulus, Yield, Pressure.FromMegapascals(1500) * x),
            x => new PowerHardening(Modulus, Pressure.FromMegapascals(600), 0.2 * x),
            x => new RambergOsgood(Modulus, Yield, 12 * x),
        ];
        Assert.All(laws, law =>
        {
            Assert.Equal(law(1), law(1));
            Assert.Equal(law(1).GetHashCode(), law(1).GetHashCode());
            Assert.NotEqual(law(1), law(1.01));
        });
        Assert.Equal(Curve(), Curve());
        Assert.NotEqual<StressStrainLaw>(new PerfectlyPlastic(Modulus, Yield), new LinearHardening(Modulus, Yield, Pressure.Zero));
    }

    private static MeasuredCurve Curve() => MeasuredCurve.FromEngineering(
        Modulus,
            [(Ratio.FromDecimalFractions(290.0 / 205e3), Yield), (Ratio.FromPercent(1.5), Pressure.FromMegapascals(300)),
                (Ratio.FromPercent(10), Pressure.FromMegapascals(400))]);

    private static double At(StressStrainLaw law, double strain) => law.StressAt(Ratio.FromDecimalFractions(strain)).Pascals;

    private static double Slope(StressStrainLaw law, double strain) => law.TangentModulusAt(Ratio.FromDecimalFractions(strain)).Pascals;

    private static double Deviation(StressStrainLaw law, StressStrainLaw other) =>
        new[] { 0.001, 0.002, 0.01, 0.05 }.Max(strain => Math.Abs(At(law, strain) / At(other, strain) - 1));
}
