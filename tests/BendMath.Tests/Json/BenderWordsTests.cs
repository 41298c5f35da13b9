using BendMath.Forming.Bumps;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Json;
using UnitsNet;

namespace BendMath.Tests.Json;

/// <summary>The words of a job file about faces, noses, mates, give, the softer release and the person who pulls.</summary>
public sealed class BenderWordsTests
{
    private const string DieA = "{ \"name\": \"A\", \"stamped radius\": \"240 mm\", \"stamp means\": \"inside of the bar\" }";

    private const string Bender = "\"bender\": { \"half-span\": \"100 mm\", \"nose radius\": \"20 mm\" },";

    [Fact]
    public void Every_optional_word_is_read()
    {
        string text =
            JobTexts.With("\"stamp means\": \"inside of the bar\" }",
            "\"stamp means\": \"inside of the bar\", \"face length\": \"150 mm\", \"nose radius\": \"0 mm\", \"mate\": { \"face radius\": "
                + "\"300 mm\", \"half-span\": \"120 mm\", \"shims\": \"1.5 mm\" } }")
            .Replace("{ \"offset\": \"3 mm\" } }",
            "{ \"offset\": \"3 mm\" }, \"mate\": { \"rise\": \"1 in\", \"half-span\": \"120 mm\", \"support radius\": \"0 mm\" } }",
            StringComparison.Ordinal)
            .Replace("\"nose radius\": \"20 mm\" },",
            "\"nose radius\": \"20 mm\", \"stiffness\": { \"nose force\": \"5 kN\", \"give\": \"1.25 mm\" } },", StringComparison.Ordinal)
            .Replace("\"elongation\": \"23 %\"", "\"elongation\": \"23 %\", \"unloading share\": \"85 %\"", StringComparison.Ordinal)
            .Replace("\"lever length\": \"900 mm\",",
                "\"lever length\": \"900 mm\", \"mechanical advantage\": \"12.5 times\", \"pull limit\": \"50 lbf\",",
                    StringComparison.Ordinal);
        RingJobFile reading = RingJobFile.Read(text);
        Assert.Empty(reading.Faults);
        RingJob job = reading.Jobs[0].Job;
        Assert.Equal(
            new Die("A", Length.FromMillimeters(240), ReferenceFace.InsideOfBar, Length.FromMillimeters(150), Length.Zero,
                MatingDie.OfFace(Length.FromMillimeters(300), Length.FromMillimeters(120), Length.FromMillimeters(1.5))),
            job.Bender.Rack[0]);
        Assert.Equal(MatingDie.OfSupports(Length.FromMillimeters(120), Length.FromInches(1), Length.Zero), job.Bender.Rack[1].Mate);
        Near.Relative(4e6, job.Bender.Model.Setup!.Stiffness!.Value.NewtonsPerMeter, 1e-12, "stiffness");
        Assert.Equal(0.85, job.Analysis.Material.UnloadingShare.DecimalFractions);
        Assert.Equal(12.5, job.Bender.Drive.Advantage);
        Near.Relative(50 * 4.4482216152605, job.Bender.Drive.PullLimit!.Value.Newtons, 1e-12,
            "pull limit (pound-force by NIST SP 811, appendix B, from memory)");
    }

    /// <summary>Bump by bump, with the feed: the plan's ring is the model's, wider than at no feed.</summary>
    [Fact]
    public void Bumps_are_planned()
    {
        string bumps =
            JobTexts.With("\"model\": \"wrap\"",
                "\"model\": \"bumps\", \"half-span\": \"100 mm\", \"nose radius\": \"10 mm\", \"feed\": \"30 mm\"")
                    .Replace(Bender, string.Empty, StringComparison.Ordinal)
            .Replace("\"correction\": \"curvature ratio\"", "\"correction\": \"none\"", StringComparison.Ordinal);
        RingPlan plan = JobTexts.Plan(bumps);
        BumpBending model = Assert.IsType<BumpBending>(plan.Model);
        Assert.Equal(30, model.Feed.Millimeters, 12);
        PlannedRing ring = plan.Ring!;
        Near.Relative(model.Form(plan.Job.Analysis, ring.Prediction.Die).RingWhen(Release.Free).InsideDiameter.Meters,
            ring.Free.InsideDiameter.Meters, 1e-12);
        Assert.True(ring.Prediction.Formed!.Contact!.FacetRise > Length.Zero);
        Assert.True(
            ring.Free.InsideDiameter
                > new IncrementalThreePointBending(model.Setup).Form(plan.Job.Analysis, ring.Prediction.Die)
                    .RingWhen(Release.Free).InsideDiameter);
    }

    [Fact]
    public void A_pair_is_planned_and_written()
    {
        string text =
            JobTexts.With("\"wrap\"", "\"pair\"")
                .Replace("\"stamp means\": \"inside of the bar\" }",
                    "\"stamp means\": \"inside of the bar\", \"mate\": { \"face radius\": \"270 mm\", \"half-span\": \"120 mm\" } }",
                        StringComparison.Ordinal);
        RingPlan plan =
            JobTexts.Plan(text.Replace("\"correction\": \"curvature ratio\"", "\"correction\": \"none\"", StringComparison.Ordinal));
        Assert.IsType<PairBending>(plan.Model);
        Assert.Equal("A", plan.Ring!.Prediction.Die.Name);
        string json = RingPlanJson.Write(plan);
        Assert.Contains("\"mate\": \"hollow face of radius 270 mm, 240 mm wide\"", json, StringComparison.Ordinal);
        Assert.Contains("\"isWithinPullLimit\": null", json, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"forming\": { \"model\": \"wrap\" },", "\"feed\": \"20 mm\"", "forming.feed", null)]
    [InlineData(DieA, "\"face length\": \"150\"", "dies[0].face length",
        "\"150\" has no unit; write for example \"30 mm\" or \"1 1/4 in\".")]
    [InlineData(DieA, "\"mate\": \"none\"", "dies[0].mate", "\"mate\" must be an object in braces, but is \"none\".")]
    [InlineData(DieA, "\"mate\": { \"half-span\": \"120 mm\" }", "dies[0].mate",
        "Exactly one of \"face radius\" (a hollow face) or \"rise\" (two supports) must be given, but none is.")]
    [InlineData(DieA,
        "\"mate\": { \"half-span\": \"120 mm\", \"face radius\": \"300 mm\", \"rise\": \"9 mm\", \"support radius\": \"0 mm\" }",
            "dies[0].mate", null)]
    [InlineData(DieA, "\"mate\": { \"half-span\": \"120 mm\", \"face radius\": \"300 mm\", \"support radius\": \"9 mm\" }",
        "dies[0].mate.support radius", "\"support radius\" must be left out for a hollow face, whose edges touch.")]
    [InlineData(DieA, "\"mate\": { \"half-span\": \"120 mm\", \"rise\": \"9 mm\" }", "dies[0].mate.support radius",
        "\"support radius\" is missing; write for example \"support radius\": \"25 mm\", or \"0 mm\" for edges.")]
    [InlineData(DieA, "\"mate\": { \"half-span\": \"320 mm\", \"face radius\": \"300 mm\" }", "dies[0].mate.half-span",
        "\"half-span\" must not be greater than the radius of the face, 300 mm, but is 320 mm.")]
    [InlineData(DieA, "\"mate\": { \"half-span\": \"120 mm\", \"face radius\": \"300 mm\", \"spring\": 1 }", "dies[0].mate.spring", null)]
    [InlineData(Bender, "\"stiffness\": { \"nose force\": \"5 kN\" }", "bender.stiffness.give",
        "\"give\" is missing; write for example \"give\": \"1.2 mm\".")]
    [InlineData(Bender, "\"stiffness\": { \"nose force\": \"5 tons\", \"give\": \"1 mm\" }", "bender.stiffness.nose force",
        "\"nose force\" must have the unit \"N\", \"kN\" or \"lbf\", but is \"5 tons\".")]
    [InlineData("\"elongation\": \"23 %\" }", "\"unloading share\": \"110 %\"", "material.unloading share",
        "\"unloading share\" must not be greater than 100 %, but is 110 %.")]
    [InlineData("\"orientation\": \"flange out\",", "\"mechanical advantage\": \"12\"", "mechanical advantage",
        "\"mechanical advantage\" must have a unit, \"times\", but is \"12\".")]
    [InlineData("\"orientation\": \"flange out\",", "\"mechanical advantage\": \"0.5 times\"", "mechanical advantage",
        "\"mechanical advantage\" must be 1 or more, but is 0.5.")]
    [InlineData("\"orientation\": \"flange out\",", "\"pull limit\": 200", "pull limit",
        "\"pull limit\" must be a force with its unit in quotes, as \"200 N\", but is the number 200 without quotes.")]
    public void A_faulty_word_gets_one_sentence(string beside, string word, string place, string? rule)
    {
        string text = beside.EndsWith('}') ? beside[..^1].TrimEnd() + ", " + word + " }"
            : beside.EndsWith("},", StringComparison.Ordinal) ? beside[..^2].TrimEnd() + ", " + word + " },"
            : beside + " " + word + ",";
        RingJobFile reading = RingJobFile.Read(JobTexts.With(beside, text));
        JsonFault fault = Assert.Single(reading.Faults);
        Assert.Equal(place, fault.Place);
        if (rule is not null)
        {
            Assert.Equal(rule, fault.Rule);
        }
    }
}
