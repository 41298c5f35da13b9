using BenchmarkDotNet.Attributes;
using BendMath.Stock.Standard;

namespace BendMath.Benchmarks;

/// <summary>Look-up of a designation after the first, beside a look-up of the same text in a dictionary that holds nothing else.</summary>
[MemoryDiagnoser]
public class StandardSizeBenchmarks
{
    private readonly Dictionary<string, StandardSize> _dictionary =
        StandardSizes.All.ToDictionary(size => size.FullName, StringComparer.OrdinalIgnoreCase);

    [Benchmark(Baseline = true)]
    public StandardSize InADictionary() => _dictionary["AISC v16.0 L2X2X1/8"];

    [Benchmark]
    public StandardSize ByFullName() => StandardSizes.Find("AISC v16.0 L2X2X1/8");

    [Benchmark]
    public StandardSize ByDesignation() => StandardSizes.Find("l2x2x1/8");

    [Benchmark]
    public StandardSize ByASpelling() => StandardSizes.Find("2 x 2 x 1/8 angle");

    [Benchmark]
    public bool RefusedWithoutAMessage() => StandardSizes.TryFind("2 x 2 x 5/64 angle", out _);
}
