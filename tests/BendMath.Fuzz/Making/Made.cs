using System.Globalization;
using System.Reflection;
using UnitsNet;

namespace BendMath.Fuzz.Making;

/// <summary>A value with how it was made: by a call on other made values, or written down as it is. Prints itself as C#.</summary>
internal sealed class Made
{
    private readonly MemberInfo? _door;

    private readonly Made? _on;

    private readonly (ParameterInfo? Parameter, Made Value)[] _arguments;

    private readonly string? _text;

    private Made(object? value, string? text, MemberInfo? door, Made? on, (ParameterInfo?, Made)[] arguments)
    {
        Value = value;
        _text = text;
        _door = door;
        _on = on;
        _arguments = arguments;
    }

    public object? Value { get; }

    /// <summary>What the member that made the value was called on, or null.</summary>
    public Made? On => _on;

    /// <summary>The member that made the value, or null.</summary>
    public MemberInfo? Door => _door;

    public IReadOnlyList<Made> Arguments => [.. _arguments.Select(argument => argument.Value)];

    public static Made Of(object? value) => new(value, Text(value), null, null, []);

    public static Made From(object? value, MemberInfo door, Made? on, (ParameterInfo? Parameter, Made Value)[] arguments) =>
        new(value, null, door, on, arguments);

    public static Made ListOf(Type element, IReadOnlyList<Made> items)
    {
        Array list = Array.CreateInstance(element, items.Count);
        for (int i = 0; i < items.Count; i++)
        {
            list.SetValue(items[i].Value, i);
        }

        return new(list, null, null, null, [.. items.Select(item => ((ParameterInfo?)null, item))]);
    }

    /// <summary>One of a list that another made value hands out.</summary>
    public static Made ItemOf(Made on, PropertyInfo list, int index) =>
        new(((System.Collections.IList)list.GetValue(on.Value)!)[index], $".{list.Name}[{index}]", null, on, []);

    /// <summary>One of a made list.</summary>
    public static Made ItemOf(Made list, int index) =>
        new(((System.Collections.IEnumerable)list.Value!).Cast<object>().ElementAt(index), $"[{index}]", null, list, []);

    /// <summary>C# that makes the value again; what is used twice stands in a line of its own.</summary>
    public string ToCode(string name)
    {
        Dictionary<Made, int> uses = new(ReferenceEqualityComparer.Instance);
        Count(uses);
        List<string> lines = [];
        Dictionary<Made, string> names = new(ReferenceEqualityComparer.Instance);
        string last = Code(uses, names, lines);
        return string.Join(Environment.NewLine, [.. lines, $"var {name} = {last};"]);
    }

    public override string ToString() => ToCode("value");

    private bool IsWorthAName => _text is null && (_arguments.Length > 0 || _on is not null);

    private void Count(Dictionary<Made, int> uses)
    {
        uses[this] = uses.GetValueOrDefault(this) + 1;
        if (uses[this] > 1)
        {
            return;
        }

        _on?.Count(uses);
        foreach ((_, Made value) in _arguments)
        {
            value.Count(uses);
        }
    }

    private string Code(Dictionary<Made, int> uses, Dictionary<Made, string> names, List<string> lines)
    {
        if (names.TryGetValue(this, out string? known))
        {
            return known;
        }

        string code = Expression(made => made.Code(uses, names, lines));
        if (uses[this] < 2 || !IsWorthAName)
        {
            return code;
        }

        string type = Value?.GetType().Name ?? "value";
        string name =
            $"{char.ToLowerInvariant(type[0])}{type[1..]}{(names.Values.Any(other => other.StartsWith($"{char.ToLowerInvariant(type[0])}{type[1..]}", StringComparison.Ordinal)) ? names.Count + 1 : string.Empty)}";
        names[this] = name;
        lines.Add($"var {name} = {code};");
        return name;
    }

    private string Expression(Func<Made, string> code)
    {
        if (_door is null)
        {
            return _on is not null ? code(_on) + _text
                : _text ?? $"[{string.Join(", ", _arguments.Select(argument => code(argument.Value)))}]";
        }

        string arguments =
            string.Join(", ",
                _arguments.Select(
                    argument =>
                        argument.Parameter is { IsOptional: true } named ? $"{named.Name}: {code(argument.Value)}" : code(argument.Value)));
        string target = _on is null ? _door.DeclaringType!.Name : code(_on);
        return _door switch
        {
            ConstructorInfo => $"new {_door.DeclaringType!.Name}({arguments})",
            PropertyInfo => $"{target}.{_door.Name}",
            _ => $"{target}.{_door.Name}({arguments})",
        };
    }

    private static string Text(object? value) => value switch
    {
        null => "null",
        string text => "\"" + string.Concat(text.Select(Escaped)) + "\"",
        bool flag => flag ? "true" : "false",
        double number =>
            number.ToString("R", CultureInfo.InvariantCulture)
                + (double.IsInteger(number) && Math.Abs(number) < 1e15 ? ".0" : string.Empty),
        Enum member => $"{member.GetType().Name}.{member}",
        IQuantity quantity =>
            $"{quantity.GetType().Name}.From{Plural(quantity)}({((double)quantity.Value).ToString("R", CultureInfo.InvariantCulture)})",
        Calibration => "Calibration.None",
        ValueTuple<Ratio, Pressure> pair => $"({Text(pair.Item1)}, {Text(pair.Item2)})",
        System.Collections.IEnumerable list => $"[{string.Join(", ", list.Cast<object>().Select(Text))}]",
        _ => Convert.ToString(value, CultureInfo.InvariantCulture) ?? string.Empty,
    };

    private static string Plural(IQuantity quantity) =>
        quantity.QuantityInfo.UnitInfos.First(unit => unit.Value.Equals(quantity.Unit)).PluralName;

    private static string Escaped(char letter) =>
        letter is '"' or '\\' ? $"\\{letter}" : char.IsControl(letter) ? $"\\u{(int)letter:x4}" : letter.ToString();
}
