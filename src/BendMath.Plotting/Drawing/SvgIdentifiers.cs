using System.Globalization;
using System.Text.RegularExpressions;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// The drawing library numbers clip paths through the life of the process; counted from 1 in each file, equal figures are equal files. They
/// stand in attributes, behind a quotation mark, which no text in the file holds.
/// </summary>
internal static class SvgIdentifiers
{
    private static readonly Regex Clip = new("(?<=id=\"|\"url\\(#)cl_[0-9a-f]+", RegexOptions.CultureInvariant);

    public static string Renumbered(string svg)
    {
        Dictionary<string, string> numbers = new(StringComparer.Ordinal);
        return Clip.Replace(svg, match =>
        {
            if (!numbers.TryGetValue(match.Value, out string? number))
            {
                number = "cl_" + (numbers.Count + 1).ToString(CultureInfo.InvariantCulture);
                numbers.Add(match.Value, number);
            }

            return number;
        });
    }
}
