using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Numerics;

/// <summary>What a law takes away from the axial force of a section, for a trial of the neutral axis.</summary>
internal interface IAxialBalance
{
    /// <summary>The integrals under e = (y − y_n)/ρ.</summary>
    AxialSums At(double neutralRadius, double neutralAxis);
}

/// <summary>
/// Finds the neutral axis y_n that leaves no axial force, held flat. Bracket: at y_n = 0 every fiber is stretched and N &gt; 0, at y_n = h
/// every fiber is compressed and N &lt; 0; between, every fiber's strain falls with y_n, and the stress with it.
/// </summary>
internal static class NeutralAxis
{
    /// <summary>Inside radius imposed, 1/κ = R + y_n.</summary>
    public static double AtRadius<TBalance>(BandProfile profile, in TBalance balance, double insideRadius, double guess)
        where TBalance : struct, IAxialBalance
    {
        ForceAtRadius<TBalance> force = new(profile.Moments.Area, profile.Moments.CentroidY, balance, insideRadius);
        return Newton.Root(ref force, 0, profile.Height, guess, rises: false, Noise(profile));
    }

    /// <summary>Curvature imposed.</summary>
    public static double AtCurvature<TBalance>(BandProfile profile, in TBalance balance, double curvature, double guess)
        where TBalance : struct, IAxialBalance
    {
        ForceAtCurvature<TBalance> force = new(profile.Moments.Area, profile.Moments.CentroidY, balance, 1 / curvature);
        return Newton.Root(ref force, 0, profile.Height, guess, rises: false, Noise(profile));
    }

    private static double Noise(BandProfile profile) => 1e-16 * profile.Moments.Area * profile.Height;

    /// <summary>
    /// N/(E·κ) = A(ȳ − y_n) − ∫e_p dA/κ, whose plastic part also changes with κ, which falls as y_n grows: de/dy_n = −κ(1 + e).
    /// </summary>
    private readonly struct ForceAtRadius<TBalance>(double area, double centroid, TBalance balance, double radius) : IDifferentiable
        where TBalance : struct, IAxialBalance
    {
        public (double Value, double Slope) At(double x)
        {
            double neutralRadius = radius + x;
            AxialSums sums = balance.At(neutralRadius, x);
            double offset = centroid - x;
            return (area * offset - sums.Plastic, sums.C0 - area + (sums.C1 + offset * sums.C0 - sums.Plastic) / neutralRadius);
        }
    }

    /// <summary>N/(E·κ) at fixed κ: dP0/dy_n = −κ·∫c dA.</summary>
    private readonly struct ForceAtCurvature<TBalance>(double area, double centroid, TBalance balance, double neutralRadius)
        : IDifferentiable
        where TBalance : struct, IAxialBalance
    {
        public (double Value, double Slope) At(double x)
        {
            AxialSums sums = balance.At(neutralRadius, x);
            return (area * (centroid - x) - sums.Plastic, sums.C0 - area);
        }
    }
}
