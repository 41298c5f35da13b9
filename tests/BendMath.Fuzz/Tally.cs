using BendMath.Fuzz.Stages;

namespace BendMath.Fuzz;

/// <summary>How the inputs of one stage ended, and the CPU time they took.</summary>
internal sealed class Tally
{
    private readonly Dictionary<End, int> _ends = [];

    public int Tried { get; private set; }

    public TimeSpan Time { get; private set; }

    /// <summary>Why inputs were not built, with how many there were.</summary>
    public Dictionary<string, int> Reasons { get; } = new(StringComparer.Ordinal);

    public double Built => Tried == 0 ? 0 : (double)(Of(End.Sound) + Of(End.Failed)) / Tried;

    public int Of(End end) => _ends.GetValueOrDefault(end);

    public void Add(Outcome outcome, TimeSpan time)
    {
        Tried++;
        Time += time;
        _ends[outcome.End] = Of(outcome.End) + 1;
        if (outcome.What.Length > 0)
        {
            Reasons[outcome.What] = Reasons.GetValueOrDefault(outcome.What) + 1;
        }
    }
}
