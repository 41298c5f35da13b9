using BendMath.Lengths;
using UnitsNet;
using UnitsNet.Units;

namespace BendMath.Tests.Lengths;

/// <summary>Expected texts follow from 1 in = 25.4 mm and the stated rounding alone.</summary>
public sealed class LengthStyleTests
{
    [Theory]
    [InlineData(3958.4, 1, LengthRounding.Nearest, "3958.4 mm")]
    [InlineData(3958.4, 3, LengthRounding.Nearest, "3958.400 mm")]
    [InlineData(3958.4, 0, LengthRounding.Nearest, "3958 mm")]
    [InlineData(3958.4, 0, LengthRounding.Up, "3959 mm")]
    [InlineData(0.04, 1, LengthRounding.Nearest, "0.0 mm")]
    [InlineData(-0.04, 1, LengthRounding.Nearest, "0.0 mm")]
    [InlineData(-0.04, 1, LengthRounding.Up, "-0.1 mm")]
    [InlineData(0.05, 1, LengthRounding.Nearest, "0.1 mm")]
    [InlineData(1.005, 2, LengthRounding.Nearest, "1.01 mm")]
    [InlineData(999.96, 1, LengthRounding.Nearest, "1000.0 mm")]
    [InlineData(30, 6, LengthRounding.Nearest, "30.000000 mm")]
    [InlineData(1e9, 0, LengthRounding.Nearest, "1000000000 mm")]
    [InlineData(0, 0, LengthRounding.Up, "0 mm")]
    public void PrintsMillimeters(double millimeters, int decimals, LengthRounding rounding, string text)
        => Assert.Equal(text, LengthText.Format(Length.FromMillimeters(millimeters), LengthStyle.Millimeters(decimals, rounding)));

    [Theory]
    [InlineData(31.75, 3, LengthRounding.Nearest, "1.250 in")]
    [InlineData(76.2, 0, LengthRounding.Up, "3 in")]
    [InlineData(76.2, 6, LengthRounding.Down, "3.000000 in")]
    [InlineData(30, 3, LengthRounding.Nearest, "1.181 in")]
    [InlineData(30, 3, LengthRounding.Up, "1.182 in")]
    [InlineData(-30, 3, LengthRounding.Down, "-1.181 in")]
    public void PrintsDecimalInches(double millimeters, int decimals, LengthRounding rounding, string text)
        => Assert.Equal(text, LengthText.Format(Length.FromMillimeters(millimeters), LengthStyle.DecimalInches(decimals, rounding)));

    [Theory]
    [InlineData(1.25, 64, LengthRounding.Nearest, "1 1/4 in")]
    [InlineData(0.625, 16, LengthRounding.Nearest, "5/8 in")]
    [InlineData(31.4375, 16, LengthRounding.Nearest, "31 7/16 in")]
    [InlineData(31.44, 16, LengthRounding.Nearest, "31 7/16 in")]
    [InlineData(31.44, 16, LengthRounding.Down, "31 7/16 in")]
    [InlineData(31.44, 16, LengthRounding.Up, "31 1/2 in")]
    [InlineData(31.97, 16, LengthRounding.Nearest, "32 in")]
    [InlineData(31.97, 16, LengthRounding.Down, "31 15/16 in")]
    [InlineData(0.03125, 16, LengthRounding.Nearest, "1/16 in")]
    [InlineData(0.03, 16, LengthRounding.Nearest, "0 in")]
    [InlineData(0.03, 16, LengthRounding.Down, "0 in")]
    [InlineData(0.03, 16, LengthRounding.Up, "1/16 in")]
    [InlineData(3, 64, LengthRounding.Up, "3 in")]
    [InlineData(3, 64, LengthRounding.Down, "3 in")]
    [InlineData(-1.25, 8, LengthRounding.Nearest, "-1 1/4 in")]
    [InlineData(-0.03, 16, LengthRounding.Nearest, "0 in")]
    public void PrintsReducedFractions(double inches, int denominator, LengthRounding rounding, string text)
        => Assert.Equal(text, LengthText.Format(Length.FromInches(inches), LengthStyle.FractionalInches(denominator, rounding)));

    [Theory]
    [InlineData(27.5, 16, LengthRounding.Nearest, "2 ft 3 1/2 in")]
    [InlineData(27, 16, LengthRounding.Nearest, "2 ft 3 in")]
    [InlineData(24.5, 16, LengthRounding.Nearest, "2 ft 1/2 in")]
    [InlineData(24, 16, LengthRounding.Nearest, "2 ft")]
    [InlineData(3.5, 16, LengthRounding.Nearest, "3 1/2 in")]
    [InlineData(0, 16, LengthRounding.Nearest, "0 in")]
    [InlineData(23.99, 16, LengthRounding.Nearest, "2 ft")]
    [InlineData(23.99, 16, LengthRounding.Down, "1 ft 11 15/16 in")]
    [InlineData(-27.5, 2, LengthRounding.Nearest, "-2 ft 3 1/2 in")]
    public void PrintsFeetAndInches(double inches, int denominator, LengthRounding rounding, string text)
        => Assert.Equal(text, LengthText.Format(Length.FromInches(inches), LengthStyle.FeetAndInches(denominator, rounding)));

    [Fact]
    public void StepIsTheSmallestDifferencePrinted()
    {
        Assert.Equal(0.0001, LengthStyle.Millimeters(1).Step.Meters);
        Assert.Equal(0.0000254, LengthStyle.DecimalInches(3).Step.Meters);
        Assert.Equal(0.0015875, LengthStyle.FractionalInches(16, LengthRounding.Up).Step.Meters);
        Assert.Equal(0.000396875, LengthStyle.FeetAndInches(64, LengthRounding.Up).Step.Meters);
    }

    [Fact]
    public void StylesSayWhatTheyAreAndCompareByIt()
    {
        Assert.Equal("inches to 1/16, rounded up", LengthStyle.FractionalInches(16, LengthRounding.Up).ToString());
        Assert.Equal("feet and inches to 1/8, rounded down", LengthStyle.FeetAndInches(8, LengthRounding.Down).ToString());
        Assert.Equal("millimeters to 0.1, rounded to the nearest", LengthStyle.Millimeters(1).ToString());
        Assert.Equal("inches to 1, rounded to the nearest", LengthStyle.DecimalInches(0).ToString());
        Assert.Equal(LengthStyle.DecimalInches(3), LengthStyle.DecimalInches(3));
        Assert.NotEqual(LengthStyle.DecimalInches(3), LengthStyle.Millimeters(3));
        Assert.NotEqual(LengthStyle.DecimalInches(3), LengthStyle.DecimalInches(3, LengthRounding.Up));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(128)]
    [InlineData(-16)]
    public void RefusesADenominatorNotOnARule(int denominator)
    {
        var sentence = FormattableString.Invariant($"denominator must be 2, 4, 8, 16, 32 or 64, but is {denominator}.");
        Assert.StartsWith(sentence,
            Assert.Throws<ArgumentOutOfRangeException>(nameof(denominator),
                () => LengthStyle.FractionalInches(denominator, LengthRounding.Up)).Message, StringComparison.Ordinal);
        Assert.StartsWith(sentence,
            Assert.Throws<ArgumentOutOfRangeException>(nameof(denominator),
                () => LengthStyle.FeetAndInches(denominator, LengthRounding.Up)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(7)]
    public void RefusesMoreDecimalsThanMeasured(int decimals)
    {
        Assert.Throws<ArgumentOutOfRangeException>(nameof(decimals), () => LengthStyle.Millimeters(decimals));
        Assert.Throws<ArgumentOutOfRangeException>(nameof(decimals), () => LengthStyle.DecimalInches(decimals));
    }

    [Fact]
    public void RefusesWhatCannotBePrinted()
    {
        var style = LengthStyle.Millimeters(1);
        Assert.Throws<ArgumentOutOfRangeException>("rounding", () => LengthStyle.Millimeters(1, (LengthRounding)9));
        Assert.Throws<ArgumentNullException>("style", () => LengthText.Format(Length.Zero, null!));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => LengthText.Format(new Length(1, (LengthUnit)999), style));
        Assert.Throws<ArgumentOutOfRangeException>("length", () => LengthText.Format(Length.FromMeters(1e307), style));
    }
}
