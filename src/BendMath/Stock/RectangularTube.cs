using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Rectangular tube of even wall. Immutable and thread-safe.</summary>
public sealed class RectangularTube : BarStock
{
    private readonly double _height;

    private readonly double _width;

    private readonly double _wall;

    /// <summary>Makes the tube from its dimensions.</summary>
    /// <param name="height">The larger outside dimension, greater than zero.</param>
    /// <param name="width">The smaller outside dimension, greater than zero and not greater than the height.</param>
    /// <param name="wall">Wall thickness, greater than zero and less than half the width.</param>
    /// <param name="corners">Corner radii, such as <see cref="CornerRadii.ColdFormed(Length)"/>; <see cref="CornerRadii.Sharp"/> for none.
    /// They must fit and leave a wall in the corners.</param>
    /// <exception cref="ArgumentNullException">The corners are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public RectangularTube(Length height, Length width, Length wall, CornerRadii corners)
    {
        Corners = Guard.NotNull(corners, nameof(corners));
        _height = Guard.Positive(height, nameof(height));
        _width = Guard.Positive(width, nameof(width));
        _wall = Guard.Positive(wall, nameof(wall));
        if (_width > _height)
        {
            throw Guard.Fault(nameof(width), width, $"must not be greater than the height, {Guard.MillimetersText(_height)}");
        }

        BoxOutline.Check(_width, nameof(width), wall, _wall, corners);
        EasyWay = BoxOutline.Oriented(this, Orientation.EasyWay, _width, _height, _wall, corners);
        HardWay = BoxOutline.Oriented(this, Orientation.HardWay, _height, _width, _wall, corners);
        Orientations = [EasyWay, HardWay];
    }

    /// <summary>The larger outside dimension.</summary>
    public Length Height => Length.FromMeters(_height);

    /// <summary>The smaller outside dimension.</summary>
    public Length Width => Length.FromMeters(_width);

    /// <summary>Wall thickness.</summary>
    public Length Wall => Length.FromMeters(_wall);

    /// <summary>Corner radii.</summary>
    public CornerRadii Corners { get; }

    /// <summary>Easy way: the smaller dimension lies in the plane of the ring.</summary>
    public OrientedSection EasyWay { get; }

    /// <summary>Hard way: the larger dimension lies in the plane of the ring.</summary>
    public OrientedSection HardWay { get; }

    /// <inheritdoc/>
    public override string Shape => "rectangular tube";

    /// <inheritdoc/>
    public override string Name => Millimeters(_height, _width, _wall);

    /// <inheritdoc/>
    public override string Description => $"{Name}, {Corners}";

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => TorsionFormulas.Box(_height, _width, _wall, Corners);

    private protected override object Identity => (Picometers.Of(_height), Picometers.Of(_width), Picometers.Of(_wall), Corners);

    internal override double? MainThickness => _wall;

    internal override BarStock? WithThickness(double meters) =>
        new RectangularTube(Height, Width, Length.FromMeters(meters), Corners.Times(meters / _wall));
}
