namespace BendMath.Json;

/// <summary>One job as it stands in a file: the job, its note, and the kind of unit it is written in. Immutable and thread-safe.</summary>
public sealed class RingJobEntry
{
    internal RingJobEntry(RingJob job, string? note, bool isInInches)
    {
        Job = job;
        Note = note;
        IsInInches = isInInches;
    }

    /// <summary>The job.</summary>
    public RingJob Job { get; }

    /// <summary>The note of the job or else of the file, or null.</summary>
    public string? Note { get; }

    /// <summary>Whether the wanted size is written in inches or feet, so that a print should show inches too.</summary>
    public bool IsInInches { get; }

    /// <summary>The job.</summary>
    public override string ToString() => Job.ToString();
}
