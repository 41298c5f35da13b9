using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What a measured ring is explained by.</summary>
public enum HypothesisKind
{
    /// <summary>The bar wraps the die, and the stamp means another face than assumed.</summary>
    ReferenceFace,

    /// <summary>The bar is pinched in small steps, with a stroke other than the die's radius implies.</summary>
    Stroke,

    /// <summary>The model is right up to a ratio of curvatures.</summary>
    CurvatureRatio,
}

/// <summary>
/// One explanation of a measured ring: the number it implies, whether that number is credible, and a model that predicts other dies from
/// it; or one kind of explanation held against several rings. Immutable and thread-safe.
/// </summary>
public sealed class Hypothesis
{
    internal Hypothesis(HypothesisKind kind, bool fits, string sentence, FormingModel? model, Ratio? deviation = null)
    {
        Kind = kind;
        Fits = fits;
        Sentence = sentence;
        Model = model;
        LargestDeviation = deviation;
    }

    /// <summary>
    /// Difference of predicted and measured radius up to which an explanation agrees with a ring: 1 %. A setting, not a finding.
    /// </summary>
    public static Ratio AgreementLimit => Ratio.FromPercent(1);

    /// <summary>Which explanation.</summary>
    public HypothesisKind Kind { get; }

    /// <summary>
    /// Whether the implied number is one a bender can have: a face between the inside and a little beyond the outside of the bar, a stroke
    /// that is found and stands in a positive ratio to the one the die implies, a curvature ratio between a half and two. Of several rings,
    /// whether the explanation fits every one and predicts each from every other within <see cref="AgreementLimit"/>.
    /// </summary>
    public bool Fits { get; }

    /// <summary>The implied number, or what was found of several rings, in a sentence.</summary>
    public string Sentence { get; }

    /// <summary>The model that reproduces the measured ring and predicts others; null when no number does, and of several rings.</summary>
    public FormingModel? Model { get; }

    /// <summary>
    /// Largest difference between predicted and measured inside radius, as a share of the measured one; null of one ring, or when the
    /// explanation does not fit every ring.
    /// </summary>
    public Ratio? LargestDeviation { get; }

    /// <summary>What a kind of explanation is called in a sentence.</summary>
    /// <param name="kind">The kind.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kind is not a defined value.</exception>
    public static string Words(HypothesisKind kind) => Guard.Defined(kind, nameof(kind)) switch
    {
        HypothesisKind.ReferenceFace => "stamped face",
        HypothesisKind.Stroke => "stroke",
        _ => "curvature ratio",
    };

    /// <summary>Holds every kind of explanation against all rings: the number each ring implies is used to predict the others. Rings of one
    /// die cannot contradict any explanation; rings of different dies can.</summary>
    /// <param name="diagnoses">What each measured ring teaches; none is null.</param>
    /// <returns>One entry for each kind tried on every ring; none when the rings are of fewer than two dies.</returns>
    /// <exception cref="ArgumentNullException">The diagnoses or one of them are null.</exception>
    public static IReadOnlyList<Hypothesis> AgreementOf(IReadOnlyList<RingDiagnosis> diagnoses)
    {
        foreach (RingDiagnosis one in Guard.NotNull(diagnoses, nameof(diagnoses)))
        {
            Guard.NotNull(one, nameof(diagnoses));
        }

        return diagnoses.Select(one => one.Ring.Die.Stamp).Distinct().Count() < 2
            ? []
            : [.. diagnoses[0].Hypotheses.Select(one => one.Kind).Where(kind => diagnoses.All(one => one.Find(kind) is not null)).Select(kind => Across(kind, diagnoses))];
    }

    /// <summary>Kind and sentence.</summary>
    public override string ToString() => $"{Kind}: {Sentence}";

    private static Hypothesis Across(HypothesisKind kind, IReadOnlyList<RingDiagnosis> diagnoses)
    {
        string name = Words(kind);
        if (diagnoses.FirstOrDefault(one => !one.Find(kind)!.Fits) is { } unfit)
        {
            return new(kind, false, $"the {name} does not fit the ring of die {unfit.Ring.Die.Name}", null);
        }

        double worst = 0;
        string pair = string.Empty;
        foreach (RingDiagnosis from in diagnoses)
        {
            foreach (MeasuredRing ring in diagnoses.Where(other => !ReferenceEquals(other, from)).Select(other => other.Ring))
            {
                FormedBend? formed = from.Find(kind)!.Model!.Try(ring.Analysis, ring.Die).Formed;
                if (formed is null || formed.IsStraightWhen(ring.Release))
                {
                    return new(kind, false,
                        $"the {name} from die {from.Ring.Die.Name} leaves no ring on die {ring.Die.Name}, where one was measured", null);
                }

                double deviation = Math.Abs(formed.RingWhen(ring.Release).Inside / ring.Ring.Inside - 1);
                (worst, pair) =
                    deviation > worst || pair.Length == 0 ? (deviation, $"die {ring.Die.Name} from die {from.Ring.Die.Name}")
                        : (worst, pair);
            }
        }

        bool agrees = worst <= AgreementLimit.DecimalFractions;
        string sentence = Invariant(
            $"the {name} {(agrees ? "agrees with all" : "does not agree with all")} {diagnoses.Count} rings: at worst it predicts the "
                + $"ring of {pair} with an error of {100 * worst:0.0} % (up to {AgreementLimit.Percent:0.#} % counts as agreement, a "
                + $"setting)");
        return new(kind, agrees, sentence, null, Ratio.FromDecimalFractions(worst));
    }
}
