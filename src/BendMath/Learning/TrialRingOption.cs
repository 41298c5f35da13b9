using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What a trial ring on one die would tell. Immutable and thread-safe.</summary>
public sealed class TrialRingOption
{
    internal TrialRingOption(Die die, IReadOnlyList<(Hypothesis Hypothesis, DiePrediction Prediction)> predicted)
    {
        Die = die;
        Predictions = [.. predicted.Select(one => one.Prediction)];
        Text = string.Join(", ", predicted.Select(one => one.Prediction.Ring is { } ring
            ? Invariant($"{Hypothesis.Words(one.Hypothesis.Kind)}: {ring.InsideDiameter.Millimeters:0.0} mm")
            : $"{Hypothesis.Words(one.Hypothesis.Kind)}: {one.Prediction.Refusal}"));
        if (predicted.Count > 1 && Predictions.All(one => one.Ring is not null))
        {
            double[] diameters = [.. Predictions.Select(one => one.Ring!.InsideDiameter.Meters).OrderBy(one => one)];
            SmallestSeparation = Length.FromMeters(diameters.Skip(1).Zip(diameters, (wide, tight) => wide - tight).Min());
        }
    }

    internal TrialRingOption(DiePrediction prediction, string? refusal, Length? width, double distance)
    {
        Die = prediction.Die;
        Predictions = [prediction];
        Refusal = refusal;
        IntervalWidth = width;
        Distance = distance;
        Text = refusal ?? "no interval yet";
    }

    /// <summary>The die.</summary>
    public Die Die { get; }

    /// <summary>What each explanation that fits predicts of it, or what the fit does.</summary>
    public IReadOnlyList<DiePrediction> Predictions { get; }

    /// <summary>Why the fit has no ring on it, or null.</summary>
    public string? Refusal { get; }

    /// <summary>
    /// Smallest difference in inside diameter between two explanations; null where one of them leaves no ring or fewer than two are asked.
    /// </summary>
    /// <remarks>
    /// Equation: min over pairs of |D_i − D_j|.
    /// Range: rings of the same bar, released as the measured one.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length? SmallestSeparation { get; }

    /// <summary>
    /// Width of the prediction interval of the inside diameter at the wanted ring afterwards; null where the die leaves no ring, no scatter
    /// is known yet, or explanations are to be told apart.
    /// </summary>
    /// <remarks>
    /// Equation: 2·(R + n)·(e^r − e^−r), r = t·s·√(1 + h₀), with one more ring in t and h₀, s as it is.
    /// Range: the new ring scatters as the others do.
    /// Source: <see cref="Sources.LearningFromRings"/>
    /// </remarks>
    public Length? IntervalWidth { get; }

    /// <summary>How far its ring is from the wanted one, as a share.</summary>
    internal double Distance { get; }

    /// <summary>What is predicted, in words.</summary>
    internal string Text { get; }

    /// <summary>Die and what it would tell.</summary>
    public override string ToString() =>
        SmallestSeparation is { } apart ? Invariant($"{Die.Name}: {apart.Millimeters:0.0} mm apart ({Text})")
            : IntervalWidth is { } width ? Invariant($"{Die.Name}: interval {width.Millimeters:0.0} mm wide")
            : $"{Die.Name}: {Text}";
}
