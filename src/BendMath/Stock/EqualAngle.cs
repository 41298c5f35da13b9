using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Fillets of a rolled angle: the root radius in the re-entrant corner and the toe radius on the inner corner of both toes. Immutable and
/// thread-safe.
/// </summary>
public sealed record AngleFillets
{
    private AngleFillets(double root, double toe)
    {
        RootMeters = root;
        ToeMeters = toe;
    }

    /// <summary>Sharp corners everywhere.</summary>
    public static AngleFillets Sharp { get; } = new(0, 0);

    /// <summary>Radius in the re-entrant corner between the legs.</summary>
    public Length Root => Length.FromMeters(RootMeters);

    /// <summary>Radius on the inner corner of both toes.</summary>
    public Length Toe => Length.FromMeters(ToeMeters);

    internal double RootMeters { get; }

    internal double ToeMeters { get; }

    private (double, double) Identity => (Picometers.Of(RootMeters), Picometers.Of(ToeMeters));

    /// <summary>Fillets of given radii.</summary>
    /// <param name="root">Radius in the re-entrant corner, zero or more.</param>
    /// <param name="toe">Radius on the inner corner of both toes, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is negative or not finite.</exception>
    public static AngleFillets Of(Length root, Length toe) =>
        new(Guard.NonNegative(root, nameof(root)), Guard.NonNegative(toe, nameof(toe)));

    /// <summary>
    /// Fillets for an angle of the AISC tables, which print no radii: a rule fitted to their areas, centroids and second moments. It comes
    /// within 1.3 % of the areas and 1.9 % of the second moments.
    /// </summary>
    /// <param name="designDistance">The printed distance k for design, from the heel to the end of the root fillet; not less than the
    /// thickness.</param>
    /// <param name="thickness">Thickness of both legs, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive and finite, or the distance is less than the
    /// thickness.</exception>
    /// <remarks>
    /// Equation: root radius r₁ = 0.8·(k − t), toe radius r₂ = 0.3·(k − t); a radius below 0.001 mm is left out.
    /// Range: L-shapes of the AISC shapes database v16.0, 2 to 12 in.
    /// Source: <see cref="Sources.AiscFilletFit"/>
    /// </remarks>
    public static AngleFillets FromDesignDistance(Length designDistance, Length thickness)
    {
        double k = Guard.Positive(designDistance, nameof(designDistance));
        double t = Guard.Positive(thickness, nameof(thickness));
        return k >= t ? new(Radius(0.8 * (k - t)), Radius(0.3 * (k - t)))
            : throw Guard.Fault(nameof(designDistance), designDistance, $"must not be less than the thickness, {Guard.MillimetersText(t)}");
    }

    /// <summary>A radius that <see cref="Of"/> takes: none where it would be below the smallest length.</summary>
    private static double Radius(double meters) => meters < Guard.LeastMeters ? 0 : meters;

    /// <summary>The same radii, the toe no rounder than a thickness allows.</summary>
    internal AngleFillets Within(double thickness) => ToeMeters <= thickness ? this : new(RootMeters, thickness);

    /// <summary>Equal when all radii are, to a picometer.</summary>
    /// <param name="other">Other fillets.</param>
    public bool Equals(AngleFillets? other) => other is not null && Identity.Equals(other.Identity);

    /// <inheritdoc/>
    public override int GetHashCode() => Identity.GetHashCode();

    /// <summary>Both radii in millimeters.</summary>
    public override string ToString() => Invariant($"root {RootMeters * 1e3:0.###} mm, toe {ToeMeters * 1e3:0.###} mm");
}

/// <summary>Angle with two legs of the same length. Immutable and thread-safe.</summary>
public sealed class EqualAngle : BarStock
{
    private readonly double _leg;

    private readonly double _thickness;

    private OrientedSection? _flangeOut;

    private OrientedSection? _flangeIn;

    private OrientedSection? _heelIn;

    private OrientedSection? _heelOut;

    private IReadOnlyList<OrientedSection>? _orientations;

    /// <summary>Makes the angle from its dimensions.</summary>
    /// <param name="leg">Length of each leg, measured outside; greater than the thickness and both fillets together.</param>
    /// <param name="thickness">Thickness of both legs, greater than zero.</param>
    /// <param name="fillets">Root and toe radii; <see cref="AngleFillets.Sharp"/> for none. The toe radius may not exceed the
    /// thickness.</param>
    /// <exception cref="ArgumentNullException">The fillets are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public EqualAngle(Length leg, Length thickness, AngleFillets fillets)
    {
        Fillets = Guard.NotNull(fillets, nameof(fillets));
        _leg = Guard.Positive(leg, nameof(leg));
        _thickness = Guard.Positive(thickness, nameof(thickness));
        AngleOutline.Check(leg, _leg, nameof(leg), _thickness, fillets);
    }

    /// <summary>Length of each leg.</summary>
    public Length Leg => Length.FromMeters(_leg);

    /// <summary>Thickness of both legs.</summary>
    public Length Thickness => Length.FromMeters(_thickness);

    /// <summary>Root and toe radii.</summary>
    public AngleFillets Fillets { get; }

    /// <summary>
    /// Flange out (leg out): one leg stands outward in the plane of the ring, the other lies along the axis at the inside face.
    /// </summary>
    public OrientedSection FlangeOut =>
        _flangeOut
            ?? Once.Keep(ref _flangeOut,
                AngleOutline.Oriented(this, Orientation.FlangeOut, _leg, _leg, _thickness, Fillets, flangeOut: true));

    /// <summary>
    /// Flange in (leg in): one leg stands inward in the plane of the ring, the other lies along the axis at the outside face.
    /// </summary>
    public OrientedSection FlangeIn =>
        _flangeIn
            ?? Once.Keep(ref _flangeIn,
                AngleOutline.Oriented(this, Orientation.FlangeIn, _leg, _leg, _thickness, Fillets, flangeOut: false));

    /// <summary>
    /// Heel in, on the bisector: the heel points to the center of the bend, as in a vee-grooved die, and both legs stand outward at 45°.
    /// </summary>
    public OrientedSection HeelIn =>
        _heelIn ?? Once.Keep(ref _heelIn, AngleOutline.OnBisector(this, _leg, _thickness, Fillets, heelIn: true));

    /// <summary>Heel out, on the bisector: the heel points away from the center of the bend and both legs stand inward at 45°.</summary>
    public OrientedSection HeelOut =>
        _heelOut ?? Once.Keep(ref _heelOut, AngleOutline.OnBisector(this, _leg, _thickness, Fillets, heelIn: false));

    /// <inheritdoc/>
    public override string Shape => "angle";

    /// <inheritdoc/>
    public override string Name => Millimeters(_leg, _leg, _thickness);

    /// <inheritdoc/>
    public override string Description => $"{Name}, {Fillets}";

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations =>
        _orientations ?? Once.Keep(ref _orientations, Array.AsReadOnly(new[] { FlangeOut, FlangeIn, HeelIn, HeelOut }));

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => TorsionFormulas.Angle(_leg, _leg, _thickness, Fillets);

    private protected override (double Value, SectionFormula Formula)? Warping =>
        (OpenShapeFormulas.AngleWarping(_leg, _leg, _thickness), OpenShapeFormulas.AngleWarpingFormula);

    /// <summary>Distance from the heel face to the fiber that the handbook rule for angle rings takes to keep its length.</summary>
    /// <remarks>
    /// Equation: n = leg/6 + t/2, measured from the heel face toward the toe of the radial leg.
    /// Range: the handbook prints constants for equal angles of 2 to 8 in legs, 1/4 to 1 in thick, and gives no range of diameters; the
    /// closed form is inferred from the constants and reproduces them to 0.002 in. It knows neither material nor radius.
    /// Source: <see cref="Sources.MachinerysHandbookAngleRings"/>
    /// </remarks>
    public Length HandbookFiberFromHeel => Length.FromMeters(HandbookFiber(_leg, _thickness));

    /// <summary>
    /// Length of straight angle for a full ring by the handbook rule; that of the mechanics, <c>FinishedRing.BlankLengthFor</c>, differs
    /// from it by several percent of a small ring.
    /// </summary>
    /// <param name="heelDiameter">Diameter of the heel face: the inside face with the flange out, the outside face with the flange in.
    /// Greater than zero; with the flange in greater than two legs.</param>
    /// <param name="flange">Which way the radial leg stands.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range, or the direction is not a defined
    /// value.</exception>
    /// <remarks>
    /// Equation: L = π·D ± π·(leg/3 + t), plus with the flange out, minus with the flange in.
    /// Range: as <see cref="HandbookFiberFromHeel"/>; a full ring, without ends to trim.
    /// Source: <see cref="Sources.MachinerysHandbookAngleRings"/>
    /// </remarks>
    public Length HandbookBlankLength(Length heelDiameter, FlangeDirection flange)
    {
        double diameter = Guard.Positive(heelDiameter, nameof(heelDiameter));
        double fiber = HandbookFiber(_leg, _thickness);
        return Guard.Defined(flange, nameof(flange)) == FlangeDirection.Out ? Length.FromMeters(Math.PI * (diameter + 2 * fiber))
            : diameter > 2 * _leg ? Length.FromMeters(Math.PI * (diameter - 2 * fiber))
            : throw Guard.Fault(nameof(heelDiameter), heelDiameter,
                $"must with the flange in be greater than two legs, {Guard.MillimetersText(2 * _leg)}");
    }

    internal static double HandbookFiber(double leg, double thickness) => leg / 6 + thickness / 2;

    private protected override object Identity => (Picometers.Of(_leg), Picometers.Of(_thickness), Fillets);

    internal override double? MainThickness => _thickness;

    internal override BarStock? WithThickness(double meters) =>
        new EqualAngle(Leg, Length.FromMeters(meters), Fillets.Within(meters));
}
