using BendMath.Fuzz.Making;
using BendMath.Fuzz.Stages;
using BendMath.Fuzz.Walking;

namespace BendMath.Fuzz;

/// <summary>Draws inputs, kind by kind by their shares of the time, and keeps what came of them.</summary>
internal sealed class Run(Options options, IReadOnlyList<Stage> stages)
{
    private readonly DateTime _begin = DateTime.UtcNow;

    private long _tried;

    private volatile string _current = string.Empty;

    private long _since;

    public Dictionary<string, Tally> Tallies { get; } = stages.ToDictionary(stage => stage.Name, _ => new Tally());

    public Ledger Ledger { get; } = new();

    /// <summary>The first failure of each finding with its count.</summary>
    public Dictionary<string, Finding> Findings { get; } = new(StringComparer.Ordinal);

    /// <summary>The inputs that took the most CPU time.</summary>
    public PriorityQueue<(string Input, TimeSpan Time), TimeSpan> Slowest { get; } = new();

    /// <summary>What is being tried, and since when; for a watch in another thread.</summary>
    public (string Input, TimeSpan For) Current => (_current, TimeSpan.FromMilliseconds(Environment.TickCount64 - Interlocked.Read(ref _since)));

    public void All()
    {
        foreach ((string group, string kind) in stages.SelectMany(stage => stage.Expected))
        {
            Ledger.Expect(group, kind);
        }

        while (_tried < options.Jobs && (options.Seconds is not { } seconds || (DateTime.UtcNow - _begin).TotalSeconds < seconds))
        {
            Stage stage = stages.MinBy(stage => Tallies[stage.Name].Time.TotalSeconds / stage.Share)!;
            One(stage, (ulong)Tallies[stage.Name].Tried);
        }
    }

    public Outcome One(Stage stage, ulong number)
    {
        _current = $"--{stage.Name} --seed {options.Seed} --again {number}";
        Interlocked.Exchange(ref _since, Environment.TickCount64);
        TimeSpan before = Environment.CpuUsage.TotalTime;
        Tape tape = new(options.Seed, number);
        Outcome outcome = stage.Run(tape, Ledger);
        TimeSpan time = Environment.CpuUsage.TotalTime - before;
        _tried++;
        Tallies[stage.Name].Add(outcome, time);
        Slowest.Enqueue((_current, time), time);
        if (Slowest.Count > 10)
        {
            Slowest.Dequeue();
        }

        if (outcome.Failure is { } failure)
        {
            if (!Findings.TryGetValue(failure.Finding, out Finding? known))
            {
                Findings[failure.Finding] = known = new(stage, _current, tape.Drawn, failure);
            }

            known.Times++;
        }

        return outcome;
    }
}

/// <summary>Failures of one kind at one place: the first, and how many there were.</summary>
internal sealed class Finding(Stage stage, string input, IReadOnlyList<double> tape, Failure first)
{
    public Stage Stage => stage;

    public string Input => input;

    public IReadOnlyList<double> Tape => tape;

    public Failure First => first;

    public int Times { get; set; }
}

/// <summary>How inputs of one kind ended.</summary>
internal sealed class Tally
{
    private readonly Dictionary<End, int> _ends = [];

    public int Tried => _ends.Values.Sum();

    public TimeSpan Time { get; private set; }

    public Dictionary<string, int> Reasons { get; } = new(StringComparer.Ordinal);

    public int Of(End end) => _ends.GetValueOrDefault(end);

    public void Add(Outcome outcome, TimeSpan time)
    {
        _ends[outcome.End] = Of(outcome.End) + 1;
        Time += time;
        if (outcome.What.Length > 0)
        {
            string reason = $"{outcome.End}: {outcome.What}";
            Reasons[reason] = Reasons.GetValueOrDefault(reason) + 1;
        }
    }
}
