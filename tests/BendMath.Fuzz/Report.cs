using System.Globalization;
using BendMath.Fuzz.Stages;

namespace BendMath.Fuzz;

/// <summary>Prints what a run found.</summary>
internal static class Report
{
    /// <summary>How often each kind is to come in a run of a minute or more.</summary>
    private const int Enough = 500;

    private const int MostReasons = 6;

    public static void Print(Run run, TextWriter to)
    {
        Ends(run, to);
        Kinds(run, to);
        to.WriteLine();
        to.WriteLine("The ten slowest by CPU time");
        foreach (((string input, TimeSpan time), _) in run.Slowest.UnorderedItems.OrderByDescending(item => item.Priority))
        {
            to.WriteLine(Invariant($"{time.TotalMilliseconds,10:0} ms  {input}"));
        }

        Findings(run, to);
    }

    private static void Ends(Run run, TextWriter to)
    {
        to.WriteLine("kind      inputs     sound   refused  no way to  failed   built     CPU");
        foreach ((string name, Tally tally) in run.Tallies.Where(pair => pair.Value.Tried > 0))
        {
            double built = (double)(tally.Of(End.Sound) + tally.Of(End.Failed)) / tally.Tried;
            to.WriteLine(Invariant($"{name,-7}{tally.Tried,9}{tally.Of(End.Sound),10}{tally.Of(End.Refused),10}{tally.Of(End.OutOfReach),11}{tally.Of(End.Failed),8}{built,8:0.0%}{tally.Time.TotalSeconds,6:0} s"));
        }

        foreach ((string name, Tally tally) in run.Tallies)
        {
            foreach ((string reason, int times) in tally.Reasons.OrderByDescending(pair => pair.Value).Take(MostReasons))
            {
                to.WriteLine(Invariant($"  {name} {times,6} × {reason}"));
            }
        }
    }

    private static void Kinds(Run run, TextWriter to)
    {
        foreach ((string group, SortedDictionary<string, int> kinds) in run.Ledger.Groups)
        {
            to.WriteLine();
            to.WriteLine(group);
            foreach ((string kind, int times) in kinds)
            {
                to.WriteLine(Invariant($"{times,9}  {kind}{(times == 0 ? "  NEVER" : times < Enough ? $"  fewer than {Enough}" : string.Empty)}"));
            }
        }
    }

    private static void Findings(Run run, TextWriter to)
    {
        foreach (Finding finding in run.Findings.Values.OrderByDescending(finding => finding.Times))
        {
            Walking.Failure plainest = new Shrinker(finding, TimeSpan.FromSeconds(0)).Plainest();
            to.WriteLine();
            to.WriteLine(Invariant($"FAILED {finding.Times} ×, first by {finding.Input}"));
            to.WriteLine(plainest.Text);
            to.WriteLine($"at {plainest.Place}");
            to.WriteLine(plainest.Repro);
        }
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
