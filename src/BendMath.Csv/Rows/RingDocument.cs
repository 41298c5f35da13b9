using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using BendMath.Guards;
using BendMath.Json;

namespace BendMath.Csv.Rows;

/// <summary>The JSON file the rows amount to, and the way back from a place in it to a cell.</summary>
internal sealed class RingDocument(List<CsvFault> faults)
{
    private readonly List<(int Row, Dictionary<string, string> Values)> _rings = [];

    private readonly List<(int Row, Dictionary<string, string> Values)> _dies = [];

    private readonly Dictionary<string, (int Row, Dictionary<string, string> Values)> _firstOf = new(StringComparer.Ordinal);

    public int Count => _rings.Count;

    public void Add(int row, Dictionary<string, string> values)
    {
        int before = faults.Count;
        Need(row, values, "die", "The row must name its \"die\".", "die");
        Need(row, values, "shape", "The row must name the \"shape\" of the bar and its dimensions, or a standard \"size\".", "stock.shape",
            "stock.size");
        Need(row, values, "material", "The row must name its \"material\" and give its numbers.", "material.name");
        if (values.ContainsKey("material.yield range.0") != values.ContainsKey("material.yield range.1"))
        {
            faults.Add(new(row, "lowest yield", "\"lowest yield\" and \"highest yield\" must both be given or both be left out."));
        }

        if (values.ContainsKey("die.stamp means") && values.ContainsKey("die.stamp means.offset"))
        {
            faults.Add(new(row, "stamp offset", "\"stamp offset\" must be left out where \"stamp means\" is given."));
        }

        if (faults.Count == before)
        {
            Die(row, values);
            _rings.Add((row, values));
        }
    }

    public IReadOnlyList<MeasuredRing> Read()
    {
        if (_rings.Count == 0)
        {
            return [];
        }

        MeasuredRingFile reading = MeasuredRingFile.Read(Json());
        faults.AddRange(reading.Faults.Select(Back));
        return reading.Rings;
    }

    private void Need(int row, Dictionary<string, string> values, string column, string rule, params string[] paths)
    {
        if (!paths.Any(values.ContainsKey))
        {
            faults.Add(new(row, column, rule));
        }
    }

    /// <summary>A die is described where it is named first; later rows may repeat that but not change it.</summary>
    private void Die(int row, Dictionary<string, string> values)
    {
        if (!_firstOf.TryGetValue(values["die"], out (int Row, Dictionary<string, string> Values) first))
        {
            _dies.Add((row, values));
            _firstOf.Add(values["die"], (row, values));
            return;
        }

        foreach (RingColumn column in RingColumn.All.Where(column => column.Path.StartsWith("die.", StringComparison.Ordinal)))
        {
            if (values.TryGetValue(column.Path, out string? value)
                && !(first.Values.TryGetValue(column.Path, out string? known) && known == value))
            {
                string there = first.Values.TryGetValue(column.Path, out known) ? $"\"{Quoted.Short(known)}\"" : "left out";
                faults.Add(new(row, column.Name, Invariant(
                    $"\"{column.Name}\" of die \"{Quoted.Short(values["die"])}\" must be the same in every row, but is "
                        + $"\"{Quoted.Short(value)}\" here and {there} in row {first.Row}.")));
            }
        }
    }

    private string Json()
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream))
        {
            json.WriteStartObject();
            json.WriteStartArray("dies");
            foreach ((_, Dictionary<string, string> values) in _dies)
            {
                json.WriteStartObject();
                json.WriteString("name", values["die"]);
                Members(json, values, "die.");
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("rings");
            foreach ((_, Dictionary<string, string> values) in _rings)
            {
                json.WriteStartObject();
                Members(json, values.Where(pair => !pair.Key.StartsWith("die.", StringComparison.Ordinal)), string.Empty);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Members(Utf8JsonWriter json, IEnumerable<KeyValuePair<string, string>> values, string above)
    {
        foreach (IGrouping<string, KeyValuePair<string, string>> member in values
            .Where(pair => pair.Key.StartsWith(above, StringComparison.Ordinal))
            .GroupBy(pair => pair.Key.Substring(above.Length).Split('.')[0], StringComparer.Ordinal))
        {
            string path = above + member.Key;
            KeyValuePair<string, string>[] parts = [.. member];
            if (parts.Length == 1 && parts[0].Key == path)
            {
                json.WritePropertyName(member.Key);
                Value(json, path, parts[0].Value);
            }
            else if (parts[0].Key == path + ".0" || parts[0].Key == path + ".1")
            {
                json.WriteStartArray(member.Key);
                foreach (KeyValuePair<string, string> part in parts.OrderBy(part => part.Key, StringComparer.Ordinal))
                {
                    json.WriteStringValue(part.Value);
                }

                json.WriteEndArray();
            }
            else
            {
                json.WriteStartObject(member.Key);
                Members(json, parts, path + ".");
                json.WriteEndObject();
            }
        }
    }

    private static void Value(Utf8JsonWriter json, string path, string value)
    {
        if (RingColumn.ByPath[path].IsNumber)
        {
            json.WriteNumberValue(double.Parse(value, CultureInfo.InvariantCulture));
        }
        else
        {
            json.WriteStringValue(value);
        }
    }

    private CsvFault Back(JsonFault fault)
    {
        Match place = Regex.Match(fault.Place, @"^(?<list>rings|dies)\[(?<index>\d+)\]\.?(?<path>.*)$", RegexOptions.CultureInvariant);
        if (!place.Success)
        {
            return new(null, null, fault.Rule);
        }

        bool isDie = place.Groups["list"].Value == "dies";
        int row = (isDie ? _dies : _rings)[int.Parse(place.Groups["index"].Value, CultureInfo.InvariantCulture)].Row;
        string path = Regex.Replace(place.Groups["path"].Value, @"\[(\d)\]", ".$1", RegexOptions.CultureInvariant);
        path = isDie ? path == "name" ? "die" : "die." + path : path;
        string? column =
            (RingColumn.ByPath.TryGetValue(path, out RingColumn? exact) ? exact.Name : null)
                ?? RingColumn.All.FirstOrDefault(one => one.Path.StartsWith(path + ".", StringComparison.Ordinal))?.Name;
        return new(row, path.Length == 0 ? null : column ?? path, fault.Rule);
    }
}
