using System.Text.Json;
using BendMath.Cutting;

namespace BendMath.Json.Writing;

/// <summary>Writes one cut list for several plans.</summary>
internal sealed class CutWriter(Utf8JsonWriter json)
{
    public void Write(PlanCuts cuts)
    {
        json.WriteStartObject("cutList");
        json.WriteStartArray("groups");
        foreach (CutGroup group in cuts.List?.Groups ?? [])
        {
            Group(group, cuts);
        }

        json.WriteEndArray();
        json.WriteStartArray("leftOut");
        foreach (string sentence in cuts.LeftOut)
        {
            json.WriteStringValue(sentence);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void Group(CutGroup group, PlanCuts cuts)
    {
        json.WriteStartObject();
        json.WriteString("bar", group.Name);
        json.WriteNumber("bars", group.BarCount);
        json.WriteNumber("barLengthMillimeters", group.BarLength.Millimeters);
        json.WriteNumber("barMassKilograms", cuts.BarMassOf(group).Kilograms);
        json.WriteNumber("usefulOffcutsMillimeters", group.UsefulOffcuts.Millimeters);
        json.WriteNumber("scrapMillimeters", group.Scrap.Millimeters);
        json.WriteBoolean("isProven", group.IsProven);
        json.WriteNumber("gapToBoundPercent", group.Gap.Percent);
        json.WriteStartArray("patterns");
        foreach (CutBar bar in group.Bars)
        {
            json.WriteStartObject();
            json.WriteNumber("count", bar.Count);
            json.WriteNumber("barMillimeters", bar.Supply.Length.Millimeters);
            json.WriteStartArray("pieces");
            foreach (IGrouping<CutPiece, CutPiece> same in bar.Pieces.GroupBy(piece => piece))
            {
                json.WriteStartObject();
                json.WriteString("job", same.Key.Name);
                json.WriteNumber("lengthMillimeters", same.Key.Length.Millimeters);
                json.WriteNumber("count", same.Count());
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNumber("offcutMillimeters", bar.Offcut.Millimeters);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
