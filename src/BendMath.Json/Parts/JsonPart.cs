using BendMath.Guards;

namespace BendMath.Json.Parts;

/// <summary>What a part of a document is.</summary>
internal enum JsonKind
{
    Object,
    List,
    Text,
    Number,
    Literal,
}

/// <summary>A part of a document with the line it starts on. Names that occur twice are kept, so that they can be reported.</summary>
internal sealed class JsonPart(JsonKind kind, int line, string text)
{
    public JsonKind Kind { get; } = kind;

    public int Line { get; } = line;

    /// <summary>The text itself, or a number or literal as written.</summary>
    public string Text { get; } = text;

    public List<(string Name, int Line, JsonPart Value)> Members { get; } = [];

    public List<JsonPart> Items { get; } = [];

    /// <summary>What stands here, for the end of a sentence.</summary>
    public string Described => Kind switch
    {
        JsonKind.Object => "an object",
        JsonKind.List => "a list",
        JsonKind.Text => $"\"{Quoted.Short(Text)}\"",
        JsonKind.Number => $"the number {Quoted.Short(Text)} without quotes",
        _ => Text,
    };
}
