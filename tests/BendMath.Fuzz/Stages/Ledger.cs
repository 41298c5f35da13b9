namespace BendMath.Fuzz.Stages;

/// <summary>Counts kinds by group.</summary>
internal sealed class Ledger
{
    private readonly SortedDictionary<string, SortedDictionary<string, int>> _groups = new(StringComparer.Ordinal);

    public IEnumerable<KeyValuePair<string, SortedDictionary<string, int>>> Groups => _groups;

    public int Of(string group, string kind) =>
        _groups.TryGetValue(group, out SortedDictionary<string, int>? kinds) ? kinds.GetValueOrDefault(kind) : 0;

    /// <summary>Counts a kind; by zero times it becomes known, and is printed though it never comes.</summary>
    public void Count(string group, string kind, int times = 1)
    {
        if (!_groups.TryGetValue(group, out SortedDictionary<string, int>? kinds))
        {
            _groups[group] = kinds = new(StringComparer.Ordinal);
        }

        kinds[kind] = kinds.GetValueOrDefault(kind) + times;
    }
}
