using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Solid hexagon bar with sharp corners. Immutable and thread-safe.</summary>
public sealed class HexagonBar : BarStock
{
    private readonly double _acrossFlats;

    /// <summary>Makes the bar from its size across flats.</summary>
    /// <param name="acrossFlats">Distance between opposite faces, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is not positive and finite.</exception>
    public HexagonBar(Length acrossFlats)
    {
        _acrossFlats = Guard.Positive(acrossFlats, nameof(acrossFlats));
        double s = _acrossFlats;
        double a = s / Math.Sqrt(3);
        Corner[] flat = [new(0, a / 2), new(0, 1.5 * a), new(s / 2, 2 * a), new(s, 1.5 * a), new(s, a / 2), new(s / 2, 0)];
        OnFlat = new(this, Orientation.OnFlat, [CornerOutline.Of(flat)], new SectionFeatures(s), OpenShapeFormulas.Center(s, 2 * a));
        OnCorner =
            new(this, Orientation.OnCorner, [CornerOutline.Of(CornerOutline.Transposed(flat))], new SectionFeatures(2 * a),
                OpenShapeFormulas.Center(2 * a, s));
        Orientations = [OnFlat, OnCorner];
    }

    /// <summary>Distance between opposite faces.</summary>
    public Length AcrossFlats => Length.FromMeters(_acrossFlats);

    /// <summary>Distance between opposite corners.</summary>
    public Length AcrossCorners => Length.FromMeters(2 * _acrossFlats / Math.Sqrt(3));

    /// <summary>A face toward the center of the bend, flat on the die.</summary>
    public OrientedSection OnFlat { get; }

    /// <summary>A corner toward the center of the bend, as in a vee-grooved die.</summary>
    public OrientedSection OnCorner { get; }

    /// <inheritdoc/>
    public override string Shape => "hexagon";

    /// <inheritdoc/>
    public override string Name => Millimeters(_acrossFlats);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => [TorsionFormulas.Hexagon(_acrossFlats)];

    private protected override object Identity => Picometers.Of(_acrossFlats);

    internal override double? MainThickness => _acrossFlats;

    internal override BarStock? WithThickness(double meters) =>
        new HexagonBar(Length.FromMeters(meters));
}
