using BendMath.Numerics.Geometry;

namespace BendMath.Bending.MomentCurves;

/// <summary>
/// ∫₀^κ M dκ of a held-flat bar. Without axial force no work is done on the centroid line, so it is what the fibers took up: ∫∫σ de dA =
/// E·[κ²/2·(I_b + A(ȳ − y_n)²) − ∫∫e_p de dA], whatever the way to the curvature.
/// </summary>
internal static class BendingWork
{
    public static double Of(BendAnalysis analysis, in BentState state)
    {
        ref readonly AreaMoments m = ref analysis.Moments;
        double offset = m.CentroidY - state.NeutralAxis;
        double elastic = state.Curvature * state.Curvature / 2 * (m.SecondY + m.Area * offset * offset);
        return analysis.Law.E * (elastic - analysis.Law.PlasticWork(analysis.Section.Profile, state.Curvature, state.NeutralAxis));
    }
}
