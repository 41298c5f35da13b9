namespace BendMath.Cutting;

/// <summary>
/// Branch and bound over bars: the longest piece left goes into the next bar, with every way to fill it that leaves no room for another
/// piece left (a piece moved there from a later bar never costs more). Bars of one length that start with the same piece come in falling
/// order of their ways. A branch is cut where what it took and a bound on the rest reach the best plan.
/// </summary>
internal sealed class CuttingSearch
{
    private readonly CuttingProblem _problem;

    private readonly CuttingSums _sums;

    private readonly double[] _prices;

    private readonly CancellationToken _cancellation;

    private readonly int[] _remaining;

    private readonly int[] _supply;

    private readonly int[] _barsByCost;

    private readonly List<(int Bar, int[] Counts)> _chosen = [];

    private readonly int[] _leftOut;

    private int _steps;

    private double _cost;

    private double _material;

    private double _worth;

    private double _bestCost;

    private CuttingSearch(CuttingProblem problem, CuttingSums sums, double[] prices, double bestCost, int steps,
        CancellationToken cancellation)
    {
        _problem = problem;
        _sums = sums;
        _prices = prices;
        _bestCost = bestCost;
        _steps = steps;
        _cancellation = cancellation;
        _remaining = [.. problem.Demand];
        _supply = [.. problem.Supply];
        _leftOut = new int[problem.Sizes.Length];
        _barsByCost =
            [.. Enumerable.Range(0, problem.Bars.Length).OrderBy(j => problem.Bars[j] / problem.Rooms[j]).ThenByDescending(j => problem.Bars[j])];
        for (int i = 0; i < _remaining.Length; i++)
        {
            _material += _remaining[i] * problem.Sizes[i];
            _worth += _remaining[i] * prices[i];
        }
    }

    /// <summary>A plan better than the best one known, or null.</summary>
    public CuttingPlan? Found { get; private set; }

    /// <summary>Whether the search came to its end: then no plan is better than the best known one or the found one.</summary>
    public bool IsComplete => _steps > 0;

    /// <param name="problem">The problem.</param>
    /// <param name="sums">Sums of bar lengths.</param>
    /// <param name="prices">Prices of the pieces for which no bar is worth more than its length.</param>
    /// <param name="bestCost">Cost of the best plan known.</param>
    /// <param name="steps">Number of steps after which it stops.</param>
    /// <param name="cancellation">Stops it too.</param>
    public static CuttingSearch Run(CuttingProblem problem, CuttingSums sums, double[] prices, double bestCost, int steps,
        CancellationToken cancellation)
    {
        CuttingSearch search = new(problem, sums, prices, bestCost, steps, cancellation);
        search.NextBar(0);
        return search;
    }

    private bool Stopped()
    {
        if (_steps > 0 && (--_steps & 255) == 0 && _cancellation.IsCancellationRequested)
        {
            _steps = 0;
        }

        return _steps <= 0;
    }

    private void NextBar(int from)
    {
        int lead = from;
        while (lead < _remaining.Length && _remaining[lead] == 0)
        {
            lead++;
        }

        if (lead == _remaining.Length)
        {
            if (_cost < _bestCost * (1 - CuttingProblem.Same))
            {
                _bestCost = _cost;
                Found = new([.. _chosen.Select(bar => (bar.Bar, (int[])bar.Counts.Clone()))], [.. _leftOut]);
            }

            return;
        }

        if (Stopped() || _cost + _sums.AtLeast(Math.Max(_material * _problem.PerRoom, _worth)) >= _bestCost * (1 - CuttingProblem.Same))
        {
            return;
        }

        foreach (int bar in _barsByCost)
        {
            double room = _problem.Rooms[bar] - _problem.Sizes[lead];
            if (_supply[bar] == 0 || room < 0)
            {
                continue;
            }

            int[] counts = new int[_remaining.Length];
            int limited = _supply[bar] < int.MaxValue ? 1 : 0;
            _supply[bar] -= limited;
            _cost += _problem.Bars[bar];
            _chosen.Add((bar, counts));
            Take(lead, 1, counts);
            Fill(lead, lead, room, counts);
            Take(lead, -1, counts);
            _chosen.RemoveAt(_chosen.Count - 1);
            _cost -= _problem.Bars[bar];
            _supply[bar] += limited;
        }

        if (_problem.IsLimited)
        {
            _leftOut[lead]++;
            _cost += _problem.Penalty;
            Take(lead, 1, null);
            NextBar(lead);
            Take(lead, -1, null);
            _cost -= _problem.Penalty;
            _leftOut[lead]--;
        }
    }

    /// <summary>All ways to go on filling the bar with kinds from one on.</summary>
    private void Fill(int lead, int kind, double room, int[] counts)
    {
        while (kind < _remaining.Length && (_remaining[kind] == 0 || _problem.Sizes[kind] > room))
        {
            kind++;
        }

        if (kind == _remaining.Length)
        {
            if (IsFull(room) && IsInOrder(lead, counts))
            {
                NextBar(lead);
            }

            return;
        }

        if (Stopped())
        {
            return;
        }

        int most = (int)Math.Min(_remaining[kind], Math.Floor(room / _problem.Sizes[kind]));
        for (int n = most; n >= 0 && _steps > 0; n--)
        {
            Take(kind, n, counts);
            Fill(lead, kind + 1, room - n * _problem.Sizes[kind], counts);
            Take(kind, -n, counts);
        }
    }

    private bool IsFull(double room)
    {
        for (int i = _remaining.Length - 1; i >= 0; i--)
        {
            if (_remaining[i] > 0)
            {
                return _problem.Sizes[i] > room;
            }
        }

        return true;
    }

    private bool IsInOrder(int lead, int[] counts)
    {
        if (_chosen.Count < 2 || _chosen[_chosen.Count - 2].Bar != _chosen[_chosen.Count - 1].Bar)
        {
            return true;
        }

        int[] before = _chosen[_chosen.Count - 2].Counts;
        for (int i = 0; i < lead; i++)
        {
            if (before[i] > 0)
            {
                return true;
            }
        }

        for (int i = lead; i < counts.Length; i++)
        {
            if (counts[i] != before[i])
            {
                return counts[i] < before[i];
            }
        }

        return true;
    }

    private void Take(int kind, int count, int[]? counts)
    {
        _remaining[kind] -= count;
        _material -= count * _problem.Sizes[kind];
        _worth -= count * _prices[kind];
        if (counts is not null)
        {
            counts[kind] += count;
        }
    }
}
