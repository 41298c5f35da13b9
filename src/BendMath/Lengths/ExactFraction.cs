using System.Numerics;

namespace BendMath.Lengths;

/// <summary>A non-negative ratio of whole numbers, so that a length as written loses nothing before its one rounding to a double.</summary>
internal readonly record struct ExactFraction
{
    public ExactFraction(BigInteger numerator, BigInteger denominator)
    {
        Numerator = numerator;
        Denominator = denominator;
    }

    public BigInteger Numerator { get; }

    public BigInteger Denominator { get; }

    public static ExactFraction operator +(ExactFraction left, ExactFraction right)
        => new((left.Numerator * right.Denominator) + (right.Numerator * left.Denominator), left.Denominator * right.Denominator);

    public static ExactFraction operator *(ExactFraction left, ExactFraction right)
        => new(left.Numerator * right.Numerator, left.Denominator * right.Denominator);

    public bool IsLessThan(int whole) => Numerator < Denominator * whole;

    /// <summary>The nearest double, ties to even, for values within 2^±900.</summary>
    public double ToDouble()
    {
        if (Numerator.IsZero)
        {
            return 0;
        }

        // n bytes hold a number from 2^(8n-9) to 2^(8n-1), so the shifted quotient lies between 2^56 and 2^72 before it is cut to fit a
        // long.
        var shift = 64 - (8 * (Numerator.ToByteArray().Length - Denominator.ToByteArray().Length));
        var scaled = shift > 0 ? Numerator << shift : Numerator;
        var divisor = shift < 0 ? Denominator << -shift : Denominator;
        var quotient = BigInteger.DivRem(scaled, divisor, out var remainder);
        var inexact = !remainder.IsZero;
        while (quotient > long.MaxValue)
        {
            inexact |= !quotient.IsEven;
            quotient >>= 1;
            shift--;
        }

        // The last bit only says that something was cut off; with more than 54 bits above it, the conversion rounds once and rightly.
        var significand = (long)quotient | (inexact ? 1L : 0L);
        return significand * BitConverter.Int64BitsToDouble((1023L - shift) << 52);
    }
}
