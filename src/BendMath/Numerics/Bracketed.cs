using MathNet.Numerics.RootFinding;

namespace BendMath.Numerics;

/// <summary>Roots of functions without a derivative, by MathNet's Brent search.</summary>
internal static class Bracketed
{
    /// <summary>
    /// The search runs over shares of the bracket: MathNet stops on the size of the residual as well as on that of the step, with one
    /// accuracy for both, so neither may carry a unit.
    /// </summary>
    /// <param name="function">Without unit and of the order of 1 away from its root; of different signs at the ends.</param>
    /// <param name="low">Lower end of the bracket.</param>
    /// <param name="high">Upper end of the bracket.</param>
    public static double Root(Func<double, double> function, double low, double high)
    {
        double width = high - low;
        return low + width * Brent.FindRoot(share => function(low + share * width), 0, 1, 1e-15, 300);
    }
}
