using System.Text;
using System.Text.Json;

namespace BendMath.Json.Reading;

/// <summary>Reads a document into parts that know their lines.</summary>
internal static class JsonPartReader
{
    private const byte NewLine = (byte)'\n';

    private const string NoComments = "a file like this holds no comments; write what you want to remember under \"note\".";

    /// <summary>End of a sentence of the reader that does not help the author of a file.</summary>
    private const string ForProgrammers = " which is not supported in this mode. Change the reader options.";

    /// <exception cref="JsonException">The text is not JSON.</exception>
    public static JsonPart Read(byte[] text)
    {
        Utf8JsonReader reader = new(text);
        Lines lines = new(text);
        reader.Read();
        JsonPart root = Part(ref reader, ref lines);
        reader.Read();
        return root;
    }

    /// <summary>Where the text stops being JSON, and why.</summary>
    public static string Sentence(JsonException broken, string text)
    {
        if (text.Trim().Length == 0)
        {
            return "The file is empty.";
        }

        int places = broken.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        string why = (places < 0 ? broken.Message : broken.Message.Substring(0, places)).Replace(ForProgrammers, ".");
        return broken is { LineNumber: { } line, BytePositionInLine: { } position }
            ? IsComment(text, line, Column(text, line, position))
                ? FormattableString.Invariant($"The file is not JSON from line {line + 1}, column {Column(text, line, position)} on: {NoComments}")
                : FormattableString.Invariant($"The file is not JSON from line {line + 1}, column {Column(text, line, position)} on: {why}")
            : broken.LineNumber is { } only ? FormattableString.Invariant($"The file is not JSON in line {only + 1}: {why}")
            : $"The file is not JSON: {why}";
    }

    private static bool IsComment(string text, long line, long column)
    {
        string rest = text.Split('\n')[line];
        rest = column <= rest.Length ? rest.Substring((int)column - 1) : string.Empty;
        return rest.StartsWith("//", StringComparison.Ordinal) || rest.StartsWith("/*", StringComparison.Ordinal) || (rest.Length > 0 && rest[0] == '#');
    }

    private static long Column(string text, long line, long bytes)
    {
        byte[] row = Encoding.UTF8.GetBytes(text.Split('\n')[line]);
        return Encoding.UTF8.GetCharCount(row, 0, (int)Math.Min(bytes, row.Length)) + 1;
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
                    string name = Text(ref reader, at);
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
                return new(JsonKind.Text, line, Text(ref reader, line));
            case JsonTokenType.Number:
                return new(JsonKind.Number, line, Encoding.UTF8.GetString(reader.ValueSpan.ToArray()));
            default:
                return new(JsonKind.Literal, line, Encoding.UTF8.GetString(reader.ValueSpan.ToArray()));
        }
    }

    private static string Text(ref Utf8JsonReader reader, int line)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException unpaired)
        {
            throw new JsonException("A text holds half of a surrogate pair.", null, line - 1, null, unpaired);
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
