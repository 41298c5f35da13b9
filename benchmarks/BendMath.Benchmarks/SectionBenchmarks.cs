using BenchmarkDotNet.Attributes;
using UnitsNet;

namespace BendMath.Benchmarks;

/// <summary>
/// All figures of a rolled angle 30 × 30 × 3 mm, typed in and out. Baseline: 1,000 chords each way through its outline, as for a section of
/// any shape. Beside it the same chords by a program that knows no other shape than this angle, and formulas by hand for this angle, both
/// on plain doubles.
/// </summary>
[MemoryDiagnoser]
public class SectionBenchmarks
{
    private const int Chords = 1000;

    private readonly ChordOutline _outline = ChordOutline.Angle(0.030, 0.003, 0.005, 0.0025, Chords);

    private readonly ChordAngle _angle = new(0.030, 0.030, 0.003, 0.005, 0.0025, Chords);

    private readonly Length _leg = Length.FromMillimeters(30);

    private readonly Length _thickness = Length.FromMillimeters(3);

    private readonly Length _root = Length.FromMillimeters(5);

    private readonly Length _toe = Length.FromMillimeters(2.5);

    [Benchmark(Baseline = true)]
    public double ChordsThroughTheOutline() => _outline.Sum();

    [Benchmark]
    public double ChordsOfThisAngleOnly() => _angle.Sum();

    [Benchmark]
    public double LibraryTypedInAndOut() => Sum(new EqualAngle(_leg, _thickness, AngleFillets.Of(_root, _toe)).FlangeOut.Properties);

    [Benchmark]
    public double FormulasOfThisAngleOnPlainDoubles() => PlainAngle.Sum(0.030, 0.003, 0.005, 0.0025);

    /// <summary>Every figure once, in the unit the library hands out.</summary>
    internal static double Sum(SectionProperties p) =>
        p.Area.Value + p.Depth.Value + p.Width.Value + p.CentroidFromInside.Value + p.CentroidAxial.Value
        + p.SecondMomentAboutBendingAxis.Value + p.SecondMomentAboutRadialAxis.Value + p.ProductOfInertia.Value
        + p.PrincipalSecondMomentMajor.Value + p.PrincipalSecondMomentMinor.Value + p.PrincipalAxisAngle.Radians
        + p.ElasticModulusInside.Value + p.ElasticModulusOutside.Value + p.ElasticModulusAboutRadialAxisNear.Value
        + p.ElasticModulusAboutRadialAxisFar.Value
        + p.EqualAreaAxisFromInside.Value + p.PlasticModulus.Value + p.EqualAreaAxisAxial.Value + p.PlasticModulusAboutRadialAxis.Value
        + p.ShapeFactor
        + p.RadiusOfGyrationAboutBendingAxis.Value + p.RadiusOfGyrationAboutRadialAxis.Value
        + p.PrincipalRadiusOfGyrationMajor.Value + p.PrincipalRadiusOfGyrationMinor.Value + p.Perimeter.Value;
}
