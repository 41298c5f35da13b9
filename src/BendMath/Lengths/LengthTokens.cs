using System.Globalization;
using System.Numerics;

namespace BendMath.Lengths;

internal enum LengthTokenKind
{
    Integer,
    Decimal,
    VulgarFraction,
    FractionBar,
    Hyphen,
    MinusSign,
    Unit,
    End,
}

/// <summary>One piece of a written length. A unit's value is its size in meters.</summary>
internal sealed class LengthToken(LengthTokenKind kind, string text, bool afterSpace, ExactFraction value)
{
    public LengthTokenKind Kind { get; } = kind;

    public string Text { get; } = text;

    public bool AfterSpace { get; } = afterSpace;

    public ExactFraction Value { get; } = value;
}

/// <summary>Cuts a written length into numbers, units and the marks between them.</summary>
internal static class LengthTokens
{
    public static readonly ExactFraction Inch = new(254, 10_000);
    public static readonly ExactFraction Foot = new(3048, 10_000);
    public static readonly ExactFraction Millimeter = new(1, 1000);
    private static readonly ExactFraction Centimeter = new(1, 100);
    private static readonly ExactFraction Meter = new(1, 1);

    private static readonly Dictionary<string, ExactFraction> Units = new(StringComparer.OrdinalIgnoreCase)
    {
        ["mm"] = Millimeter,
        ["millimeter"] = Millimeter,
        ["millimeters"] = Millimeter,
        ["millimetre"] = Millimeter,
        ["millimetres"] = Millimeter,
        ["cm"] = Centimeter,
        ["centimeter"] = Centimeter,
        ["centimeters"] = Centimeter,
        ["centimetre"] = Centimeter,
        ["centimetres"] = Centimeter,
        ["m"] = Meter,
        ["meter"] = Meter,
        ["meters"] = Meter,
        ["metre"] = Meter,
        ["metres"] = Meter,
        ["in"] = Inch,
        ["inch"] = Inch,
        ["inches"] = Inch,
        ["ft"] = Foot,
        ["foot"] = Foot,
        ["feet"] = Foot,
    };

    // Unicode names these VULGAR FRACTION ...; numerator and denominator of U+00BC-00BE, U+2150-215E and U+2189.
    private static readonly Dictionary<char, ExactFraction> VulgarFractions = new()
    {
        ['¼'] = new(1, 4),
        ['½'] = new(1, 2),
        ['¾'] = new(3, 4),
        ['⅐'] = new(1, 7),
        ['⅑'] = new(1, 9),
        ['⅒'] = new(1, 10),
        ['⅓'] = new(1, 3),
        ['⅔'] = new(2, 3),
        ['⅕'] = new(1, 5),
        ['⅖'] = new(2, 5),
        ['⅗'] = new(3, 5),
        ['⅘'] = new(4, 5),
        ['⅙'] = new(1, 6),
        ['⅚'] = new(5, 6),
        ['⅛'] = new(1, 8),
        ['⅜'] = new(3, 8),
        ['⅝'] = new(5, 8),
        ['⅞'] = new(7, 8),
        ['↉'] = new(0, 3),
    };

    /// <summary>The pieces, closed by an end piece; or what is wrong, as the rest of a sentence that starts with the text.</summary>
    public static string? Cut(string text, List<LengthToken> tokens)
    {
        var at = 0;
        while (true)
        {
            var start = at;
            while (at < text.Length && char.IsWhiteSpace(text[at]))
            {
                at++;
            }

            var spaced = at > start;
            if (at == text.Length)
            {
                tokens.Add(new(LengthTokenKind.End, "", spaced, default));
                return null;
            }

            if (Next(text, ref at, spaced, tokens) is { } fault)
            {
                return fault;
            }
        }
    }

    public static bool IsUnit(string word) => Units.ContainsKey(word);

    private static string? Next(string text, ref int at, bool spaced, List<LengthToken> tokens)
    {
        var c = text[at];
        if (IsDigit(c) || (c == '.' && IsDigit(At(text, at + 1))))
        {
            return Number(text, ref at, spaced, tokens);
        }

        if (char.IsLetter(c))
        {
            return Word(text, ref at, spaced, tokens);
        }

        if (VulgarFractions.TryGetValue(c, out var fraction))
        {
            at++;
            tokens.Add(new(LengthTokenKind.VulgarFraction, c.ToString(), spaced, fraction));
            return null;
        }

        if (IsFootMark(c))
        {
            var doubled = IsFootMark(At(text, at + 1));
            at += doubled ? 2 : 1;
            tokens.Add(new(LengthTokenKind.Unit, doubled ? "\"" : "'", spaced, doubled ? Inch : Foot));
            return null;
        }

        at++;
        switch (c)
        {
            case '"' or '″' or '”' or '“':
                tokens.Add(new(LengthTokenKind.Unit, "\"", spaced, Inch));
                return null;
            case '/' or '⁄' or '∕':
                tokens.Add(new(LengthTokenKind.FractionBar, "/", spaced, default));
                return null;
            case '-' or '‐' or '‑' or '–':
                tokens.Add(new(LengthTokenKind.Hyphen, "-", spaced, default));
                return null;
            case '−':
                tokens.Add(new(LengthTokenKind.MinusSign, "-", spaced, default));
                return null;
            case ',':
                return "has a comma, which may stand for a decimal point or for thousands; write for example \"25.4 mm\" or \"1000 mm\"";
            default:
                return $"has the character {Shown(c)} where a number or a unit belongs; write for example \"30 mm\" or \"1 1/4 in\"";
        }
    }

    private static string? Number(string text, ref int at, bool spaced, List<LengthToken> tokens)
    {
        var start = at;
        var digits = BigInteger.Zero;
        var scale = BigInteger.One;
        var kind = LengthTokenKind.Integer;
        for (; at < text.Length; at++)
        {
            var c = text[at];
            if (c == '.' && kind == LengthTokenKind.Integer)
            {
                kind = LengthTokenKind.Decimal;
            }
            else if (IsDigit(c))
            {
                digits = (digits * 10) + (c - '0');
                scale *= kind == LengthTokenKind.Decimal ? 10 : 1;
            }
            else
            {
                break;
            }
        }

        var number = text.Substring(start, at - start);
        if (text[at - 1] == '.')
        {
            return $"has a decimal point without a digit after it in {number}";
        }

        tokens.Add(new(kind, number, spaced, new(digits, scale)));
        return null;
    }

    private static string? Word(string text, ref int at, bool spaced, List<LengthToken> tokens)
    {
        var start = at;
        while (at < text.Length && char.IsLetter(text[at]))
        {
            at++;
        }

        var word = text.Substring(start, at - start);
        var afterNumber = tokens.Count > 0 && tokens[tokens.Count - 1].Kind is LengthTokenKind.Integer or LengthTokenKind.Decimal;
        if (afterNumber && !spaced && word is "e" or "E")
        {
            return "has a number with an exponent; write the digits out";
        }

        if (!Units.TryGetValue(word, out var size))
        {
            return $"has the word {word}, which is not a unit of length known here; use mm, cm, m, in or ft";
        }

        if (At(text, at) == '.' && word.Length == 2 && (size == Inch || size == Foot))
        {
            at++;
            if (IsDigit(At(text, at)))
            {
                return $"has a point between {word} and {text[at]} that may end the unit or start a decimal; put a space on one side of it";
            }
        }

        tokens.Add(new(LengthTokenKind.Unit, word, spaced, size));
        return null;
    }

    private static char At(string text, int index) => index < text.Length ? text[index] : '\0';

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private static bool IsFootMark(char c) => c is '\'' or '′' or '’' or '‘';

    private static string Shown(char c)
    {
        var code = "U+" + ((int)c).ToString("X4", CultureInfo.InvariantCulture);
        if (c is > ' ' and <= '~')
        {
            return c.ToString();
        }

        var isInvisible = char.IsControl(c) || char.IsSurrogate(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format;
        return isInvisible ? code : $"{c} ({code})";
    }
}
