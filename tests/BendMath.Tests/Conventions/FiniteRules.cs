using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace BendMath.Tests.Conventions;

/// <summary>Looks through a result, its properties and theirs, for a number that is none. What was looked at once is not looked at again.</summary>
internal sealed class FiniteRules(DocumentationFile documentation)
{
    private const int MaximumDepth = 8;

    private const int MaximumItems = 500;

    private readonly HashSet<object> _seen = new(ReferenceEqualityComparer.Instance);

    public IEnumerable<string> Faults(object? value, string path, int depth = 0)
    {
        switch (value)
        {
            case null or string or Enum or bool or int or Type:
                return [];
            case double number:
                return double.IsFinite(number) ? [] : [$"{path} is {number.ToString(CultureInfo.InvariantCulture)}"];
            case IQuantity quantity:
                return Faults((double)quantity.Value, path, depth);
            case ITuple tuple:
                return Enumerable.Range(0, tuple.Length).SelectMany(i => Faults(tuple[i], $"{path}.Item{i + 1}", depth));
        }

        if (depth > MaximumDepth || (!value.GetType().IsValueType && !_seen.Add(value)))
        {
            return [];
        }

        return value is IEnumerable items
            ? items.Cast<object?>().Take(MaximumItems).SelectMany((item, i) => Faults(item, $"{path}[{i}]", depth + 1))
            : IsOurs(value.GetType()) ? value.GetType().GetProperties().SelectMany(property => OfProperty(value, property, path, depth)) : [];
    }

    private IEnumerable<string> OfProperty(object owner, PropertyInfo property, string path, int depth)
    {
        if (property.GetIndexParameters().Length > 0 || property.GetMethod is not { IsStatic: false })
        {
            return [];
        }

        string place = $"{path}.{property.Name}";
        try
        {
            return Faults(property.GetValue(owner), place, depth + 1);
        }
        catch (TargetInvocationException wrapped) when (wrapped.InnerException is { } thrown)
        {
            return thrown is InvalidOperationException && documentation.Promises(property, thrown.GetType())
                ? []
                : [$"{place} throws {thrown.GetType().Name}: {thrown.Message}"];
        }
    }

    private static bool IsOurs(Type type) => type.Assembly.GetName().Name!.StartsWith("BendMath", StringComparison.Ordinal);
}
