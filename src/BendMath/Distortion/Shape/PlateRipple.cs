using BendMath.Numerics.Integrals;

namespace BendMath.Distortion.Shape;

/// <summary>
/// Sideways waves of a flat bent the hard way. Strain at its edge at which they may begin, both edges free, with half-wave L: w =
/// f(y)·sin(πx/L), f a polynomial, per area ½·(E_s·t³/9)·[(¼ + ¾E_t/E_s)·w_xx² + w_yy² + w_xx·w_yy + w_xy²] − ½·σ_c·t·w_x².
/// </summary>
internal static class PlateRipple
{
    private const int Functions = 8;

    private const double Growth = 1.25;

    private const double Most = 1;

    /// <summary>Least strain of the edge at which a wave stores no work.</summary>
    /// <param name="law">The law.</param>
    /// <param name="slenderness">t/h.</param>
    /// <param name="halfWave">L/h.</param>
    /// <param name="cancellation">To stop.</param>
    public static double CriticalStrain(StressStrainLaw law, double slenderness, double halfWave, CancellationToken cancellation)
    {
        SymmetricSystem system = new(Functions);
        double[] basis = new double[3 * Functions];
        return LeastStrain(
            1e-3 * slenderness * slenderness * Math.Min(1, 1 / halfWave),
            strain => !IsStable(law, slenderness, Math.PI / halfWave, strain, system, basis),
            cancellation);
    }

    /// <summary>
    /// The same by the lateral buckling of a beam, with the sideways stiffness t³/12·∫E_t dy and the twist stiffness t³/9·∫E_s dy of the
    /// thin strip: what the plate tends to as its waves grow long.
    /// </summary>
    /// <param name="law">The law.</param>
    /// <param name="slenderness">t/h.</param>
    /// <param name="halfWave">L/h.</param>
    /// <param name="cancellation">To stop.</param>
    public static double CriticalStrainOfBeam(
        StressStrainLaw law, double slenderness, double halfWave, CancellationToken cancellation) => LeastStrain(
        1e-3 * slenderness * slenderness * Math.Min(1, 1 / halfWave),
        strain =>
        {
            double moment = Over(law, strain, (x, e) => law.Stress(e) * x);
            double tangent = Over(law, strain, (x, e) => law.TangentModulus(e));
            double secant = Over(law, strain, (x, e) => law.SecantModulus(e));
            return moment * halfWave >= 2 * Math.PI * slenderness * slenderness * Math.Sqrt(tangent * secant / 108);
        },
        cancellation);

    private static double Over(StressStrainLaw law, double strain, Func<double, double, double> function) =>
        LinearField.Integral(function, -1, 1, -strain, strain, law.YieldStrain);

    private static double LeastStrain(double start, Func<double, bool> ripples, CancellationToken cancellation)
    {
        double low = start;
        double high = start;
        while (!ripples(high))
        {
            cancellation.ThrowIfCancellationRequested();
            if (high >= Most)
            {
                return Most;
            }

            low = high;
            high = Math.Min(Most, high * Growth);
        }

        while (high > low * (1 + 1e-7))
        {
            cancellation.ThrowIfCancellationRequested();
            double middle = (low + high) / 2;
            if (ripples(middle))
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return high;
    }

    private static bool IsStable(
        StressStrainLaw law, double slenderness, double wave, double strain, SymmetricSystem system, double[] basis)
    {
        system.Clear();
        GaussRule rule = GaussRule.Twelve;
        double end = 0;
        while (end < 1)
        {
            double begin = end;
            end = begin == 0 ? Math.Min(1, law.YieldStrain / strain) : Math.Min(1, 2 * begin);
            for (int k = 0; k < rule.Nodes.Length; k++)
            {
                double x = begin + (end - begin) * (1 + rule.Nodes[k]) / 2;
                double weight = (end - begin) * rule.Weights[k] / 2;
                double e = x * strain;
                double secant = law.SecantModulus(e) / law.E;
                double tangent = law.TangentModulus(e) / law.E;
                double plate = weight * slenderness * slenderness / 9;
                Add(system, basis, x, plate, wave, (secant, tangent), weight * secant * e);
                Add(system, basis, -x, plate, wave, (secant, tangent), -weight * secant * e);
            }
        }

        return system.Solve();
    }

    private static void Add(
        SymmetricSystem system,
        double[] basis,
        double x,
        double plate,
        double wave,
        (double Secant, double Tangent) modulus,
        double compression)
    {
        Legendre(x, basis);
        double square = wave * wave;
        double value = plate * (modulus.Secant / 4 + 3 * modulus.Tangent / 4) * square * square - compression * square;
        double slope = 4 * plate * modulus.Secant * square;
        double bend = 16 * plate * modulus.Secant;
        double mixed = -2 * plate * modulus.Secant * square;
        for (int i = 0; i < Functions; i++)
        {
            double f = basis[i];
            double d = basis[Functions + i];
            double s = basis[2 * Functions + i];
            for (int j = 0; j <= i; j++)
            {
                double g = basis[j];
                double gs = basis[2 * Functions + j];
                system[i, j] += value * f * g + slope * d * basis[Functions + j] + bend * s * gs + mixed * (f * gs + s * g);
            }
        }
    }

    /// <summary>Legendre's polynomials with their first and second derivatives.</summary>
    private static void Legendre(double x, double[] basis)
    {
        basis[0] = 1;
        basis[1] = x;
        basis[Functions] = 0;
        basis[Functions + 1] = 1;
        basis[2 * Functions] = 0;
        basis[2 * Functions + 1] = 0;
        for (int n = 1; n < Functions - 1; n++)
        {
            for (int d = 2; d >= 0; d--)
            {
                int at = d * Functions + n;
                double lower = d == 0 ? 0 : d * basis[at - Functions];
                basis[at + 1] = ((2 * n + 1) * (x * basis[at] + lower) - n * basis[at - 1]) / (n + 1);
            }
        }
    }
}
