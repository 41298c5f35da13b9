using System.Globalization;
using UnitsNet;

namespace BendMath.Tests.Conventions;

/// <summary>What a refusal says: the rule that was broken, and the value with its unit.</summary>
internal static class RefusalRules
{
    private static readonly string[] RuleWords = [" must ", " has ", " is ", " does not ", " needs "];

    /// <summary>
    /// The units messages speak in, as multiples of the base unit UnitsNet converts to, set down here a second time: a table of the library
    /// would agree with itself.
    /// </summary>
    private static readonly Dictionary<Type, (double Si, string Symbol)> Units = new()
    {
        [typeof(Length)] = (1e-3, " mm"),
        [typeof(Pressure)] = (1e6, " MPa"),
        [typeof(Angle)] = (1, "°"),
        [typeof(Torque)] = (1, " N·m"),
        [typeof(Force)] = (1, " N"),
        [typeof(Density)] = (1, " kg/m³"),
        [typeof(AreaMomentOfInertia)] = (1e-12, " mm⁴"),
        [typeof(ForcePerLength)] = (1e3, " N/mm"),
        [typeof(ReciprocalLength)] = (1, " m⁻¹"),
        [typeof(Ratio)] = (1e-2, " %"),
    };

    public static string? Fault(ArgumentException refused, object? value)
    {
        string sentence = refused.Message.Replace($" (Parameter '{refused.ParamName}')", string.Empty, StringComparison.Ordinal);
        return !RuleWords.Any(word => sentence.Contains(word, StringComparison.Ordinal)) ? "without a rule"
            : Texts(value) is { Length: > 0 } texts && !texts.Any(text => sentence.Contains(text, StringComparison.Ordinal))
                ? $"without the value, {texts[0]}"
            : null;
    }

    /// <summary>
    /// How the value may stand in the sentence; none where a list, an object or a blank text says nothing in a few words.
    /// </summary>
    private static string[] Texts(object? value) => value switch
    {
        double number => [Text(number)],
        int number => [number.ToString(CultureInfo.InvariantCulture)],
        Enum member => [member.ToString("D"), member.ToString()],
        string text => string.IsNullOrWhiteSpace(text) || text.Length > 20 || text.Any(char.IsControl) ? [] : [$"\"{text}\"", $"'{text}'"],
        IQuantity quantity => Texts(quantity),
        _ => [],
    };

    private static string[] Texts(IQuantity quantity)
    {
        int unit = Convert.ToInt32(quantity.Unit, CultureInfo.InvariantCulture);
        if (!Enum.IsDefined(quantity.Unit.GetType(), quantity.Unit))
        {
            return [$"its unit is {unit.ToString(CultureInfo.InvariantCulture)}"];
        }

        (double si, string symbol) = Units[quantity.GetType()];
        double number = (double)quantity.As(quantity.QuantityInfo.BaseUnitInfo.Value) / si;

        // The smallest double of all is zero once it is converted.
        return Math.Abs(number) < 1e-300 ? [Text(number) + symbol, Text(0) + symbol] : [Text(number) + symbol];
    }

    private static string Text(double number) => (number + 0.0).ToString("G12", CultureInfo.InvariantCulture);
}
