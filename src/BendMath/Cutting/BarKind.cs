using BendMath.Guards;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>What pieces are cut from: a bar and its metal. Immutable and thread-safe.</summary>
public sealed record BarKind
{
    /// <summary>Makes a kind of bar.</summary>
    /// <param name="stock">The bar.</param>
    /// <param name="material">Its metal.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public BarKind(BarStock stock, BarMaterial material)
    {
        Stock = Guard.NotNull(stock, nameof(stock));
        Material = Guard.NotNull(material, nameof(material));
    }

    /// <summary>The bar.</summary>
    public BarStock Stock { get; }

    /// <summary>Its metal.</summary>
    public BarMaterial Material { get; }

    /// <summary>Bar and metal with all that tells kinds of one name apart: fillets, corners and outline, the law of the metal.</summary>
    public string Description => $"{Stock.Description}, {Material}";

    /// <summary>
    /// Whether pieces of both kinds come from the same bars: the same bar but for rounding, whatever its name, of an equal metal. Another
    /// yield is another delivery.
    /// </summary>
    /// <param name="other">The kind to compare with.</param>
    /// <exception cref="ArgumentNullException">The kind is null.</exception>
    public bool IsSame(BarKind other) =>
        Material == Guard.NotNull(other, nameof(other)).Material && Stock.IsSameBar(other.Stock, Length.Zero);

    /// <summary>Bar and metal by name.</summary>
    public override string ToString() => $"{Stock.Name}, {Material.Name}";

    /// <summary>Whether pieces without a kind, or of the same kind, come from the same bars.</summary>
    internal static bool AreSame(BarKind? one, BarKind? other) => one is null ? other is null : other is not null && one.IsSame(other);

    /// <summary>Names for kinds that all differ: short where that tells them apart, then in full, then with a number.</summary>
    internal static string[] Names(IReadOnlyList<BarKind?> kinds)
    {
        string[] names = Distinct([.. kinds.Select(kind => kind?.ToString() ?? string.Empty)], i => kinds[i]!.Description);
        return Distinct(names, i => $"{names[i]} ({1 + names.Take(i).Count(name => name == names[i])})");
    }

    private static string[] Distinct(string[] names, Func<int, string> longer) =>
        [.. names.Select((name, i) => names.Count(other => other == name) > 1 ? longer(i) : name)];
}
