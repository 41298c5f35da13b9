using BendMath.Stock;
using UnitsNet;

namespace BendMath;

/// <summary>Solid round bar. Immutable and thread-safe.</summary>
public sealed record RoundBar : BarStock
{
    private readonly double _diameter;

    /// <summary>Makes the bar from its diameter.</summary>
    /// <param name="diameter">Greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not positive and finite.</exception>
    public RoundBar(Length diameter)
    {
        _diameter = Guard.Positive(diameter, nameof(diameter));
        Section = new(this, string.Empty, [CornerOutline.Circle(_diameter / 2, _diameter / 2)], new SectionFeatures(_diameter), OpenShapeFormulas.Center(_diameter, _diameter));
        Orientations = [Section];
    }

    /// <summary>Diameter of the bar.</summary>
    public Length Diameter => Length.FromMeters(_diameter);

    /// <summary>The section; a round bar lies one way only.</summary>
    public OrientedSection Section { get; }

    /// <inheritdoc/>
    public override string Name => Millimeters("round", _diameter);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => [TorsionFormulas.Circle(_diameter, 0)];

    /// <summary>Equal when the diameters are equal.</summary>
    /// <param name="other">Another bar.</param>
    public bool Equals(RoundBar? other) => other is not null && _diameter == other._diameter;

    /// <inheritdoc/>
    public override int GetHashCode() => _diameter.GetHashCode();

    internal override double? MainThickness => _diameter;

    internal override BarStock? WithThickness(double meters) =>
        new RoundBar(Length.FromMeters(meters));
}
