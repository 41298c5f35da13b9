using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath;

/// <summary>
/// A bar of any outline, as a drawing program hands it over. What an outline cannot know, the torsion constant and the outstands, is given
/// or stays unknown. Immutable and thread-safe.
/// </summary>
public sealed class CustomBar : BarStock
{
    /// <summary>Torsion constants are equal to a hundred millionth of a mm⁴.</summary>
    private const double TorsionSteps = 1e20;

    private static readonly SectionFormula AsGiven = new("as given", "J as given", Sources.Given, null, "not checked by the library");

    private readonly OrientedSection[] _quarters;

    private readonly double? _torsion;

    /// <summary>Makes the bar from its outline.</summary>
    /// <param name="name">What the bar is called; not empty.</param>
    /// <param name="outline">Outline in the axes of its drawing.</param>
    /// <param name="torsionConstant">Torsion constant J, greater than zero, from whoever knows it; null when nobody does.</param>
    /// <exception cref="ArgumentNullException">The name or the outline is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torsion constant is not positive and finite.</exception>
    public CustomBar(string name, Outline outline, AreaMomentOfInertia? torsionConstant = null)
    {
        Name = Guard.Line(name, nameof(name));
        Outline = Guard.NotNull(outline, nameof(outline));
        _torsion = torsionConstant is { } given ? Guard.Positive(given, nameof(torsionConstant)) : null;
        _quarters = [.. Enumerable.Range(0, 4).Select(i => Oriented(Angle.FromDegrees(90 * i), edge => edge.TurnedByQuarters(i), null))];
        Orientations = Array.AsReadOnly(_quarters);
    }

    /// <inheritdoc/>
    public override string Shape => Name;

    /// <inheritdoc/>
    public override string Name { get; }

    /// <inheritdoc/>
    public override string Description => Invariant(
        $"{Name}, drawn {AsDrawn.Properties.Width.Millimeters:0.###} × {AsDrawn.Depth.Millimeters:0.###} "
            + $"mm, {Area.SquareMillimeters:0.###} mm²");

    /// <summary>The outline as it was drawn, with what was repaired.</summary>
    public Outline Outline { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants =>
        _torsion is { } given ? [new(given, AsGiven)] : [];

    /// <summary>What was repaired in the outline.</summary>
    public IReadOnlyList<Advisory> Advisories => Outline.Advisories;

    /// <summary>As drawn, and turned counter-clockwise by 90°, 180° and 270°. <see cref="TurnedBy"/> gives any other.</summary>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <summary>As drawn: the lowest point of the drawing lies at the inside face, and x runs along the axis of the ring.</summary>
    public OrientedSection AsDrawn => _quarters[0];

    /// <summary>
    /// The bar laid into the bender so that its drawing is turned and then stands with its lowest point on the inside face and its leftmost
    /// at z = 0.
    /// </summary>
    /// <param name="turn">Turn of the drawing, positive counter-clockwise.</param>
    /// <param name="outstands">Legs and flanges held along one edge only, as they lie after the turn, for the distortion checks; null when
    /// nobody says.</param>
    /// <exception cref="ArgumentOutOfRangeException">The turn is not finite.</exception>
    /// <exception cref="ArgumentException">An outstand is null.</exception>
    public OrientedSection TurnedBy(Angle turn, IReadOnlyList<Outstand>? outstands = null)
    {
        double radians = Guard.Finite(turn, nameof(turn));
        Outstand[]? given = outstands is null ? null : Guard.Items(outstands, nameof(outstands), atLeast: 0);
        double quarters = radians / (Math.PI / 2);
        double whole = Math.Round(quarters);
        return Math.Abs(quarters - whole) > 1e-14 * Math.Max(1, Math.Abs(quarters))
            ? Oriented(turn, edge => edge.Turned(radians), given)
            : given is null ? _quarters[(int)whole & 3]
            : Oriented(turn, edge => edge.TurnedByQuarters((int)whole), given);
    }

    /// <summary>The bar as its drawing shows it or turned; null for a way that no drawing has.</summary>
    /// <param name="orientation">The way to lie.</param>
    /// <exception cref="ArgumentNullException">The orientation is null.</exception>
    public override OrientedSection? Lying(Orientation orientation) =>
        Guard.NotNull(orientation, nameof(orientation)).Turn is { } turn ? TurnedBy(turn) : null;

    /// <summary>A drawing has no sizes that could differ: of one shape are drawn bars of one outline.</summary>
    internal override bool IsOfShape(BarStock other) => other is CustomBar && IsSameBar(other, Length.Zero);

    private protected override object Identity => (Name, Outline, _torsion is { } torsion ? Math.Round(torsion * TorsionSteps) : -1);

    private OrientedSection Oriented(Angle turn, Func<Edge, Edge> move, Outstand[]? outstands)
    {
        Edge[][] turned = Array.ConvertAll(Outline.Edges, loop => Array.ConvertAll(loop, edge => move(edge)));
        (double low, double high, double left, _) = Edge.Bounds(turned[0]);
        Edge[][] moved = Array.ConvertAll(turned, loop => Array.ConvertAll(loop, edge => edge.Moved(-low, -left)));
        return new(this, Orientation.TurnedBy(turn), moved, SectionFeatures.OfOutline(high - low, outstands));
    }
}
