using BendMath.Json.Words;

namespace BendMath.Json;

/// <summary>What a file of measured rings holds: its rings, or everything that is wrong with it. Immutable and thread-safe.</summary>
public sealed class MeasuredRingReading
{
    internal MeasuredRingReading(IReadOnlyList<MeasuredRing> rings, IReadOnlyList<JobFault> faults)
    {
        Rings = faults.Count == 0 ? [.. rings] : [];
        Faults = faults;
    }

    /// <summary>The rings in the order of the file; none when the file has a fault.</summary>
    public IReadOnlyList<MeasuredRing> Rings { get; }

    /// <summary>All faults of the file in the order of its lines; none when the rings can be used.</summary>
    public IReadOnlyList<JobFault> Faults { get; }

    /// <summary>Whether the rings can be used.</summary>
    public bool IsSound => Faults.Count == 0;

    /// <summary>Number of rings or of faults.</summary>
    public override string ToString() => IsSound ? Listing.Counted(Rings.Count, "ring") : Listing.Counted(Faults.Count, "fault");
}
