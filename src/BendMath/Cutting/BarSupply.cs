using BendMath.Guards;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>Bars of one length at hand or to be bought. Immutable and thread-safe.</summary>
public sealed record BarSupply
{
    /// <summary>Makes a supply.</summary>
    /// <param name="length">Usable length of a bar, without ends that are cut off square, greater than zero.</param>
    /// <param name="quantity">How many there are, from 1 to 5,000; null for as many as it takes.</param>
    /// <param name="kind">The kind of bar; see <see cref="CutPiece.Kind"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Length or quantity is outside its range.</exception>
    public BarSupply(Length length, int? quantity = null, BarKind? kind = null)
    {
        Meters = Guard.Positive(length, nameof(length));
        Quantity =
            quantity is null or (>= 1 and <= CutPiece.Most) ? quantity
                : throw Guard.Fault(nameof(quantity), quantity.Value, "must be from 1 to 5,000");
        Kind = kind;
    }

    /// <summary>Usable length of a bar.</summary>
    public Length Length => Length.FromMeters(Meters);

    /// <summary>How many there are, or null for as many as it takes.</summary>
    public int? Quantity { get; }

    /// <summary>The kind of bar, or null.</summary>
    public BarKind? Kind { get; }

    internal double Meters { get; }

    /// <summary>Quantity and length.</summary>
    public override string ToString() =>
        Invariant($"{(Quantity is { } count ? Counted.Text(count, "bar") : "bars")} of {Meters * 1e3:0.##} mm");
}
