using System.Text;

namespace BendMath.Json.Parts;

/// <summary>Text and files of JSON into parts; what cannot be read is a fault.</summary>
internal static class JsonFile
{
    /// <summary>The document of a text, or null after a fault.</summary>
    public static JsonPart? Parse(string json, FaultList faults)
    {
        string text = json.TrimStart('\uFEFF');
        if (string.IsNullOrWhiteSpace(text))
        {
            faults.Add("file", 1, "The file is empty.");
            return null;
        }

        JsonPart? root = JsonPartReader.Read(Encoding.UTF8.GetBytes(text), out JsonBreak? broken);
        if (broken is not null)
        {
            faults.Add("file", broken.Line, broken.Sentence);
        }

        return root;
    }

    /// <summary>The text of a file in UTF-8, or null after a fault.</summary>
    public static string? Load(string path, string kind, FaultList faults)
    {
        string? text = TextFile.Load(path, kind, out string? why);
        if (why is not null)
        {
            faults.Add("file", null, why);
        }

        return text;
    }
}
