using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>A section as it lies in the bender: it knows its inside face. Made by the orientation members of the stock shapes. Immutable and thread-safe.</summary>
public sealed class OrientedSection
{
    internal OrientedSection(string stockName, string orientation, IReadOnlyList<Edge[]> loops, double width, SectionFeatures features, (double Y, double Z, SectionFormula Formula)? shear = null)
    {
        StockName = stockName;
        Orientation = orientation;
        Features = features;
        Loops = loops;
        Profile = BandProfile.Of(loops);
        Properties = new(Profile, width);
        ShearCenter = shear is { } at ? new(at.Y, at.Z, PolarRadius(Profile.Moments, at.Y, at.Z), at.Formula) : null;
    }

    /// <summary>The stock the section is of, such as <c>angle 30 × 30 × 3 mm</c>.</summary>
    public string StockName { get; }

    /// <summary>How it lies, such as <c>flange out</c>; empty for shapes that lie one way only.</summary>
    public string Orientation { get; }

    /// <summary>Area, centroid, second moments, moduli and axes.</summary>
    public SectionProperties Properties { get; }

    /// <summary>Legs, walls and depth, for the distortion checks.</summary>
    public SectionFeatures Features { get; }

    /// <summary>The shear center, or null where no formula is known for the shape.</summary>
    public ShearCenter? ShearCenter { get; }

    /// <summary>Extent from the inside face to the outside face.</summary>
    public Length Depth => Properties.Depth;

    internal IReadOnlyList<Edge[]> Loops { get; }

    internal BandProfile Profile { get; }

    internal double Height => Properties.Height;

    /// <summary>Stock and orientation.</summary>
    public override string ToString() => Orientation.Length == 0 ? StockName : StockName + ", " + Orientation;

    /// <summary>The level of a fiber in metres from the inside face, or an exception by name when it lies outside the section.</summary>
    internal double LevelOf(Length fromInside, string name)
    {
        double level = Guard.NonNegative(fromInside, name);
        return level <= Height * (1 + 1e-12)
            ? Math.Min(level, Height)
            : throw Guard.Fault(name, fromInside, $"must not be greater than the depth of the section, {Guard.MillimetersText(Height)}");
    }

    private static double PolarRadius(in AreaMoments moments, double y, double z) => Math.Sqrt(
        (y - moments.CentroidY) * (y - moments.CentroidY) + (z - moments.CentroidZ) * (z - moments.CentroidZ) + (moments.SecondY + moments.SecondZ) / moments.Area);
}
