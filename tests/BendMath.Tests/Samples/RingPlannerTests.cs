using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using BendMath.Json;
using BendMath.Learning;
using BendMath.Lengths;
using BendMath.Tests.Json;
using RingPlanner;

namespace BendMath.Tests.Samples;

/// <summary>The sample as its user meets it: what is printed where, and with which exit code.</summary>
public sealed partial class RingPlannerTests
{
    private static readonly string Printed = Run(Planner.Good, "--details").Output;

    [Fact]
    public void No_line_is_wider_than_the_page_or_holds_an_escape_code()
    {
        string[] lines = Printed.Split('\n');
        Assert.True(lines.Length > 150, $"only {lines.Length} lines");
        Assert.All(lines, line => Assert.True(line.TrimEnd('\r').Length <= 100, line));
        Assert.DoesNotContain('\u001b', Printed);
        Assert.DoesNotContain('\uE000', Printed);
        Assert.DoesNotContain('…', Printed);
    }

    [Fact]
    public void Model_and_warning_stand_before_the_first_size_of_a_ring()
    {
        foreach (string job in Jobs())
        {
            int step = job.IndexOf("1. Which die", StringComparison.Ordinal);
            Assert.InRange(job.IndexOf("  Model ", StringComparison.Ordinal), 0, step);
            Assert.InRange(job.IndexOf("  It assumes ", StringComparison.Ordinal), 0, step);
            Assert.InRange(job.IndexOf("Invented data", StringComparison.Ordinal), 0, step);
            Assert.InRange(job.IndexOf("As it comes off", StringComparison.Ordinal), step, job.Length);
        }

        Assert.Contains("No measured ring supports", Jobs()[0][..Jobs()[0].IndexOf("1. Which die", StringComparison.Ordinal)],
            StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_stand_at_their_steps()
    {
        foreach (string job in Jobs())
        {
            string words = string.Join(' ', job.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
            string[] headings = ["1. Which die", "2. Will it distort", "3. How long to cut", "4. How hard it pulls", "5. What to check"];
            int[] starts = [.. headings.Select(heading => words.IndexOf(heading, StringComparison.Ordinal)), words.Length];
            Assert.Equal(starts.Order(), starts);
            IReadOnlyList<string>[] steps =
                [SafetyNotices.Die, SafetyNotices.Distortion, SafetyNotices.Cut, SafetyNotices.Bend, SafetyNotices.Check];
            for (int step = 0; step < steps.Length; step++)
            {
                Assert.All(steps[step], caution => Assert.InRange(
                    words.IndexOf("CAUTION " + caution, StringComparison.Ordinal), starts[step], starts[step + 1] - 1));
            }
        }
    }

    [Fact]
    public void The_best_die_is_marked_without_color()
    {
        foreach ((string job, RingJobEntry entry) in Jobs().Zip(RingJobFile.Read(Planner.Demo()).Jobs))
        {
            string best = RingPlan.For(entry.Job).Choice.Best!.Die.Name;
            string row = Assert.Single(job.Split('\n'), line => line.Contains("│ > │", StringComparison.Ordinal));
            Assert.Contains($"│ > │ {best} ", row, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_job_in_inches_shows_inches_beside_and_cuts_to_a_sixteenth_rounded_up()
    {
        string job = Jobs()[2];
        Assert.Contains("inside diameter 254.0 mm (10.000 in)", job, StringComparison.Ordinal);
        RingPlan plan = RingPlan.For(RingJobFile.Read(Planner.Demo()).Jobs[2].Job);
        string cut = LengthText.Format(plan.Ring!.Layout.BlankLength, LengthStyle.FractionalInches(16, LengthRounding.Up));
        Assert.Contains($"{cut} (rounded up to 1/16 in;", job, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d in\)", Jobs()[0]);
    }

    [Fact]
    public void Json_is_one_document_with_finite_numbers()
    {
        using JsonDocument document = JsonDocument.Parse(Run(Planner.Good, "--json").Output);
        Assert.Equal(3, document.RootElement.GetProperty("plans").GetArrayLength());
        double[] numbers = [.. Numbers(document.RootElement)];
        Assert.True(numbers.Length > 300, $"only {numbers.Length} numbers");
        Assert.All(numbers, number => Assert.True(double.IsFinite(number)));
    }

    [Fact]
    public void The_example_is_a_file_to_start_from()
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, Run(Planner.Good, "--example").Output);
            Assert.Equal(Printed, Run(Planner.Good, file, "--details").Output);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void A_bad_file_gives_a_sentence_for_each_fault_and_nothing_else()
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file,
                JobTexts.With("\"leg\": \"30 mm\"", "\"leg\": \"30\"").Replace("\"wrap\"", "\"magic\"", StringComparison.Ordinal));
            (string output, string error) = Run(Planner.BadInput, file);
            Assert.Empty(output);
            string[] lines = error.TrimEnd().Split(Environment.NewLine);
            Assert.Equal(2, lines.Length);
            Assert.StartsWith("stock.leg (line 4): \"30\" has no unit", lines[0], StringComparison.Ordinal);
            Assert.StartsWith("forming.model (line 9): ", lines[1], StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void A_correction_that_explains_nothing_is_a_fault_of_the_file()
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file,
                JobTexts.With("\"curvature ratio\"", "\"stamped face\"").Replace("\"490 mm\"", "\"520 mm\"", StringComparison.Ordinal));
            (string output, string error) = Run(Planner.BadInput, file);
            Assert.Empty(output);
            Assert.StartsWith("correction (line ", error, StringComparison.Ordinal);
            Assert.Contains(
                "\"correction\" must explain its ring angle 30 × 30 × 3 mm, flange out on A: 260 mm to the inside face, but by the "
                    + "stamped face it does not: wrapping does not explain it", error, StringComparison.Ordinal);
            Assert.Single(error.TrimEnd().Split('\n'));
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Theory]
    [InlineData("There is no option \"--jsn\"; the options are --details, --workings, --fractions N, --markdown, --html, --json, "
        + "--example and --help.", "--jsn")]
    [InlineData("--fractions is followed by 8, 16, 32 or 64, the finest fraction of an inch, but by \"12\" here.", "--fractions", "12")]
    [InlineData("--fractions is followed by 8, 16, 32 or 64, the finest fraction of an inch, but by \"nothing\" here.", "--fractions")]
    [InlineData("One form at a time: --html and --json are given.", "--html", "--json")]
    [InlineData("One file at a time: \"a\" and \"b\" are given.", "a", "b")]
    [InlineData("file: There is no file \"/none/such.json\".", "/none/such.json")]
    public void Bad_arguments_exit_with_two(string sentence, params string[] arguments)
    {
        (string output, string error) = Run(Planner.BadInput, arguments);
        Assert.Empty(output);
        Assert.Equal(sentence, error.TrimEnd());
    }

    [Fact]
    public void Help_names_every_option()
    {
        string help = Run(Planner.Good, "--help").Output;
        Assert.All(["FILE", "--details", "--workings", "--fractions", "--markdown", "--html", "--json", "--example", "--help"],
            option => Assert.Contains(option, help, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, "--help")]
    [InlineData(2, "--nonsense")]
    public void The_program_itself_exits_with_the_code(int code, string argument)
    {
        ProcessStartInfo start = new("dotnet", [Path.Combine(AppContext.BaseDirectory, "RingPlanner.dll"), argument])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using Process process = Process.Start(start)!;
        string output = process.StandardOutput.ReadToEnd();
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(code, process.ExitCode);
        Assert.Equal(code == 0, error.Length == 0);
        Assert.Equal(code == 0, output.Length > 0);
    }

    /// <summary>The one number to set on a bender that pinches, and what the hand cannot be told.</summary>
    [Fact]
    public void A_pinched_job_prints_its_stroke_and_no_hand_force()
    {
        string words = Words(Jobs()[1]);
        FormedBend formed = RingPlan.For(RingJobFile.Read(Planner.Demo()).Jobs[1].Job).Ring!.Prediction.Formed!;
        Assert.Contains($"Set the stroke {LengthText.Format(formed.Contact!.Stroke, LengthStyle.Millimeters(2))} past", words,
            StringComparison.Ordinal);
        Assert.Contains("three contacts then has a radius of 590.0 mm", words, StringComparison.Ordinal);
        Assert.Contains("At the nose the bar touches the nose at one point", words, StringComparison.Ordinal);
        Assert.DoesNotContain("square to the end of a lever", words, StringComparison.Ordinal);
    }

    /// <summary>
    /// What a die is cut to is the face the bar lies on, in the sense of the model, and the stamp is printed with its meaning.
    /// </summary>
    [Fact]
    public void The_die_to_make_is_given_by_the_face_the_bar_lies_on()
    {
        DieChoice choice = RingPlan.For(RingJobFile.Read(Planner.Demo()).Jobs[2].Job).Choice;
        string machined = LengthText.Format(choice.Ideal!.Loaded.InsideRadius, LengthStyle.Millimeters(1));
        Assert.Contains($"Die to make an inside face of radius {machined}", Words(Jobs()[2]), StringComparison.Ordinal);
        Assert.DoesNotContain("inside of the bar: 4 in", Words(Jobs()[2]), StringComparison.Ordinal);
        Assert.Contains("Stamp means 14.89 mm (0.586 in) outside the inside face, as the measured ring says", Words(Jobs()[2]),
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_law_is_printed_before_any_size()
    {
        Assert.Contains("Law linear hardening, yield 280 MPa, tangent modulus 1000 MPa", Words(Jobs()[0]), StringComparison.Ordinal);
        Assert.Contains("Law perfectly plastic", Words(Jobs()[1]), StringComparison.Ordinal);
    }

    /// <summary>Every length of a job in inches has inches beside it, also where the library speaks.</summary>
    [Fact]
    public void No_length_of_a_job_in_inches_stands_in_millimeters_alone()
    {
        string words = Words(Jobs()[2]);
        MatchCollection metric = Regex.Matches(words, @"\d mm\b");
        Assert.True(metric.Count > 40, $"only {metric.Count} lengths");
        string[] alone = [.. metric.Select(found => words[Math.Max(0, found.Index - 60)..Math.Min(words.Length, found.Index + 30)])
            .Where((_, i) => !Regex.IsMatch(words[(metric[i].Index + 1)..], @"\A mm( \([\d.× ,to]+ in\)| = [\d.× ,to]+ in|\))"))];
        Assert.Empty(alone);
        Assert.Contains("19.05 × 19.05 × 3.175 mm (0.750 × 0.750 × 0.125 in)", words, StringComparison.Ordinal);
        Assert.Contains("Marks from its start 2 1/2 in (63.5 mm) and 34 3/4 in (882.6 mm)", words, StringComparison.Ordinal);
    }

    [Fact]
    public void An_arc_is_printed_by_its_radius_and_the_opening_between_its_ends()
    {
        string words = Words(Jobs()[1]);
        Assert.Contains("inside diameter 900.0 mm (radius 450.0 mm)", words, StringComparison.Ordinal);
        Assert.Contains("Between the ends 897.9 mm", words, StringComparison.Ordinal);
        Assert.DoesNotContain("if the arc went on", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rack_that_does_not_serve_and_a_short_bar_are_said_loudly()
    {
        string words = Words(Print(JobTexts.With("\"500 mm\"", "\"2000 mm\"").Replace("\"6 m\"", "\"300 mm\"", StringComparison.Ordinal)));
        int step = words.IndexOf("1. Which die", StringComparison.Ordinal);
        Assert.InRange(words.IndexOf("WARNING No die of this rack serves", StringComparison.Ordinal), 0, step);
        Assert.Contains("> Nearest is B", words, StringComparison.Ordinal);
        Assert.Contains("NO DIE OF THIS RACK SERVES", words, StringComparison.Ordinal);
        Assert.Contains("(not the wanted ring)", words, StringComparison.Ordinal);
        Assert.Contains("From a bar NONE", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Distortion_nobody_checks_is_printed_beside_the_risk()
    {
        Assert.Contains("Risk MEDIUM, as far as it is checked", Words(Jobs()[0]), StringComparison.Ordinal);
        Assert.Contains("To lower the worst back the leg on the side", Words(Jobs()[0]), StringComparison.Ordinal);
    }

    private static string Words(string text) => string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    private static string Print(string job)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, job);
            return Run(Planner.Good, file, "--details").Output;
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static string[] Jobs()
    {
        string[] names = [.. RingJobFile.Read(Planner.Demo()).Jobs.Select(entry => entry.Job.Name)];
        int[] starts =
            [.. names.Select(name => Printed.IndexOf($"{name}\n===", StringComparison.Ordinal)),
                Printed.IndexOf("Cutting\n===", StringComparison.Ordinal)];
        return [.. names.Select((_, index) => Printed[starts[index]..starts[index + 1]])];
    }

    private static (string Output, string Error) Run(int code, params string[] arguments)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        int result = Planner.Run(arguments, output, error, plain: true);
        Assert.True(result == code, $"exit code {result}: {error}");
        return (output.ToString(), error.ToString());
    }

    private static IEnumerable<double> Numbers(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Number => [element.GetDouble()],
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Numbers),
        JsonValueKind.Object => element.EnumerateObject().SelectMany(property => Numbers(property.Value)),
        _ => [],
    };
}
