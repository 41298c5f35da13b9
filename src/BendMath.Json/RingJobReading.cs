using BendMath.Json.Words;
using UnitsNet;

namespace BendMath.Json;

/// <summary>What a job file holds: its jobs, or everything that is wrong with it. Immutable and thread-safe.</summary>
public sealed class RingJobReading
{
    internal RingJobReading(IReadOnlyList<RingJobEntry> jobs, IReadOnlyList<JobFault> faults, Length? leastUsefulOffcut = null)
    {
        LeastUsefulOffcut = leastUsefulOffcut ?? Length.Zero;
        Jobs = faults.Count == 0 ? jobs : [];
        Faults = faults;
    }

    /// <summary>The jobs in the order of the file; none when the file has a fault.</summary>
    public IReadOnlyList<RingJobEntry> Jobs { get; }

    /// <summary>The shortest offcut worth keeping, for one cut list of all jobs; zero where the file does not say.</summary>
    public Length LeastUsefulOffcut { get; }

    /// <summary>All faults of the file in the order of its lines; none when the jobs can be used.</summary>
    public IReadOnlyList<JobFault> Faults { get; }

    /// <summary>Whether the jobs can be used.</summary>
    public bool IsSound => Faults.Count == 0;

    /// <summary>Number of jobs or of faults.</summary>
    public override string ToString() => IsSound ? Listing.Counted(Jobs.Count, "job") : Listing.Counted(Faults.Count, "fault");
}
