using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Angle with legs of different length and one thickness. Legs of the same length are allowed, as equal sides are of a flat or a
/// rectangular tube; an <see cref="EqualAngle"/> also lies on its bisector. Immutable and thread-safe.
/// </summary>
public sealed class UnequalAngle : BarStock
{
    private readonly double _long;

    private readonly double _short;

    private readonly double _thickness;

    private readonly OrientedSection[] _orientations;

    /// <summary>Makes the angle from its dimensions.</summary>
    /// <param name="longLeg">Length of the longer leg, measured outside.</param>
    /// <param name="shortLeg">Length of the shorter leg, measured outside; not longer than the other, greater than the thickness and both
    /// fillets together.</param>
    /// <param name="thickness">Thickness of both legs, greater than zero.</param>
    /// <param name="fillets">Root and toe radii; <see cref="AngleFillets.Sharp"/> for none. The toe radius may not exceed the
    /// thickness.</param>
    /// <exception cref="ArgumentNullException">The fillets are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public UnequalAngle(Length longLeg, Length shortLeg, Length thickness, AngleFillets fillets)
    {
        Fillets = Guard.NotNull(fillets, nameof(fillets));
        _long = Guard.Positive(longLeg, nameof(longLeg));
        _short = Guard.Positive(shortLeg, nameof(shortLeg));
        _thickness = Guard.Positive(thickness, nameof(thickness));
        if (_short > _long)
        {
            throw Guard.Fault(nameof(shortLeg), shortLeg, $"must not be longer than the long leg, {Guard.MillimetersText(_long)}");
        }

        AngleOutline.Check(shortLeg, _short, nameof(shortLeg), _thickness, fillets);
        _orientations =
        [
            AngleOutline.Oriented(this, Orientation.LongLegFlangeOut, _long, _short, _thickness, fillets, flangeOut: true),
            AngleOutline.Oriented(this, Orientation.LongLegFlangeIn, _long, _short, _thickness, fillets, flangeOut: false),
            AngleOutline.Oriented(this, Orientation.ShortLegFlangeOut, _short, _long, _thickness, fillets, flangeOut: true),
            AngleOutline.Oriented(this, Orientation.ShortLegFlangeIn, _short, _long, _thickness, fillets, flangeOut: false),
        ];
        Orientations = Array.AsReadOnly(_orientations);
    }

    /// <summary>Length of the longer leg.</summary>
    public Length LongLeg => Length.FromMeters(_long);

    /// <summary>Length of the shorter leg.</summary>
    public Length ShortLeg => Length.FromMeters(_short);

    /// <summary>Thickness of both legs.</summary>
    public Length Thickness => Length.FromMeters(_thickness);

    /// <summary>Root and toe radii.</summary>
    public AngleFillets Fillets { get; }

    /// <inheritdoc/>
    public override string Shape => "angle";

    /// <inheritdoc/>
    public override string Name => Millimeters(_long, _short, _thickness);

    /// <inheritdoc/>
    public override string Description => $"{Name}, {Fillets}";

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <summary>The long leg stands outward (leg out), the short one lies along the axis at the inside face.</summary>
    public OrientedSection LongLegOut => _orientations[0];

    /// <summary>The long leg stands inward (leg in), the short one lies along the axis at the outside face.</summary>
    public OrientedSection LongLegIn => _orientations[1];

    /// <summary>The short leg stands outward (leg out), the long one lies along the axis at the inside face.</summary>
    public OrientedSection ShortLegOut => _orientations[2];

    /// <summary>The short leg stands inward (leg in), the long one lies along the axis at the outside face.</summary>
    public OrientedSection ShortLegIn => _orientations[3];

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => TorsionFormulas.Angle(_long, _short, _thickness, Fillets);

    private protected override (double Value, SectionFormula Formula)? Warping =>
        (OpenShapeFormulas.AngleWarping(_long, _short, _thickness), OpenShapeFormulas.AngleWarpingFormula);

    private protected override object Identity => (Picometers.Of(_long), Picometers.Of(_short), Picometers.Of(_thickness), Fillets);

    internal override double? MainThickness => _thickness;

    internal override BarStock? WithThickness(double meters) =>
        new UnequalAngle(LongLeg, ShortLeg, Length.FromMeters(meters), Fillets.Within(meters));
}
