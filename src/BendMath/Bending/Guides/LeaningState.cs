using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending.Guides;

/// <summary>
/// Bars whose bending leans out of the plane of the ring. For a direction α of the strain gradient the section is seen along that
/// direction, where the strain is linear in
/// one coordinate, and the inner search finds its size g with N = 0, which rises with g; the outer one turns α until the moments are in
/// balance.
/// </summary>
internal static class LeaningState
{
    private const double Steepest = 1.4;

    /// <summary>Moment about the radial axis, beside the bending moment, below which a section has none by symmetry.</summary>
    private const double Nothing = 1e-12;

    private const int Scan = 47;

    /// <summary>
    /// A guide of stiffness k against curvature out of the plane: e = g·[cos α·(R + y) + sin α·(z − z̄)] − 1, and M_r + k·κ_r = 0. At α =
    /// 0 the bar is held flat and leaves M_r; turned
    /// against its sign the sum changes sign. Since |M_r| falls on the way, tan α stays below |M_r(held)|/(k·κ).
    /// </summary>
    /// <param name="section">The section.</param>
    /// <param name="law">The law.</param>
    /// <param name="insideRadius">R_i at the centroid's axial position.</param>
    /// <param name="stiffness">k in N·m²: zero for a bar not held, infinite for one held flat.</param>
    public static BentState AtRadius(OrientedSection section, StressStrainLaw law, double insideRadius, double stiffness)
    {
        AreaMoments m = section.Profile.Moments;
        BentState flat = HeldFlat.AtRadius(section.Profile, law, insideRadius, m.CentroidY);
        double held = flat.HoldDownMoment(m, 1);
        if (double.IsInfinity(stiffness) || Math.Abs(held) <= Nothing * flat.BendingMoment(m, 1))
        {
            return flat;
        }

        double share = stiffness / law.E;
        double reach = Math.Min(Steepest, Math.Atan(1.5 * Math.Abs(held) / (share * flat.Curvature)));
        double end = held > 0 ? -reach : reach;
        end = Residual(end) > 0 == held > 0 ? Math.Sign(end) * Steepest : end;
        double root = Bracketed.Root(Residual, Math.Min(0, end), Math.Max(0, end));
        return At(root);

        BentState At(double angle)
        {
            double c = Math.Cos(angle);
            double s = Math.Sin(angle);
            (double size, PlasticMoments sums) = Gradient(section, law, angle, c * insideRadius - s * m.CentroidZ, flat.Curvature / c);
            return new(size * c, 1 / (size * c) - insideRadius, sums, size * s);
        }

        double Residual(double angle)
        {
            BentState state = At(angle);
            return (state.HoldDownMoment(m, 1) + share * state.OutOfPlane) / Math.Abs(held);
        }
    }

    /// <summary>
    /// A bar free to turn about its own axis while its center line stays in the plane of the die: e = κ_t·[R + y·cos φ + (z − z̄)·sin φ]
    /// − 1, κ = κ_t·cos φ, κ_r = κ_t·sin φ. Its balance
    /// is κ·M_r − κ_r·M_b + k_φ·φ = 0; the first root from φ = 0 in the direction in which the bar is pushed. The work of bending by κ_t
    /// has the period π in φ, so that within a
    /// right angle there is one even without a guide.
    /// </summary>
    /// <param name="section">The section.</param>
    /// <param name="law">The law.</param>
    /// <param name="insideRadius">R_i at the centroid's axial position.</param>
    /// <param name="stiffness">k_φ in N: moment per length and radian.</param>
    public static BentState Turned(OrientedSection section, StressStrainLaw law, double insideRadius, double stiffness)
    {
        AreaMoments m = section.Profile.Moments;
        BentState flat = HeldFlat.AtRadius(section.Profile, law, insideRadius, m.CentroidY);
        double held = flat.HoldDownMoment(m, 1);
        if (double.IsInfinity(stiffness) || Math.Abs(held) <= Nothing * flat.BendingMoment(m, 1))
        {
            return flat;
        }

        double push = flat.Curvature * Math.Abs(held);
        double direction = held > 0 ? -1 : 1;
        double before = 0;
        for (int i = 1; i < Scan; i++)
        {
            double turn = i * Math.PI / 2 / Scan;
            if (Residual(turn) >= 0)
            {
                return At(Bracketed.Root(Residual, before, turn));
            }

            before = turn;
        }

        return At(before);

        BentState At(double turn)
        {
            double angle = direction * turn;
            double c = Math.Cos(angle);
            double s = Math.Sin(angle);
            (double total, PlasticMoments sums) = Gradient(section, law, angle, insideRadius - s * m.CentroidZ, flat.Curvature);
            return new(total * c, (1 / total - insideRadius) / c, sums, total * s, insideRadius);
        }

        double Residual(double turn)
        {
            BentState state = At(turn);
            double couple = state.Curvature * state.HoldDownMoment(m, 1) - state.OutOfPlane * state.BendingMoment(m, 1);
            return (direction * couple + stiffness / law.E * turn) / push;
        }
    }

    /// <summary>The plastic integrals that another law has under the strains of a state.</summary>
    public static PlasticMoments MomentsOf(OrientedSection section, StressStrainLaw law, in BentState state)
    {
        double angle = Math.Atan2(state.OutOfPlane, state.Curvature);
        double c = Math.Cos(angle);
        double s = Math.Sin(angle);
        PlasticSums sums =
            law.Integrate(Turned(section, angle), state.TotalCurvature, c * state.NeutralAxis + s * section.Profile.Moments.CentroidZ);
        return InOwnAxes(sums, c, s);
    }

    /// <summary>
    /// The size g of the strain gradient along the turned coordinate η, e = g·(lever + η) − 1, that leaves no axial force, and the
    /// plastic integrals in the section's own axes.
    /// </summary>
    private static (double Size, PlasticMoments Sums) Gradient(OrientedSection section, StressStrainLaw law, double angle, double lever,
        double guess)
    {
        AreaMoments m = section.Profile.Moments;
        AxialForce force = new(Turned(section, angle), law, lever);
        double g = guess;
        double low = g;
        double high = g;

        // R ≥ h keeps lever + η positive for most of the section, so a few steps of ten percent bracket the root.
        while (force.At(low).Value > 0)
        {
            low *= 0.9;
        }

        while (force.At(high).Value < 0)
        {
            high *= 1.1;
        }

        if (low < high)
        {
            g = Newton.Root(ref force, low, high, g, rises: true, 1e-17 * m.Area);
            force.At(g);
        }

        return (g, InOwnAxes(force.Sums, Math.Cos(angle), Math.Sin(angle)));
    }

    private static BandProfile Turned(OrientedSection section, double angle) =>
        BandProfile.Of([.. section.Loops.Select(loop => loop.Select(edge => edge.Turned(angle)).ToArray())]);

    private static PlasticMoments InOwnAxes(in PlasticSums sums, double c, double s) =>
        new(sums.P0, c * sums.Pb - s * sums.Pr, s * sums.Pb + c * sums.Pr);

    /// <summary>N/E as a function of g.</summary>
    private struct AxialForce(BandProfile turned, StressStrainLaw law, double lever) : IDifferentiable
    {
        public PlasticSums Sums;

        public (double Value, double Slope) At(double x)
        {
            Sums = law.Integrate(turned, x, 1 / x - lever);
            AreaMoments m = turned.Moments;
            double arm = lever + m.CentroidY;
            return (m.Area * (x * arm - 1) - Sums.P0, arm * (m.Area - Sums.C0) - Sums.C1);
        }
    }
}
