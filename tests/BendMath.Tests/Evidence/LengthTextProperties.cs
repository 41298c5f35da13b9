using BendMath.Lengths;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Evidence;

/// <summary>Relations between reading and printing, on lengths up to 20 m and every style.</summary>
public sealed class LengthTextProperties
{
    /// <summary>Reading back a printed length gives the multiple of the step that was printed, as decimal arithmetic has it.</summary>
    [Property(MaxTest = 1000)]
    public Property ReadingBackGivesTheRoundedLength()
        => Prop.ForAll(LengthsAndStyles(), sample =>
        {
            var back = LengthText.Parse(LengthText.Format(sample.Length, sample.Style)).Meters;
            var steps = Math.Round(back / sample.Style.Step.Meters);
            Assert.Equal((double)((decimal)steps * sample.ExactStep), back);

            var change = (back - sample.Length.Meters) / sample.Style.Step.Meters;
            var (least, most) = sample.Style.Rounding switch
            {
                LengthRounding.Down => (-1d, 0d),
                LengthRounding.Up => (0d, 1d),
                _ => (-0.5, 0.5),
            };
            Assert.InRange(change, least - 1.01e-4, most + 1.01e-4);
        });

    [Property(MaxTest = 1000)]
    public Property PrintingAgainChangesNothing()
        => Prop.ForAll(LengthsAndStyles(), sample =>
        {
            var text = LengthText.Format(sample.Length, sample.Style);
            Assert.Equal(text, LengthText.Format(LengthText.Parse(text), sample.Style));
        });

    [Property(MaxTest = 1000)]
    public Property OppositeLengthsPrintAlikeButForTheSign()
        => Prop.ForAll(LengthsAndStyles(), sample =>
        {
            var text = LengthText.Format(sample.Length, sample.Style);
            var isZero = LengthText.Parse(text).Meters == 0;
            Assert.Equal(isZero ? text : "-" + text, LengthText.Format(-sample.Length, sample.Style));
        });

    /// <summary>A fraction, a mixed number and feet with inches are other names for one number of sixty-fourths.</summary>
    [Property(MaxTest = 500)]
    public Property EveryNotationOfSixtyFourthsIsTheSameLength()
        => Prop.ForAll(Gen.Choose(0, 64 * 240).ToArbitrary(), count =>
        {
            var expected = (double)(count * 0.000396875m);
            var (inches, rest) = Math.DivRem(count, 64);
            string[] notations =
            [
                $"{count}/64 in",
                $"{inches} {rest}/64\"",
                $"{inches}-{rest}⁄64 inches",
                FormattableString.Invariant($"{count / 64m} in"),
                FormattableString.Invariant($"{count * 0.396875m} mm"),
                FormattableString.Invariant($"{count * 0.000396875m} m"),
                $"{inches / 12}' {inches % 12} {rest}/64\"",
                $"{inches / 12} ft {inches % 12}-{rest}/64 in",
            ];
            Assert.All(notations, text => Assert.Equal(expected, LengthText.Parse(text).Meters));
        });

    /// <summary>Whatever is typed: a length that is finite and not negative, or one sentence, and never an exception.</summary>
    [Property(MaxTest = 5000)]
    public Property EveryTextIsALengthOrASentence()
        => Prop.ForAll(Scribbles().ToArbitrary(), text =>
        {
            if (LengthText.TryParse(text, out var length, out var fault))
            {
                Assert.Null(fault);
                Assert.InRange(length.Meters, 0, double.MaxValue);
            }
            else
            {
                Assert.NotNull(fault);
                Assert.EndsWith(".", fault, StringComparison.Ordinal);
                Assert.DoesNotContain('\n', fault);
                Assert.Equal(0, length.Meters);
            }
        });

    private static Gen<string> Scribbles()
    {
        string[] pieces =
            ["0", "1", "12", "3.5", ".", ",", "/", "⁄", "½", "-", "−", " ", "\u00A0", "\n", "mm", "in", "in.", "ft", "'", "\"", "″", "e",
                "x", "∞", "\uD800", "\0"];
        return Gen.Elements(pieces).ArrayOf().Select(string.Concat);
    }

    private static Arbitrary<Sample> LengthsAndStyles()
    {
        var rounding = Gen.Elements(LengthRounding.Nearest, LengthRounding.Down, LengthRounding.Up);
        var decimals = Gen.Choose(0, 4);
        var denominators = Gen.Elements(2, 4, 8, 16, 32, 64);
        var styles = Gen.OneOf(
            from places in decimals from way in rounding select (LengthStyle.Millimeters(places, way), 0.001m / Power(places)),
            from places in decimals from way in rounding select (LengthStyle.DecimalInches(places, way), 0.0254m / Power(places)),
            from parts in denominators from way in rounding select (LengthStyle.FractionalInches(parts, way), 0.0254m / parts),
            from parts in denominators from way in rounding select (LengthStyle.FeetAndInches(parts, way), 0.0254m / parts));
        var lengths = Gen.OneOf(
            Gen.Choose(0, 20_000_000).Select(micrometers => Length.FromMeters(micrometers / 1e6)),
            Gen.Choose(0, 64 * 700).Select(count => Length.FromInches(count / 64d)),
            Gen.Choose(0, int.MaxValue).Select(part => Length.FromMeters(20 * (part / (double)int.MaxValue))));
        return (from length in lengths from style in styles select new Sample(length, style.Item1, style.Item2)).ToArbitrary();
    }

    private static decimal Power(int places) => (decimal)Math.Pow(10, places);

    private sealed record Sample(Length Length, LengthStyle Style, decimal ExactStep);
}
