using BendMath.Bending.Guides;
using BendMath.Tests.Definitions;
using UnitsNet;

namespace BendMath.Tests.Bending;

public sealed class GuideTests
{
    private static readonly ReferenceTable Cases = ReferenceTable.Load("Definitions/mechanisms.csv");

    /// <summary>
    /// Of the example angle, 3/4 × 3/4 × 1/8 in on 127 mm: k/(E·I_r), κ_r/κ, radius free, dish, radius pressed flat; independent program,
    /// printed digits, not a published source.
    /// </summary>
    public static TheoryData<double, double, double, double, double> Example => new()
    {
        { double.PositiveInfinity, 0, 131.18, 0.63, 132.07 },
        { 3, 0.009, 131.19, 1.16, 132.84 },
        { 1, 0.027, 131.21, 2.14, 134.32 },
        { 0.3, 0.080, 131.11, 4.98, 138.9 },
        { 0.1, 0.177, 130.01, 10.2, 148.1 },
        { 0.03, 0.309, 126.77, 17.1, 162.4 },
        { 0.01, 0.393, 123.82, 21.2, 172.9 },
        { 0, 0.463, 120.86, 24.6, 182.8 },
    };

    [Theory]
    [MemberData(nameof(Example))]
    public void Ring_of_the_example_dishes_as_the_guide_gives(double ratio, double lean, double free, double dish, double flat)
    {
        BendAnalysis analysis = Angle(Linear);
        LoadedBend loaded = analysis.LoadedTo(Radius(127), Guide(analysis, ratio));
        FinishedRing ring = loaded.Release(Release.Free).Ring;
        Assert.Equal(lean, loaded.OutOfPlaneCurvature / loaded.Curvature, 0.0005);
        Assert.Equal(free, ring.InsideRadius.Millimeters, 0.005);
        Assert.Equal(dish, ring.DishAngle.Degrees, dish < 10 ? 0.005 : 0.05);
        Assert.Equal(flat, loaded.Release(Release.HeldFlat).Ring.InsideRadius.Millimeters, flat < 135 ? 0.005 : 0.05);
    }

    /// <summary>κ_r/κ = −E·I_br/(E·I_r + k) while the bar is elastic (unsymmetric bending with a spring; derived).</summary>
    [Theory]
    [InlineData(1e-4)]
    [InlineData(0.01)]
    [InlineData(0.3)]
    [InlineData(3)]
    [InlineData(1e5)]
    public void Elastic_bar_leans_in_proportion(double ratio)
    {
        BendAnalysis analysis = Angle(Linear);
        SectionProperties section = analysis.Section.Properties;
        LoadedBend loaded = analysis.LoadedTo(Radius(30_000), Guide(analysis, ratio));
        Assert.True(loaded.IsElastic);
        double expected = -section.ProductOfInertia / section.SecondMomentAboutRadialAxis / (1 + ratio);
        Near.Relative(expected, loaded.OutOfPlaneCurvature / loaded.Curvature, 1e-9);
    }

    /// <summary>The limits of the guide are the two states that need none.</summary>
    [Fact]
    public void Rigid_is_held_flat_and_none_is_not_held()
    {
        BendAnalysis analysis = Angle(Linear);
        Assert.Equal(analysis.LoadedTo(Radius(127)).BendingMoment, analysis.LoadedTo(Radius(127), OutOfPlaneGuide.Rigid).BendingMoment);
        Assert.Equal(analysis.LoadedUnheldTo(Radius(127)).OutOfPlaneCurvature,
            analysis.LoadedTo(Radius(127), OutOfPlaneGuide.None).OutOfPlaneCurvature);
        double nearly = analysis.LoadedTo(Radius(127), Guide(analysis, 1e5)).OutOfPlaneCurvature / analysis.LoadedTo(Radius(127)).Curvature;
        Assert.InRange(nearly, 1e-8, 1e-6);
    }

    /// <summary>M_r + k·κ_r = 0 and N = 0 hold, and |κ_r| falls as k grows.</summary>
    [Fact]
    public void Lean_falls_strictly_with_the_stiffness()
    {
        foreach (ReferenceRow row in Cases.Where(row => row["kind"] == "guided" && row["shape"] == "angle"))
        {
            BendAnalysis analysis = CaseRow.Analysis(row);
            BendRadius radius = BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm"));
            double before = double.PositiveInfinity;
            foreach (double ratio in new[] { 0, 0.001, 0.01, 0.03, 0.1, 0.3, 1, 3, 30, 1000 })
            {
                OutOfPlaneGuide guide = Guide(analysis, ratio);
                LoadedBend loaded = analysis.LoadedTo(radius, guide);
                double lean = Math.Abs(loaded.OutOfPlaneCurvature.InverseMeters);
                Assert.True(lean < before, $"{row} at {ratio}: {lean} after {before}");
                before = lean;
                double left = loaded.HoldDownMoment.NewtonMeters + (guide.NewtonSquareMeters * loaded.OutOfPlaneCurvature.InverseMeters);
                Near.Absolute(0, left, 1e-11 * loaded.BendingMoment.NewtonMeters, "balance");
                Near.Absolute(0, loaded.AxialForce.Newtons * analysis.Section.Depth.Meters, 1e-11 * loaded.BendingMoment.NewtonMeters,
                    "axial force");
            }
        }
    }

    /// <summary>By symmetry M_r(held) is zero, whatever the guide.</summary>
    [Fact]
    public void Symmetric_sections_do_not_lean()
    {
        foreach (OrientedSection section in new[] { new FlatBar(Length.FromMillimeters(40), Length.FromMillimeters(6)).HardWay,
            new RoundBar(Length.FromMillimeters(12)).Section, new SquareBar(Length.FromMillimeters(12)).Section,
                new RoundTube(Length.FromMillimeters(33.7), Length.FromMillimeters(3.2)).Section })
        {
            BendAnalysis analysis = BendAnalysis.Of(section, Material(Linear));
            Assert.True(analysis.LoadedTo(Radius(300), OutOfPlaneGuide.None).IsHeldFlat);
            Assert.True(analysis.LoadedTo(Radius(300), BarGuide.FreeToTurn).IsHeldFlat);
            Assert.True(GuideEstimate.FromDish(analysis, Radius(300), UnitsNet.Angle.Zero, UnitsNet.Angle.FromDegrees(0.3)).TellsNothing);
        }
    }

    /// <summary>Two springs c at ±ℓ give k = c·ℓ³/2 (derived), a clamped guide its E·I.</summary>
    [Fact]
    public void Stiffness_of_stations_and_of_a_clamped_guide()
    {
        Near.Relative(500 / 2e-3 * 0.1 * 0.1 * 0.1 / 2,
            OutOfPlaneGuide.OfStations(Force.FromNewtons(500), Length.FromMillimeters(2), Length.FromMillimeters(100)).NewtonSquareMeters,
                1e-14);
        Near.Relative(210e9 * 5e-9,
            OutOfPlaneGuide.Clamped(Pressure.FromGigapascals(210), AreaMomentOfInertia.FromMillimetersToTheFourth(5000)).NewtonSquareMeters,
                1e-14);
    }

    /// <summary>By symmetry about its diagonal, whatever the law.</summary>
    [Fact]
    public void Equal_angle_free_to_turn_ends_at_half_a_right_angle()
    {
        foreach (StressStrainLaw law in Laws)
        {
            foreach (double radius in new[] { 80.0, 300, 1500, 40_000 })
            {
                LoadedBend loaded = Angle(law).LoadedTo(Radius(radius), BarGuide.FreeToTurn);
                Assert.Equal(45, loaded.RollOverAngle.Degrees, 1e-9);
                Near.Relative(1, loaded.HoldDownMoment / loaded.BendingMoment, 1e-9, "moment parallel to curvature");
                Near.Relative(radius, loaded.InsideRadius.Millimeters, 1e-12, "radius");
            }
        }
    }

    /// <summary>
    /// tan 2φ = −2·I_br/(I_r − I_b): the principal axis of least inertia (elementary; the branch is the one the bar is pushed to).
    /// </summary>
    [Theory]
    [InlineData(40, 25)]
    [InlineData(25, 40)]
    public void Elastic_angle_free_to_turn_bends_about_its_weakest_axis(double radial, double axial)
    {
        UnequalAngle angle =
            new(Length.FromMillimeters(Math.Max(radial, axial)), Length.FromMillimeters(Math.Min(radial, axial)), Length.FromMillimeters(4),
                AngleFillets.Of(Length.FromMillimeters(4), Length.FromMillimeters(2)));
        OrientedSection section = (radial > axial ? angle.LongLegOut : angle.ShortLegOut);
        LoadedBend loaded = BendAnalysis.Of(section, Material(Linear)).LoadedTo(Radius(100_000), BarGuide.FreeToTurn);
        Assert.True(loaded.IsElastic);
        SectionProperties p = section.Properties;
        double turned = loaded.RollOverAngle.Radians;
        double least =
            (p.SecondMomentAboutBendingAxis.MetersToTheFourth * Math.Pow(Math.Cos(turned), 2))
                + (p.SecondMomentAboutRadialAxis.MetersToTheFourth * Math.Pow(Math.Sin(turned), 2))
                    + (p.ProductOfInertia.MetersToTheFourth * Math.Sin(2 * turned));
        Near.Relative(p.PrincipalSecondMomentMinor.MetersToTheFourth, least, 1e-9);
    }

    /// <summary>At the end state the moment is parallel to the curvature, so release only opens the ring.</summary>
    [Fact]
    public void Ring_of_a_bar_free_to_turn_is_never_tighter_than_the_die()
    {
        foreach (ReferenceRow row in Cases.Where(row => row["shape"] == "angle" && row["kind"] is "guided" or "turned"))
        {
            BendAnalysis analysis = CaseRow.Analysis(row);
            double inside = row.Number("inside_radius_mm");
            double before = double.PositiveInfinity;
            foreach (double stiffness in new[] { 0, 300.0, 3000, 30_000 })
            {
                FinishedRing ring =
                    analysis.LoadedTo(Radius(inside), BarGuide.AgainstTurning(Force.FromNewtons(stiffness))).Release(Release.Free).Ring;
                Assert.True(ring.InsideRadius.Millimeters > inside, $"{row}: {ring}");
                double dish = Math.Abs(ring.DishAngle.Degrees);
                Assert.True(dish <= before, $"{row}: dish {dish} after {before}");
                before = dish;
            }
        }
    }

    private static readonly LinearHardening Linear =
        new(Pressure.FromGigapascals(200), Pressure.FromMegapascals(310), Pressure.FromMegapascals(1500));

    private static StressStrainLaw[] Laws =>
    [
        Linear,
        new PerfectlyPlastic(Pressure.FromGigapascals(200), Pressure.FromMegapascals(310)),
        new PowerHardening(Pressure.FromGigapascals(200), Pressure.FromMegapascals(720), 0.2),
        new RambergOsgood(Pressure.FromGigapascals(200), Pressure.FromMegapascals(300), 12),
        new HotRolledSteel(Pressure.FromGigapascals(200), Pressure.FromMegapascals(300), Pressure.FromMegapascals(450)),
    ];

    internal static BendAnalysis Angle(StressStrainLaw law) => BendAnalysis.Of(
        new EqualAngle(Length.FromMillimeters(19.05), Length.FromMillimeters(3.175), AngleFillets.Sharp).FlangeOut, Material(law));

    internal static OutOfPlaneGuide Guide(BendAnalysis analysis, double ratio) =>
        double.IsInfinity(ratio) ? OutOfPlaneGuide.Rigid : OutOfPlaneGuide.Of(
        ratio * analysis.Law.ElasticModulus.Pascals * analysis.Section.Properties.SecondMomentAboutRadialAxis.MetersToTheFourth);

    internal static BendRadius Radius(double millimeters) => BendRadius.Inside(Length.FromMillimeters(millimeters));

    internal static BarMaterial Material(StressStrainLaw law) => new("steel", law, Density.FromKilogramsPerCubicMeter(7850));
}
