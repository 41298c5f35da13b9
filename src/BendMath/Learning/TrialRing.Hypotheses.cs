using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <content>The trial ring that tells the explanations of a measured ring apart.</content>
public sealed partial class TrialRing
{
    /// <summary>
    /// Measuring errors by which two predictions must differ to be told apart, since both rings are measured: 2. A setting, not a finding.
    /// </summary>
    public static double LeastSeparation => 2;

    /// <summary>
    /// Tries every die of a rack for the second ring that tells the explanations of the first apart; none is best where none does or there
    /// is nothing to tell apart.
    /// </summary>
    /// <param name="diagnosis">What the first ring teaches.</param>
    /// <param name="rack">The dies at hand.</param>
    /// <param name="measuringError">How far a measured diameter may be off, greater than zero.</param>
    /// <exception cref="ArgumentNullException">Diagnosis or rack is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The error is not positive and finite.</exception>
    public static TrialRing ToTellApart(RingDiagnosis diagnosis, DieRack rack, Length measuringError)
    {
        MeasuredRing ring = Guard.NotNull(diagnosis, nameof(diagnosis)).Ring;
        Guard.NotNull(rack, nameof(rack));
        double error = Guard.Positive(measuringError, nameof(measuringError));
        Hypothesis[] fitting = [.. diagnosis.Hypotheses.Where(one => one.Fits)];
        TrialRingOption[] options = [.. rack.Select(die => new TrialRingOption(
            die, [.. fitting.Select(one => (one, DiePrediction.Of(one.Model!, ring.Analysis, die, ring.Release)))]))];
        TrialRingOption? widest = options.Where(one => one.SmallestSeparation is not null).OrderByDescending(Separation).FirstOrDefault();
        TrialRingOption? best = widest is not null && Separation(widest) / error >= LeastSeparation ? widest : null;
        return new(options, best, null, Say(fitting, best, widest, error));
    }

    private static double Separation(TrialRingOption option) => option.SmallestSeparation!.Value.Meters;

    private static string Say(Hypothesis[] fitting, TrialRingOption? best, TrialRingOption? widest, double error)
    {
        if (fitting.Length < 2)
        {
            return fitting.Length == 0
                ? "No explanation fits this ring: measure it again, and check die and bar, before bending a second one."
                : $"Only the {Hypothesis.Words(fitting[0].Kind)} fits this ring: a second ring on another die would confirm it, there is "
                    + $"nothing to tell apart.";
        }

        string[] names = [.. fitting.Select(one => "the " + Hypothesis.Words(one.Kind))];
        string words = string.Join(", ", names.Take(names.Length - 1)) + " and " + names[names.Length - 1];
        return best is not null
            ? Invariant(
                $"Bend the second ring on die {best.Die.Name}: {words} predict rings there that differ by at "
                    + $"least {best.SmallestSeparation!.Value.Millimeters:0.0} mm in inside diameter "
                    + $"({best.Text}), {Separation(best) / error:0.#} times what measuring may be off.")
            : widest is null
                ? $"None of your dies tells {words} apart: on each of them one of these leaves no ring."
                : Invariant(
                    $"None of your dies tells {words} apart: at most, on die {widest.Die.Name}, they differ "
                        + $"by {widest.SmallestSeparation!.Value.Millimeters:0.0} mm in inside diameter, and measuring may be off "
                        + $"by {error * 1e3:0.0} mm for both rings. Measure more finely, or take a die much wider or "
                        + $"tighter.");
    }
}
