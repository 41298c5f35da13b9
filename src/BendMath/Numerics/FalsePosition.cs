namespace BendMath.Numerics;

/// <summary>
/// Roots of functions that carry noise of their own, where a search down to the last bit would not end: false position, with the value of
/// an end that is kept twice halved (Illinois), ends
/// at a width of the bracket or at a value of zero.
/// </summary>
internal static class FalsePosition
{
    private const int Enough = 100;

    /// <param name="function">Of different signs at the ends.</param>
    /// <param name="low">Lower end of the bracket.</param>
    /// <param name="lowValue">The value there.</param>
    /// <param name="high">Upper end of the bracket.</param>
    /// <param name="highValue">The value there.</param>
    /// <param name="width">Width of the bracket that is enough.</param>
    public static double Root(Func<double, double> function, double low, double lowValue, double high, double highValue, double width)
    {
        double noise = 1e-15 * (Math.Abs(lowValue) + Math.Abs(highValue));
        double root = low;
        double before = double.NaN;
        int side = 0;
        for (int i = 0; i < Enough && high - low > width; i++)
        {
            root = (low * highValue - high * lowValue) / (highValue - lowValue);
            double value = function(root);
            if (Math.Abs(value) <= noise || Math.Abs(root - before) <= width / 4)
            {
                return root;
            }

            before = root;
            if (value > 0 == highValue > 0)
            {
                lowValue = side == 1 ? lowValue / 2 : lowValue;
                (side, high, highValue) = (1, root, value);
            }
            else
            {
                highValue = side == -1 ? highValue / 2 : highValue;
                (side, low, lowValue) = (-1, root, value);
            }
        }

        return root;
    }
}
