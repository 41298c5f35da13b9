using BendMath.Json.Parts;
using BendMath.Json.Writing;
using UnitsNet;

namespace BendMath.Json.Words;

/// <summary>A number of a shape or a law: its word, the parameter it is given to, and how it is read and got back.</summary>
/// <typeparam name="T">The type that has the number.</typeparam>
internal sealed class NumberWord<T>
{
    private readonly Func<JobObject, double?> _read;

    private readonly Func<T, double> _of;

    private readonly Func<double, string>? _write;

    private NumberWord(string word, string parameter, Func<JobObject, double?> read, Func<T, double> of, Func<double, string>? write)
    {
        Word = word;
        Parameter = parameter;
        _read = read;
        _of = of;
        _write = write;
    }

    public string Word { get; }

    public string Parameter { get; }

    /// <summary>A dimension greater than zero, in meters.</summary>
    public static NumberWord<T> Length(string word, string parameter, string example, Func<T, Length> of) =>
        new(word, parameter, file => file.Length(word, example)?.Meters, owner => of(owner).Meters, ExactText.Millimeters);

    /// <summary>A stress greater than zero, or zero where that is said, in pascals.</summary>
    public static NumberWord<T> Stress(string word, string parameter, string example, Func<T, Pressure> of, bool orZero = false) =>
        new(
            word,
            parameter,
            file =>
                (file.Require(word, $"\"{word}\": \"{example}\"") is null ? null : file.OptionalPressure(word, example, orZero))?.Pascals,
            owner => of(owner).Pascals,
            ExactText.Megapascals);

    /// <summary>A number without a unit.</summary>
    public static NumberWord<T> Plain(string word, string parameter, string example, Func<T, double> of) =>
        new(word, parameter, file => file.Require(word, $"\"{word}\": {example}") is null ? null : file.OptionalNumber(word, example), of,
            null);

    /// <summary>The number in SI units, or null after a fault.</summary>
    public double? Read(JobObject file) => _read(file);

    /// <summary>The number with its unit, or by itself where it has none.</summary>
    public WrittenNumber Write(T owner) => new(Word, _of(owner), _write);
}

/// <summary>A number as it stands in a file.</summary>
internal readonly struct WrittenNumber(string word, double value, Func<double, string>? text)
{
    public string Word { get; } = word;

    public void To(System.Text.Json.Utf8JsonWriter json)
    {
        if (text is null)
        {
            json.WriteNumber(Word, value);
        }
        else
        {
            json.WriteString(Word, text(value));
        }
    }
}
