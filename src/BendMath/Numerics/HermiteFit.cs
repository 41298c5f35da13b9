namespace BendMath.Numerics;

/// <summary>
/// The polynomial of degree 15 with given values and slopes at eight Chebyshev points, as a series of Chebyshev polynomials.
/// </summary>
internal static class HermiteFit
{
    public const int Nodes = 8;

    private const int Size = 2 * Nodes;

    private static readonly double[] FromValues = new double[Size * Nodes];

    private static readonly double[] FromSlopes = new double[Size * Nodes];

    /// <summary>
    /// With the Lagrange polynomials ℓ of the nodes, the polynomial is ∑[f_j·(1 − 2ℓ_j′(u_j)(u − u_j)) + f_j′·(u − u_j)]·ℓ_j²; each of
    /// these is turned into a series by its values at sixteen Chebyshev points.
    /// </summary>
    static HermiteFit()
    {
        double[] falling = Chebyshev.PointsOf(Nodes);
        Array.Reverse(falling);
        Places = falling;
        double[] points = Chebyshev.PointsOf(Size);
        double[] cosines = Chebyshev.CosinesOf(Size);
        for (int j = 0; j < Nodes; j++)
        {
            double tilt = 0;
            for (int i = 0; i < Nodes; i++)
            {
                tilt += i == j ? 0 : 1 / (Places[j] - Places[i]);
            }

            for (int k = 0; k < Size; k++)
            {
                double square = 1;
                for (int i = 0; i < Nodes; i++)
                {
                    double factor = i == j ? 1 : (points[k] - Places[i]) / (Places[j] - Places[i]);
                    square *= factor * factor;
                }

                double away = points[k] - Places[j];
                for (int m = 0; m < Size; m++)
                {
                    FromValues[m * Nodes + j] += cosines[m * Size + k] * (1 - 2 * tilt * away) * square;
                    FromSlopes[m * Nodes + j] += cosines[m * Size + k] * away * square;
                }
            }
        }
    }

    /// <summary>The nodes on [−1, 1], rising.</summary>
    public static double[] Places { get; }

    /// <summary>The series, and how large its last three terms are: what is left out is less.</summary>
    public static double[] Series(ReadOnlySpan<double> values, ReadOnlySpan<double> slopes, out double last)
    {
        double[] series = new double[Size];
        for (int m = 0; m < Size; m++)
        {
            double sum = 0;
            for (int j = 0; j < Nodes; j++)
            {
                sum += FromValues[m * Nodes + j] * values[j] + FromSlopes[m * Nodes + j] * slopes[j];
            }

            series[m] = sum;
        }

        last = Math.Abs(series[Size - 3]) + Math.Abs(series[Size - 2]) + Math.Abs(series[Size - 1]);
        return series;
    }
}
