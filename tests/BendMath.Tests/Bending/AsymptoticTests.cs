using BendMath.Bending.NeutralAxes;
using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>Limits of the bending core and the rates at which they are approached; the rates are derived beside each test.</summary>
public sealed class AsymptoticTests
{
    private const double Modulus = 200e9;

    public static TheoryData<string> Sections => [.. All.Keys];

    public static TheoryData<string> Symmetric => ["rectangle", "round", "tube"];

    public static TheoryData<string> Angles => ["sharp", "rolled", "flange in"];

    private static Dictionary<string, OrientedSection> All { get; } = new()
    {
        ["rectangle"] = new FlatBar(Millimeters(30), Millimeters(5)).HardWay,
        ["round"] = new RoundBar(Millimeters(12)).Section,
        ["tube"] = new RoundTube(Millimeters(33.7), Millimeters(3.2)).Section,
        ["sharp"] = new EqualAngle(Millimeters(30), Millimeters(3), AngleFillets.Sharp).FlangeOut,
        ["rolled"] = new EqualAngle(Millimeters(30), Millimeters(3), AngleFillets.Of(Millimeters(5), Millimeters(2.5))).FlangeOut,
        ["flange in"] = new EqualAngle(Millimeters(30), Millimeters(3), AngleFillets.Of(Millimeters(5), Millimeters(2.5))).FlangeIn,
    };

    /// <summary>
    /// R → ∞ with Ramberg–Osgood: e_p → 0.002(E·e/σ₀.₂)ⁿ, so a rectangle keeps κ_f/κ → 0.002(E·κc/σ₀.₂)ⁿ/(κc)·3/(n + 2), c = h/2; the first
    /// term left out is smaller by e_p/e, which goes with κⁿ⁻¹.
    /// </summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    public void R_to_infinity_a_rectangle_without_elastic_limit_keeps_less_and_less(int n)
    {
        RambergOsgood law = new(Pressure.FromPascals(Modulus), Pressure.FromMegapascals(300), n);
        BendAnalysis analysis = Analysis(All["rectangle"], law);
        Rate.Holds(n - 1, strain =>
        {
            double curvature = strain / 0.015;
            double expected = 0.002 * Math.Pow(Modulus * strain / 300e6, n) / strain * 3 / (n + 2);
            return (analysis.LoadedAt(PerMeter(curvature)).Release(Release.HeldFlat).CurvatureKept / expected) - 1;
        }, n == 2 ? 1e-5 : 2e-4);
    }

    /// <summary>
    /// R → ∞: every law ends elastic, M = E·I_b·κ, y_n = ȳ, straight on release; Ramberg–Osgood with e_p/e, which goes with κⁿ⁻¹.
    /// </summary>
    [Theory]
    [MemberData(nameof(Sections))]
    public void R_to_infinity_every_bar_is_elastic(string name)
    {
        OrientedSection section = All[name];
        double stiffness = Modulus * section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
        foreach (StressStrainLaw law in new StressStrainLaw[] { Lines(250e6, 0), Lines(250e6, 2e9),
            new PowerHardening(Pressure.FromPascals(Modulus), Pressure.FromMegapascals(600), 0.2) })
        {
            LoadedBend loaded = Analysis(section, law).LoadedTo(BendRadius.Inside(1e5 * section.Depth));
            Assert.Equal(1, loaded.BendingMoment.NewtonMeters / stiffness / loaded.Curvature.InverseMeters, 1e-14);
            Assert.Equal(0, (loaded.NeutralAxisFromInside - section.Properties.CentroidFromInside) / section.Depth, 1e-15);
            Assert.True(loaded.Release(Release.Free).IsStraight);
        }

        BendAnalysis soft = Analysis(section, new RambergOsgood(Pressure.FromPascals(Modulus), Pressure.FromMegapascals(300), 3));
        Rate.Holds(2, strain =>
        {
            ReciprocalLength curvature = PerMeter(strain / section.Depth.Meters);
            return (soft.MomentAt(curvature).NewtonMeters / stiffness / curvature.InverseMeters) - 1;
        }, 2e-4);
    }

    /// <summary>
    /// Yield → 0 at a fixed radius: an elastic core of the half height k takes ∫(k − |u|)w(u)|u|du ~ k² off M_p, so M_p − M goes with the
    /// square of the yield.
    /// </summary>
    [Theory]
    [MemberData(nameof(Sections))]
    public void Yield_to_zero_the_moment_is_plastic_with_the_square_of_the_yield(string name)
    {
        OrientedSection section = All[name];
        Rate.Holds(2, yield =>
        {
            BendAnalysis analysis = Analysis(section, Lines(yield, 0));
            return 1 - (analysis.LoadedTo(BendRadius.Inside(4 * section.Depth)).BendingMoment / analysis.PlasticMoment);
        }, 40e6);
    }

    /// <summary>
    /// The same core, lopsided by the slope of the width, moves the neutral axis off the equal-area axis with k²; where the width is
    /// constant it does not move at all.
    /// </summary>
    [Theory]
    [InlineData("rolled")]
    [InlineData("flange in")]
    public void Yield_to_zero_the_neutral_axis_is_the_equal_area_axis_with_the_square_of_the_yield(string name)
    {
        OrientedSection section = All[name];
        Rate.Holds(2, yield => Axis(section, yield), 60e6);
        Assert.Equal(0, Axis(All["sharp"], 60e6), 1e-13);

        static double Axis(OrientedSection section, double yield)
        {
            LoadedBend loaded = Analysis(section, Lines(yield, 0)).LoadedTo(BendRadius.Inside(4 * section.Depth));
            return (loaded.NeutralAxisFromInside - section.Properties.EqualAreaAxisFromInside) / section.Depth;
        }
    }

    /// <summary>
    /// n → 0 at the same yield: σ = σ_y(e/e_y)ⁿ = σ_y(1 + n·ln(e/e_y) + …), so every figure tends to the perfectly plastic one with n.
    /// </summary>
    [Theory]
    [MemberData(nameof(Sections))]
    public void N_to_zero_the_power_law_is_perfectly_plastic(string name)
    {
        OrientedSection section = All[name];
        LoadedBend limit = Loaded(section, Lines(250e6, 0));
        Rate.Holds(1, n => (Loaded(section, Power(n)).BendingMoment / limit.BendingMoment) - 1, 0.01);
        Rate.Holds(1, n => Loaded(section, Power(n)).Release(Release.Free).CurvatureKept - limit.Release(Release.Free).CurvatureKept, 0.01);
        Assert.Equal(limit.BendingMoment.NewtonMeters, Loaded(section, Power(0)).BendingMoment.NewtonMeters,
            1e-12 * limit.BendingMoment.NewtonMeters);

        static PowerHardening Power(double n) =>
            new(Pressure.FromPascals(Modulus), Pressure.FromPascals(250e6 * Math.Pow(Modulus / 250e6, n)), n);
    }

    /// <summary>
    /// E_t → 0: the stress differs from the perfectly plastic one by E_t·(e − e_y), so every figure tends to its limit with E_t.
    /// </summary>
    [Theory]
    [MemberData(nameof(Angles))]
    public void Tangent_to_zero_linear_hardening_is_perfectly_plastic(string name)
    {
        OrientedSection section = All[name];
        LoadedBend limit = Loaded(section, Lines(250e6, 0));
        Rate.Holds(1, share => (Loaded(section, Lines(250e6, share * Modulus)).BendingMoment / limit.BendingMoment) - 1, 2e-5);
        Rate.Holds(1,
            share => (Loaded(section, Lines(250e6, share * Modulus)).NeutralAxisFromInside - limit.NeutralAxisFromInside) / section.Depth,
                2e-5);
        Rate.Holds(1,
            share =>
                Loaded(section, Lines(250e6, share * Modulus)).Release(Release.Free).CurvatureKept
                    - limit.Release(Release.Free).CurvatureKept, 2e-5);
    }

    /// <summary>E_t → E: e_p = (1 − E_t/E)(|e| − e_y), so what stays goes with 1 − E_t/E, and y_n tends to the centroid with it.</summary>
    [Theory]
    [MemberData(nameof(Angles))]
    public void Tangent_to_modulus_linear_hardening_is_elastic(string name)
    {
        OrientedSection section = All[name];
        double stiffness = Modulus * section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
        Rate.Holds(1, share => Loaded(section, Lines(250e6, (1 - share) * Modulus)).Release(Release.HeldFlat).CurvatureKept, 1e-3);
        Rate.Holds(1, share => Loaded(section, Lines(250e6, (1 - share) * Modulus)).Release(Release.Free).CurvatureKept, 1e-3);
        Rate.Holds(1,
            share =>
                (Loaded(section, Lines(250e6, (1 - share) * Modulus)).NeutralAxisFromInside - section.Properties.CentroidFromInside)
                    / section.Depth, 1e-3);
        Rate.Holds(1, share =>
        {
            LoadedBend loaded = Loaded(section, Lines(250e6, (1 - share) * Modulus));
            return 1 - (loaded.BendingMoment.NewtonMeters / stiffness / loaded.Curvature.InverseMeters);
        }, 1e-3);
    }

    /// <summary>
    /// Where symmetry fixes the neutral axis, linear hardening is exactly a mixture: M = (1 − s)·M_pp + s·E·I_b·κ and κ_f = (1 − s)·κ_f,pp
    /// with s = E_t/E (derived).
    /// </summary>
    [Theory]
    [MemberData(nameof(Symmetric))]
    public void Linear_hardening_of_a_symmetric_section_mixes_elastic_and_perfectly_plastic(string name)
    {
        OrientedSection section = All[name];
        LoadedBend plastic = Loaded(section, Lines(250e6, 0));
        double elastic = Modulus * section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth * plastic.Curvature.InverseMeters;
        foreach (double share in new[] { 1e-9, 0.001, 0.01, 0.3, 0.9, 0.999999 })
        {
            LoadedBend loaded = Loaded(section, Lines(250e6, share * Modulus));
            Assert.Equal(1, loaded.BendingMoment.NewtonMeters / (((1 - share) * plastic.BendingMoment.NewtonMeters) + (share * elastic)),
                1e-12);
            double kept = (1 - share) * plastic.Release(Release.Free).CurvatureKept;
            Assert.Equal(1, loaded.Release(Release.Free).IsStraight ? 1 : loaded.Release(Release.Free).CurvatureKept / kept, 1e-9);
        }
    }

    /// <summary>
    /// Wall → 0 of a tube at a fixed mean radius r: κ_f/κ → 1 − η·(2/π)(arcsin η/η + √(1 − η²)), with an error of the order (wall/r)²
    /// because terms of first order cancel about the mean radius.
    /// </summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.6)]
    public void Wall_to_zero_a_tube_springs_back_like_a_thin_ring(double core)
    {
        const double Mean = 0.02;
        double thin = 1 - (2 / Math.PI * (Math.Asin(core) + (core * Math.Sqrt(1 - (core * core)))));
        Rate.Holds(2, wall =>
        {
            RoundTube tube = new(Length.FromMeters(2 * Mean * (1 + (wall / 2))), Length.FromMeters(Mean * wall));
            return Analysis(tube.Section, Lines(250e6, 0)).LoadedAt(PerMeter(250e6 / Modulus / Mean / core))
                .Release(Release.HeldFlat).CurvatureKept - thin;
        }, 0.1);
    }

    /// <summary>
    /// Wall → 0 of a sharp angle whose legs' middle lines have the length c: ȳ − t/2 → c/4 and I → 5/24·t·c³ with the square of the wall
    /// (derived; the exact centroid is c/4 + t/2 − t²/(16c)), and so does Z → t·c²/2: the flange adds the t²·c/2 that the shorter lever of
    /// the radial leg takes away.
    /// </summary>
    [Fact]
    public void Wall_to_zero_an_angle_is_two_lines()
    {
        const double Line = 0.03;
        Rate.Holds(2, wall => ((Angle(wall).CentroidFromInside.Meters - (wall / 2)) / Line) - 0.25, 0.004);
        Rate.Holds(2, wall => (Angle(wall).SecondMomentAboutBendingAxis.MetersToTheFourth / (5 / 24.0 * wall * Line * Line * Line)) - 1,
            0.004);
        Rate.Holds(2, wall => (Angle(wall).PlasticModulus.CubicMeters / (wall * Line * Line / 2)) - 1, 0.004);

        static SectionProperties Angle(double wall) =>
            new EqualAngle(Length.FromMeters(Line + (wall / 2)), Length.FromMeters(wall), AngleFillets.Sharp).FlangeOut.Properties;
    }

    /// <summary>
    /// Elastic curved bar, R → ∞: e·R̄·A/I_b − 1 begins with −∫(y − ȳ)³dA/(I_b·R̄), so it vanishes with 1/R̄ for an angle and with 1/R̄²
    /// where symmetry takes that term away.
    /// </summary>
    [Theory]
    [InlineData("rectangle", 2)]
    [InlineData("round", 2)]
    [InlineData("tube", 2)]
    [InlineData("sharp", 1)]
    [InlineData("rolled", 1)]
    [InlineData("flange in", 1)]
    public void R_to_infinity_the_curved_bar_is_straight(string name, double order)
    {
        OrientedSection section = All[name];
        SectionProperties p = section.Properties;
        Rate.Holds(order, share =>
        {
            CurvedBar bar = CurvedBar.Of(section, BendRadius.Centroid(section.Depth / share));
            return (bar.Eccentricity.Meters * bar.CentroidRadius.Meters * p.Area.SquareMeters
                / p.SecondMomentAboutBendingAxis.MetersToTheFourth) - 1;
        }, 0.02);
        Rate.Holds(1, share => CurvedBar.Of(section, BendRadius.Centroid(section.Depth / share)).InsideStressFactor - 1, 0.02);
    }

    private static LinearHardening Lines(double yield, double tangent) =>
        new(Pressure.FromPascals(Modulus), Pressure.FromPascals(yield), Pressure.FromPascals(tangent));

    private static LoadedBend Loaded(OrientedSection section, StressStrainLaw law) =>
        Analysis(section, law).LoadedTo(BendRadius.Inside(8 * section.Depth));

    private static BendAnalysis Analysis(OrientedSection section, StressStrainLaw law) =>
        BendAnalysis.Of(section, new BarMaterial("steel", law, Density.FromKilogramsPerCubicMeter(7850)));

    private static ReciprocalLength PerMeter(double curvature) => ReciprocalLength.FromInverseMeters(curvature);

    private static Length Millimeters(double value) => Length.FromMillimeters(value);
}
