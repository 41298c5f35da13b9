using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Planning.Worksheets;

/// <summary>
/// Every number of a plan with its working: equation, numbers put in, unit, source. Lengths in millimeters with newtons and megapascals, or
/// in inches with pounds and pounds per square inch, so that each equation can be done again on paper as it stands.
/// </summary>
public static class PlanWorksheet
{
    /// <summary>The workings of a planned ring, in the order of the plan.</summary>
    /// <param name="job">The job that was planned.</param>
    /// <param name="ring">The planned ring.</param>
    /// <param name="inInches">Whether to work in inches and pounds.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static IReadOnlyList<WorkedStep> Of(RingJob job, PlannedRing ring, bool inInches = false)
    {
        Guard.NotNull(job, nameof(job));
        Guard.NotNull(ring, nameof(ring));
        StepUnits units = new(inInches);
        return
        [
            .. new FormingSteps(ring.Prediction, units).All(),
            .. new ReleaseSteps(ring.Prediction.Formed!.Loaded, ring.Free, units).All(),
            .. new ReleaseSteps(ring.Prediction.Formed!.Loaded, ring.Flattened, units).Flat(),
            .. new ChoiceSteps(job, ring, units).All(),
            .. ring.Distortion.Findings.Select(finding => finding.WorkingFor(inInches)),
            .. new LayoutSteps(job, ring, units).All(),
            .. new EffortSteps(ring, units).All(),
        ];
    }

    /// <summary>The workings of a whole plan: those of its ring and of the die one would make; none when no die leaves a ring.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="inInches">Whether to work in inches and pounds.</param>
    /// <exception cref="ArgumentNullException">The plan is null.</exception>
    public static IReadOnlyList<WorkedStep> Of(RingPlan plan, bool inInches = false) => Guard.NotNull(plan, nameof(plan)).Ring is { } ring
        ? [.. Of(plan.Job, ring, inInches), .. new ChoiceSteps(plan.Job, ring, new(inInches)).DieToMake(plan.Choice)]
        : [];

    /// <summary>The working of a finished ring from its loaded state, let go free: curvature, release, radii, dish.</summary>
    /// <param name="loaded">The loaded state.</param>
    /// <param name="inInches">Whether to work in inches and pounds.</param>
    /// <exception cref="ArgumentNullException">The state is null.</exception>
    /// <exception cref="InvalidOperationException">The bar springs back straight.</exception>
    public static IReadOnlyList<WorkedStep> Of(LoadedBend loaded, bool inInches = false) =>
        [.. new ReleaseSteps(Guard.NotNull(loaded, nameof(loaded)), loaded.Release(Release.Free).Ring, new(inInches)).All()];
}
