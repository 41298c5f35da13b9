using BendMath.Evidence;
using BendMath.Learning;
using UnitsNet;

namespace BendMath.Planning.Worksheets;

/// <summary>How near the ring is to the wanted one, how far it may be off, and with what chance it is within the tolerance.</summary>
internal sealed class ChoiceSteps(RingJob job, PlannedRing ring, StepUnits units)
{
    public IEnumerable<WorkedStep> All()
    {
        WorkedTerm left =
            units.Of("D", "diameter the die leaves, to the line the wanted one is measured to",
                2 * ring.Free.RadiusTo(job.Wanted.Radius.Reference));
        WorkedTerm wanted = units.Of("D_w", "wanted diameter, to the same line", 2 * job.Wanted.Radius.Value);
        yield return new("difference from the wanted diameter", "ΔD", "D - D_w", [left, wanted],
            units.In(2 * ring.Prediction.Difference!.Value), units.Length, Sources.Definition);
        DiePrediction forecast = ring.Prediction;
        if (forecast.Interval is { } interval)
        {
            string condition = forecast.IsIntervalMeasured
                ? $"{forecast.IntervalNote}: R + n = (R_predicted + n)·exp(±t·s·√(1 + h_0))"
                : $"the inside diameter is an extreme of all rings while {ring.Range.Scatter} may differ";
            yield return Searched("least inside diameter to expect", "D_least", condition, interval.Low, Sources.LearningFromRings);
            yield return Searched("greatest inside diameter to expect", "D_most", condition, interval.High, Sources.LearningFromRings);
        }

        if (ring.Prediction.Chance is { } chance)
        {
            yield return new(
                "chance of being within the tolerance",
                "P",
                "the share of Student's t distribution between the limits of the tolerance",
                [units.Of("T", "tolerance of the diameter, either way", job.Wanted.Tolerance)],
                chance.Percent,
                "%",
                Sources.LearningFromRings,
                isSearched: true);
        }
    }

    /// <summary>The die one would make; nothing where there is none.</summary>
    public IEnumerable<WorkedStep> DieToMake(DieChoice choice)
    {
        if (choice.IdealStampedRadius is { } stamp)
        {
            yield return Searched(
                "stamp of the die that would leave the wanted ring",
                "R_make",
                Invariant($"the ring that comes off it, by {choice.Model.Name}, is the wanted one"),
                stamp,
                Sources.FormingModels);
        }
    }

    private WorkedStep Searched(string name, string symbol, string condition, Length value, Source source) =>
        new(name, symbol, condition, [], units.In(value), units.Length, source, isSearched: true);
}
