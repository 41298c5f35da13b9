using System.Globalization;
using System.Numerics;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Lengths;

/// <summary>
/// How a length is printed: unit, smallest step and rounding. Immutable and thread-safe; two styles are equal when they print alike.
/// </summary>
public sealed record LengthStyle
{
    private const int MostDecimals = 6;
    private const double Negligible = 1e-4;
    private readonly Notation _notation;
    private readonly int _fineness;

    private LengthStyle(Notation notation, int fineness, LengthRounding rounding)
    {
        if (rounding is not (LengthRounding.Nearest or LengthRounding.Down or LengthRounding.Up))
        {
            throw Guard.OutOfRange(nameof(rounding), "must be Nearest, Down or Up", $"is {(int)rounding}");
        }

        _notation = notation;
        _fineness = fineness;
        Rounding = rounding;
    }

    private enum Notation
    {
        Millimeters,
        DecimalInches,
        FractionalInches,
        FeetAndInches,
    }

    /// <summary>Which way a length goes to the next step.</summary>
    public LengthRounding Rounding { get; }

    /// <summary>The smallest difference this style can print, such as 0.1 mm or 1/16 in.</summary>
    public Length Step => Length.FromMeters(new ExactFraction(StepNumerator, StepDenominator).ToDouble());

    /// <summary>Whether it prints inches, or feet and inches.</summary>
    public bool IsInInches => !IsMetric;

    private bool IsMetric => _notation == Notation.Millimeters;

    // A step is StepNumerator/StepDenominator meters; an inch is 254/10000 m exactly.
    private int StepNumerator => IsMetric ? 1 : 254;

    private long StepDenominator => (IsMetric ? 1_000L : 10_000L) * StepsPerUnit;

    private int StepsPerUnit => _notation is Notation.Millimeters or Notation.DecimalInches ? PowerOfTen(_fineness) : _fineness;

    /// <summary>Millimeters with a fixed number of decimals, such as <c>3958.4 mm</c>.</summary>
    /// <param name="decimals">Digits after the decimal point, 0 to 6.</param>
    /// <param name="rounding">Which way to the next step.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static LengthStyle Millimeters(int decimals, LengthRounding rounding = LengthRounding.Nearest)
        => new(Notation.Millimeters, CheckedDecimals(decimals), rounding);

    /// <summary>Inches with a fixed number of decimals, such as <c>1.250 in</c>.</summary>
    /// <param name="decimals">Digits after the decimal point, 0 to 6.</param>
    /// <param name="rounding">Which way to the next step.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static LengthStyle DecimalInches(int decimals, LengthRounding rounding = LengthRounding.Nearest)
        => new(Notation.DecimalInches, CheckedDecimals(decimals), rounding);

    /// <summary>Inches with a reduced fraction, such as <c>31 7/16 in</c>.</summary>
    /// <param name="denominator">The finest fraction: 2, 4, 8, 16, 32 or 64, as on a rule.</param>
    /// <param name="rounding">Which way to the next fraction. A sixteenth of an inch is coarse enough to matter, so this has no
    /// default.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static LengthStyle FractionalInches(int denominator, LengthRounding rounding)
        => new(Notation.FractionalInches, CheckedDenominator(denominator), rounding);

    /// <summary>
    /// Feet and inches with a reduced fraction, such as <c>2 ft 3 1/2 in</c>; the part that is zero is left out (<c>2 ft</c>, <c>3 1/2
    /// in</c>, <c>0 in</c>).
    /// </summary>
    /// <param name="denominator">The finest fraction of an inch: 2, 4, 8, 16, 32 or 64, as on a rule.</param>
    /// <param name="rounding">Which way to the next fraction. A sixteenth of an inch is coarse enough to matter, so this has no
    /// default.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of its range.</exception>
    public static LengthStyle FeetAndInches(int denominator, LengthRounding rounding)
        => new(Notation.FeetAndInches, CheckedDenominator(denominator), rounding);

    /// <summary>The length that is printed: a whole number of steps.</summary>
    /// <param name="length">The length, of either sign; rounding up is away from zero, as in print.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite, or has more steps than a double can count.</exception>
    public Length Round(Length length) => Length.FromMeters(Round(Guard.Finite(length, nameof(length))));

    /// <summary>Unit, step and rounding in words, such as <c>inches to 1/16, rounded up</c>.</summary>
    public override string ToString()
    {
        var unit = _notation switch
        {
            Notation.Millimeters => "millimeters to " + DecimalText(BigInteger.One),
            Notation.DecimalInches => "inches to " + DecimalText(BigInteger.One),
            Notation.FractionalInches => "inches to " + FractionText(BigInteger.One),
            _ => "feet and inches to " + FractionText(BigInteger.One),
        };
        var direction = Rounding switch
        {
            LengthRounding.Down => "rounded down",
            LengthRounding.Up => "rounded up",
            _ => "rounded to the nearest",
        };
        return $"{unit}, {direction}";
    }

    /// <summary>The same in meters, for a sum of lengths, which may exceed what one length may be.</summary>
    internal double Round(double meters)
    {
        double steps = (double)WholeSteps(ExactSteps(meters, "length"));
        return Math.Sign(meters) * (steps * StepNumerator / StepDenominator);
    }

    internal string Print(double meters)
    {
        var steps = WholeSteps(ExactSteps(meters, "length"));
        var sign = meters < 0 && !steps.IsZero ? "-" : "";
        return sign + _notation switch
        {
            Notation.Millimeters => DecimalText(steps) + " mm",
            Notation.DecimalInches => DecimalText(steps) + " in",
            Notation.FractionalInches => FractionText(steps) + " in",
            _ => FeetAndInchesText(steps),
        };
    }

    private static int CheckedDecimals(int decimals)
        => decimals is >= 0 and <= MostDecimals
            ? decimals
            : throw Guard.Fault(nameof(decimals), decimals, Invariant($"must lie between 0 and {MostDecimals}"));

    private static int CheckedDenominator(int denominator)
        => denominator is 2 or 4 or 8 or 16 or 32 or 64
            ? denominator
            : throw Guard.Fault(nameof(denominator), denominator, "must be 2, 4, 8, 16, 32 or 64");

    private static int PowerOfTen(int exponent)
    {
        var power = 1;
        for (var i = 0; i < exponent; i++)
        {
            power *= 10;
        }

        return power;
    }

    private double ExactSteps(double meters, string name)
    {
        double steps = Math.Abs(meters) * StepDenominator / StepNumerator;
        return steps < double.PositiveInfinity ? steps
            : throw Guard.Fault(name, Length.FromMeters(meters), "must be short enough for its steps to be counted");
    }

    private static string Digits(BigInteger number) => number.ToString(CultureInfo.InvariantCulture);

    private BigInteger WholeSteps(double steps)
    {
        var below = Math.Floor(steps);
        var threshold = Rounding switch
        {
            LengthRounding.Down => 1 - Negligible,
            LengthRounding.Up => Negligible,
            _ => 0.5 - Negligible,
        };
        return new BigInteger(steps - below > threshold ? below + 1 : below);
    }

    private string DecimalText(BigInteger steps)
    {
        var digits = Digits(steps).PadLeft(_fineness + 1, '0');
        return _fineness == 0 ? digits : digits.Insert(digits.Length - _fineness, ".");
    }

    private string FractionText(BigInteger steps)
    {
        var whole = BigInteger.DivRem(steps, _fineness, out var rest);
        if (rest.IsZero)
        {
            return Digits(whole);
        }

        var common = BigInteger.GreatestCommonDivisor(rest, _fineness);
        var fraction = $"{Digits(rest / common)}/{Digits(_fineness / common)}";
        return whole.IsZero ? fraction : $"{Digits(whole)} {fraction}";
    }

    private string FeetAndInchesText(BigInteger steps)
    {
        var feet = BigInteger.DivRem(steps, 12 * _fineness, out var inches);
        if (feet.IsZero)
        {
            return FractionText(inches) + " in";
        }

        return inches.IsZero ? $"{Digits(feet)} ft" : $"{Digits(feet)} ft {FractionText(inches)} in";
    }
}
