using BendMath.Json.Parts;

namespace BendMath.Json.Reading;

/// <summary>Reads a whole file of measured rings.</summary>
internal static class MeasuredRingFileReader
{
    private const string RingsExample = "\"rings\": [{ \"die\": \"A\", \"inside diameter\": \"490 mm\", \"state\": \"free\" }]";

    public static IReadOnlyList<MeasuredRing> Read(JsonPart root, FaultList faults)
    {
        if (JobObject.Of(root, string.Empty, "The file", faults) is not { } file)
        {
            return [];
        }

        file.OptionalText("note", "\"a note\"");
        DieShelf dies = BenderReader.Dies(file, faults);
        bool hasStock = file.Has("stock") || file.Has("orientation");
        bool hasMaterial = file.Has("material");
        OrientedSection? section = hasStock ? StockReader.Read(file) : null;
        BarMaterial? material = hasMaterial ? MaterialReader.Read(file) : null;
        foreach (string word in new[] { "stock", "orientation", "material" })
        {
            file.Find(word);
        }

        JsonPart? list = file.Require("rings", RingsExample);
        List<MeasuredRing> rings = [];
        foreach ((JsonPart part, string place) in file.Items(list, "rings"))
        {
            if (JobObject.Of(part, place, "A measured ring", faults) is { } ring
                && MeasuredRingReader.Read(ring, dies, section, material, (hasStock, hasMaterial)) is { } read)
            {
                rings.Add(read);
            }
        }

        if (list is { Kind: JsonKind.List, Items.Count: 0 })
        {
            file.Fault("rings", "\"rings\" must hold at least one ring.");
        }

        file.Close();
        return rings;
    }
}
