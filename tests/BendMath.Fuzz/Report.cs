using System.Globalization;
using BendMath.Fuzz.Stages;
using BendMath.Fuzz.Walking;

namespace BendMath.Fuzz;

/// <summary>Prints what a run found.</summary>
internal static class Report
{
    /// <summary>How often each kind is to come before it counts as tried.</summary>
    private const int Enough = 500;

    private const int MostReasons = 5;

    private static readonly TimeSpan PerFinding = TimeSpan.FromSeconds(3);

    public static void Print(Run run, TextWriter to)
    {
        Ends(run, to);
        if (run.IsAgain)
        {
            to.WriteLine();
            to.WriteLine(Printable(run.Trying ?? string.Empty));
        }
        else
        {
            Kinds(run, to);
        }

        Slowest(run, to);
        foreach (string kind in run.Never)
        {
            to.WriteLine($"FAILED: {kind} was never built");
        }

        foreach (Finding finding in run.Findings.Values.OrderByDescending(finding => finding.Times))
        {
            Failure plainest = new Shrinker(finding, PerFinding).Plainest();
            to.WriteLine();
            to.WriteLine($"FAILED {finding.Times} ×, first by {finding.Input}");
            to.WriteLine(Printable(plainest.Text));
            to.WriteLine($"at {plainest.Place}");
            to.WriteLine(Printable(plainest.Repro));
        }
    }

    /// <summary>Prints what never came back; the thread that tries it still runs, so that nothing else is tried again.</summary>
    public static void PrintStuck(Run run, TimeSpan patience, TextWriter to)
    {
        to.WriteLine($"FAILED: {run.Current.Input} did not come back within {patience.TotalSeconds} s of CPU time");
        to.WriteLine(Printable(run.Trying ?? string.Empty));
        foreach (Finding finding in run.Findings.Values)
        {
            to.WriteLine($"FAILED {finding.Times} ×, first by {finding.Input}: {Printable(finding.First.Text)}");
        }
    }

    private static void Ends(Run run, TextWriter to)
    {
        to.WriteLine("         inputs     sound   refused  no way to  failed   built       CPU");
        foreach ((Stage stage, Tally tally) in run.Tallies.Where(pair => pair.Value.Tried > 0))
        {
            to.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{stage.Name,-7}{tally.Tried,8}{tally.Of(End.Sound),10}{tally.Of(End.Refused),10}{tally.Of(End.OutOfReach),11}{tally.Of(End.Failed),8}{tally.Built,8:0.0%}{tally.Time.TotalSeconds,8:0} s"));
            foreach ((string reason, int times) in tally.Reasons.OrderByDescending(pair => pair.Value).Take(MostReasons))
            {
                to.WriteLine($"{times,15} × {Printable(reason)}");
            }
        }
    }

    private static void Kinds(Run run, TextWriter to)
    {
        foreach ((string group, SortedDictionary<string, int> kinds) in run.Ledger.Groups)
        {
            to.WriteLine();
            to.WriteLine($"{group}: {kinds.Values.Count(times => times >= Enough)} of {kinds.Count} at least {Enough} times");
            foreach ((string kind, int times) in kinds)
            {
                to.WriteLine($"{times,9}  {kind}");
            }
        }
    }

    private static void Slowest(Run run, TextWriter to)
    {
        to.WriteLine();
        to.WriteLine("The slowest by CPU time");
        foreach ((string input, TimeSpan time) in run.Slowest.UnorderedItems.OrderByDescending(item => item.Priority))
        {
            to.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{time.TotalMilliseconds,9:0} ms  {input}"));
        }

        to.WriteLine();
    }

    /// <summary>A spoiled file may hold what a terminal obeys.</summary>
    private static string Printable(string text) =>
        string.Concat(
            text.Select(letter => char.IsControl(letter) && letter is not ('\n' or '\r') ? $"\\u{(int)letter:x4}" : letter.ToString()));
}
