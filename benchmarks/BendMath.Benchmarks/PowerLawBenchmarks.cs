using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>
/// The inverse, from the wanted ring held flat to the loaded radius, for power-law metal: the typed call beside the hand-written one.
/// </summary>
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
        new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3),
            AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5))).FlangeOut, Metal);

    private readonly BendAnalysis _round = BendAnalysis.Of(new RoundBar(Length.FromMillimeters(12)).Section, Metal);

    private readonly BendAnalysis _tube =
        BendAnalysis.Of(new RoundTube(Length.FromMillimeters(25), Length.FromMillimeters(2)).Section, Metal);

    private readonly HandPowerBar _handAngle;

    private readonly HandPowerBar _handRound;

    private readonly HandPowerBar _handTube;

    private readonly StripPowerBar _stripAngle = new(0.030, RolledAngleWidth, Modulus, Strength, Exponent);

    private readonly StripPowerBar _stripRound = new(0.012, y => Chord(y, 0.006, 0.006), Modulus, Strength, Exponent);

    private readonly StripPowerBar _stripTube =
        new(0.025, y => Chord(y, 0.0125, 0.0125) - Chord(y, 0.0125, 0.0105), Modulus, Strength, Exponent);

    public PowerLawBenchmarks()
    {
        _handAngle = HandPowerBar.RolledAngle(0.030, 0.003, 0.005, 0.0025, _angle.Section.Properties, Modulus, Strength, Exponent);
        _handRound = HandPowerBar.Tube(0.012, 0, _round.Section.Properties, Modulus, Strength, Exponent);
        _handTube = HandPowerBar.Tube(0.025, 0.021, _tube.Section.Properties, Modulus, Strength, Exponent);
        SameTo(1e-12, RolledAngleByHand(), RolledAngleTyped());
        SameTo(1e-12, RoundBarByHand(), RoundBarTyped());
        SameTo(1e-12, TubeByHand(), TubeTyped());
        SameTo(1e-4, RolledAngleByStrips(), RolledAngleTyped());
        SameTo(1e-4, RoundBarByStrips(), RoundBarTyped());
        SameTo(1e-4, TubeByStrips(), TubeTyped());
    }

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("rolled angle")]
    public double RolledAngleByHand() => _handAngle.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("rolled angle")]
    public double RolledAngleTyped() => _angle.LoadedFor(_wanted, Release.HeldFlat).InsideRadius.Meters;

    [Benchmark]
    [BenchmarkCategory("rolled angle")]
    public double RolledAngleByStrips() => _stripAngle.LoadedInsideFor(0.250);

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("round bar")]
    public double RoundBarByHand() => _handRound.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("round bar")]
    public double RoundBarTyped() => _round.LoadedFor(_wanted, Release.HeldFlat).InsideRadius.Meters;

    [Benchmark]
    [BenchmarkCategory("round bar")]
    public double RoundBarByStrips() => _stripRound.LoadedInsideFor(0.250);

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("round tube")]
    public double TubeByHand() => _handTube.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("round tube")]
    public double TubeTyped() => _tube.LoadedFor(_wanted, Release.HeldFlat).InsideRadius.Meters;

    [Benchmark]
    [BenchmarkCategory("round tube")]
    public double TubeByStrips() => _stripTube.LoadedInsideFor(0.250);

    internal static void SameTo(double tolerance, double hand, double typed)
    {
        if (!(Math.Abs(hand - typed) <= tolerance * Math.Abs(typed)))
        {
            throw new InvalidOperationException(
                FormattableString.Invariant($"The hand-written way gives {hand:R}, the library {typed:R}."));
        }
    }

    private static double Chord(double y, double center, double radius) =>
        2 * Math.Sqrt(Math.Max(0, radius * radius - (y - center) * (y - center)));

    /// <summary>30 × 30 × 3 mm, root 5 mm, toes 2.5 mm, flange at the inside face.</summary>
    private static double RolledAngleWidth(double y)
    {
        const double Leg = 0.030, Thickness = 0.003, Root = 0.005, Toe = 0.0025;
        double flangeToe = y > Thickness - Toe && y < Thickness ? Toe - Chord(y, Thickness - Toe, Toe) / 2 : 0;
        double root = y > Thickness && y < Thickness + Root ? Root - Chord(y, Thickness + Root, Root) / 2 : 0;
        double legToe = y > Leg - Toe ? Toe - Chord(y, Leg - Toe, Toe) / 2 : 0;
        return (y < Thickness ? Leg - flangeToe : Thickness + root) - legToe;
    }
}
