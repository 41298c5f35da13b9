using BendMath.Distortion;
using BendMath.Forming.Variation;
using BendMath.Guards;
using BendMath.Planning;
using UnitsNet;

namespace BendMath;

/// <summary>
/// One ring or arc to make: the bar, the wanted ring, the bender, how blanks are cut, what scatters, what measured rings taught. A job that
/// could be made can be planned. Immutable and thread-safe; <see cref="With"/> makes another one of it and checks it again.
/// </summary>
public sealed class RingJob
{
    private readonly InputVariation? _scatter;

    /// <summary>Makes a job.</summary>
    /// <param name="name">What the shop calls it; not empty.</param>
    /// <param name="analysis">The bar as it lies in the bender, and its material.</param>
    /// <param name="wanted">The wanted ring.</param>
    /// <param name="bender">The dies at hand, how the bender forms and what drives it.</param>
    /// <param name="cutting">How blanks are cut from the bar.</param>
    /// <param name="scatter">What may differ from ring to ring; null for the yield range of the material alone.</param>
    /// <param name="calibration">Rings made before and what they correct; null for none.</param>
    /// <param name="distortion">What the distortion checks cannot know; null for <see cref="DistortionSettings.Default"/>.</param>
    /// <exception cref="ArgumentNullException">An argument without a default is null.</exception>
    /// <exception cref="ArgumentException">
    /// The name is empty; the correction does not explain its measured ring; or what scatters contradicts bender or bar: a stroke where the
    /// model has none, the mill tolerance of another bar, a yield that is not about that of the material.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The wanted radius leaves no inside radius, or the saw cut or the root opening of a
    /// closed ring is a tenth of it or more.</exception>
    public RingJob(
        string name,
        BendAnalysis analysis,
        WantedRing wanted,
        Bender bender,
        CuttingRules cutting,
        InputVariation? scatter = null,
        Calibration? calibration = null,
        DistortionSettings? distortion = null)
    {
        Name = Guard.Line(name, nameof(name));
        Analysis = Guard.NotNull(analysis, nameof(analysis));
        Wanted = Guard.NotNull(wanted, nameof(wanted));
        Bender = Guard.NotNull(bender, nameof(bender));
        Cutting = Guard.NotNull(cutting, nameof(cutting));
        _scatter = scatter;
        Scatter = scatter ?? new InputVariation(analysis.Material.YieldRange);
        Calibration = calibration ?? Calibration.None;
        Distortion = distortion ?? DistortionSettings.Default;
        double inside = wanted.Radius.InsideOf(analysis.Section, nameof(wanted));
        CheckJoint(wanted.Joint, cutting.Kerf, 2 * Math.PI * (inside + analysis.Section.Depth.Meters));
        Calibrated = CalibratedModel.Of(Calibration, bender.Model, analysis, wanted.Radius, nameof(calibration));
        if (Scatter.RefusalFor(Calibrated.Model, analysis) is { } refusal)
        {
            throw Guard.Refused(nameof(scatter), refusal);
        }
    }

    /// <summary>What the shop calls it.</summary>
    public string Name { get; }

    /// <summary>The bar as it lies in the bender, and its material.</summary>
    public BendAnalysis Analysis { get; }

    /// <summary>The wanted ring.</summary>
    public WantedRing Wanted { get; }

    /// <summary>The dies at hand, how the bender forms, before any correction, and what drives it.</summary>
    public Bender Bender { get; }

    /// <summary>How blanks are cut from the bar.</summary>
    public CuttingRules Cutting { get; }

    /// <summary>What may differ from ring to ring.</summary>
    public InputVariation Scatter { get; }

    /// <summary>Rings made before and what they correct.</summary>
    public Calibration Calibration { get; }

    /// <summary>What the distortion checks cannot know.</summary>
    public DistortionSettings Distortion { get; }

    /// <summary>What the measured rings make of the model.</summary>
    internal CalibratedModel Calibrated { get; }

    /// <summary>
    /// The same job with some parts changed, checked as a new one: <c>job.With(wanted: job.Wanted.With(quantity: 3))</c>. What is left out
    /// stays; what may differ from ring to ring follows the material where the job does not say.
    /// </summary>
    /// <param name="name">Another name, or null.</param>
    /// <param name="analysis">Another bar or material, or null.</param>
    /// <param name="wanted">Another wanted ring, or null.</param>
    /// <param name="bender">Another bender, or null.</param>
    /// <param name="cutting">Other cutting rules, or null.</param>
    /// <param name="scatter">What else may differ, or null.</param>
    /// <param name="calibration">Another calibration, or null.</param>
    /// <param name="distortion">Other settings of the distortion checks, or null.</param>
    /// <exception cref="ArgumentException">As for a new job.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for a new job.</exception>
    public RingJob With(
        string? name = null,
        BendAnalysis? analysis = null,
        WantedRing? wanted = null,
        Bender? bender = null,
        CuttingRules? cutting = null,
        InputVariation? scatter = null,
        Calibration? calibration = null,
        DistortionSettings? distortion = null) => new(
            name ?? Name, analysis ?? Analysis, wanted ?? Wanted, bender ?? Bender, cutting ?? Cutting, scatter ?? _scatter,
                calibration ?? Calibration, distortion ?? Distortion);

    /// <summary>The same job of another material: <c>job.WithMaterial(job.Analysis.Material.WithYield(certified))</c>.</summary>
    /// <param name="material">The material.</param>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentException">The job is one of plane strain and the material has no Poisson's ratio, or as for a new
    /// job.</exception>
    public RingJob WithMaterial(BarMaterial material) => With(analysis: Analysis.With(material: Guard.NotNull(material, nameof(material))));

    /// <summary>Name, bar and wanted ring.</summary>
    public override string ToString() => $"{Name}: {Analysis.Section}, {Wanted.Radius}";

    /// <summary>A ring cannot be closed over a tenth of itself; its outside face is the most its developed length can be.</summary>
    private static void CheckJoint(JointPreparation? joint, Length kerf, double longest)
    {
        double most = longest / 10;
        if (joint is not null && kerf.Meters >= most)
        {
            throw Guard.Fault("cutting", kerf,
                $"must have a saw cut of less than a tenth of the ring that is closed, {Guard.MillimetersText(most)}");
        }

        if (joint is not null && joint.RootOpening.Meters >= most)
        {
            throw Guard.Fault("wanted", joint.RootOpening,
                $"must have a root opening of less than a tenth of the ring, {Guard.MillimetersText(most)}");
        }
    }
}
