using MathNet.Numerics.Integration;

namespace BendMath.Distortion.Shape;

/// <summary>
/// Places on a quarter of a round tube, θ from the neutral plane to the crown, by Gauss' rule, with the modes sin 2nθ and the integrals
/// from zero to each place.
/// </summary>
internal static class QuarterRing
{
    public const int Modes = 8;

    public const int Places = 24;

    /// <summary>Angles of the places.</summary>
    public static double[] Angles { get; } = new double[Places];

    /// <summary>Weights of an integral over the quarter.</summary>
    public static double[] Weights { get; } = new double[Places];

    /// <summary>Weights of an integral from zero to place i, at i·<see cref="Places"/>.</summary>
    public static double[] Running { get; } = new double[Places * Places];

    /// <summary>sin 2nθ of place i, at i·<see cref="Modes"/> + n − 1.</summary>
    public static double[] Sines { get; } = new double[Places * Modes];

    /// <summary>2n·cos 2nθ of place i.</summary>
    public static double[] Cosines { get; } = new double[Places * Modes];

    static QuarterRing()
    {
        GaussLegendreRule rule = new(-1, 1, Places);
        const double Half = Math.PI / 4;
        for (int i = 0; i < Places; i++)
        {
            Angles[i] = Half * (1 + rule.Abscissas[i]);
            Weights[i] = Half * rule.Weights[i];
            for (int n = 1; n <= Modes; n++)
            {
                Sines[i * Modes + n - 1] = Math.Sin(2 * n * Angles[i]);
                Cosines[i * Modes + n - 1] = 2 * n * Math.Cos(2 * n * Angles[i]);
            }
        }

        // With Legendre's polynomials P_k, the rule's own interpolation: ∫f from −1 to x = Σ_j w_j f_j Σ_k (k + ½)·P_k(x_j)·∫P_k,
        // and ∫P_k = (P_k+1 − P_k−1)/(2k + 1).
        for (int i = 0; i < Places; i++)
        {
            double[] at = Legendre(rule.Abscissas[i]);
            for (int j = 0; j < Places; j++)
            {
                double[] value = Legendre(rule.Abscissas[j]);
                double sum = (at[1] + 1) / 2;
                for (int k = 1; k < Places; k++)
                {
                    sum += value[k] * (at[k + 1] - at[k - 1]) / 2;
                }

                Running[i * Places + j] = Half * rule.Weights[j] * sum;
            }
        }
    }

    private static double[] Legendre(double x)
    {
        double[] p = new double[Places + 1];
        p[0] = 1;
        p[1] = x;
        for (int k = 1; k < Places; k++)
        {
            p[k + 1] = ((2 * k + 1) * x * p[k] - k * p[k - 1]) / (k + 1);
        }

        return p;
    }
}
