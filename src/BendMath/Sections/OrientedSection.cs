using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>A section as it lies in the bender: it knows its inside face. Made by the orientation members of the stock shapes. Immutable and thread-safe.</summary>
public sealed class OrientedSection
{
    private readonly object _stock;

    private readonly (double Y, double Z, SectionFormula Formula)? _shear;

    // Figures are computed when first asked for. Two threads that ask at once compute the same; the first to finish is kept.
    private SectionProperties? _properties;

    private BandProfile? _profile;

    private Outline? _outline;

    private ShearCenter? _shearCenter;

    /// <param name="stock">What prints itself as the name of the stock; asked only when the name is read.</param>
    /// <param name="orientation">How it lies.</param>
    /// <param name="loops">Outer loop counter-clockwise, then holes clockwise; the lowest y and z are zero.</param>
    /// <param name="features">For the distortion checks.</param>
    /// <param name="shear">The shear center and where it comes from, or null where no formula is known.</param>
    internal OrientedSection(object stock, string orientation, Edge[][] loops, SectionFeatures features, (double Y, double Z, SectionFormula Formula)? shear = null)
    {
        _stock = stock;
        _shear = shear;
        Loops = loops;
        Orientation = orientation;
        Features = features;
    }

    /// <summary>The stock the section is of, such as <c>angle 30 × 30 × 3 mm</c>.</summary>
    public string StockName => _stock.ToString()!;

    /// <summary>How it lies, such as <c>flange out</c>; empty for shapes that lie one way only.</summary>
    public string Orientation { get; }

    /// <summary>Area, centroid, second moments, moduli and axes.</summary>
    public SectionProperties Properties => _properties ?? Once.Keep(ref _properties, new(Loops));

    /// <summary>Legs, walls and depth, for the distortion checks.</summary>
    public SectionFeatures Features { get; }

    /// <summary>The shear center, or null where no formula is known for the shape.</summary>
    public ShearCenter? ShearCenter => _shear is not { } at ? null : _shearCenter ?? Once.Keep(ref _shearCenter, ShearCenterAt(at, Properties.Moments));

    /// <summary>Extent from the inside face to the outside face.</summary>
    public Length Depth => Properties.Depth;

    /// <summary>
    /// The outline for drawing and CAD. Its x is the axial coordinate z of the section, its y the radial coordinate from the inside face outward.
    /// </summary>
    public Outline Outline => _outline ?? Once.Keep(ref _outline, new(Loops, []));

    internal Edge[][] Loops { get; }

    internal BandProfile Profile => _profile ?? Once.Keep(ref _profile, BandProfile.Of(Loops, Properties.Moments));

    internal object Stock => _stock;

    internal double Height => Properties.Height;

    /// <summary>Stock and orientation.</summary>
    public override string ToString() => Orientation.Length == 0 ? StockName : StockName + ", " + Orientation;

    /// <summary>The level of a fiber in metres from the inside face, or an exception by name when it lies outside the section.</summary>
    internal double LevelOf(Length fromInside, string name)
    {
        double level = Guard.Place(fromInside, name);
        return level <= Height * (1 + 1e-12)
            ? Math.Min(level, Height)
            : throw Guard.Fault(name, fromInside, $"must not be greater than the depth of the section, {Guard.MillimetersText(Height)}");
    }

    private static ShearCenter ShearCenterAt((double Y, double Z, SectionFormula Formula) at, in AreaMoments m) => new(at.Y, at.Z, Math.Sqrt(
        (at.Y - m.CentroidY) * (at.Y - m.CentroidY) + (at.Z - m.CentroidZ) * (at.Z - m.CentroidZ) + (m.SecondY + m.SecondZ) / m.Area), at.Formula);
}
