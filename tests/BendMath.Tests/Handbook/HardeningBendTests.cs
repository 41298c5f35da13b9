using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>Closed forms of hardening bars and of the angle ring; the source stands with each test.</summary>
public sealed class HardeningBendTests
{
    private const double Modulus = 205e9;

    private const double Strength = 700e6;

    /// <summary>
    /// Rigid power-law strip, M = b·K·hⁿ⁺²·κⁿ/(2ⁿ⁺¹(n + 2)) and Δκ = 6/(n + 2)·(K/E)/h·(hκ/2)ⁿ (Hosford and Caddell, Metal Forming, bending
    /// chapter, from memory). With the elastic core it becomes, exactly, that moment times 1 − (1 − n)/3·ηⁿ⁺², η the elastic share of the
    /// half depth (derived).
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    [InlineData(0.25)]
    [InlineData(0.5)]
    public void Power_law_strip_carries_the_closed_form_of_Hosford_and_Caddell(double n)
    {
        const double Width = 0.03;
        const double Depth = 0.005;
        PowerHardening law = new(Pressure.FromPascals(Modulus), Pressure.FromPascals(Strength), n);
        BendAnalysis analysis = Analysis(new FlatBar(Length.FromMeters(Width), Length.FromMeters(Depth)).EasyWay, law);
        double yieldStrain = Math.Pow(Strength / Modulus, 1 / (1 - n));
        foreach (double core in new[] { 0.01, 0.1, 0.5, 0.9, 0.999 })
        {
            double curvature = 2 * yieldStrain / (core * Depth);
            if (1 / curvature < 2 * Depth)
            {
                continue;
            }

            LoadedBend loaded = analysis.LoadedAt(ReciprocalLength.FromInverseMeters(curvature));
            double share = 1 - ((1 - n) / 3 * Math.Pow(core, n + 2));
            double rigid = Width * Strength * Math.Pow(Depth, n + 2) * Math.Pow(curvature, n) / (Math.Pow(2, n + 1) * (n + 2));
            Assert.Equal(1, loaded.BendingMoment.NewtonMeters / (rigid * share), 1e-12);
            double lost = 6 / (n + 2) * Strength / Modulus / Depth * Math.Pow(Depth * curvature / 2, n) * share;
            double kept = 1 - (lost / curvature);
            Assert.Equal(kept < 1e-6 ? 0 : kept, loaded.Release(Release.HeldFlat).CurvatureKept, 1e-12);
        }
    }

    /// <summary>
    /// Fully plastic sheet, Δκ = 3S/(E·t) (Marciniak, Duncan and Hu, Mechanics of Sheet Metal Forming, ch. 6, from memory), less η²/3 of it
    /// for the elastic core.
    /// </summary>
    [Theory]
    [InlineData(4.5)]
    [InlineData(20)]
    [InlineData(100)]
    public void Plastic_sheet_loses_the_curvature_of_Marciniak_Duncan_and_Hu(double radiusOverThickness)
    {
        const double Thickness = 0.001;
        PerfectlyPlasticBar sheet = new(new FlatBar(Length.FromMeters(1), Length.FromMeters(Thickness)).EasyWay);
        LoadedBend loaded = sheet.Analysis.LoadedTo(BendRadius.Centroid(Length.FromMeters(radiusOverThickness * Thickness)));
        double core = sheet.Analysis.YieldCurvature / loaded.Curvature;
        double lost = loaded.Curvature.InverseMeters - loaded.Release(Release.HeldFlat).Ring.Curvature.InverseMeters;
        Assert.Equal(3 * 250e6 / (200e9 * Thickness) * (1 - (core * core / 3)), lost, 1e-9 * lost);
    }

    /// <summary>Derived check numbers, E = 200 GPa, σ_y = 250 MPa, centroid radius 100 mm; not a published source.</summary>
    [Fact]
    public void Four_bars_bent_to_100_mm_finish_at_the_derived_radii()
    {
        Assert.Equal(103.67, Finished(new RoundBar(Length.FromMillimeters(12)).Section), 0.005);
        Assert.Equal(101.40, Finished(new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)).Section), 0.005);
        FlatBar flat = new(Length.FromMillimeters(40), Length.FromMillimeters(5));
        Assert.Equal(108.10, Finished(flat.EasyWay), 0.005);
        Assert.Equal(100.95, Finished(flat.HardWay), 0.005);

        static double Finished(OrientedSection section) => new PerfectlyPlasticBar(section).Analysis
            .LoadedTo(BendRadius.Centroid(Length.FromMillimeters(100))).Release(Release.HeldFlat).Ring.CentroidRadius.Millimeters;
    }

    /// <summary>
    /// Sharp angle 50 × 50 × 5, fully plastic, derived by hand, not a published source: equal-area axis A/(2·50) = 4.75 mm, M_b/σ_y = 5684
    /// mm³, M_r/σ_y = −5062 mm³, I_br/I_b = −0.592; released free, the bar loses 0.73 of what the naive M_b/(E·I_b) says and gains 0.63 of
    /// its loss out of the plane; a yield of 250 MPa dishes the plastic ring by about 0.3° at R = 200 mm, 0.9° at 500, 1.7° at 1000. A
    /// yield of 2.5 MPa leaves a core of a thousandth of the leg; with 250 MPa the elastic core is no longer inside the flange, and the
    /// dish smaller.
    /// </summary>
    [Fact]
    public void Angle_ring_springs_back_and_dishes_as_derived()
    {
        OrientedSection angle = new EqualAngle(Length.FromMillimeters(50), Length.FromMillimeters(5), AngleFillets.Sharp).FlangeOut;
        PerfectlyPlasticBar soft = new(angle, Pressure.FromGigapascals(200), Pressure.FromMegapascals(2.5));
        LoadedBend loaded = soft.Analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(500)));
        SectionProperties section = angle.Properties;
        Assert.Equal(4.75, loaded.NeutralAxisFromInside.Millimeters, 1e-9);
        Assert.Equal(5684, loaded.BendingMoment.NewtonMillimeters / 2.5, 0.5);
        Assert.Equal(-5062, loaded.HoldDownMoment.NewtonMillimeters / 2.5, 0.5);
        Assert.Equal(-0.592, section.ProductOfInertia / section.SecondMomentAboutBendingAxis, 0.0005);
        FinishedRing ring = loaded.Release(Release.Free).Ring;
        double lost = loaded.Curvature.InverseMeters - (ring.Curvature.InverseMeters * Math.Cos(ring.DishAngle.Radians));
        double naive = loaded.BendingMoment.NewtonMeters / (200e9 * section.SecondMomentAboutBendingAxis.MetersToTheFourth);
        Assert.Equal(0.73, lost / naive, 0.005);
        Assert.Equal(0.63, Math.Abs(ring.Curvature.InverseMeters * Math.Sin(ring.DishAngle.Radians)) / lost, 0.005);

        PerfectlyPlasticBar steel = new(angle);
        double outOfPlane = Math.Abs(ring.Curvature.InverseMeters * Math.Sin(ring.DishAngle.Radians));
        foreach ((double radius, double dish) in new[] { (0.2, 0.3), (0.5, 0.9), (1, 1.7) })
        {
            double plastic = Math.Atan(100 * outOfPlane / ((1 / radius) - (100 * lost))) * 180 / Math.PI;
            Assert.Equal(dish, plastic, 0.05);
            FinishedRing finished = steel.Analysis.LoadedTo(BendRadius.Centroid(Length.FromMeters(radius))).Release(Release.Free).Ring;
            Assert.InRange(Math.Abs(finished.DishAngle.Degrees), 0.75 * plastic, plastic);
        }
    }

    private static BendAnalysis Analysis(OrientedSection section, StressStrainLaw law) =>
        BendAnalysis.Of(section, new BarMaterial("strip", law, Density.FromKilogramsPerCubicMeter(7850)));
}
