namespace BendMath.Benchmarks;

/// <summary>
/// Bump-by-bump bending of a rectangular bar of linear hardening, written the straightforward way: permanent curvature on a grid along the
/// bar, the moment under the nose by bisection of the trapezoidal sum, the curvature of each grid point by Newton's method, then the
/// running maximum. Meters and pascals.
/// </summary>
internal sealed class GridBumps(double width, double depth, double modulus, double yield, double tangent, double halfSpan, int steps)
{
    private readonly double _second = width * depth * depth * depth / 12;

    private readonly double _yieldCurvature = 2 * yield / (modulus * depth);

    private readonly double _plastic = (1 - tangent / modulus) * yield * width * depth * depth / 4;

    /// <summary>
    /// Mean permanent curvature from the first bump to the last of a pass from the first place with bar under both supports.
    /// </summary>
    public double MeanOfPass(double length, double feed, int bumps, double nominal)
    {
        double step = halfSpan / steps;
        double[] permanent = new double[(int)Math.Round(length / step) + 1];
        int stride = (int)Math.Round(feed / step);
        for (int i = 0; i < bumps; i++)
        {
            Bump(permanent, steps + i * stride, nominal);
        }

        double sum = (permanent[steps] + permanent[steps + (bumps - 1) * stride]) / 2;
        for (int i = steps + 1; i < steps + (bumps - 1) * stride; i++)
        {
            sum += permanent[i];
        }

        return sum / ((bumps - 1) * stride);
    }

    private void Bump(double[] permanent, int center, double nominal)
    {
        double low = 0;
        double high = 2 * _plastic + tangent * _second * 50 * nominal;
        for (int i = 0; i < 40; i++)
        {
            double moment = (low + high) / 2;
            double sum = 0;
            for (int j = 1 - steps; j < steps; j++)
            {
                double share = 1 - Math.Abs(j) / (double)steps;
                double here = moment * share;
                sum += (Math.Max(permanent[center + j], PermanentAfter(here)) + here / (modulus * _second)) * share;
            }

            (low, high) = sum / steps < nominal ? (moment, high) : (low, moment);
        }

        for (int j = -steps; j <= steps; j++)
        {
            permanent[center + j] = Math.Max(permanent[center + j], PermanentAfter(low * (1 - Math.Abs(j) / (double)steps)));
        }
    }

    private double PermanentAfter(double moment)
    {
        double elastic = moment / (modulus * _second);
        double curvature = elastic;
        for (int i = 0; i < 60 && curvature > _yieldCurvature; i++)
        {
            double ratio = _yieldCurvature / curvature;
            double found = tangent * _second * curvature + _plastic * (1 - ratio * ratio / 3);
            double change = (moment - found) / (tangent * _second + 2 * _plastic * ratio * ratio / (3 * curvature));
            curvature += change;
            if (change <= 1e-13 * curvature)
            {
                break;
            }
        }

        return curvature - elastic;
    }
}
