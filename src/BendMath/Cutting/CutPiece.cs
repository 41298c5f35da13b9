using BendMath.Guards;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>Pieces of one length to cut. Immutable and thread-safe.</summary>
public sealed record CutPiece
{
    /// <summary>The largest number of pieces of one line.</summary>
    internal const int Most = 5000;

    /// <summary>Makes a line of a cut list.</summary>
    /// <param name="name">What the shop calls the piece; not empty.</param>
    /// <param name="length">Its length as it is cut, greater than zero.</param>
    /// <param name="quantity">How many, from 1 to 5,000.</param>
    /// <param name="kind">The bar it is cut from: pieces are cut from bars of the same kind only. Null where there is one kind and nobody
    /// says which.</param>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Length or quantity is outside its range.</exception>
    public CutPiece(string name, Length length, int quantity, BarKind? kind = null)
    {
        Name = Guard.Line(name, nameof(name));
        Meters = Guard.Positive(length, nameof(length));
        Quantity = quantity is >= 1 and <= Most ? quantity : throw Guard.Fault(nameof(quantity), quantity, "must be from 1 to 5,000");
        Kind = kind;
    }

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>Its length.</summary>
    public Length Length => Length.FromMeters(Meters);

    /// <summary>How many.</summary>
    public int Quantity { get; }

    /// <summary>The kind of bar it is cut from, or null.</summary>
    public BarKind? Kind { get; }

    internal double Meters { get; }

    /// <summary>Quantity, name and length.</summary>
    public override string ToString() => Invariant($"{Quantity} × {Name}, {Meters * 1e3:0.##} mm");
}
