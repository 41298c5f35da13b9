using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>Round tubes and solid bars; source and provenance of each row stand in the tables. The print has three or four figures, so rounding alone may make 0.5 %.</summary>
public sealed class TubeAndBarTableTests
{
    private const double Tolerance = 0.007;

    private static readonly Density Steel = Density.FromKilogramsPerCubicMeter(7850);

    private static readonly Density SteelInPounds = Density.FromPoundsPerCubicFoot(490);

    private static readonly ReferenceTable InchTubeTable = ReferenceTable.Load("Handbook/round-tubes-inch.csv");

    private static readonly ReferenceTable MetricTubeTable = ReferenceTable.Load("Handbook/round-tubes-metric.csv");

    private static readonly ReferenceTable InchBarTable = ReferenceTable.Load("Handbook/solid-bars-inch.csv");

    private static readonly ReferenceTable MetricBarTable = ReferenceTable.Load("Handbook/solid-bars-metric.csv");

    public static TheoryData<ReferenceRow> InchTubes => InchTubeTable.AsTheory();

    public static TheoryData<ReferenceRow> MetricTubes => MetricTubeTable.AsTheory();

    public static TheoryData<ReferenceRow> InchBars => InchBarTable.AsTheory();

    public static TheoryData<ReferenceRow> MetricBars => MetricBarTable.AsTheory();

    [Fact]
    public void No_row_drops_out() => Assert.Equal(
        (65, 29, 33, 53), (InchTubeTable.Rows.Count, MetricTubeTable.Rows.Count, InchBarTable.Rows.Count, MetricBarTable.Rows.Count));

    [Theory]
    [MemberData(nameof(InchTubes))]
    public void Tube_agrees_with_the_printed_inch_table(ReferenceRow row)
    {
        SectionProperties section = new RoundTube(Length.FromInches(row.Number("outside_diameter_in")), Length.FromInches(row.Number("wall_in"))).Section.Properties;
        new Comparison(row)
            .Relative("area_in2", section.Area.SquareInches, Tolerance)
            .Relative("second_moment_in4", section.SecondMomentAboutBendingAxis.InchesToTheFourth, Tolerance)
            .RelativeWherePrinted("elastic_modulus_in3", section.ElasticModulusOutside.CubicInches, Tolerance)
            .RelativeWherePrinted("plastic_modulus_in3", section.PlasticModulus.CubicInches, Tolerance)
            .RelativeWherePrinted("radius_of_gyration_in", section.RadiusOfGyrationAboutBendingAxis.Inches, Tolerance)
            .Verify(3);
    }

    [Theory]
    [MemberData(nameof(MetricTubes))]
    public void Tube_agrees_with_the_printed_metric_table(ReferenceRow row)
    {
        RoundTube tube = new(Length.FromMillimeters(row.Number("outside_diameter_mm")), Length.FromMillimeters(row.Number("wall_mm")));
        SectionProperties section = tube.Section.Properties;
        new Comparison(row)
            .Relative("mass_kg_per_m", tube.MassPerLength(Steel).KilogramsPerMeter, Tolerance)
            .Relative("area_cm2", section.Area.SquareCentimeters, Tolerance)
            .Relative("second_moment_cm4", section.SecondMomentAboutBendingAxis.CentimetersToTheFourth, Tolerance)
            .Relative("elastic_modulus_cm3", section.ElasticModulusOutside.CubicCentimeters, Tolerance)
            .Relative("plastic_modulus_cm3", section.PlasticModulus.CubicCentimeters, Tolerance)
            .Relative("radius_of_gyration_cm", section.RadiusOfGyrationAboutBendingAxis.Centimeters, Tolerance)
            .Verify(6);
    }

    [Theory]
    [MemberData(nameof(InchBars))]
    public void Bar_agrees_with_the_printed_inch_table(ReferenceRow row)
    {
        BarStock bar = Bar(row, "in", value => Length.FromInches(value));
        new Comparison(row)
            .Relative("area_in2", bar.Area.SquareInches, Tolerance)
            .Relative("weight_lb_per_ft", bar.MassPerLength(SteelInPounds).PoundsPerFoot, Tolerance)
            .Verify(2);
    }

    [Theory]
    [MemberData(nameof(MetricBars))]
    public void Bar_agrees_with_the_printed_metric_table(ReferenceRow row)
    {
        BarStock bar = Bar(row, "mm", value => Length.FromMillimeters(value));
        new Comparison(row)
            .Relative("area_cm2", bar.Area.SquareCentimeters, Tolerance)
            .Relative("mass_kg_per_m", bar.MassPerLength(Steel).KilogramsPerMeter, Tolerance)
            .Verify(2);
    }

    private static BarStock Bar(ReferenceRow row, string unit, Func<double, Length> length)
    {
        Length size = length(row.Number("size_" + unit));
        return row["shape"] switch
        {
            "round" => new RoundBar(size),
            "square" => new SquareBar(size),
            "flat" => new FlatBar(size, length(row.Number("thickness_" + unit))),
            var shape => throw new NotSupportedException($"{row}: no shape '{shape}'."),
        };
    }
}
