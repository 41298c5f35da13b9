using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace BendMath.Tests;

/// <summary>
/// A table of published values beside the tests, such as <c>Handbook/angles-en.csv</c>. The first row names the columns;
/// lines that start with <c>#</c> are remarks. Numbers have a decimal point, whatever the culture of the run.
/// </summary>
public sealed class ReferenceTable
{
    private readonly string[] _columns;

    private ReferenceTable(string path, string[] columns, IReadOnlyList<ReferenceRow> rows)
    {
        Path = path;
        _columns = columns;
        Rows = rows;
    }

    public string Path { get; }

    public IReadOnlyList<string> Columns => _columns;

    public IReadOnlyList<ReferenceRow> Rows { get; }

    /// <summary>Reads a table copied beside the tests; a missing file or an empty table is an error.</summary>
    /// <param name="path">Below the test project, for example <c>Handbook/angles-en.csv</c>.</param>
    public static ReferenceTable Load(string path)
    {
        string file = System.IO.Path.Combine(AppContext.BaseDirectory, path);
        using StreamReader reader = new(file);
        return Parse(reader, path);
    }

    public static ReferenceTable Parse(TextReader reader, string path)
    {
        CsvConfiguration configuration = new(CultureInfo.InvariantCulture)
        {
            AllowComments = true,
            TrimOptions = TrimOptions.Trim,
            BadDataFound = context => throw new FormatException($"{path}: bad quoting in '{context.RawRecord}'."),
        };
        using CsvReader csv = new(reader, configuration);
        if (!csv.Read() || !csv.ReadHeader() || csv.HeaderRecord is not { Length: > 0 } columns)
        {
            throw new FormatException($"{path} has no header row.");
        }

        if (columns.Distinct(StringComparer.Ordinal).Count() != columns.Length)
        {
            throw new FormatException($"{path} names a column twice: {string.Join(", ", columns)}.");
        }

        List<ReferenceRow> rows = [];
        while (csv.Read())
        {
            string[] cells = csv.Parser.Record ?? [];
            int line = csv.Parser.RawRow;
            rows.Add(cells.Length == columns.Length
                ? new ReferenceRow(path, line, columns, cells)
                : throw new FormatException($"{path} line {line} has {cells.Length} cells, the header {columns.Length}."));
        }

        return rows.Count > 0 ? new(path, columns, rows) : throw new FormatException($"{path} has no rows.");
    }

    /// <summary>The rows as theory data, each under its own name in the report.</summary>
    public TheoryData<ReferenceRow> AsTheory() => new(Rows);

    /// <summary>The rows that satisfy a condition, at least one of them.</summary>
    public IReadOnlyList<ReferenceRow> Where(Func<ReferenceRow, bool> condition)
    {
        ReferenceRow[] found = [.. Rows.Where(condition)];
        return found.Length > 0 ? found : throw new InvalidOperationException($"No row of {Path} satisfies the condition.");
    }
}
