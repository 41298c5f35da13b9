using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>
/// Bending a sharp-cornered angle 30 × 30 × 3 mm, flange out, of linearly hardening steel: forward, from the loaded inside radius to the ring released
/// free, and back. The textbook way cuts the section into 1,000 strips and nests bisections; the hand-written way is <see cref="HandAngle"/>.
/// </summary>
[MemoryDiagnoser]
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

    private readonly BendRadius _loaded = BendRadius.Inside(Length.FromMillimeters(240));

    private readonly BendRadius _wanted = BendRadius.Inside(Length.FromMillimeters(250));

    private readonly double[] _radii = [.. Enumerable.Range(0, Points).Select(i => 0.1 * Math.Pow(100, i / (Points - 1.0)))];

    private readonly double[] _finished = new double[Points];

    [Benchmark(Baseline = true)]
    public double ForwardByHand() => _hand.FinishedInside(0.240);

    [Benchmark]
    public double ForwardTyped() => _analysis.LoadedTo(_loaded).Release(Release.Free).Ring.InsideRadius.Meters;

    [Benchmark]
    public double InverseByHand() => _hand.LoadedInsideFor(0.250);

    [Benchmark]
    public double InverseTyped() => _analysis.LoadedFor(_wanted, Release.Free).InsideRadius.Meters;

    [Benchmark]
    public double InverseByStrips() => _strips.LoadedInsideFor(0.250);

    [Benchmark(OperationsPerInvoke = Points)]
    public double SweepByHand()
    {
        for (int i = 0; i < _radii.Length; i++)
        {
            _finished[i] = _hand.FinishedInside(_radii[i]);
        }

        return _finished[Points - 1];
    }
}
