using BendMath.Fuzz.Making;
using BendMath.Fuzz.Stages;

namespace BendMath.Fuzz;

/// <summary>Draws inputs, kind by kind by their shares of the time, and keeps what came of them.</summary>
internal sealed class Run
{
    /// <summary>So many inputs for each kind a stage expects, and one that never came is a failure.</summary>
    private const int TriesPerKind = 40;

    private const int MostSlow = 10;

    private readonly Options _options;

    private readonly IReadOnlyList<Stage> _stages;

    private volatile string _current = string.Empty;

    private volatile Tape? _tape;

    private long _since;

    public Run(Options options, IReadOnlyList<Stage> stages)
    {
        _options = options;
        _stages = stages;
        Tallies = stages.ToDictionary(stage => stage, _ => new Tally());
        foreach ((string group, string kind) in stages.SelectMany(stage => stage.Expected))
        {
            Ledger.Count(group, kind, 0);
        }
    }

    public Dictionary<Stage, Tally> Tallies { get; }

    public Ledger Ledger { get; } = new();

    /// <summary>What failed, each kind of failure once.</summary>
    public Dictionary<string, Finding> Findings { get; } = new(StringComparer.Ordinal);

    /// <summary>The inputs that took the most CPU time.</summary>
    public PriorityQueue<string, TimeSpan> Slowest { get; } = new();

    /// <summary>What is being tried, and the CPU time since it began; for a watch in another thread.</summary>
    public (string Input, TimeSpan For) Current =>
        (_current, Environment.CpuUsage.TotalTime - TimeSpan.FromTicks(Interlocked.Read(ref _since)));

    /// <summary>Kinds that should have come and never did.</summary>
    public IReadOnlyList<string> Never =>
    [
        .. _stages.Where(stage => Tallies[stage].Tried >= TriesPerKind * stage.Expected.Count())
            .SelectMany(stage => stage.Expected)
            .Where(expected => Ledger.Of(expected.Group, expected.Kind) == 0)
            .Select(expected => $"{expected.Group} {expected.Kind}"),
    ];

    /// <summary>What is being tried, as C# or as the text of a file.</summary>
    public string? Trying => _tape?.Trying?.Invoke();

    /// <summary>Whether one input is tried again, and is to be printed.</summary>
    public bool IsAgain => _options.Again is not null;

    public void All()
    {
        if (_options.Again is { } number)
        {
            One(_stages[0], number);
            return;
        }

        long begin = Environment.TickCount64;
        while (Tallies.Values.Sum(tally => (long)tally.Tried) < _options.Jobs
            && (_options.Seconds is not { } seconds || Environment.TickCount64 - begin < 1000 * seconds))
        {
            Stage stage = _stages.MinBy(stage => Tallies[stage].Time.TotalSeconds / stage.Share)!;
            One(stage, (ulong)Tallies[stage].Tried);
        }
    }

    private void One(Stage stage, ulong number)
    {
        _current = $"--{stage.Name} --seed {_options.Seed} --again {number}";
        TimeSpan before = Environment.CpuUsage.TotalTime;
        Interlocked.Exchange(ref _since, before.Ticks);
        Tape tape = new(_options.Seed, number);
        _tape = tape;
        Outcome outcome = stage.Run(tape, Ledger);
        TimeSpan time = Environment.CpuUsage.TotalTime - before;
        Tallies[stage].Add(outcome, time);
        Slowest.Enqueue(_current, time);
        if (Slowest.Count > MostSlow)
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
    }
}
