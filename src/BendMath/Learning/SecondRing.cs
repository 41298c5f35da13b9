using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What one explanation predicts of a die. Immutable and thread-safe.</summary>
public sealed class PredictedRing
{
    internal PredictedRing(Hypothesis explanation, BendAnalysis analysis, Die die, Release release)
    {
        Kind = explanation.Kind;
        FormingTrial trial = explanation.Model!.Try(analysis, die);
        Refusal = trial.Refusal ?? (trial.Formed!.IsStraightWhen(release) ? "the bar springs back straight" : null);
        Ring = Refusal is null ? trial.Formed!.RingWhen(release) : null;
    }

    /// <summary>Which explanation.</summary>
    public HypothesisKind Kind { get; }

    /// <summary>The ring, or null when the die leaves none.</summary>
    public FinishedRing? Ring { get; }

    /// <summary>Why there is no ring, or null.</summary>
    public string? Refusal { get; }

    /// <summary>Hypothesis and inside diameter.</summary>
    public override string ToString() => Ring is null
        ? $"{Hypothesis.Words(Kind)}: {Refusal}"
        : Invariant($"{Hypothesis.Words(Kind)}: {Ring.InsideDiameter.Millimeters:0.0} mm");
}

/// <summary>How well a second ring on one die would tell the explanations apart. Immutable and thread-safe.</summary>
public sealed class SecondRingOption
{
    internal SecondRingOption(Die die, IReadOnlyList<PredictedRing> predicted, double measuringError)
    {
        Die = die;
        Predicted = predicted;
        if (predicted.Count < 2 || predicted.Any(one => one.Ring is null))
        {
            return;
        }

        double[] diameters = [.. predicted.Select(one => one.Ring!.InsideDiameter.Meters).OrderBy(one => one)];
        double smallest = diameters.Skip(1).Zip(diameters, (wide, tight) => wide - tight).Min();
        SmallestSeparation = Length.FromMeters(smallest);
        SeparationOverError = smallest / measuringError;
    }

    /// <summary>The die.</summary>
    public Die Die { get; }

    /// <summary>What each fitting explanation predicts of it.</summary>
    public IReadOnlyList<PredictedRing> Predicted { get; }

    /// <summary>
    /// Smallest difference in inside diameter between two explanations; null where one of them leaves no ring or fewer than two fit.
    /// </summary>
    /// <remarks>
    /// Equation: min over pairs of |D_i − D_j|.
    /// Range: rings of the same bar, released as the measured one.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length? SmallestSeparation { get; }

    /// <summary>That difference over the measuring error; null where there is none.</summary>
    /// <remarks>
    /// Equation: min|D_i − D_j|/error.
    /// Range: as the difference.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public double? SeparationOverError { get; }

    /// <summary>Die and separation.</summary>
    public override string ToString() => SmallestSeparation is { } apart
        ? Invariant($"{Die.Name}: {apart.Millimeters:0.0} mm apart ({string.Join(", ", Predicted)})")
        : $"{Die.Name}: {string.Join(", ", Predicted)}";
}

/// <summary>The second ring that tells the explanations of the first apart. Immutable and thread-safe.</summary>
public sealed class SecondRing
{
    private SecondRing(RingDiagnosis correction, double error, IReadOnlyList<SecondRingOption> options)
    {
        Correction = correction;
        MeasuringError = Length.FromMeters(error);
        Options = options;
        SecondRingOption? widest =
            options.Where(one => one.SmallestSeparation is not null).OrderByDescending(one => one.SeparationOverError).FirstOrDefault();
        Recommended = widest?.SeparationOverError >= LeastSeparation ? widest : null;
        Sentence = Say(correction, widest);
    }

    /// <summary>
    /// Measuring errors by which two predictions must differ to be told apart, since both rings are measured: 2. A setting, not a finding.
    /// </summary>
    public static double LeastSeparation => 2;

    /// <summary>What the first ring teaches.</summary>
    public RingDiagnosis Correction { get; }

    /// <summary>How far a measured diameter may be off.</summary>
    public Length MeasuringError { get; }

    /// <summary>Every die of the rack, in its order.</summary>
    public IReadOnlyList<SecondRingOption> Options { get; }

    /// <summary>The die that tells the explanations apart best, or null when none does or there is nothing to tell apart.</summary>
    public SecondRingOption? Recommended { get; }

    /// <summary>What to do, in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>Tries every die of a rack for the second ring.</summary>
    /// <param name="correction">What the first ring teaches.</param>
    /// <param name="rack">The dies at hand.</param>
    /// <param name="measuringError">How far a measured diameter may be off, greater than zero.</param>
    /// <exception cref="ArgumentNullException">Correction or rack is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The error is not positive and finite.</exception>
    public static SecondRing For(RingDiagnosis correction, DieRack rack, Length measuringError)
    {
        MeasuredRing ring = Guard.NotNull(correction, nameof(correction)).Ring;
        Guard.NotNull(rack, nameof(rack));
        double error = Guard.Positive(measuringError, nameof(measuringError));
        Hypothesis[] fitting = [.. correction.Hypotheses.Where(one => one.Fits)];
        return new(
            correction,
            error,
            [.. rack.Select(die => new SecondRingOption(die, [.. fitting.Select(one => new PredictedRing(one, ring.Analysis, die, ring.Release))], error))]);
    }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;

    private string Say(RingDiagnosis correction, SecondRingOption? widest)
    {
        Hypothesis[] fitting = [.. correction.Hypotheses.Where(one => one.Fits)];
        if (fitting.Length < 2)
        {
            return fitting.Length == 0
                ? "No explanation fits this ring: measure it again, and check die and bar, before bending a second one."
                : $"Only the {Hypothesis.Words(fitting[0].Kind)} fits this ring: a second ring on another die would confirm it, there is "
                    + $"nothing to tell apart.";
        }

        string[] names = [.. fitting.Select(one => "the " + Hypothesis.Words(one.Kind))];
        string words = string.Join(", ", names.Take(names.Length - 1)) + " and " + names[names.Length - 1];
        return Recommended is { } best
            ? Invariant(
                $"Bend the second ring on die {best.Die.Name}: {words} predict rings there that differ by at least {best.SmallestSeparation!.Value.Millimeters:0.0} mm in inside diameter ({string.Join(", ", best.Predicted)}), {best.SeparationOverError:0.#} times what measuring may be off.")
            : widest is null
                ? $"None of your dies tells {words} apart: on each of them one of these leaves no ring."
                : Invariant(
                    $"None of your dies tells {words} apart: at most, on die {widest.Die.Name}, they differ "
                        + $"by {widest.SmallestSeparation!.Value.Millimeters:0.0} mm in inside diameter, and measuring may be off "
                        + $"by {MeasuringError.Millimeters:0.0} mm for both rings. Measure more finely, or take a die much wider or "
                        + $"tighter.");
    }
}
