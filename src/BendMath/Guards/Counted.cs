
namespace BendMath.Guards;

/// <summary>A number with its noun, one in the singular.</summary>
internal static class Counted
{
    /// <param name="count">How many.</param>
    /// <param name="noun">The noun in the singular.</param>
    /// <param name="plural">Its plural, where it is not made with an s.</param>
    public static string Text(int count, string noun, string? plural = null) =>
        Invariant($"{count} {(count == 1 ? noun : plural ?? noun + "s")}");
}
