using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Flat bar, its four corners sharp or rounded. Immutable and thread-safe.</summary>
public sealed class FlatBar : BarStock
{
    private readonly double _width;

    private readonly double _thickness;

    private readonly double _cornerRadius;

    /// <summary>Makes a flat with sharp corners.</summary>
    /// <param name="width">The larger dimension, greater than zero.</param>
    /// <param name="thickness">The smaller dimension, greater than zero and not greater than the width.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not positive and finite, or the thickness exceeds the
    /// width.</exception>
    public FlatBar(Length width, Length thickness)
        : this(width, thickness, Length.Zero)
    {
    }

    /// <summary>Makes a flat with rounded corners; half the thickness makes round edges.</summary>
    /// <param name="width">The larger dimension, greater than zero.</param>
    /// <param name="thickness">The smaller dimension, greater than zero and not greater than the width.</param>
    /// <param name="cornerRadius">Radius of the corners, zero or more and not greater than half the thickness.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public FlatBar(Length width, Length thickness, Length cornerRadius)
    {
        _width = Guard.Positive(width, nameof(width));
        _thickness = Guard.Positive(thickness, nameof(thickness));
        _cornerRadius = Guard.NonNegative(cornerRadius, nameof(cornerRadius));
        if (_thickness > _width)
        {
            throw Guard.Fault(nameof(thickness), thickness, $"must not be greater than the width, {Guard.MillimetersText(_width)}");
        }

        if (2 * _cornerRadius > _thickness)
        {
            throw Guard.Fault(nameof(cornerRadius), cornerRadius,
                $"must not be greater than half the thickness, {Guard.MillimetersText(_thickness / 2)}");
        }

        EasyWay = Oriented(Orientation.EasyWay, _thickness, _width, easyWay: true);
        HardWay = Oriented(Orientation.HardWay, _width, _thickness, easyWay: false);
        Orientations = [EasyWay, HardWay];
    }

    /// <summary>The larger dimension.</summary>
    public Length Width => Length.FromMeters(_width);

    /// <summary>The smaller dimension.</summary>
    public Length Thickness => Length.FromMeters(_thickness);

    /// <summary>Radius of the corners; zero for sharp ones, half the thickness for round edges.</summary>
    public Length CornerRadius => Length.FromMeters(_cornerRadius);

    /// <summary>Easy way: the thickness lies in the plane of the ring, like a barrel hoop.</summary>
    public OrientedSection EasyWay { get; }

    /// <summary>Hard way (on edge): the width lies in the plane of the ring, like a washer.</summary>
    public OrientedSection HardWay { get; }

    /// <inheritdoc/>
    public override string Shape => "flat";

    /// <inheritdoc/>
    public override string Name => Millimeters(_width, _thickness) + RoundedText(_cornerRadius);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants =>
        _cornerRadius == 0 ? [TorsionFormulas.Rectangle(_width, _thickness)] : [];

    private protected override object Identity => (Picometers.Of(_width), Picometers.Of(_thickness), Picometers.Of(_cornerRadius));

    internal override double? MainThickness => _thickness;

    internal override BarStock? WithThickness(double meters) =>
        meters <= _width && meters >= 2 * _cornerRadius ? new FlatBar(Width, Length.FromMeters(meters), CornerRadius) : null;

    private OrientedSection Oriented(Orientation orientation, double depth, double width, bool easyWay) => new(
        this, orientation, [CornerOutline.Rectangle(depth, width, _cornerRadius)],
            new SectionFeatures(depth, flatEasyWay: easyWay, flatHardWay: !easyWay), OpenShapeFormulas.Center(depth, width));
}
