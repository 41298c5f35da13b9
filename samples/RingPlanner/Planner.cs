using BendMath;
using BendMath.Json;
using RingPlanner.Pages;

namespace RingPlanner;

/// <summary>Reads the jobs, plans them, prints the plans. Nothing is printed before every job is planned.</summary>
internal static class Planner
{
    public const int Good = 0;

    public const int BadInput = 2;

    private const string Help = """
        Plans rings and arcs for a bender with fixed-radius dies.

        Usage:
          RingPlanner                 plan the built-in example (invented data), on one screen
          RingPlanner FILE            plan the jobs of a file, on one screen
          RingPlanner --example       print the built-in example as a file to start from
          RingPlanner --help          print this

        Options:
          --details                   all of it: every die, every check, what the sizes rest on
          --workings                  how each number came about: equation, numbers put in, source
          --fractions N               sizes also in inches, to the nearest 1/8, 1/16, 1/32 or 1/64
          --markdown                  the details as Markdown
          --html                      the details as one HTML page with drawings; it needs nothing else
          --json                      the plans as JSON, for programs

        Lengths in a file are text with a unit: "30 mm", "1 1/4 in", "2 ft 3 in".
        The bar is a standard size, { "size": "L 50x50x5" }, with "system" where two list it,
        or a shape with its dimensions, { "shape": "flat", "width": "25 mm", "thickness": "5 mm" }:
        equal angle, unequal angle, flat, square, round, hexagon, round tube, square tube,
        rectangular tube, channel, tee. The words of each are in docs/recipes/job-files.md.
        Exit code: 0 when planned, 2 when the options or the file are wrong.
        """;

    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter error, bool plain)
    {
        if (CommandLine.Read(arguments, out CommandLine command) is { } fault)
        {
            error.WriteLine(fault);
            return BadInput;
        }

        if (command.Help || command.Example)
        {
            output.WriteLine(command.Help ? Help : Demo());
            return Good;
        }

        RingJobFile reading = command.File is null ? RingJobFile.Read(Demo()) : RingJobFile.ReadFile(command.File);
        if (!reading.IsSound)
        {
            foreach (JsonFault found in reading.Faults)
            {
                error.WriteLine(found);
            }

            return BadInput;
        }

        List<(RingPlan Plan, RingJobEntry Entry)> plans = [.. reading.Jobs.Select(entry => (RingPlan.For(entry.Job), entry))];
        RingPlan[] all = [.. plans.Select(pair => pair.Plan)];
        PlanCuts cuts = PlanCuts.For(all, reading.LeastUsefulOffcut);
        output.WriteLine(command.Form == Form.Json ? RingPlanJson.WriteAll(all, cuts) : Book.Print(plans, cuts, command, plain).TrimEnd());
        return Good;
    }

    public static string Demo()
    {
        using Stream stream = typeof(Planner).Assembly.GetManifestResourceStream("demo.json")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().TrimEnd();
    }
}
