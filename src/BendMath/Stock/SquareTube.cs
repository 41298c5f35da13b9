using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Square tube of even wall with a face inside. Immutable and thread-safe.</summary>
public sealed class SquareTube : BarStock
{
    private readonly double _side;

    private readonly double _wall;

    /// <summary>Makes the tube from its dimensions.</summary>
    /// <param name="side">Outside dimension, greater than zero.</param>
    /// <param name="wall">Wall thickness, greater than zero and less than half the side.</param>
    /// <param name="corners">Corner radii, such as <see cref="CornerRadii.ColdFormed(Length)"/>; <see cref="CornerRadii.Sharp"/> for none.
    /// They must fit and leave a wall in the corners.</param>
    /// <exception cref="ArgumentNullException">The corners are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public SquareTube(Length side, Length wall, CornerRadii corners)
    {
        Corners = Guard.NotNull(corners, nameof(corners));
        _side = Guard.Positive(side, nameof(side));
        _wall = Guard.Positive(wall, nameof(wall));
        BoxOutline.Check(_side, nameof(side), wall, _wall, corners);
        Section = BoxOutline.Oriented(this, Orientation.Usual, _side, _side, _wall, corners);
        Orientations = [Section];
    }

    /// <summary>Outside dimension.</summary>
    public Length Side => Length.FromMeters(_side);

    /// <summary>Wall thickness.</summary>
    public Length Wall => Length.FromMeters(_wall);

    /// <summary>Corner radii.</summary>
    public CornerRadii Corners { get; }

    /// <summary>The section with a face toward the center of the bend.</summary>
    public OrientedSection Section { get; }

    /// <inheritdoc/>
    public override string Shape => "square tube";

    /// <inheritdoc/>
    public override string Name => Millimeters(_side, _wall);

    /// <inheritdoc/>
    public override string Description => $"{Name}, {Corners}";

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => TorsionFormulas.Box(_side, _side, _wall, Corners);

    private protected override object Identity => (Picometers.Of(_side), Picometers.Of(_wall), Corners);

    internal override double? MainThickness => _wall;

    internal override BarStock? WithThickness(double meters) =>
        new SquareTube(Side, Length.FromMeters(meters), Corners.Times(meters / _wall));
}
