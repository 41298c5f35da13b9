using BendMath.Numerics;
using BendMath.Numerics.Geometry;

namespace BendMath.Bending.MomentCurves;

/// <summary>The inverse of bending and release on the moment–curvature curve, for searches.</summary>
internal static class CurveInverse
{
    /// <summary>
    /// The state whose released ring has the target radius at a level of the section: κ_t·R_target − (1 + e_f) rises with κ from −1. Null
    /// when even the tightest bend leaves a wider ring.
    /// </summary>
    public static BentState? ForFinished(BendAnalysis analysis, double target, double level, bool free)
    {
        MomentCurve curve = analysis.Curve;
        AreaMoments m = analysis.Moments;
        double low = 0;
        double high = 1 / (target - level + m.CentroidY) + 2 * analysis.FirstYield;
        double? tightest = null;
        while (Residual(high) < 0)
        {
            if (high == tightest)
            {
                return null;
            }

            low = high;
            tightest ??= curve.AtRadius(analysis.Section.TightestRadius, analysis.Section.Height);
            high = Math.Min(2 * high, tightest.Value);
        }

        return curve.StateAt(Bracketed.Root(Residual, low, high));

        double Residual(double curvature)
        {
            if (curvature == 0)
            {
                return -1;
            }

            BentState state = curve.StateAt(curvature);
            (double f, double r) = state.Permanent(m, free);
            return Math.Min(1, Math.Sqrt(f * f + r * r) * target - (1 + state.Sums.P0 / m.Area + f * (level - m.CentroidY)));
        }
    }
}
