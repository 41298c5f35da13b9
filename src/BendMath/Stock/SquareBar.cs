using BendMath.Stock;
using UnitsNet;

namespace BendMath;

/// <summary>Square bar with sharp corners, bent with a face inside. Immutable and thread-safe.</summary>
public sealed record SquareBar : BarStock
{
    private readonly double _side;

    /// <summary>Makes the bar from its side.</summary>
    /// <param name="side">Side of the square, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The side is not positive and finite.</exception>
    public SquareBar(Length side)
    {
        _side = Guard.Positive(side, nameof(side));
        Section = new(Name, string.Empty, [CornerOutline.Rectangle(_side, _side)], _side, new SectionFeatures(_side));
        Orientations = [Section];
    }

    /// <summary>Side of the square.</summary>
    public Length Side => Length.FromMeters(_side);

    /// <summary>The section with a face toward the center of the bend.</summary>
    public OrientedSection Section { get; }

    /// <inheritdoc/>
    public override string Name => Millimeters("square", _side);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <summary>Equal when the sides are equal.</summary>
    /// <param name="other">Another bar.</param>
    public bool Equals(SquareBar? other) => other is not null && _side == other._side;

    /// <inheritdoc/>
    public override int GetHashCode() => _side.GetHashCode();
}
