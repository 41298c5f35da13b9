namespace BendMath.Stock.Standard;

/// <summary>A standard, or a trade's common stock, that names sizes. Immutable and thread-safe; there is one object of each.</summary>
public sealed class SizeSystem
{
    private SizeSystem(string name, string description, bool isMetric, params string[] otherNames)
    {
        Name = name;
        Description = description;
        IsMetric = isMetric;
        Names = [name, .. otherNames];
    }

    /// <summary>
    /// Rolled angles to EN 10056-1, and sizes that mills list beside them, with the root and toe radii of the section tables.
    /// </summary>
    public static SizeSystem En10056 { get; } =
        new("EN 10056-1", "Rolled steel angles to EN 10056-1 and to the works standards of mills", true, "EN 10056", "EN10056-1",
            "EN10056");

    /// <summary>
    /// Cold-formed hollow sections to EN 10219-2: CHS, SHS, RHS, with the corner radii of <see cref="CornerRadii.ColdFormed"/>.
    /// </summary>
    public static SizeSystem En10219 { get; } =
        new("EN 10219-2", "Cold-formed welded hollow sections to EN 10219-2", true, "EN 10219", "EN10219-2", "EN10219");

    /// <summary>
    /// Hot-finished hollow sections to EN 10210-2: CHS, SHS, RHS, with the corner radii of <see cref="CornerRadii.HotFinished"/>.
    /// </summary>
    public static SizeSystem En10210 { get; } =
        new("EN 10210-2", "Hot-finished hollow sections to EN 10210-2", true, "EN 10210", "EN10210-2", "EN10210");

    /// <summary>Rounds to EN 10060, squares to EN 10059 and flats to EN 10058, as merchants stock them, with sharp corners.</summary>
    public static SizeSystem EnBars { get; } =
        new("EN bars", "Merchant bar: rounds to EN 10060, squares to EN 10059, flats to EN 10058", true);

    /// <summary>
    /// Angles, hollow structural sections (HSS) and pipe of the AISC shapes database v16.0, with their nominal wall and the fillets of
    /// <see cref="AngleFillets.FromDesignDistance"/>.
    /// </summary>
    public static SizeSystem Aisc { get; } =
        new("AISC v16.0", "Angles, hollow structural sections and pipe of the AISC shapes database v16.0", false, "AISC");

    /// <summary>Pipe to ASME B36.10M in Schedule 40 and 80.</summary>
    public static SizeSystem AsmeB3610 { get; } =
        new("ASME B36.10M", "Welded and seamless wrought steel pipe to ASME B36.10M, Schedule 40 and 80", false, "ASME", "B36.10M",
            "B36.10");

    /// <summary>
    /// Bar-size angles, smaller than the angles of the AISC tables, as American merchants stock them; from memory, with sharp corners.
    /// </summary>
    public static SizeSystem UsBarSizeAngles { get; } = new("US bar-size", "American bar-size angles, common stock, from memory", false);

    /// <summary>Round, square and flat bar in inches as American merchants stock it, with sharp corners; from memory.</summary>
    public static SizeSystem UsBars { get; } = new("US bars", "American merchant bar: rounds, squares and flats in inches", false);

    /// <summary>
    /// Name of the standard, such as <c>EN 10219-2</c>; unique among <see cref="StandardSizes.Systems"/>. It may stand before or behind a
    /// designation.
    /// </summary>
    public string Name { get; }

    /// <summary>What the system covers, in one phrase.</summary>
    public string Description { get; }

    /// <summary>Whether designations count in millimeters; otherwise in inches.</summary>
    public bool IsMetric { get; }

    internal IReadOnlyList<string> Names { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
