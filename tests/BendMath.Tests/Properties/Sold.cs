using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>A bar of a size that is sold, in millimeters, and the way it lies.</summary>
internal sealed record SoldBar(string Kind, double Size, double Thickness, double Root, int Lies)
{
    public OrientedSection Section(double scale = 1) => Section(value => Length.FromMillimeters(value * scale));

    public OrientedSection Section(Func<double, Length> millimeters)
    {
        Length size = millimeters(Size);
        BarStock stock = Kind switch
        {
            "angle" =>
                new EqualAngle(size, millimeters(Thickness),
                    Root > 0 ? AngleFillets.Of(millimeters(Root), millimeters(Root / 2)) : AngleFillets.Sharp),
            "flat" => new FlatBar(size, millimeters(Thickness)),
            "square" => new SquareBar(size),
            "round" => new RoundBar(size),
            _ => new RoundTube(size, millimeters(Thickness)),
        };
        return stock.Orientations[Lies];
    }
}

/// <summary>
/// A metal in gigapascals (E) and megapascals (yield, slope beyond yield; 0 for none). Round values of common grades, from memory.
/// </summary>
internal sealed record Metal(string Name, double Modulus, double Yield, double Tangent)
{
    public double YieldStrain => Yield / (Modulus * 1e3);

    public BarMaterial Material() => Material(value => Pressure.FromMegapascals(value));

    public BarMaterial Material(Func<double, Pressure> megapascals) => new(
        Name,
        Tangent > 0
            ? new LinearHardening(megapascals(Modulus * 1e3), megapascals(Yield), megapascals(Tangent))
            : new PerfectlyPlastic(megapascals(Modulus * 1e3), megapascals(Yield)),
        Density.FromKilogramsPerCubicMeter(7850));
}

/// <summary>A plastic bend of a sold bar; the inside radius counts in depths of the bar.</summary>
internal sealed record Bend(SoldBar Bar, Metal Metal, double Depths)
{
    public BendAnalysis Analysis(double scale = 1) => BendAnalysis.Of(Bar.Section(scale), Metal.Material());

    public LoadedBend Loaded(double scale = 1)
    {
        BendAnalysis analysis = Analysis(scale);
        return analysis.LoadedTo(BendRadius.Inside(Depths * analysis.Section.Depth));
    }
}

/// <summary>
/// Generators of sizes that are sold. Sizes and root radii (toe radius half of it) as in EN 10056-1, EN 10058 to EN 10060 and EN 10220,
/// from memory.
/// </summary>
internal static class Sold
{
    private static readonly (double Leg, double Thickness, double Root)[] AngleSizes =
    [
        (20, 3, 3.5), (25, 3, 3.5), (30, 3, 5), (30, 4, 5), (40, 4, 6), (50, 5, 7), (60, 6, 8), (70, 7, 9), (80, 8, 10), (100, 10, 12),
    ];

    public static Gen<double> Part { get; } = Gen.Choose(0, 1_000_000).Select(part => part / 1e6);

    public static Gen<Release> Releases { get; } = Gen.Elements(Release.Free, Release.HeldFlat);

    public static Gen<SoldBar> Angles { get; } =
        from size in Gen.Elements(AngleSizes)
        from sharp in Gen.Elements(true, false)
        from lies in Gen.Choose(0, 1)
        select new SoldBar("angle", size.Leg, size.Thickness, sharp ? 0 : size.Root, lies);

    public static Gen<SoldBar> SharpAngles { get; } =
        from size in Gen.Elements(AngleSizes) from lies in Gen.Choose(0, 1) select new SoldBar("angle", size.Leg, size.Thickness, 0, lies);

    public static Gen<SoldBar> Flats { get; } =
        from size in Gen.Elements((20d, 3d), (25d, 5d), (30d, 5d), (40d, 8d), (50d, 10d), (60d, 6d))
        from lies in Gen.Choose(0, 1)
        select new SoldBar("flat", size.Item1, size.Item2, 0, lies);

    public static Gen<SoldBar> Tubes { get; } =
        from size in Gen.Elements((21.3, 2.6), (26.9, 2.6), (33.7, 3.2), (42.4, 3.2), (48.3, 4),
            (60.3, 3.6))
        select new SoldBar("tube", size.Item1, size.Item2, 0, 0);

    public static Gen<SoldBar> Symmetric { get; } = Gen.OneOf(
        Flats,
        Tubes,
        Gen.Elements(8d, 10, 12, 16, 20, 25, 40).Select(side => new SoldBar("square", side, 0, 0, 0)),
        Gen.Elements(6d, 8, 10, 12, 16, 20, 30).Select(diameter => new SoldBar("round", diameter, 0, 0, 0)));

    public static Gen<SoldBar> Bars { get; } = Gen.OneOf(Angles, Symmetric);

    public static Gen<Metal> PerfectlyPlastic { get; } = Metals(0);

    public static Gen<Metal> Hardening { get; } = Gen.Elements(1 / 200d, 1 / 100d, 1 / 50d).SelectMany(Metals);

    public static Gen<Metal> AnyMetal { get; } = Gen.OneOf(PerfectlyPlastic, Hardening);

    public static Gen<Bend> AnyBend { get; } = Bends(Bars, AnyMetal);

    /// <summary>Inside radii from 3 to 300 depths, evenly on a logarithmic scale, but at least a margin past the yield curvature.</summary>
    public static Gen<Bend> Bends(Gen<SoldBar> bars, Gen<Metal> metals, double margin = 1.5) =>
        from bar in bars
        from metal in metals
        from part in Part
        select new Bend(bar, metal, Between(3, Math.Min(300, FarFace(bar) / (margin * metal.YieldStrain) - 1), part));

    public static double Between(double low, double high, double part) => low * Math.Pow(high / low, part);

    /// <summary>Distance from the centroid to the farther face over the depth.</summary>
    public static double FarFace(SoldBar bar)
    {
        SectionProperties properties = bar.Section().Properties;
        double below = properties.CentroidFromInside / properties.Depth;
        return Math.Max(below, 1 - below);
    }

    private static Gen<Metal> Metals(double slope) =>
        Gen.Elements(("steel", 210d, 235d), ("steel", 210d, 355d), ("aluminum", 70d, 150d), ("aluminum", 70d, 215d),
        ("stainless", 200d, 230d), ("stainless", 200d, 300d))
            .Select(grade => new Metal(grade.Item1, grade.Item2, grade.Item3, grade.Item2 * 1e3 * slope));
}
