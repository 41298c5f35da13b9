using BendMath.Numerics;
using BendMath.Numerics.Geometry;

namespace BendMath.Bending.Unloading;

/// <summary>The inverse of bending and a release with less than the full stiffness.</summary>
internal static class SofterRelease
{
    /// <summary>
    /// The state whose released ring has the target radius at a level of the section. Wherever σ/e does not rise with e, dM/dκ ≤ M/κ: so
    /// what stays, κ − M/(η·E·I), is nothing until M/κ has fallen to η·E·I and rises from there on, and with it the residual κ_t·R_target −
    /// (1 + e_f), in v = 1/(R + ȳ). Bracket: −1 at v = 0, positive at the tightest bend. Null when even that leaves a wider ring, or when
    /// the ring is so wide that the bar lies over before any curvature stays in its plane.
    /// </summary>
    public static BentState? ForFinished(BendAnalysis analysis, double target, double level, bool free)
    {
        AreaMoments m = analysis.Moments;
        double tightest = 1 / (m.CentroidY + analysis.Section.TightestRadius);
        if (Residual(tightest) <= 0)
        {
            return null;
        }

        double found = Bracketed.Root(Residual, 0, tightest);
        return Math.Abs(Residual(found)) < 1e-9 ? analysis.StateAtRadius(1 / found - m.CentroidY) : null;

        double Residual(double v)
        {
            if (v == 0)
            {
                return -1;
            }

            BentState state = analysis.StateAtRadius(1 / v - m.CentroidY);
            (double f, double r) = state.Left(m, free, analysis.Unloading);
            return f <= 0 ? -1
                : Math.Min(1, Math.Sqrt(f * f + r * r) * target - (1 + state.Stretch(m, analysis.Unloading) + f * (level - m.CentroidY)));
        }
    }
}
