using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>What typed quantities cost at the door and inside a loop: the reason results are computed on doubles in SI units.</summary>
[MemoryDiagnoser]
public class QuantityBenchmarks
{
    private readonly double[] _meters = [.. Enumerable.Range(1, 100).Select(i => i * 1e-3)];

    private readonly Length[] _lengths = [.. Enumerable.Range(1, 100).Select(i => Length.FromMillimeters(i))];

    [Benchmark(Baseline = true)]
    public double SectionModulusOnDoubles()
    {
        double sum = 0;
        foreach (double depth in _meters)
        {
            sum += 0.003 * depth * depth / 6;
        }

        return sum;
    }

    [Benchmark]
    public double SectionModulusConvertedAtTheDoor()
    {
        double sum = 0;
        foreach (Length length in _lengths)
        {
            double depth = length.Meters;
            sum += 0.003 * depth * depth / 6;
        }

        return sum;
    }

    [Benchmark]
    public double SectionModulusOnQuantities()
    {
        Length width = Length.FromMillimeters(3);
        Volume sum = Volume.Zero;
        foreach (Length depth in _lengths)
        {
            sum += width * depth * depth / 6;
        }

        return sum.CubicMeters;
    }
}
