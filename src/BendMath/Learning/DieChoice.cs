using BendMath.Distortion;
using BendMath.Evidence;
using BendMath.Forming.Variation;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Learning;

/// <summary>
/// Which die of a rack to take for a wanted ring: what each leaves, with chances where a tolerance is given and measured rings tell, and
/// what to change to hit the ring with the best. Immutable and thread-safe.
/// </summary>
public sealed class DieChoice
{
    private IReadOnlyList<ShopChange>? _changes;

    private IReadOnlyList<string>? _sentences;

    private DieChoice(BendAnalysis analysis, BendRadius wanted, FormingModel model, Release release, Length? tolerance,
        InputVariation? scatter, IReadOnlyList<DiePrediction> predictions, Func<ReferenceFace?, FormedBend?> ideal)
    {
        Analysis = analysis;
        Wanted = wanted;
        Release = release;
        Model = model;
        Tolerance = tolerance;
        Scatter = scatter;
        Predictions = predictions;
        DiePrediction[] usable = [.. predictions.Where(one => one.Difference is not null)];
        Nearest = usable.OrderBy(Off).FirstOrDefault();
        NextTighter = usable.Where(one => one.Difference!.Value.Meters <= 0).OrderBy(Off).FirstOrDefault();
        NextWider = usable.Where(one => one.Difference!.Value.Meters > 0).OrderBy(Off).FirstOrDefault();
        Best = usable.OrderByDescending(one => Math.Round((one.Chance?.DecimalFractions ?? 0) / AlikeChance.DecimalFractions)).ThenBy(Off)
            .FirstOrDefault();
        Ideal = ideal(Nearest?.Die.Face);
    }

    /// <summary>Chances are compared in steps of 1 %; in the same step the nearer die is better. A setting, not a finding.</summary>
    public static Ratio AlikeChance => Ratio.FromPercent(1);

    /// <summary>Section and material.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>The wanted ring.</summary>
    public BendRadius Wanted { get; }

    /// <summary>How the ring is let go before it is judged.</summary>
    public Release Release { get; }

    /// <summary>The model in use.</summary>
    public FormingModel Model { get; }

    /// <summary>Accepted difference in diameter, either way; null where none is given.</summary>
    public Length? Tolerance { get; }

    /// <summary>
    /// What may differ from ring to ring where no measured rings tell, as it was given; null for the yield range of the material.
    /// </summary>
    public InputVariation? Scatter { get; }

    /// <summary>What each die leaves, in the order of the rack.</summary>
    public IReadOnlyList<DiePrediction> Predictions { get; }

    /// <summary>
    /// The die with the highest chance, of equal ones the nearest; the nearest where no chance is known; null when no die leaves a ring.
    /// </summary>
    public DiePrediction? Best { get; }

    /// <summary>The die that comes nearest to the wanted radius, or null when none leaves a ring.</summary>
    public DiePrediction? Nearest { get; }

    /// <summary>The nearest die that leaves the wanted ring or a tighter one, or null.</summary>
    public DiePrediction? NextTighter { get; }

    /// <summary>The nearest die that leaves a wider ring, or null.</summary>
    public DiePrediction? NextWider { get; }

    /// <summary>
    /// What the die one would make does to the bar, its stamp meaning what it means on the nearest die; null when no die of this kind
    /// leaves the wanted ring.
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

    /// <summary>What to change to hit the wanted ring with the best die; none when no die leaves a ring.</summary>
    public IReadOnlyList<ShopChange> Changes => _changes ??= Best is null ? [] : ChangeSearch.Changes(Best.Die, this);

    /// <summary>
    /// The choice in sentences: the best die with what is doubtful about it, its neighbors, what to change, the die to make.
    /// </summary>
    public IReadOnlyList<string> Sentences => _sentences ??= [.. Say()];

    /// <summary>Tries every die of a rack.</summary>
    /// <param name="rack">The dies.</param>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="model">How the bender forms; <see cref="RingFit.Model"/> brings the scatter of measured rings.</param>
    /// <param name="release">How the ring is let go before it is judged.</param>
    /// <param name="tolerance">Accepted difference in diameter, either way, greater than zero; null to ask for no chance.</param>
    /// <param name="settings">What the distortion checks cannot know; null for <see cref="DistortionSettings.Default"/>.</param>
    /// <param name="scatter">What may differ from ring to ring, for bounds where no measured rings tell; null for the yield range of the
    /// material.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">The mill tolerance is of another bar, or a stroke scatters where the model has none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, the tolerance is not positive and finite,
    /// or the release is not a defined value.</exception>
    public static DieChoice For(
        DieRack rack, BendAnalysis analysis, BendRadius wanted, FormingModel model, Release release, Length? tolerance = null,
        DistortionSettings? settings = null, InputVariation? scatter = null)
    {
        Guard.NotNull(analysis, nameof(analysis));
        Guard.NotNull(wanted, nameof(wanted)).InsideOf(analysis.Section, nameof(wanted));
        Guard.NotNull(model, nameof(model));
        Guard.Defined(release, nameof(release));
        Guard.NotNull(rack, nameof(rack));
        Length? accepted = tolerance is { } given ? Length.FromMeters(Guard.Positive(given, nameof(tolerance))) : null;
        if (scatter?.RefusalFor(model, analysis) is { } refusal)
        {
            throw Guard.Refused(nameof(scatter), refusal);
        }

        InputVariation varied = scatter ?? new InputVariation(analysis.Material.YieldRange);
        ScatterBars bars = new(analysis, varied.Mill);
        return new(analysis, wanted, model, release, accepted, scatter,
            [.. rack.Select(die => DiePrediction.Of(model, analysis, die, release, wanted, accepted, settings, varied, bars))],
            nearest => (nearest ?? rack[0].Face) is var face && model.StampFor(analysis, wanted, release, face) is { } stamp
                ? model.Try(analysis, Die.Trial(stamp.Meters, face)).Formed : null);
    }

    /// <summary>Number of dies and the nearest.</summary>
    public override string ToString() =>
        Nearest is { } near ? Invariant($"best of {Predictions.Count}: {near.Die}: {near.Ring}") : "no die leaves a ring";

    private static double Off(DiePrediction one) => Math.Abs(one.Difference!.Value.Meters);

    private IEnumerable<string> Say()
    {
        if (Best is not { } best)
        {
            yield return "No die of the rack leaves a ring.";
            yield break;
        }

        yield return "Take die " + best.Sentence;
        foreach (Advisory doubt in best.Formed!.Doubts)
        {
            yield return doubt.Message;
        }

        DiePrediction[] neighbors =
            [.. Predictions.Where(one => one != best && (one == NextTighter || one == NextWider))];
        foreach (DiePrediction neighbor in neighbors)
        {
            yield return "Beside it, " + neighbor.Sentence;
        }

        bool serves = 2 * Off(best) <= Tolerance?.Meters;
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

        if (IdealStampedRadius is { } stamp && (serves || Changes.All(change => change.Setting is not null)))
        {
            yield return Invariant($"A die for just this ring would be stamped {stamp.Millimeters:0.0} mm.");
        }
    }
}
