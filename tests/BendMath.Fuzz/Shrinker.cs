using BendMath.Fuzz.Making;
using BendMath.Fuzz.Stages;

namespace BendMath.Fuzz;

/// <summary>Makes a failing input plainer: drops and lowers numbers of its tape as long as the same finding comes out.</summary>
internal sealed class Shrinker(Finding finding, TimeSpan patience)
{
    private readonly DateTime _end = DateTime.UtcNow + patience;

    private List<double> _tape = [.. finding.Tape];

    private Walking.Failure _failure = finding.First;

    public Walking.Failure Plainest()
    {
        int length;
        double sum;
        do
        {
            (length, sum) = (_tape.Count, _tape.Sum());
            for (int size = Math.Max(1, _tape.Count / 4); size > 0; size /= 2)
            {
                Sweep(size, (tape, at, count) => tape.RemoveRange(at, count));
                Sweep(size, (tape, at, count) => Replace(tape, at, count, _ => 0));
            }

            Sweep(1, (tape, at, count) => Replace(tape, at, count, number => number / 2));
            Sweep(1, (tape, at, count) => Replace(tape, at, count, number => Math.Floor(number * 16) / 16));
        }
        while ((_tape.Count < length || _tape.Sum() < sum) && DateTime.UtcNow < _end);
        return _failure;
    }

    private void Sweep(int size, Action<List<double>, int, int> change)
    {
        for (int at = 0; at + size <= _tape.Count && DateTime.UtcNow < _end; at += size)
        {
            List<double> tape = [.. _tape];
            change(tape, at, size);
            if (!tape.SequenceEqual(_tape))
            {
                Try(tape);
            }
        }
    }

    private void Try(List<double> given)
    {
        Tape tape = new(given);
        if (finding.Stage.Run(tape, new Ledger()).Failure is { } failure && failure.Finding == finding.First.Finding
            && failure.Repro.Length <= _failure.Repro.Length)
        {
            _failure = failure;
            _tape = [.. tape.Drawn];
        }
    }

    private static void Replace(List<double> tape, int at, int count, Func<double, double> change)
    {
        for (int i = at; i < at + count; i++)
        {
            tape[i] = change(tape[i]);
        }
    }
}
