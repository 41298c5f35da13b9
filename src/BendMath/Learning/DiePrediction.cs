using BendMath.Distortion;
using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Forming.Variation;
using BendMath.Guards;
using BendMath.Numerics;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// What a die is expected to leave, how far the ring may be off, and, set against a wanted ring, the chance that it is within a tolerance
/// and the risk to the section. Immutable and thread-safe.
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

    private readonly DistortionSettings _settings;

    private readonly Length? _tolerance;

    private readonly ScatterBars? _bars;

    private Known? _known;

    private RingBounds? _range;

    private DistortionReport? _distortion;

    private DiePrediction(FormingModel model, BendAnalysis analysis, Die die, Release release, InputVariation? scatter,
        DistortionSettings? settings = null)
    {
        Model = model;
        Die = die;
        Release = release;
        _analysis = analysis;
        _scatter = scatter ?? new InputVariation(analysis.Material.YieldRange);
        _settings = settings ?? DistortionSettings.Default;
        FormingTrial trial = model.Try(analysis, die);
        Formed = trial.Formed;
        Refusal = trial.Refusal ?? (Formed!.IsStraightWhen(release) ? "the bar springs back straight" : null);
        Ring = Refusal is null ? Formed!.RingWhen(release) : null;
    }

    private DiePrediction(DiePrediction plain, BendRadius wanted, Length? tolerance, ScatterBars? bars)
    {
        Model = plain.Model;
        Die = plain.Die;
        Release = plain.Release;
        Formed = plain.Formed;
        Ring = plain.Ring;
        Refusal = plain.Refusal;
        _analysis = plain._analysis;
        _scatter = plain._scatter;
        _settings = plain._settings;
        _tolerance = tolerance;
        _bars = bars;
        if (Ring is not null)
        {
            Difference = Length.FromMeters(Ring.RadiusTo(wanted.Reference).Meters - wanted.Radius);
        }

        Chance = tolerance is { } accepted ? ChanceWithin(wanted, accepted) : null;
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

    /// <summary>
    /// Finished less wanted radius, to the line the wanted ring is measured to; positive when the ring is too wide. Null when there is no
    /// ring or none is wanted.
    /// </summary>
    public Length? Difference { get; }

    /// <summary>
    /// Chance of being within the tolerance; null where no tolerance is given, or no scatter is known and <see cref="ChanceNote"/> says
    /// why.
    /// </summary>
    public Ratio? Chance { get; }

    /// <summary>The distortion checks, or null when the die leaves no ring.</summary>
    public DistortionReport? Distortion =>
        Ring is null ? null : _distortion ?? Once.Keep(ref _distortion, DistortionReport.Of(Formed!.Loaded, _settings));

    /// <summary>The worst level of distortion, or null when the die leaves no ring.</summary>
    public RiskLevel? Risk => Distortion?.Level;

    /// <summary>
    /// Whether the interval rests on the scatter of measured rings: a prediction interval. Otherwise it is bounds over what may differ from
    /// ring to ring, such as the yield of the metal, without a chance; or there is none.
    /// </summary>
    public bool IsIntervalMeasured => Measured is not null;

    /// <summary>Inside diameters to expect, or null; <see cref="IntervalNote"/> says from what, or why not.</summary>
    public LengthRange? Interval =>
        Refusal is not null ? null : IsIntervalMeasured ? IntervalAt(Confidence) : Range.InsideDiameter;

    /// <summary>What the interval is, or why there is none.</summary>
    public string IntervalNote =>
        Refusal
            ?? (IsIntervalMeasured ? MeasuredNote()
                : Range.InsideDiameter is null ? $"{ChanceNote}; {Range.Note}" : $"bounds for {_scatter}, not a measured scatter");

    /// <summary>
    /// The ring of a full turn over everything that scatters; searched when first asked for. Only for a die that leaves a ring.
    /// </summary>
    internal RingBounds Range =>
        _range
            ?? Once.Keep(ref _range,
                RingBounds.Of(new RingResponse(Model, _analysis, Die, Release, _scatter, _bars), _scatter, 2 * Math.PI));

    /// <summary>Why no chance can be named, or null when one can.</summary>
    public string? ChanceNote => Refusal ?? Scattered.ChanceNote;

    /// <summary>Die, ring, interval, chance and risk in a sentence.</summary>
    public string Sentence => Ring is null
        ? $"{Die.Name}: leaves no ring, {Refusal}."
        : Invariant(
            $"{Die.Name}: {Ring.InsideDiameter.Millimeters:0.0} mm inside "
                + $"diameter{Beside()}; {(Interval is { } range ? Invariant($"{range.Low.Millimeters:0.0} to {range.High.Millimeters:0.0} "
                + $"mm, {IntervalNote}") : $"no interval, {IntervalNote}")}{ChanceText()}; risk of "
                + $"distortion {Distortion!.Level.ToString().ToLowerInvariant()} ({Distortion.Findings[0].Check}).");

    private RingPrediction? Measured => Refusal is null ? Scattered.Prediction : null;

    private Known Scattered => _known ?? Once.Keep(ref _known, Find());

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
        DiePrediction prediction = new(model, analysis, die, release, scatter);
        _ = prediction.ChanceNote;
        return prediction;
    }

    /// <summary>The same, set against a wanted ring; without a tolerance nothing is asked of the scatter before somebody does.</summary>
    internal static DiePrediction Of(FormingModel model, BendAnalysis analysis, Die die, Release release, BendRadius wanted,
        Length? tolerance = null, DistortionSettings? settings = null, InputVariation? scatter = null, ScatterBars? bars = null) =>
        new(new(model, analysis, die, release, scatter, settings), wanted, tolerance, bars);

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

        if (Measured is not { } scatter)
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
        if (Measured is not { } scatter)
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

    private Known Find()
    {
        if (Model.PredictionOf(_analysis, Die) is { } prediction)
        {
            return new(prediction, null);
        }

        return _scatter.RefusalFor(Model, _analysis) is { } refusal
            ? throw Guard.Refused("scatter", refusal)
            : new(null, Model.Evidence.Count switch
            {
                0 => "no measured rings, so no scatter is known",
                1 => "one measured ring shows no scatter",
                _ => "the measured rings leave no scatter to see",
            });
    }

    private string Beside() => Difference is not { } off ? string.Empty
        : 2 * Math.Abs(off.Millimeters) < 0.05 ? ", as wanted"
        : Invariant($", {2 * Math.Abs(off.Millimeters):0.0} mm {(off.Meters > 0 ? "wider" : "tighter")} than wanted");

    private string ChanceText() => _tolerance is not { } tolerance ? string.Empty
        : Chance is { } chance ? Invariant($"; within {tolerance.Millimeters:0.0} mm in {chance.Percent:0} of 100 rings")
        : $"; no chance can be named: {ChanceNote}";

    private string MeasuredNote()
    {
        string rings = Counted.Text(Model.Evidence.Count, "measured ring");
        return Interval is null
            ? $"{rings} scatter too much for an interval: measure more"
            : Invariant($"{Confidence.Percent:0} % of rings, from the scatter of {rings}");
    }

    /// <summary>What measured rings tell of the scatter, or why nothing.</summary>
    private sealed record Known(RingPrediction? Prediction, string? ChanceNote);
}
