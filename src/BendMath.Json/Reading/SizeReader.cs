using BendMath.Json.Parts;
using BendMath.Json.Words;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads a ring size: exactly one radius or diameter, with the line it is measured to in its name.</summary>
internal static class SizeReader
{
    public const string Example = "\"wanted\": { \"inside diameter\": \"500 mm\" }";

    private static readonly (string Word, Func<Length, BendRadius> Make)[] Sizes =
    [
        ("inside diameter", BendRadius.InsideDiameter),
        ("centroid diameter", BendRadius.CentroidDiameter),
        ("outside diameter", BendRadius.OutsideDiameter),
        ("inside radius", BendRadius.Inside),
        ("centroid radius", BendRadius.Centroid),
        ("outside radius", BendRadius.Outside),
    ];

    /// <summary>The words of sizes.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Sizes.Select(size => size.Word)];

    /// <param name="owner">The object that holds the size.</param>
    /// <param name="inches">Whether it is written in inches or feet.</param>
    public static BendRadius? Read(JobObject owner, out bool inches)
    {
        inches = false;
        (string Word, Func<Length, BendRadius> Make)[] given = [.. Sizes.Where(size => owner.Find(size.Word) is not null)];
        if (given.Length != 1)
        {
            string found = given.Length == 0 ? "none is" : Listing.Listed([.. given.Select(size => size.Word)], "and") + " are";
            owner.Fault(null, $"Exactly one of {Listing.Listed(Words, "or")} must be given, but {found}.");
            return null;
        }

        string word = given[0].Word;
        if (owner.Length(word, "500 mm") is not { } length)
        {
            return null;
        }

        // Every metric unit of length holds an m, no inch or foot does.
        inches = !owner.Find(word)!.Text.Any(c => c is 'm' or 'M');
        return owner.Build(() => given[0].Make(length), ("radius", word), ("diameter", word));
    }
}
