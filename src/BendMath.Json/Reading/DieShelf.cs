namespace BendMath.Json.Reading;

/// <summary>
/// The dies of a file by name: the sound ones, and the names of all, because a ring bent on a faulty die names no unknown one.
/// </summary>
internal sealed class DieShelf
{
    private readonly Dictionary<string, Die?> _dies = new(StringComparer.Ordinal);

    private readonly List<string> _names = [];

    private readonly List<Die> _sound = [];

    public IReadOnlyList<Die> Sound => _sound;

    public IReadOnlyList<string> Names => _names;

    /// <summary>Keeps the name of a die; false when another has it.</summary>
    public bool Reserve(string name)
    {
        if (_dies.ContainsKey(name))
        {
            return false;
        }

        _dies.Add(name, null);
        _names.Add(name);
        return true;
    }

    public void Add(Die die)
    {
        _dies[die.Name] = die;
        _sound.Add(die);
    }

    public bool Knows(string name) => _dies.ContainsKey(name);

    public Die? Find(string? name) => name is not null && _dies.TryGetValue(name, out Die? die) ? die : null;
}
