using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// Round, square and rectangular tubes; source and provenance of each row stand in the tables. The print has three or four figures, so
/// rounding alone may make 0.5 %.
/// </summary>
public sealed class TubeTableTests
{
    private const double Tolerance = 0.007;

    private static readonly Density Steel = Density.FromKilogramsPerCubicMeter(7850);

    private static readonly ReferenceTable InchTable = ReferenceTable.Load("Handbook/tubes-inch.csv");

    private static readonly ReferenceTable MetricTable = ReferenceTable.Load("Handbook/tubes-metric.csv");

    public static TheoryData<ReferenceRow> InchTubes => InchTable.AsTheory();

    public static TheoryData<ReferenceRow> MetricTubes => MetricTable.AsTheory();

    [Fact]
    public void No_row_drops_out() => Assert.Equal((128, 103), (InchTable.Rows.Count, MetricTable.Rows.Count));

    [Theory]
    [MemberData(nameof(InchTubes))]
    public void Tube_agrees_with_the_printed_inch_table(ReferenceRow row)
    {
        BarStock tube = Tube(row, "in", value => Length.FromInches(value), CornerRadii.Hss);
        SectionProperties strong = tube.Orientations[^1].Properties;
        SectionProperties weak = tube.Orientations[0].Properties;
        new Comparison(row)
            .Relative("area_in2", tube.Area.SquareInches, Tolerance)
            .Relative("strong_second_moment_in4", strong.SecondMomentAboutBendingAxis.InchesToTheFourth, Tolerance)
            .RelativeWherePrinted("strong_modulus_in3", strong.ElasticModulusOutside.CubicInches, Tolerance)
            .RelativeWherePrinted("strong_plastic_modulus_in3", strong.PlasticModulus.CubicInches, Tolerance)
            .RelativeWherePrinted("strong_gyration_in", strong.RadiusOfGyrationAboutBendingAxis.Inches, Tolerance)
            .RelativeWherePrinted("weak_second_moment_in4", weak.SecondMomentAboutBendingAxis.InchesToTheFourth, Tolerance)
            .RelativeWherePrinted("weak_modulus_in3", weak.ElasticModulusOutside.CubicInches, Tolerance)
            .RelativeWherePrinted("weak_plastic_modulus_in3", weak.PlasticModulus.CubicInches, Tolerance)
            .RelativeWherePrinted("weak_gyration_in", weak.RadiusOfGyrationAboutBendingAxis.Inches, Tolerance)
            .RelativeWherePrinted("torsion_constant_in4", Torsion(tube, Sources.AiscShapes).InchesToTheFourth, Tolerance)
            .Verify(3);
    }

    [Theory]
    [MemberData(nameof(MetricTubes))]
    public void Tube_agrees_with_the_printed_metric_table(ReferenceRow row)
    {
        bool hot = row["family"].StartsWith("EN 10210", StringComparison.Ordinal);
        BarStock tube = Tube(row, "mm", value => Length.FromMillimeters(value), hot ? CornerRadii.HotFinished : CornerRadii.ColdFormed);
        SectionProperties strong = tube.Orientations[^1].Properties;
        SectionProperties weak = tube.Orientations[0].Properties;
        new Comparison(row)
            .Relative("mass_kg_per_m", tube.MassPerLength(Steel).KilogramsPerMeter, Tolerance)
            .Relative("area_cm2", tube.Area.SquareCentimeters, Tolerance)
            .Relative("strong_second_moment_cm4", strong.SecondMomentAboutBendingAxis.CentimetersToTheFourth, Tolerance)
            .Relative("strong_modulus_cm3", strong.ElasticModulusOutside.CubicCentimeters, Tolerance)
            .Relative("strong_plastic_modulus_cm3", strong.PlasticModulus.CubicCentimeters, Tolerance)
            .Relative("strong_gyration_cm", strong.RadiusOfGyrationAboutBendingAxis.Centimeters, Tolerance)
            .RelativeWherePrinted("weak_second_moment_cm4", weak.SecondMomentAboutBendingAxis.CentimetersToTheFourth, Tolerance)
            .RelativeWherePrinted("weak_modulus_cm3", weak.ElasticModulusOutside.CubicCentimeters, Tolerance)
            .RelativeWherePrinted("weak_plastic_modulus_cm3", weak.PlasticModulus.CubicCentimeters, Tolerance)
            .RelativeWherePrinted("weak_gyration_cm", weak.RadiusOfGyrationAboutBendingAxis.Centimeters, Tolerance)
            .RelativeWherePrinted("torsion_constant_cm4", Torsion(tube, Sources.En10219).CentimetersToTheFourth, Tolerance)
            .RelativeWherePrinted("outside_radius_mm", Corners(tube).Outside.Millimeters, 1e-9)
            .RelativeWherePrinted("inside_radius_mm", Corners(tube).Inside.Millimeters, 1e-9)
            .Verify(6);
    }

    private static AreaMomentOfInertia Torsion(BarStock tube, Source table) =>
        tube.TorsionConstants.Single(constant => tube is RoundTube || constant.Formula.Source == table).Value;

    private static CornerRadii Corners(BarStock tube) => tube switch
    {
        SquareTube square => square.Corners,
        RectangularTube rectangular => rectangular.Corners,
        _ => CornerRadii.Sharp,
    };

    private static BarStock Tube(ReferenceRow row, string unit, Func<double, Length> length, Func<Length, CornerRadii> corners)
    {
        Length wall = length(row.Number("wall_" + unit));
        return row["shape"] switch
        {
            "round" => new RoundTube(length(row.Number("outside_diameter_" + unit)), wall),
            "square" => new SquareTube(length(row.Number("height_" + unit)), wall, corners(wall)),
            "rectangular" =>
                new RectangularTube(length(row.Number("height_" + unit)), length(row.Number("width_" + unit)), wall, corners(wall)),
            var shape => throw new NotSupportedException($"{row}: no shape '{shape}'."),
        };
    }
}
