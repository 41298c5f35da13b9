using System.Globalization;
using Xunit.Sdk;

namespace BendMath.Tests;

/// <summary>One row of a <see cref="ReferenceTable"/>; every complaint names file, line and column.</summary>
public sealed class ReferenceRow : IXunitSerializable
{
    private string _path;

    private int _line;

    private string[] _columns;

    private string[] _cells;

    public ReferenceRow()
        : this(string.Empty, 0, [], [])
    {
    }

    internal ReferenceRow(string path, int line, string[] columns, string[] cells)
    {
        _path = path;
        _line = line;
        _columns = columns;
        _cells = cells;
    }

    /// <summary>The text of a cell; empty when the cell is.</summary>
    public string this[string column]
    {
        get
        {
            int index = Array.IndexOf(_columns, column);
            return index >= 0
                ? _cells[index]
                : throw new KeyNotFoundException($"{_path} has no column '{column}'; it has {string.Join(", ", _columns)}.");
        }
    }

    public bool Has(string column) => this[column].Length > 0;

    /// <summary>A number; an empty or malformed cell is an error.</summary>
    public double Number(string column) =>
        double.TryParse(this[column], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : throw new FormatException($"{_path} line {_line}, column '{column}': '{this[column]}' is not a number.");

    /// <summary>A number, or null for an empty cell.</summary>
    public double? NumberOrNull(string column) => Has(column) ? Number(column) : null;

    /// <summary>Half a unit of the last printed digit: what rounding in print alone may make of the exact value.</summary>
    public double PrintRounding(string column)
    {
        string text = this[column];
        double value = Math.Abs(Number(column));
        int exponentAt = text.IndexOfAny(['e', 'E']);
        string mantissa = exponentAt < 0 ? text : text[..exponentAt];
        int exponent = exponentAt < 0 ? 0 : int.Parse(text[(exponentAt + 1)..], CultureInfo.InvariantCulture);
        int point = mantissa.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : mantissa.Length - point - 1;
        return (0.5 * Math.Pow(10, exponent - decimals)) + (1e-12 * value);
    }

    public void Serialize(IXunitSerializationInfo info)
    {
        info.AddValue("path", _path);
        info.AddValue("line", _line);
        info.AddValue("columns", _columns);
        info.AddValue("cells", _cells);
    }

    public void Deserialize(IXunitSerializationInfo info)
    {
        _path = info.GetValue<string>("path")!;
        _line = info.GetValue<int>("line");
        _columns = info.GetValue<string[]>("columns")!;
        _cells = info.GetValue<string[]>("cells")!;
    }

    public override string ToString() =>
        $"{_path}:{_line.ToString(CultureInfo.InvariantCulture)} {string.Join(' ', _cells.Take(6))}";
}
