using System.Globalization;
using BendMath.Evidence;
using BendMath.Learning;
using UnitsNet;

namespace BendMath.Planning;

/// <summary>What is doubtful about a plan as a whole, beside what its formed bar says of itself.</summary>
internal static class PlanAdvisories
{
    public static IEnumerable<Advisory> Of(RingJob job, PlannedRing? ring, RingFit? fit, IReadOnlyList<HypothesisAgreement> agreements)
    {
        if (ring is { Serves: false })
        {
            Length off = Length.FromMeters(2 * ring.Outcome.Difference!.Value.Meters);
            yield return new("no-die-serves", string.Format(
                CultureInfo.InvariantCulture,
                "No die of this rack serves: the nearest, {0}, leaves a ring {1:0.#} mm {2} in diameter than wanted, and {3:0.##} mm is accepted{4}. All that follows is for the ring it leaves, not for the wanted one.",
                ring.Outcome.Die.Name,
                Math.Abs(off.Millimeters),
                off > Length.Zero ? "wider" : "tighter",
                job.Wanted.Tolerance.Millimeters,
                job.Wanted.IsToleranceGiven ? string.Empty : string.Format(CultureInfo.InvariantCulture, " ({0:0.#} % of it, a setting)", WantedRing.UsualTolerance.Percent)), Sources.Setting);
        }

        if (job.Calibration.Rings.Count > 0 && job.Calibration.Correction is null)
        {
            yield return new("measured-ring-unused", "A measured ring is at hand but the job does not say how it should correct the model; the sizes are the uncorrected model's.", Sources.CommonPractice);
        }

        foreach (Advisory advisory in fit?.Advisories ?? [])
        {
            yield return advisory;
        }

        if (fit is null && agreements.FirstOrDefault(one => one.Kind == job.Calibration.Correction) is { Agrees: false } used)
        {
            string[] better = [.. agreements.Where(one => one.Agrees).Select(one => "the " + Hypothesis.Words(one.Kind))];
            yield return new("correction-disagrees", string.Format(
                CultureInfo.InvariantCulture,
                "The measured rings contradict the correction in use: {0}. {1}",
                used.Sentence,
                better.Length == 0 ? "No explanation agrees with all of them." : $"Use {string.Join(" or ", better)}, which agrees with all of them."), Sources.Setting);
        }

        if (ring is null)
        {
            yield break;
        }

        if (ring.Outcome.Formed!.Contact is { } contact && Math.Min(ring.Layout.Ends.Start.Meters, ring.Layout.Ends.End.Meters) < contact.StraightTail.Meters)
        {
            yield return new("short-ends", string.Format(
                CultureInfo.InvariantCulture,
                "The bender leaves about a half-span, {0:0.#} mm, straight at each end, where a support has no bar to push on, but the blank has {1:0.#} mm at its start and {2:0.#} mm at its end for that: the ring itself would have straight ends.",
                contact.StraightTail.Millimeters,
                ring.Layout.Ends.Start.Millimeters,
                ring.Layout.Ends.End.Millimeters), Sources.FormingModels);
        }

        if (ring.Effort is { IsWithinPullLimit: false, HandForce: { } pull, Drive.PullLimit: { } limit })
        {
            yield return new("beyond-pull-limit", string.Format(
                CultureInfo.InvariantCulture,
                "The bend takes a pull of {0:0} N, friction not counted, and the limit set for the person is {1:0} N: do not bend it by hand on this bender. Take a lighter bar, a wider ring, more mechanical advantage or a powered bender; never lengthen the lever beyond what the bender is built for.",
                pull.Newtons,
                limit.Newtons), Sources.Given);
        }

        if (ring.Range.MaySpringStraight)
        {
            yield return new("may-spring-straight", string.Format(
                CultureInfo.InvariantCulture, "The bar may spring back straight: {0}. Where it leaves a ring, nobody can say how wide; take a tighter die or a softer bar, or bend a trial piece.", ring.Range.Note), Sources.Mechanics);
        }

        if (job.Wanted.Joint is { } joint && ring.Closure is null)
        {
            yield return new("no-closure", string.Format(
                CultureInfo.InvariantCulture,
                "The ring this die leaves takes {0:0.##} mm of bar, and a saw cut of {1:0.##} mm or a root opening of {2:0.##} mm is a tenth of that or more: it is not worked out how it closes.",
                ring.Layout.DevelopedLength.Millimeters,
                job.Cutting.Kerf.Millimeters,
                joint.RootOpening.Millimeters), Sources.Definition);
        }

        if (job.Cutting.BarLength is { } stock && ring.Bar is null)
        {
            yield return new("bar-not-counted", string.Format(
                CultureInfo.InvariantCulture, "A bar of {0:0.#} mm is more than a million blanks long; they are not counted.", stock.Millimeters), Sources.Definition);
        }

        if (ring.Bar is { Pieces: 0 } bar)
        {
            yield return new("bar-too-short", string.Format(
                CultureInfo.InvariantCulture,
                "A bar of {0:0.#} mm is shorter than the blank of {1:0.#} mm: it gives none.",
                bar.BarLength.Millimeters,
                ring.CutLength.Millimeters), Sources.Definition);
        }
    }
}
