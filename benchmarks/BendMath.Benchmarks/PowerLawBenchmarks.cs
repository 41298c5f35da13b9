using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>The inverse, from the wanted ring held flat to the loaded radius, for power-law metal: the typed call beside the hand-written one.</summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkDotNet.Configs.BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class PowerLawBenchmarks
{
    private const double Modulus = 210e9, Strength = 600e6, Exponent = 0.2;

    private static readonly BarMaterial Metal = new(
        "power-law steel, invented",
        new PowerHardening(Pressure.FromPascals(Modulus), Pressure.FromPascals(Strength), Exponent),
        Density.FromKilogramsPerCubicMeter(7850));

    private readonly BendRadius _wanted = BendRadius.Inside(Length.FromMillimeters(250));

    private readonly BendAnalysis _angle = BendAnalysis.Of(
        new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5))).FlangeOut, Metal);

    private readonly BendAnalysis _round = BendAnalysis.Of(new RoundBar(Length.FromMillimeters(12)).Section, Metal);

    private readonly BendAnalysis _tube = BendAnalysis.Of(new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)).Section, Metal);

    private readonly HandPowerBar _handAngle;

    private readonly HandPowerBar _handRound;

    private readonly HandPowerBar _handTube;

    public PowerLawBenchmarks()
    {
        _handAngle = HandPowerBar.RolledAngle(0.030, 0.003, 0.005, 0.0025, _angle.Section.Properties, Modulus, Strength, Exponent);
        _handRound = HandPowerBar.Tube(0.012, 0, _round.Section.Properties, Modulus, Strength, Exponent);
        _handTube = HandPowerBar.Tube(0.025, 0.021, _tube.Section.Properties, Modulus, Strength, Exponent);
        SameTo(1e-12, RolledAngleByHand(), RolledAngleTyped());
        SameTo(1e-12, RoundBarByHand(), RoundBarTyped());
        SameTo(1e-12, TubeByHand(), TubeTyped());
    }

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("rolled angle")]
    public double RolledAngleByHand() => _handAngle.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("rolled angle")]
    public double RolledAngleTyped() => _angle.LoadedFor(_wanted, Release.HeldFlat).InsideRadius.Meters;

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("round bar")]
    public double RoundBarByHand() => _handRound.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("round bar")]
    public double RoundBarTyped() => _round.LoadedFor(_wanted, Release.HeldFlat).InsideRadius.Meters;

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("round tube")]
    public double TubeByHand() => _handTube.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("round tube")]
    public double TubeTyped() => _tube.LoadedFor(_wanted, Release.HeldFlat).InsideRadius.Meters;

    internal static void SameTo(double tolerance, double hand, double typed)
    {
        if (!(Math.Abs(hand - typed) <= tolerance * Math.Abs(typed)))
        {
            throw new InvalidOperationException(FormattableString.Invariant($"The hand-written way gives {hand:R}, the library {typed:R}."));
        }
    }
}
