namespace BendMath.Bending.NeutralAxes;

/// <summary>The factor k of DIN 6935, which multiplies half the thickness, as a function of inside radius over thickness.</summary>
internal static class SheetFactor
{
    /// <summary>The smallest ratio of the standard's stepped table.</summary>
    public const double LeastRatio = 0.65;

    /// <summary>The ratio at which the formula reaches zero: lg(r/s) = −1.3.</summary>
    public const double VanishingRatio = 0.050118723362727224;

    private const double EndOfFormula = 5;

    private static readonly (double UpTo, double Factor)[] Steps = [(1, 0.6), (1.5, 0.7), (2.4, 0.8), (3.8, 0.9)];

    public static double OfFormula(double ratio) => ratio > EndOfFormula ? 1 : 0.65 + 0.5 * Math.Log10(ratio);

    public static double OfSteps(double ratio)
    {
        foreach ((double upTo, double factor) in Steps)
        {
            if (ratio <= upTo * (1 + 1e-12))
            {
                return factor;
            }
        }

        return 1;
    }
}
