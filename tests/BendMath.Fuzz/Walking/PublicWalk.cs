using System.Collections;
using System.Collections.Concurrent;
using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace BendMath.Fuzz.Walking;

/// <summary>
/// Reads every public property of a value, and of what they hand out, down to plain ones: each number must be finite, each text free of
/// control characters, each object must print itself, and no property may throw what its documentation does not promise. What was read once
/// is not read again.
/// </summary>
/// <param name="mayThrow">Whether the documentation of a property promises an exception.</param>
/// <param name="readsTexts">Whether texts are read too, and objects asked to print themselves.</param>
internal sealed class PublicWalk(Func<PropertyInfo, Exception, bool> mayThrow, bool readsTexts = true)
{
    private const int MostNested = 30;

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Properties = new();

    private readonly HashSet<object> _seen = new(ReferenceEqualityComparer.Instance);

    private readonly List<string> _path = [];

    /// <summary>How many objects were read.</summary>
    public int Objects => _seen.Count;

    /// <summary>How often a chain of objects was too long to be followed to its end.</summary>
    public int Cut { get; private set; }

    /// <summary>The first fault of a value, with the way to it; null when there is none.</summary>
    public string? FaultOf(object? value)
    {
        switch (value)
        {
            case null or Enum or bool or int or ulong or Type:
                return null;
            case string text:
                return readsTexts ? OfText(text, "holds") : null;
            case double number:
                return double.IsFinite(number) ? null : Fault(FormattableString.Invariant($"is {number}"));
            case IQuantity quantity:
                return double.IsFinite((double)quantity.Value) ? null : Fault(FormattableString.Invariant($"is {(double)quantity.Value}"));
            case ITuple tuple:
                return First(Enumerable.Range(0, tuple.Length), i => Inside($".Item{i + 1}", tuple[i]));
        }

        Type type = value.GetType();
        if (!type.IsValueType && !_seen.Add(value))
        {
            return null;
        }

        if (_path.Count > MostNested)
        {
            Cut++;
            return null;
        }

        return IsOurs(type) ? OfObject(value, type) ?? (value is IEnumerable own ? OfItems(own) : null)
            : value is IEnumerable items ? OfItems(items) : null;
    }

    private string? OfItems(IEnumerable items)
    {
        int i = 0;
        foreach (object? item in items)
        {
            if (Inside($"[{i++}]", item) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    private string? OfObject(object value, Type type)
    {
        try
        {
            if (readsTexts && OfText(value.ToString() ?? string.Empty, "prints itself as") is { } fault)
            {
                return fault;
            }
        }
        catch (Exception thrown)
        {
            return Fault($"does not print itself, {thrown.GetType().Name}: {thrown.Message}");
        }

        return First(Properties.GetOrAdd(type, Readable), property => OfProperty(value, property));
    }

    private string? OfProperty(object owner, PropertyInfo property)
    {
        object? value;
        try
        {
            value = property.GetValue(owner, BindingFlags.DoNotWrapExceptions, null, null, null);
        }
        catch (Exception thrown)
        {
            return mayThrow(property, thrown) ? null : Fault($".{property.Name} throws {thrown.GetType().Name}: {thrown.Message}");
        }

        // What is left of an arc has a rest again, and so on: of its own kind, what a property hands out is followed once.
        return value is not null && value.GetType() == owner.GetType() && _path.Count > 0 && _path[^1] == "." + property.Name ? null
            : Inside("." + property.Name, value);
    }

    private string? Inside(string step, object? value)
    {
        _path.Add(step);
        string? fault = FaultOf(value);
        _path.RemoveAt(_path.Count - 1);
        return fault;
    }

    private string? OfText(string text, string how) =>
        text.Any(char.IsControl)
            ? Fault(
                $"{how} a control character: {string.Concat(text.Select(letter => char.IsControl(letter) ? $"\\u{(int)letter:x4}" : letter.ToString()))}") : null;

    private string Fault(string what) => string.Concat(_path) + (what.StartsWith('.') ? what : " " + what);

    private static string? First<T>(IEnumerable<T> items, Func<T, string?> fault) =>
        items.Select(fault).FirstOrDefault(found => found is not null);

    private static PropertyInfo[] Readable(Type type) =>
        [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetMethod is { IsPublic: true } && property.GetIndexParameters().Length == 0)];

    private static bool IsOurs(Type type) => type.Assembly.GetName().Name!.StartsWith("BendMath", StringComparison.Ordinal);
}
