using System.Text.Json;

namespace BendMath.Json;

/// <summary>How every document of this package is written: indented, names in camel case, so that a person can read and edit it.</summary>
internal static class JsonText
{
    public static JsonSerializerOptions Options { get; } = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
    };
}
