namespace BendMath.Tests.Accuracy;

/// <summary>∫f dA, ∫f·y dA and ∫f·z dA.</summary>
internal readonly struct Sums(DoubleDouble f1, DoubleDouble fy, DoubleDouble fz)
{
    public DoubleDouble F1 { get; } = f1;

    public DoubleDouble Fy { get; } = fy;

    public DoubleDouble Fz { get; } = fz;

    public Sums Plus(Sums other, DoubleDouble factor) => new(F1 + (other.F1 * factor), Fy + (other.Fy * factor), Fz + (other.Fz * factor));
}

/// <summary>Gauss–Legendre quadrature in double-double; intervals are halved until the whole agrees with its halves.</summary>
internal static class GaussLegendre
{
    private const int Order = 24;

    private static readonly (DoubleDouble Node, DoubleDouble Weight)[] Rule = Make();

    /// <summary>The error allowed is absolute, of the first integral; those with y and z are smaller by far in meters.</summary>
    public static Sums Adaptive(Func<DoubleDouble, Sums> function, DoubleDouble from, DoubleDouble to, double error) =>
        Halve(function, from, to, Once(function, from, to), error, 0);

    private static Sums Halve(Func<DoubleDouble, Sums> function, DoubleDouble from, DoubleDouble to, Sums whole, double error, int depth)
    {
        DoubleDouble middle = (from + to) * 0.5;
        Sums left = Once(function, from, middle);
        Sums right = Once(function, middle, to);
        Sums both = left.Plus(right, 1);
        Sums apart = both.Plus(whole, -1);
        double lever = 1e-3;
        if (Math.Abs(apart.F1.High) <= error && Math.Abs(apart.Fy.High) <= lever * error && Math.Abs(apart.Fz.High) <= lever * error)
        {
            return both;
        }

        Assert.True(depth < 60, "The reference integral does not settle.");
        return Halve(function, from, middle, left, error, depth + 1).Plus(Halve(function, middle, to, right, error, depth + 1), 1);
    }

    private static Sums Once(Func<DoubleDouble, Sums> function, DoubleDouble from, DoubleDouble to)
    {
        DoubleDouble half = (to - from) * 0.5;
        DoubleDouble middle = (to + from) * 0.5;
        Sums sums = default;
        foreach ((DoubleDouble node, DoubleDouble weight) in Rule)
        {
            sums = sums.Plus(function(middle + (half * node)), half * weight);
        }

        return sums;
    }

    /// <summary>Roots of the Legendre polynomial by Newton's method from the cosine estimate; weights 2/((1 − x²)·P′²).</summary>
    private static (DoubleDouble Node, DoubleDouble Weight)[] Make()
    {
        (DoubleDouble Node, DoubleDouble Weight)[] rule = new (DoubleDouble, DoubleDouble)[Order];
        for (int i = 0; i < Order; i++)
        {
            DoubleDouble x = Math.Cos(Math.PI * (i + 0.75) / (Order + 0.5));
            DoubleDouble slope = 0;
            for (int step = 0; step < 6; step++)
            {
                DoubleDouble previous = 1;
                DoubleDouble current = x;
                for (int n = 2; n <= Order; n++)
                {
                    (previous, current) = (current, ((x * current * ((2 * n) - 1)) - (previous * (n - 1))) / n);
                }

                slope = ((x * current) - previous) * Order / ((x * x) - 1);
                x -= current / slope;
            }

            rule[i] = (x, 2 / ((1 - (x * x)) * slope * slope));
        }

        return rule;
    }
}
