using System.Diagnostics.CodeAnalysis;
using BendMath.Evidence;
using BendMath.Forming;
using BendMath.Forming.ThreePoint;
using BendMath.Forming.Variation;
using BendMath.Guards;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>
/// How a bender turns a die into a bent bar. A model is a claim about the machine: until a measured ring supports it, every prediction says
/// so. Immutable and thread-safe.
/// </summary>
public abstract class FormingModel
{
    private protected FormingModel(IReadOnlyList<MeasuredRing> evidence) => Evidence = evidence;

    /// <summary>What the model is called.</summary>
    public abstract string Name { get; }

    /// <summary>What the model assumes, in a sentence or two a person at the bender can check.</summary>
    public abstract string Assumption { get; }

    /// <summary>The measured rings the model was fitted to; empty for a model taken from theory alone.</summary>
    public IReadOnlyList<MeasuredRing> Evidence { get; }

    /// <summary>Half-span and nose of the bender, or null where the model knows none.</summary>
    public virtual ThreePointSetup? Setup => null;

    /// <summary>The model this one corrects by measured rings, or null.</summary>
    public virtual FormingModel? Basis => null;

    /// <summary>
    /// How measured rings correct <see cref="Basis"/>, in a few words such as <c>fit to the rings: one ratio</c>; null where nothing is
    /// corrected.
    /// </summary>
    public virtual string? CorrectionName => null;

    /// <summary>The bar as the die leaves it.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The die is too small for the bar or for the span of the bender.</exception>
    public FormedBend Form(BendAnalysis analysis, Die die)
    {
        FormingTrial trial = Try(Guard.NotNull(analysis, nameof(analysis)), Guard.NotNull(die, nameof(die)));
        return trial.Formed ?? throw Guard.OutOfRange(nameof(die), $"must suit {analysis.Section}", $"{die} does not: {trial.Refusal}");
    }

    /// <summary>The bar as the die leaves it, or why the model cannot form it there.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <param name="formed">The formed bar, or null.</param>
    /// <param name="refusal">Why not, or null.</param>
    /// <returns>Whether the bar can be formed.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public bool TryForm(BendAnalysis analysis, Die die, [NotNullWhen(true)] out FormedBend? formed,
        [NotNullWhen(false)] out string? refusal)
    {
        FormingTrial trial = Try(Guard.NotNull(analysis, nameof(analysis)), Guard.NotNull(die, nameof(die)));
        formed = trial.Formed;
        refusal = trial.Refusal;
        return formed is not null;
    }

    /// <summary>
    /// The face of the bar the model takes a die's stamp to mean: what the die says, unless a measured ring says otherwise.
    /// </summary>
    /// <param name="die">The die.</param>
    /// <exception cref="ArgumentNullException">The die is null.</exception>
    public virtual ReferenceFace FaceOf(Die die) => Guard.NotNull(die, nameof(die)).Face;

    /// <summary>
    /// What a person can set at the bender, such as the stroke, for a bar on a die; empty where the die alone decides the ring.
    /// </summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public IReadOnlyList<FormingSetting> SettingsOn(BendAnalysis analysis, Die die) =>
        Settings(Guard.NotNull(analysis, nameof(analysis)), Guard.NotNull(die, nameof(die)));

    /// <summary>The stamped radius of the die that would leave the wanted ring: the die one would make.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="face">The face the new die's stamp would mean.</param>
    /// <returns>The stamped radius, or null when no die of this model leaves the ring.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value, or the wanted radius leaves no inside
    /// radius.</exception>
    public Length? StampFor(BendAnalysis analysis, BendRadius wanted, Release release, ReferenceFace face)
    {
        OrientedSection section = Guard.NotNull(analysis, nameof(analysis)).Section;
        double target = Guard.NotNull(wanted, nameof(wanted)).InsideOf(section, nameof(wanted));
        Guard.Defined(release, nameof(release));
        double least = FaceOf(Die.Trial(1, Guard.NotNull(face, nameof(face)))).Offset(section) + LeastInsideRadius;
        double bottom = least + 1e-3 * target;
        double top = least + 20 * target;

        // Wanted over finished radius, less 1; a refused die counts as too tight, and so does a ring of less than half the wanted radius.
        BendAnalysis bar = analysis.ForSearch();
        double Residual(double stamp) => Try(bar, Die.Trial(stamp, face)).Formed is { } formed
            ? Math.Min(1, FinishedCurvatureTimes(formed, release, wanted) - 1)
            : 1;

        // The finished curvature falls as the stamp grows: one sign change at most.
        return Residual(bottom) > 0 && Residual(top) < 0
            ? Length.FromMeters(Bracketed.Root(Residual, bottom, top))
            : null;
    }

    /// <summary>Model name and the evidence for it.</summary>
    public override string ToString() => Evidence.Count == 0
        ? Name + ", no measured ring"
        : Invariant($"{Name}, from {Counted.Text(Evidence.Count, "measured ring")}");

    /// <summary>Inside-face radius below which the model cannot work at all.</summary>
    internal virtual double LeastInsideRadius => 0;

    /// <summary>Whether the finished radius can only grow with the yield stress; pinching turns back.</summary>
    internal virtual bool IsMonotone => true;

    /// <summary>The same bender with so much more stroke on every die; null for a model that has no stroke.</summary>
    internal virtual FormingModel? WithExtraStroke(double meters) => null;

    /// <summary>What a person can set.</summary>
    internal virtual IReadOnlyList<FormingSetting> Settings(BendAnalysis analysis, Die die) => [];

    /// <summary>
    /// Where nothing can be set: the bar on the die as the subject of a sentence, and what but another die could still be changed.
    /// </summary>
    internal virtual (string Bar, string Except) FixedTool(Die die) => ($"A bar that lies on die {die.Name}", string.Empty);

    /// <summary>The scatter measured rings show for a bar on a die, or null where they show none.</summary>
    internal virtual RingPrediction? PredictionOf(BendAnalysis analysis, Die die) => null;

    /// <summary>The formed bar, or why the model cannot form it on the die.</summary>
    internal abstract FormingTrial Try(BendAnalysis analysis, Die die);

    private protected IEnumerable<Advisory> EvidenceAdvisories(BendAnalysis analysis, Die? die)
    {
        if (Evidence.Count == 0)
        {
            yield return new("no-measured-ring",
                $"No measured ring supports \"{Name}\" in this shop: bend and measure one ring before relying on the size.",
                    Sources.CommonPractice);
            yield break;
        }

        IReadOnlyList<string> differences =
            Evidence.Select(ring => ring.DifferencesFrom(analysis, die, anyStamp: Evidence.Count > 1)).OrderBy(found => found.Count)
                .First();
        if (differences.Count > 0)
        {
            yield return new("extrapolated",
                $"The prediction is for {string.Join(" and for ", differences)}: it carries a measured ring over to a case nobody "
                    + $"measured.", Sources.CommonPractice);
        }
    }

    /// <summary>Wanted radius over finished radius; zero for a straight bar.</summary>
    private static double FinishedCurvatureTimes(FormedBend formed, Release release, BendRadius wanted) =>
        formed.IsStraightWhen(release) ? 0 : wanted.Radius / formed.RingWhen(release).RadiusTo(wanted.Reference).Meters;
}
