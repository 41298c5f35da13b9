using System.Globalization;
using System.Text.Json;
using BendMath.Json;
using CsvHelper;
using CsvHelper.Configuration;

namespace BendMath.Csv.Rows;

/// <summary>Lays the JSON of measured rings out in rows.</summary>
internal static class RingRowWriter
{
    /// <summary>A die has its name in the column of the ring that is bent on it.</summary>
    private const string DieName = "die.name";

    /// <summary>
    /// Whether a spreadsheet might take a cell that begins so for a formula, or the apostrophe that guards it is one of the text's own.
    /// </summary>
    public static bool IsRisky(char first) => first is '=' or '+' or '-' or '@' or '＝' or '＋' or '－' or '＠' or '\'';

    public static string Write(IReadOnlyList<MeasuredRing> rings, bool decimalComma)
    {
        using JsonDocument document = JsonDocument.Parse(MeasuredRingFile.Write(rings));
        Dictionary<string, JsonElement> dies =
            document.RootElement.GetProperty("dies").EnumerateArray()
                .ToDictionary(die => die.GetProperty("name").GetString()!, StringComparer.Ordinal);
        Dictionary<string, string>[] rows = [.. document.RootElement.GetProperty("rings").EnumerateArray().Select(ring =>
        {
            Dictionary<string, string> cells = new(StringComparer.Ordinal);
            Flatten(ring, string.Empty, cells);
            Flatten(dies[cells["die"]], "die.", cells);
            return cells;
        })];
        RingColumn[] columns = [.. RingColumn.All.Where(column => rows.Any(row => row.ContainsKey(column.Path)))];
        using StringWriter text = new(CultureInfo.InvariantCulture);
        using CsvWriter csv = new(text, new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = decimalComma ? ";" : ",", NewLine = "\r\n" });
        foreach (RingColumn column in columns)
        {
            csv.WriteField(column.Heading);
        }

        foreach (Dictionary<string, string> row in rows)
        {
            csv.NextRecord();
            foreach (RingColumn column in columns)
            {
                string cell = row.TryGetValue(column.Path, out string? value) ? Cell(column, value, decimalComma) : string.Empty;
                if (column.IsText && cell.IndexOfAny([',', ';']) >= 0)
                {
                    csv.WriteField(cell, shouldQuote: true);
                }
                else
                {
                    csv.WriteField(cell);
                }
            }
        }

        csv.NextRecord();
        csv.Flush();
        return text.ToString();
    }

    private static string Cell(RingColumn column, string value, bool decimalComma)
    {
        if (column.IsText)
        {
            return IsRisky(value[0]) ? "'" + value : value;
        }

        string suffix = " " + column.Unit;
        string number =
            column.Unit!.Length > 0 && value.EndsWith(suffix, StringComparison.Ordinal) ? value.Substring(0, value.Length - suffix.Length)
                : value;
        return !decimalComma ? number : number.Replace('.', ',');
    }

    private static void Flatten(JsonElement part, string path, Dictionary<string, string> cells)
    {
        switch (part.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty member in part.EnumerateObject())
                {
                    Flatten(member.Value, path + member.Name + ".", cells);
                }

                break;
            case JsonValueKind.Array:
                foreach ((JsonElement item, int i) in part.EnumerateArray().Select((item, i) => (item, i)))
                {
                    Flatten(item, Invariant($"{path}{i}."), cells);
                }

                break;
            default:
                string place = path.TrimEnd('.');
                if (place != DieName && !RingColumn.ByPath.ContainsKey(place))
                {
                    throw new NotSupportedException($"The table of rings has no column for \"{place}\".");
                }

                cells[place] = part.ValueKind == JsonValueKind.Number ? part.GetRawText() : part.GetString()!;
                break;
        }
    }
}
