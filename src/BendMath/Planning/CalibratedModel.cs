using BendMath.Guards;
using BendMath.Learning;

namespace BendMath.Planning;

/// <summary>What the measured rings of a job make of its forming model.</summary>
internal sealed class CalibratedModel
{
    private CalibratedModel(FormingModel model, IReadOnlyList<RingDiagnosis> corrections, RingFit? fit, MeasuredRing? used)
    {
        Model = model;
        Corrections = corrections;
        Fit = fit;
        UsedRing = used;
    }

    /// <summary>The model behind every size, corrected where the job asks for it.</summary>
    public FormingModel Model { get; }

    /// <summary>What each ring would teach.</summary>
    public IReadOnlyList<RingDiagnosis> Corrections { get; }

    /// <summary>The fit of several rings, or null.</summary>
    public RingFit? Fit { get; }

    /// <summary>The one ring that corrects, or null.</summary>
    public MeasuredRing? UsedRing { get; }

    /// <summary>Corrects a model, or refuses a correction that does not explain its ring.</summary>
    /// <param name="calibration">Rings and correction.</param>
    /// <param name="model">The model to correct.</param>
    /// <param name="analysis">The bar of the job.</param>
    /// <param name="wanted">The wanted ring, for which the nearest measured one speaks.</param>
    /// <param name="name">What the caller calls the calibration.</param>
    /// <exception cref="ArgumentException">The correction does not explain its ring.</exception>
    public static CalibratedModel Of(Calibration calibration, FormingModel model, BendAnalysis analysis, BendRadius wanted, string name)
    {
        RingDiagnosis[] corrections = [.. calibration.Rings.Select(ring => RingDiagnosis.Of(ring, model))];
        if (calibration.Correction is not { } kind)
        {
            return new(model, Array.AsReadOnly(corrections), null, null);
        }

        if (kind == HypothesisKind.CurvatureRatio && corrections.Length > 1)
        {
            return RingFit.TryOf(calibration.Rings, analysis, model, out RingFit? fit, out string? none)
                ? new(fit.Model, Array.AsReadOnly(corrections), fit, null)
                : throw Guard.Refused(name, "must explain at least one of its rings",
                    $"by the {Hypothesis.Words(kind)} it explains none: {none}");
        }

        RingDiagnosis nearest = Nearest(corrections, analysis, wanted);
        return nearest.Find(kind) switch
        {
            null =>
                throw Guard.Refused(name,
                    $"must come with the half-span and nose of the bender where it corrects by the {Hypothesis.Words(kind)}",
                        $"{model.Name} has none"),
            { Fits: true, Model: { } corrected } => new(corrected, Array.AsReadOnly(corrections), null, nearest.Ring),
            { Sentence: var why } =>
                throw Guard.Refused(name, $"must explain its ring {nearest.Ring}", $"by the {Hypothesis.Words(kind)} it does not: {why}"),
        };
    }

    /// <summary>
    /// The measured ring of the same bar and metal whose inside radius is nearest to the wanted one; of another metal or bar when there is
    /// none.
    /// </summary>
    private static RingDiagnosis Nearest(RingDiagnosis[] corrections, BendAnalysis analysis, BendRadius wanted)
    {
        double inside = wanted.InsideRadiusOf(analysis.Section).Meters;
        return corrections
            .OrderBy(one => one.Ring.IsOf(analysis.Section) ? 0 : 1)
            .ThenBy(one => one.Ring.IsOf(analysis.Law) ? 0 : 1)
            .ThenBy(one => Math.Abs(one.Ring.Ring.InsideRadius.Meters - inside)).First();
    }
}
