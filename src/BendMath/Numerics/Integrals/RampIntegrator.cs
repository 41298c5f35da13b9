using System.Runtime.CompilerServices;
using BendMath.Numerics.Geometry;

namespace BendMath.Numerics.Integrals;

/// <summary>
/// A plastic strain that begins at a strain and grows in proportion to what lies beyond it: e_p = Rate·(e − Start) for e &gt; Start.
/// </summary>
internal readonly struct Ramp(double start, double rate)
{
    public double Start { get; } = start;

    public double Rate { get; } = rate;
}

/// <summary>
/// Integrates laws of straight lines, which are sums of ramps. Under e = κ(y − y_n) a ramp is zero up to the level s = y_n ± Start/κ and
/// rises linearly beyond it, so each of its integrals is a moment of the part of the section beyond s.
/// </summary>
internal static class RampIntegrator
{
    public static PlasticSums Integrate(BandProfile profile, Ramp[] ramps, double curvature, double neutralAxis)
    {
        PlasticSums sums = default;
        TailTable tails = profile.Tails;
        double centroid = profile.Moments.CentroidY;
        double neutralRadius = 1 / curvature;
        foreach (ref readonly Ramp ramp in ramps.AsSpan())
        {
            double upper = neutralAxis + ramp.Start * neutralRadius;
            double lower = neutralAxis - ramp.Start * neutralRadius;
            if (upper < tails.Top)
            {
                Add(tails.Above(upper), upper - centroid, 1, ramp.Rate, curvature, ref sums);
            }

            if (lower > tails.Bottom)
            {
                Add(tails.Below(lower), lower - centroid, -1, ramp.Rate, curvature, ref sums);
            }
        }

        return sums;
    }

    /// <summary>∫∫e_p de dA: half the square of what lies beyond each start.</summary>
    public static double Work(BandProfile profile, Ramp[] ramps, double curvature, double neutralAxis)
    {
        double sum = 0;
        TailTable tails = profile.Tails;
        foreach (ref readonly Ramp ramp in ramps.AsSpan())
        {
            double upper = neutralAxis + ramp.Start / curvature;
            double lower = neutralAxis - ramp.Start / curvature;
            sum += ramp.Rate * ((upper < tails.Top ? tails.Above(upper).W2 : 0) + (lower > tails.Bottom ? tails.Below(lower).W2 : 0));
        }

        return curvature * curvature * sum / 2;
    }

    /// <summary>Those that the axial force needs.</summary>
    public static AxialSums AxialSumsOf(BandProfile profile, Ramp[] ramps, double neutralRadius, double neutralAxis)
    {
        TailTable tails = profile.Tails;
        double centroid = profile.Moments.CentroidY;
        double plastic = 0, rate = 0, moment = 0;
        foreach (ref readonly Ramp ramp in ramps.AsSpan())
        {
            double reach = ramp.Start * neutralRadius;
            double upper = neutralAxis + reach;
            double lower = neutralAxis - reach;
            if (upper < tails.Top)
            {
                (double area, double first) = tails.AreaAbove(upper);
                plastic += ramp.Rate * first;
                rate += ramp.Rate * area;
                moment += ramp.Rate * ((upper - centroid) * area + first);
            }

            if (lower > tails.Bottom)
            {
                (double area, double first) = tails.AreaBelow(lower);
                plastic -= ramp.Rate * first;
                rate += ramp.Rate * area;
                moment += ramp.Rate * ((lower - centroid) * area - first);
            }
        }

        return new(plastic, rate, moment);
    }

    /// <summary>The integrals of <see cref="Integrate"/> without the rates.</summary>
    public static PlasticMoments MomentsOf(BandProfile profile, Ramp[] ramps, double curvature, double neutralAxis)
    {
        double p0 = 0, pb = 0, pr = 0;
        TailTable tails = profile.Tails;
        double centroid = profile.Moments.CentroidY;
        double neutralRadius = 1 / curvature;
        foreach (ref readonly Ramp ramp in ramps.AsSpan())
        {
            double upper = neutralAxis + ramp.Start * neutralRadius;
            double lower = neutralAxis - ramp.Start * neutralRadius;
            double strain = ramp.Rate * curvature;
            if (upper < tails.Top)
            {
                tails.Above(upper, out double first, out double second, out double mixed);
                p0 += strain * first;
                pb += strain * ((upper - centroid) * first + second);
                pr += strain * mixed;
            }

            if (lower > tails.Bottom)
            {
                tails.Below(lower, out double first, out double second, out double mixed);
                p0 -= strain * first;
                pb -= strain * ((lower - centroid) * first - second);
                pr -= strain * mixed;
            }
        }

        return new(p0, pb, pr);
    }

    /// <param name="tail">The part beyond the level s.</param>
    /// <param name="offset">s − ȳ, so that d = offset ± x.</param>
    /// <param name="side">+1 above, −1 below.</param>
    /// <param name="rate">Rate of the ramp.</param>
    /// <param name="curvature">κ.</param>
    /// <param name="sums">Where to add.</param>
    private static void Add(in TailMoments tail, double offset, int side, double rate, double curvature, ref PlasticSums sums)
    {
        double strain = side * rate * curvature;
        sums.P0 += strain * tail.W1;
        sums.Pb += strain * (offset * tail.W1 + side * tail.W2);
        sums.Pr += strain * tail.Q1;
        sums.C0 += rate * tail.W0;
        sums.C1 += rate * (offset * tail.W0 + side * tail.W1);
        sums.C2 += rate * (offset * (offset * tail.W0 + 2 * side * tail.W1) + tail.W2);
        sums.Cr0 += rate * tail.Q0;
        sums.Cr1 += rate * (offset * tail.Q0 + side * tail.Q1);
    }
}
