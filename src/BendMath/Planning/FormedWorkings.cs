namespace BendMath.Planning;

/// <summary>From the die to the loaded state.</summary>
internal sealed class FormedWorkings(DieOutcome outcome, WorkingUnits units)
{
    public IEnumerable<Working> All()
    {
        FormedBend formed = outcome.Formed!;
        LoadedBend loaded = formed.Loaded;
        if (formed.Contact is { } contact && HalfSpan(formed.Model) is { } setup)
        {
            yield return new(
                "radius of the circle through the three contacts",
                "R_3",
                "(a² + δ²)/(2·δ)",
                [units.Of("a", "half-span", setup.HalfSpan), units.Of("δ", "stroke", contact.Stroke)],
                units.In(contact.ThreeContactRadius),
                units.Length,
                Sources.FormingModels);
        }
        else if (formed is { Contact: null, CurvatureRatio: 1 })
        {
            StampedFace face = formed.Model.FaceOf(outcome.Die);
            yield return new(
                "loaded radius of the inside face",
                "R",
                "R_s - o",
                [units.Of("R_s", "radius stamped on the die", outcome.Die.StampedRadius), units.Of("o", $"distance of the stamped face, {face}, from the inside", face.OffsetFor(loaded.Analysis.Section))],
                units.In(loaded.InsideRadius),
                units.Length,
                Sources.FormingModels);
        }
    }

    private static ThreePointSetup? HalfSpan(FormingModel model) => model switch
    {
        IncrementalThreePointBending pinching => pinching.Setup,
        BumpBending bumping => bumping.Setup,
        CurvatureRatioCorrection corrected => HalfSpan(corrected.Basis),
        _ => null,
    };
}
