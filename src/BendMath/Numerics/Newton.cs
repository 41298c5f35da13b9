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

    /// <summary>A Newton step this small, relative to the root, has squared its error below rounding: the next one would not change the root.</summary>
    private const double Settled = 1e-10;

    /// <param name="function">Continuous, negative at <paramref name="low"/> and positive at <paramref name="high"/> or the reverse.</param>
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
            bool inside = next > low && next < high && Math.Abs(value) < 0.5 * previous;
            previous = inside ? Math.Abs(value) : double.PositiveInfinity;
            if (!inside)
            {
                next = low + (high - low) / 2;
            }

            if (inside && Math.Abs(next - x) <= Settled * Math.Abs(x))
            {
                return next;
            }

            if (Math.Abs(next - x) <= 2e-16 * Math.Abs(x) || next <= low || next >= high)
            {
                return x;
            }

            x = next;
        }

        throw new InvalidOperationException("A bracketed root was not found; this is a defect of BendMath, please report it with the input.");
    }
}
