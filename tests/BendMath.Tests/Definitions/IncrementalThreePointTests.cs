using BendMath.Forming.ThreePoint;

namespace BendMath.Tests.Definitions;

/// <summary>Source of every number: independent program, adaptive quadrature over chords; not a published source.</summary>
public sealed class IncrementalThreePointTests
{
    private const double Tolerance = 1e-8;

    private static readonly ReferenceTable Table = ReferenceTable.Load("Definitions/incremental-three-point.csv");

    public static TheoryData<ReferenceRow> Cases => new(Table.Where(CaseRow.IsCovered));

    [Fact]
    public void No_case_drops_out()
    {
        Assert.Equal(12, Table.Rows.Count);
        Assert.Equal(12, Table.Where(CaseRow.IsCovered).Count);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Pinched_bar_is_that_of_the_independent_program(ReferenceRow row)
    {
        ThreePointSetup setup = new(CaseRow.Millimeters(row, "half_span_mm"), CaseRow.Millimeters(row, "nose_radius_mm"));
        FormedBend formed =
            new IncrementalThreePointBending(setup).FormAtStroke(CaseRow.Analysis(row), CaseRow.Millimeters(row, "stroke_mm"));
        ThreePointContact contact = formed.Contact!;
        FinishedRing ring = formed.RingWhen(Release.HeldFlat);
        Assert.False(contact.WrapsNose);
        new Comparison(row)
            .Relative("three_contact_radius_mm", contact.ThreeContactRadius.Millimeters, Tolerance)
            .Relative("peak_curvature_per_mm", formed.Loaded.Curvature.InverseMillimeters, Tolerance)
            .Relative("peak_moment_nmm", formed.Loaded.BendingMoment.NewtonMillimeters, Tolerance)
            .Relative("contact_shift_mm", contact.ContactShift.Millimeters, Tolerance)
            .Relative("finished_curvature_per_mm", ring.Curvature.InverseMillimeters, Tolerance)
            .Relative("finished_inside_radius_mm", ring.InsideRadius.Millimeters, Tolerance)
            .Relative("nose_force_n", contact.NoseForce.Newtons, Tolerance)
            .Verify(7);
    }
}
