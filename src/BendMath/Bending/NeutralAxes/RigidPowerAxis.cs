using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending.NeutralAxes;

/// <summary>
/// The neutral axis of a bar without elasticity, σ ∝ |e|ⁿ: ∫sgn(y − y_n)·|y − y_n|ⁿ dA = 0. The integral falls with y_n; it is positive at
/// y_n = 0 and negative at y_n = h.
/// </summary>
internal static class RigidPowerAxis
{
    public static double Of(BandProfile profile, double exponent)
    {
        Balance balance = new(profile, exponent);
        return Newton.Root(ref balance, 0, profile.Height, profile.Moments.CentroidY, rises: false, 1e-16 * profile.Moments.Area);
    }

    private readonly struct Balance(BandProfile profile, double exponent) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            PlasticSums sums = PlasticIntegrator.Integrate(profile, new Kernel(exponent), 1 / profile.Height, x);
            return (sums.P0, -sums.C0 / profile.Height);
        }
    }

    /// <summary>
    /// The power law handed to the integrator in place of a plastic strain; the limit, in depths of the section, stays above the rounding
    /// of a level, and what lies below it cancels on both sides of the axis.
    /// </summary>
    private readonly struct Kernel(double exponent) : IPlasticLaw
    {
        public double ElasticLimit => 1e-14;

        public (double Plastic, double Rate) At(double strain)
        {
            double power = Math.Pow(strain, exponent);
            return (power, exponent * power / strain);
        }

        public StrainPrimitives PrimitivesAt(double strain)
        {
            double power = Math.Pow(strain, exponent);
            return new()
            {
                P0 = power * strain / (exponent + 1),
                P1 = power * strain * strain / (exponent + 2),
                P2 = power * strain * strain * strain / (exponent + 3),
                C0 = power,
                C1 = exponent * power * strain / (exponent + 1),
                C2 = exponent * power * strain * strain / (exponent + 2),
                C3 = exponent * power * strain * strain * strain / (exponent + 3),
            };
        }

        public double NextBreak(double strain) => 2 * strain;
    }
}
