using System.Globalization;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Conventions;

/// <summary>Values a parameter must refuse or survive.</summary>
internal static class BadValues
{
    private static readonly double[] Numbers =
        [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0, -1, 1e300, -1e300, 1e-300, double.Epsilon];

    private static readonly double[] FiniteNumbers = [.. Numbers.Where(double.IsFinite)];

    private static readonly string?[] Texts = [null, string.Empty, " ", "NaN", "∞", "-1 mm", "1e400", "1/0 in", "\0", new('9', 400)];

    /// <summary>Objects any constructor accepts and no shop has: what refuses them must blame them, not something made from them.</summary>
    private static readonly object[] Extremes =
    [
        BendRadius.Inside(Length.FromMillimeters(0.001)),
        BendRadius.Inside(Length.FromMeters(1e6)),
        BendRadius.OutsideDiameter(Length.FromMillimeters(0.002)),
        BendRadius.OutsideDiameter(Length.FromMeters(1e6)),
        new Die("speck", Length.FromMillimeters(0.001), ReferenceFace.InsideOfBar),
        new Die("swallowed", Length.FromMillimeters(1), ReferenceFace.OutsideOfBar),
        new Die("horizon", Length.FromMeters(1e6), ReferenceFace.InsideOfBar),
        new ThreePointSetup(Length.FromMillimeters(0.001), Length.Zero),
        new ThreePointSetup(Length.FromMillimeters(100), Length.FromMillimeters(0.001)),
        new ThreePointSetup(Length.FromMeters(1e6), Length.FromMeters(1e6)),
        .. new[] { 0.001, 0.5, 1e9 }.SelectMany(
            inside => new[] { ExampleValues.JobFor(inside, new WrapBending()), ExampleValues.JobFor(inside, ExampleValues.Pinching) }),
    ];

    public static IEnumerable<object?> Of(Type parameterType)
    {
        Type type = Nullable.GetUnderlyingType(parameterType) ?? parameterType;
        if (type == typeof(double))
        {
            return Numbers.Cast<object?>();
        }

        if (type == typeof(int))
        {
            return new object?[] { 0, -1, int.MinValue, int.MaxValue };
        }

        if (type == typeof(string))
        {
            return Texts;
        }

        if (type.IsEnum)
        {
            return [Enum.ToObject(type, 999), Enum.ToObject(type, -1)];
        }

        if (typeof(IQuantity).IsAssignableFrom(type) && type.IsValueType)
        {
            return OfQuantity(type);
        }

        if (type.IsValueType)
        {
            return [Activator.CreateInstance(type)];
        }

        return ExampleValues.ElementOf(type) is { } element ? OfList(element) : [null, .. Extremes.Where(type.IsInstanceOfType)];
    }

    public static string Text(object? value) => value switch
    {
        null => "null",
        string text => $"\"{(text.Length > 20 ? text[..20] + "…" : text)}\"",
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        IQuantity quantity => FormattableString.Invariant($"{(double)quantity.Value:R} {quantity.Unit}"),
        Enum member => $"{member.GetType().Name} {member:D}",
        Array list => $"[{string.Join(", ", list.Cast<object?>().Take(3).Select(Text))}]",
        _ => value.ToString() ?? string.Empty,
    };

    private static IEnumerable<object?> OfQuantity(Type type)
    {
        Type unit = type.GetProperty("Unit")!.PropertyType;
        object regular = type.GetProperty("BaseUnit")!.GetValue(null)!;
        return FiniteNumbers.Select(number => Activator.CreateInstance(type, number, regular))
            .Append(Activator.CreateInstance(type))
            .Append(Activator.CreateInstance(type, 1.0, Enum.ToObject(unit, 999)))
            .Append(Activator.CreateInstance(type, 1.0, Enum.ToObject(unit, -1)));
    }

    private static IEnumerable<object?> OfList(Type element)
    {
        yield return null;
        yield return Array.CreateInstance(element, 0);
        foreach (object? bad in Of(element))
        {
            Array one = Array.CreateInstance(element, 1);
            one.SetValue(bad, 0);
            yield return one;
        }
    }
}
