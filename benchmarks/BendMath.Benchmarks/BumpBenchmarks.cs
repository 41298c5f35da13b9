using BenchmarkDotNet.Attributes;
using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>
/// A flat 20 × 8 mm of linearly hardening steel, bumped the easy way: a whole pass of 73 bumps over a bar of ten half-spans, and the steady
/// state of the same bumps. The straightforward way keeps the curvature on a grid along the bar (<see cref="GridBumps"/>): 72 steps in a
/// half-span give the mean curvature to about 1e-3, 720 steps to about 1e-5. The library keeps the corners of the moments, without a grid.
/// </summary>
[MemoryDiagnoser]
[GroupBenchmarksBy(BenchmarkDotNet.Configs.BenchmarkLogicalGroupRule.ByCategory)]
[CategoriesColumn]
public class BumpBenchmarks
{
    private const double HalfSpan = 0.060, Feed = HalfSpan / 9, Nominal = 1 / 0.150;

    private const int Bumps = 73;

    private readonly GridBumps _coarse = new(0.020, 0.008, 205e9, 280e6, 1.5e9, HalfSpan, 72);

    private readonly GridBumps _fine = new(0.020, 0.008, 205e9, 280e6, 1.5e9, HalfSpan, 720);

    private readonly BendAnalysis _analysis = BendAnalysis.Of(
        new FlatBar(Length.FromMillimeters(20), Length.FromMillimeters(8)).EasyWay,
        new BarMaterial(
            "hardening steel, invented",
            new LinearHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(280), Pressure.FromMegapascals(1500)),
            Density.FromKilogramsPerCubicMeter(7850)));

    private readonly BumpBending _model = new(new ThreePointSetup(Length.FromMeters(HalfSpan), Length.Zero), Length.FromMeters(Feed));

    private readonly Length _bar = Length.FromMeters(10 * HalfSpan);

    private readonly Length _stroke =
        Length.FromMeters(Nominal * HalfSpan * HalfSpan / (1 + Math.Sqrt(1 - Nominal * Nominal * HalfSpan * HalfSpan)));

    public BumpBenchmarks()
    {
        PowerLawBenchmarks.SameTo(2e-3, PassOnACoarseGrid(), Pass());
        PowerLawBenchmarks.SameTo(2e-5, PassOnAFineGrid(), Pass());
    }

    [Benchmark(Baseline = true)]
    [BenchmarkCategory("pass")]
    public double PassOnACoarseGrid() => _coarse.MeanOfPass(10 * HalfSpan, Feed, Bumps, Nominal);

    [Benchmark]
    [BenchmarkCategory("pass")]
    public double PassOnAFineGrid() => _fine.MeanOfPass(10 * HalfSpan, Feed, Bumps, Nominal);

    [Benchmark]
    [BenchmarkCategory("pass")]
    public double Pass() => _model.BendWhole(_analysis, _bar, _stroke).MeanCurvature.InverseMeters;

    [Benchmark]
    [BenchmarkCategory("pass")]
    public double SteadyState() => _model.FormAtStroke(_analysis, _stroke).Loaded.Curvature.InverseMeters;
}
