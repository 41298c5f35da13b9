using BendMath.Forming.Pairs;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Tests.Json;

/// <summary>
/// Measured rings of every shape, law and way of measuring, with awkward digits, and how to tell whether two are the same to the last
/// digit. Invented.
/// </summary>
internal static class RingSets
{
    private static readonly Die A = new("A", Length.FromInches(7), ReferenceFace.InsideOfBar, noseRadius: Length.Zero);

    private static readonly Die B = new(
        "B, \"wide\"; it's = new", Length.FromMillimeters(1000.0 / 3), ReferenceFace.OffsetBy(Length.FromMillimeters(3.1)),
        Length.FromInches(5.7), Length.FromMillimeters(100.0 / 7),
        MatingDie.OfFace(Length.FromMillimeters(1100.0 / 3), Length.FromInches(4.7), Length.FromMillimeters(1.9)));

    private static readonly Die C = new(
        "-C 5/8 Öse", Length.FromMeters(0.4123456789012345), ReferenceFace.OutsideOfBar,
        mate: MatingDie.OfSupports(Length.FromMillimeters(1000.0 / 9), Length.FromMillimeters(11.7), Length.FromInches(0.3)));

    private static readonly Density Steel = Density.FromKilogramsPerCubicMeter(7850.1);

    private static readonly BarMaterial[] Materials =
    [
        new("mild steel",
            new LinearHardening(Pressure.FromGigapascals(209.99999), Pressure.FromMegapascals(287.7), Pressure.FromMegapascals(1500)),
                Steel, Ratio.FromDecimalFractions(0.7101), new(Pressure.FromMegapascals(235.1), Pressure.FromMegapascals(355)), 0.3),
        new("Messing, weich", new PerfectlyPlastic(Pressure.FromPascals(100.1e9 / 3), Pressure.FromPoundsForcePerSquareInch(14000)),
            Density.FromGramsPerCubicCentimeter(8.5)),
        new BarMaterial("alloy", new RambergOsgood(Pressure.FromGigapascals(70), Pressure.FromMegapascals(240.3), 12.7),
            Density.FromGramsPerCubicCentimeter(2.7)).WithSofterUnloading(Ratio.FromDecimalFractions(0.8501)),
        new("annealed", new PowerHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(611.7), 0.213), Steel),
        new("hot rolled",
            new HotRolledSteel(Pressure.FromGigapascals(210.1), Pressure.FromMegapascals(289.3), Pressure.FromMegapascals(431.7)), Steel),
    ];

    /// <summary>One ring of every orientation of every shape; laws, dies, readings and states take turns.</summary>
    public static IReadOnlyList<MeasuredRing> Every { get; } = [.. Bars().SelectMany(bar => bar.Orientations).Select(Ring)];

    /// <summary>Everything a ring holds, doubles to the last digit.</summary>
    public static string Told(MeasuredRing ring) => FormattableString.Invariant(
        $"{ring.Die.Name}|{ring.Die.StampedRadius.Meters:R}|{ring.Die.Face.OffsetFor(ring.Analysis.Section).Meters:R}|{ring.Die.Face}|{ring.Analysis.Section.Stock.GetType().Name}|{ring.Analysis.Section.Orientation}|{Digits(ring.Analysis.Section)}|{ring.Analysis.StressState}|{Law(ring.Analysis.Material)}|{ring.Reading}|{ring.Reading.Radius.Reference}|{ring.Reading.Radius.Value.Meters:R}|{ring.Reading.Chord?.Meters:R}|{ring.Reading.Rise?.Meters:R}|{ring.Reading.Tape?.Meters:R}|{ring.Release}|{ring.Marked?.Before.Meters:R}|{ring.Marked?.Turn.Radians:R}|{ring.Note}");

    private static string Law(BarMaterial material) => FormattableString.Invariant(
        $"{material.Name}|{material.Law.GetType().Name}|{material.Law.ElasticModulus.Pascals:R}|{material.Law.YieldStress.Pascals:R}|{(material.Law as LinearHardening)?.TangentModulus.Pascals:R}|{(material.Law as RambergOsgood)?.Exponent:R}|{(material.Law as PowerHardening)?.HardeningExponent:R}|{(material.Law as PowerHardening)?.StrengthCoefficient.Pascals:R}|{(material.Law as HotRolledSteel)?.UltimateStrength.Pascals:R}|{material.YieldRange?.Low.Pascals:R}|{material.YieldRange?.High.Pascals:R}|{material.Density.KilogramsPerCubicMeter:R}|{material.Elongation?.DecimalFractions:R}|{material.PoissonsRatio:R}|{material.UnloadingShare.DecimalFractions:R}");

    private static string Digits(OrientedSection section) => FormattableString.Invariant(
        $"{section.Properties.Area.SquareMeters:R}|{section.Properties.Depth.Meters:R}|{section.Properties.CentroidFromInside.Meters:R}|{section.Properties.PlasticModulus.CubicMeters:R}");

    private static IEnumerable<BarStock> Bars()
    {
        Length mm(double x) => Length.FromMillimeters(x);
        yield return new EqualAngle(Length.FromInches(0.75), Length.FromInches(0.125), AngleFillets.Of(mm(3.3), mm(1.7)));
        yield return new UnequalAngle(mm(50.1), mm(30.7), mm(5), AngleFillets.Sharp);
        yield return new FlatBar(mm(25.4 / 7), mm(3.175));
        yield return new FlatBar(mm(25), mm(5.05), mm(0.7));
        yield return new SquareBar(mm(12.7), mm(1.1));
        yield return new RoundBar(Length.FromInches(1.0 / 3));
        yield return new HexagonBar(mm(17.1));
        yield return new RoundTube(mm(21.3), mm(2.65));
        yield return new SquareTube(mm(40.1), mm(3), CornerRadii.Of(mm(6.1), mm(3.1)));
        yield return new RectangularTube(mm(50.3), mm(30), mm(2.9), CornerRadii.Sharp);
        yield return new Channel(mm(50.7), mm(25), mm(5), mm(6.1), FlangeFillets.Of(mm(4), mm(2), mm(1)));
        yield return new Tee(mm(40.9), mm(40), mm(5.3), mm(5), FlangeFillets.Sharp);
    }

    private static MeasuredRing Ring(OrientedSection section, int i)
    {
        Length size = Length.FromMillimeters(900 + 1000.0 / (3 + i));
        RingReading reading = (i % 7) switch
        {
            0 => RingReading.Of(BendRadius.InsideDiameter(size)),
            1 => RingReading.Of(BendRadius.Outside(size / 2)),
            2 => RingReading.TapeAroundInside(3 * size),
            3 => RingReading.TapeAroundOutside(3 * size),
            4 => RingReading.ChordAgainstInside(size * 0.5, size * 0.0701),
            5 => RingReading.ChordAgainstOutside(size * 0.51, size * 0.0703),
            _ => RingReading.Of(BendRadius.CentroidDiameter(size)),
        };
        MarkedLength? marked = (i % 3) switch
        {
            0 => new(3.3 * size, Angle.FromDegrees(360)),
            1 => new(Length.FromInches(31.4375), Angle.FromRadians(1 + 1.0 / (i + 1))),
            _ => null,
        };
        string? note = (i % 4) switch
        {
            0 => "14 March, \"second\" try; a, b = c",
            1 => "=1+2",
            2 => "'quoted",
            _ => null,
        };
        BarMaterial material = Materials[i % Materials.Length];
        StressState state = material.PoissonsRatio is not null && i % 8 == 0 ? StressState.PlaneStrain : StressState.Uniaxial;
        return new(new[] { A, B, C }[i % 3], BendAnalysis.Of(section, material, state), reading,
            i % 2 == 0 ? Release.Free : Release.HeldFlat, marked, note);
    }
}
