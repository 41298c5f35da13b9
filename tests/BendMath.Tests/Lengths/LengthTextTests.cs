using System.Globalization;
using BendMath.Lengths;
using UnitsNet;

namespace BendMath.Tests.Lengths;

/// <summary>
/// Expected values are the written number times the exact size of its unit: 1 in = 25.4 mm, 1 ft = 304.8 mm
/// (NIST Special Publication 811, 2008 edition, appendix B.6; from memory), as decimal literals that the compiler rounds once.
/// </summary>
public sealed class LengthTextTests
{
    [Theory]
    [InlineData("30 mm", 0.03)]
    [InlineData("30mm", 0.03)]
    [InlineData("30 MM", 0.03)]
    [InlineData("30 millimetres", 0.03)]
    [InlineData("1 millimetre", 0.001)]
    [InlineData("1 millimeter", 0.001)]
    [InlineData("30 millimeters", 0.03)]
    [InlineData("2.5 cm", 0.025)]
    [InlineData("2.5 centimetres", 0.025)]
    [InlineData("1.2 m", 1.2)]
    [InlineData("1.2 meters", 1.2)]
    [InlineData("3958.4 mm", 3.9584)]
    [InlineData("0 mm", 0)]
    [InlineData(".5 in", 0.0127)]
    [InlineData("3 in", 0.0762)]
    [InlineData("3 in.", 0.0762)]
    [InlineData("1 inch", 0.0254)]
    [InlineData("3 inches", 0.0762)]
    [InlineData("1.25 in", 0.03175)]
    [InlineData("1 1/4 in", 0.03175)]
    [InlineData("1-1/4 in", 0.03175)]
    [InlineData("1‑1/4 in", 0.03175)]
    [InlineData("5/4 in", 0.03175)]
    [InlineData("1 1 / 4 in", 0.03175)]
    [InlineData("5/8\"", 0.015875)]
    [InlineData("5/8''", 0.015875)]
    [InlineData("5/8 in", 0.015875)]
    [InlineData("1/64 in", 0.000396875)]
    [InlineData("2 ft", 0.6096)]
    [InlineData("2 ft.", 0.6096)]
    [InlineData("1 foot", 0.3048)]
    [InlineData("2 feet", 0.6096)]
    [InlineData("2.5 ft", 0.762)]
    [InlineData("2 ft 3 in", 0.6858)]
    [InlineData("2ft3in", 0.6858)]
    [InlineData("2 ft. 3 in.", 0.6858)]
    [InlineData("2 feet 3 inches", 0.6858)]
    [InlineData("2' 3\"", 0.6858)]
    [InlineData("2'3''", 0.6858)]
    [InlineData("2'-3\"", 0.6858)]
    [InlineData("2' - 3\"", 0.6858)]
    [InlineData("2' 3 1/2\"", 0.6985)]
    [InlineData("2'-3 1/2\"", 0.6985)]
    [InlineData("2'-3-1/2\"", 0.6985)]
    [InlineData("2 ft .5 in", 0.6223)]
    [InlineData("2 ft 0 in", 0.6096)]
    [InlineData("0 ft 3 in", 0.0762)]
    [InlineData("½ in", 0.0127)]
    [InlineData("1½ in", 0.0381)]
    [InlineData("1 ½\"", 0.0381)]
    [InlineData("1-½ in", 0.0381)]
    [InlineData("2′ 3½″", 0.6985)]
    [InlineData("2’ 3”", 0.6858)]
    [InlineData("2‘ 3“", 0.6858)]
    [InlineData("3⁄8 in", 0.009525)]
    [InlineData("1 3⁄8 in", 0.034925)]
    [InlineData("3∕8 in", 0.009525)]
    [InlineData("30\u00A0mm", 0.03)]
    [InlineData("30\u202Fmm", 0.03)]
    [InlineData("1\u20021/4\u2002in", 0.03175)]
    [InlineData("  30 mm\t", 0.03)]
    public void ReadsWhatPeopleWrite(string text, double meters)
    {
        Assert.Equal(meters, LengthText.Parse(text).Meters);
        Assert.True(LengthText.TryParse(text, out var length));
        Assert.Equal(meters, length.Meters);
        Assert.True(LengthText.TryParse(text, out _, out var fault));
        Assert.Null(fault);
    }

    /// <summary>The Unicode character database gives each vulgar fraction its numeric value.</summary>
    [Fact]
    public void ReadsEveryVulgarFractionOfUnicode()
    {
        var fractions = Enumerable.Range(0x80, 0x3000).Select(code => (char)code)
            .Where(
                c =>
                char.GetUnicodeCategory(c) == UnicodeCategory.OtherNumber
                    && c.ToString().Normalize(System.Text.NormalizationForm.FormKD) is var plain
                && plain.Contains('⁄', StringComparison.Ordinal) && !plain.EndsWith('⁄'))
            .ToList();

        Assert.Equal(19, fractions.Count);
        Assert.All(fractions, c => Assert.Equal(CharUnicodeInfo.GetNumericValue(c), LengthText.Parse($"{c} m").Meters, 1e-15));
    }

    [Theory]
    [InlineData("30", "\"30\" has no unit; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("1 1/4", "\"1 1/4\" has no unit; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("2 ft 3", "\"2 ft 3\" has no unit after its last number; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("2' 3", "\"2' 3\" has no unit after its last number; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("1 000 mm", "\"1 000 mm\" has no unit between 1 and 000; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("1.5.2 mm", "\"1.5.2 mm\" has no unit between 1.5 and .2; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("1½2 in", "\"1½2 in\" has no unit between ½ and 2; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("-3 mm", "\"-3 mm\" has a minus sign, but a length here is never negative.")]
    [InlineData("−3 mm", "\"−3 mm\" has a minus sign, but a length here is never negative.")]
    [InlineData("-½ in", "\"-½ in\" has a minus sign, but a length here is never negative.")]
    [InlineData("2 ft -3 in", "\"2 ft -3 in\" has a minus sign, but a length here is never negative.")]
    [InlineData("2 ft− 3 in", "\"2 ft− 3 in\" has a minus sign, but a length here is never negative.")]
    [InlineData("1 −1/4 in", "\"1 −1/4 in\" has a minus sign, but a length here is never negative.")]
    [InlineData("1 -1/4 in", "\"1 -1/4 in\" has a hyphen that does not join a whole number and a fraction, as in \"1-1/4 in\".")]
    [InlineData("2-3 ft", "\"2-3 ft\" has a hyphen that does not join a whole number and a fraction, as in \"1-1/4 in\".")]
    [InlineData("2 ft -", "\"2 ft -\" ends where a number belongs.")]
    [InlineData("25,4 mm",
        "\"25,4 mm\" has a comma, which may stand for a decimal point or for thousands; write for example \"25.4 mm\" or \"1000 mm\".")]
    [InlineData("1,000 mm",
        "\"1,000 mm\" has a comma, which may stand for a decimal point or for thousands; write for example \"25.4 mm\" or \"1000 mm\".")]
    [InlineData("5/0 in", "\"5/0 in\" has a fraction with the denominator 0.")]
    [InlineData("1 0/0 in", "\"1 0/0 in\" has a fraction with the denominator 0.")]
    [InlineData("1/ in", "\"1/ in\" has a fraction bar that is not between two whole numbers.")]
    [InlineData("/4 in", "\"/4 in\" has no number before /.")]
    [InlineData("1/2.5 in", "\"1/2.5 in\" has a fraction bar that is not between two whole numbers.")]
    [InlineData("1.5/2 in", "\"1.5/2 in\" has a fraction bar that is not between two whole numbers.")]
    [InlineData("1/", "\"1/\" has a fraction bar that is not between two whole numbers.")]
    [InlineData("1/2/3 in", "\"1/2/3 in\" has a fraction bar where a unit belongs.")]
    [InlineData("½/2 in", "\"½/2 in\" has a fraction bar where a unit belongs.")]
    [InlineData("1 5/4 in", "\"1 5/4 in\" has a fraction of 1 or more after a whole number.")]
    [InlineData("1.5 1/4 in", "\"1.5 1/4 in\" has a fraction after the decimal number 1.5.")]
    [InlineData("1.5½ in", "\"1.5½ in\" has a fraction after the decimal number 1.5.")]
    [InlineData("5. in", "\"5. in\" has a decimal point without a digit after it in 5..")]
    [InlineData("3 in 2 ft", "\"3 in 2 ft\" has its inches before its feet; write the feet first.")]
    [InlineData("2 ft 14 in", "\"2 ft 14 in\" has 12 or more inches beside its feet; add them to the feet.")]
    [InlineData("2 ft 12 in", "\"2 ft 12 in\" has 12 or more inches beside its feet; add them to the feet.")]
    [InlineData("2.5 ft 3 in", "\"2.5 ft 3 in\" has inches after feet that are not a whole number.")]
    [InlineData("2 1/2 ft 3 in", "\"2 1/2 ft 3 in\" has inches after feet that are not a whole number.")]
    [InlineData("2 ft 3 ft", "\"2 ft 3 ft\" has two lengths in one, and only feet and then inches go together.")]
    [InlineData("1 m 20 cm", "\"1 m 20 cm\" has two lengths in one, and only feet and then inches go together.")]
    [InlineData("1'000 mm", "\"1'000 mm\" has two lengths in one, and only feet and then inches go together.")]
    [InlineData("2 ft 3 in 4 in", "\"2 ft 3 in 4 in\" goes on after its inches.")]
    [InlineData("30 mm in", "\"30 mm in\" has no number before in.")]
    [InlineData("mm", "\"mm\" has no number before mm.")]
    [InlineData("2ft.5in",
        "\"2ft.5in\" has a point between ft and 5 that may end the unit or start a decimal; put a space on one side of it.")]
    [InlineData("1e400 mm", "\"1e400 mm\" has a number with an exponent; write the digits out.")]
    [InlineData("1E3 mm", "\"1E3 mm\" has a number with an exponent; write the digits out.")]
    [InlineData("NaN", "\"NaN\" has the word NaN, which is not a unit of length known here; use mm, cm, m, in or ft.")]
    [InlineData("3 yd", "\"3 yd\" has the word yd, which is not a unit of length known here; use mm, cm, m, in or ft.")]
    [InlineData("∞ mm",
        "\"∞ mm\" has the character ∞ (U+221E) where a number or a unit belongs; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("+3 mm", "\"+3 mm\" has the character + where a number or a unit belongs; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("3\u200B mm",
        "\"3\\u200b mm\" has the character U+200B where a number or a unit belongs; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("3\0mm",
        "\"3\\u0000mm\" has the character U+0000 where a number or a unit belongs; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("٣ mm",
        "\"٣ mm\" has the character ٣ (U+0663) where a number or a unit belongs; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData("", "There is no length; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData(" \t", "There is no length; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData(null, "There is no length; write for example \"30 mm\" or \"1 1/4 in\".")]
    public void SaysWhyATextIsNoLength(string? text, string sentence)
    {
        Assert.False(LengthText.TryParse(text, out var length, out var fault));
        Assert.Equal(sentence, fault);
        Assert.Equal(0, length.Meters);
        Assert.False(LengthText.TryParse(text, out _));
        if (text is not null)
        {
            Assert.Equal(sentence, Assert.Throws<FormatException>(() => LengthText.Parse(text)).Message);
        }
    }

    [Fact]
    public void NullIsRefusedByName() => Assert.Throws<ArgumentNullException>("text", () => LengthText.Parse(null!));

    [Fact]
    public void VeryLongTextsAreRefusedAndQuotedShort()
    {
        Assert.False(LengthText.TryParse(new string('9', 400) + " mm", out _, out var fault));
        Assert.Equal($"\"{new string('9', 40)}…\" is longer than 100 characters.", fault);
    }

    /// <summary>The framework's own decimal reader rounds correctly too, and knows nothing of fractions of whole numbers.</summary>
    [Theory]
    [InlineData("0.1")]
    [InlineData("123456789012345678901234567890.123456789")]
    [InlineData("0.000000000000000000000000000000000000000000000123456789")]
    [InlineData("9007199254740993")]
    [InlineData("18446744073709553664")]
    [InlineData("18446744073709553665")]
    [InlineData("9007199254740993.00000000000000000001")]
    [InlineData("9007199254740992.99999999999999999999")]
    [InlineData("999999999999999999999999999999999999999999999999999999999999999999999999999999999")]
    public void ManyDigitsAreRoundedOnce(string digits)
        => Assert.Equal(double.Parse(digits, CultureInfo.InvariantCulture), LengthText.Parse(digits + " m").Meters);

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void ReadsAndPrintsAlikeInEveryCulture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(0.03175, LengthText.Parse("1.25 IN").Meters);
            Assert.Equal(0.0127, LengthText.Parse("½ INCH").Meters);
            Assert.False(LengthText.TryParse("25,4 mm", out _));
            Assert.Equal("3958.4 mm", LengthText.Format(Length.FromMillimeters(3958.4), LengthStyle.Millimeters(1)));
            Assert.Equal("-0.50 in", LengthText.Format(Length.FromInches(-0.5), LengthStyle.DecimalInches(2)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
