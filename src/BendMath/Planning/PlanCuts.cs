using BendMath.Cutting;
using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>
/// One cut list for several plans: blanks of the same bar and metal come from the same bars, every quantity of every plan, with the least
/// length of bars. The saw cut is the widest of the plans. Immutable and thread-safe.
/// </summary>
public sealed class PlanCuts
{
    private PlanCuts(CutList? list, IReadOnlyList<RingPlan> plans, IReadOnlyList<string> leftOut)
    {
        List = list;
        Plans = plans;
        LeftOut = leftOut;
    }

    /// <summary>The cut list, or null when no plan has both a ring and a bar to cut it from.</summary>
    public CutList? List { get; }

    /// <summary>The plans in it.</summary>
    public IReadOnlyList<RingPlan> Plans { get; }

    /// <summary>Why a plan is not in it, one sentence each.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    /// <summary>The plans whose blanks come from the bars of a group.</summary>
    /// <param name="group">A group of <see cref="List"/>.</param>
    /// <exception cref="ArgumentNullException">The group is null.</exception>
    /// <exception cref="ArgumentException">The group is not of this list.</exception>
    public IReadOnlyList<RingPlan> PlansOf(CutGroup group) =>
        Guard.NotNull(group, nameof(group)) is var of && List?.Groups.Contains(of) == true
        ? [.. Plans.Where(plan => KindOf(plan).IsSame(of.Kind!))]
        : throw Guard.Refused(nameof(group), "must be of this list", $"is \"{group.Name}\"");

    /// <summary>Mass of the bars of a group of the list.</summary>
    /// <param name="group">A group of <see cref="List"/>.</param>
    /// <exception cref="ArgumentNullException">The group is null.</exception>
    /// <exception cref="ArgumentException">The group is not of this list.</exception>
    /// <remarks>
    /// Equation: m = A·L·ρ, L all bars of the group.
    /// Range: nominal section, whole bars.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Mass BarMassOf(CutGroup group)
    {
        RingJob job = PlansOf(group)[0].Job;
        return group.BarMass(job.Analysis.Section, job.Analysis.Material.Density);
    }

    /// <summary>Cuts the blanks of several plans.</summary>
    /// <param name="plans">The plans; each needs a length of bar in stock.</param>
    /// <param name="leastUsefulOffcut">The shortest offcut worth keeping, zero or more.</param>
    /// <param name="cancellation">Stops the search; what was found so far is handed out.</param>
    /// <exception cref="ArgumentNullException">The plans or one of them are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The offcut is negative or not finite, or there is more to cut than the list
    /// takes.</exception>
    public static PlanCuts For(IReadOnlyList<RingPlan> plans, Length leastUsefulOffcut, CancellationToken cancellation = default)
    {
        Length least = Length.FromMeters(Guard.NonNegative(leastUsefulOffcut, nameof(leastUsefulOffcut)));
        List<RingPlan> cut = [];
        List<string> leftOut = [];
        foreach (RingPlan plan in Guard.NotNull(plans, nameof(plans)))
        {
            RingJob job = Guard.NotNull(plan, nameof(plans)).Job;
            string? why = plan.Ring is null ? "no die leaves a ring"
                : job.Cutting.BarLength is null ? "no length of bar is given"
                : plan.Ring.CutLength < Length.FromMicrometers(1) ? "the blank is shorter than anything that can be cut"
                : plan.Ring.Bar is { Pieces: 0 } ? "the blank is longer than a bar"
                : null;
            if (why is null)
            {
                cut.Add(plan);
            }
            else
            {
                leftOut.Add($"{job.Name}: {why}");
            }
        }

        if (cut.Count == 0)
        {
            return new(null, [], leftOut.AsReadOnly());
        }

        if (cut.Count > CutList.MostLines)
        {
            throw Guard.Fault(nameof(plans), cut.Count, Invariant($"must be at most {CutList.MostLines} that can be cut"));
        }

        if (cut.Sum(plan => (double)plan.Job.Wanted.Quantity) is var asked && asked > CutList.MostPieces)
        {
            throw Guard.Fault(nameof(plans), asked, Invariant($"must ask for at most {CutList.MostPieces:N0} pieces in all"));
        }

        CutPiece[] pieces =
            [.. cut.Select(plan => new CutPiece(plan.Job.Name, plan.Ring!.CutLength, plan.Job.Wanted.Quantity, KindOf(plan)))];
        List<BarSupply> bars = [];
        foreach (BarSupply bar in cut.Select(plan => new BarSupply(plan.Job.Cutting.BarLength!.Value, null, KindOf(plan))))
        {
            if (!bars.Exists(other => other.Length.Equals(bar.Length, Length.FromNanometers(1)) && other.Kind!.IsSame(bar.Kind!)))
            {
                bars.Add(bar);
            }
        }

        Length kerf = Length.FromMeters(cut.Max(plan => plan.Job.Cutting.Kerf.Meters));
        return new(CutList.For(pieces, bars, kerf, least, cancellation), cut.AsReadOnly(), leftOut.AsReadOnly());
    }

    /// <summary>The list, or why there is none.</summary>
    public override string ToString() => List?.ToString() ?? (LeftOut.Count == 0 ? "no plans" : string.Join("; ", LeftOut));

    private static BarKind KindOf(RingPlan plan) => new(plan.Job.Analysis.Section.Stock, plan.Job.Analysis.Material);
}
