using System.Globalization;
using System.Text.RegularExpressions;
using BendMath.Forming.ThreePoint;
using BendMath.Json;
using RingPlanner;

namespace BendMath.Tests.Samples;

/// <summary>What the sample prints of the pull, its limit and the give of the bender. Invented data.</summary>
public sealed class EffortVerdictTests
{
    private static readonly string Demo = Printed(Planner.Demo());

    [Fact]
    public void A_limit_of_the_pull_is_judged_where_the_pull_stands()
    {
        Assert.Contains("within the limit of 500 N; a lever of 817.3 mm would reach it", Demo, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(Demo, "Against the limit"));
        string beyond = Printed(Planner.Demo().Replace("\"500 N\"", "\"250 N\"", StringComparison.Ordinal));
        Assert.Contains("BEYOND THE LIMIT of 250 N", beyond, StringComparison.Ordinal);
        Assert.Contains("WARNING The bend takes a pull of 454 N", beyond, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bender_that_gives_prints_the_stroke_to_set()
    {
        string text =
            Planner.Demo()
                .Replace("\"nose radius\": \"20 mm\" }",
                    "\"nose radius\": \"20 mm\", \"stiffness\": { \"nose force\": \"5 kN\", \"give\": \"0.8 mm\" } }",
                        StringComparison.Ordinal);
        Assert.NotEqual(Planner.Demo(), text);
        string printed =
            Printed(
                text.Replace("\"arc\": \"180 deg\",",
                    "\"arc\": \"180 deg\", \"mechanical advantage\": \"10 times\", \"pull limit\": \"250 N\",", StringComparison.Ordinal));
        ThreePointContact contact = RingPlan.For(RingJobFile.Read(text).Jobs[1].Job).Ring!.Prediction.Formed!.Contact!;
        Assert.InRange(contact.Give.Millimeters, 0.1, 0.3);
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture,
                $"Set the stroke {contact.SetStroke.Millimeters:0.00} mm past the line tangent to the nose, of which the bender "
                    + $"gives {contact.Give.Millimeters:0.00} mm;"), printed, StringComparison.Ordinal);
        Assert.Contains("where the nose gets 10 times as much; friction comes on top Against the limit within the limit of 250 N", printed,
            StringComparison.Ordinal);
    }

    /// <summary>The plan of a file, its words with one space between them.</summary>
    private static string Printed(string jobs)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, jobs);
            using StringWriter output = new(), error = new();
            Assert.Equal(Planner.Good, Planner.Run([file, "--details"], output, error, plain: true));
            return string.Join(' ', output.ToString().Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
        }
        finally
        {
            File.Delete(file);
        }
    }
}
