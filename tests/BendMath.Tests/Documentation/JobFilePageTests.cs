using System.Text.RegularExpressions;
using BendMath.Json;
using BendMath.Json.Words;
using BendMath.Stock.Standard;

namespace BendMath.Tests.Documentation;

/// <summary>The page on job files: its examples are read, and it names every word of the reader.</summary>
public sealed class JobFilePageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "recipes", "job-files.md"));

    [Fact]
    public void Examples_of_the_page_are_read()
    {
        string[] examples = [.. Regex.Matches(Page, "```json\\r?\\n(.*?)```", RegexOptions.Singleline).Select(match => match.Groups[1].Value)];
        Assert.Equal(3, examples.Length);
        RingJobFile whole = RingJobFile.Read(examples[0]);
        Assert.Empty(whole.Faults);
        RingJobFile other = RingJobFile.Read(examples[0].Replace("{ \"size\": \"L 50x50x5\" }", examples[1], StringComparison.Ordinal).Replace("\"orientation\": \"flange out\",", string.Empty, StringComparison.Ordinal));
        Assert.Empty(other.Faults);
        RingJobFile measured = RingJobFile.Read(examples[0].Replace("\"ends\": \"none\"", $"\"ends\": \"none\", \"measured rings\": [{examples[2]}]", StringComparison.Ordinal));
        Assert.Empty(measured.Faults);
        Assert.Equal("14 March", Assert.Single(measured.Jobs[0].Job.Calibration.Rings).Note);
        Assert.Equal("round tube 42.4 × 3.2 mm", other.Jobs[0].Job.Analysis.Section.ToString());
    }

    [Fact]
    public void Every_shape_law_and_system_is_named()
    {
        Assert.All(ShapeWords.All, shape =>
        {
            string row = Assert.Single(Page.Split('\n'), line => line.StartsWith($"| `{shape.Word}` |", StringComparison.Ordinal));
            Assert.All(shape.Orientations.Where(way => way.Length > 0), way => Assert.Contains($"`{way}`", row, StringComparison.Ordinal));
            Assert.All(shape.Dimensions, word => Assert.Contains($"`{word}`", row, StringComparison.Ordinal));
        });
        Assert.All(LawWords.All, law =>
        {
            string numbers = string.Join(", ", law.Numbers.Select(word => $"`{word}`"));
            Assert.Single(Page.Split('\n'), line => line.EndsWith($" | {numbers} |", StringComparison.Ordinal));
        });
        Assert.All(StandardSizes.Systems, system => Assert.Contains($"`{system.Name}`", Page, StringComparison.Ordinal));
    }
}
