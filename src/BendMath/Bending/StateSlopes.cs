using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending;

/// <summary>Derivatives of a held-flat state without axial force: of the neutral axis and, along with it, of P0, Pb and Pr.</summary>
internal readonly struct StateSlopes
{
    private StateSlopes(double axis, double p0, double pb, double pr)
    {
        Axis = axis;
        P0 = p0;
        Pb = pb;
        Pr = pr;
    }

    public double Axis { get; }

    public double P0 { get; }

    public double Pb { get; }

    public double Pr { get; }

    /// <summary>With respect to the inside radius: every strain changes by de/dR = −κ·[e + y_n′·(1 + e)], with y_n′ from dN = 0.</summary>
    public static StateSlopes OfRadius(in AreaMoments m, in BentState state, in PlasticSums s)
    {
        double mean = state.Curvature * (m.CentroidY - state.NeutralAxis);
        double stretch = m.Area * mean - (mean * s.C0 + state.Curvature * s.C1);
        double axis = -stretch / (m.Area - s.C0 + stretch);
        double a = -state.Curvature * (mean + axis * (1 + mean));
        double b = -state.Curvature * state.Curvature * (1 + axis);
        return new(axis, a * s.C0 + b * s.C1, a * s.C1 + b * s.C2, a * s.Cr0 + b * s.Cr1);
    }

    /// <summary>
    /// With respect to a number of the law, whose effect on P0, Pb and Pr at a fixed strain is given: the neutral axis moves by what keeps
    /// dN = 0, and every strain by de/dy_n = −κ·(1 + e).
    /// </summary>
    public static StateSlopes OfLaw(in AreaMoments m, in BentState state, in PlasticSums s, in PlasticMoments effect)
    {
        double mean = 1 + state.Curvature * (m.CentroidY - state.NeutralAxis);
        double slope = mean * (m.Area - s.C0) - state.Curvature * s.C1;
        double axis = -effect.P0 / (state.Curvature * slope);
        double a = -state.Curvature * mean * axis;
        double b = -state.Curvature * state.Curvature * axis;
        return new(axis, effect.P0 + a * s.C0 + b * s.C1, effect.Pb + a * s.C1 + b * s.C2, effect.Pr + a * s.Cr0 + b * s.Cr1);
    }
}
