using UnitsNet;

namespace BendMath.Tests.Materials;

/// <summary>A measured curve beside the laws it can imitate, and every rule it refuses by.</summary>
public sealed class MeasuredCurveTests
{
    private static readonly Pressure Modulus = Pressure.FromGigapascals(200);

    private static readonly EqualAngle Angle =
        new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));

    public static TheoryData<string> Sections { get; } = new("angle out", "angle in", "flat", "round", "tube");

    [Theory]
    [MemberData(nameof(Sections))]
    public void Two_points_bend_like_linear_hardening(string section)
    {
        LinearHardening line = new(Modulus, Pressure.FromMegapascals(280), Pressure.FromMegapascals(1200));
        MeasuredCurve curve = Curve((0.14, 280), (50, 280 + 1.2e3 * (0.5 - 0.0014)));
        foreach (double radius in new[] { 90.0, 240, 1500 })
        {
            double[] expected = Bend(section, line, radius);
            double[] found = Bend(section, curve, radius);
            Assert.All(Enumerable.Range(0, 3), i => Assert.InRange(found[i] / expected[i], 1 - 1e-12, 1 + 1e-12));
        }
    }

    [Fact]
    public void A_sampled_power_law_converges_at_second_order()
    {
        PowerHardening power = new(Modulus, Pressure.FromMegapascals(600), 0.2);
        double[] exact = Bend("angle out", power, 240);
        double[] errors =
            [.. new[] { 16, 32, 64, 128 }.Select(count => Math.Abs(Bend("angle out", Sampled(power, count), 240)[1] / exact[1] - 1))];
        Assert.All(Enumerable.Range(0, 3), i => Assert.InRange(Math.Log(errors[i] / errors[i + 1], 2), 1.85, 2.15));
        Assert.InRange(errors[3], 1e-9, 1e-4);
    }

    [Fact]
    public void The_loaded_radius_of_a_measured_curve_is_found_again()
    {
        BendAnalysis analysis = Analysis("angle out", Curve((0.14, 280), (1.6, 281), (4, 330), (12, 400)));
        LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));
        ReleasedBend released = loaded.Release(Release.HeldFlat);
        LoadedBend again = analysis.LoadedFor(BendRadius.Inside(released.Ring.InsideRadius), Release.HeldFlat);
        Assert.Equal(240, again.InsideRadius.Millimeters, 1e-8);
    }

    [Fact]
    public void A_yield_of_a_few_pascals_still_comes_back()
    {
        double[] bend = Bend("round", Curve((0.14, 280), (2, 300)).WithYield(Pressure.FromPascals(2)), 240);
        Assert.All(bend, value => Assert.True(value > 0 && double.IsFinite(value)));
    }

    [Fact]
    public void True_points_are_converted_by_their_definition()
    {
        MeasuredCurve curve = MeasuredCurve.FromTrue(Modulus, Points((0.1402, 280), (5, 350), (15, 440)));
        Assert.True(curve.PointsAreTrue);
        Assert.Equal(Math.Exp(0.05) - 1, curve.Points[1].Strain.DecimalFractions, 1e-15);
        Assert.Equal(350 / Math.Exp(0.05), curve.Points[1].Stress.Megapascals, 1e-9);
        Assert.Equal(curve.LargestStrain, curve.Points[2].Strain);
        Assert.Equal(280 / Math.Exp(0.001402), curve.YieldStress.Megapascals, 1e-9);
        Assert.Equal("measured curve of 3 true points to a strain of 16.183 %, yield 279.6 MPa, E 200 GPa", curve.ToString());
    }

    [Fact]
    public void Between_points_stress_is_linear_and_beyond_the_last_it_is_constant()
    {
        MeasuredCurve curve = Curve((0.1415, 280), (2, 300), (10, 400));
        Assert.Equal(0.0014, curve.Points[0].Strain.DecimalFractions, 1e-15);
        Assert.Equal(350, curve.StressAt(Ratio.FromPercent(6)).Megapascals, 1e-9);
        Assert.Equal(1250, curve.TangentModulusAt(Ratio.FromPercent(6)).Megapascals, 1e-6);
        Assert.Equal(400, curve.StressAt(Ratio.FromPercent(30)).Megapascals, 1e-9);
        Assert.Equal(0, curve.TangentModulusAt(Ratio.FromPercent(10)).Pascals);
        Assert.Equal(10, curve.LargestStrain.Percent, 1e-12);
    }

    [Fact]
    public void A_new_yield_scales_stress_at_equal_plastic_strain()
    {
        MeasuredCurve curve = Curve((0.14, 280), (2, 300), (10, 400));
        MeasuredCurve harder = (MeasuredCurve)curve.WithYield(Pressure.FromMegapascals(350));
        Assert.Equal(500, harder.Points[2].Stress.Megapascals, 1e-9);
        Assert.Equal(0.1 - 0.002, harder.Points[2].Strain.DecimalFractions - 500.0 / 200e3, 1e-14);
        Assert.Equal(
            "measured curve of 3 engineering points to a strain of 10.05 %, yield 350 MPa, E 200 GPa, scaled from a yield of 280 MPa",
                harder.ToString());
        Assert.NotEqual(curve, harder);
        Assert.Equal(280, harder.MeasuredYield.Megapascals, 1e-9);
    }

    [Fact]
    public void Equal_points_make_equal_laws()
    {
        MeasuredCurve curve = Curve((0.14, 280), (2, 300));
        Assert.Equal(curve, Curve((0.14, 280), (2, 300)));
        Assert.Equal(curve.GetHashCode(), Curve((0.14, 280), (2, 300)).GetHashCode());
        Assert.NotEqual(curve, Curve((0.14, 280), (2, 301)));
        Assert.NotEqual(curve, Curve((0.14, 280), (2.1, 300)));
    }

    [Theory]
    [InlineData(new[] { 0.14, 280.0, 2, 300, 2, 310 },
        "points: point 3 must have a strain greater than that of the point before, 2 %, but is 310 MPa at 2 %.")]
    [InlineData(new[] { 0.14, 280.0, 2, 300, 3, 299 },
        "points: point 3 must not have a stress below that of the point before, 300 MPa, but is 299 MPa at 3 %.")]
    [InlineData(new[] { 0.14, 280.0, 0.2, 410 },
        "points: point 2 must be reached by a slope smaller than the elastic modulus, 200 GPa, not 216.667 GPa, but is 410 MPa at 0.2 %.")]
    [InlineData(new[] { 0.14, 280.0, 2, 290, 3, 450 },
        "points: point 3 must not have a larger stress over strain, 15000 MPa, than the point before, 14500 MPa, but is 450 MPa at 3 %.")]
    [InlineData(new[] { 0.2, 280.0, 2, 290 },
        "points: point 1 must lie within 2 % of the elastic line, which has 400 MPa there, but is 280 MPa at 0.2 %.")]
    [InlineData(new[] { 0.0, 0.0, 0.14, 280 }, "points: point 1 must have a strain between 0.0001 % and 100 %, but is 0 MPa at 0 %.")]
    [InlineData(new[] { 0.14, 280.0, 101, 290 }, "points: point 2 must have a strain between 0.0001 % and 100 %, but is 290 MPa at 101 %.")]
    [InlineData(new[] { 0.14, -280.0, 2, 290 }, "points: point 1 must have a stress greater than 0 MPa, but is -280 MPa at 0.14 %.")]
    public void A_curve_that_breaks_a_rule_is_refused_by_point(double[] values, string expected)
    {
        (double, double)[] points = [.. Enumerable.Range(0, values.Length / 2).Select(i => (values[2 * i], values[2 * i + 1]))];
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Curve(points));
        Assert.Equal("points", refused.ParamName);
        Assert.StartsWith(expected, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void One_point_is_refused() => Assert.StartsWith(
        "points must be at least 2, but are 1.", Assert.Throws<ArgumentException>(() => Curve((0.14, 280))).Message,
            StringComparison.Ordinal);

    [Fact]
    public void True_points_past_necking_are_refused_since_engineering_stress_falls()
    {
        // K·εⁿ past its uniform strain n = 0.1.
        (double, double)[] points =
            [(0.2, 400), (5, 1000 * Math.Pow(0.05, 0.1)), (10, 1000 * Math.Pow(0.1, 0.1)), (15, 1000 * Math.Pow(0.15, 0.1))];
        ArgumentOutOfRangeException refused =
            Assert.Throws<ArgumentOutOfRangeException>(() => MeasuredCurve.FromTrue(Modulus, Points(points)));
        Assert.StartsWith("points: point 4 must not have a stress below", refused.Message, StringComparison.Ordinal);
    }

    private static MeasuredCurve Curve(params (double Percent, double Megapascals)[] points) =>
        MeasuredCurve.FromEngineering(Modulus, Points(points));

    private static IEnumerable<(Ratio Strain, Pressure Stress)> Points(params (double Percent, double Megapascals)[] points) =>
        points.Select(
            point =>
                (new Ratio(point.Percent, UnitsNet.Units.RatioUnit.Percent),
                    new Pressure(point.Megapascals, UnitsNet.Units.PressureUnit.Megapascal)));

    /// <summary>
    /// Knots at equal steps of the logarithm of strain, from the yield to twenty percent, beyond every fiber of the bend.
    /// </summary>
    private static MeasuredCurve Sampled(PowerHardening law, int count)
    {
        double first = law.YieldStress.Pascals / law.ElasticModulus.Pascals;
        return MeasuredCurve.FromEngineering(law.ElasticModulus, Enumerable.Range(0, count + 1).Select(i =>
        {
            Ratio strain = Ratio.FromDecimalFractions(first * Math.Pow(0.2 / first, (double)i / count));
            return (strain, law.StressAt(strain));
        }));
    }

    private static BendAnalysis Analysis(string section, StressStrainLaw law) => BendAnalysis.Of(
        section switch
        {
            "angle out" => Angle.FlangeOut,
            "angle in" => Angle.FlangeIn,
            "flat" => new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5)).HardWay,
            "round" => new RoundBar(Length.FromMillimeters(16)).Section,
            _ => new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)).Section,
        },
        new("measured", law, Density.FromKilogramsPerCubicMeter(7850)));

    private static double[] Bend(string section, StressStrainLaw law, double radius)
    {
        LoadedBend loaded = Analysis(section, law).LoadedTo(BendRadius.Inside(Length.FromMillimeters(radius)));
        return [loaded.NeutralAxisFromInside.Meters, loaded.BendingMoment.NewtonMeters,
            loaded.Release(Release.HeldFlat).Ring.InsideRadius.Meters];
    }
}
