namespace BendMath.Numerics;

/// <summary>A function of one variable with its derivative.</summary>
internal interface IDifferentiable
{
    (double Value, double Slope) At(double x);
}

/// <summary>
/// Newton's method that never leaves a bracket of a sign change: a step that would, or that does not halve the residual, is replaced by
/// a bisection. It ends within a few steps near a simple root and within 60 for any continuous function. MathNet's
/// RobustNewtonRaphson takes two delegates and subdivides the interval instead; the benchmarks hold both side by side.
/// </summary>
internal static class Newton
{
    private const int Enough = 200;

    /// <summary>Rounding level of a root.</summary>
    private const double Rounding = 2e-16;

    /// <summary>
    /// A Newton step this small, relative to the root, has squared its error below rounding: the next one would not change the root.
    /// </summary>
    private const double Settled = 1e-10;

    /// <summary>
    /// Below this step, relative to the root, the last two steps predict the next one, s·(s/s₋₁)², and with it whether it would change the
    /// root.
    /// </summary>
    private const double Predicted = 1e-7;

    /// <param name="function">Continuous, negative at <paramref name="low"/> and positive at <paramref name="high"/> or the
    /// reverse.</param>
    /// <param name="low">Lower end of the bracket.</param>
    /// <param name="high">Upper end of the bracket.</param>
    /// <param name="start">First guess.</param>
    /// <param name="rises">Whether the function is positive at the upper end.</param>
    /// <param name="noise">Rounding level of the function's value: a smaller residual cannot be improved.</param>
    public static double Root<TFunction>(ref TFunction function, double low, double high, double start, bool rises, double noise)
        where TFunction : struct, IDifferentiable
    {
        double x = start > low && start < high ? start : low + (high - low) / 2;
        double previous = double.PositiveInfinity;
        double previousStep = 0;
        for (int i = 0; i < Enough; i++)
        {
            (double value, double slope) = function.At(x);
            if (Math.Abs(value) <= noise)
            {
                return x;
            }

            if (value > 0 == rises)
            {
                high = x;
            }
            else
            {
                low = x;
            }

            double next = x - value / slope;
            if (next > low && next < high && Math.Abs(value) < 0.5 * previous)
            {
                double step = Math.Abs(next - x);
                double size = Math.Abs(x);
                if (step <= Settled * size
                    || (step <= Predicted * size && step * step * step <= 0.1 * Rounding * size * previousStep * previousStep))
                {
                    return next;
                }

                previous = Math.Abs(value);
                previousStep = step;
            }
            else
            {
                next = low + (high - low) / 2;
                previous = double.PositiveInfinity;
                previousStep = 0;
                if (Math.Abs(next - x) <= Rounding * Math.Abs(x) || next <= low || next >= high)
                {
                    return x;
                }
            }

            x = next;
        }

        throw new InvalidOperationException(
            "A bracketed root was not found; this is a defect of BendMath, please report it with the input.");
    }
}
