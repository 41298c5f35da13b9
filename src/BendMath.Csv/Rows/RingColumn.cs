namespace BendMath.Csv.Rows;

/// <summary>
/// A column: its heading, where its value stands in the JSON of a ring, and the unit it is written in; none for text, empty for a plain
/// number.
/// </summary>
internal sealed class RingColumn
{
    private RingColumn(string name, string path, string? unit)
    {
        Name = name;
        Path = path;
        Unit = unit;
    }

    /// <summary>All columns in the order they are written.</summary>
    public static IReadOnlyList<RingColumn> All { get; } =
    [
        Text("die"), Of("stamped radius", "die.stamped radius", "mm"), Text("stamp means", "die.stamp means"),
        Of("stamp offset", "die.stamp means.offset", "mm"),
        .. Lengths("die.", "face length", "nose radius"),
        .. new[] { "face radius", "rise", "half-span", "support radius", "shims" }.Select(
            word => Of("mate " + word, "die.mate." + word, "mm")),
        .. Lengths(string.Empty, "inside diameter", "centroid diameter", "outside diameter", "inside radius", "centroid radius",
            "outside radius", "tape around inside", "tape around outside"),
        Of("chord against inside", "chord against inside.chord", "mm"), Of("rise against inside", "chord against inside.rise", "mm"),
        Of("chord against outside", "chord against outside.chord", "mm"), Of("rise against outside", "chord against outside.rise", "mm"),
        Text("state"),
        Of("marked length", "marked length.before", "mm"), Of("turn", "marked length.turn", "deg"),
        Text("shape", "stock.shape"), Text("size", "stock.size"), Text("system", "stock.system"),
        .. Lengths(
            "stock.", "leg", "long leg", "short leg", "width", "height", "side", "diameter", "across flats", "depth", "flange width",
                "web thickness", "stem thickness", "flange thickness", "thickness", "wall"),
        Of("tube outside diameter", "stock.outside diameter", "mm"),
        .. Lengths("stock.", "root radius", "toe radius", "outer radius", "corner radius", "outside corner radius", "inside corner radius"),
        Text("corners", "stock.corners"),
        Text("orientation"),
        Text("material", "material.name"),
        .. new[] { "elastic modulus", "yield", "tangent modulus", "strength coefficient", "proof stress", "plateau stress",
            "ultimate strength" }.Select(
            word => Of(word, "material." + word, "MPa")),
        Of("hardening exponent", "material.hardening exponent", string.Empty), Of("exponent", "material.exponent", string.Empty),
        Of("lowest yield", "material.yield range.0", "MPa"), Of("highest yield", "material.yield range.1", "MPa"),
        Of("density", "material.density", "kg/m3"), Of("elongation", "material.elongation", "%"),
        Of("unloading share", "material.unloading share", "%"), Of("Poisson's ratio", "material.Poisson's ratio", string.Empty),
        Text("stress state"), Text("note"),
    ];

    /// <summary>The columns by what their headings say, capitals not counting.</summary>
    public static IReadOnlyDictionary<string, RingColumn> ByName { get; } =
        All.ToDictionary(column => column.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>The columns by their places in the JSON of a ring.</summary>
    public static IReadOnlyDictionary<string, RingColumn> ByPath { get; } = All.ToDictionary(column => column.Path, StringComparer.Ordinal);

    public string Name { get; }

    /// <summary>Words from the ring down, a point between them.</summary>
    public string Path { get; }

    public string? Unit { get; }

    public bool IsText => Unit is null;

    /// <summary>Whether its value is a number without a unit.</summary>
    public bool IsNumber => Unit?.Length == 0;

    public string Heading => string.IsNullOrEmpty(Unit) ? Name : $"{Name} [{Unit}]";

    private static RingColumn Text(string name, string? path = null) => new(name, path ?? name, null);

    private static RingColumn Of(string name, string path, string unit) => new(name, path, unit);

    private static IEnumerable<RingColumn> Lengths(string above, params string[] words) =>
        words.Select(word => Of(word, above + word, "mm"));
}
