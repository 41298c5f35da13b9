using BendMath.Bending;
using BendMath.Numerics;
using MathNet.Numerics.Integration;
using UnitsNet;

namespace BendMath.Tests.Bending;

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
        BendAnalysis analysis = BendAnalysis.Of(Sections()[section], new("invented", Laws()[law], Density.FromKilogramsPerCubicMeter(7850)));
        MomentCurve curve = analysis.Curve;
        ref readonly AreaMoments m = ref analysis.Moments;
        double height = analysis.Section.Height;
        double axis = 0, moment = 0, mixed = 0, slope = 0;
        for (int i = 0; i <= 1500; i++)
        {
            double curvature = 0.3 * analysis.FirstYield * Math.Pow(600, i / 1500.0);
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

        output.WriteLine(FormattableString.Invariant($"{section}, {law}: axis {axis:0.0e0}, moment {moment:0.0e0}, mixed {mixed:0.0e0}, slope {slope:0.0e0}"));
        Assert.True(axis < 1e-10 && moment < 1e-10 && mixed < 1e-10, $"axis {axis}, moment {moment}, mixed {mixed}");
        Assert.True(slope < 1e-7, $"slope {slope}");
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Its_integrals_are_those_of_an_adaptive_rule(string section, string law)
    {
        BendAnalysis analysis = BendAnalysis.Of(Sections()[section], new("invented", Laws()[law], Density.FromKilogramsPerCubicMeter(7850)));
        MomentCurve curve = analysis.Curve;
        foreach (double over in new[] { 1.3, 4, 30 })
        {
            double end = over * analysis.FirstYield;
            double work = 0, first = 0, second = 0;
            const int Parts = 60;
            for (int i = 0; i < Parts; i++)
            {
                double from = end * Math.Pow(1e-4, 1 - (double)i / Parts) * (i == 0 ? 0 : 1);
                double to = end * Math.Pow(1e-4, 1 - (i + 1.0) / Parts);
                work += GaussKronrodRule.Integrate(k => Exact(k).M * Exact(k).M, from, to, out _, out _, 1e-10, 8, 15);
                first += GaussKronrodRule.Integrate(k => (k - Exact(k).M) * Exact(k).Slope, from, to, out _, out _, 1e-10, 8, 15);
                second += GaussKronrodRule.Integrate(k => (k - Exact(k).M) * Exact(k).M * Exact(k).Slope, from, to, out _, out _, 1e-10, 8, 15);
            }

            Near.Relative(work, curve.Work(end), 1e-9, "work");
            Near.Relative(first, curve.Plastic(end).First, 1e-7, "first");
            Near.Relative(second, curve.Plastic(end).Second, 1e-7, "second");
        }

        (double M, double Slope) Exact(double curvature)
        {
            if (curvature < 1e-9)
            {
                return (curvature, 1);
            }

            LoadedBend loaded = new(analysis, analysis.StateAt(curvature, nameof(curvature)));
            double stiffness = analysis.Law.E * analysis.Moments.SecondY;
            return (loaded.Moment / stiffness, loaded.TangentBendingStiffness / stiffness);
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
        ["curve"] = MeasuredCurve.FromEngineering(Modulus, [Point(280 / 2050.0, 280), Point(0.3, 300), Point(1, 330), Point(3, 370), Point(8, 410), Point(15, 430)]),
    };

    private static (Ratio Strain, Pressure Stress) Point(double percent, double megapascals) => (Ratio.FromPercent(percent), Mpa(megapascals));

    private static Pressure Mpa(double value) => Pressure.FromMegapascals(value);

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
