using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Square bar, its four corners sharp or rounded. Immutable and thread-safe.</summary>
public sealed class SquareBar : BarStock
{
    private readonly double _side;

    private readonly double _cornerRadius;

    /// <summary>Makes a bar with sharp corners.</summary>
    /// <param name="side">Side of the square, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The side is not positive and finite.</exception>
    public SquareBar(Length side)
        : this(side, Length.Zero)
    {
    }

    /// <summary>Makes a bar with rounded corners.</summary>
    /// <param name="side">Side of the square, greater than zero.</param>
    /// <param name="cornerRadius">Radius of the corners, zero or more and not greater than half the side.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public SquareBar(Length side, Length cornerRadius)
    {
        _side = Guard.Positive(side, nameof(side));
        _cornerRadius = Guard.NonNegative(cornerRadius, nameof(cornerRadius));
        if (2 * _cornerRadius > _side)
        {
            throw Guard.Fault(nameof(cornerRadius), cornerRadius,
                $"must not be greater than half the side, {Guard.MillimetersText(_side / 2)}");
        }

        Section =
            new(this, Orientation.Usual, [CornerOutline.Rectangle(_side, _side, _cornerRadius)], new SectionFeatures(_side),
                OpenShapeFormulas.Center(_side, _side));
        OnDiagonal = Diagonal();
        Orientations = [Section, OnDiagonal];
    }

    /// <summary>Side of the square.</summary>
    public Length Side => Length.FromMeters(_side);

    /// <summary>Radius of the corners; zero for sharp ones.</summary>
    public Length CornerRadius => Length.FromMeters(_cornerRadius);

    /// <summary>The section with a face toward the center of the bend.</summary>
    public OrientedSection Section { get; }

    /// <summary>On the diagonal: a corner toward the center of the bend, as in a vee-grooved die.</summary>
    public OrientedSection OnDiagonal { get; }

    /// <inheritdoc/>
    public override string Shape => "square";

    /// <inheritdoc/>
    public override string Name => Millimeters(_side) + RoundedText(_cornerRadius);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => _cornerRadius == 0 ? [TorsionFormulas.Rectangle(_side, _side)] : [];

    private protected override object Identity => (Picometers.Of(_side), Picometers.Of(_cornerRadius));

    internal override double? MainThickness => _side;

    internal override BarStock? WithThickness(double meters) =>
        meters >= 2 * _cornerRadius ? new SquareBar(Length.FromMeters(meters), CornerRadius) : null;

    private OrientedSection Diagonal()
    {
        double lost = _cornerRadius * (Math.Sqrt(2) - 1);
        double extent = _side * Math.Sqrt(2) - 2 * lost;
        Corner[] square =
            [new(0, 0, _cornerRadius), new(0, _side, _cornerRadius), new(_side, _side, _cornerRadius), new(_side, 0, _cornerRadius)];
        return new(
            this, Orientation.OnDiagonal, [CornerOutline.Of(CornerOutline.OnBisector(square, -lost, extent / 2))],
                new SectionFeatures(extent), OpenShapeFormulas.Center(extent, extent));
    }
}
