using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending;

/// <summary>
/// Finds the neutral axis y_n that leaves no axial force, held flat. Bracket: at y_n = 0 every fiber is stretched and N &gt; 0, at y_n = h
/// every fiber is compressed and N &lt; 0; between, every fiber's strain falls with y_n, and the stress with it.
/// </summary>
internal static class AxialBalance
{
    /// <summary>Inside radius imposed, 1/κ = R + y_n.</summary>
    public static double AxisAtRadius(BandProfile profile, StressStrainLaw law, double insideRadius, double guess)
    {
        ForceAtRadius force = new(profile, law, insideRadius);
        return Newton.Root(ref force, 0, profile.Height, guess, rises: false, Noise(profile));
    }

    /// <summary>Curvature imposed.</summary>
    public static double AxisAtCurvature(BandProfile profile, StressStrainLaw law, double curvature, double guess)
    {
        ForceAtCurvature force = new(profile, law, 1 / curvature);
        return Newton.Root(ref force, 0, profile.Height, guess, rises: false, Noise(profile));
    }

    private static double Noise(BandProfile profile) => 1e-16 * profile.Moments.Area * profile.Height;

    /// <summary>
    /// N/(E·κ) = A(ȳ − y_n) − ∫e_p dA/κ, whose plastic part also changes with κ, which falls as y_n grows: de/dy_n = −κ(1 + e).
    /// </summary>
    private readonly struct ForceAtRadius(BandProfile profile, StressStrainLaw law, double radius) : IDifferentiable
    {
        private readonly double _area = profile.Moments.Area;

        private readonly double _centroid = profile.Moments.CentroidY;

        public (double Value, double Slope) At(double x)
        {
            double neutralRadius = radius + x;
            AxialSums sums = law.AxialSumsOf(profile, neutralRadius, x);
            double offset = _centroid - x;
            return (_area * offset - sums.Plastic, sums.C0 - _area + (sums.C1 + offset * sums.C0 - sums.Plastic) / neutralRadius);
        }
    }

    /// <summary>N/(E·κ) at fixed κ: dP0/dy_n = −κ·∫c dA.</summary>
    private readonly struct ForceAtCurvature(BandProfile profile, StressStrainLaw law, double neutralRadius) : IDifferentiable
    {
        private readonly double _area = profile.Moments.Area;

        private readonly double _centroid = profile.Moments.CentroidY;

        public (double Value, double Slope) At(double x)
        {
            AxialSums sums = law.AxialSumsOf(profile, neutralRadius, x);
            return (_area * (_centroid - x) - sums.Plastic, sums.C0 - _area);
        }
    }
}
