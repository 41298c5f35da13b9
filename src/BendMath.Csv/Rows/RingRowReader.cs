using System.Globalization;
using System.Text.RegularExpressions;
using CsvHelper;
using CsvHelper.Configuration;

namespace BendMath.Csv.Rows;

/// <summary>Turns rows into the JSON of measured rings, has it read, and takes the faults back to their cells.</summary>
internal sealed class RingRowReader
{
    private readonly List<CsvFault> _faults = [];

    public MeasuredRingCsvReading Read(string csv)
    {
        string text = csv.TrimStart('\uFEFF');
        CsvStyle style = StyleOf(text);
        List<(int Row, string[] Cells)> records = Records(text, style);
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
            for (int i = 0; i < cells.Length; i++)
            {
                if (i >= columns.Length)
                {
                    if (cells[i].Length > 0)
                    {
                        _faults.Add(new(row, null, $"The row must not have more cells than the first has headings, {columns.Length}, but holds \"{cells[i]}\" behind them."));
                    }
                }
                else if (columns[i] is { } column && cells[i].Length > 0 && Value(row, column.Column, column.Unit, cells[i], style) is { } value)
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
    private static CsvStyle StyleOf(string text)
    {
        bool quoted = false;
        foreach (char c in text.TrimStart().TakeWhile(c => quoted || c is not ('\r' or '\n')))
        {
            quoted ^= c == '"';
            if (!quoted && c == ';')
            {
                return CsvStyle.Semicolon;
            }
        }

        return CsvStyle.Comma;
    }

    private List<(int Row, string[] Cells)> Records(string text, CsvStyle style)
    {
        List<(int, string[])> records = [];
        CsvConfiguration configuration = new(CultureInfo.InvariantCulture) { Delimiter = style == CsvStyle.Comma ? "," : ";", IgnoreBlankLines = false };
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
            _faults.Add(new(parser.Row, null, "The row has a quotation mark where none may stand: a cell with one is put in quotation marks and the mark within is doubled."));
        }

        return records;
    }

    private (RingColumn Column, string Unit)?[] Columns((int Row, string[] Cells) heading)
    {
        (RingColumn Column, string Unit)?[] columns = new (RingColumn, string)?[heading.Cells.Length];
        for (int i = 0; i < columns.Length; i++)
        {
            string cell = heading.Cells[i];
            Match unit = Regex.Match(cell, @"^(?<name>[^\[]*)\[(?<unit>[^\]]*)\]$", RegexOptions.CultureInvariant);
            string name = (unit.Success ? unit.Groups["name"].Value : cell).Trim();
            RingColumn? column = RingColumn.All.FirstOrDefault(known => string.Equals(known.Name, name, StringComparison.OrdinalIgnoreCase));
            if (column is null)
            {
                if (name.Length > 0 || heading.Cells.Skip(i).Any(later => later.Length > 0))
                {
                    string known = string.Join(", ", RingColumn.All.Select(one => $"\"{one.Name}\""));
                    _faults.Add(new(heading.Row, name, name.Length == 0 ? "A heading is empty." : $"\"{name}\" is not a column of measured rings; the columns are {known}."));
                }
            }
            else if (columns.Any(before => before?.Column == column))
            {
                _faults.Add(new(heading.Row, column.Name, $"\"{column.Name}\" must be the heading of one column only."));
            }
            else
            {
                columns[i] = (column, unit.Success ? unit.Groups["unit"].Value.Trim() : string.Empty);
            }
        }

        return columns;
    }

    /// <summary>A cell as the text of the JSON file, or null after a fault.</summary>
    private string? Value(int row, RingColumn column, string unit, string cell, CsvStyle style)
    {
        if (column.IsText)
        {
            return cell[0] == '\'' && cell.Length > 1 && RingRowWriter.IsRisky(cell[1]) ? cell.Substring(1) : cell;
        }

        if (style == CsvStyle.Semicolon && cell.Any(c => c == '.'))
        {
            _faults.Add(new(row, column.Name, $"\"{cell}\" could mean two things: in a file with semicolons between the cells the decimal sign is a comma, and thousands are not set apart."));
            return null;
        }

        string number = style == CsvStyle.Semicolon ? cell.Replace(',', '.') : cell;
        bool hasUnit = number.Any(c => !(char.IsDigit(c) || char.IsWhiteSpace(c) || c is '.' or ',' or '/' or '-' or '+' or '⁄' || char.GetUnicodeCategory(c) == UnicodeCategory.OtherNumber));
        return hasUnit || unit.Length == 0 ? number : $"{number} {unit}";
    }
}
