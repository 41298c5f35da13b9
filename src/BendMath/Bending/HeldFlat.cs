using BendMath.Numerics;

namespace BendMath.Bending;

/// <summary>Finds held-flat states: the neutral axis that leaves no axial force, at a given inside radius, curvature, or finished radius.</summary>
internal static class HeldFlat
{
    /// <summary>The finished curvature, relative to the loaded one, below which a released bar counts as straight.</summary>
    public const double StraightRatio = 1e-6;

    /// <summary>
    /// Inside radius imposed, κ = 1/(R + y_n). Bracket: at y_n = 0 every fiber is stretched and N &gt; 0, at y_n = h every fiber is compressed and
    /// N &lt; 0; between, every fiber's strain falls with y_n, and the stress with it.
    /// </summary>
    public static BentState AtRadius(BandProfile profile, StressStrainLaw law, double insideRadius, double guess = -1)
    {
        AxialForceAtRadius force = new(profile, law, insideRadius);
        double axis = Solve(profile, ref force, guess);
        double curvature = 1 / (insideRadius + axis);
        return new(curvature, axis, law.Integrate(profile, curvature, axis));
    }

    /// <summary>Curvature imposed. The same bracket holds.</summary>
    public static BentState AtCurvature(BandProfile profile, StressStrainLaw law, double curvature, double guess = -1)
    {
        AxialForceAtCurvature force = new(profile, law, curvature);
        double axis = Solve(profile, ref force, guess);
        return new(curvature, axis, law.Integrate(profile, curvature, axis));
    }

    /// <summary>
    /// The state whose released ring has the target radius at a level of the section. Bracket in v = 1/(R + ȳ): at v → 0 the bar stays elastic and
    /// springs straight, the residual κ_t·R_target − (1 + e_f) is −1; toward R → 0 it leaves the tightest ring. Returns null when even that is wider.
    /// </summary>
    public static BentState? ForFinished(BandProfile profile, StressStrainLaw law, double start, double target, double level, bool free)
    {
        AreaMoments moments = profile.Moments;
        double centroid = moments.CentroidY;
        double tightest = 1 / (centroid + 1e-6 * profile.Height);
        double wanted = 1 / (target - level + centroid);
        FinishedResidual residual = new(profile, law, start, target, level, free);

        double yield = law.YieldStrain / Math.Max(centroid, profile.Height - centroid);
        double v = Newton.Root(ref residual, 0, tightest, wanted + 1.2 * yield, rises: true, 4e-16);
        return residual.At(v).Value < -1e-9 ? null : residual.State;
    }

    /// <summary>
    /// Inside radius and axial force imposed. With e = κ(R + y) − 1 every fiber's strain rises with κ, so N − P does. Bracket: κ → 0 squeezes
    /// every fiber to nothing; κ is doubled until N exceeds P, up to a strain of 100 % at the inside face. Null when P is out of reach.
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
        return new(curvature, 1 / curvature - insideRadius, force.Sums);
    }

    private static double Solve<TForce>(BandProfile profile, ref TForce force, double guess)
        where TForce : struct, IDifferentiable
    {
        AreaMoments moments = profile.Moments;
        double start = guess > 0 ? guess : moments.CentroidY;
        return Newton.Root(ref force, 0, profile.Height, start, rises: false, 1e-16 * moments.Area * profile.Height);
    }

    /// <summary>N/(E·κ) = A(ȳ − y_n) − P0/κ, with dP0/dy_n = −κ·∫c(1 + e)dA since κ falls as y_n grows.</summary>
    private readonly struct AxialForceAtRadius(BandProfile profile, StressStrainLaw law, double radius) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            double curvature = 1 / (radius + x);
            AxialSums sums = law.Balance(profile, curvature, x);
            double area = profile.Moments.Area;
            double offset = profile.Moments.CentroidY - x;
            return (
                area * offset - sums.P0 * (radius + x),
                -area + sums.C0 + curvature * (sums.C1 + offset * sums.C0) - sums.P0);
        }
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

    /// <summary>N/(E·κ) at fixed κ: dP0/dy_n = −κ·∫c dA.</summary>
    private readonly struct AxialForceAtCurvature(BandProfile profile, StressStrainLaw law, double curvature) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            AxialSums sums = law.Balance(profile, curvature, x);
            double area = profile.Moments.Area;
            return (area * (profile.Moments.CentroidY - x) - sums.P0 / curvature, -area + sums.C0);
        }
    }

    /// <summary>κ_t·R_target − (1 + e_f(level)) as a function of v = 1/(R + ȳ), with its derivative through the implicit neutral axis.</summary>
    private struct FinishedResidual(BandProfile profile, StressStrainLaw law, double start, double target, double level, bool free) : IDifferentiable
    {
        private double _axis = start;

        private double _axisSlope;

        private double _radius = -1;

        public BentState State;

        public (double Value, double Slope) At(double x)
        {
            AreaMoments m = profile.Moments;
            double radius = 1 / x - m.CentroidY;
            State = AtRadius(profile, law, radius, _radius < 0 ? _axis : _axis + _axisSlope * (radius - _radius));
            _axis = State.NeutralAxis;
            _radius = radius;
            PlasticSums s = State.Sums;
            (double f, double r) = State.Permanent(m, free);
            double total = Math.Sqrt(f * f + r * r);
            double value = total * target - (1 + s.P0 / m.Area + f * (level - m.CentroidY));
            if (total == 0)
            {
                _axisSlope = 0;
                return (value, 0);
            }

            (double p0, double pb, double pr) = Slopes(m, s);
            (double df, double dr) = BentState.Unloaded(m, free, pb, pr);
            double slope = (f * df + r * dr) / total * target - (p0 / m.Area + df * (level - m.CentroidY));
            return (value, slope / -(x * x));
        }

        /// <summary>Derivatives of P0, Pb, Pr with respect to R: the strain changes by de/dR = −κ[e + y_n′(1 + e)] with y_n′ from dN = 0.</summary>
        private (double P0, double Pb, double Pr) Slopes(in AreaMoments m, in PlasticSums s)
        {
            double curvature = State.Curvature;
            double mean = curvature * (m.CentroidY - State.NeutralAxis);
            double stretch = m.Area * mean - (mean * s.C0 + curvature * s.C1);
            double axis = -stretch / (m.Area - s.C0 + stretch);
            _axisSlope = axis;
            double a = -curvature * (mean + axis * (1 + mean));
            double b = -curvature * curvature * (1 + axis);
            return (a * s.C0 + b * s.C1, a * s.C1 + b * s.C2, a * s.Cr0 + b * s.Cr1);
        }
    }
}
