using BendMath.Evidence;
using BendMath.Forming.Bumps;
using BendMath.Guards;
using BendMath.Learning;
using BendMath.Measurement;
using BendMath.Planning;

namespace BendMath;

/// <summary>
/// The whole job in one call: which die and what ring it leaves, will it distort, how long to cut, how hard it pulls, what to check. Built
/// from public members only, so every number can be had, and questioned, on its own. Immutable and thread-safe.
/// </summary>
public sealed class RingPlan
{
    private TrialRing? _second;

    private TrialRing? _next;

    private IReadOnlyList<Advisory>? _advisories;

    private RingPlan(RingJob job)
    {
        Job = job;
        CalibratedModel calibrated = job.Calibrated;
        Model = calibrated.Model;
        Fit = calibrated.Fit;
        UsedRing = calibrated.UsedRing;
        Corrections = calibrated.Corrections;
        Choice =
            DieChoice.For(job.Bender.Rack, job.Analysis, job.Wanted.Radius, Model, Release.Free, job.Wanted.Tolerance, job.Distortion,
                job.Scatter);
        Ring = Choice.Best is { } best ? new PlannedRing(job, Model, best) : null;
        Agreements = Hypothesis.AgreementOf(Corrections);
    }

    /// <summary>The job.</summary>
    public RingJob Job { get; }

    /// <summary>The forming model behind every size in the plan, corrected where the job asks for it. Print it before any size.</summary>
    public FormingModel Model { get; }

    /// <summary>The measured ring the model is corrected by; null when there is none or several are fitted together.</summary>
    public MeasuredRing? UsedRing { get; }

    /// <summary>The fit of several measured rings the model is corrected by, or null.</summary>
    public RingFit? Fit { get; }

    /// <summary>What each measured ring would teach, explanation by explanation.</summary>
    public IReadOnlyList<RingDiagnosis> Corrections { get; }

    /// <summary>Each kind of explanation held against all measured rings; empty when they are of fewer than two dies.</summary>
    public IReadOnlyList<Hypothesis> Agreements { get; }

    /// <summary>
    /// Which die to take, with chances where measured rings give them, and what to change; judged as the ring comes off, free.
    /// </summary>
    public DieChoice Choice { get; }

    /// <summary>
    /// On which die a second ring would tell the explanations of the rings apart; null unless rings of one die have more than one
    /// explanation that fits.
    /// </summary>
    public TrialRing? TrialToTellApart =>
        _second ??= Agreements.Count == 0 && Corrections.Count > 0
            && Corrections[Corrections.Count - 1].Hypotheses.Count(one => one.Fits) > 1
        ? TrialRing.ToTellApart(Corrections[Corrections.Count - 1], Job.Bender.Rack, Job.Calibration.MeasuringError)
        : null;

    /// <summary>Which test ring would narrow the interval of the wanted ring most; null unless several rings are fitted.</summary>
    public TrialRing? TrialToNarrow =>
        _next ??= Fit is null ? null : TrialRing.ToNarrow(Fit, Job.Bender.Rack, Job.Wanted.Radius, Release.Free);

    /// <summary>The plan on the best die, or null when no die leaves a ring.</summary>
    public PlannedRing? Ring { get; }

    /// <summary>What is doubtful about the plan, what stops the job first.</summary>
    public IReadOnlyList<Advisory> Advisories =>
        _advisories ??= [.. PlanAdvisories.Of(Job, Ring, Fit, Agreements), .. Ring?.Prediction.Formed!.Advisories ?? [],
            .. Ring?.Closure?.Advisories ?? []];

    /// <summary>Plans a job. Every job that could be made has a plan: what is doubtful about it, <see cref="Advisories"/> say.</summary>
    /// <param name="job">The job.</param>
    /// <exception cref="ArgumentNullException">The job is null.</exception>
    public static RingPlan For(RingJob job) => new(Guard.NotNull(job, nameof(job)));

    /// <summary>
    /// What a measurement of the finished ring says: good, not good, or not to be told. How to bend the next one,
    /// <see cref="BendCorrection"/> says.
    /// </summary>
    /// <param name="diameter">The measured diameter with its error, to the line the wanted ring is measured to.</param>
    /// <exception cref="ArgumentNullException">The diameter is null.</exception>
    public RingVerdict VerdictOn(MeasuredLength diameter) =>
        RingVerdict.Of(Guard.NotNull(diameter, nameof(diameter)), 2 * Job.Wanted.Radius.Value, Job.Wanted.Tolerance);

    /// <summary>Job and best die.</summary>
    public override string ToString() => $"{Job}: {(Ring is null ? "no die leaves a ring" : Ring)}";
}
