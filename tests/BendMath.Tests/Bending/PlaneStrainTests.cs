using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>
/// Bending in plane strain, E/(1 − ν²) and 2/√3: textbook sheet bending (Z. Marciniak, J. L. Duncan, S. J. Hu, Mechanics of Sheet Metal
/// Forming, ch. 6, from memory).
/// </summary>
public sealed class PlaneStrainTests
{
    private const double Poisson = 0.3;

    private const double Strength = 1.1547005383792515;

    private static readonly Pressure Modulus = Pressure.FromGigapascals(205);

    private static readonly FlatBar Strip = new(Length.FromMillimeters(40), Length.FromMillimeters(2));

    private static BarMaterial Of(StressStrainLaw law) =>
        new("strip, invented", law, Density.FromKilogramsPerCubicMeter(7850), poissonsRatio: Poisson);

    [Fact]
    public void Without_hardening_it_is_a_stiffer_and_stronger_metal()
    {
        BendAnalysis plane =
            BendAnalysis.Of(Strip.EasyWay, Of(new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(290))), StressState.PlaneStrain);
        Near.Relative(205e9 / 0.91, plane.Law.ElasticModulus.Pascals, 1e-15);
        Near.Relative(290e6 * Strength, plane.Law.YieldStress.Pascals, 1e-15);
        Near.Relative(290e6 * Strength * 0.04 * 0.002 * 0.002 / 4, plane.PlasticMoment.NewtonMeters, 1e-12);
        Near.Relative(205e9 / 0.91 * 0.04 * Math.Pow(0.002, 3) / 12,
            plane.LoadedTo(BendRadius.Inside(Length.FromMeters(5))).BendingMoment.NewtonMeters * 5.001, 1e-12);
    }

    /// <summary>Each law against the definition: at a plastic strain √3/2·e_p the stress is 2/√3 times the tensile one.</summary>
    [Fact]
    public void Every_law_is_the_tensile_curve_in_equivalent_stress_and_plastic_strain()
    {
        StressStrainLaw[] laws =
        [
            new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(290)),
            new LinearHardening(Modulus, Pressure.FromMegapascals(290), Pressure.FromMegapascals(3000)),
            new RambergOsgood(Modulus, Pressure.FromMegapascals(290), 9),
            MeasuredCurve.FromEngineering(Modulus,
                [(Ratio.FromDecimalFractions(290.0 / 205e3), Pressure.FromMegapascals(290)),
                    (Ratio.FromPercent(3), Pressure.FromMegapascals(380)), (Ratio.FromPercent(15), Pressure.FromMegapascals(460))]),
        ];
        foreach (StressStrainLaw law in laws)
        {
            StressStrainLaw plane = BendAnalysis.Of(Strip.EasyWay, Of(law), StressState.PlaneStrain).Law;
            foreach (double strain in new[] { 0.002, 0.01, 0.04, 0.09 })
            {
                double stress = law.StressAt(Ratio.FromDecimalFractions(strain)).Pascals;
                double plastic = strain - stress / 205e9;
                double planeStrain = plastic / Strength + Strength * stress * 0.91 / 205e9;
                Near.Relative(Strength * stress, plane.StressAt(Ratio.FromDecimalFractions(planeStrain)).Pascals, 1e-10);
            }
        }
    }

    [Fact]
    public void The_power_law_scales_total_strain_and_stress()
    {
        BendAnalysis plane =
            BendAnalysis.Of(Strip.EasyWay, Of(new PowerHardening(Modulus, Pressure.FromMegapascals(530), 0.26)), StressState.PlaneStrain);
        Near.Relative(530e6 * Math.Pow(Strength, 1.26) * Math.Pow(0.05, 0.26), plane.Law.StressAt(Ratio.FromPercent(5)).Pascals, 1e-12);
    }

    [Fact]
    public void A_wide_flat_is_advised_until_the_choice_is_made()
    {
        BarMaterial steel = Of(new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(290)));
        BendRadius radius = BendRadius.Inside(Length.FromMillimeters(100));
        Assert.Contains(BendAnalysis.Of(Strip.EasyWay, steel).LoadedTo(radius).Advisories, advisory => advisory.Code == "wide-flat");
        Assert.DoesNotContain(BendAnalysis.Of(Strip.EasyWay, steel, StressState.PlaneStrain).LoadedTo(radius).Advisories,
            advisory => advisory.Code == "wide-flat");
        Assert.DoesNotContain(BendAnalysis.Of(Strip.HardWay, steel).LoadedTo(BendRadius.Inside(Length.FromMeters(1))).Advisories,
            advisory => advisory.Code == "wide-flat");
    }

    [Fact]
    public void Strain_beyond_a_measured_curve_is_advised()
    {
        StressStrainLaw curve =
            MeasuredCurve.FromEngineering(Modulus,
                [(Ratio.FromDecimalFractions(290.0 / 205e3), Pressure.FromMegapascals(290)),
                    (Ratio.FromPercent(3), Pressure.FromMegapascals(380))]);
        BendAnalysis analysis = BendAnalysis.Of(Strip.EasyWay, Of(curve));
        Assert.Contains(analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(20))).Advisories,
            advisory => advisory.Code == "beyond-measured-curve");
        Assert.DoesNotContain(analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(60))).Advisories,
            advisory => advisory.Code == "beyond-measured-curve");
    }

    [Fact]
    public void A_power_law_moved_far_from_its_test_is_advised()
    {
        // Annealed 304 of the grade table: K 1275 MPa, n 0.45, whose elastic line ends at 21 MPa.
        StressStrainLaw fitted = new PowerHardening(Pressure.FromGigapascals(193), Pressure.FromMegapascals(1275), 0.45);
        BendRadius radius = BendRadius.Inside(Length.FromMillimeters(100));
        Assert.DoesNotContain(BendAnalysis.Of(Strip.HardWay, Of(fitted)).LoadedTo(radius).Advisories,
            advisory => advisory.Code == "power-law-moved");
        Advisory advice = Assert.Single(
            BendAnalysis.Of(Strip.HardWay, Of(fitted.WithYield(Pressure.FromMegapascals(290)))).LoadedTo(radius).Advisories,
                advisory => advisory.Code == "power-law-moved");
        Assert.Contains("from the 1275 MPa of the test to 5405 MPa", advice.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Plane_strain_needs_the_ratio_of_Poisson() => Assert.Contains(
        "material must state Poisson's ratio",
        Assert.Throws<ArgumentException>(
            () =>
                BendAnalysis.Of(Strip.EasyWay,
                    new("steel", new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(290)), Density.FromKilogramsPerCubicMeter(7850)),
                        StressState.PlaneStrain)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void The_yield_of_a_measured_ring_is_that_of_the_tensile_test()
    {
        BendRadius loaded = BendRadius.Inside(Length.FromMillimeters(100));
        BendAnalysis real =
            BendAnalysis.Of(Strip.EasyWay, Of(new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(333))), StressState.PlaneStrain);
        BendRadius ring = BendRadius.Inside(real.LoadedTo(loaded).Release(Release.HeldFlat).Ring.InsideRadius);
        BendAnalysis assumed =
            BendAnalysis.Of(Strip.EasyWay, Of(new PerfectlyPlastic(Modulus, Pressure.FromMegapascals(250))), StressState.PlaneStrain);
        Near.Relative(333, assumed.YieldFrom(loaded, ring, Release.HeldFlat).Megapascals, 1e-9);
    }
}
