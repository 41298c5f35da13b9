using BendMath.Json.Parts;
using BendMath.Json.Words;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>
/// Reads how a ring was measured: exactly one size, tape, or chord with its rise, with the line or face it was measured to in its name.
/// </summary>
internal static class ReadingReader
{
    public const string TapeInside = "tape around inside";

    public const string TapeOutside = "tape around outside";

    public const string ChordInside = "chord against inside";

    public const string ChordOutside = "chord against outside";

    private static readonly string[] Others = [TapeInside, TapeOutside, ChordInside, ChordOutside];

    private static readonly string[] All = [.. SizeReader.Words, .. Others];

    public static RingReading? Read(JobObject ring)
    {
        string[] given = [.. All.Where(word => ring.Find(word) is not null)];
        if (given.Length != 1)
        {
            string found = given.Length == 0 ? "none is" : Listing.Listed(given, "and") + " are";
            ring.Fault(null, $"Exactly one of {Listing.Listed(All, "or")} must be given, but {found}.");
            return null;
        }

        string word = given[0];
        return word switch
        {
            TapeInside => Around(ring, word, RingReading.TapeAroundInside),
            TapeOutside => Around(ring, word, RingReading.TapeAroundOutside),
            ChordInside => Across(ring, word, RingReading.ChordAgainstInside),
            ChordOutside => Across(ring, word, RingReading.ChordAgainstOutside),
            _ => SizeReader.Read(ring, out _) is { } size ? RingReading.Of(size) : null,
        };
    }

    /// <summary>The word of the reading an object holds; none when it holds none.</summary>
    public static string WordIn(JobObject owner) => All.FirstOrDefault(owner.Has) ?? string.Empty;

    private static RingReading? Around(JobObject ring, string word, Func<Length, RingReading> make) =>
        ring.Length(word, "1600 mm") is { } tape ? ring.Build(() => make(tape), ("tape", word)) : null;

    private static RingReading? Across(JobObject ring, string word, Func<Length, Length, RingReading> make)
    {
        if (ring.OptionalObject(word) is not { } part)
        {
            return null;
        }

        Length? chord = part.Length("chord", "400 mm");
        Length? rise = part.Length("rise", "90 mm");
        RingReading? made = chord is { } c && rise is { } h ? part.Build(() => make(c, h)) : null;
        part.Close();
        return made;
    }
}
