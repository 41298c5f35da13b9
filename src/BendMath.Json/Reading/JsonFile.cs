using System.Text;
using System.Text.Json;

namespace BendMath.Json.Reading;

/// <summary>Text and files of JSON into parts; what cannot be read is a fault.</summary>
internal static class JsonFile
{
    /// <summary>The document of a text, or null after a fault.</summary>
    public static JsonPart? Parse(string json, FaultList faults)
    {
        string text = json.TrimStart('\uFEFF');
        try
        {
            return JsonPartReader.Read(Encoding.UTF8.GetBytes(text));
        }
        catch (JsonException broken)
        {
            faults.Add("file", broken.LineNumber is { } line ? (int)line + 1 : null, JsonPartReader.Sentence(broken, text));
            return null;
        }
    }

    /// <summary>The text of a file in UTF-8, or null after a fault.</summary>
    public static string? Load(string path, string kind, FaultList faults)
    {
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path));
        }
        catch (Exception unread) when (unread is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            faults.Add("file", null, WhyUnread(path, kind, unread));
            return null;
        }
    }

    private static string WhyUnread(string path, string kind, Exception unread) => unread switch
    {
        _ when string.IsNullOrWhiteSpace(path) => "The name of the file is empty.",
        _ when Directory.Exists(path) => $"\"{path}\" is a folder, not a {kind}.",
        FileNotFoundException or DirectoryNotFoundException => $"There is no file \"{path}\".",
        UnauthorizedAccessException => $"\"{path}\" may not be read by this user.",
        DecoderFallbackException => $"\"{path}\" is not text in UTF-8; save it as UTF-8.",
        _ => $"\"{path}\" cannot be read: {unread.Message}",
    };
}
