using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath.Sections.Outlines;

/// <summary>
/// A point of an outline in a plane with x to the right and y up. In the outline of an <see cref="OrientedSection"/> x is the axial
/// coordinate z and y the radial coordinate from the inside face outward; a drawing has axes of its own. Immutable and thread-safe.
/// </summary>
public sealed record OutlinePoint
{
    /// <summary>Makes a point.</summary>
    /// <param name="x">Coordinate to the right, finite.</param>
    /// <param name="y">Coordinate upward, finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite.</exception>
    public OutlinePoint(Length x, Length y)
        : this(Guard.Finite(x, nameof(x)), Guard.Finite(y, nameof(y)))
    {
    }

    internal OutlinePoint(double x, double y)
    {
        Right = x;
        Up = y;
    }

    /// <summary>Coordinate to the right.</summary>
    public Length X => Length.FromMeters(Right);

    /// <summary>Coordinate upward.</summary>
    public Length Y => Length.FromMeters(Up);

    internal double Right { get; }

    internal double Up { get; }

    private (double, double) Identity => (Picometers.Of(Right), Picometers.Of(Up));

    /// <summary>Equal when both coordinates are, to a picometer.</summary>
    /// <param name="other">Another point.</param>
    public bool Equals(OutlinePoint? other) => other is not null && Identity.Equals(other.Identity);

    /// <inheritdoc/>
    public override int GetHashCode() => Identity.GetHashCode();

    /// <summary>Both coordinates in millimeters.</summary>
    public override string ToString() => Invariant($"x {Right * 1e3:0.######} mm, y {Up * 1e3:0.######} mm");
}
