using System.Globalization;
using BendMath.Json.Words;

namespace BendMath.Json.Parts;

/// <summary>
/// Reads a number and a unit, such as <c>235 MPa</c>, into SI. Digits and one decimal point only: a comma could mean two things. Capitals
/// of units do not matter.
/// Units: 1 psi = 6894.757 293 168 36 Pa, 1 lb/in³ = 0.453 592 37 kg / (0.0254 m)³, 1 lbf = 4.448 221 615 260 5 N (NIST Special Publication
/// 811, 2008 edition, appendix B, from memory).
/// </summary>
internal sealed class UnitText
{
    private const double Psi = 4.4482216152605 / (0.0254 * 0.0254);

    private readonly (string Unit, double Factor)[] _units;

    private readonly int _shown;

    private UnitText(string what, int shown, params (string Unit, double Factor)[] units)
    {
        What = what;
        _shown = shown;
        _units = units;
    }

    public static UnitText Pressures { get; } = new(
        "a pressure", 5, ("MPa", 1e6), ("GPa", 1e9), ("N/mm2", 1e6), ("ksi", 1e3 * Psi), ("psi", Psi), ("N/mm²", 1e6));

    public static UnitText Densities { get; } = new(
        "a density", 3, ("kg/m3", 1), ("g/cm3", 1e3), ("lb/in3", 0.45359237 / (0.0254 * 0.0254 * 0.0254)), ("kg/m³", 1), ("g/cm³", 1e3),
            ("lb/in³", 0.45359237 / (0.0254 * 0.0254 * 0.0254)));

    public static UnitText Angles { get; } =
        new("an angle", 2, ("deg", Math.PI / 180), ("°", Math.PI / 180), ("degrees", Math.PI / 180), ("rad", 1));

    public static UnitText Percents { get; } = new("a percentage", 1, ("%", 1e-2));

    public static UnitText Forces { get; } = new("a force", 3, ("N", 1), ("kN", 1e3), ("lbf", 4.4482216152605));

    public static UnitText Multiples { get; } = new("a multiple", 1, ("times", 1), ("x", 1), ("×", 1));

    public string What { get; }

    /// <param name="text">A number and a unit.</param>
    /// <param name="value">In SI.</param>
    /// <param name="orZero">Whether nothing at all means something.</param>
    /// <returns>Null when the text can be read; the rule it breaks otherwise.</returns>
    public string? Read(string text, out double value, bool orZero = false)
    {
        value = 0;
        string trimmed = text.Trim();
        int end = 0;
        while (end < trimmed.Length && trimmed[end] is (>= '0' and <= '9') or '.' or ',' or '-' or '+')
        {
            end++;
        }

        string digits = trimmed.Substring(0, end);
        string unit = trimmed.Substring(end).Trim();
        string units = Listing.Listed([.. _units.Take(_shown).Select(pair => pair.Unit)], "or");
        if (digits.Length == 0 || digits.Any(c => c is ',' or '-' or '+')
            || !double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number))
        {
            return $"must be {What}: a plain number with a decimal point where needed, then {units}";
        }

        (string Unit, double Factor) found = Array.Find(_units, pair => string.Equals(pair.Unit, unit, StringComparison.OrdinalIgnoreCase));
        if (found.Unit is null)
        {
            return unit.Length == 0 ? $"must have a unit, {units}" : $"must have the unit {units}";
        }

        value =
            PowerOfTen(found.Factor) is { } power
                ? double.Parse(Invariant($"{digits}E{power}"), NumberStyles.Float, CultureInfo.InvariantCulture) : number * found.Factor;
        return (value > 0 || orZero) && value - value == 0 ? null : $"must be {(orZero ? "zero or more" : "greater than zero")} and finite";
    }

    /// <summary>The power of ten a factor is, or null: moving the point of the digits rounds once, multiplying the number twice.</summary>
    private static int? PowerOfTen(double factor)
    {
        int power = (int)Math.Round(Math.Log10(factor));
        return Math.Pow(10, power) == factor ? power : null;
    }
}
