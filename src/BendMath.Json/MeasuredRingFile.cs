using System.Text;
using System.Text.Json;
using BendMath.Json.Parts;
using BendMath.Json.Reading;
using BendMath.Json.Words;
using BendMath.Json.Writing;

namespace BendMath.Json;

/// <summary>
/// The rings a shop has measured as JSON, read or written: the rings, or everything that is wrong with the file. Immutable and thread-safe.
/// Lengths are text with their unit, as in job files; what is written reads back as the same rings, to the last digit.
/// </summary>
/// <remarks>
/// <para>A file holds <c>dies</c>, as a job does, and <c>rings</c>; <c>stock</c>, <c>orientation</c> and <c>material</c> may stand beside
/// them for every ring that says nothing else, and a <c>note</c>.</para>
/// <para>Words of a ring: <c>die</c>, <c>state</c> (<c>free</c> or <c>held flat</c>), <c>stock</c>, <c>orientation</c>, <c>material</c>,
/// <c>stress state</c>, <c>note</c>, <c>marked length</c> (<c>{ "before": "1650 mm", "turn": "360 deg" }</c>) and exactly one reading: a
/// diameter or radius with its line, as <c>inside diameter</c>; <c>tape around inside</c> or <c>tape around outside</c>; <c>chord against
/// inside</c> or <c>chord against outside</c>, each <c>{ "chord": "400 mm", "rise": "90 mm" }</c>.</para>
/// </remarks>
public sealed class MeasuredRingFile
{
    private MeasuredRingFile(IReadOnlyList<MeasuredRing> rings, IReadOnlyList<JsonFault> faults)
    {
        Rings = faults.Count == 0 ? [.. rings] : [];
        Faults = faults;
    }

    /// <summary>The rings in the order of the file; none when the file has a fault.</summary>
    public IReadOnlyList<MeasuredRing> Rings { get; }

    /// <summary>All faults in the order of the lines; none when the rings can be used.</summary>
    public IReadOnlyList<JsonFault> Faults { get; }

    /// <summary>Whether the rings can be used.</summary>
    public bool IsSound => Faults.Count == 0;

    /// <summary>Reads the text of a file.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The rings, or all faults; it does not throw for anything the text says.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static MeasuredRingFile Read(string json)
    {
        FaultList faults = new();
        JsonPart? root = JsonFile.Parse(json ?? throw new ArgumentNullException(nameof(json)), faults);
        return new(root is null ? [] : MeasuredRingFileReader.Read(root, faults), faults.Sorted);
    }

    /// <summary>Reads a file in UTF-8.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <returns>The rings, or all faults; a file that is missing or cannot be read is a fault too.</returns>
    /// <exception cref="ArgumentNullException">The path is null.</exception>
    public static MeasuredRingFile ReadFile(string path)
    {
        FaultList faults = new();
        return JsonFile.Load(path ?? throw new ArgumentNullException(nameof(path)), "file of measured rings", faults) is { } text
            ? Read(text) : new([], faults.Sorted);
    }

    /// <summary>Writes rings as text that <see cref="Read"/> reads back as the same rings.</summary>
    /// <param name="rings">The rings; none is null.</param>
    /// <exception cref="ArgumentNullException">The rings or one of them are null.</exception>
    /// <exception cref="ArgumentException">There is no ring; two dies of one name differ; or a ring is of something a file has no words
    /// for: a drawn bar, a measured curve, a name that is not a line of text.</exception>
    public static string Write(IReadOnlyList<MeasuredRing> rings)
    {
        _ = rings ?? throw new ArgumentNullException(nameof(rings));
        if (rings.Count == 0)
        {
            throw new ArgumentException("rings must hold at least one ring, but there are 0.", nameof(rings));
        }

        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, RingPlanJson.Options))
        {
            new MeasuredRingWriter(json).Write(rings);
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Number of rings or of faults.</summary>
    public override string ToString() => IsSound ? Listing.Counted(Rings.Count, "ring") : Listing.Counted(Faults.Count, "fault");
}
