using BendMath.Evidence;
using BendMath.Guards;
using MathNet.Numerics.Random;
using MathNet.Numerics.Statistics;
using UnitsNet;

namespace BendMath.Forming.Variation;

/// <summary>
/// Rings of one die drawn at random from what scatters, each input independent of the others: not only between which sizes the ring lies,
/// but how often it lies where. The same seed draws the same rings on every machine. Immutable and thread-safe.
/// </summary>
public sealed class MonteCarloSample
{
    /// <summary>The largest number of rings.</summary>
    private const int Most = 1_000_000;

    private readonly RingReply[] _rings;

    private readonly double[] _insideDiameters;

    private readonly double[] _developed;

    private MonteCarloSample(InputVariation scatter, int count, int seed, RingReply[] rings, double radians)
    {
        Scatter = scatter;
        Count = count;
        Seed = seed;
        _rings = rings;
        _insideDiameters = Sorted(rings, ring => 2 * ring.Inside);
        _developed = Sorted(rings, ring => radians / ring.Curvature);
    }

    /// <summary>What scatters.</summary>
    public InputVariation Scatter { get; }

    /// <summary>Number of draws.</summary>
    public int Count { get; }

    /// <summary>Draws that left no ring: the bar springs back straight, or the die cannot take it.</summary>
    public int WithoutRing => Count - _rings.Length;

    /// <summary>The seed of the draws.</summary>
    public int Seed { get; }

    /// <summary>Smallest and largest inside diameter drawn; null when no draw left a ring.</summary>
    public LengthRange? InsideDiameter => RangeOf(_insideDiameters);

    /// <summary>Shortest and longest developed length drawn; null when no draw left a ring.</summary>
    public LengthRange? DevelopedLength => RangeOf(_developed);

    /// <summary>Draws rings; every value of a range is as likely as any other.</summary>
    /// <param name="model">How the bender forms.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="turn">How much of the ring is wanted, greater than zero.</param>
    /// <param name="scatter">What scatters; at least one input.</param>
    /// <param name="count">Number of draws, from 1 to 1,000,000.</param>
    /// <param name="seed">Seed of the draws.</param>
    /// <param name="cancel">Stops the draws.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">Nothing scatters, the mill tolerance is of another bar, or a stroke scatters where the model has
    /// none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The die does not suit the bar, the release is not a defined value, the turn is not
    /// positive and finite, or the count is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The draws were stopped.</exception>
    public static MonteCarloSample Of(
        FormingModel model, BendAnalysis analysis, Die die, Release release, Angle turn, InputVariation scatter, int count = 2000,
        int seed = 1, CancellationToken cancel = default) =>
        Of(model, analysis, die, release, turn, scatter, count, seed, false, cancel);

    /// <summary>The same with half of the draws at one end of a range or the other: a hard test of the bounds, not a likely shop.</summary>
    internal static MonteCarloSample Of(
        FormingModel model, BendAnalysis analysis, Die die, Release release, Angle turn, InputVariation scatter, int count, int seed,
        bool oftenAtTheEnds, CancellationToken cancel)
    {
        RingResponse response = RingBounds.ResponseOf(model, analysis, die, release, scatter);
        double radians = Guard.Positive(turn, nameof(turn));
        if (count is < 1 or > Most)
        {
            throw Guard.Fault(nameof(count), count, Invariant($"must be from 1 to {Most:N0}"));
        }

        if (response.Inputs.Length == 0)
        {
            throw Guard.Refused(nameof(scatter), "must name at least one input", "nothing scatters");
        }

        MersenneTwister random = new(seed, threadSafe: false);
        double[] values = new double[response.Inputs.Length];
        List<RingReply> rings = new(count);
        for (int i = 0; i < count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            for (int k = 0; k < values.Length; k++)
            {
                values[k] = Drawn(response.Inputs[k], oftenAtTheEnds, random);
            }

            RingReply reply = response.At(values);
            if (reply.Refusal is null)
            {
                rings.Add(reply);
            }
        }

        return new(scatter, count, seed, [.. rings], radians);
    }

    /// <summary>The inside diameter below which a share of the rings lies.</summary>
    /// <param name="share">From 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    /// <exception cref="InvalidOperationException">No draw left a ring.</exception>
    /// <remarks>
    /// Equation: the quantile of the rings drawn, between its neighbors in a straight line at the place (N + 1/3)·share + 1/3.
    /// Range: among the draws that left a ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length InsideDiameterBelow(Ratio share) => Length.FromMeters(Quantile(_insideDiameters, share));

    /// <summary>The developed length below which a share of the rings lies.</summary>
    /// <param name="share">From 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    /// <exception cref="InvalidOperationException">No draw left a ring.</exception>
    /// <remarks>
    /// Equation: the quantile of the rings drawn, between its neighbors in a straight line at the place (N + 1/3)·share + 1/3.
    /// Range: among the draws that left a ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length DevelopedLengthBelow(Ratio share) => Length.FromMeters(Quantile(_developed, share));

    /// <summary>Share of the draws whose ring lies within a tolerance of the wanted one; a draw without a ring lies outside.</summary>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="tolerance">Accepted difference in diameter, either way, greater than zero.</param>
    /// <exception cref="ArgumentNullException">The wanted ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not positive and finite.</exception>
    /// <remarks>
    /// Equation: draws with |2(R − R_wanted)| ≤ tolerance over all draws; standard error √(p(1 − p)/N).
    /// Range: as good as the ranges that were given and the evenness that is assumed.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Ratio ChanceWithin(BendRadius wanted, Length tolerance)
    {
        Guard.NotNull(wanted, nameof(wanted));
        double half = Guard.Positive(tolerance, nameof(tolerance)) / 2 * (1 + 1e-12);
        int within = _rings.Count(ring => Math.Abs(To(ring, wanted.Reference) - wanted.Radius) <= half);
        return Ratio.FromDecimalFractions((double)within / Count);
    }

    /// <summary>Draws and range.</summary>
    public override string ToString() =>
        Invariant($"{Count} draws: {(InsideDiameter is { } range ? $"inside diameter {range}" : "no ring")}");

    private static double To(in RingReply ring, RadiusReference reference) => reference switch
    {
        RadiusReference.InsideFace => ring.Inside,
        RadiusReference.Centroid => ring.Centroid,
        _ => ring.Outside,
    };

    private static double Drawn(ScatterInput input, bool oftenAtTheEnds, MersenneTwister random)
    {
        double place = random.NextDouble();
        if (oftenAtTheEnds)
        {
            place = random.NextDouble() < 0.5 ? place : Math.Round(place, MidpointRounding.AwayFromZero);
        }

        return input.Low + place * (input.High - input.Low);
    }

    private static double[] Sorted(RingReply[] rings, Func<RingReply, double> value)
    {
        double[] values = Array.ConvertAll(rings, ring => value(ring));
        Array.Sort(values);
        return values;
    }

    private static LengthRange? RangeOf(double[] sorted) =>
        sorted.Length == 0 ? null : new(Length.FromMeters(sorted[0]), Length.FromMeters(sorted[sorted.Length - 1]));

    private static double Quantile(double[] sorted, Ratio share)
    {
        double part = Guard.Finite(share, nameof(share));
        return part is < 0 or > 1 ? throw Guard.Fault(nameof(share), share, "must be from 0 to 100 %")
            : sorted.Length > 0 ? SortedArrayStatistics.Quantile(sorted, part)
            : throw new InvalidOperationException("No draw left a ring.");
    }
}
