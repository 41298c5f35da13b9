using BendMath.Distortion;
using BendMath.Forming.Variation;
using BendMath.Json;
using UnitsNet;

namespace BendMath.Tests.Json;

/// <summary>The words of a job file about what scatters and what the distortion checks cannot know.</summary>
public sealed class ShopWordsTests
{
    private const string Place = "\"orientation\": \"flange out\",";

    [Fact]
    public void Scatter_and_settings_are_read_and_planned()
    {
        string text = JobTexts.With(Place, Place + """
             "quantity": 4,
             "scatter": { "bar to": "EN 10056-2", "curvature": "1.5 %" },
             "distortion": { "axial leg": "backed", "compressed leg": "in a slot", "tube": "held in shape", "distance between supports": "500 mm", "least wall": "2 mm", "used": "held flat" },
            """);
        RingJobFile reading = RingJobFile.Read(text);
        Assert.Empty(reading.Faults);
        RingJob job = reading.Jobs[0].Job;
        Assert.Equal(4, job.Wanted.Quantity);
        Assert.Equal("EN 10056-2", job.Scatter.Mill!.Standard);
        Assert.Equal(1.5, job.Scatter.Curvature!.Value.Percent, 12);
        Assert.Equal(job.Analysis.Material.YieldRange, job.Scatter.Yield);
        Assert.Equal(
            new DistortionSettings(
                new(holdsFreeEdge: true, backsAxialLeg: true, holdsTube: true, Length.FromMillimeters(500)), Release.HeldFlat,
                    Length.FromMillimeters(2)),
            job.Distortion);
        PlannedRing ring = RingPlan.For(job).Ring!;
        Assert.Equal(RiskLevel.Low, ring.Distortion.Findings.Single(finding => finding.Check == "leg angle").Level);
        Assert.Contains(ring.Range.Contributions, influence => influence.Input == "thickness");
    }

    [Fact]
    public void A_job_that_says_nothing_scatters_over_its_yield_range_alone()
    {
        RingJob job = RingJobFile.Read(JobTexts.Sound).Jobs[0].Job;
        Assert.Equal(new InputVariation(job.Analysis.Material.YieldRange), job.Scatter);
        Assert.Equal(DistortionSettings.Default, job.Distortion);
        Assert.Equal(1, job.Wanted.Quantity);
    }

    [Theory]
    [InlineData("\"quantity\": \"4\"", "quantity",
        "\"quantity\" must be a whole number without quotes, 1 or more, as { \"quantity\": 4 }, but is \"4\".")]
    [InlineData("\"quantity\": 0", "quantity",
        "\"quantity\" must be a whole number without quotes, 1 or more, as { \"quantity\": 4 }, but is the number 0 without quotes.")]
    [InlineData("\"quantity\": 1000000", "quantity", "\"quantity\" must be from 1 to 100,000, but is 1000000.")]
    [InlineData("\"scatter\": { \"bar to\": \"EN 10058\" }", "scatter.bar to",
        "\"bar to\" must be a standard for the bar of the job, angle 30 × 30 × 3 mm, but is \"EN 10058\".")]
    [InlineData("\"scatter\": { \"bar to\": \"EN 1\" }", "scatter.bar to", null)]
    [InlineData("\"scatter\": { \"curvature\": \"60 %\" }", "scatter.curvature", "\"curvature\" must be less than 50 %, but is 60 %.")]
    [InlineData("\"scatter\": { \"strokes\": \"1 mm\" }", "scatter.strokes", null)]
    [InlineData("\"distortion\": { \"axial leg\": \"held\" }", "distortion.axial leg",
        "\"axial leg\" must be \"backed\" or \"free\", but is \"held\".")]
    [InlineData("\"distortion\": { \"distance between supports\": \"0 mm\" }", "distortion.distance between supports",
        "\"distance between supports\" must be greater than zero, but is \"0 mm\".")]
    public void A_faulty_word_gets_one_sentence(string word, string place, string? rule)
    {
        JsonFault fault = Assert.Single(RingJobFile.Read(JobTexts.With(Place, Place + word + ",")).Faults);
        Assert.Equal(place, fault.Place);
        Assert.True(rule is null || fault.Rule == rule, fault.Rule);
    }
}
