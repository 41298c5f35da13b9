using MathNet.Numerics.Integration;

namespace BendMath.Bending;

/// <summary>∫₀^κ M dκ of a held-flat bar: the elastic part in closed form, the rest over t = ln κ, in pieces.</summary>
internal static class BendingWork
{
    private const double Piece = 0.5;

    private const double RelativeError = 1e-10;

    private const int Depth = 12;

    private const int Order = 15;

    public static double UpTo(BendAnalysis analysis, double curvature)
    {
        double yield = Math.Min(curvature, analysis.FirstYield);
        double sum = analysis.Law.E * analysis.Moments.SecondY * yield * yield / 2;
        double from = Math.Log(yield);
        double length = Math.Log(curvature) - from;
        int pieces = (int)Math.Ceiling(length / Piece);
        double axis = analysis.Moments.CentroidY;
        for (int i = 0; i < pieces; i++)
        {
            sum += GaussKronrodRule.Integrate(Integrand, from + i * length / pieces, from + (i + 1) * length / pieces, out _, out _, RelativeError, Depth, Order);
        }

        return sum;

        double Integrand(double t)
        {
            double at = Math.Exp(t);
            BentState state = HeldFlat.AtCurvature(analysis.Section.Profile, analysis.Law, at, axis);
            axis = state.NeutralAxis;
            return state.BendingMoment(analysis.Moments, analysis.Law.E) * at;
        }
    }
}
