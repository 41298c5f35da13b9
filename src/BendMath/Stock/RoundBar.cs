using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Solid round bar. Immutable and thread-safe.</summary>
public sealed class RoundBar : BarStock
{
    private readonly double _diameter;

    /// <summary>Makes the bar from its diameter.</summary>
    /// <param name="diameter">Greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not positive and finite.</exception>
    public RoundBar(Length diameter)
    {
        _diameter = Guard.Positive(diameter, nameof(diameter));
        Section =
            new(this, Orientation.Usual, [CornerOutline.Circle(_diameter / 2, _diameter / 2)], new SectionFeatures(_diameter),
                OpenShapeFormulas.Center(_diameter, _diameter));
        Orientations = [Section];
    }

    /// <summary>Diameter of the bar.</summary>
    public Length Diameter => Length.FromMeters(_diameter);

    /// <summary>The section; a round bar lies one way only.</summary>
    public OrientedSection Section { get; }

    /// <inheritdoc/>
    public override string Shape => "round";

    /// <inheritdoc/>
    public override string Name => Millimeters(_diameter);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => [TorsionFormulas.Circle(_diameter, 0)];

    private protected override object Identity => Picometers.Of(_diameter);

    internal override double? MainThickness => _diameter;

    internal override BarStock? WithThickness(double meters) =>
        new RoundBar(Length.FromMeters(meters));
}
