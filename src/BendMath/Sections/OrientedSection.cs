using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath;

/// <summary>How a bar is turned before its section is compared with another.</summary>
internal enum Turning
{
    None,

    /// <summary>About its own axis: what was inside is outside.</summary>
    Over,

    /// <summary>Start for end: what was left is right.</summary>
    EndForEnd,
}

/// <summary>
/// A section as it lies in the bender: it knows its inside face. Made by the orientation members of the stock shapes. Immutable and
/// thread-safe.
/// </summary>
public sealed class OrientedSection
{
    /// <summary>Inside radius of the tightest bend that is looked at, over the depth.</summary>
    internal const double TightestShare = 1e-6;

    private readonly (double Y, double Z, SectionFormula Formula)? _shear;

    // Figures are computed when first asked for. Two threads that ask at once compute the same; the first to finish is kept.
    private SectionProperties? _properties;

    private BandProfile? _profile;

    private Outline? _outline;

    private ShearCenter? _shearCenter;

    /// <param name="stock">The bar it is a section of.</param>
    /// <param name="orientation">How it lies.</param>
    /// <param name="loops">Outer loop counter-clockwise, then holes clockwise; the lowest y and z are zero.</param>
    /// <param name="features">For the distortion checks.</param>
    /// <param name="shear">The shear center and where it comes from, or null where no formula is known.</param>
    internal OrientedSection(BarStock stock, Orientation orientation, Edge[][] loops, SectionFeatures features,
        (double Y, double Z, SectionFormula Formula)? shear = null)
    {
        Stock = stock;
        _shear = shear;
        Loops = loops;
        Orientation = orientation;
        Features = features;
    }

    /// <summary>The bar it is a section of.</summary>
    public BarStock Stock { get; }

    /// <summary>How the bar lies.</summary>
    public Orientation Orientation { get; }

    /// <summary>Area, centroid, second moments, moduli and axes.</summary>
    public SectionProperties Properties => _properties ?? Once.Keep(ref _properties, new(Loops));

    /// <summary>
    /// Legs and flanges with a free edge; empty for solid bars and tubes, null for an outline from a drawing that came without that word.
    /// </summary>
    public IReadOnlyList<Outstand>? Outstands => Features.OutstandsAreKnown ? Features.Outstands : null;

    /// <summary>The radial leg of an angle with two equal legs, or null for any other shape.</summary>
    public Outstand? EqualLegs => Features.EqualLegs;

    /// <summary>Wall thickness of a tube, or null.</summary>
    public Length? WallThickness => Features.WallThickness;

    /// <summary>The shear center, or null where no formula is known for the shape.</summary>
    public ShearCenter? ShearCenter =>
        _shear is not { } at ? null : _shearCenter ?? Once.Keep(ref _shearCenter, ShearCenterAt(at, Properties.Moments));

    /// <summary>Extent from the inside face to the outside face.</summary>
    public Length Depth => Properties.Depth;

    /// <summary>
    /// The outline for drawing and CAD. Its x is the axial coordinate z of the section, its y the radial coordinate from the inside face
    /// outward.
    /// </summary>
    public Outline Outline => _outline ?? Once.Keep(ref _outline, new(Loops, []));

    /// <summary>Legs, walls and depth, for the distortion checks.</summary>
    internal SectionFeatures Features { get; }

    internal Edge[][] Loops { get; }

    internal BandProfile Profile => _profile ?? Once.Keep(ref _profile, BandProfile.Of(Loops, Properties.Moments));

    internal double Height => Properties.Height;

    /// <summary>Inside radius of the tightest bend that is looked at, where the inside fiber has all but shortened to nothing.</summary>
    internal double TightestRadius => TightestShare * Height;

    /// <summary>Shape and orientation, whatever the size.</summary>
    internal string Kind => With(Stock.Shape);

    /// <summary>Stock with all that tells bars of one name apart, and orientation.</summary>
    internal string Description => With(Stock.Description);

    /// <summary>
    /// Whether another section is of the same metal lying the same way, whatever the name and shape of its stock: laid middle on middle,
    /// each outline comes within the tolerance of the other. Where a dimension differs by 1 mm, two opposite faces lie half a millimeter
    /// apart.
    /// </summary>
    /// <param name="other">The section to compare with.</param>
    /// <param name="tolerance">How far outlines may lie apart; zero for none but rounding, a billionth of the size.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    public bool IsSameBar(OrientedSection other, Length tolerance) =>
        IsWithin(Guard.NotNull(other, nameof(other)), Guard.NonNegative(tolerance, nameof(tolerance)), Turning.None);

    /// <summary>
    /// Whether another section is of the same metal turned over about the axis of the bar, its outside face inside: flange in for flange
    /// out, as a bar lies that is bent to the other side.
    /// </summary>
    /// <param name="other">The section to compare with.</param>
    /// <param name="tolerance">How far outlines may lie apart; zero for none but rounding, a billionth of the size.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is negative or not finite.</exception>
    public bool IsSameBarTurnedOver(OrientedSection other, Length tolerance) =>
        IsWithin(Guard.NotNull(other, nameof(other)), Guard.NonNegative(tolerance, nameof(tolerance)), Turning.Over);

    /// <summary>Stock and orientation.</summary>
    public override string ToString() => With(Stock.Name);

    /// <summary>Whether another section is of the same shape lying the same way, whatever its size.</summary>
    internal bool IsOfKind(OrientedSection other) => Stock.IsOfShape(other.Stock) && Orientation == other.Orientation;

    /// <summary>Whether both outlines come within the tolerance, in meters, of each other when the other bar is turned.</summary>
    internal bool IsWithin(OrientedSection other, double tolerance, Turning turning)
    {
        if (turning == Turning.None && (ReferenceEquals(this, other) || (Orientation == other.Orientation && Stock == other.Stock)))
        {
            return true;
        }

        (double width, double otherWidth) = (Properties.Width.Meters, other.Properties.Width.Meters);
        double slack = tolerance + 1e-9 * Math.Max(Height, width);
        double up = (Height - other.Height) / 2;
        double right = (width - otherWidth) / 2;
        return Math.Abs(up) <= slack && Math.Abs(right) <= slack
            && SameOutline.Within(Loops,
                Array.ConvertAll(other.Loops, loop => Array.ConvertAll(loop, edge => Turned(edge).Moved(up, right))), slack);

        Edge Turned(in Edge edge) => turning switch
        {
            Turning.Over => edge.MirroredInY(other.Height),
            Turning.EndForEnd => edge.MirroredInZ(otherWidth),
            _ => edge,
        };
    }

    /// <summary>The level of a fiber in meters from the inside face, or an exception by name when it lies outside the section.</summary>
    internal double LevelOf(Length fromInside, string name)
    {
        double level = Guard.Place(fromInside, name);
        return level <= Height * (1 + 1e-12)
            ? Math.Min(level, Height)
            : throw Guard.Fault(name, fromInside, $"must not be greater than the depth of the section, {Guard.MillimetersText(Height)}");
    }

    private static ShearCenter ShearCenterAt((double Y, double Z, SectionFormula Formula) at, in AreaMoments m) =>
        new(at.Y, at.Z, Math.Sqrt(
        (at.Y - m.CentroidY) * (at.Y - m.CentroidY) + (at.Z - m.CentroidZ) * (at.Z - m.CentroidZ) + (m.SecondY + m.SecondZ) / m.Area),
            at.Formula);

    private string With(string name) => Orientation.IsUsual ? name : $"{name}, {Orientation}";
}
