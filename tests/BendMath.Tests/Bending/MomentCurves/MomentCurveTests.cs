using BendMath.Bending;
using BendMath.Bending.MomentCurves;
using BendMath.Numerics.Geometry;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace BendMath.Tests.Bending.MomentCurves;

/// <summary>The curve searches run on, held against exact states of the same section and law at many curvatures.</summary>
public sealed class MomentCurveTests(ITestOutputHelper output)
{
    private static readonly Pressure Modulus = Pressure.FromGigapascals(205);

    public static TheoryData<string, string> Cases => new(
        from section in Sections().Keys from law in Laws().Keys select (section, law));

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_curve_is_that_of_exact_states(string section, string law)
    {
        BendAnalysis analysis =
            BendAnalysis.Of(Sections()[section], new("invented", Laws()[law], Density.FromKilogramsPerCubicMeter(7850)));
        MomentCurve curve = analysis.Curve;
        ref readonly AreaMoments m = ref analysis.Moments;
        double height = analysis.Section.Height;
        double axis = 0, moment = 0, mixed = 0, slope = 0;
        for (int i = 0; i <= 300; i++)
        {
            double curvature = 0.3 * analysis.FirstYield * Math.Pow(600, i / 300.0);
            if (curvature * height > 1)
            {
                break;
            }

            BentState exact = analysis.StateAt(curvature, nameof(curvature));
            BentState state = curve.StateAt(curvature);
            MomentPoint point = curve.At(curvature);
            axis = Math.Max(axis, Math.Abs(exact.NeutralAxis - state.NeutralAxis) / height);
            moment = Math.Max(moment, Math.Abs(exact.Sums.Pb - state.Sums.Pb) / (curvature * m.SecondY));
            mixed = Math.Max(mixed, Math.Abs(exact.Sums.Pr - state.Sums.Pr) / (curvature * m.SecondY));
            LoadedBend loaded = new(analysis, exact);
            slope = Math.Max(slope, Math.Abs(loaded.TangentBendingStiffness / (analysis.Law.E * m.SecondY) - point.MomentSlope));
        }

        output.WriteLine(
            FormattableString.Invariant(
                $"{section}, {law}: axis {axis:0.0e0}, moment {moment:0.0e0}, mixed {mixed:0.0e0}, slope {slope:0.0e0}"));
        Assert.True(axis < 1e-10 && moment < 1e-10 && mixed < 1e-10, $"axis {axis}, moment {moment}, mixed {mixed}");
        Assert.True(slope < 1e-7, $"slope {slope}");
    }

    /// <summary>MathNet's Gauss–Kronrod rule over the same curve, cut finely: states are held against exact ones above.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Its_integrals_are_those_of_an_adaptive_rule(string section, string law)
    {
        BendAnalysis analysis =
            BendAnalysis.Of(Sections()[section], new("invented", Laws()[law], Density.FromKilogramsPerCubicMeter(7850)));
        MomentCurve curve = analysis.Curve;
        double work = 0, first = 0, second = 0;
        double from = 0;
        for (double to = 1e-3 * analysis.FirstYield; to < 40 * analysis.FirstYield; to *= 1.05)
        {
            work += Integral(from, to, point => point.Moment * point.Moment);
            first += Integral(from, to, point => point.Permanent * point.MomentSlope);
            second += Integral(from, to, point => point.Permanent * point.Moment * point.MomentSlope);
            Near.Relative(work, curve.Work(to), 1e-10, "work");
            double scale = to * to;
            Near.Absolute(first / scale, curve.Plastic(to).First / scale, 1e-10, "first");
            Near.Absolute(second / (scale * to), curve.Plastic(to).Second / (scale * to), 1e-10, "second");
            from = to;
        }

        double Integral(double low, double high, Func<MomentPoint, double> value) =>
            GaussKronrodRule.Integrate(curvature => curvature > 0 ? value(curve.At(curvature)) : 0, low, high, out _, out _, 1e-12, 6, 15);
    }

    /// <summary>
    /// What a section does under a law it does under any other of the same shape, with curvatures in proportion to the strains of
    /// reference.
    /// </summary>
    [Theory]
    [InlineData("linear")]
    [InlineData("power")]
    [InlineData("smooth")]
    public void Yields_of_a_law_share_a_table(string law)
    {
        BendAnalysis analysis =
            BendAnalysis.Of(Sections()["angle"], new("invented", Laws()[law], Density.FromKilogramsPerCubicMeter(7850))).ForSearch();
        BendAnalysis other = analysis.ForSearch(analysis.Material.WithYield(Mpa(360)));
        Assert.Same(analysis.Curve.Table, other.Curve.Table);
        BendAnalysis exact = BendAnalysis.Of(other.Section, other.Material);
        foreach (double radius in new[] { 0.2, 1, 3 })
        {
            double curvature = exact.StateAtRadius(radius).Curvature;
            Near.Relative(exact.StateAt(curvature, "curvature").Sums.Pb, other.Curve.StateAt(curvature).Sums.Pb, 1e-9, "Pb");
            Near.Relative(exact.StateAtRadius(radius).Sums.Pb, other.StateAtRadius(radius).Sums.Pb, 1e-9, "Pb at the radius");
        }
    }

    private static Dictionary<string, OrientedSection> Sections() => new()
    {
        ["angle"] = new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(Mm(5), Mm(2.5))).FlangeOut,
        ["sharp angle, flange in"] = new EqualAngle(Mm(30), Mm(3), AngleFillets.Sharp).FlangeIn,
        ["angle 50"] = new EqualAngle(Mm(50), Mm(5), AngleFillets.Of(Mm(7), Mm(3.5))).FlangeOut,
        ["round"] = new RoundBar(Mm(12)).Section,
        ["tube"] = new RoundTube(Mm(25), Mm(2)).Section,
        ["square tube"] = new SquareTube(Mm(30), Mm(2.5), CornerRadii.Of(Mm(5), Mm(2.5))).Orientations[0],
        ["flat"] = new FlatBar(Mm(40), Mm(8)).Orientations[0],
    };

    private static Dictionary<string, StressStrainLaw> Laws() => new()
    {
        ["plastic"] = new PerfectlyPlastic(Modulus, Mpa(280)),
        ["linear"] = new LinearHardening(Modulus, Mpa(280), Mpa(1500)),
        ["power"] = new PowerHardening(Modulus, Mpa(530), 0.15),
        ["strong power"] = new PowerHardening(Modulus, Mpa(2530), 0.45),
        ["smooth"] = new RambergOsgood(Modulus, Mpa(280), 12),
        ["sharp knee"] = new RambergOsgood(Modulus, Mpa(280), 39),
        ["curve"] =
            MeasuredCurve.FromEngineering(Modulus,
                [Point(280 / 2050.0, 280), Point(0.3, 300), Point(1, 330), Point(3, 370), Point(8, 410), Point(15, 430)]),
    };

    private static (Ratio Strain, Pressure Stress) Point(double percent, double megapascals) =>
        (Ratio.FromPercent(percent), Mpa(megapascals));

    private static Pressure Mpa(double value) => Pressure.FromMegapascals(value);

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
