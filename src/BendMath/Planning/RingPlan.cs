using UnitsNet;

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
        Advisories = [.. (Ring?.Outcome.Formed!.Advisories ?? []), .. Unused(job)];
    }

    /// <summary>The job.</summary>
    public RingJob Job { get; }

    /// <summary>The forming model behind every size in the plan, corrected where the job asks for it. Print it before any size.</summary>
    public FormingModel Model { get; }

    /// <summary>The measured ring the model is corrected by, or null.</summary>
    public MeasuredRing? UsedRing { get; }

    /// <summary>What each measured ring would teach, explanation by explanation.</summary>
    public IReadOnlyList<DieCorrection> Corrections { get; }

    /// <summary>Every die against the wanted ring, judged as it comes off, free.</summary>
    public DieChoice Choice { get; }

    /// <summary>The plan on the best die, or null when no die leaves a ring.</summary>
    public PlannedRing? Ring { get; }

    /// <summary>What is doubtful about the plan.</summary>
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

    /// <summary>The measured ring of the same bar and orientation whose size is nearest to the wanted one; of any bar when there is none.</summary>
    private static MeasuredRing Nearest(RingJob job)
    {
        string bar = job.Analysis.Section.ToString();
        MeasuredRing[] same = [.. job.MeasuredRings.Where(ring => ring.Analysis.Section.ToString() == bar)];
        double wanted = job.Wanted.InsideOf(job.Analysis.Section, nameof(job));
        return (same.Length > 0 ? same : job.MeasuredRings)
            .OrderBy(ring => Math.Abs(ring.Measured.InsideOf(ring.Analysis.Section, nameof(job)) - wanted)).First();
    }

    private static FormingModel Corrected(RingJob job, DieCorrection correction)
    {
        Explanation? explanation = correction.Find(job.Correction!.Value);
        return explanation?.Model ?? throw new InvalidOperationException(
            explanation is null
                ? $"The correction by the {Words(job.Correction.Value)} needs the half-span and nose of the bender."
                : $"The correction by the {Words(job.Correction.Value)} cannot be used: {explanation.Sentence}.");
    }

    private static string Words(ExplanationKind kind) => kind switch
    {
        ExplanationKind.StampedFace => "stamped face",
        ExplanationKind.Stroke => "stroke",
        _ => "curvature ratio",
    };

    private static IEnumerable<Advisory> Unused(RingJob job)
    {
        if (job.MeasuredRings.Count > 0 && job.Correction is null)
        {
            yield return new("measured-ring-unused", "A measured ring is at hand but the job does not say how it should correct the model; the sizes are the uncorrected model's.", Sources.CommonPractice);
        }
    }
}
