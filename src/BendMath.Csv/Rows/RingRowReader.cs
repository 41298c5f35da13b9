using System.Globalization;
using System.Text.RegularExpressions;
using BendMath.Guards;
using CsvHelper;
using CsvHelper.Configuration;

namespace BendMath.Csv.Rows;

/// <summary>Turns rows into the JSON of measured rings, has it read, and takes the faults back to their cells.</summary>
internal sealed class RingRowReader
{
    /// <summary>More headings at fault than this are not headings of this table.</summary>
    private const int MostHeadingFaults = 100;

    private static readonly string Known = string.Join(", ", RingColumn.All.Select(one => $"\"{one.Name}\""));

    private readonly List<CsvFault> _faults = [];

    public MeasuredRingCsv Read(string csv)
    {
        string text = csv.TrimStart('\uFEFF');
        bool decimalComma = HasDecimalComma(text);
        List<(int Row, string[] Cells)> records = Records(text, decimalComma);
        if (records.Count == 0)
        {
            return new([], _faults.Count > 0 ? _faults : [new(null, null, "The file is empty.")]);
        }

        (RingColumn Column, string Unit)?[] columns = Columns(records[0]);
        RingDocument document = new(_faults);
        foreach ((int row, string[] cells) in records.Skip(1).Where(record => record.Cells.Any(cell => cell.Length > 0)))
        {
            Dictionary<string, string> values = new(StringComparer.Ordinal);
            int before = _faults.Count;
            if (cells.Skip(columns.Length).FirstOrDefault(cell => cell.Length > 0) is { } beyond)
            {
                _faults.Add(
                    new(row, null,
                        $"The row must not have more cells than the first has headings, {columns.Length}, but holds "
                            + $"\"{Quoted.Short(beyond)}\" behind them."));
            }

            for (int i = 0; i < Math.Min(cells.Length, columns.Length); i++)
            {
                if (columns[i] is { } column && cells[i].Length > 0
                    && Value(row, column.Column, column.Unit, cells[i], decimalComma) is { } value)
                {
                    values[column.Column.Path] = value;
                }
            }

            // A cell that cannot be read would be reported a second time as missing.
            if (_faults.Count == before)
            {
                document.Add(row, values);
            }
        }

        if (_faults.Count == 0 && document.Count == 0)
        {
            _faults.Add(new(null, null, "The file must hold at least one ring below its headings."));
        }

        return new(document.Read(), _faults);
    }

    /// <summary>Semicolons outside quotes in the first line make it a file of semicolons.</summary>
    private static bool HasDecimalComma(string text)
    {
        bool quoted = false;
        foreach (char c in text.TrimStart().TakeWhile(c => quoted || c is not ('\r' or '\n')))
        {
            quoted ^= c == '"';
            if (!quoted && c == ';')
            {
                return true;
            }
        }

        return false;
    }

    private List<(int Row, string[] Cells)> Records(string text, bool decimalComma)
    {
        List<(int, string[])> records = [];
        CsvConfiguration configuration =
            new(CultureInfo.InvariantCulture) { Delimiter = decimalComma ? ";" : ",", IgnoreBlankLines = false };
        using StringReader reader = new(text);
        using CsvParser parser = new(reader, configuration);
        try
        {
            while (parser.Read())
            {
                string[] cells = [.. (parser.Record ?? []).Select(cell => cell.Trim())];
                if (records.Count > 0 || cells.Any(cell => cell.Length > 0))
                {
                    records.Add((parser.Row, cells));
                }
            }
        }
        catch (CsvHelperException broken) when (broken is BadDataException or ParserException)
        {
            _faults.Add(
                new(parser.Row, null,
                    "The row has a quotation mark where none may stand: a cell with one is put in quotation marks and the mark within is "
                        + "doubled."));
        }

        return records;
    }

    private (RingColumn Column, string Unit)?[] Columns((int Row, string[] Cells) heading)
    {
        int count = 1 + Array.FindLastIndex(heading.Cells, cell => cell.Length > 0);
        (RingColumn Column, string Unit)?[] columns = new (RingColumn, string)?[heading.Cells.Length];
        HashSet<RingColumn> seen = [];
        int before = _faults.Count;
        for (int i = 0; i < count; i++)
        {
            if (_faults.Count - before == MostHeadingFaults)
            {
                _faults.Add(
                    new(heading.Row, null,
                        Invariant($"The row has {count} headings; those behind the one numbered {i} were not looked at.")));
                break;
            }

            columns[i] = ColumnOf(heading.Row, heading.Cells[i], seen);
        }

        return columns;
    }

    private (RingColumn Column, string Unit)? ColumnOf(int row, string cell, HashSet<RingColumn> seen)
    {
        Match unit = Regex.Match(cell, @"^(?<name>[^\[]*)\[(?<unit>[^\]]*)\]$", RegexOptions.CultureInvariant);
        string name = (unit.Success ? unit.Groups["name"].Value : cell).Trim();
        if (name.Length == 0)
        {
            _faults.Add(new(row, name, "A heading is empty."));
        }
        else if (!RingColumn.ByName.TryGetValue(name, out RingColumn? column))
        {
            _faults.Add(
                new(row, Quoted.Short(name), $"\"{Quoted.Short(name)}\" is not a column of measured rings; the columns are {Known}."));
        }
        else if (!seen.Add(column))
        {
            _faults.Add(new(row, column.Name, $"\"{column.Name}\" must be the heading of one column only."));
        }
        else
        {
            return (column, unit.Success ? unit.Groups["unit"].Value.Trim() : string.Empty);
        }

        return null;
    }

    /// <summary>A cell as the text of the JSON file, or null after a fault.</summary>
    private string? Value(int row, RingColumn column, string unit, string cell, bool decimalComma)
    {
        if (column.IsText)
        {
            return cell[0] == '\'' && cell.Length > 1 && RingRowWriter.IsRisky(cell[1]) ? cell.Substring(1) : cell;
        }

        if (decimalComma && cell.Any(c => c == '.'))
        {
            _faults.Add(
                new(row, column.Name,
                    $"\"{Quoted.Short(cell)}\" could mean two things: in a file with semicolons between the cells the decimal sign is a "
                        + $"comma, and thousands are not set apart."));
            return null;
        }

        string number = decimalComma ? cell.Replace(',', '.') : cell;
        if (column.IsNumber)
        {
            if (unit.Length == 0
                && double.TryParse(number, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture,
                    out double plain) && plain - plain == 0)
            {
                return number;
            }

            _faults.Add(
                new(row, column.Name,
                    $"\"{column.Name}\" must be a plain number without a unit, but is "
                        + $"\"{Quoted.Short(unit.Length == 0 ? cell : $"{cell} {unit}")}\"."));
            return null;
        }

        bool hasUnit =
            number.Any(
                c =>
                    !(char.IsDigit(c) || char.IsWhiteSpace(c) || c is '.' or ',' or '/' or '-' or '+' or '⁄'
                        || char.GetUnicodeCategory(c) == UnicodeCategory.OtherNumber));
        return hasUnit || unit.Length == 0 ? number : $"{number} {unit}";
    }
}
