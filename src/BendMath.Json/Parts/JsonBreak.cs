using System.Text;
using System.Text.Json;
using BendMath.Guards;

namespace BendMath.Json.Parts;

/// <summary>Where a text stops being JSON, and why, in a sentence for the author of the file.</summary>
internal sealed class JsonBreak
{
    /// <summary>Bytes of a word that a sentence can still show the start of.</summary>
    private const int LongestWord = 200;

    private const string NoComments = "a file like this holds no comments; write what you want to remember under \"note\"";

    private JsonBreak(int line, string sentence)
    {
        Line = line;
        Sentence = sentence;
    }

    public int Line { get; }

    public string Sentence { get; }

    /// <summary>The place the reader could not go beyond.</summary>
    public static JsonBreak At(byte[] text, ref Utf8JsonReader reader)
    {
        int place = Visible(text, (int)reader.BytesConsumed);
        int line = 1 + text.Take(place).Count(one => one == '\n');
        int start = place == 0 ? 0 : Array.LastIndexOf(text, (byte)'\n', place - 1) + 1;
        int column = 1 + Encoding.UTF8.GetCharCount(text, start, place - start);
        bool isNamed = reader.TokenType == JsonTokenType.String && reader.TokenStartIndex < reader.BytesConsumed;
        return new(line,
            Invariant(
                $"The file is not JSON from line {line}, column {column} "
                    + $"on: {Why(text, place, reader.TokenType, isNamed, reader.CurrentDepth)}."));
    }

    /// <summary>A text with half of a pair of code units, of which no character can be made.</summary>
    public static JsonBreak Unpaired(int line) =>
        new(line, Invariant($"The file is not JSON in line {line}: a text holds half of a surrogate pair."));

    private static string Why(byte[] text, int place, JsonTokenType read, bool isNamed, int depth)
    {
        if (place >= text.Length)
        {
            return "it ends before every brace and bracket is closed";
        }

        char first = (char)text[place];
        string found = $"\"{Quoted.Short(Word(text, place))}\"";
        bool isAfterComma = text[Math.Max(0, Before(text, place))] == ',';
        bool isAfterValue =
            read is not (JsonTokenType.None or JsonTokenType.StartObject or JsonTokenType.StartArray or JsonTokenType.PropertyName)
                && !isAfterComma;
        return first switch
        {
            '#' => NoComments,
            '/' when place + 1 < text.Length && text[place + 1] is (byte)'/' or (byte)'*' => NoComments,
            _ when isNamed => $"a colon must stand before {found}",
            _ when isAfterValue && depth == 0 => $"nothing may follow the brace that closes the file, but {found} does",
            _ when isAfterValue => $"a comma, or the brace or bracket that closes the part, must stand before {found}",
            '"' => "a text must end on its line with a quotation mark, and a tab or a backslash within it is written \\t or \\\\",
            '}' or ']' when isAfterComma => "the comma before it is one too many",
            '{' or '[' => "parts must not be nested deeper than 64",
            (>= '0' and <= '9') or '-' => $"{found} is neither a number, such as 25 or 0.25, nor a word in quotes",
            (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') => $"{found} must stand in quotes",
            _ => $"a word or a value belongs where {found} stands",
        };
    }

    private static string Word(byte[] text, int place)
    {
        int end = place + 1;
        while (end < text.Length && end - place < LongestWord && !IsBlank(text[end]) && !",:{}[]\"".Contains((char)text[end]))
        {
            end++;
        }

        return Encoding.UTF8.GetString(text, place, end - place);
    }

    private static int Visible(byte[] text, int place)
    {
        while (place < text.Length && IsBlank(text[place]))
        {
            place++;
        }

        return place;
    }

    private static int Before(byte[] text, int place)
    {
        do
        {
            place--;
        }
        while (place >= 0 && IsBlank(text[place]));

        return place;
    }

    private static bool IsBlank(byte one) => one is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n';
}
