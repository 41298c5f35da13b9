using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>Worked examples in print, held to half a unit of the last printed digit; each test is named after its source.</summary>
public sealed class WorkedExampleTests
{
    /// <summary>Beer, Johnston &amp; DeWolf, Mechanics of Materials, Example 4.05, p. 260 (found): 50 × 120 mm, M = 36.8 kN·m, σ_Y = 240 MPa, E = 200 GPa.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_example_4_05_elastic_core_and_loaded_radius()
    {
        PerfectlyPlasticBar bar = OnEdge(120, 50, 240);
        LoadedBend loaded = bar.AtMoment(Torque.FromKilonewtonMeters(36.8));
        Assert.Equal(28.8, bar.Analysis.YieldMoment.KilonewtonMeters, 0.05);
        Assert.Equal(80, bar.Core(loaded).Millimeters, 0.5);
        Assert.Equal(33.3, Radius(loaded.Curvature), 0.05);
    }

    /// <summary>Beer, Johnston &amp; DeWolf, Mechanics of Materials, Problem 4.67, 5th ed. numbering (from memory of the printed answers): 12 mm wide, 8 mm deep, σ_Y = 300 MPa.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problem_4_67_moment_for_a_core_of_4_mm()
    {
        PerfectlyPlasticBar bar = new(new FlatBar(Length.FromMillimeters(12), Length.FromMillimeters(8)).EasyWay, Pressure.FromGigapascals(200), Pressure.FromMegapascals(300));
        Assert.Equal(38.4, bar.Analysis.YieldMoment.NewtonMeters, 0.05);
        Assert.Equal(52.8, bar.AtCore(0.5).BendingMoment.NewtonMeters, 0.05);
    }

    /// <summary>Beer, Johnston &amp; DeWolf, Mechanics of Materials, Problems 4.73 and 4.77, 5th ed. numbering (from memory of the printed answers): 60 × 90 mm, plastic zones of 30 mm.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problems_4_73_and_4_77_first_yield_plastic_zones_and_plastic_moment()
    {
        PerfectlyPlasticBar bar = OnEdge(90, 60, 240);
        LoadedBend zones = bar.AtCore(1 / 3.0);
        Assert.Equal(19.44, bar.Analysis.YieldMoment.KilonewtonMeters, 0.005);
        Assert.Equal(37.5, Radius(bar.Analysis.YieldCurvature), 0.05);
        Assert.Equal(30, bar.Core(zones).Millimeters, 1e-9);
        Assert.Equal(28.1, zones.BendingMoment.KilonewtonMeters, 0.05);
        Assert.Equal(12.5, Radius(zones.Curvature), 0.05);
        Assert.Equal(29.2, bar.Analysis.PlasticMoment.KilonewtonMeters, 0.05);
        Assert.Equal(1.5, bar.Analysis.Section.Properties.ShapeFactor, 0.0005);
    }

    /// <summary>Beer, Johnston &amp; DeWolf, Mechanics of Materials, Problem 4.81, 5th ed. numbering (from memory of the printed answer): round bar of 18 mm radius, σ_Y = 240 MPa.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problem_4_81_plastic_moment_of_a_round_bar()
    {
        PerfectlyPlasticBar bar = new(new RoundBar(Length.FromMillimeters(36)).Section, Pressure.FromGigapascals(200), Pressure.FromMegapascals(240));
        Assert.Equal(1.866, bar.Analysis.PlasticMoment.KilonewtonMeters, 0.0005);
    }

    /// <summary>Beer, Johnston &amp; DeWolf, Mechanics of Materials, Problems 4.99 and 4.100, 5th ed. numbering (from memory of the printed answers): M = 1.25·M_Y.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problems_4_99_and_4_100_loaded_and_permanent_radius()
    {
        PerfectlyPlasticBar bar = OnEdge(90, 60, 240);
        LoadedBend loaded = bar.AtMoment(1.25 * bar.Analysis.YieldMoment);
        double yieldRadius = Radius(bar.Analysis.YieldCurvature);
        Assert.Equal(0.707, Radius(loaded.Curvature) / yieldRadius, 0.0005);
        Assert.Equal(6.09, Radius(loaded.Release(Release.HeldFlat).Ring.Curvature) / yieldRadius, 0.005);
    }

    /// <summary>
    /// Kalpakjian &amp; Schmid, Manufacturing Processes for Engineering Materials, ch. 7, example on estimating springback (from memory): 0.0359 in sheet bent to 0.5 in,
    /// which the book inserts as the mid-plane radius; Y = 40 000 psi, E = 29 000 000 psi, wanted angle 90°.
    /// </summary>
    [Fact]
    public void Kalpakjian_Schmid_chapter_7_springback_of_a_sheet()
    {
        const double Thickness = 0.0359;
        FlatBar sheet = new(Length.FromInches(1), Length.FromInches(Thickness));
        PerfectlyPlasticBar bar = new(sheet.EasyWay, Pressure.FromPoundsForcePerSquareInch(29e6), Pressure.FromPoundsForcePerSquareInch(40e3));
        LoadedBend loaded = bar.Analysis.LoadedTo(BendRadius.Centroid(Length.FromInches(0.5)));
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        double finished = released.Ring.CentroidRadius.Inches;
        double springback = ((2 * 0.5 / Thickness) + 1) / ((2 * finished / Thickness) + 1);
        Assert.Equal(0.0192, bar.Core(loaded).Inches / (2 * Thickness), 5e-5);
        Assert.Equal(0.942, released.CurvatureKept, 0.0005);
        Assert.Equal(0.531, finished, 0.0005);
        Assert.Equal(0.944, springback, 0.0005);
        Assert.Equal(95.3, 90 / springback, 0.1);
    }

    /// <summary>Standard shape factors (Beer &amp; Johnston; Timoshenko; Hill), from memory, to four figures.</summary>
    [Fact]
    public void Textbook_shape_factors_of_rectangle_circle_and_thin_tube()
    {
        Assert.Equal(1.5, new SquareBar(Length.FromMillimeters(10)).Section.Properties.ShapeFactor, 0.0005);
        Assert.Equal(1.698, new RoundBar(Length.FromMillimeters(10)).Section.Properties.ShapeFactor, 0.0005);
        Assert.Equal(1.273, new RoundTube(Length.FromMillimeters(1000), Length.FromMillimeters(0.1)).Section.Properties.ShapeFactor, 0.0005);
    }

    /// <summary>Common practice, found as a trade forum answer: flat 1 × 1/4 in the easy way, 20 in outside diameter, (20 − 1/4)·3.14 = 62.015 in; π makes it 62.046 in.</summary>
    [Fact]
    public void Common_practice_flat_bar_ring_by_the_middle_of_the_bar() => AssertBlank(1, 0.25, 20, 62.015, 0.04);

    /// <summary>W. Templeton, workshop companion with tables for operative smiths, London: John Weale, 1855 (found): hoop of bar iron 7/8 in thick, 16 1/2 in outside diameter, 4 ft 1 in. The width is not given and plays no part.</summary>
    [Fact]
    public void Templeton_1855_hoop_of_bar_iron() => AssertBlank(2, 0.875, 16.5, 49, 0.13);

    private static void AssertBlank(double width, double thickness, double outsideDiameter, double inches, double tolerance)
    {
        PerfectlyPlasticBar bar = new(new FlatBar(Length.FromInches(width), Length.FromInches(thickness)).EasyWay);
        FinishedRing ring = bar.Analysis.LoadedFor(BendRadius.OutsideDiameter(Length.FromInches(outsideDiameter)), Release.Free).Release(Release.Free).Ring;
        Assert.Equal(inches, ring.BlankLengthFor(Angle.FromDegrees(360)).Inches, tolerance);
    }

    private static PerfectlyPlasticBar OnEdge(double depth, double width, double yield) => new(
        new FlatBar(Length.FromMillimeters(depth), Length.FromMillimeters(width)).HardWay, Pressure.FromGigapascals(200), Pressure.FromMegapascals(yield));

    private static double Radius(ReciprocalLength curvature) => 1 / curvature.InverseMeters;
}
