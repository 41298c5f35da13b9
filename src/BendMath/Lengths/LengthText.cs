using System.Diagnostics.CodeAnalysis;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Lengths;

/// <summary>
/// Lengths as people in a shop write them, read and printed alike in every culture.
/// </summary>
/// <remarks>
/// <para>Read: <c>30 mm</c>, <c>2.5 cm</c>, <c>1.2 m</c>, <c>1.25 in</c>, <c>1 1/4 in</c>, <c>1-1/4 in</c>, <c>5/8"</c>, <c>1½"</c>, <c>2
/// ft</c>, <c>2 ft 3 in</c>, <c>2' 3 1/2"</c>, <c>2'-3"</c>, with the units written out or with typographic primes, quotes, spaces and
/// fractions. Capitals do not matter: <c>MM</c> is <c>mm</c>.</para>
/// <para>Refused, each with its sentence: no unit; a minus sign (a length here is never negative); a comma, because <c>25,4 mm</c> could
/// mean two things; an exponent; inches before feet; 12 or more inches beside feet; a fraction of 1 or more beside a whole number; two
/// numbers without a unit between them; more than 100 characters.</para>
/// <para>What is read is exact up to its one rounding to the nearest double in meters: 1 in = 25.4 mm and 1 ft = 304.8 mm, the
/// international inch and foot (NIST Special Publication 811, 2008 edition, appendix B.6), so that <c>3 in</c> is 0.0762 m.</para>
/// </remarks>
public static class LengthText
{
    /// <summary>Reads a length.</summary>
    /// <param name="text">The length with its unit, such as <c>1 1/4 in</c>.</param>
    /// <returns>The length in meters, zero or greater.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="FormatException">The text is not a length; the message says why in one sentence.</exception>
    public static Length Parse(string text)
        => TryParse(Guard.NotNull(text, nameof(text)), out var length, out var fault) ? length : throw new FormatException(fault);

    /// <summary>Reads a length if the text is one.</summary>
    /// <param name="text">The length with its unit, or anything else.</param>
    /// <param name="length">The length in meters, zero or greater; zero if the text is not a length.</param>
    /// <returns>Whether the text is a length.</returns>
    public static bool TryParse(string? text, out Length length) => TryParse(text, out length, out _);

    /// <summary>Reads a length, or says why the text is none, for a reader that reports every fault of a file.</summary>
    /// <param name="text">The length with its unit, or anything else.</param>
    /// <param name="length">The length in meters, zero or greater; zero if the text is not a length.</param>
    /// <param name="fault">One sentence that quotes the text and says what is wrong with it; null if the text is a length.</param>
    /// <returns>Whether the text is a length.</returns>
#if NETSTANDARD2_0
    public static bool TryParse(string? text, out Length length, out string? fault)
#else
    public static bool TryParse(string? text, out Length length, [NotNullWhen(false)] out string? fault)
#endif
    {
        fault = LengthReader.Read(text, out var meters);
        length = Length.FromMeters(meters);
        return fault is null;
    }

    /// <summary>
    /// Prints a length with its unit, such as <c>3958.4 mm</c> or <c>1 1/4 in</c>. <see cref="Parse"/> reads the text back, unless the
    /// length is negative or has some hundred digits.
    /// </summary>
    /// <param name="length">The length, of either sign.</param>
    /// <param name="style">Unit, smallest step and rounding.</param>
    /// <returns>The rounded length; a length that rounds to zero has no sign.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="style"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="length"/> is not finite, has an undefined unit, or has more steps of
    /// the style than a double can count.</exception>
    public static string Format(Length length, LengthStyle style)
    {
        var meters = Guard.Finite(length, nameof(length));
        return Guard.NotNull(style, nameof(style)).Print(meters);
    }
}
