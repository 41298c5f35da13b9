using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BendMath.Json;
using BendMath.Lengths;
using RingPlanner;

namespace BendMath.Tests.Samples;

/// <summary>One screen, Markdown, the page, fractions, the cut list.</summary>
public sealed partial class RingPlannerTests
{
    /// <summary>
    /// One screen: every job's die, cut, pull, check and doubts, and the caution about stored energy, in fewer lines than a page has.
    /// </summary>
    [Fact]
    public void The_first_thing_printed_is_one_screen()
    {
        string screen = Run(Planner.Good).Output.TrimEnd();
        Assert.InRange(screen.Split('\n').Length, 20, 50);
        Assert.All(screen.Split('\n'), line => Assert.True(line.TrimEnd('\r').Length <= 100, line));
        foreach (RingJobEntry entry in RingJobFile.Read(Planner.Demo()).Jobs)
        {
            PlannedRing ring = RingPlan.For(entry.Job).Ring!;
            int start = screen.IndexOf(entry.Job.Name, StringComparison.Ordinal);
            Assert.Contains(ring.Prediction.Die.Name, screen[start..], StringComparison.Ordinal);
            Assert.Contains(LengthText.Format(ring.Layout.BlankLength, entry.Job.Cutting.CutStyle), screen[start..],
                StringComparison.Ordinal);
        }

        Assert.Contains("a loaded spring", screen, StringComparison.Ordinal);
        Assert.Contains("local codes and a licensed engineer decide", Words(screen), StringComparison.Ordinal);
        Assert.Single(Regex.Matches(screen, "Invented data"));
    }

    /// <summary>
    /// One cut list of all jobs: its pieces are the blanks and quantities of the plans, and inches stand beside where the job is in inches.
    /// </summary>
    [Fact]
    public void Several_jobs_give_one_cut_list()
    {
        string markdown = Run(Planner.Good, "--markdown").Output;
        string cutting = markdown[markdown.IndexOf("# Cutting", StringComparison.Ordinal)..];
        foreach (RingJobEntry entry in RingJobFile.Read(Planner.Demo()).Jobs)
        {
            int pieces = Regex.Matches(cutting, $@"(?m)^\| (\d+) \| [^|]* \| (?:[^|]*\+ )?(\d+) × {Regex.Escape(entry.Job.Name)} ")
                .Sum(
                    row =>
                        int.Parse(row.Groups[1].Value, CultureInfo.InvariantCulture)
                            * int.Parse(row.Groups[2].Value, CultureInfo.InvariantCulture));
            Assert.Equal(entry.Job.Wanted.Quantity, pieces);
        }

        Assert.Contains("(37.375 in)", cutting, StringComparison.Ordinal);
        Assert.Contains("no list takes less", cutting, StringComparison.Ordinal);
    }

    [Fact]
    public void Markdown_holds_what_the_details_hold()
    {
        string markdown = Run(Planner.Good, "--markdown").Output;
        Assert.Equal(4, Regex.Count(markdown, "(?m)^# "));
        Assert.Contains("| \\> | R240 | 240.0 | ", markdown, StringComparison.Ordinal);
        Assert.All(SafetyNotices.All, caution => Assert.Contains(caution, markdown, StringComparison.Ordinal));
        string[] numbers = [.. Regex.Matches(Printed, @"\d+\.\d+").Select(found => found.Value).Distinct()];
        Assert.True(numbers.Length > 100);
        Assert.All(numbers, number => Assert.Contains(number, markdown, StringComparison.Ordinal));
    }

    /// <summary>The page is well-formed, asks for nothing from elsewhere, and shows section, ring and blank of every job.</summary>
    [Fact]
    public void The_page_needs_nothing_else()
    {
        string html = Run(Planner.Good, "--html", "--workings").Output;
        XDocument page = XDocument.Parse(Regex.Replace(html, "<!DOCTYPE html>|<meta[^>]*>|<br>", string.Empty));
        Assert.Equal(9, page.Descendants().Count(element => element.Name.LocalName == "svg"));
        Assert.DoesNotMatch("<script|<link|src=|url\\((?!#)", html);
        Assert.DoesNotMatch("href=\"(?!#)", html);
        string[] identifiers = [.. page.Descendants().Attributes("id").Select(id => id.Value)];
        Assert.Equal(identifiers.Length, identifiers.Distinct().Count());
        Assert.Contains("κ = 1/(R + y_n) = 1/(", html, StringComparison.Ordinal);
        Assert.All(SafetyNotices.All, caution => Assert.Contains(caution, html, StringComparison.Ordinal));
    }

    /// <summary>Names of a job and of its dies are text on the page, in its drawings, and on the console.</summary>
    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onload=\"alert(1)")]
    [InlineData("A;=cmd")]
    [InlineData("</svg><b>&amp;")]
    [InlineData("url(#cl_1) id=\"x\"")]
    public void A_name_is_text_and_nothing_else(string name)
    {
        string path = Path.GetTempFileName();
        try
        {
            string quoted = System.Text.Json.JsonSerializer.Serialize(name);
            File.WriteAllText(path, Json.JobTexts.Sound
                .Replace("\"planter rim\"", quoted, StringComparison.Ordinal)
                .Replace("\"A\"", quoted, StringComparison.Ordinal)
                .Replace("\"mild steel\"", quoted, StringComparison.Ordinal));
            string html = Run(Planner.Good, path, "--html", "--workings").Output;
            XDocument page = XDocument.Parse(Regex.Replace(html, "<!DOCTYPE html>|<meta[^>]*>|<br>", string.Empty));
            Assert.DoesNotContain(page.Descendants(),
                element => element.Name.LocalName is "script" or "b" && element.Parent!.Name.LocalName != "p");
            Assert.DoesNotContain(page.Descendants().Attributes(),
                attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
            Assert.Contains(page.Descendants("h1"), heading => heading.Value.Contains(name, StringComparison.Ordinal));
            Assert.All(page.Descendants().Where(element => element.Name.LocalName == "text"), text => Assert.Empty(text.Elements()));
            Assert.Contains(name, Run(Planner.Good, path, "--details").Output, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void Fractions_are_the_nearest_and_blanks_are_not_short()
    {
        string words = Words(Run(Planner.Good, "--details", "--fractions", "16").Output);
        Assert.Contains("to the nearest 1/16", words, StringComparison.Ordinal);
        PlannedRing ring = RingPlan.For(RingJobFile.Read(Planner.Demo()).Jobs[0].Job).Ring!;
        Assert.Contains(
            $"inside {LengthText.Format(ring.Free.InsideDiameter, LengthStyle.Millimeters(1))} "
                + $"({LengthText.Format(ring.Free.InsideDiameter, LengthStyle.FractionalInches(16, LengthRounding.Nearest))})", words,
                    StringComparison.Ordinal);
    }
}
