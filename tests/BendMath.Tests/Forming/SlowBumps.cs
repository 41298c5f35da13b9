namespace BendMath.Tests.Forming;

/// <summary>
/// Bump-by-bump bending written the straightforward way: the permanent curvature on a dense grid along the bar, the moment under the nose
/// by bisection of the trapezoidal sum, then the running maximum. Meters. It shares nothing with the library.
/// </summary>
/// <param name="metal">The moment–curvature curve.</param>
/// <param name="halfSpan">Distance from the nose to each support.</param>
/// <param name="length">Length of the bar, a whole number of steps.</param>
/// <param name="steps">Steps of the grid in a half-span.</param>
internal sealed class SlowBumps(HardeningFlat metal, double halfSpan, double length, int steps)
{
    public double[] Permanent { get; } = new double[(int)Math.Round(length * steps / halfSpan) + 1];

    public double Step => halfSpan / steps;

    /// <summary>Bumps at a place of the grid, until the circle through the contacts has a curvature; the moment under the nose.</summary>
    public double Bump(double place, double nominal)
    {
        int center = (int)Math.Round(place / Step);
        double target = nominal * halfSpan * halfSpan;
        if (Opening(center, 0) >= target)
        {
            return 0;
        }

        double low = 0;
        double high = metal.MomentAt(50 * nominal);
        for (int i = 0; i < 50; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Opening(center, middle) < target ? (middle, high) : (low, middle);
        }

        for (int j = -steps; j <= steps; j++)
        {
            Permanent[center + j] = Math.Max(Permanent[center + j], metal.PermanentAfter(low * (1 - (Math.Abs(j) / (double)steps))));
        }

        return low;
    }

    private double Opening(int center, double moment)
    {
        double sum = 0;
        for (int j = -steps + 1; j < steps; j++)
        {
            double share = 1 - (Math.Abs(j) / (double)steps);
            double here = moment * share;
            sum += (Math.Max(Permanent[center + j], metal.PermanentAfter(here)) + (here / metal.Stiffness)) * share;
        }

        return sum * halfSpan * Step;
    }
}

/// <summary>
/// A rectangular bar of linear hardening in closed form, meters and pascals: beyond the yield curvature κ_y = 2σ_y/(E·h), M = E_t·I·κ + (1
/// − E_t/E)·σ_y·b·h²/4·(1 − (κ_y/κ)²/3). Derived by hand from the stress over the depth.
/// </summary>
internal sealed class HardeningFlat(double width, double depth, double modulus, double yield, double tangent)
{
    private readonly double _second = width * depth * depth * depth / 12;

    private readonly double _plastic = (1 - (tangent / modulus)) * yield * width * depth * depth / 4;

    public double Stiffness => modulus * _second;

    public double YieldCurvature { get; } = 2 * yield / (modulus * depth);

    public double MomentAt(double curvature)
    {
        double ratio = YieldCurvature / curvature;
        return curvature <= YieldCurvature ? Stiffness * curvature
            : (tangent * _second * curvature) + (_plastic * (1 - (ratio * ratio / 3)));
    }

    public double SlopeAt(double curvature) => curvature <= YieldCurvature
        ? Stiffness
        : (tangent * _second) + (2 * _plastic * YieldCurvature * YieldCurvature / (3 * curvature * curvature * curvature));

    /// <summary>∫₀^κ M² dκ by the trapezoidal rule over ln κ, ends corrected by doubling.</summary>
    public double SquaredUpTo(double curvature)
    {
        double elastic = Stiffness * Stiffness * YieldCurvature * YieldCurvature * YieldCurvature / 3;
        double span = Math.Log(curvature / YieldCurvature);
        return elastic + MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
            t =>
            {
                double k = YieldCurvature * Math.Exp(t);
                double m = MomentAt(k);
                return m * m * k;
            },
            0,
            span,
            64);
    }

    /// <summary>
    /// The permanent curvature a moment leaves. M is concave beyond yield, so Newton's method from the elastic line never passes the root.
    /// </summary>
    public double PermanentAfter(double moment)
    {
        double curvature = moment / Stiffness;
        if (curvature <= YieldCurvature)
        {
            return 0;
        }

        for (int i = 0; i < 60; i++)
        {
            double step = (moment - MomentAt(curvature)) / SlopeAt(curvature);
            curvature += step;
            if (step <= 1e-14 * curvature)
            {
                break;
            }
        }

        return curvature - (moment / Stiffness);
    }
}
