using System.Text.Json;
using System.Text.Json.Nodes;
using BendMath.Fuzz.Making;

namespace BendMath.Fuzz.Sizes;

/// <summary>Spoils a sound file in one place.</summary>
internal static class FileSpoiler
{
    private static readonly JsonSerializerOptions Plain = new() { WriteIndented = true };

    private static readonly (string Kind, Func<string, string> Spoil)[] Values =
    [
        ("a value is empty", _ => string.Empty),
        ("a value has no unit", text => text.Split(' ')[0]),
        ("a value is negative", text => "-" + text),
        ("a value is too large for a number", _ => "1e999 mm"),
        ("a value has a comma", _ => "3,5 mm"),
        ("a value is not a number", _ => "NaN mm"),
        ("a value has a control character", text => "\u001b[31m" + text + "\0"),
        ("a value is very long", _ => new string('9', 50_000)),
        ("a value is zero", _ => "0 mm"),
        ("a value is tiny", _ => "0.0000000001 mm"),
        ("a value is huge", _ => "99999999999999999999 m"),
        ("a value is another word", _ => "<script>\"x\"</script>"),
    ];

    private static readonly (string Kind, Func<JsonNode?> Spoil)[] Nodes =
    [
        ("a value is null", () => null),
        ("a value is a number", () => 5.5),
        ("a value is true", () => true),
        ("a value is a list", () => new JsonArray(1, "two", new JsonObject())),
        ("a value is an object", () => new JsonObject { ["chord"] = "1 mm" }),
    ];

    private static readonly (string Kind, Func<string, Tape, string> Spoil)[] Texts =
    [
        ("the text is cut off", (text, tape) => text[..tape.Index(text.Length)]),
        ("a letter is lost", (text, tape) => text.Remove(tape.Index(text.Length), 1)),
        ("a letter is strange",
            (text, tape) =>
                text.Insert(tape.Index(text.Length), tape.Of(["\0", "\u001b", "\"", "{", ",", ";", "\ud800", "\ufeff", "none,", "\n"]))),
        ("the text is doubled", (text, _) => text + text),
    ];

    public static IEnumerable<string> Kinds =>
        [.. Values.Select(one => one.Kind), .. Nodes.Select(one => one.Kind), .. Texts.Select(one => one.Kind), "a word is missing",
            "a word is unknown", "a word stands twice", "objects are nested deep"];

    public static (string Kind, string Text) Json(string text, Tape tape)
    {
        JsonNode root = JsonNode.Parse(text)!;
        JsonObject owner = tape.Of(Objects(root).ToArray());
        string word = tape.Of(owner.Select(pair => pair.Key).ToArray());
        switch (tape.Index(7))
        {
            case 0:
            case 1:
                (string kind, Func<string, string> change) = tape.Of(Values);
                owner[word] = change(owner[word] is JsonValue value && value.TryGetValue(out string? old) ? old : "5 mm");
                return (kind, root.ToJsonString(Plain));
            case 2:
                (string other, Func<JsonNode?> node) = tape.Of(Nodes);
                owner[word] = node();
                return (other, root.ToJsonString(Plain));
            case 3:
                owner.Remove(word);
                return ("a word is missing", root.ToJsonString(Plain));
            case 4:
                owner["color"] = "red";
                return ("a word is unknown", root.ToJsonString(Plain));
            case 5:
                return tape.Chance(0.5)
                    ? ("a word stands twice", text.Replace($"\"{word}\":", $"\"{word}\": \"x\", \"{word}\":", StringComparison.Ordinal))
                    : ("objects are nested deep", string.Concat(Enumerable.Repeat("{\"a\":[", 1 + tape.Index(2000))));
            default:
                (string how, Func<string, Tape, string> spoil) = tape.Of(Texts);
                return (how, spoil(text, tape));
        }
    }

    public static (string Kind, string Text) Csv(string text, Tape tape)
    {
        if (tape.Chance(0.3))
        {
            (string how, Func<string, Tape, string> spoil) = tape.Of(Texts);
            return (how, spoil(text, tape));
        }

        // A cell without a quote or line in it; where there is none, the text stays as it is.
        char between = text.Contains(';', StringComparison.Ordinal) ? ';' : ',';
        string[] lines = text.Split('\n');
        int row = tape.Index(lines.Length);
        string[] cells = lines[row].Split(between);
        int column = tape.Index(cells.Length);
        (string kind, Func<string, string> change) = tape.Of(Values);
        cells[column] = change(cells[column].Trim('"', '\r'));
        lines[row] = string.Join(between, cells);
        return (kind, string.Join('\n', lines));
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject owner => owner.Select(pair => pair.Value).SelectMany(Objects).Prepend(owner).Where(one => one.Count > 0),
        JsonArray list => list.SelectMany(Objects),
        _ => [],
    };
}
