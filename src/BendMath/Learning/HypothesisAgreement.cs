using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// One kind of explanation held against all measured rings: the number each ring implies is used to predict the others. Rings of one die
/// cannot contradict any explanation; rings of different dies can. Immutable and thread-safe.
/// </summary>
public sealed class HypothesisAgreement
{
    private HypothesisAgreement(HypothesisKind kind, bool agrees, Ratio? deviation, string sentence)
    {
        Kind = kind;
        Agrees = agrees;
        LargestDeviation = deviation;
        Sentence = sentence;
    }

    /// <summary>
    /// Difference of predicted and measured radius up to which an explanation agrees with a ring: 1 %. A setting, not a finding.
    /// </summary>
    public static Ratio Limit => Ratio.FromPercent(1);

    /// <summary>Which explanation.</summary>
    public HypothesisKind Kind { get; }

    /// <summary>Whether the explanation fits every ring and predicts each from every other within <see cref="Limit"/>.</summary>
    public bool Agrees { get; }

    /// <summary>
    /// Largest difference between predicted and measured inside radius, as a share of the measured one; null when the explanation does not
    /// fit every ring.
    /// </summary>
    public Ratio? LargestDeviation { get; }

    /// <summary>What was found, with the numbers.</summary>
    public string Sentence { get; }

    /// <summary>Holds every kind of explanation against all rings.</summary>
    /// <param name="corrections">What each measured ring teaches; none is null.</param>
    /// <returns>One entry for each kind tried on every ring; none when the rings are of fewer than two dies.</returns>
    /// <exception cref="ArgumentNullException">The corrections or one of them are null.</exception>
    public static IReadOnlyList<HypothesisAgreement> Of(IReadOnlyList<RingDiagnosis> corrections)
    {
        foreach (RingDiagnosis correction in Guard.NotNull(corrections, nameof(corrections)))
        {
            Guard.NotNull(correction, nameof(corrections));
        }

        return corrections.Select(correction => correction.Ring.Die.Stamp).Distinct().Count() < 2
            ? []
            : [.. corrections[0].Hypotheses.Select(one => one.Kind).Where(kind => corrections.All(c => c.Find(kind) is not null)).Select(kind => Of(kind, corrections))];
    }

    /// <summary>Kind and sentence.</summary>
    public override string ToString() => $"{Kind}: {Sentence}";

    private static HypothesisAgreement Of(HypothesisKind kind, IReadOnlyList<RingDiagnosis> corrections)
    {
        string name = Hypothesis.Words(kind);
        if (corrections.FirstOrDefault(correction => !correction.Find(kind)!.Fits) is { } unfit)
        {
            return new(kind, false, null, $"the {name} does not fit the ring of die {unfit.Ring.Die.Name}");
        }

        double worst = 0;
        string pair = string.Empty;
        foreach (RingDiagnosis from in corrections)
        {
            foreach (MeasuredRing ring in corrections.Where(other => !ReferenceEquals(other, from)).Select(other => other.Ring))
            {
                FormedBend? formed = from.Find(kind)!.Model!.Try(ring.Analysis, ring.Die).Formed;
                if (formed is null || formed.IsStraightWhen(ring.Release))
                {
                    return new(kind, false, null,
                        $"the {name} from die {from.Ring.Die.Name} leaves no ring on die {ring.Die.Name}, where one was measured");
                }

                double deviation = Math.Abs(formed.RingWhen(ring.Release).Inside / ring.Ring.Inside - 1);
                (worst, pair) =
                    deviation > worst || pair.Length == 0 ? (deviation, $"die {ring.Die.Name} from die {from.Ring.Die.Name}")
                        : (worst, pair);
            }
        }

        bool agrees = worst <= Limit.DecimalFractions;
        string sentence = Invariant(
            $"the {name} {(agrees ? "agrees with all" : "does not agree with all")} {corrections.Count} rings: at worst it predicts the "
                + $"ring of {pair} with an error of {100 * worst:0.0} % (up to {Limit.Percent:0.#} % counts as agreement, a setting)");
        return new(kind, agrees, Ratio.FromDecimalFractions(worst), sentence);
    }
}
