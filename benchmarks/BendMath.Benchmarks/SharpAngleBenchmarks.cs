using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>
/// Bending a sharp-cornered angle 30 × 30 × 3 mm, flange out, of linearly hardening steel: forward, from the loaded inside radius to the
/// ring released free, and back. The textbook way cuts the section into 1,000 strips and nests bisections; the hand-written way is
/// <see cref="HandAngle"/>.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkDotNet.Configs.BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class SharpAngleBenchmarks
{
    private const int Points = 1000;

    private readonly HandAngle _hand = new(0.030, 0.003, 210e9, 280e6, 1.5e9);

    private readonly StripAngle _strips = new(0.030, 0.003, 210e9, 280e6, 1.5e9, 1000);

    private readonly BendAnalysis _analysis = BendAnalysis.Of(
        new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp).FlangeOut,
        new BarMaterial(
            "hardening steel, invented",
            new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(280), Pressure.FromMegapascals(1500)),
            Density.FromKilogramsPerCubicMeter(7850)));

    private readonly BendSweep _sweep;

    private readonly BendRadius _loaded = BendRadius.Inside(Length.FromMillimeters(240));

    private readonly BendRadius _wanted = BendRadius.Inside(Length.FromMillimeters(250));

    private readonly double[] _radii = [.. Enumerable.Range(0, Points).Select(i => 0.1 * Math.Pow(100, i / (Points - 1.0)))];

    private readonly double[] _finished = new double[Points];

    public SharpAngleBenchmarks()
    {
        _sweep = BendSweep.Of(_analysis);
        PowerLawBenchmarks.SameTo(1e-12, ForwardByHand(), ForwardTyped());
        PowerLawBenchmarks.SameTo(1e-12, InverseByHand(), InverseTyped());
        PowerLawBenchmarks.SameTo(1e-5, InverseByStrips(), InverseTyped());
        PowerLawBenchmarks.SameTo(1e-12, SweepByHand(), Sweep());
    }

    /// <summary>The ring a load leaves: its inside radius and its dish, added up so that neither is left out.</summary>
    [Benchmark(Baseline = true)]
    [BenchmarkCategory("forward")]
    public double ForwardByHand()
    {
        (double inside, double dish) = _hand.Ring(0.240);
        return inside + dish;
    }

    [Benchmark]
    [BenchmarkCategory("forward")]
    public double ForwardTyped()
    {
        FinishedRing ring = _analysis.LoadedTo(_loaded).Release(Release.Free).Ring;
        return ring.InsideRadius.Meters + ring.DishAngle.Radians;
    }

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("inverse")]
    public double InverseByHand() => _hand.LoadedInsideFor(0.250);

    [Benchmark]
    [BenchmarkCategory("inverse")]
    public double InverseTyped() => _analysis.LoadedFor(_wanted, Release.Free).InsideRadius.Meters;

    [Benchmark]
    [BenchmarkCategory("inverse")]
    public double InverseByStrips() => _strips.LoadedInsideFor(0.250);

    [Benchmark(Baseline = true, OperationsPerInvoke = Points)]
    [BenchmarkCategory("sweep, a point")]
    public double SweepByHand()
    {
        for (int i = 0; i < _radii.Length; i++)
        {
            _finished[i] = _hand.FinishedInside(_radii[i]);
        }

        return _finished[Points / 4];
    }

    [Benchmark(OperationsPerInvoke = Points)]
    [BenchmarkCategory("sweep, a point")]
    public double Sweep()
    {
        _sweep.FinishedRadii(_radii, _finished, Release.Free);
        return _finished[Points / 4];
    }
}
