using System.Text;
using System.Text.Json;

namespace BendMath.Json.Parts;

/// <summary>Reads a document into parts that know their lines.</summary>
internal static class JsonPartReader
{
    private const byte NewLine = (byte)'\n';

    /// <summary>The document, or null and where it stops being JSON.</summary>
    public static JsonPart? Read(byte[] text, out JsonBreak? broken)
    {
        Utf8JsonReader reader = new(text);
        Lines lines = new(text);
        broken = null;
        try
        {
            reader.Read();
            JsonPart root = Part(ref reader, ref lines);
            reader.Read();
            return root;
        }
        catch (JsonException)
        {
            broken = JsonBreak.At(text, ref reader);
        }
        catch (InvalidOperationException)
        {
            broken = JsonBreak.Unpaired(lines.At(reader.TokenStartIndex));
        }

        return null;
    }

    private static JsonPart Part(ref Utf8JsonReader reader, ref Lines lines)
    {
        int line = lines.At(reader.TokenStartIndex);
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                JsonPart whole = new(JsonKind.Object, line, string.Empty);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
                {
                    int at = lines.At(reader.TokenStartIndex);
                    string name = reader.GetString()!;
                    reader.Read();
                    whole.Members.Add((name, at, Part(ref reader, ref lines)));
                }

                return whole;
            case JsonTokenType.StartArray:
                JsonPart list = new(JsonKind.List, line, string.Empty);
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    list.Items.Add(Part(ref reader, ref lines));
                }

                return list;
            case JsonTokenType.String:
                return new(JsonKind.Text, line, reader.GetString()!);
            case JsonTokenType.Number:
                return new(JsonKind.Number, line, Encoding.UTF8.GetString(reader.ValueSpan.ToArray()));
            default:
                return new(JsonKind.Literal, line, Encoding.UTF8.GetString(reader.ValueSpan.ToArray()));
        }
    }

    /// <summary>Counts lines up to a place; places come in rising order.</summary>
    private ref struct Lines(byte[] text)
    {
        private int _line = 1;

        private int _at;

        public int At(long place)
        {
            for (; _at < place; _at++)
            {
                _line += text[_at] == NewLine ? 1 : 0;
            }

            return _line;
        }
    }
}
