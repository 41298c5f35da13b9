using BendMath.Numerics.Integrals;

namespace BendMath.Distortion;

/// <summary>
/// ∫f(x, e) dx over a line along which the strain is linear, by Gauss' rule on panels that end where a law has its kinks (at the yield
/// strain) and shrink toward zero strain, where moduli of laws change fastest.
/// </summary>
internal static class LinearField
{
    public static double Integral(Func<double, double, double> function, double from, double to, double strainFrom, double strainTo,
        double yieldStrain)
    {
        List<double> ends = [from, to];
        double slope = (strainTo - strainFrom) / (to - from);
        double most = Math.Max(Math.Abs(strainFrom), Math.Abs(strainTo));
        if (slope != 0)
        {
            Add(0);
            for (double level = yieldStrain; level < most; level *= 2)
            {
                Add(level);
                Add(-level);
            }
        }

        ends.Sort();
        double sum = 0;
        GaussRule rule = GaussRule.Twelve;
        for (int i = 1; i < ends.Count; i++)
        {
            double half = (ends[i] - ends[i - 1]) / 2;
            double middle = (ends[i] + ends[i - 1]) / 2;
            for (int k = 0; k < rule.Nodes.Length; k++)
            {
                double x = middle + half * rule.Nodes[k];
                sum += half * rule.Weights[k] * function(x, strainFrom + slope * (x - from));
            }
        }

        return sum;

        void Add(double strain)
        {
            double x = from + (strain - strainFrom) / slope;
            if (x > from && x < to)
            {
                ends.Add(x);
            }
        }
    }

    public static double TangentModulus(this StressStrainLaw law, double strain) => law.E * (1 - law.PlasticRate(Math.Abs(strain)));

    public static double SecantModulus(this StressStrainLaw law, double strain) => strain == 0 ? law.E : law.Stress(strain) / strain;
}
