using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What one more test ring on a die would do to the interval at the wanted ring. Immutable and thread-safe.</summary>
public sealed class NextRingOption
{
    internal NextRingOption(Die die, Length? width, string? refusal, double distance)
    {
        Die = die;
        Width = width;
        Refusal = refusal;
        Distance = distance;
    }

    /// <summary>The die.</summary>
    public Die Die { get; }

    /// <summary>
    /// Width of the prediction interval of the inside diameter at the wanted ring afterwards; null where the die leaves no ring or no
    /// scatter is known yet.
    /// </summary>
    /// <remarks>
    /// Equation: 2·(R + n)·(e^r − e^−r), r = t·s·√(1 + h₀), with one more ring in t and h₀, s as it is.
    /// Range: the new ring scatters as the others do.
    /// Source: <see cref="Sources.LearningFromRings"/>
    /// </remarks>
    public Length? Width { get; }

    /// <summary>Why the die leaves no ring, or null.</summary>
    public string? Refusal { get; }

    /// <summary>How far its ring is from the wanted one, as a share.</summary>
    internal double Distance { get; }

    /// <summary>Die and width.</summary>
    public override string ToString() => Width is { } width
        ? Invariant($"{Die.Name}: interval {width.Millimeters:0.0} mm wide")
        : $"{Die.Name}: {Refusal ?? "no interval yet"}";
}

/// <summary>The test ring that would narrow the prediction interval at the wanted ring most. Immutable and thread-safe.</summary>
public sealed class NextRing
{
    /// <summary>Share of a width within which two dies are as good.</summary>
    private const double Alike = 1e-3;

    private NextRing(RingFit fit, BendRadius wanted, Length? before, IReadOnlyList<NextRingOption> options)
    {
        Fit = fit;
        Wanted = wanted;
        WidthBefore = before;
        Options = options;
        NextRingOption[] usable = [.. options.Where(option => option.Refusal is null)];
        double least = usable.Select(option => option.Width?.Meters ?? 0).DefaultIfEmpty(0).Min();
        NextRingOption[] narrow =
            [.. usable.Where(option => (option.Width?.Meters ?? 0) <= least * (1 + Alike)).OrderBy(option => option.Distance)];
        Best = narrow.FirstOrDefault();
        Sentence = Say(narrow.Length == usable.Length);
    }

    /// <summary>The fit as it is.</summary>
    public RingFit Fit { get; }

    /// <summary>The wanted ring.</summary>
    public BendRadius Wanted { get; }

    /// <summary>
    /// Width of the prediction interval of the inside diameter at the wanted ring now; null where no scatter is known or the model does not
    /// reach that ring.
    /// </summary>
    public Length? WidthBefore { get; }

    /// <summary>Every die of the rack, in its order.</summary>
    public IReadOnlyList<NextRingOption> Options { get; }

    /// <summary>
    /// The die that narrows it most, of equal ones that whose ring is nearest to the wanted one; null when no die leaves a ring.
    /// </summary>
    public NextRingOption? Best { get; }

    /// <summary>What to bend next, in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>Tries every die of a rack for the next test ring.</summary>
    /// <param name="fit">The fit to the rings measured so far.</param>
    /// <param name="rack">The dies at hand.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How it is let go.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined
    /// value.</exception>
    public static NextRing For(RingFit fit, DieRack rack, BendRadius wanted, Release release)
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

        NextRingOption Option(Die die)
        {
            DiePrediction forecast = fit.Forecast(die, release);
            if (forecast.Ring is not { } ring || model.Basis.Try(analysis, die).Formed is not { } formed
                || formed.IsStraightWhen(model.Release))
            {
                return new(die, null, forecast.Refusal ?? "the bar springs back straight", double.PositiveInfinity);
            }

            double x = CurvatureRatioCorrection.VariableOf(formed.RingWhen(model.Release), analysis.Section);
            Length? width = target is { } at ? Width(least.PredictionErrorWith(x, at), least.Freedom + 1) : null;
            return new(die, width, null, Math.Abs(Math.Log(ring.RadiusTo(wanted.Reference).Meters / wanted.Radius)));
        }

        return new(fit, wanted, target is { } place ? Width(least.PredictionError(place), least.Freedom) : null, [.. rack.Select(Option)]);
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;

    private string Say(bool allAlike) => Best is not { } best
        ? "No die of the rack leaves a ring: there is no test ring to bend."
        : best.Width is not { } after
            ? $"No interval is known yet: bend one more ring, best on die {best.Die.Name}, whose ring comes nearest to the wanted one."
            : Invariant(
                $"Bend the next test ring on die {best.Die.Name}: the interval at the wanted ring, {(WidthBefore is { } now ? Invariant($"{now.Millimeters:0.0} mm wide now") : "not known yet")} in inside diameter, then is {after.Millimeters:0.0} mm wide if the ring scatters as the others do{(allAlike && Options.Count > 1 ? "; the other dies would narrow it as much, this one is nearest to the wanted ring" : string.Empty)}.");
}
