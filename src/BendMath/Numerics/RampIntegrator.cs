namespace BendMath.Numerics;

/// <summary>A plastic strain that begins at a strain and grows in proportion to what lies beyond it: e_p = Rate·(e − Start) for e &gt; Start.</summary>
internal readonly struct Ramp(double start, double rate)
{
    public double Start { get; } = start;

    public double Rate { get; } = rate;
}

/// <summary>
/// Integrates laws of straight lines, which are sums of ramps. Under e = κ(y − y_n) a ramp is zero up to the level s = y_n ± Start/κ and rises
/// linearly beyond it, so each of its integrals is a moment of the part of the section beyond s.
/// </summary>
internal static class RampIntegrator
{
    public static PlasticSums Integrate(BandProfile profile, ReadOnlySpan<Ramp> ramps, double curvature, double neutralAxis)
    {
        PlasticSums sums = default;
        TailTable tails = profile.Tails;
        double centroid = profile.Moments.CentroidY;
        foreach (Ramp ramp in ramps)
        {
            double upper = neutralAxis + ramp.Start / curvature;
            double lower = neutralAxis - ramp.Start / curvature;
            if (upper < tails.Top)
            {
                Add(tails.Above(upper, full: true), upper - centroid, 1, ramp.Rate, curvature, ref sums);
            }

            if (lower > tails.Bottom)
            {
                Add(tails.Below(lower, full: true), lower - centroid, -1, ramp.Rate, curvature, ref sums);
            }
        }

        return sums;
    }

    public static AxialSums Balance(BandProfile profile, ReadOnlySpan<Ramp> ramps, double curvature, double neutralAxis)
    {
        double plastic = 0, rate = 0, moment = 0;
        TailTable tails = profile.Tails;
        double centroid = profile.Moments.CentroidY;
        foreach (Ramp ramp in ramps)
        {
            double upper = neutralAxis + ramp.Start / curvature;
            double lower = neutralAxis - ramp.Start / curvature;
            if (upper < tails.Top)
            {
                TailMoments above = tails.Above(upper, full: false);
                plastic += ramp.Rate * above.W1;
                rate += ramp.Rate * above.W0;
                moment += ramp.Rate * ((upper - centroid) * above.W0 + above.W1);
            }

            if (lower > tails.Bottom)
            {
                TailMoments below = tails.Below(lower, full: false);
                plastic -= ramp.Rate * below.W1;
                rate += ramp.Rate * below.W0;
                moment += ramp.Rate * ((lower - centroid) * below.W0 - below.W1);
            }
        }

        return new(curvature * plastic, rate, moment);
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
