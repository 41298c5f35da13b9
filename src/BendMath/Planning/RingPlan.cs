using BendMath.Planning;

namespace BendMath;

/// <summary>
/// The whole job in one call: which die and what ring it leaves, will it distort, how long to cut, how hard it pulls, what to check. Built
/// from public members only, so every number can be had, and questioned, on its own. Immutable and thread-safe.
/// </summary>
public sealed class RingPlan
{
    private RingPlan(RingJob job, FormingModel model, MeasuredRing? used, IReadOnlyList<DieCorrection> corrections, DieChoice choice)
    {
        Job = job;
        Model = model;
        UsedRing = used;
        Corrections = corrections;
        Choice = choice;
        Ring = choice.Best is { } best ? new PlannedRing(job, model, best) : null;
        Agreements = ExplanationAgreement.Of(corrections);
        Advisories = [.. PlanAdvisories.Of(job, Ring, Agreements), .. Ring?.Outcome.Formed!.Advisories ?? []];
    }

    /// <summary>The job.</summary>
    public RingJob Job { get; }

    /// <summary>The forming model behind every size in the plan, corrected where the job asks for it. Print it before any size.</summary>
    public FormingModel Model { get; }

    /// <summary>The measured ring the model is corrected by, or null.</summary>
    public MeasuredRing? UsedRing { get; }

    /// <summary>What each measured ring would teach, explanation by explanation.</summary>
    public IReadOnlyList<DieCorrection> Corrections { get; }

    /// <summary>Each kind of explanation held against all measured rings; empty when they are of fewer than two dies.</summary>
    public IReadOnlyList<ExplanationAgreement> Agreements { get; }

    /// <summary>Every die against the wanted ring, judged as it comes off, free.</summary>
    public DieChoice Choice { get; }

    /// <summary>The plan on the best die, or null when no die leaves a ring.</summary>
    public PlannedRing? Ring { get; }

    /// <summary>What is doubtful about the plan, what stops the job first.</summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    /// <summary>Plans a job.</summary>
    /// <param name="job">The job.</param>
    /// <exception cref="ArgumentNullException">The job is null.</exception>
    /// <exception cref="InvalidOperationException">The correction the job asks for does not explain its measured ring.</exception>
    public static RingPlan For(RingJob job)
    {
        Guard.NotNull(job, nameof(job));
        DieCorrection[] corrections = [.. job.MeasuredRings.Select(ring => DieCorrection.Of(ring, job.Model, job.Setup))];
        MeasuredRing? used = job.Correction is null ? null : Nearest(job);
        FormingModel model = used is null ? job.Model : Corrected(job, corrections.First(c => ReferenceEquals(c.Ring, used)));
        return new(job, model, used, [.. corrections], DieChoice.For(job.Rack, job.Analysis, job.Wanted, model, Release.Free));
    }

    /// <summary>Job and best die.</summary>
    public override string ToString() => $"{Job}: {(Ring is null ? "no die leaves a ring" : Ring.Outcome)}";

    /// <summary>The measured ring of the same bar and metal whose inside radius is nearest to the wanted one; of another metal or bar when there is none.</summary>
    private static MeasuredRing Nearest(RingJob job)
    {
        double wanted = job.Wanted.InsideRadiusOf(job.Analysis.Section).Meters;
        return job.MeasuredRings
            .OrderBy(ring => ring.IsOf(job.Analysis.Section) ? 0 : 1)
            .ThenBy(ring => ring.IsOf(job.Analysis.Law) ? 0 : 1)
            .ThenBy(ring => Math.Abs(ring.Ring.InsideRadius.Meters - wanted)).First();
    }

    private static FormingModel Corrected(RingJob job, DieCorrection correction)
    {
        Explanation? explanation = correction.Find(job.Correction!.Value);
        return explanation is { Fits: true, Model: { } model } ? model : throw new InvalidOperationException(
            explanation is null
                ? $"The correction by the {Explanation.Words(job.Correction.Value)} needs the half-span and nose of the bender."
                : $"The correction by the {Explanation.Words(job.Correction.Value)} cannot be used: {explanation.Sentence}.");
    }
}
