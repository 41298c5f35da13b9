using BendMath.Evidence;
using BendMath.Learning;

namespace BendMath.Planning.Worksheets;

/// <summary>From the die to the loaded state.</summary>
internal sealed class FormingSteps(DiePrediction outcome, StepUnits units)
{
    public IEnumerable<WorkedStep> All()
    {
        FormedBend formed = outcome.Formed!;
        LoadedBend loaded = formed.Loaded;
        if (formed.Contact is { } contact)
        {
            yield return new(
                "radius of the circle through the three contacts",
                "R_3",
                "(a² + δ²)/(2·δ)",
                [units.Of("a", "half-span", contact.HalfSpan), units.Of("δ", "stroke", contact.Stroke)],
                units.In(contact.ThreeContactRadius),
                units.Length,
                Sources.FormingModels);
            if (formed.CurvatureRatio == 1)
            {
                yield return Loaded(
                    loaded,
                    contact.WrapsNose ? "the bar lies down on the nose" : "the bar, bent by its own moments, passes all three contacts",
                    [units.Of("a", "half-span", contact.HalfSpan), units.Of("δ", "stroke", contact.Stroke)]);
            }
        }
        else if (formed is { Contact: null, CurvatureRatio: 1 })
        {
            ReferenceFace face = formed.Model.FaceOf(outcome.Die);
            yield return new(
                "loaded radius of the inside face",
                "R",
                "R_s - o",
                [units.Of("R_s", "radius stamped on the die", outcome.Die.StampedRadius),
                    units.Of("o", $"distance of the stamped face, {face}, from the inside", face.OffsetFor(loaded.Analysis.Section))],
                units.In(loaded.InsideRadius),
                units.Length,
                Sources.FormingModels);
        }

        if (formed.CurvatureRatio != 1)
        {
            yield return Loaded(loaded, "the ring let go is q times as curved as the model alone says",
                [new("q", "ratio of curvature the measured rings tell", formed.CurvatureRatio, string.Empty)]);
        }
    }

    private WorkedStep Loaded(LoadedBend loaded, string condition, WorkedTerm[] terms) =>
        new("loaded radius of the inside face", "R", condition, terms, units.In(loaded.InsideRadius), units.Length, Sources.FormingModels,
            isSearched: true);
}
