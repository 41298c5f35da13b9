using BendMath.Bending.NeutralAxes;
using BendMath.Tests.Bending;
using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Worked examples in print; each test is named after its source, its printed answers stand in <c>worked-examples.csv</c>.
/// </summary>
public sealed class WorkedExampleTests
{
    private const double Inch = 0.0254;

    /// <summary>Every row belongs to a test of its name, which compares every answer of the row's example.</summary>
    [Fact]
    public void No_row_drops_out()
    {
        Assert.Equal(62, PrintedExample.Table.Rows.Count);
        HashSet<string> tests =
            [.. new[] { typeof(WorkedExampleTests), typeof(CurvedBarExampleTests) }.SelectMany(type => type.GetMethods()).Select(method => method.Name)];
        Assert.All(PrintedExample.Table.Rows, row => Assert.Contains(row["test"], tests));
        Assert.All(PrintedExample.Table.Rows,
            row =>
                Assert.True(
                    row.Has("source")
                        && (row["provenance"].StartsWith("found", StringComparison.Ordinal) || row["provenance"] == "memory")));
    }

    /// <summary>50 × 120 mm, M = 36.8 kN·m, σ_Y = 240 MPa, E = 200 GPa.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_example_4_05_elastic_core_and_loaded_radius()
    {
        PerfectlyPlasticBar bar = OnEdge(120, 50, 240);
        LoadedBend loaded = bar.AtMoment(Torque.FromKilonewtonMeters(36.8));
        new PrintedExample()
            .Holds("moment at first yield", bar.Analysis.YieldMoment.KilonewtonMeters)
            .Holds("core", bar.Core(loaded).Millimeters)
            .Holds("loaded radius", Radius(loaded.Curvature))
            .Verify();
    }

    /// <summary>
    /// I of 16 in depth with flanges 1 in thick that just yield throughout, σ_Y = 50 ksi, E = 29·10⁶ psi. The book goes on from its rounded
    /// M = 10 230 kip·in and I = 1524 in⁴, so the section here is the one that has both exactly: the flanges come out at 11.97 in and the
    /// web at 0.765 in, where 12 and 0.75 in are drawn (docs/validation.md).
    /// </summary>
    [Fact]
    public void Beer_Johnston_DeWolf_sample_problem_4_7_residual_stress_of_an_I_section()
    {
        (double flange, double web) = Solve(15, 14 * 14 / 6.0, 10230 / 50.0, (4096 - 2744) / 12.0, 2744 / 12.0, 1524);
        Assert.Equal(12, flange, 0.03);
        Assert.Equal(0.75, web, 0.016);
        PerfectlyPlasticBar bar = Pounds(StackedSection.Of(Inch, (1, flange, flange), (14, web, web), (1, flange, flange)), 29e6, 50e3);
        LoadedBend loaded = bar.AtCore(7 / 8.0);
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        SectionProperties section = bar.Analysis.Section.Properties;
        Assert.Equal(10230, loaded.BendingMoment.KilopoundForceInches, 1e-6);
        Assert.Equal(1524, section.SecondMomentAboutBendingAxis.InchesToTheFourth, 1e-6);
        new PrintedExample()
            .Holds("elastic stress at the surface", loaded.BendingMoment.KilopoundForceInches / section.ElasticModulusOutside.CubicInches)
            .Holds("residual stress 7 in from the axis",
            released.ResidualStressAt(Length.FromInches(15), section.CentroidAxial).KilopoundsForcePerSquareInch)
            .Holds("permanent radius", released.Ring.CentroidRadius.Feet)
            .Verify();
    }

    /// <summary>
    /// I of 10 in depth with flanges of 1/2 in, fully plastic at σ_Y = 36 ksi, released. The book goes on from M_p = 1732.5 kip·in and a
    /// rounded I = 211 in⁴; the section here has both exactly (flanges 7.995 in and web 0.501 in, where 8 and 0.5 in are drawn,
    /// docs/validation.md).
    /// </summary>
    [Fact]
    public void Hibbeler_example_6_23_point_without_residual_stress()
    {
        (double flange, double web) = Solve(0.5 * 9.5, 81 / 4.0, 1732.5 / 36, (1000 - 729) / 12.0, 729 / 12.0, 211);
        Assert.Equal(8, flange, 0.006);
        Assert.Equal(0.5, web, 0.002);
        PerfectlyPlasticBar bar = Pounds(StackedSection.Of(Inch, (0.5, flange, flange), (9, web, web), (0.5, flange, flange)), 29e6, 36e3);
        LoadedBend loaded = bar.AtCore(0.01);
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        SectionProperties section = bar.Analysis.Section.Properties;
        Assert.Equal(1732.5, bar.Analysis.PlasticMoment.KilopoundForceInches, 1e-6);
        Assert.Equal(211, section.SecondMomentAboutBendingAxis.InchesToTheFourth, 1e-6);
        double zero = MathNet.Numerics.RootFinding.Brent.FindRoot(
            inches => released.ResidualStressAt(Length.FromInches(5 + inches), section.CentroidAxial).KilopoundsForcePerSquareInch, 1, 5,
                1e-10);
        new PrintedExample()
            .Holds("elastic stress at the surface", loaded.BendingMoment.KilopoundForceInches / section.ElasticModulusOutside.CubicInches)
            .Holds("distance without stress", zero)
            .Verify();
    }

    /// <summary>Flange 100 × 15 mm, web 15 × 120 mm, σ_Y = 250 MPa.</summary>
    [Fact]
    public void Hibbeler_example_6_22_plastic_moment_of_a_T_beam()
    {
        PerfectlyPlasticBar bar =
            new(StackedSection.Of(1e-3, (120, 15, 15), (15, 100, 100)), Pressure.FromGigapascals(200), Pressure.FromMegapascals(250));
        new PrintedExample()
            .Holds("equal-area axis from the end of the web", bar.Analysis.Section.Properties.EqualAreaAxisFromInside.Millimeters)
            .Holds("plastic moment", bar.Analysis.PlasticMoment.KilonewtonMeters)
            .Verify();
    }

    /// <summary>Flange 100 × 20 mm, web 20 × 150 mm.</summary>
    [Fact]
    public void Pytel_Kiusalaas_example_13_1_shape_factor_of_a_T_section()
    {
        PerfectlyPlasticBar bar = new(StackedSection.Of(1e-3, (150, 20, 20), (20, 100, 100)));
        new PrintedExample()
            .Holds("equal-area axis from the end of the web", bar.Analysis.Section.Properties.EqualAreaAxisFromInside.Millimeters)
            .Holds("limit moment over yield moment", bar.Analysis.PlasticMoment / bar.Analysis.YieldMoment)
            .Verify();
    }

    /// <summary>Depth 40 cm, flanges 10 × 1.4 cm, web 0.8 cm.</summary>
    [Fact]
    public void Kazimi_example_7_14_shape_factor_of_an_I_section() => new PrintedExample()
        .Holds("shape factor", StackedSection.Of(1e-2, (1.4, 10, 10), (37.2, 0.8, 0.8), (1.4, 10, 10)).Properties.ShapeFactor)
        .Verify();

    /// <summary>
    /// Strip 20 × 5 mm, legs 50 mm, E = 207 kN/mm², Y = 345 N/mm² rising by 517 N/mm² per unit of strain, friction 0.1, lever 25 mm; inside
    /// radius 2.03·t from a fracture strain of 0.2. The book puts the neutral axis at 0.45·t although that leaves an axial force, and takes
    /// logarithmic strains at the faces: its figures recompute with its formulas. The library finds the axis at which no axial force
    /// remains, the middle: 0.1 % less moment, and 0.06° less punch angle (docs/validation.md).
    /// </summary>
    [Fact]
    public void Ghosh_Mallik_example_3_9_V_bend_with_linear_hardening()
    {
        const double Thickness = 5;
        const double Inside = 2.03 * Thickness;
        const double Fiber = 0.45 * Thickness;
        static double Share(double depth, double strain) => depth * depth / 6 * ((3 * 345) + (2 * 517 * strain));
        double book = Share(0.55 * Thickness, 0.2) + Share(Fiber, Math.Log(1 + (Fiber / (Inside + Fiber))));
        double lost = 12 * book * (Inside + Fiber) / (207e3 * Thickness * Thickness * Thickness);
        double punch = 90 / (1 + lost);
        double friction = Math.Atan(0.1);
        double lever = 20 / 25.0 * (1 + Math.Cos(friction) + (0.1 * Math.Sin(friction)));
        SheetBend sheet =
            SheetBend.Of(Length.FromMillimeters(Thickness), Length.FromMillimeters(Inside), Angle.FromDegrees(90),
                Length.FromMillimeters(Fiber));
        new PrintedExample()
            .Holds("stock length", (2 * (50 - Inside - Thickness)) + sheet.BendAllowance.Millimeters)
            .Holds("punch angle", punch)
            .Holds("force", lever * book)
            .Verify();

        Pressure modulus = Pressure.FromMegapascals(207e3);
        Pressure tangent = Pressure.FromMegapascals(517);
        LinearHardening law = new(modulus, Pressure.FromMegapascals(345 / (1 - (517 / 207e3))), tangent);
        FlatBar strip = new(Length.FromMillimeters(20), Length.FromMillimeters(Thickness));
        LoadedBend loaded = BendAnalysis.Of(strip.EasyWay, new BarMaterial("strip", law, Density.FromKilogramsPerCubicMeter(7850)))
            .LoadedTo(BendRadius.Inside(Length.FromMillimeters(Inside)));
        Assert.InRange(loaded.BendingMoment.NewtonMillimeters / 20 / book, 0.998, 1);
        Assert.InRange(180 - (90 / loaded.Release(Release.HeldFlat).CurvatureKept), punch - 0.07, punch);
    }

    /// <summary>
    /// Strip of 40 × 1.2 mm closed to a tube, E = 70 GPa, ν = 0.3, σ_Y = 250 MPa, in plane strain: E/(1 − ν²) and 2σ_Y/√3. The examination
    /// releases the fully plastic moment. The elastic core left at this radius, η = 4 % of the thickness, takes η²/3 = 0.05 % of it, and
    /// 0.0015 mm of the gap (docs/validation.md).
    /// </summary>
    [Fact]
    public void University_of_Seville_2019_strip_closed_to_a_tube()
    {
        double modulus = 70 / (1 - (0.3 * 0.3));
        double yield = 2 * 250 / Math.Sqrt(3);
        FlatBar strip = new(Length.FromMillimeters(100), Length.FromMillimeters(1.2));
        PerfectlyPlasticBar bar = new(strip.EasyWay, Pressure.FromGigapascals(modulus), Pressure.FromMegapascals(yield));
        LoadedBend loaded = bar.Analysis.LoadedTo(BendRadius.Centroid(Length.FromMillimeters(40 / (2 * Math.PI))));
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        double radius = 1 / loaded.Curvature.InverseMillimeters;
        double share = (1 - released.CurvatureKept) * (bar.Analysis.PlasticMoment / loaded.BendingMoment);
        double finished = radius / (1 - share);
        double chord = 2 * finished * Math.Sin(Math.PI * share);
        double strain = loaded.OuterFiberStrain.DecimalFractions;
        new PrintedExample()
            .Holds("plane-strain modulus", modulus)
            .Holds("plane-strain yield", yield)
            .Holds("loaded mean radius", radius)
            .Holds("springback angle", 360 * share)
            .Holds("finished mean radius", finished)
            .Holds("gap along the arc", finished * 2 * Math.PI * share)
            .Holds("gap along the chord", chord)
            .Holds("reduction of area of the outer fiber", 100 * strain / (1 + strain))
            .Verify();

        double core = bar.Analysis.YieldCurvature / loaded.Curvature;
        Assert.Equal(1 - (core * core / 3), loaded.BendingMoment / bar.Analysis.PlasticMoment, 1e-12);
        Assert.InRange(chord - released.EndGapOfClosedRing.Millimeters, 0.0013, 0.0017);
    }

    /// <summary>12 mm wide, 8 mm deep, σ_Y = 300 MPa.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problem_4_67_moment_for_a_core_of_4_mm()
    {
        PerfectlyPlasticBar bar =
            new(new FlatBar(Length.FromMillimeters(12), Length.FromMillimeters(8)).EasyWay, Pressure.FromGigapascals(200),
                Pressure.FromMegapascals(300));
        new PrintedExample()
            .Holds("moment at first yield", bar.Analysis.YieldMoment.NewtonMeters)
            .Holds("moment at a core of 4 mm", bar.AtCore(0.5).BendingMoment.NewtonMeters)
            .Verify();
    }

    /// <summary>60 × 90 mm, σ_Y = 240 MPa, E = 200 GPa, plastic zones of 30 mm.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problems_4_73_and_4_77_first_yield_plastic_zones_and_plastic_moment()
    {
        PerfectlyPlasticBar bar = OnEdge(90, 60, 240);
        LoadedBend zones = bar.AtCore(1 / 3.0);
        Assert.Equal(30, bar.Core(zones).Millimeters, 1e-9);
        new PrintedExample()
            .Holds("moment at first yield", bar.Analysis.YieldMoment.KilonewtonMeters)
            .Holds("radius at first yield", Radius(bar.Analysis.YieldCurvature))
            .Holds("moment with zones of 30 mm", zones.BendingMoment.KilonewtonMeters)
            .Holds("radius with zones of 30 mm", Radius(zones.Curvature))
            .Holds("plastic moment", bar.Analysis.PlasticMoment.KilonewtonMeters)
            .Holds("shape factor", bar.Analysis.Section.Properties.ShapeFactor)
            .Verify();
    }

    /// <summary>Round bar of 18 mm radius, σ_Y = 240 MPa.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problem_4_81_plastic_moment_of_a_round_bar()
    {
        PerfectlyPlasticBar bar =
            new(new RoundBar(Length.FromMillimeters(36)).Section, Pressure.FromGigapascals(200), Pressure.FromMegapascals(240));
        new PrintedExample().Holds("plastic moment", bar.Analysis.PlasticMoment.KilonewtonMeters).Verify();
    }

    /// <summary>Rectangle, M = 1.25·M_Y.</summary>
    [Fact]
    public void Beer_Johnston_DeWolf_problems_4_99_and_4_100_loaded_and_permanent_radius()
    {
        PerfectlyPlasticBar bar = OnEdge(90, 60, 240);
        LoadedBend loaded = bar.AtMoment(1.25 * bar.Analysis.YieldMoment);
        double yieldRadius = Radius(bar.Analysis.YieldCurvature);
        new PrintedExample()
            .Holds("loaded radius over yield radius", Radius(loaded.Curvature) / yieldRadius)
            .Holds("permanent radius over yield radius", Radius(loaded.Release(Release.HeldFlat).Ring.Curvature) / yieldRadius)
            .Verify();
    }

    /// <summary>
    /// 0.0359 in sheet bent to 0.5 in, which the book inserts as the mid-plane radius; Y = 40 000 psi, E = 29 000 000 psi, wanted angle
    /// 90°.
    /// </summary>
    [Fact]
    public void Kalpakjian_Schmid_chapter_7_springback_of_a_sheet()
    {
        const double Thickness = 0.0359;
        PerfectlyPlasticBar bar = Pounds(new FlatBar(Length.FromInches(1), Length.FromInches(Thickness)).EasyWay, 29e6, 40e3);
        LoadedBend loaded = bar.Analysis.LoadedTo(BendRadius.Centroid(Length.FromInches(0.5)));
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        double finished = released.Ring.CentroidRadius.Inches;
        double springback = ((2 * 0.5 / Thickness) + 1) / ((2 * finished / Thickness) + 1);
        new PrintedExample()
            .Holds("X", bar.Core(loaded).Inches / (2 * Thickness))
            .Holds("loaded over finished radius", released.CurvatureKept)
            .Holds("finished radius", finished)
            .Holds("springback ratio", springback)
            .Holds("bend angle", 90 / springback)
            .Verify();
    }

    [Fact]
    public void Textbook_shape_factors_of_rectangle_circle_thin_tube_and_diamond() => new PrintedExample()
        .Holds("rectangle", new SquareBar(Length.FromMillimeters(10)).Section.Properties.ShapeFactor)
        .Holds("circle", new RoundBar(Length.FromMillimeters(10)).Section.Properties.ShapeFactor)
        .Holds("thin tube", new RoundTube(Length.FromMillimeters(1000), Length.FromMillimeters(0.1)).Section.Properties.ShapeFactor)
        .Holds("diamond", StackedSection.Of(1e-3, (10, 0, 20), (10, 20, 0)).Properties.ShapeFactor)
        .Verify();

    /// <summary>
    /// Common practice, found as a trade forum answer: flat 1 × 1/4 in the easy way, 20 in outside diameter, (20 − 1/4)·3.14 = 62.015 in; π
    /// makes it 62.046 in.
    /// </summary>
    [Fact]
    public void Common_practice_flat_bar_ring_by_the_middle_of_the_bar() => AssertBlank(1, 0.25, 20, 62.015, 0.04);

    /// <summary>
    /// W. Templeton, workshop companion with tables for operative smiths, London: John Weale, 1855 (found): hoop of bar iron 7/8 in thick,
    /// 16 1/2 in outside diameter, 4 ft 1 in. The width is not given and plays no part.
    /// </summary>
    [Fact]
    public void Templeton_1855_hoop_of_bar_iron() => AssertBlank(2, 0.875, 16.5, 49, 0.13);

    private static void AssertBlank(double width, double thickness, double outsideDiameter, double inches, double tolerance)
    {
        PerfectlyPlasticBar bar = new(new FlatBar(Length.FromInches(width), Length.FromInches(thickness)).EasyWay);
        FinishedRing ring =
            bar.Analysis.LoadedFor(BendRadius.OutsideDiameter(Length.FromInches(outsideDiameter)), Release.Free).Release(Release.Free).Ring;
        Assert.Equal(inches, ring.BlankLengthFor(Angle.FromDegrees(360)).Inches, tolerance);
    }

    private static PerfectlyPlasticBar OnEdge(double depth, double width, double yield) => new(
        new FlatBar(Length.FromMillimeters(depth), Length.FromMillimeters(width)).HardWay, Pressure.FromGigapascals(200),
            Pressure.FromMegapascals(yield));

    private static PerfectlyPlasticBar Pounds(OrientedSection section, double modulus, double yield) =>
        new(section, Pressure.FromPoundsForcePerSquareInch(modulus), Pressure.FromPoundsForcePerSquareInch(yield));

    /// <summary>x and y of a·x + b·y = c, d·x + e·y = f.</summary>
    private static (double X, double Y) Solve(double a, double b, double c, double d, double e, double f) =>
        (((c * e) - (b * f)) / ((a * e) - (b * d)), ((a * f) - (c * d)) / ((a * e) - (b * d)));

    private static double Radius(ReciprocalLength curvature) => 1 / curvature.InverseMeters;
}
