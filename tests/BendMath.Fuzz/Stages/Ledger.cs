namespace BendMath.Fuzz.Stages;

/// <summary>Counts kinds by group.</summary>
internal sealed class Ledger
{
    private readonly SortedDictionary<string, SortedDictionary<string, int>> _groups = new(StringComparer.Ordinal);

    public IEnumerable<KeyValuePair<string, SortedDictionary<string, int>>> Groups => _groups;

    /// <summary>Makes a kind known, so that it is printed though it never comes.</summary>
    public void Expect(string group, string kind) => Count(group, kind, 0);

    public void Count(string group, string kind, int times = 1)
    {
        if (!_groups.TryGetValue(group, out SortedDictionary<string, int>? kinds))
        {
            _groups[group] = kinds = new(StringComparer.Ordinal);
        }

        kinds[kind] = kinds.GetValueOrDefault(kind) + times;
    }
}
