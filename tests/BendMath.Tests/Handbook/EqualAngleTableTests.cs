using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Equal angles to EN 10056-1; source and provenance of each row stand in <c>equal-angles.csv</c>. The print has three figures, so rounding alone
/// may make 0.5 %; second moments and moduli of the tables differ from exact geometry by up to 0.9 %.
/// </summary>
public sealed class EqualAngleTableTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Load("Handbook/equal-angles.csv");

    public static TheoryData<ReferenceRow> Rows => Table.AsTheory();

    [Fact]
    public void No_row_drops_out() => Assert.Equal(61, Table.Rows.Count);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Angle_agrees_with_the_printed_section_table(ReferenceRow row)
    {
        AngleFillets fillets = AngleFillets.Of(Millimeters(row, "root_radius_mm"), Millimeters(row, "toe_radius_mm"));
        EqualAngle angle = new(Millimeters(row, "leg_mm"), Millimeters(row, "thickness_mm"), fillets);
        SectionProperties section = angle.FlangeOut.Properties;
        new Comparison(row)
            .Relative("area_cm2", section.Area.SquareCentimeters, 0.005)
            .Relative("mass_kg_per_m", angle.MassPerLength(Density.FromKilogramsPerCubicMeter(7850)).KilogramsPerMeter, 0.005)
            .Relative("centroid_cm", section.CentroidFromInside.Centimeters, 0.009)
            .Relative("second_moment_cm4", section.SecondMomentAboutBendingAxis.CentimetersToTheFourth, 0.009)
            .Relative("major_second_moment_cm4", section.PrincipalSecondMomentMajor.CentimetersToTheFourth, 0.009)
            .Relative("minor_second_moment_cm4", section.PrincipalSecondMomentMinor.CentimetersToTheFourth, 0.009)
            .Relative("elastic_modulus_cm3", section.ElasticModulusOutside.CubicCentimeters, 0.009)
            .Relative("radius_of_gyration_cm", section.RadiusOfGyrationAboutBendingAxis.Centimeters, 0.009)
            .Verify(8);
    }

    private static Length Millimeters(ReferenceRow row, string column) => Length.FromMillimeters(row.Number(column));
}
