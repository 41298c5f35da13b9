namespace BendMath.Tests.Definitions;

/// <summary>Source of every number: independent program, adaptive quadrature over chords; not a published source.</summary>
public sealed class BendDefinitionTests
{
    private const double Tight = 1e-9;

    private const double SectionTolerance = 1e-12;

    private static readonly ReferenceTable Table = ReferenceTable.Load("Definitions/bend-definitions.csv");

    public static TheoryData<ReferenceRow> Cases => new(Table.Where(CaseRow.IsCovered));

    [Fact]
    public void No_case_drops_out()
    {
        Assert.Equal(60, Table.Rows.Count);
        Assert.Equal(57, Table.Where(CaseRow.IsCovered).Count);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Section_is_that_of_the_independent_program(ReferenceRow row)
    {
        SectionProperties section = CaseRow.Analysis(row).Section.Properties;
        double bending = row.Number("second_moment_bending_mm4");
        new Comparison(row)
            .Relative("area_mm2", section.Area.SquareMillimeters, SectionTolerance)
            .Relative("centroid_mm", section.CentroidFromInside.Millimeters, SectionTolerance)
            .Relative("centroid_axial_mm", section.CentroidAxial.Millimeters, SectionTolerance)
            .Relative("second_moment_bending_mm4", section.SecondMomentAboutBendingAxis.MillimetersToTheFourth, SectionTolerance)
            .Relative("second_moment_radial_mm4", section.SecondMomentAboutRadialAxis.MillimetersToTheFourth, SectionTolerance)
            .Relative("product_of_inertia_mm4", section.ProductOfInertia.MillimetersToTheFourth, SectionTolerance, bending)
            .Relative("equal_area_axis_mm", section.EqualAreaAxisFromInside.Millimeters, SectionTolerance)
            .Relative("plastic_modulus_mm3", section.PlasticModulus.CubicMillimeters, SectionTolerance)
            .Verify(8);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Loaded_state_is_that_of_the_independent_program(ReferenceRow row)
    {
        LoadedBend loaded = Loaded(row);
        double bending = row.Number("bending_moment_nmm");
        new Comparison(row)
            .Relative("neutral_axis_mm", loaded.NeutralAxisFromInside.Millimeters, Tight)
            .Relative("bending_moment_nmm", loaded.BendingMoment.NewtonMillimeters, Tight)
            .Relative("hold_down_moment_nmm", loaded.HoldDownMoment.NewtonMillimeters, Tight, bending)
            .Verify(3);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Ring_released_flat_is_that_of_the_independent_program(ReferenceRow row)
    {
        FinishedRing ring = Loaded(row).Release(Release.HeldFlat).Ring;
        new Comparison(row)
            .Relative("flat_finished_inside_radius_mm", ring.InsideRadius.Millimeters, Tight)
            .Relative("flat_length_preserving_fiber_mm", ring.LengthPreservingFiberFromInside.Millimeters, Tight)
            .Verify(2);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Ring_released_free_is_that_of_the_independent_program(ReferenceRow row)
    {
        FinishedRing ring = Loaded(row).Release(Release.Free).Ring;
        new Comparison(row)
            .Relative("free_finished_inside_radius_mm", ring.InsideRadius.Millimeters, Tight)
            .Relative("free_finished_heel_radius_mm", ring.InsideRadiusAtHeel.Millimeters, Tight)
            .Relative("free_total_curvature_per_mm", ring.Curvature.InverseMillimeters, Tight)
            .Absolute("free_dish_angle_deg", ring.DishAngle.Degrees, 1e-7)
            .Verify(4);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Loaded_radius_that_finishes_at_the_wanted_one_is_that_of_the_independent_program(ReferenceRow row)
    {
        LoadedBend loaded = CaseRow.Analysis(row).LoadedFor(InsideRadius(row), Release.HeldFlat);
        new Comparison(row).Relative("loaded_inside_radius_for_flat_finish_mm", loaded.InsideRadius.Millimeters, 1e-8).Verify(1);
    }

    private static BendRadius InsideRadius(ReferenceRow row) => BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm"));

    private static LoadedBend Loaded(ReferenceRow row) => CaseRow.Analysis(row).LoadedTo(InsideRadius(row));
}
