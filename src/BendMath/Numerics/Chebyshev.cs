namespace BendMath.Numerics;

/// <summary>
/// Series in Chebyshev polynomials on [−1, 1]: Clenshaw's sums, the antiderivative of the polynomial through given values.
/// </summary>
internal static class Chebyshev
{
    /// <summary>Number of <see cref="Points"/>.</summary>
    public const int Count = 24;

    private static readonly double[] Cosines = CosinesOf(Count);

    /// <summary>Chebyshev points of the first kind, falling.</summary>
    public static double[] Points { get; } = PointsOf(Count);

    public static double[] PointsOf(int count)
    {
        double[] points = new double[count];
        for (int k = 0; k < count; k++)
        {
            points[k] = Math.Cos((k + 0.5) * Math.PI / count);
        }

        return points;
    }

    public static double Value(double[] series, double u)
    {
        double b1 = 0, b2 = 0;
        double twice = 2 * u;
        for (int i = series.Length - 1; i > 0; i--)
        {
            (b1, b2) = (series[i] + twice * b1 - b2, b1);
        }

        return series[0] + u * b1 - b2;
    }

    /// <summary>The sum and its derivative over u.</summary>
    public static (double Value, double Slope) ValueAndSlope(double[] series, double u)
    {
        double b1 = 0, b2 = 0, d1 = 0, d2 = 0;
        double twice = 2 * u;
        for (int i = series.Length - 1; i > 0; i--)
        {
            (d1, d2) = (2 * b1 + twice * d1 - d2, d1);
            (b1, b2) = (series[i] + twice * b1 - b2, b1);
        }

        return (series[0] + u * b1 - b2, b1 + u * d1 - d2);
    }

    /// <summary>The antiderivative that vanishes at −1 of the polynomial through values at <see cref="Points"/>.</summary>
    public static double[] Antiderivative(ReadOnlySpan<double> values)
    {
        Span<double> c = stackalloc double[Count + 2];
        c.Clear();
        for (int m = 0; m < Count; m++)
        {
            double sum = 0;
            for (int k = 0; k < Count; k++)
            {
                sum += values[k] * Cosines[m * Count + k];
            }

            c[m] = sum;
        }

        double[] series = new double[Count + 1];
        double atStart = 0;
        for (int m = 1; m <= Count; m++)
        {
            series[m] = ((m == 1 ? 2 : 1) * c[m - 1] - c[m + 1]) / (2 * m);
            atStart += m % 2 == 0 ? series[m] : -series[m];
        }

        series[0] = -atStart;
        return series;
    }

    /// <summary>Row m of the cosine transform that turns values at Chebyshev points into coefficient m.</summary>
    public static double[] CosinesOf(int count)
    {
        double[] cosines = new double[count * count];
        for (int m = 0; m < count; m++)
        {
            for (int k = 0; k < count; k++)
            {
                cosines[m * count + k] = (m == 0 ? 1.0 : 2.0) / count * Math.Cos(m * (k + 0.5) * Math.PI / count);
            }
        }

        return cosines;
    }
}
