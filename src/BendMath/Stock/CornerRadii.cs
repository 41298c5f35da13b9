using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>Corner radii of a square or rectangular tube, the same at all four corners. Immutable and thread-safe.</summary>
public sealed record CornerRadii
{
    private CornerRadii(double outside, double inside)
    {
        OutsideMeters = outside;
        InsideMeters = inside;
    }

    /// <summary>Sharp corners outside and inside.</summary>
    public static CornerRadii Sharp { get; } = new(0, 0);

    /// <summary>Radius of the outside corners.</summary>
    public Length Outside => Length.FromMeters(OutsideMeters);

    /// <summary>Radius of the inside corners.</summary>
    public Length Inside => Length.FromMeters(InsideMeters);

    internal double OutsideMeters { get; }

    internal double InsideMeters { get; }

    private (double, double) Identity => (Picometers.Of(OutsideMeters), Picometers.Of(InsideMeters));

    /// <summary>Corners of given radii.</summary>
    /// <param name="outside">Radius of the outside corners, zero or more.</param>
    /// <param name="inside">Radius of the inside corners, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is negative or not finite.</exception>
    public static CornerRadii Of(Length outside, Length inside) =>
        new(Guard.NonNegative(outside, nameof(outside)), Guard.NonNegative(inside, nameof(inside)));

    /// <summary>
    /// Corners that EN 10219-2 takes for the properties of cold-formed tube; those of a real tube may lie anywhere in the tolerance of the
    /// standard.
    /// </summary>
    /// <param name="wall">Wall thickness, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wall is not positive and finite.</exception>
    /// <remarks>
    /// Equation: outside 2·t and inside t for t ≤ 6 mm; 2.5·t and 1.5·t for 6 mm &lt; t ≤ 10 mm; 3·t and 2·t above.
    /// Range: cold-formed square and rectangular tube.
    /// Source: <see cref="Sources.En10219"/>
    /// </remarks>
    public static CornerRadii ColdFormed(Length wall)
    {
        double t = Guard.Positive(wall, nameof(wall));
        double outside = t <= 0.006 * (1 + 1e-12) ? 2 : t <= 0.010 * (1 + 1e-12) ? 2.5 : 3;
        return new(outside * t, (outside - 1) * t);
    }

    /// <summary>Corners that EN 10210-2 takes for the properties of hot-finished tube.</summary>
    /// <param name="wall">Wall thickness, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wall is not positive and finite.</exception>
    /// <remarks>
    /// Equation: outside 1.5·t, inside t.
    /// Range: hot-finished square and rectangular tube.
    /// Source: <see cref="Sources.En10210"/>
    /// </remarks>
    public static CornerRadii HotFinished(Length wall)
    {
        double t = Guard.Positive(wall, nameof(wall));
        return new(1.5 * t, t);
    }

    /// <summary>
    /// Corners that the AISC tables take for the properties of hollow structural sections (HSS), from the wall the tables calculate with.
    /// </summary>
    /// <param name="designWall">Design wall thickness, greater than zero: 0.93 of the nominal wall for A500.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wall is not positive and finite.</exception>
    /// <remarks>
    /// Equation: outside 2·t, inside t.
    /// Range: hollow structural sections of the AISC tables.
    /// Source: <see cref="Sources.AiscShapes"/>
    /// </remarks>
    public static CornerRadii Hss(Length designWall)
    {
        double t = Guard.Positive(designWall, nameof(designWall));
        return new(2 * t, t);
    }

    internal CornerRadii Times(double factor) => new(factor * OutsideMeters, factor * InsideMeters);

    /// <summary>Equal when all radii are, to a picometer.</summary>
    /// <param name="other">Other corners.</param>
    public bool Equals(CornerRadii? other) => other is not null && Identity.Equals(other.Identity);

    /// <inheritdoc/>
    public override int GetHashCode() => Identity.GetHashCode();

    /// <summary>Both radii in millimeters.</summary>
    public override string ToString() => Invariant($"corners {OutsideMeters * 1e3:0.###} mm outside, {InsideMeters * 1e3:0.###} mm inside");
}
