namespace BendMath.Csv;

/// <summary>How a CSV file separates cells and writes decimals; spreadsheets expect the one of the language they are set to.</summary>
public enum CsvStyle
{
    /// <summary>Commas between cells, decimal points: RFC 4180, and spreadsheets set to English.</summary>
    Comma,

    /// <summary>
    /// Semicolons between cells, decimal commas: spreadsheets set to German, French, Spanish and other languages with a decimal comma.
    /// </summary>
    Semicolon,
}
