using BendMath.Numerics;

namespace BendMath.Bending;

/// <summary>
/// A bar bent without hold-down. For a direction α of the strain gradient the section is seen along that direction, where the strain is linear in
/// one coordinate: e = g·[cos α·(R + y) + sin α·(z − z̄)] − 1. The inner search finds g with N = 0, which rises with g; the outer one turns α
/// until M_r = 0. At α = 0 the bar is held flat and M_r has the sign of I_br; turned toward ∓90° against that sign it changes.
/// </summary>
internal static class NotHeld
{
    private const double Steepest = 1.4;

    public static BentState AtRadius(OrientedSection section, StressStrainLaw law, double insideRadius)
    {
        AreaMoments m = section.Profile.Moments;
        BentState flat = HeldFlat.AtRadius(section.Profile, law, insideRadius, m.CentroidY);
        if (Math.Abs(m.Product) <= 1e-12 * m.SecondY)
        {
            return flat;
        }

        double RadialMoment(double angle)
        {
            BentState state = Leaning(section, law, insideRadius, angle, flat.Curvature);
            return state.HoldDownMoment(m, 1) / (flat.Curvature * m.SecondY);
        }

        double end = m.Product > 0 ? -Steepest : Steepest;
        double root = Bracketed.Root(RadialMoment, Math.Min(0, end), Math.Max(0, end));
        return Leaning(section, law, insideRadius, root, flat.Curvature);
    }

    private static BentState Leaning(OrientedSection section, StressStrainLaw law, double radius, double angle, double guess)
    {
        AreaMoments m = section.Profile.Moments;
        double c = Math.Cos(angle);
        double s = Math.Sin(angle);
        BandProfile turned = BandProfile.Of([.. section.Loops.Select(loop => loop.Select(edge => edge.Turned(angle)).ToArray())]);
        double lever = c * radius - s * m.CentroidZ;
        Gradient force = new(turned, law, lever);
        double g = guess / c;
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
            g = Newton.Root(ref force, low, high, g, rises: true, 1e-16 * m.Area);
            force.At(g);
        }

        PlasticSums sums = force.Sums;
        PlasticMoments own = new(sums.P0, c * sums.Pb - s * sums.Pr, s * sums.Pb + c * sums.Pr);
        return new(g * c, 1 / (g * c) - radius, own, g * s);
    }

    /// <summary>N/E as a function of g, with e = g·(lever + η) − 1 along the turned coordinate η.</summary>
    private struct Gradient(BandProfile turned, StressStrainLaw law, double lever) : IDifferentiable
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
