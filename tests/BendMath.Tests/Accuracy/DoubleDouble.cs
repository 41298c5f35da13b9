namespace BendMath.Tests.Accuracy;

/// <summary>
/// A number of about 31 digits: the unevaluated sum of two doubles. Error-free sum and product after Dekker, A floating-point technique for
/// extending the available precision, Numer. Math. 18 (1971) 224-242 (from memory).
/// </summary>
internal readonly struct DoubleDouble(double high, double low)
{
    public DoubleDouble(double value)
        : this(value, 0)
    {
    }

    public static DoubleDouble Zero => default;

    public double High { get; } = high;

    public double Low { get; } = low;

    public static implicit operator DoubleDouble(double value) => new(value);

    public static explicit operator double(DoubleDouble value) => value.High + value.Low;

    public static DoubleDouble operator -(DoubleDouble a) => new(-a.High, -a.Low);

    public static DoubleDouble operator +(DoubleDouble a, DoubleDouble b)
    {
        (double s, double e) = Sum(a.High, b.High);
        (double t, double f) = Sum(a.Low, b.Low);
        (s, e) = QuickSum(s, e + t);
        (s, e) = QuickSum(s, e + f);
        return new(s, e);
    }

    public static DoubleDouble operator -(DoubleDouble a, DoubleDouble b) => a + -b;

    public static DoubleDouble operator *(DoubleDouble a, DoubleDouble b)
    {
        double p = a.High * b.High;
        double e = Math.FusedMultiplyAdd(a.High, b.High, -p);
        (double s, double t) = QuickSum(p, e + ((a.High * b.Low) + (a.Low * b.High)));
        return new(s, t);
    }

    /// <summary>Long division in three quotients.</summary>
    public static DoubleDouble operator /(DoubleDouble a, DoubleDouble b)
    {
        double first = a.High / b.High;
        DoubleDouble rest = a - (b * first);
        double second = rest.High / b.High;
        rest -= b * second;
        double third = rest.High / b.High;
        (double s, double t) = QuickSum(first, second);
        return new DoubleDouble(s, t) + third;
    }

    public static bool operator <(DoubleDouble a, DoubleDouble b) => a.High < b.High || (a.High == b.High && a.Low < b.Low);

    public static bool operator >(DoubleDouble a, DoubleDouble b) => b < a;

    public static DoubleDouble Abs(DoubleDouble a) => a.High < 0 ? -a : a;

    public static DoubleDouble Min(DoubleDouble a, DoubleDouble b) => b < a ? b : a;

    public static DoubleDouble Max(DoubleDouble a, DoubleDouble b) => a < b ? b : a;

    /// <summary>Two steps of Newton's method from the square root in double precision.</summary>
    public static DoubleDouble Sqrt(DoubleDouble a)
    {
        if (a.High <= 0)
        {
            return Zero;
        }

        DoubleDouble x = Math.Sqrt(a.High);
        x = (x + (a / x)) * 0.5;
        return (x + (a / x)) * 0.5;
    }

    /// <summary>Two steps of Newton's method from the cube root in double precision.</summary>
    public static DoubleDouble CubeRoot(DoubleDouble a)
    {
        DoubleDouble x = Math.Cbrt(a.High);
        for (int i = 0; i < 2; i++)
        {
            x -= ((x * x * x) - a) / (x * x * 3);
        }

        return x;
    }

    public static DoubleDouble Power(DoubleDouble a, int exponent)
    {
        DoubleDouble result = 1;
        DoubleDouble square = a;
        for (int rest = exponent; rest > 0; rest >>= 1)
        {
            if ((rest & 1) == 1)
            {
                result *= square;
            }

            square *= square;
        }

        return result;
    }

    /// <summary>Not for printing: the leading double only.</summary>
    public override string ToString() => FormattableString.Invariant($"{High:R} + {Low:E3}");

    private static (double Sum, double Error) Sum(double a, double b)
    {
        double s = a + b;
        double bb = s - a;
        return (s, (a - (s - bb)) + (b - bb));
    }

    private static (double Sum, double Error) QuickSum(double a, double b)
    {
        double s = a + b;
        return (s, b - (s - a));
    }
}
