using UnitsNet;

namespace BendMath.Tests.Definitions;

/// <summary>Source of every number: independent program, adaptive quadrature over chords; not a published source.</summary>
public sealed class PullAndRollTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Load("Definitions/pull-and-roll.csv");

    public static TheoryData<ReferenceRow> Pulled => new(Table.Where(row => row["load"] == "pull"));

    public static TheoryData<ReferenceRow> NotHeld => new(Table.Where(row => row["load"] == "not held"));

    [Fact]
    public void No_case_drops_out() => Assert.Equal((6, 6), (Pulled.Count, NotHeld.Count));

    [Theory]
    [MemberData(nameof(Pulled))]
    public void Pulled_bar_is_that_of_the_independent_program(ReferenceRow row)
    {
        Force pull = Force.FromNewtons(row.Number("pull_n"));
        LoadedBend loaded = CaseRow.Analysis(row).LoadedTo(BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm")), pull);
        new Comparison(row)
            .Relative("pull_n", loaded.AxialForce.Newtons, 1e-9)
            .Relative("neutral_axis_mm", loaded.NeutralAxisFromInside.Millimeters, 1e-9)
            .Relative("bending_moment_nmm", loaded.BendingMoment.NewtonMillimeters, 1e-9)
            .Relative("flat_finished_inside_radius_mm", loaded.Release(Release.HeldFlat).Ring.InsideRadius.Millimeters, 1e-9)
            .Verify(4);
    }

    [Theory]
    [MemberData(nameof(NotHeld))]
    public void Bar_not_held_is_that_of_the_independent_program(ReferenceRow row)
    {
        LoadedBend loaded = CaseRow.Analysis(row).LoadedUnheldTo(BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm")));
        Assert.Equal(0, loaded.HoldDownMoment / loaded.BendingMoment, 1e-9);
        new Comparison(row)
            .Relative("neutral_axis_mm", loaded.NeutralAxisFromInside.Millimeters, 1e-6)
            .Relative("bending_moment_nmm", loaded.BendingMoment.NewtonMillimeters, 1e-6)
            .Relative("out_of_plane_curvature_per_mm", loaded.OutOfPlaneCurvature.InverseMillimeters, 1e-6)
            .Relative("roll_over_deg", loaded.RollOverAngle.Degrees, 1e-6)
            .Verify(4);
    }

    /// <summary>
    /// An elastic angle leans by κ_r/κ = −I_br/I_r (unsymmetric bending: Boresi and Schmidt, Advanced Mechanics of Materials, ch. 7, from
    /// memory).
    /// </summary>
    [Fact]
    public void Elastic_angle_not_held_leans_as_unsymmetric_bending_says()
    {
        BendAnalysis analysis = CaseRow.Analysis(Table.Where(row => row["load"] == "not held")[0]);
        LoadedBend loaded = analysis.LoadedUnheldTo(BendRadius.Inside(Length.FromMeters(500)));
        SectionProperties section = analysis.Section.Properties;
        Assert.True(loaded.IsElastic);
        Assert.Equal(
            -section.ProductOfInertia / section.SecondMomentAboutRadialAxis, loaded.OutOfPlaneCurvature / loaded.Curvature, 1e-9);
    }
}
