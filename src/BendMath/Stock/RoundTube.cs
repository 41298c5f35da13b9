using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Round tube or pipe with a concentric bore. Immutable and thread-safe.</summary>
public sealed class RoundTube : BarStock
{
    private readonly double _diameter;

    private readonly double _wall;

    /// <summary>Makes the tube from its outside diameter and wall.</summary>
    /// <param name="outsideDiameter">Greater than zero.</param>
    /// <param name="wall">Wall thickness, greater than zero and less than half the outside diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not positive and finite, or the wall leaves no bore.</exception>
    public RoundTube(Length outsideDiameter, Length wall)
    {
        _diameter = Guard.Positive(outsideDiameter, nameof(outsideDiameter));
        _wall = Guard.Positive(wall, nameof(wall));
        double radius = _diameter / 2;
        if (_wall >= radius)
        {
            throw Guard.Fault(nameof(wall), wall, $"must be smaller than half the outside diameter, {Guard.MillimetersText(radius)}");
        }

        Section = new(
            this,
            Orientation.Usual,
            [CornerOutline.Circle(radius, radius), CornerOutline.Circle(radius, radius - _wall, hole: true)],
            new SectionFeatures(_diameter, wall: _wall, diameter: _diameter),
            OpenShapeFormulas.Center(_diameter, _diameter));
        Orientations = [Section];
    }

    /// <summary>Outside diameter of the tube.</summary>
    public Length OutsideDiameter => Length.FromMeters(_diameter);

    /// <summary>Wall thickness.</summary>
    public Length Wall => Length.FromMeters(_wall);

    /// <summary>The section; a round tube lies one way only.</summary>
    public OrientedSection Section { get; }

    /// <inheritdoc/>
    public override string Shape => "round tube";

    /// <inheritdoc/>
    public override string Name => Millimeters(_diameter, _wall);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => [TorsionFormulas.Circle(_diameter, _diameter - 2 * _wall)];

    private protected override object Identity => (Picometers.Of(_diameter), Picometers.Of(_wall));

    internal override double? MainThickness => _wall;

    internal override BarStock? WithThickness(double meters) =>
        meters < _diameter / 2 ? new RoundTube(OutsideDiameter, Length.FromMeters(meters)) : null;
}
