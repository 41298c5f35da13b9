using BendMath.Evidence;
using BendMath.Learning;
using UnitsNet;

namespace BendMath.Planning;

/// <summary>What is doubtful about a plan as a whole, beside what its formed bar says of itself.</summary>
internal static class PlanAdvisories
{
    public static IEnumerable<Advisory> Of(RingJob job, PlannedRing? ring, RingFit? fit, IReadOnlyList<Hypothesis> agreements)
    {
        if (ring is { Serves: false })
        {
            Length off = Length.FromMeters(2 * ring.Prediction.Difference!.Value.Meters);
            yield return new("no-die-serves",
                Invariant(
                    $"No die of this rack serves: the nearest, {ring.Prediction.Die.Name}, leaves a ring {Math.Abs(off.Millimeters):0.#} "
                        + $"mm {(off > Length.Zero ? "wider" : "tighter")} in diameter than wanted, "
                        + $"and {job.Wanted.Tolerance.Millimeters:0.##} mm is "
                        + $"accepted{(job.Wanted.IsToleranceGiven ? string.Empty : Invariant($" ({WantedRing.UsualTolerance.Percent:0.#} "
                        + $"% of it, a setting)"))}. All that follows is for the ring it leaves, not for the wanted one."),
                            Sources.Setting);
        }

        if (job.Calibration.Rings.Count > 0 && job.Calibration.Correction is null)
        {
            yield return new("measured-ring-unused",
                "A measured ring is at hand but the job does not say how it should correct the model; the sizes are the uncorrected "
                    + "model's.", Sources.CommonPractice);
        }

        foreach (Advisory advisory in fit?.Advisories ?? [])
        {
            yield return advisory;
        }

        if (fit is null && agreements.FirstOrDefault(one => one.Kind == job.Calibration.Correction) is { Fits: false } used)
        {
            string[] better = [.. agreements.Where(one => one.Fits).Select(one => "the " + Hypothesis.Words(one.Kind))];
            yield return new("correction-disagrees",
                Invariant(
                    $"The measured rings contradict the correction in use: {used.Sentence}. {(better.Length == 0 ? "No explanation agrees "
                        + "with all of them." : $"Use {string.Join(" or ", better)}, which agrees with all of them.")}"), Sources.Setting);
        }

        if (ring is null)
        {
            yield break;
        }

        if (ring.Prediction.Formed!.Contact is { } contact
            && Math.Min(ring.Layout.Ends.Start.Meters, ring.Layout.Ends.End.Meters) < contact.StraightTail.Meters)
        {
            yield return new("short-ends",
                Invariant(
                    $"The bender leaves about a half-span, {contact.StraightTail.Millimeters:0.#} mm, straight at each end, where a "
                        + $"support has no bar to push on, but the blank has {ring.Layout.Ends.Start.Millimeters:0.#} mm at its start "
                        + $"and {ring.Layout.Ends.End.Millimeters:0.#} mm at its end for that: the ring itself would have straight ends."),
                            Sources.FormingModels);
        }

        if (ring.Effort is { IsWithinPullLimit: false, HandForce: { } pull, Drive.PullLimit: { } limit })
        {
            yield return new("beyond-pull-limit",
                Invariant(
                    $"The bend takes a pull of {pull.Newtons:0} N, friction not counted, and the limit set for the person "
                        + $"is {limit.Newtons:0} N: do not bend it by hand on this bender. Take a lighter bar, a wider ring, more "
                        + $"mechanical advantage or a powered bender; never lengthen the lever beyond what the bender is built for."),
                            Sources.Given);
        }

        if (ring.Range.MaySpringStraight)
        {
            yield return new("may-spring-straight",
                Invariant(
                    $"The bar may spring back straight: {ring.Range.Note}. Where it leaves a ring, nobody can say how wide; take a "
                        + $"tighter die or a softer bar, or bend a trial piece."), Sources.Mechanics);
        }

        if (job.Wanted.Joint is { } joint && ring.Closure is null)
        {
            yield return new("no-closure",
                Invariant(
                    $"The ring this die leaves takes {ring.Layout.DevelopedLength.Millimeters:0.##} mm of bar, and a saw cut "
                        + $"of {job.Cutting.Kerf.Millimeters:0.##} mm or a root opening of {joint.RootOpening.Millimeters:0.##} mm is a "
                        + $"tenth of that or more: it is not worked out how it closes."), Sources.Definition);
        }

        if (job.Cutting.BarLength is { } stock && ring.Bar is null)
        {
            yield return new("bar-not-counted",
                Invariant($"A bar of {stock.Millimeters:0.#} mm is more than a million blanks long; they are not counted."),
                    Sources.Definition);
        }

        if (ring.Bar is { Pieces: 0 } bar)
        {
            yield return new("bar-too-short",
                Invariant(
                    $"A bar of {bar.BarLength.Millimeters:0.#} mm is shorter than the blank of {ring.CutLength.Millimeters:0.#} mm: it "
                        + $"gives none."), Sources.Definition);
        }
    }
}
