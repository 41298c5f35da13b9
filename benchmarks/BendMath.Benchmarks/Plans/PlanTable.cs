using System.Diagnostics;
using System.Globalization;

namespace BendMath.Benchmarks.Plans;

/// <summary>
/// What whole plans cost: processor time of <see cref="RingPlan.For"/> and of reading every public property of the plan, warm, in units P
/// of the plan of an angle that is wrapped on one of six dies, without ranges; P itself in units of the forward bend written by hand.
/// <c>plans</c> prints the whole table, <c>plans word …</c> the rows that hold every word.
/// </summary>
internal static class PlanTable
{
    private const string Compiled = "DOTNET_TieredCompilation";

    private const int Rounds = 7;

    private static readonly TimeSpan Enough = TimeSpan.FromMilliseconds(60);

    /// <summary>Processor time before anything counts: the compiler is done by then.</summary>
    private static readonly TimeSpan Warm = TimeSpan.FromSeconds(0.5);

    /// <summary>
    /// Prints the table; returns how many rows are over their limit. Runs itself again with everything compiled at once, because code that
    /// is still being made better while it is timed says little.
    /// </summary>
    public static int Print(string[] words)
    {
        if (Environment.GetEnvironmentVariable(Compiled) != "0")
        {
            ProcessStartInfo again = new(Environment.ProcessPath!, Environment.GetCommandLineArgs().Skip(1)) { UseShellExecute = false };
            again.Environment[Compiled] = "0";
            using Process run = Process.Start(again)!;
            run.WaitForExit();
            return run.ExitCode;
        }

        double hand = Hand();
        List<double> units = [Cost(PlanCases.Unit.Job)];
        List<(PlanCase Row, double Cost)> rows = [];
        foreach (PlanCase row in PlanCases.All()
            .Where(row => words.Skip(1).All(word => row.Name.Contains(word, StringComparison.OrdinalIgnoreCase))))
        {
            rows.Add((row, Cost(row.Job)));
            Console.Error.WriteLine(FormattableString.Invariant($"{rows[^1].Cost * 1e3:0.0} ms, {row.Name}"));
            if (rows.Count % 8 == 0)
            {
                units.Add(Cost(PlanCases.Unit.Job));
            }
        }

        double unit = units.Append(Cost(PlanCases.Unit.Job)).Order().ElementAt(units.Count / 2);
        int read = PlanReader.Read(RingPlan.For(PlanCases.Unit.Job()));
        double hands = unit / hand;
        Write($"P, {PlanCases.Unit.Name}: {unit * 1e3:0.00} ms, {hands:0} × the forward bend by hand, {hand * 1e9:0} ns; {read} properties read");
        Console.WriteLine();
        Write($"| plan | cost, P | limit, P | RingPlan.For alone, KiB |");
        Write($"| --- | ---: | ---: | ---: |");
        foreach ((PlanCase row, double cost) in rows)
        {
            Write($"| {row.Name} | {cost / unit:0.0} | {row.Limit:0} | {Allocated(row.Job) / 1024.0:0} |");
        }

        return rows.Count(one => one.Cost / unit > one.Row.Limit);
    }

    /// <summary>Seconds of processor time of one plan: the median of several rounds, each long enough to be timed.</summary>
    private static double Cost(Func<RingJob> job)
    {
        double spent = 0;
        double once = 0;
        for (int i = 0; i < 2 || (spent < Warm.TotalSeconds && i < 400); i++)
        {
            once = Round(job, 1);
            spent += once;
        }

        if (once > 1)
        {
            return once;
        }

        int count = (int)Math.Ceiling(Enough.TotalSeconds / once);
        return Enumerable.Range(0, Rounds).Select(_ => Round(job, count)).Order().ElementAt(Rounds / 2);
    }

    private static double Round(Func<RingJob> job, int count)
    {
        RingJob[] jobs = [.. Enumerable.Range(0, count).Select(_ => job())];
        GC.Collect();
        TimeSpan begin = Environment.CpuUsage.TotalTime;
        foreach (RingJob one in jobs)
        {
            PlanReader.Read(RingPlan.For(one));
        }

        return (Environment.CpuUsage.TotalTime - begin).TotalSeconds / count;
    }

    private static double Allocated(Func<RingJob> job)
    {
        RingJob one = job();
        long begin = GC.GetAllocatedBytesForCurrentThread();
        RingPlan.For(one);
        return GC.GetAllocatedBytesForCurrentThread() - begin;
    }

    private static double Hand()
    {
        const int Count = 400_000;
        HandAngle hand = new(0.030, 0.003, 210e9, 280e6, 1.5e9);
        double[] rounds = new double[2 * Rounds];
        double sum = 0;
        for (int round = 0; round < rounds.Length; round++)
        {
            TimeSpan begin = Environment.CpuUsage.TotalTime;
            for (int i = 0; i < Count; i++)
            {
                (double inside, double dish) = hand.Ring(0.240);
                sum += inside + dish;
            }

            rounds[round] = (Environment.CpuUsage.TotalTime - begin).TotalSeconds / Count;
        }

        return sum > 0 ? rounds.Order().ElementAt(Rounds / 2) : double.NaN;
    }

    private static void Write(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
