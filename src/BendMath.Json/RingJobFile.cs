using BendMath.Json.Parts;
using BendMath.Json.Reading;
using BendMath.Json.Words;

namespace BendMath.Json;

/// <summary>
/// Ring jobs written by people as JSON, read: the jobs, or everything that is wrong with the file. A length is text with its unit, such as
/// <c>"30 mm"</c> or <c>"1 1/4 in"</c>; a misspelled, doubled or missing word is a fault, never ignored; all faults of a file are reported
/// at once. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// <para>A file holds one job, or several under <c>"jobs"</c> with an optional <c>"note"</c> for all.</para>
/// <para><c>stock</c> is a standard size, <c>{ "size": "L 50x50x5" }</c>, with <c>system</c> where two list it, or a <c>shape</c> with its
/// dimensions and corners; <c>orientation</c> says how it lies.</para>
/// <para>Words of a job: <c>name</c>, <c>note</c>, <c>stock</c>, <c>orientation</c>, <c>material</c>, <c>wanted</c>, <c>arc</c>,
/// <c>forming</c>, <c>bender</c>, <c>dies</c>, <c>ends</c>, <c>kerf</c>, <c>bar length</c>, <c>lever length</c>, <c>tolerance</c>,
/// <c>measured rings</c>, <c>correction</c>. Without <c>arc</c> the ring is full; without <c>kerf</c> a saw cut takes no width; without
/// <c>tolerance</c>, the accepted difference in diameter is <see cref="WantedRing.UsualTolerance"/>. A job whose wanted size is written in
/// inches is cut to sixteenths of an inch, any other to whole millimeters.</para>
/// </remarks>
public sealed class RingJobFile
{
    private RingJobFile(IReadOnlyList<RingJobEntry> jobs, IReadOnlyList<JsonFault> faults, UnitsNet.Length? leastUsefulOffcut = null)
    {
        LeastUsefulOffcut = leastUsefulOffcut ?? UnitsNet.Length.Zero;
        Jobs = faults.Count == 0 ? jobs : [];
        Faults = faults;
    }

    /// <summary>The jobs in the order of the file; none when the file has a fault.</summary>
    public IReadOnlyList<RingJobEntry> Jobs { get; }

    /// <summary>The shortest offcut worth keeping, for one cut list of all jobs; zero where the file does not say.</summary>
    public UnitsNet.Length LeastUsefulOffcut { get; }

    /// <summary>All faults of the file in the order of its lines; none when the jobs can be used.</summary>
    public IReadOnlyList<JsonFault> Faults { get; }

    /// <summary>Whether the jobs can be used.</summary>
    public bool IsSound => Faults.Count == 0;

    /// <summary>Reads the text of a job file.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The jobs, or all faults; it does not throw for anything the text says.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static RingJobFile Read(string json)
    {
        FaultList faults = new();
        JsonPart? root = JsonFile.Parse(json ?? throw new ArgumentNullException(nameof(json)), faults);
        UnitsNet.Length? least = null;
        IReadOnlyList<RingJobEntry> jobs = root is null ? [] : JobFileReader.Read(root, faults, out least);
        return new(jobs, faults.Sorted, least);
    }

    /// <summary>Reads a job file in UTF-8.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <returns>The jobs, or all faults; a file that is missing or cannot be read is a fault too.</returns>
    /// <exception cref="ArgumentNullException">The path is null.</exception>
    public static RingJobFile ReadFile(string path)
    {
        FaultList faults = new();
        return JsonFile.Load(path ?? throw new ArgumentNullException(nameof(path)), "job file", faults) is { } text ? Read(text)
            : new([], faults.Sorted);
    }

    /// <summary>Number of jobs or of faults.</summary>
    public override string ToString() => IsSound ? Listing.Counted(Jobs.Count, "job") : Listing.Counted(Faults.Count, "fault");
}
