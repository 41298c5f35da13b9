using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Solid bars; source and provenance of each row stand in the tables. The print has three or four figures, so rounding alone may make 0.5
/// %.
/// </summary>
public sealed class BarTableTests
{
    private const double Tolerance = 0.007;

    private static readonly Density Steel = Density.FromKilogramsPerCubicMeter(7850);

    private static readonly Density SteelInPounds = Density.FromPoundsPerCubicFoot(490);

    private static readonly ReferenceTable InchBarTable = ReferenceTable.Load("Handbook/solid-bars-inch.csv");

    private static readonly ReferenceTable MetricBarTable = ReferenceTable.Load("Handbook/solid-bars-metric.csv");

    public static TheoryData<ReferenceRow> InchBars => InchBarTable.AsTheory();

    public static TheoryData<ReferenceRow> MetricBars => MetricBarTable.AsTheory();

    [Fact]
    public void No_row_drops_out() => Assert.Equal(
        (33, 53), (InchBarTable.Rows.Count, MetricBarTable.Rows.Count));

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
