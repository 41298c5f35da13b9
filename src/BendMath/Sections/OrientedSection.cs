using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>A section as it lies in the bender: it knows its inside face. Made by the orientation members of the stock shapes. Immutable and thread-safe.</summary>
public sealed class OrientedSection
{
    private readonly object _stock;

    private readonly OrientedSection? _mirrorImage;

    // Figures are computed when first asked for. Two threads that ask at once compute the same; the first to finish is kept.
    private Edge[][]? _loops;

    private SectionProperties? _properties;

    private BandProfile? _profile;

    private Outline? _outline;

    private readonly (double Y, double Z, SectionFormula Formula)? _shear;

    private ShearCenter? _shearCenter;

    /// <param name="stock">What prints itself as the name of the stock; asked only when the name is read.</param>
    /// <param name="orientation">How it lies.</param>
    /// <param name="loops">Outer loop counter-clockwise, then holes clockwise; the lowest y and z are zero.</param>
    /// <param name="features">For the distortion checks.</param>
    /// <param name="shear">Where the shear center lies and why, or null where no formula is known.</param>
    internal OrientedSection(object stock, string orientation, Edge[][] loops, SectionFeatures features, (double Y, double Z, SectionFormula Formula)? shear = null)
    {
        _stock = stock;
        _loops = loops;
        Orientation = orientation;
        Features = features;
        _shear = shear;
    }

    private OrientedSection(OrientedSection mirrorImage, string orientation, SectionFeatures features)
    {
        _stock = mirrorImage._stock;
        _mirrorImage = mirrorImage;
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
    public ShearCenter? ShearCenter => _shear is { } at ? _shearCenter ?? Once.Keep(ref _shearCenter, new(at.Y, at.Z, PolarRadius(Properties.Moments, at.Y, at.Z), at.Formula)) : null;

    /// <summary>Extent from the inside face to the outside face.</summary>
    public Length Depth => Properties.Depth;

    /// <summary>
    /// The outline for drawing and CAD. Its x is the axial coordinate z of the section, its y the radial coordinate from the inside face outward.
    /// </summary>
    public Outline Outline => _outline ?? Once.Keep(ref _outline, new(Loops, []));

    internal Edge[][] Loops => _loops ?? Once.Keep(ref _loops, MirroredLoops(_mirrorImage!));

    internal BandProfile Profile => _profile ?? Once.Keep(ref _profile, BandProfile.Of(Loops, Properties.Moments));

    internal double Height => Properties.Height;

    /// <summary>Stock and orientation.</summary>
    public override string ToString() => Orientation.Length == 0 ? StockName : StockName + ", " + Orientation;

    /// <summary>The section with y replaced by h − y, such as flange in for flange out; z is not mirrored.</summary>
    internal OrientedSection Mirrored(string orientation, SectionFeatures features) => new(this, orientation, features);

    /// <summary>The level of a fiber in metres from the inside face, or an exception by name when it lies outside the section.</summary>
    internal double LevelOf(Length fromInside, string name)
    {
        double level = Guard.NonNegative(fromInside, name);
        return level <= Height * (1 + 1e-12)
            ? Math.Min(level, Height)
            : throw Guard.Fault(name, fromInside, $"must not be greater than the depth of the section, {Guard.MillimetersText(Height)}");
    }

    private static Edge[][] MirroredLoops(OrientedSection image)
    {
        Edge[][] mirrored = new Edge[image.Loops.Length][];
        for (int i = 0; i < mirrored.Length; i++)
        {
            Edge[] loop = image.Loops[i];
            Edge[] edges = new Edge[loop.Length];
            for (int j = 0; j < edges.Length; j++)
            {
                edges[j] = loop[edges.Length - 1 - j].MirroredInY(image.Height);
            }

            mirrored[i] = edges;
        }

        return mirrored;
    }

    private static double PolarRadius(in AreaMoments moments, double y, double z) => Math.Sqrt(
        (y - moments.CentroidY) * (y - moments.CentroidY) + (z - moments.CentroidZ) * (z - moments.CentroidZ) + (moments.SecondY + moments.SecondZ) / moments.Area);
}
