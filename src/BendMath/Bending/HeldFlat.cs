using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending;

/// <summary>
/// Finds held-flat states: the neutral axis that leaves no axial force, at a given inside radius, curvature, or finished radius.
/// </summary>
internal static class HeldFlat
{
    /// <summary>The finished curvature, relative to the loaded one, below which a released bar counts as straight.</summary>
    public const double StraightRatio = 1e-6;

    /// <summary>Inside radius imposed, κ = 1/(R + y_n).</summary>
    public static BentState AtRadius(BandProfile profile, StressStrainLaw law, double insideRadius, double guess)
    {
        double axis = AxialBalance.AxisAtRadius(profile, law, insideRadius, guess);
        double curvature = 1 / (insideRadius + axis);
        return new(curvature, axis, law.MomentsOf(profile, curvature, axis));
    }

    /// <summary>Curvature imposed.</summary>
    public static BentState AtCurvature(BandProfile profile, StressStrainLaw law, double curvature, double guess)
    {
        double axis = AxialBalance.AxisAtCurvature(profile, law, curvature, guess);
        return new(curvature, axis, law.MomentsOf(profile, curvature, axis));
    }

    /// <summary>
    /// The state whose released ring has the target radius at a level of the section. Bracket in v = 1/(R + ȳ): at v → 0 the bar stays
    /// elastic and springs straight, the residual κ_t·R_target − (1 + e_f) is −1; toward R → 0 it leaves the tightest ring. Returns null
    /// when even that is wider.
    /// </summary>
    public static BentState? ForFinished(BandProfile profile, StressStrainLaw law, double start, double target, double level, bool free)
    {
        AreaMoments moments = profile.Moments;
        double centroid = moments.CentroidY;
        double tightest = 1 / (centroid + OrientedSection.TightestShare * profile.Height);
        double wanted = 1 / (target - level + centroid);
        FinishedResidual residual = new(profile, law, start, target, level, free);

        double yield = law.YieldStrain / Math.Max(centroid, profile.Height - centroid);
        double v = Newton.Root(ref residual, 0, tightest, wanted + 1.2 * yield, rises: true, 4e-16);
        return residual.At(v).Value < -1e-9 ? null : residual.State;
    }

    /// <summary>
    /// Inside radius and axial force imposed. With e = κ(R + y) − 1 every fiber's strain rises with κ, so N − P does. Bracket: κ → 0
    /// squeezes every fiber to nothing; κ is doubled until N exceeds P, up to a strain of 100 % at the inside face. Null when P is out of
    /// reach.
    /// </summary>
    public static BentState? WithPull(BandProfile profile, StressStrainLaw law, double insideRadius, double pull)
    {
        AxialForceAtStretch force = new(profile, law, insideRadius, pull);
        double straight = 1 / (insideRadius + profile.Moments.CentroidY);
        double low = straight / 2;
        double high = straight;
        while (force.At(high).Value < 0)
        {
            low = high;
            high *= 1.1;
            if (high * insideRadius > 2)
            {
                return null;
            }
        }

        while (force.At(low).Value > 0)
        {
            high = low;
            low /= 2;
            if (low < 1e-6 * straight)
            {
                return null;
            }
        }

        double noise = 2e-16 * profile.Moments.Area;
        double curvature = Newton.Root(ref force, low, high, (low + high) / 2, rises: true, noise);
        force.At(curvature);
        return new(curvature, 1 / curvature - insideRadius, force.Sums.Moments);
    }

    /// <summary>(N − P)/E as a function of κ at fixed R: N/E = A(κ(R + ȳ) − 1) − P0.</summary>
    private struct AxialForceAtStretch(BandProfile profile, StressStrainLaw law, double radius, double pull) : IDifferentiable
    {
        public PlasticSums Sums;

        public (double Value, double Slope) At(double x)
        {
            Sums = law.Integrate(profile, x, 1 / x - radius);
            AreaMoments m = profile.Moments;
            double lever = radius + m.CentroidY;
            return (m.Area * (x * lever - 1) - Sums.P0 - pull / law.E, lever * (m.Area - Sums.C0) - Sums.C1);
        }
    }

    /// <summary>
    /// κ_t·R_target − (1 + e_f(level)) as a function of v = 1/(R + ȳ), with its derivative through the implicit neutral axis.
    /// </summary>
    private struct FinishedResidual(BandProfile profile, StressStrainLaw law, double start, double target, double level, bool free)
        : IDifferentiable
    {
        private double _axis = start;

        private double _axisSlope;

        private double _radius;

        public BentState State;

        public (double Value, double Slope) At(double x)
        {
            ref readonly AreaMoments m = ref profile.Moments;
            double radius = 1 / x - m.CentroidY;
            _axis = AxialBalance.AxisAtRadius(profile, law, radius, _axis + _axisSlope * (radius - _radius));
            _radius = radius;
            double curvature = 1 / (radius + _axis);
            PlasticSums s = law.Integrate(profile, curvature, _axis);
            State = new(curvature, _axis, s.Moments);
            (double f, double r) = State.Permanent(m, free);
            double total = Math.Sqrt(f * f + r * r);
            double value = total * target - (1 + s.P0 / m.Area + f * (level - m.CentroidY));
            if (total == 0)
            {
                _axisSlope = 0;
                return (value, 0);
            }

            StateSlopes slopes = StateSlopes.OfRadius(m, State, s);
            _axisSlope = slopes.Axis;
            (double df, double dr) = BentState.Unloaded(m, free, slopes.Pb, slopes.Pr);
            double slope = (f * df + r * dr) / total * target - (slopes.P0 / m.Area + df * (level - m.CentroidY));
            return (value, slope / -(x * x));
        }
    }
}
