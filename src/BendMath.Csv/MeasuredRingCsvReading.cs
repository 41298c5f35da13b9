namespace BendMath.Csv;

/// <summary>What a CSV file of measured rings holds: its rings, or everything that is wrong with it. Immutable and thread-safe.</summary>
public sealed class MeasuredRingCsvReading
{
    internal MeasuredRingCsvReading(IReadOnlyList<MeasuredRing> rings, IEnumerable<CsvFault> faults)
    {
        Faults = [.. faults.OrderBy(fault => fault.Row ?? 0)];
        Rings = Faults.Count == 0 ? [.. rings] : [];
    }

    /// <summary>The rings in the order of the rows; none when the file has a fault.</summary>
    public IReadOnlyList<MeasuredRing> Rings { get; }

    /// <summary>All faults in the order of the rows; none when the rings can be used.</summary>
    public IReadOnlyList<CsvFault> Faults { get; }

    /// <summary>Whether the rings can be used.</summary>
    public bool IsSound => Faults.Count == 0;

    /// <summary>Number of rings or of faults.</summary>
    public override string ToString() => IsSound
        ? Invariant($"{Rings.Count} ring{(Rings.Count == 1 ? string.Empty : "s")}")
        : Invariant($"{Faults.Count} fault{(Faults.Count == 1 ? string.Empty : "s")}");
}
