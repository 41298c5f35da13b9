using System.Globalization;
using BendMath.Json.Words;
using BendMath.Lengths;
using UnitsNet;

namespace BendMath.Json.Parts;

internal sealed partial class JobObject
{
    /// <summary>A text that is not blank.</summary>
    public string? Text(string name, string example) => TextOf(Require(name, example), name, example);

    public string? OptionalText(string name, string example) => TextOf(Find(name), name, example);

    /// <summary>One of the allowed words.</summary>
    public string? Word(string name, params string[] allowed) => WordOf(Require(name, $"\"{name}\": \"{allowed[0]}\""), name, allowed);

    public string? OptionalWord(string name, params string[] allowed) => WordOf(Find(name), name, allowed);

    public Length? Length(string name, string example, bool zero = false) =>
        LengthOf(Require(name, $"\"{name}\": \"{example}\""), name, example, zero);

    public Length? OptionalLength(string name, string example, bool zero = false) => LengthOf(Find(name), name, example, zero);

    public Pressure? Pressure(string name, string example) =>
        QuantityOf(Require(name, $"\"{name}\": \"{example}\""), name, UnitText.Pressures, example) is { } value
        ? UnitsNet.Pressure.FromPascals(value)
        : null;

    public Pressure? OptionalPressure(string name, string example, bool orZero = false) =>
        QuantityOf(Find(name), name, UnitText.Pressures, example, orZero) is { } value
        ? UnitsNet.Pressure.FromPascals(value)
        : null;

    /// <summary>Two pressures in a list, or null.</summary>
    public (Pressure Low, Pressure High)? OptionalPressures(string name)
    {
        JsonPart? part = Find(name);
        if (part is null)
        {
            return null;
        }

        if (part is not { Kind: JsonKind.List, Items.Count: 2 })
        {
            string found = part.Kind == JsonKind.List ? Invariant($"a list of {part.Items.Count}") : part.Described;
            Fault(name,
                $"\"{name}\" must be the lowest and the highest in square brackets, as [\"235 MPa\", \"355 MPa\"], but is {found}.");
            return null;
        }

        double? low = QuantityOf(part.Items[0], $"{name}[0]", UnitText.Pressures, "235 MPa");
        double? high = QuantityOf(part.Items[1], $"{name}[1]", UnitText.Pressures, "355 MPa");
        return low is { } from && high is { } to ? (UnitsNet.Pressure.FromPascals(from), UnitsNet.Pressure.FromPascals(to)) : null;
    }

    public Density? Density(string name, string example) =>
        QuantityOf(Require(name, $"\"{name}\": \"{example}\""), name, UnitText.Densities, example) is { } value
        ? UnitsNet.Density.FromKilogramsPerCubicMeter(value)
        : null;

    public Ratio? OptionalPercent(string name, string example) => QuantityOf(Find(name), name, UnitText.Percents, example) is { } value
        ? Ratio.FromDecimalFractions(value)
        : null;

    public Force? Force(string name, string example) =>
        QuantityOf(Require(name, $"\"{name}\": \"{example}\""), name, UnitText.Forces, example) is { } value
        ? UnitsNet.Force.FromNewtons(value)
        : null;

    public Force? OptionalForce(string name, string example) => QuantityOf(Find(name), name, UnitText.Forces, example) is { } value
        ? UnitsNet.Force.FromNewtons(value)
        : null;

    public double? OptionalMultiple(string name, string example) => QuantityOf(Find(name), name, UnitText.Multiples, example);

    /// <summary>A plain number, without quotes.</summary>
    public double? OptionalNumber(string name, string example)
    {
        if (Find(name) is not { } part)
        {
            return null;
        }

        if (part.Kind == JsonKind.Number && double.TryParse(part.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && value - value == 0)
        {
            return value;
        }

        Fault(name, $"\"{name}\" must be a plain number without quotes, as {example}, but is {part.Described}.");
        return null;
    }

    /// <summary>How many: a whole number without quotes, 1 or more.</summary>
    public int? OptionalCount(string name)
    {
        if (Find(name) is not { } part)
        {
            return null;
        }

        if (part.Kind == JsonKind.Number && int.TryParse(part.Text, NumberStyles.None, CultureInfo.InvariantCulture, out int count)
            && count > 0)
        {
            return count;
        }

        Fault(name, $"\"{name}\" must be a whole number without quotes, 1 or more, as {{ \"{name}\": 4 }}, but is {part.Described}.");
        return null;
    }

    /// <summary>An angle in radians where a word may stand instead.</summary>
    public double? Angle(JsonPart? part, string name, string example) => QuantityOf(part, name, UnitText.Angles, example);

    private string? TextOf(JsonPart? part, string name, string example)
    {
        if (part is null)
        {
            return null;
        }

        if (part.Kind != JsonKind.Text)
        {
            Fault(name, $"\"{name}\" must be text in quotes, as {example}, but is {part.Described}.");
            return null;
        }

        if (part.Text.Trim().Length == 0)
        {
            Fault(name, $"\"{name}\" must not be empty; write for example {example}.");
            return null;
        }

        if (part.Text.Any(char.IsControl))
        {
            Fault(name, $"\"{name}\" must be one line of printable characters, but is {part.Described}.");
            return null;
        }

        return part.Text.Trim();
    }

    private string? WordOf(JsonPart? part, string name, string[] allowed)
    {
        if (part is null || (part.Kind == JsonKind.Text && allowed.Contains(part.Text)))
        {
            return part?.Text;
        }

        Fault(name, $"\"{name}\" must be {Listing.Listed(allowed, "or")}, but is {part.Described}.");
        return null;
    }

    private Length? LengthOf(JsonPart? part, string name, string example, bool zero)
    {
        if (part is null)
        {
            return null;
        }

        if (part.Kind != JsonKind.Text)
        {
            Fault(name, $"\"{name}\" must be a length with its unit in quotes, as \"{example}\", but is {part.Described}.");
            return null;
        }

        if (!LengthText.TryParse(part.Text, out Length length, out string? fault))
        {
            Fault(name, fault!);
            return null;
        }

        if (length.Meters == 0 && !zero)
        {
            Fault(name, $"\"{name}\" must be greater than zero, but is {part.Described}.");
            return null;
        }

        return length;
    }

    private double? QuantityOf(JsonPart? part, string name, UnitText units, string example, bool orZero = false)
    {
        if (part is null)
        {
            return null;
        }

        if (part.Kind != JsonKind.Text)
        {
            FaultIn(part, name, $"\"{name}\" must be {units.What} with its unit in quotes, as \"{example}\", but is {part.Described}.");
            return null;
        }

        if (units.Read(part.Text, out double value, orZero) is { } fault)
        {
            FaultIn(part, name, $"\"{name}\" {fault}, but is {part.Described}.");
            return null;
        }

        return value;
    }
}
