using System.Text;
using BendMath.Guards;

namespace BendMath.Json.Parts;

/// <summary>Files of text, and why one cannot be read.</summary>
internal static class TextFile
{
    /// <summary>The text of a file in UTF-8, or null with the reason.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <param name="kind">What the file should be.</param>
    /// <param name="why">Why it cannot be read, or null.</param>
    public static string? Load(string path, string kind, out string? why)
    {
        why = null;
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path));
        }
        catch (Exception unread) when (unread is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            why = WhyUnread(path, kind, unread);
            return null;
        }
    }

    private static string WhyUnread(string path, string kind, Exception unread)
    {
        string shown = $"\"{Quoted.Visible(path)}\"";
        return unread switch
        {
            _ when string.IsNullOrWhiteSpace(path) => "The name of the file is empty.",
            _ when Directory.Exists(path) => $"{shown} is a folder, not a {kind}.",
            FileNotFoundException or DirectoryNotFoundException => $"There is no file {shown}.",
            UnauthorizedAccessException => $"{shown} may not be read by this user.",
            DecoderFallbackException => $"{shown} is not text in UTF-8; save it as UTF-8.",
            _ => $"{shown} cannot be read: {Quoted.Visible(unread.Message)}",
        };
    }
}
