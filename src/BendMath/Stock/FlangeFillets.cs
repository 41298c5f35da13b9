using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Radii of a channel or tee. Root: the re-entrant corners between web and flange. Toe: the inner corner of each flange toe. Outer: of a
/// channel the two outside corners between web and flange, of a tee both corners at the end of the stem. Immutable and thread-safe.
/// </summary>
public sealed record FlangeFillets
{
    private FlangeFillets(double root, double toe, double outer)
    {
        RootMeters = root;
        ToeMeters = toe;
        OuterMeters = outer;
    }

    /// <summary>Sharp corners everywhere.</summary>
    public static FlangeFillets Sharp { get; } = new(0, 0, 0);

    /// <summary>Radius in the re-entrant corners between web and flange.</summary>
    public Length Root => Length.FromMeters(RootMeters);

    /// <summary>Radius on the inner corner of each flange toe.</summary>
    public Length Toe => Length.FromMeters(ToeMeters);

    /// <summary>Radius on the outside corners of a channel, or on both corners at the end of the stem of a tee.</summary>
    public Length Outer => Length.FromMeters(OuterMeters);

    internal double RootMeters { get; }

    internal double ToeMeters { get; }

    internal double OuterMeters { get; }

    private (double, double, double) Identity => (Picometers.Of(RootMeters), Picometers.Of(ToeMeters), Picometers.Of(OuterMeters));

    /// <summary>Root fillets only, as of parallel-flange channels and of tees cut from beams.</summary>
    /// <param name="root">Radius in the re-entrant corners, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is negative or not finite.</exception>
    public static FlangeFillets OfRoot(Length root) => Of(root, Length.Zero, Length.Zero);

    /// <summary>Fillets of given radii.</summary>
    /// <param name="root">Radius in the re-entrant corners, zero or more.</param>
    /// <param name="toe">Radius on the inner corner of each flange toe, zero or more.</param>
    /// <param name="outer">Radius on the outside corners of a channel or at the end of the stem of a tee, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is negative or not finite.</exception>
    public static FlangeFillets Of(Length root, Length toe, Length outer) => new(
        Guard.NonNegative(root, nameof(root)), Guard.NonNegative(toe, nameof(toe)), Guard.NonNegative(outer, nameof(outer)));

    /// <summary>Equal when all radii are, to a picometer.</summary>
    /// <param name="other">Other fillets.</param>
    public bool Equals(FlangeFillets? other) => other is not null && Identity.Equals(other.Identity);

    /// <inheritdoc/>
    public override int GetHashCode() => Identity.GetHashCode();

    /// <summary>All radii in millimeters.</summary>
    public override string ToString() =>
        Invariant($"root {RootMeters * 1e3:0.###} mm, toe {ToeMeters * 1e3:0.###} mm, outer {OuterMeters * 1e3:0.###} mm");
}
