using BendMath.Evidence;
using BendMath.Forming.ThreePoint;

namespace BendMath;

/// <summary>
/// What a forming model says of one bar on one die: the loaded state under the tool and the ring that comes off. Immutable and thread-safe.
/// </summary>
public sealed class FormedBend
{
    private readonly IEnumerable<Advisory> _evidence;

    private readonly IEnumerable<Advisory> _validity;

    private IReadOnlyList<Advisory>? _advisories;

    internal FormedBend(FormingModel model, Die? die, LoadedBend loaded, ThreePointContact? contact, IEnumerable<Advisory> evidence,
        IEnumerable<Advisory> validity, double ratio = 1)
    {
        Model = model;
        Die = die;
        Loaded = loaded;
        Contact = contact;
        CurvatureRatio = ratio;
        _evidence = evidence;
        _validity = validity;
    }

    /// <summary>The model that said so.</summary>
    public FormingModel Model { get; }

    /// <summary>The die, or null where the model was asked for a stroke.</summary>
    public Die? Die { get; }

    /// <summary>
    /// The most tightly bent section under the tool; with a curvature ratio, the loaded state that leaves the corrected ring; bump by bump,
    /// the one that leaves the mean curvature of the facets.
    /// </summary>
    public LoadedBend Loaded { get; }

    /// <summary>Contacts and forces of three-point bending, or null for wrap bending.</summary>
    public ThreePointContact? Contact { get; }

    /// <summary>Measured curvature over the model's, when a measured ring corrects it; 1 otherwise.</summary>
    public double CurvatureRatio { get; }

    /// <summary>
    /// What is doubtful about this prediction: the loaded state, its release as it comes off, the evidence for the model and its range;
    /// what is minor comes last.
    /// </summary>
    public IReadOnlyList<Advisory> Advisories =>
        _advisories ??= [
            .. _validity.Concat(_evidence).Concat(Loaded.Release(Release.Free).Advisories).OrderBy(advisory => advisory.IsMinor)];

    /// <summary>What is doubtful about the tool and the evidence, without what is minor.</summary>
    internal IEnumerable<Advisory> Doubts => _validity.Concat(_evidence).Where(advisory => !advisory.IsMinor);

    /// <summary>Whether the bar springs back straight.</summary>
    /// <param name="release">How it is let go.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    public bool IsStraightWhen(Release release) => Loaded.Release(release).IsStraight;

    /// <summary>The finished ring.</summary>
    /// <param name="release">How it is let go.</param>
    /// <exception cref="ArgumentOutOfRangeException">The release is not a defined value.</exception>
    /// <exception cref="InvalidOperationException">The bar springs back straight.</exception>
    public FinishedRing RingWhen(Release release) => Loaded.Release(release).Ring;

    /// <summary>Model, die and loaded state.</summary>
    public override string ToString() => $"{Model.Name}{(Die is null ? string.Empty : " on " + Die.Name)}: {Loaded}";

    /// <summary>The same machine setting with the loaded state a correction asks for.</summary>
    internal FormedBend Corrected(FormingModel model, LoadedBend loaded, double ratio, IEnumerable<Advisory> evidence) =>
        new(model, Die, loaded, Contact?.Times(loaded.Moment / Loaded.Moment), evidence, _validity, CurvatureRatio * ratio);
}
