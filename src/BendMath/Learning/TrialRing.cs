using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// The next ring to bend to learn from: on which die it tells the explanations of a measured ring apart, or narrows the prediction interval
/// at the wanted ring most. Immutable and thread-safe.
/// </summary>
public sealed partial class TrialRing
{
    /// <summary>Share of a width within which two dies are as good.</summary>
    private const double Alike = 1e-3;

    private TrialRing(TrialRingOption[] options, TrialRingOption? best, Length? width, string sentence)
    {
        Options = Array.AsReadOnly(options);
        Best = best;
        IntervalWidth = width;
        Sentence = sentence;
    }

    /// <summary>Every die of the rack, in its order.</summary>
    public IReadOnlyList<TrialRingOption> Options { get; }

    /// <summary>The die to take, or null when none serves.</summary>
    public TrialRingOption? Best { get; }

    /// <summary>
    /// Width of the prediction interval of the inside diameter at the wanted ring now; null where no scatter is known, the model does not
    /// reach that ring, or explanations are to be told apart.
    /// </summary>
    public Length? IntervalWidth { get; }

    /// <summary>What to bend next, in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>
    /// Tries every die of a rack for the ring that narrows the prediction interval at the wanted ring most; of equal ones the best is that
    /// whose ring is nearest to the wanted one.
    /// </summary>
    /// <param name="fit">The fit to the rings measured so far.</param>
    /// <param name="rack">The dies at hand.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How it is let go.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined
    /// value.</exception>
    public static TrialRing ToNarrow(RingFit fit, DieRack rack, BendRadius wanted, Release release)
    {
        CurvatureRatioCorrection model = Guard.NotNull(fit, nameof(fit)).Model;
        BendAnalysis analysis = fit.Analysis;
        Guard.NotNull(rack, nameof(rack));
        Guard.NotNull(wanted, nameof(wanted)).InsideOf(analysis.Section, nameof(wanted));
        Guard.Defined(release, nameof(release));
        double? target = null;
        double middle = 0;
        if (model.Uncorrected(analysis, wanted, release) is { } plain
            && analysis.TryLoadedFor(plain, model.Release)?.Release(model.Release) is { IsStraight: false, Ring: var ring }
            && analysis.TryLoadedFor(wanted, release)?.Release(release) is { IsStraight: false, Ring: var asked })
        {
            target = CurvatureRatioCorrection.VariableOf(ring, analysis.Section);
            middle = asked.Inside + ring.Fiber;
        }

        LeastSquares least = model.Fit;
        Length? Width(double? error, int freedom)
        {
            if (error is not > 1e-9 || freedom < 1)
            {
                return null;
            }

            double width = 4 * middle * Math.Sinh(LeastSquares.Quantile(freedom, DiePrediction.Confidence.DecimalFractions) * error.Value);
            return width < 1e6 ? Length.FromMeters(width) : null;
        }

        TrialRingOption Option(Die die)
        {
            DiePrediction forecast = fit.Forecast(die, release);
            if (forecast.Ring is not { } ring || model.Basis.Try(analysis, die).Formed is not { } formed
                || formed.IsStraightWhen(model.Release))
            {
                return new(forecast, forecast.Refusal ?? "the bar springs back straight", null, double.PositiveInfinity);
            }

            double x = CurvatureRatioCorrection.VariableOf(formed.RingWhen(model.Release), analysis.Section);
            Length? width = target is { } at ? Width(least.PredictionErrorWith(x, at), least.Freedom + 1) : null;
            return new(forecast, null, width, Math.Abs(Math.Log(ring.RadiusTo(wanted.Reference).Meters / wanted.Radius)));
        }

        TrialRingOption[] options = [.. rack.Select(Option)];
        TrialRingOption[] usable = [.. options.Where(option => option.Refusal is null)];
        double smallest = usable.Select(option => option.IntervalWidth?.Meters ?? 0).DefaultIfEmpty(0).Min();
        TrialRingOption[] narrow = [.. usable.Where(option => (option.IntervalWidth?.Meters ?? 0) <= smallest * (1 + Alike))
            .OrderBy(option => option.Distance)];
        Length? now = target is { } place ? Width(least.PredictionError(place), least.Freedom) : null;
        return new(options, narrow.FirstOrDefault(), now,
            Say(narrow.FirstOrDefault(), now, narrow.Length == usable.Length && options.Length > 1));
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;

    private static string Say(TrialRingOption? option, Length? width, bool allAlike) => option is not { } best
        ? "No die of the rack leaves a ring: there is no test ring to bend."
        : best.IntervalWidth is not { } after
            ? $"No interval is known yet: bend one more ring, best on die {best.Die.Name}, whose ring comes nearest to the wanted one."
            : Invariant(
                $"Bend the next test ring on die {best.Die.Name}: the interval at the wanted ring, {(width is { } now ? Invariant($"{now.Millimeters:0.0} mm wide now") : "not known yet")} in inside diameter, then is {after.Millimeters:0.0} mm wide if the ring scatters as the others do{(allAlike ? "; the other dies would narrow it as much, this one is nearest to the wanted ring" : string.Empty)}.");
}
