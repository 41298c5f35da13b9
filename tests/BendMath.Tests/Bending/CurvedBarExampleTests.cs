using BendMath.Bending.NeutralAxes;
using BendMath.Tests.Handbook;
using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>
/// Worked examples in print of elastic curved bars, held to the rounding of the print; each test is named after its source, its printed
/// answers stand in <c>Handbook/worked-examples.csv</c>. Left out: Kazimi, Solid Mechanics, Example 7.17 (trapezoidal hook), because its
/// print uses the approximation e = I/(r·A) and mixes terms: 891.2 and 401.0 kg/cm² printed, 928.5 and 417.8 exact.
/// </summary>
public sealed class CurvedBarExampleTests
{
    private const double Inch = 0.0254;

    /// <summary>
    /// Beer, Johnston &amp; DeWolf, Mechanics of Materials, Example 4.10, p. 298 (found): 2.5 × 1.5 in, mean radius 6 in.
    /// </summary>
    [Fact]
    public void Beer_Johnston_DeWolf_example_4_10_neutral_radius_and_eccentricity()
    {
        CurvedBar bar = Bar(StackedSection.Of(Inch, (1.5, 2.5, 2.5)), 5.25 * Inch);
        Assert.Equal(6, bar.CentroidRadius.Inches, 1e-12);
        new PrintedExample().Holds("neutral radius", bar.NeutralRadius.Inches).Holds("eccentricity", bar.Eccentricity.Inches).Verify();
    }

    /// <summary>
    /// Beer, Johnston &amp; DeWolf, Example 4.11, p. 299 (found): the same bar, 8 kip·in. The book carries e rounded to 0.0314 in, which
    /// allows 0.02 ksi.
    /// </summary>
    [Fact]
    public void Beer_Johnston_DeWolf_example_4_11_extreme_stresses()
    {
        CurvedBar bar = Bar(StackedSection.Of(Inch, (1.5, 2.5, 2.5)), 5.25 * Inch);
        Torque moment = Torque.FromKilopoundForceInches(8);
        new PrintedExample()
            .Holds("largest stress", Stress(bar, 1.5 * Inch, moment, 0).KilopoundsForcePerSquareInch)
            .Holds("smallest stress", Stress(bar, 0, moment, 0).KilopoundsForcePerSquareInch)
            .Verify();
    }

    /// <summary>
    /// Beer, Johnston &amp; DeWolf, Sample Problem 4.11, p. 300 (found): T of 80 × 20 and 20 × 40 mm, r 30 to 90 mm, arm 110 mm, −50 MPa
    /// allowed.
    /// </summary>
    [Fact]
    public void Beer_Johnston_DeWolf_sample_problem_4_11_machine_component()
    {
        CurvedBar bar = Bar(StackedSection.Of(1e-3, (20, 80, 80), (40, 20, 20)), 0.030);
        double perKilonewton = Stress(bar, 0, Torque.FromNewtonMeters(110), -1000).Megapascals;
        new PrintedExample()
            .Holds("centroid radius", bar.CentroidRadius.Millimeters)
            .Holds("neutral radius", bar.NeutralRadius.Millimeters)
            .Holds("eccentricity", bar.Eccentricity.Millimeters)
            .Holds("load", -50 / perKilonewton)
            .Verify();
    }

    /// <summary>
    /// Boresi &amp; Schmidt, Example 9.3, p. 329 (found): crane hook of half an ellipse 24 × 44 mm, a trapezoid 88 to 34 mm wide and 100 mm
    /// deep and a circular segment 5 mm high; the outline is the one whose parts have the printed areas 1658.76, 6100 and 115.27 mm². Yield
    /// 500 MPa, safety 2. The ellipse is drawn as 800 chords. The book rounds ∫dA/r of each part to 0.01 mm before it subtracts, and prints
    /// P = 190.9 kN; the exact outline must give a load within what that rounding allows.
    /// </summary>
    [Fact]
    public void Boresi_Schmidt_example_9_3_crane_hook()
    {
        const int Layers = 400;
        (double Depth, double InsideWidth, double OutsideWidth)[] ellipse = [.. Enumerable.Range(0, Layers).Select(i =>
        {
            double from = Math.PI / 2 * i / Layers;
            double to = Math.PI / 2 * (i + 1) / Layers;
            return (24 * (Math.Cos(from) - Math.Cos(to)), 88 * Math.Sin(from), 88 * Math.Sin(to));
        })];
        OrientedSection section = StackedSection.Of(1e-3, [.. ellipse, (100, 88, 34)], capRise: 5);
        Assert.Equal(1658.76 + 6100 + 115.27, section.Properties.Area.SquareMillimeters, 0.02);
        CurvedBar bar = Bar(section, 0.060);
        Assert.Equal(189, bar.OutsideRadius.Millimeters, 1e-9);
        double perKilonewton = Stress(bar, 0, -Torque.FromNewtonMeters(bar.CentroidRadius.Millimeters), 1000).Megapascals;
        const double Area = 1658.76 + 6100 + 115.27;
        const double Mean = (1658.76 * 73.81 + 6100 * 126.62 + 115.27 * 186.01) / Area;
        const double Inverse = 22.64 + 50.57 + 0.62;
        static double Load(double inverse) => 0.250 / (1 / Area + Mean * (Area - 60 * inverse) / (Area * 60 * (Mean * inverse - Area)));
        new PrintedExample().Holds("load", Load(Inverse)).Verify();
        Assert.Equal(Inverse, section.Properties.Area.SquareMillimeters / bar.NeutralRadius.Millimeters, 0.015);
        Assert.InRange(250 / perKilonewton, Load(Inverse - 0.015), Load(Inverse + 0.015));
    }

    /// <summary>
    /// Boresi &amp; Schmidt, Example 9.5, p. 334 (found): T of 120 × 48 and 24 × 120 mm, r 72 to 240 mm, 120 kN at 364 mm, opening.
    /// </summary>
    [Fact]
    public void Boresi_Schmidt_example_9_5_press_frame_with_radial_stress()
    {
        CurvedBar bar = Bar(StackedSection.Of(1e-3, (48, 120, 120), (120, 24, 24)), 0.072);
        Torque moment = Torque.FromKilonewtonMeters(-120 * 0.364);
        new PrintedExample()
            .Holds("stress at the inside", Stress(bar, 0, moment, 120e3).Megapascals)
            .Holds("radial stress", bar.RadialStressAt(Length.FromMillimeters(48), moment).Megapascals)
            .Verify();
    }

    /// <summary>
    /// Boresi &amp; Schmidt, Example 9.6, p. 335 (found): I of 150 × 60, 50 × 120 and 150 × 40 mm, r 80 to 300 mm, 96 kN·m and 120 kN at
    /// the center of curvature.
    /// </summary>
    [Fact]
    public void Boresi_Schmidt_example_9_6_I_section()
    {
        CurvedBar bar = Bar(StackedSection.Of(1e-3, (60, 150, 150), (120, 50, 50), (40, 150, 150)), 0.080);
        Torque moment = Torque.FromKilonewtonMeters(-96 - 120 * bar.CentroidRadius.Meters);
        new PrintedExample().Holds("stress at the inside", Stress(bar, 0, moment, 120e3).Megapascals).Verify();
    }

    /// <summary>
    /// Budynas &amp; Nisbett, Shigley's Mechanical Engineering Design, 9th ed., Example 3-15, pp. 119-120 (stresses found, load and radii
    /// from memory): hook 0.75 × 4 in, r 2 to 6 in, 5000 lbf.
    /// </summary>
    [Fact]
    public void Shigley_example_3_15_rectangular_hook()
    {
        CurvedBar bar = Bar(StackedSection.Of(Inch, (4, 0.75, 0.75)), 2 * Inch);
        Torque moment = -Torque.FromPoundForceInches(5000 * 4);
        double force = Force.FromPoundsForce(5000).Newtons;
        new PrintedExample()
            .Holds("neutral radius", bar.NeutralRadius.Inches)
            .Holds("eccentricity", bar.Eccentricity.Inches)
            .Holds("stress at the inside", Stress(bar, 0, moment, force).KilopoundsForcePerSquareInch)
            .Holds("stress at the outside", Stress(bar, 4 * Inch, moment, force).KilopoundsForcePerSquareInch)
            .Verify();
    }

    /// <summary>
    /// Jindal, Machine Design, Example 3.32, p. 94 (found): box of 24 × 6, two 4 × 20 and 16 × 4 cm, r 24 to 54 cm, 200 kN at 60 cm from
    /// the center of curvature.
    /// </summary>
    [Fact]
    public void Jindal_example_3_32_box_section_of_a_press_frame()
    {
        CurvedBar bar = Bar(StackedSection.Of(1e-2, (6, 24, 24), (20, 8, 8), (4, 16, 16)), 0.24);
        Torque moment = -Torque.FromNewtonMeters(200e3 * (0.60 + bar.CentroidRadius.Meters));
        new PrintedExample()
            .Holds("stress at the inside", Stress(bar, 0, moment, 200e3).Megapascals)
            .Holds("stress at the outside", Stress(bar, 0.30, moment, 200e3).Megapascals)
            .Verify();
    }

    private static CurvedBar Bar(OrientedSection section, double inside) =>
        CurvedBar.Of(section, BendRadius.Inside(Length.FromMeters(inside)));

    private static Pressure Stress(CurvedBar bar, double fromInside, Torque moment, double newtons) =>
        bar.StressAt(Length.FromMeters(fromInside), moment, Force.FromNewtons(newtons));
}
