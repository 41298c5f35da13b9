namespace BendMath.Csv;

/// <summary>One thing wrong with a CSV file: the row, the column and what is wrong, with the value. Immutable and thread-safe.</summary>
public sealed record CsvFault
{
    internal CsvFault(int? row, string? column, string rule)
    {
        Row = row;
        Column = column;
        Rule = rule;
    }

    /// <summary>The row as a spreadsheet counts it, the header being row 1; null for the file as a whole.</summary>
    public int? Row { get; }

    /// <summary>The column by its heading without the unit; null for the row as a whole.</summary>
    public string? Column { get; }

    /// <summary>What is wrong, in one sentence with the value.</summary>
    public string Rule { get; }

    /// <summary>Row, column and sentence.</summary>
    public override string ToString() => Row is not { } row ? Rule
        : Column is null ? Invariant($"row {row}: {Rule}")
        : Invariant($"row {row}, {Column}: {Rule}");
}
