using System.Collections;
using BendMath.Guards;

namespace BendMath;

/// <summary>The dies a shop has, in ascending order of stamped radius, each name once. Immutable and thread-safe.</summary>
public sealed class DieRack : IReadOnlyList<Die>
{
    private readonly Die[] _dies;

    /// <summary>Makes a rack.</summary>
    /// <param name="dies">At least one die; no two of the same name.</param>
    /// <exception cref="ArgumentNullException">The dies or one of them are null.</exception>
    /// <exception cref="ArgumentException">There is no die, or a name occurs twice.</exception>
    public DieRack(IEnumerable<Die> dies)
    {
        _dies = [.. Guard.NotNull(dies, nameof(dies)).Select(die => Guard.NotNull(die, nameof(dies))).OrderBy(die => die.Stamp)];
        if (_dies.Length == 0)
        {
            throw Guard.Refused(nameof(dies), "must hold at least one die");
        }

        IGrouping<string, Die>? twice = _dies.GroupBy(die => die.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1);
        if (twice is not null)
        {
            throw Guard.Refused(nameof(dies), "must have different names", $"\"{twice.Key}\" occurs {twice.Count()} times");
        }
    }

    /// <summary>Number of dies.</summary>
    public int Count => _dies.Length;

    /// <summary>The die at a place in the order of stamped radius.</summary>
    /// <param name="index">From zero to one less than the count.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public Die this[int index] => index >= 0 && index < _dies.Length
        ? _dies[index]
        : throw Guard.OutOfRange(nameof(index), $"must be from 0 to {_dies.Length - 1}", $"is {index}");

    /// <summary>The die of a name, or null.</summary>
    /// <param name="name">The name as the shop calls it.</param>
    public Die? Find(string name) => Array.Find(_dies, die => string.Equals(die.Name, name, StringComparison.Ordinal));

    /// <inheritdoc/>
    public IEnumerator<Die> GetEnumerator() => ((IEnumerable<Die>)_dies).GetEnumerator();

    /// <summary>How many dies.</summary>
    public override string ToString() => $"rack of {Counted.Text(_dies.Length, "die")}";

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
