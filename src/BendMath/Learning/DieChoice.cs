using BendMath.Forming;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>What one die of the rack would leave. Immutable and thread-safe.</summary>
public sealed class DieOutcome
{
    internal DieOutcome(Die die, FormingTrial trial, Release release, BendRadius wanted)
    {
        Die = die;
        Formed = trial.Formed;
        Refusal = trial.Refusal ?? (Formed!.IsStraightWhen(release) ? "the bar springs back straight" : null);
        if (Refusal is null)
        {
            Ring = Formed!.RingWhen(release);
            Difference = Length.FromMeters(Ring.RadiusTo(wanted.Reference).Meters - wanted.Radius);
        }
    }

    /// <summary>The die.</summary>
    public Die Die { get; }

    /// <summary>The formed bar, or null when the die cannot take it.</summary>
    public FormedBend? Formed { get; }

    /// <summary>The finished ring, or null when the die leaves none.</summary>
    public FinishedRing? Ring { get; }

    /// <summary>Why the die leaves no ring, or null.</summary>
    public string? Refusal { get; }

    /// <summary>
    /// Finished less wanted radius, to the line the wanted ring is measured to; positive when the ring is too wide. Null when there is
    /// none.
    /// </summary>
    public Length? Difference { get; }

    /// <summary>Die and ring.</summary>
    public override string ToString() => $"{Die}: {(Ring is null ? Refusal : Ring)}";
}

/// <summary>Every die of a rack against a wanted ring. Immutable and thread-safe.</summary>
public sealed class DieChoice
{
    private DieChoice(BendRadius wanted, Release release, FormingModel model, IReadOnlyList<DieOutcome> outcomes, FormedBend? ideal)
    {
        Wanted = wanted;
        Release = release;
        Model = model;
        Outcomes = outcomes;
        Ideal = ideal;
        IEnumerable<DieOutcome> usable = outcomes.Where(outcome => outcome.Difference is not null);
        Best = usable.OrderBy(outcome => Math.Abs(outcome.Difference!.Value.Meters)).FirstOrDefault();
        NextTighter =
            usable.Where(outcome => outcome.Difference!.Value.Meters <= 0).OrderByDescending(outcome => outcome.Difference!.Value.Meters)
                .FirstOrDefault();
        NextWider =
            usable.Where(outcome => outcome.Difference!.Value.Meters > 0).OrderBy(outcome => outcome.Difference!.Value.Meters)
                .FirstOrDefault();
    }

    /// <summary>The wanted ring.</summary>
    public BendRadius Wanted { get; }

    /// <summary>How the ring is let go before it is judged.</summary>
    public Release Release { get; }

    /// <summary>The model in use.</summary>
    public FormingModel Model { get; }

    /// <summary>All dies in the order of the rack.</summary>
    public IReadOnlyList<DieOutcome> Outcomes { get; }

    /// <summary>The die that comes nearest to the wanted radius, or null when none leaves a ring.</summary>
    public DieOutcome? Best { get; }

    /// <summary>The nearest die that leaves the wanted ring or a tighter one, or null.</summary>
    public DieOutcome? NextTighter { get; }

    /// <summary>The nearest die that leaves a wider ring, or null.</summary>
    public DieOutcome? NextWider { get; }

    /// <summary>
    /// What the die one would make does to the bar, its stamp meaning what it means on the best die; null when no die of this kind leaves
    /// the wanted ring.
    /// </summary>
    public FormedBend? Ideal { get; }

    /// <summary>
    /// Stamped radius of the die that would leave the wanted ring, to the face <see cref="FormingModel.FaceOf"/> gives; null when there is
    /// none.
    /// </summary>
    public Length? IdealStampedRadius => Ideal?.Die!.StampedRadius;

    /// <summary>
    /// Radius to machine on that die where the inside of the bar is to lie, in the sense of the model; null when there is none.
    /// </summary>
    public Length? IdealInsideFaceRadius => Ideal is { } ideal
        ? Length.FromMeters(ideal.Die!.InsideFace(ideal.Loaded.Analysis.Section, Model.FaceOf(ideal.Die)))
        : null;

    /// <summary>Tries every die of a rack.</summary>
    /// <param name="rack">The dies.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="model">How the bender forms.</param>
    /// <param name="release">How the ring is let go before it is judged.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the release is not a defined
    /// value.</exception>
    public static DieChoice For(DieRack rack, BendAnalysis analysis, BendRadius wanted, FormingModel model, Release release)
    {
        Guard.NotNull(analysis, nameof(analysis));
        Guard.NotNull(wanted, nameof(wanted)).InsideOf(analysis.Section, nameof(wanted));
        Guard.NotNull(model, nameof(model));
        Guard.Defined(release, nameof(release));
        DieOutcome[] outcomes =
            [.. Guard.NotNull(rack, nameof(rack)).Select(die => new DieOutcome(die, model.Try(analysis, die), release, wanted))];
        ReferenceFace face =
            outcomes.Where(o => o.Difference is not null).OrderBy(o => Math.Abs(o.Difference!.Value.Meters)).FirstOrDefault()?.Die.Face
                ?? rack[0].Face;
        FormedBend? ideal =
            model.StampFor(analysis, wanted, release, face) is { } stamp ? model.Try(analysis, Die.Trial(stamp.Meters, face)).Formed : null;
        return new(wanted, release, model, [.. outcomes], ideal);
    }

    /// <summary>Number of dies and the best.</summary>
    public override string ToString() => Best is null ? "no die leaves a ring" : Invariant($"best of {Outcomes.Count}: {Best}");
}
