using System.Globalization;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>
/// How a bender turns a die into a bent bar. A model is a claim about the machine: until a measured ring supports it, every prediction says so.
/// Immutable and thread-safe.
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

    /// <summary>The bar as the die leaves it.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="die">The die.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The die is too small for the bar or for the span of the bender.</exception>
    public FormedBend Form(BendAnalysis analysis, Die die) =>
        Shape(Guard.NotNull(analysis, nameof(analysis)), Guard.NotNull(die, nameof(die)));

    /// <summary>The stamped radius of the die that would leave the wanted ring: the die one would make.</summary>
    /// <param name="analysis">Section and material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="release">How the ring is let go.</param>
    /// <param name="face">The face the new die's stamp would mean.</param>
    /// <returns>The stamped radius, or null when no die of this model leaves the ring.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value, or the wanted radius leaves no inside radius.</exception>
    public Length? StampFor(BendAnalysis analysis, BendRadius wanted, Release release, StampedFace face)
    {
        OrientedSection section = Guard.NotNull(analysis, nameof(analysis)).Section;
        double target = Guard.NotNull(wanted, nameof(wanted)).InsideOf(section, nameof(wanted));
        Guard.Defined(release, nameof(release));
        double least = Guard.NotNull(face, nameof(face)).Offset(section) + LeastInsideRadius;
        double bottom = least + 1e-3 * target;
        double top = least + 20 * target;

        // A die too small for the bar or the bender counts as too tight.
        double Residual(double stamp) => new Die("trial", Length.FromMeters(stamp), face) is var die && RefusalOf(analysis, die) is null
            ? FinishedCurvatureTimes(Shape(analysis, die), release, wanted) - 1
            : 1;

        // The finished curvature falls as the stamp grows: one sign change at most.
        return Residual(bottom) > 0 && Residual(top) < 0
            ? Length.FromMeters(Bracketed.Root(Residual, bottom, top))
            : null;
    }

    /// <summary>Model name and the evidence for it.</summary>
    public override string ToString() => Evidence.Count == 0
        ? Name + ", no measured ring"
        : string.Format(CultureInfo.InvariantCulture, "{0}, from {1} measured ring{2}", Name, Evidence.Count, Evidence.Count == 1 ? string.Empty : "s");

    /// <summary>Inside-face radius below which the model cannot work at all.</summary>
    private protected virtual double LeastInsideRadius => 0;

    private protected abstract FormedBend Shape(BendAnalysis analysis, Die die);

    /// <summary>Why the model cannot form the bar on the die, or null when it can.</summary>
    internal abstract string? RefusalOf(BendAnalysis analysis, Die die);

    internal FormedBend ShapeFor(BendAnalysis analysis, Die die) => Shape(analysis, die);

    private protected IReadOnlyList<Advisory> EvidenceAdvisories(BendAnalysis analysis, Die? die)
    {
        if (Evidence.Count == 0)
        {
            return [new("no-measured-ring", $"No measured ring supports \"{Name}\" in this shop: bend and measure one ring before relying on the size.", Sources.CommonPractice)];
        }

        List<string> differences = [];
        if (die is not null && !Evidence.Any(ring => ring.Die.Stamp == die.Stamp))
        {
            differences.Add(string.Format(CultureInfo.InvariantCulture, "another die than {0}", string.Join(" or ", Evidence.Select(ring => ring.Die.Name).Distinct())));
        }

        if (!Evidence.Any(ring => ring.Analysis.Section.ToString() == analysis.Section.ToString()))
        {
            differences.Add("other stock or another orientation");
        }

        return differences.Count == 0
            ? []
            : [new("extrapolated", $"The prediction is for {string.Join(" and for ", differences)}: it carries a measured ring over to a case nobody measured.", Sources.CommonPractice)];
    }

    /// <summary>Wanted radius over finished radius; zero for a straight bar.</summary>
    private static double FinishedCurvatureTimes(FormedBend formed, Release release, BendRadius wanted) =>
        formed.IsStraightWhen(release) ? 0 : wanted.Radius / formed.RingWhen(release).RadiusTo(wanted.Reference).Meters;
}
