using BendMath.Forming.Bumps;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Json.Parts;
using BendMath.Learning;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads how the bender forms, its dies and what was measured on it.</summary>
internal static class BenderReader
{
    private const string FormingExample = "\"forming\": { \"model\": \"wrap\" }";

    private const string DiesExample =
        "\"dies\": [{ \"name\": \"A\", \"stamped radius\": \"250 mm\", \"stamp means\": \"inside of the bar\" }]";

    /// <summary>
    /// The model; one that has no half-span and nose of its own takes those of the bender, for explaining measured rings.
    /// </summary>
    public static FormingModel? Forming(JobObject job)
    {
        if (job.Object("forming", FormingExample) is not { } forming)
        {
            BenderSetup(job);
            return null;
        }

        FormingModel? model = null;
        string? kind = forming.Word("model", "wrap", "three-point", "pair", "bumps");
        bool pinches = kind is "three-point" or "bumps";
        if (pinches)
        {
            Length? feed = kind == "bumps" ? forming.Length("feed", "20 mm") : null;
            model = Setup(forming) is not { } pinch ? null
                : kind == "three-point" ? new IncrementalThreePointBending(pinch)
                : feed is { } step ? forming.Build(() => new BumpBending(pinch, step), ("setup", "stiffness"))
                : null;
        }

        if (kind is not null)
        {
            forming.Close();
        }

        if (pinches && job.Find("bender") is not null)
        {
            job.Fault("bender",
                $"\"bender\" must be left out where \"forming\" is \"{kind}\", because its half-span and nose radius are used.");
            return model;
        }

        ThreePointSetup? bender = BenderSetup(job);
        return kind switch
        {
            "wrap" => new WrapBending(bender),
            "pair" => new PairBending(bender),
            _ => model,
        };
    }

    public static DieShelf Dies(JobObject job, FaultList faults)
    {
        JsonPart? list = job.Require("dies", DiesExample);
        DieShelf dies = new();
        foreach ((JsonPart part, string place) in job.Items(list, "dies"))
        {
            if (JobObject.Of(part, place, "A die", faults) is { } die && DieReader.Read(die, dies) is { } read)
            {
                dies.Add(read);
            }
        }

        if (list is { Kind: JsonKind.List, Items.Count: 0 })
        {
            job.Fault("dies", "\"dies\" must hold at least one die.");
        }

        return dies;
    }

    public static IReadOnlyList<MeasuredRing> Measured(JobObject job, DieShelf dies, BendAnalysis? ofJob, FaultList faults)
    {
        List<MeasuredRing> rings = [];
        foreach ((JsonPart part, string place) in job.Items(job.Find("measured rings"), "measured rings"))
        {
            if (JobObject.Of(part, place, "A measured ring", faults) is { } ring
                && MeasuredRingReader.Read(ring, dies, ofJob?.Section, ofJob?.Material, (true, true)) is { } read)
            {
                rings.Add(read);
            }
        }

        return rings;
    }

    public static HypothesisKind? Correction(JobObject job, bool setupGiven)
    {
        string? word = job.OptionalWord("correction", "stamped face", "stroke", "curvature ratio", "none");
        if (word is not (null or "none") && !(job.Find("measured rings") is { Items.Count: > 0 }))
        {
            job.Fault("correction", $"\"correction\" needs at least one ring under \"measured rings\", but is \"{word}\" without one.");
        }

        if (word == "stroke" && !setupGiven)
        {
            job.Fault("correction", "\"correction\" \"stroke\" needs \"bender\" with its \"half-span\" and \"nose radius\".");
        }

        return word switch
        {
            "stamped face" => HypothesisKind.ReferenceFace,
            "stroke" => HypothesisKind.Stroke,
            "curvature ratio" => HypothesisKind.CurvatureRatio,
            _ => null,
        };
    }

    private static ThreePointSetup? BenderSetup(JobObject job)
    {
        if (job.OptionalObject("bender") is not { } bender)
        {
            return null;
        }

        ThreePointSetup? setup = Setup(bender);
        bender.Close();
        return setup;
    }

    private static ThreePointSetup? Setup(JobObject bender)
    {
        Length? span = bender.Length("half-span", "150 mm");
        Length? nose = bender.Length("nose radius", "30 mm", zero: true);
        ForcePerLength? stiffness = Stiffness(bender);
        return span is { } a && nose is { } r && bender.Sound
            ? bender.Build(() => new ThreePointSetup(a, r, stiffness), ("halfSpan", "half-span"), ("noseRadius", "nose radius"))
            : null;
    }

    private static ForcePerLength? Stiffness(JobObject bender)
    {
        if (bender.OptionalObject("stiffness") is not { } measured)
        {
            return null;
        }

        Force? force = measured.Force("nose force", "5 kN");
        Length? give = measured.Length("give", "1.2 mm");
        measured.Close();
        return force is { } f && give is { } g ? f / g : null;
    }
}
