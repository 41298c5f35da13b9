using BendMath.Evidence;
using BendMath.Guards;

namespace BendMath.Learning;

/// <summary>What a person at the bender reads of a fit.</summary>
internal static class RingFitSentences
{
    public static IReadOnlyList<string> Of(RingFit fit)
    {
        List<string> sentences =
        [
            $"From {Counted.Text(fit.Rings.Count, "measured ring")} {RingGroups.Words(fit.Group, fit.Analysis)}, set "
                + $"against {fit.Model.Basis.Name}.",
            fit.FormReason,
            Finding(fit),
            Scatter(fit),
        ];
        sentences.AddRange(fit.Advisories.Select(advisory => advisory.Message));
        sentences.AddRange(fit.LeftOut.Select(one => $"Not used: {one}."));
        return sentences.AsReadOnly();
    }

    public static IEnumerable<Advisory> Doubts(RingFit fit)
    {
        if (fit.OddRing is { } odd)
        {
            yield return new("odd-ring",
                odd.IsAlone ? Alone(odd)
                    : Invariant(
                        $"Look at ring {odd.Number} again ({odd.Ring}{(odd.Ring.Note is null ? string.Empty : ", " + odd.Ring.Note)}): it "
                            + $"lies {Math.Abs(odd.StudentizedResidual!.Value):0.0} standard errors from what the others predict, and by "
                            + $"chance the oddest of {fit.Rings.Count} rings does so {Rarely(odd.OddChance!.Value.DecimalFractions)}. Was "
                            + $"it read rightly, was it that bar, that die? It is still in the fit."), Sources.WeisbergRegression);
        }

        if (fit.Rings.FirstOrDefault(ring => ring.CookDistance > 1) is { } heavy && fit.Rings.Count > 2)
        {
            yield return new("rests-on-one-ring",
                Invariant($"The fit rests on ring {heavy.Number} ({heavy.Ring}): without it, it would be clearly another."),
                    Sources.WeisbergRegression);
        }

        if (fit.Group != RingGroup.SameBar)
        {
            yield return new("wider-group",
                $"There are {RingFit.Few} rings or fewer of just this bar and metal, so rings {RingGroups.Words(fit.Group, fit.Analysis)} "
                    + $"speak for it: measure more of its own.", Sources.Setting);
        }

        if (fit.Rings.Count <= RingFit.Few)
        {
            yield return new("few-rings",
                $"{Counted.Text(fit.Rings.Count, "ring is", "rings are")} few: each one more narrows the interval a great deal.",
                    Sources.CommonPractice);
        }

        FittedRing narrow = fit.Rings.OrderBy(ring => ring.RadiusOverDepth).First();
        FittedRing wide = fit.Rings.OrderBy(ring => ring.RadiusOverDepth).Last();
        if (fit.IsLine && Left(fit, wide) <= Left(fit, narrow))
        {
            yield return new("wider-die-tighter-ring",
                Invariant(
                    $"By this line die {wide.Ring.Die.Name} leaves a tighter ring than die {narrow.Ring.Die.Name}, which no bender does: "
                        + $"were dies or rings mixed up? Between such dies more than one stamp leaves the same ring."),
                            Sources.LearningFromRings);
        }

        double[] ends =
            [.. new[] { fit.Rings.Min(ring => ring.RadiusOverDepth), fit.Rings.Max(ring => ring.RadiusOverDepth) }.Select(fit.Model.RatioAt)];
        if (ends.Any(ratio => ratio < CurvatureRatioCorrection.LeastCredible || ratio > CurvatureRatioCorrection.MostCredible))
        {
            yield return new("no-such-ratio",
                Invariant(
                    $"The rings ask for a curvature ratio of {ends.Min():0.##} to {ends.Max():0.##}, and a bender is taken to "
                        + $"have {CurvatureRatioCorrection.LeastCredible:0.#} to {CurvatureRatioCorrection.MostCredible:0.#} (a setting): "
                        + $"the model does not describe this bender, or the dies' stamps mean something else."), Sources.Setting);
        }
    }

    /// <summary>Radius of the fiber that keeps its length, as the fit says.</summary>
    private static double Left(RingFit fit, FittedRing ring) =>
        (ring.Modeled.Inside + ring.Modeled.Fiber) / fit.Model.RatioAt(ring.RadiusOverDepth);

    private static string Alone(FittedRing odd) =>
        Invariant(
            $"Look at ring {odd.Number} again ({odd.Ring}{(odd.Ring.Note is null ? string.Empty : ", " + odd.Ring.Note)}): it "
                + $"is {Curved(Math.Exp(odd.DeletedResidual!.Value))} than the others predict, and they agree to the last digit. Was it "
                + $"read rightly, was it that bar, that die? It is still in the fit.");

    private static string Finding(RingFit fit) => !fit.IsLine
        ? $"The rings are {Curved(fit.Model.Ratio)} than it says."
        : Invariant(
            $"The rings are {(Curved(fit.Model.RatioAt(fit.Rings.Min(ring => ring.RadiusOverDepth))))} than it says at a radius "
                + $"of {(fit.Rings.Min(ring => ring.RadiusOverDepth)):0.#} depths of the bar, "
                + $"and {(Curved(fit.Model.RatioAt(fit.Rings.Max(ring => ring.RadiusOverDepth))))} "
                + $"at {(fit.Rings.Max(ring => ring.RadiusOverDepth)):0.#} depths.");

    private static string Scatter(RingFit fit) => fit.Scatter is not { } s
        ? fit.Rings.Count == 1
            ? "One ring shows no scatter, so there is no interval and no chance: bend and measure a second one."
            : "There are as many fitted numbers as rings, so no scatter is left to see and there is no interval: bend and measure one more."
        : Invariant(
            $"About that they scatter by {s.Percent:0.00} % of the radius (one standard deviation, {Counted.Text(fit.DegreesOfFreedom, "degree of freedom", "degrees of freedom")}){(fit.LeaveOneOutError is { } error ? Invariant($"; each ring is predicted by the others to {error.Percent:0.00} %") : "; without one of them the fit cannot be made")}.");

    private static string Curved(double ratio) =>
        Invariant($"{100 * Math.Abs(ratio - 1):0.0} % {(ratio >= 1 ? "more" : "less")} curved");

    private static string Rarely(double chance) =>
        chance < 1e-3 ? "less than once in a thousand times" : Invariant($"in {100 * chance:0.0} % of cases");
}
