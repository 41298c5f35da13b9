using BendMath.Distortion;
using BendMath.Evidence;
using BendMath.Forming.Variation;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// One die against a wanted ring and a tolerance: what it leaves, with what chance, at what risk to the section. Immutable and thread-safe.
/// </summary>
public sealed class DieProspect
{
    private readonly Length _tolerance;

    private string? _sentence;

    internal DieProspect(DieOutcome outcome, DiePrediction forecast, BendRadius wanted, Length tolerance, DistortionSettings settings)
    {
        Outcome = outcome;
        Forecast = forecast;
        Chance = forecast.ChanceWithin(wanted, tolerance);
        Distortion = outcome.Ring is null ? null : DistortionReport.Of(outcome.Formed!.Loaded, settings);
        _tolerance = tolerance;
    }

    /// <summary>The die, the ring and how far it is from the wanted one.</summary>
    public DieOutcome Outcome { get; }

    /// <summary>The ring with its interval, and what the interval rests on.</summary>
    public DiePrediction Forecast { get; }

    /// <summary>
    /// Chance of being within the tolerance; null where no scatter is known, and <see cref="DiePrediction.ChanceNote"/> says why.
    /// </summary>
    public Ratio? Chance { get; }

    /// <summary>The distortion checks, or null when the die leaves no ring.</summary>
    public DistortionReport? Distortion { get; }

    /// <summary>The worst level of distortion, or null when the die leaves no ring.</summary>
    public RiskLevel? Risk => Distortion?.Level;

    /// <summary>All of it in a sentence.</summary>
    public string Sentence => _sentence ??= Say();

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;

    private string Say() => Outcome.Ring is null
        ? $"{Outcome.Die.Name}: leaves no ring, {Outcome.Refusal}."
        : Invariant(
            $"{Outcome.Die.Name}: {Outcome.Ring.InsideDiameter.Millimeters:0.0} mm inside "
                + $"diameter, {Beside(2 * Outcome.Difference!.Value.Millimeters)}; {(Forecast.Interval is { } range ? Invariant($"{range.Low.Millimeters:0.0} to {range.High.Millimeters:0.0} mm, {Forecast.IntervalNote}") : $"no interval, {Forecast.IntervalNote}")}; {(Chance is { } chance ? Invariant($"within {_tolerance.Millimeters:0.0} mm in {chance.Percent:0} of 100 rings") : $"no chance can be named: {Forecast.ChanceNote}")}; risk of distortion {Distortion!.Level.ToString().ToLowerInvariant()} ({Distortion.Findings[0].Check}).");

    private static string Beside(double millimeters) => Math.Abs(millimeters) < 0.05
        ? "as wanted"
        : Invariant($"{Math.Abs(millimeters):0.0} mm {(millimeters > 0 ? "wider" : "tighter")} than wanted");
}

/// <summary>
/// Which die to take for a wanted ring within a tolerance, with chances where measured rings give them, and what to change to hit it with
/// that die. Immutable and thread-safe.
/// </summary>
public sealed class DieAdvice
{
    private IReadOnlyList<string>? _sentences;

    private DieAdvice(DieChoice choice, BendAnalysis analysis, Length tolerance, DistortionSettings settings, InputVariation? scatter)
    {
        Choice = choice;
        Analysis = analysis;
        Scatter = scatter;
        Tolerance = tolerance;
        InputVariation given = scatter ?? new InputVariation(analysis.Material.YieldRange);
        ScatterBars bars = new(analysis, given.Mill);
        Prospects = [.. choice.Outcomes.Select(outcome => new DieProspect(
            outcome, DiePrediction.Of(choice.Model, analysis, outcome, choice.Release, given, bars), choice.Wanted, tolerance, settings))];
        Best = Prospects.Where(one => one.Outcome.Difference is not null)
            .OrderByDescending(one => Math.Round((one.Chance?.DecimalFractions ?? 0) / AlikeChance.DecimalFractions))
            .ThenBy(one => Math.Abs(one.Outcome.Difference!.Value.Meters))
            .FirstOrDefault();
        Changes = Best is null ? [] : ShopChange.ChangesFor(Best.Outcome.Die, choice, analysis);
    }

    /// <summary>Chances are compared in steps of 1 %; in the same step the nearer die is better. A setting, not a finding.</summary>
    public static Ratio AlikeChance => Ratio.FromPercent(1);

    /// <summary>The dies against the wanted ring, those that bracket it, and the die one would make.</summary>
    public DieChoice Choice { get; }

    /// <summary>Section and material.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>
    /// What may differ from ring to ring where no measured rings tell, as it was given; null for the yield range of the material.
    /// </summary>
    public InputVariation? Scatter { get; }

    /// <summary>Accepted difference in diameter, either way.</summary>
    public Length Tolerance { get; }

    /// <summary>Every die in the order of the rack.</summary>
    public IReadOnlyList<DieProspect> Prospects { get; }

    /// <summary>
    /// The die with the highest chance, of equal ones the nearest; the nearest where no chance is known; null when no die leaves a ring.
    /// </summary>
    public DieProspect? Best { get; }

    /// <summary>What to change to hit the wanted ring with the best die; none when no die leaves a ring.</summary>
    public IReadOnlyList<ShopChange> Changes { get; }

    /// <summary>
    /// The advice in sentences: the best die with what is doubtful about it, its neighbors, what to change, the die to make.
    /// </summary>
    public IReadOnlyList<string> Sentences => _sentences ??= [.. Say()];

    /// <summary>Advises on every die of a rack.</summary>
    /// <param name="rack">The dies.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="tolerance">Accepted difference in diameter, either way; greater than zero.</param>
    /// <param name="model">How the bender forms; <see cref="RingFit.Model"/> brings the scatter of measured rings.</param>
    /// <param name="release">How the ring is let go before it is judged.</param>
    /// <param name="settings">What the distortion checks cannot know; null for <see cref="DistortionSettings.Default"/>.</param>
    /// <param name="scatter">What may differ from ring to ring, for bounds where no measured rings tell; null for the yield range of the
    /// material.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">The mill tolerance is of another bar, or a stroke scatters where the model has none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, the tolerance is not positive and finite,
    /// or the release is not a defined value.</exception>
    public static DieAdvice For(
        DieRack rack, BendAnalysis analysis, BendRadius wanted, Length tolerance, FormingModel model, Release release,
        DistortionSettings? settings = null, InputVariation? scatter = null)
    {
        DieChoice choice = DieChoice.For(rack, analysis, wanted, model, release);
        return new(choice, analysis, Length.FromMeters(Guard.Positive(tolerance, nameof(tolerance))),
            settings ?? DistortionSettings.Default, scatter);
    }

    /// <summary>The first sentence.</summary>
    public override string ToString() => Sentences[0];

    private IEnumerable<string> Say()
    {
        if (Best is not { } best)
        {
            yield return "No die of the rack leaves a ring.";
            yield break;
        }

        yield return "Take die " + best.Sentence;
        foreach (Advisory doubt in best.Outcome.Formed!.Doubts)
        {
            yield return doubt.Message;
        }

        DieProspect[] neighbors =
            [.. Prospects.Where(one => one != best && (one.Outcome == Choice.NextTighter || one.Outcome == Choice.NextWider))];
        foreach (DieProspect neighbor in neighbors)
        {
            yield return "Beside it, " + neighbor.Sentence;
        }

        bool serves = 2 * Math.Abs(best.Outcome.Difference!.Value.Meters) <= Tolerance.Meters;
        if (serves)
        {
            yield return "The ring to expect is within the tolerance: nothing need be changed.";
        }

        // Another die than the best is no help to a ring that is within the tolerance.
        foreach (ShopChange change in Changes.Where(change => !serves || change.Setting is not null))
        {
            yield return serves ? "To come nearer: " + char.ToLowerInvariant(change.Sentence[0]) + change.Sentence.Substring(1)
                : change.Sentence;
        }

        if (Choice.IdealStampedRadius is { } stamp && (serves || Changes.All(change => change.Setting is not null)))
        {
            yield return Invariant($"A die for just this ring would be stamped {stamp.Millimeters:0.0} mm.");
        }
    }
}
