using System.Globalization;
using System.Text;

namespace BendMath.Guards;

/// <summary>
/// Text of a stranger as it may stand in a message: not longer than a person reads, and without a character that moves the cursor, colors a
/// terminal or turns the line around.
/// </summary>
internal static class Quoted
{
    private const int Longest = 40;

    /// <summary>The start of a text.</summary>
    public static string Short(string text)
    {
        if (text.Length <= Longest)
        {
            return Visible(text);
        }

        int end = char.IsHighSurrogate(text[Longest - 1]) ? Longest - 1 : Longest;
        return Visible(text.Substring(0, end)) + "…";
    }

    /// <summary>The whole text; what cannot be seen stands as its code, as <c>\u001b</c>.</summary>
    public static string Visible(string text)
    {
        StringBuilder visible = new(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            bool isPair = i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]);
            bool isHidden = CharUnicodeInfo.GetUnicodeCategory(text[i]) is UnicodeCategory.Control or UnicodeCategory.Format
                or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate;
            if (isPair)
            {
                visible.Append(text[i]).Append(text[++i]);
            }
            else if (isHidden)
            {
                visible.Append("\\u").Append(((int)text[i]).ToString("x4", CultureInfo.InvariantCulture));
            }
            else
            {
                visible.Append(text[i]);
            }
        }

        return visible.ToString();
    }
}
