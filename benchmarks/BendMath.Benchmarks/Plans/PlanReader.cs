using System.Collections;
using System.Reflection;

namespace BendMath.Benchmarks.Plans;

/// <summary>
/// Reads every public property of a plan and of what it hands out, each object once, so that whatever is computed when first asked for is
/// computed.
/// </summary>
internal sealed class PlanReader
{
    private static readonly Dictionary<Type, MethodInvoker[]> Getters = [];

    private readonly HashSet<object> _seen = new(ReferenceEqualityComparer.Instance);

    /// <summary>Number of properties read.</summary>
    public int Count { get; private set; }

    public static int Read(object plan)
    {
        PlanReader reader = new();
        reader.Visit(plan);
        return reader.Count;
    }

    private static MethodInvoker[] GettersOf(Type type)
    {
        if (!Getters.TryGetValue(type, out MethodInvoker[]? getters))
        {
            getters = type.Assembly == typeof(RingPlan).Assembly
                ? [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
                    .Where(
                        property =>
                            property.GetIndexParameters().Length == 0 && property.GetMethod is { IsPublic: true }
                                && property.Name != "EqualityContract")
                    .Select(property => MethodInvoker.Create(property.GetMethod!))]
                : [];
            Getters.Add(type, getters);
        }

        return getters;
    }

    private void Visit(object? value)
    {
        if (value is null or string || value.GetType() is { IsPrimitive: true } or { IsEnum: true })
        {
            return;
        }

        Type type = value.GetType();
        if (value is IEnumerable items)
        {
            if (_seen.Add(value))
            {
                foreach (object? item in items)
                {
                    Visit(item);
                }
            }

            return;
        }

        MethodInvoker[] getters = GettersOf(type);
        if (getters.Length == 0 || (!type.IsValueType && !_seen.Add(value)))
        {
            return;
        }

        foreach (MethodInvoker getter in getters)
        {
            Count++;
            Visit(getter.Invoke(value));
        }
    }
}
