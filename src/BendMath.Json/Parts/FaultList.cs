namespace BendMath.Json.Parts;

/// <summary>Collects the faults of a file.</summary>
internal sealed class FaultList
{
    private readonly List<JsonFault> _faults = [];

    public int Count => _faults.Count;

    public IReadOnlyList<JsonFault> Sorted => [.. _faults.OrderBy(fault => fault.Line ?? 0)];

    public void Add(string place, int? line, string rule) => _faults.Add(new(place, line, rule));
}
