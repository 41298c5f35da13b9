using BendMath;
using BendMath.Cutting;
using BendMath.Distortion;
using BendMath.Evidence;
using BendMath.Forming.Effort;
using BendMath.Json;
using RingPlanner.Papers;
using UnitsNet;

namespace RingPlanner.Pages;

/// <summary>What a person needs at the bender, every job on one screen.</summary>
internal static class SummaryPage
{
    public static void Print(Paper paper, IReadOnlyList<(RingPlan Plan, RingJobEntry Entry, Units Units)> plans, PlanCuts cuts)
    {
        string? told = null;
        foreach ((RingPlan plan, RingJobEntry entry, Units units) in plans)
        {
            paper.Heading($"{plan.Job.Name}: {units.Sentence(plan.Job.Analysis.Section.ToString())}, {plan.Job.Analysis.Material.Name}");
            if (entry.Note is { } note && note != told)
            {
                paper.Fact("Note", note);
                told = note;
            }

            Plan(paper, plan, units);
        }

        if (cuts.List is not null)
        {
            paper.Heading("Fetch from the rack");
            foreach (CutGroup group in cuts.List.Groups)
            {
                Units units = plans.First(one => ReferenceEquals(one.Plan, cuts.PlansOf(group)[0])).Units;
                paper.Fact(CutPage.Bars(group, units), units.Sentence(group.Name));
            }

        }

        paper.Marked("CAUTION",
            "A bent bar is a loaded spring: stand out of its plane, keep fingers out of the pinch, let the load off slowly. Where a ring "
                + "carries load, local codes and a licensed engineer decide, not this plan.");
        paper.Marked("More", "--details, --workings (how each number came about), --html (a page with drawings), --help.");
    }

    private static void Plan(Paper paper, RingPlan plan, Units units)
    {
        RingJob job = plan.Job;
        string quantity = job.Wanted.Quantity > 1 ? FormattableString.Invariant($"{job.Wanted.Quantity} × ") : string.Empty;
        string tolerance = $"± {units.Size(job.Wanted.Tolerance)}";
        paper.Fact("Wanted",
            $"{quantity}{job.Wanted.Arc}, {Line(job.Wanted.Radius)} {units.Size(2 * job.Wanted.Radius.Value)} {tolerance}{(job.Wanted.IsToleranceGiven ? string.Empty : ", assumed")}");
        if (plan.Ring is not { } ring)
        {
            paper.Fact("Die", "no die of this rack leaves a ring");
            return;
        }

        Length off = 2 * ring.Prediction.Difference!.Value;
        string serves = ring.Serves ? string.Empty : "NO DIE SERVES; nearest is ";
        string stroke =
            ring.Prediction.Formed!.Contact is { WrapsNose: false } contact ? $", stroke {units.Fine(contact.SetStroke)}" : string.Empty;
        paper.Fact("Die",
            $"{serves}{ring.Prediction.Die.Name}{stroke}: {Line(job.Wanted.Radius)} {units.Size(2 * ring.Free.RadiusTo(job.Wanted.Radius.Reference))}, {(off.Meters > 0 ? "wider" : "tighter")} by {units.Size(off.Abs())}{Range(job, ring, units)}");
        DistortionFinding worst = ring.Distortion.Findings[0];
        paper.Fact("Distortion", worst.Level == RiskLevel.Low
            ? "low, as far as it is checked"
            : $"{worst.Level.ToString().ToUpperInvariant()}: {worst.Check}{(ring.Distortion.Advice.Count > 0 ? $"; {units.Sentence(ring.Distortion.Advice[0].Sentence)}" : string.Empty)}");
        paper.Fact("Cut",
            $"{units.Cut(ring.Layout.BlankLength)}, marks at {units.Mark(ring.Layout.ArcStartMark)} "
                + $"and {units.Mark(ring.Layout.ArcEndMark)}{(ring.Bar is { } bar ? $"; {bar.Pieces} from a bar "
                + $"of {units.Size(bar.BarLength)}" : string.Empty)}");
        paper.Fact("Pull",
            $"{Pull(ring.Effort, units)}{(ring.Effort.HoldDownMoment.NewtonMeters != 0 ? $"; hold it flat "
                + $"against {units.Moment(ring.Effort.HoldDownMoment.Abs())}" : string.Empty)}");
        paper.Fact("Check", $"a chord of {units.Size(ring.Check.Chord)} inside shows a rise of {units.Fine(ring.Check.Rise)}");
        Advisory[] doubts = [.. plan.Advisories.Where(advisory => !advisory.IsMinor)];
        if (doubts.Length > 0)
        {
            paper.Fact("WARNING",
                $"{units.Sentence(doubts[0].Message)}{(doubts.Length > 1 ? $" And {doubts.Length - 1} more." : string.Empty)}");
        }
    }

    private static string Range(RingJob job, PlannedRing ring, Units units)
    {
        if ((ring.Prediction.IsIntervalMeasured ? ring.Prediction.Interval
            : ring.Range.InsideDiameter) is not { } range)
        {
            return string.Empty;
        }

        // All lines of the bar move together: what is off inside is off at the line the wanted ring is measured to.
        Length expected = ring.Free.InsideDiameter, off = 2 * ring.Prediction.Difference!.Value;
        bool outside = off + (range.High - expected) > job.Wanted.Tolerance || off + (range.Low - expected) < -job.Wanted.Tolerance;
        string chance =
            ring.Prediction.Chance is { } share ? FormattableString.Invariant($", {share.Percent:0} of 100 within the tolerance")
                : outside ? ", not all of it within the tolerance" : string.Empty;
        return $"; it may come out {units.Range(range)} inside{chance}";
    }

    private static string Pull(BendEffort effort, Units units) =>
        effort.HandForce is { } hand ? $"{units.Push(hand)} {(effort.NoseForce is null ? "at the lever" : "by hand")}{Limit(effort, units)}"
            : effort.NoseForce is { } nose ? $"{units.Push(nose)} at the nose" : $"moment {units.Moment(effort.BendingMoment)}";

    private static string Limit(BendEffort effort, Units units) => (effort.IsWithinPullLimit, effort.Drive.PullLimit) switch
    {
        (true, { } limit) => $", within {units.Push(limit)}",
        (false, { } limit) => $", BEYOND {units.Push(limit)}",
        _ => string.Empty,
    };

    private static string Line(BendRadius wanted) => wanted.Reference switch
    {
        RadiusReference.InsideFace => "inside diameter",
        RadiusReference.Centroid => "diameter between centroids",
        _ => "outside diameter",
    };
}
