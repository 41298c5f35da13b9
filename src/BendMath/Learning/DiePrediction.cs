using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Forming.Variation;
using BendMath.Guards;
using BendMath.Numerics;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What an interval rests on.</summary>
public enum IntervalBasis
{
    /// <summary>The scatter of measured rings: a prediction interval.</summary>
    MeasuredRings,

    /// <summary>What may differ from ring to ring, such as the yield of the metal: bounds, without a chance.</summary>
    Scatter,

    /// <summary>Nothing: there is no interval.</summary>
    None,
}

/// <summary>
/// What a die is expected to leave, how far the ring may be off, and the chance that it is within a tolerance. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: R + n = (R_predicted + n)·exp(±t·s·√(1 + h₀)), t of Student's distribution with n_rings − p degrees of freedom, h₀ the
/// leverage of the die's radius; chance the share of that distribution between the limits.
/// Range: a ring made as the measured ones were; scatter equal everywhere and normal in the logarithm of curvature. Without measured
/// scatter: the least and the greatest ring while something differs, without a chance.
/// Source: <see cref="Sources.LearningFromRings"/>
/// </remarks>
public sealed class DiePrediction
{
    private readonly BendAnalysis _analysis;

    private readonly InputVariation _scatter;

    private readonly ScatterBars? _bars;

    private readonly RingPrediction? _prediction;

    private RingBounds? _range;

    private DiePrediction(FormingModel model, BendAnalysis analysis, Die die, Release release, FormingTrial trial, InputVariation? scatter,
        ScatterBars? bars)
    {
        Model = model;
        Die = die;
        Release = release;
        Formed = trial.Formed;
        _analysis = analysis;
        _scatter = scatter ?? new InputVariation(analysis.Material.YieldRange);
        _bars = bars;
        Refusal = trial.Refusal ?? (Formed!.IsStraightWhen(release) ? "the bar springs back straight" : null);
        if (Refusal is not null)
        {
            ChanceNote = Refusal;
            return;
        }

        Ring = Formed!.RingWhen(release);
        _prediction = model.PredictionOf(analysis, die);
        if (_prediction is null)
        {
            if (_scatter.RefusalFor(model, analysis) is { } refusal)
            {
                throw Guard.Refused(nameof(scatter), refusal);
            }

            ChanceNote = model.Evidence.Count switch
            {
                0 => "no measured rings, so no scatter is known",
                1 => "one measured ring shows no scatter",
                _ => "the measured rings leave no scatter to see",
            };
        }
    }

    /// <summary>Share of rings the interval is to hold: 95 %. A setting, not a finding.</summary>
    public static Ratio Confidence => Ratio.FromPercent(95);

    /// <summary>The model that predicts.</summary>
    public FormingModel Model { get; }

    /// <summary>The die.</summary>
    public Die Die { get; }

    /// <summary>How the ring is let go.</summary>
    public Release Release { get; }

    /// <summary>The formed bar, or null when the die cannot take it.</summary>
    public FormedBend? Formed { get; }

    /// <summary>The ring to expect, or null when the die leaves none.</summary>
    public FinishedRing? Ring { get; }

    /// <summary>Why the die leaves no ring, or null.</summary>
    public string? Refusal { get; }

    /// <summary>What the interval rests on.</summary>
    public IntervalBasis Basis => Refusal is not null ? IntervalBasis.None
        : _prediction is not null ? IntervalBasis.MeasuredRings
        : Range.InsideDiameter is null ? IntervalBasis.None
        : IntervalBasis.Scatter;

    /// <summary>Inside diameters to expect, or null; <see cref="IntervalNote"/> says from what, or why not.</summary>
    public LengthRange? Interval => Refusal is not null ? null : _prediction is not null ? IntervalAt(Confidence) : Range.InsideDiameter;

    /// <summary>What the interval is, or why there is none.</summary>
    public string IntervalNote =>
        Refusal
            ?? (_prediction is not null ? MeasuredNote()
                : Range.InsideDiameter is null ? $"{ChanceNote}; {Range.Note}" : $"bounds for {_scatter}, not a measured scatter");

    /// <summary>
    /// The ring of a full turn over everything that scatters; searched when first asked for. Only for a die that leaves a ring.
    /// </summary>
    internal RingBounds Range =>
        _range
            ?? Once.Keep(ref _range,
                RingBounds.Of(new RingResponse(Model, _analysis, Die, Release, _scatter, _bars), _scatter, 2 * Math.PI));

    /// <summary>Why there is no chance, or null when there is one.</summary>
    public string? ChanceNote { get; }

    /// <summary>What a die is expected to leave by a model.</summary>
    /// <param name="model">How the bender forms; a fit's model brings the scatter of its rings.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="scatter">What may differ from ring to ring, for bounds where no measured rings tell; null for the yield range of the
    /// material.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">The mill tolerance is of another bar, or a stroke scatters where the model has none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    public static DiePrediction Of(FormingModel model, BendAnalysis analysis, Die die, Release release, InputVariation? scatter = null)
    {
        Guard.NotNull(model, nameof(model));
        Guard.NotNull(analysis, nameof(analysis));
        Guard.NotNull(die, nameof(die));
        Guard.Defined(release, nameof(release));
        return new(model, analysis, die, release, model.Try(analysis, die), scatter, null);
    }

    /// <summary>The same for a die that was tried.</summary>
    internal static DiePrediction Of(FormingModel model, BendAnalysis analysis, DieOutcome outcome, Release release, InputVariation scatter,
        ScatterBars bars) =>
        new(model, analysis, outcome.Die, release, outcome.Formed is { } formed ? formed : FormingTrial.Refused(outcome.Refusal!), scatter,
            bars);

    /// <summary>Inside diameters that hold a share of rings, from measured scatter; null where no scatter is known.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public LengthRange? IntervalAt(Ratio share)
    {
        double part = Guard.Positive(share, nameof(share));
        if (part >= 1)
        {
            throw Guard.Fault(nameof(share), share, "must be below 100 %");
        }

        if (_prediction is not { } scatter)
        {
            return null;
        }

        double reach = LeastSquares.Quantile(scatter.Freedom, part) * scatter.Error;
        double middle = Ring!.Inside + scatter.Fiber;
        double high = middle * Math.Exp(reach) - scatter.Fiber;
        return 2 * high < Guard.MostMeters
            ? new(Length.FromMeters(Math.Max(0, 2 * (middle * Math.Exp(-reach) - scatter.Fiber))), Length.FromMeters(2 * high)) : null;
    }

    /// <summary>
    /// The chance that a ring comes out within a tolerance of the wanted one; null where no scatter is known, and <see cref="ChanceNote"/>
    /// says why.
    /// </summary>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="tolerance">Accepted difference in diameter, either way; greater than zero.</param>
    /// <exception cref="ArgumentNullException">The wanted ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not positive and finite.</exception>
    public Ratio? ChanceWithin(BendRadius wanted, Length tolerance)
    {
        double half = Guard.Positive(tolerance, nameof(tolerance)) / 2;
        double radius = Guard.NotNull(wanted, nameof(wanted)).Radius;
        if (_prediction is not { } scatter)
        {
            return null;
        }

        // The line of the bar the wanted ring is measured to keeps its distance from the inside face.
        double inside = radius - (Ring!.RadiusTo(wanted.Reference).Meters - Ring.Inside);
        double Below(double limit) =>
            limit + scatter.Fiber <= 0 ? 0
                : StudentT.CDF(0, 1, scatter.Freedom, Math.Log((limit + scatter.Fiber) / (Ring.Inside + scatter.Fiber)) / scatter.Error);
        return Ratio.FromDecimalFractions(Math.Min(1, Math.Max(0, Below(inside + half) - Below(inside - half))));
    }

    /// <summary>Die, ring and interval.</summary>
    public override string ToString() => Ring is null
        ? $"{Die.Name}: {Refusal}"
        : Invariant(
            $"{Die.Name}: {Ring.InsideDiameter.Millimeters:0.0} mm inside "
                + $"diameter{(Interval is { } range ? Invariant($", {range.Low.Millimeters:0.0} to {range.High.Millimeters:0.0} mm "
                + $"({IntervalNote})") : $" ({IntervalNote})")}");

    private string MeasuredNote()
    {
        string rings = Counted.Text(Model.Evidence.Count, "measured ring");
        return Interval is null
            ? $"{rings} scatter too much for an interval: measure more"
            : Invariant($"{Confidence.Percent:0} % of rings, from the scatter of {rings}");
    }
}
