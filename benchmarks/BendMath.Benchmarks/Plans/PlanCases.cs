using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Benchmarks.Plans;

/// <summary>One row of the table: a job that is made anew for every plan, so that nothing is left over from the plan before.</summary>
internal sealed record PlanCase(string Name, Func<RingJob> Job, double Limit);

/// <summary>The jobs of the table. All sizes and materials are invented.</summary>
internal static class PlanCases
{
    private const double Wanted = 260;

    private static readonly double[] Stamps = [200, 225, 250, 275, 300, 350];

    private static readonly (string Name, Func<StressStrainLaw> Make)[] Laws =
    [
        ("linear hardening", () => new LinearHardening(Modulus, Megapascals(280), Megapascals(1500))),
        ("perfectly plastic", () => new PerfectlyPlastic(Modulus, Megapascals(280))),
        ("power hardening", () => new PowerHardening(Modulus, Megapascals(530), 0.1)),
        ("Ramberg–Osgood", () => new RambergOsgood(Modulus, Megapascals(280), 12)),
        ("measured curve",
            () =>
                MeasuredCurve.FromEngineering(Modulus,
                    [Point(280 / 2100.0, 280), Point(0.3, 300), Point(1, 330), Point(3, 370), Point(8, 410), Point(15, 430)])),
    ];

    private static Pressure Modulus => Pressure.FromGigapascals(210);

    private static ThreePointSetup Bender => new(Millimeters(120), Millimeters(20));

    /// <summary>The unit of the table.</summary>
    public static PlanCase Unit { get; } =
        new("wrap, six dies, without ranges", () => Job(Angle30(), Laws[0].Make(), Wrap, Stamps, null), 1);

    public static IEnumerable<PlanCase> All()
    {
        foreach ((string name, Func<StressStrainLaw> law) in Laws)
        {
            double share = name == Laws[0].Name ? 1 : 3;
            InputVariation Pinched(MillTolerance mill) => new(Range(law()), mill, Millimeters(0.1), Ratio.FromPercent(0.5));
            yield return new($"wrap, six dies, without ranges; {name}", () => Job(Angle30(), law(), Wrap, Stamps, null), share);
            yield return new($"wrap, six dies, all that scatters; {name}",
                () => Job(Angle30(), law(), Wrap, Stamps, bar => new(Range(law()), Mill(bar), null, Ratio.FromPercent(0.5))), 4 * share);
            yield return new($"three-point, six dies, without ranges; {name}", () => Job(Angle30(), law(), ThreePoint, Stamps, null),
                3 * share);
            yield return new($"three-point, six dies, all that scatters; {name}",
                () => Job(Angle30(), law(), ThreePoint, Stamps, bar => Pinched(Mill(bar))), 20 * share);
            yield return new($"bumps, one die, without ranges; {name}", () => Job(Angle30(), law(), Bumps, [250], null), 5 * share);
            yield return new($"bumps, one die, all that scatters; {name}",
                () => Job(Angle30(), law(), Bumps, [250], bar => Pinched(Mill(bar))), 80 * share);
            yield return new($"bumps, L 50x50x5, one die, without ranges; {name}", () => Job(Angle50(), law(), Bumps, [400], null),
                5 * share);
            yield return new($"bumps, L 50x50x5, one die, all that scatters; {name}",
                () => Job(Angle50(), law(), Bumps, [400], bar => Pinched(Mill(bar))), 80 * share);
        }
    }

    private static RingJob Job(EqualAngle bar, StressStrainLaw law, Func<FormingModel> model, double[] stamps,
        Func<EqualAngle, InputVariation>? scatter) => new(
        "planter rim",
        BendAnalysis.Of(bar.FlangeOut,
            new BarMaterial("invented steel", law, Density.FromKilogramsPerCubicMeter(7850), Ratio.FromPercent(24))),
        new WantedRing(BendRadius.Inside(Millimeters(stamps.Length == 1 ? stamps[0] + 10 : Wanted)), ArcExtent.FullRing),
        new Bender(new DieRack([.. stamps.Select(stamp => new Die($"die {stamp}", Millimeters(stamp), ReferenceFace.InsideOfBar))]),
            model()),
        new CuttingRules(EndAllowance.None, Millimeters(2), barLength: Length.FromMeters(6)),
        scatter: scatter?.Invoke(bar));

    private static FormingModel Wrap() => new WrapBending();

    private static FormingModel ThreePoint() => new IncrementalThreePointBending(Bender);

    private static FormingModel Bumps() => new BumpBending(Bender, Millimeters(15));

    private static MillTolerance Mill(EqualAngle bar) => MillTolerance.En10056(bar);

    private static PressureRange Range(StressStrainLaw law) => new(0.85 * law.YieldStress, 1.2 * law.YieldStress);

    private static EqualAngle Angle30() => new(Millimeters(30), Millimeters(3), AngleFillets.Of(Millimeters(5), Millimeters(2.5)));

    private static EqualAngle Angle50() => new(Millimeters(50), Millimeters(5), AngleFillets.Of(Millimeters(7), Millimeters(3.5)));

    private static (Ratio Strain, Pressure Stress) Point(double percent, double megapascals) =>
        (Ratio.FromPercent(percent), Megapascals(megapascals));

    private static Pressure Megapascals(double value) => Pressure.FromMegapascals(value);

    private static Length Millimeters(double value) => Length.FromMillimeters(value);
}
