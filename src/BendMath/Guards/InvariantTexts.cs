using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;

namespace BendMath.Guards;

/// <summary>Interpolated texts that are the same in every culture, however many parts they are added from.</summary>
internal static class InvariantTexts
{
    public static string Invariant(in InvariantText text) => text.ToString();
}

/// <summary>What the compiler puts the parts of an interpolated text into.</summary>
[InterpolatedStringHandler]
internal readonly ref struct InvariantText(int literalLength, int formattedCount)
{
    private const int UsualHole = 12;

    private readonly StringBuilder _text = new(literalLength + UsualHole * formattedCount);

    public override string ToString() => _text.ToString();

    public void AppendLiteral(string value) => _text.Append(value);

    public void AppendFormatted<T>(T value, string? format = null) =>
        _text.Append(value is IFormattable ? ((IFormattable)value).ToString(format, CultureInfo.InvariantCulture) : value?.ToString());

    public void AppendFormatted<T>(T value, int alignment, string? format = null)
    {
        int start = _text.Length;
        AppendFormatted(value, format);
        int missing = Math.Abs(alignment) - (_text.Length - start);
        if (missing > 0)
        {
            _text.Insert(alignment > 0 ? start : _text.Length, " ", missing);
        }
    }
}
