using System.Text;
using BendMath.Csv.Rows;
using BendMath.Json;
using BendMath.Json.Parts;

namespace BendMath.Csv;

/// <summary>
/// Reads and writes the rings a shop has measured as CSV, one ring a row, for a spreadsheet. What is written reads back as the same rings,
/// to the last digit.
/// </summary>
/// <remarks>
/// <para>The first row names the columns; a unit stands in square brackets behind the name, as <c>leg [mm]</c>, or in the cell, as <c>3/4
/// in</c>; a unit in the cell counts more. Columns come in any order, those a ring does not need stay empty or are left out, and empty rows
/// are skipped. A die is described in the first of its rows; later rows may name it only.</para>
/// <para>With commas between cells (RFC 4180) a decimal sign is a point; with semicolons it is a comma, as spreadsheets do it. The heading
/// decides which it is, never the culture of the program.</para>
/// <para>A name or note that begins with <c>=</c>, <c>+</c>, <c>-</c>, <c>@</c>, the wide form of one of them, or an apostrophe is written
/// with an apostrophe before it, so that no spreadsheet takes it for a formula; reading takes it off again. One that holds a comma or a
/// semicolon stands in quotation marks in both styles. Open a file with the separator it was written with: with another, a spreadsheet cuts
/// names in two, and what is behind the cut may begin like a formula.</para>
/// <para>Columns are the words of <see cref="MeasuredRingFile"/>: <c>die</c>, <c>stamped radius</c>, <c>stamp means</c>, <c>stamp
/// offset</c>, <c>face length</c>, <c>nose radius</c> and the mate (<c>mate half-span</c> with <c>mate face radius</c>, or with <c>mate
/// rise</c> and <c>mate support radius</c>; <c>mate shims</c>), the readings (<c>inside diameter</c>, <c>tape around outside</c>,
/// <c>chord against inside</c> with <c>rise against inside</c> …), <c>state</c>, <c>marked length</c> with <c>turn</c>, <c>shape</c> or
/// <c>size</c> and the dimensions, <c>orientation</c>, <c>material</c> and its numbers, <c>note</c>.</para>
/// </remarks>
public static class MeasuredRingCsv
{
    /// <summary>Reads the text of a file.</summary>
    /// <param name="csv">The text.</param>
    /// <returns>The rings, or all faults; it does not throw for anything the text says.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static MeasuredRingCsvReading Read(string csv) => new RingRowReader().Read(csv ?? throw new ArgumentNullException(nameof(csv)));

    /// <summary>Reads a file in UTF-8, with or without a byte-order mark.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <returns>The rings, or all faults; a file that is missing or cannot be read is a fault too.</returns>
    /// <exception cref="ArgumentNullException">The path is null.</exception>
    public static MeasuredRingCsvReading ReadFile(string path)
    {
        string? text = TextFile.Load(path ?? throw new ArgumentNullException(nameof(path)), "file of measured rings", out string? why);
        return text is null ? new([], [new(null, null, why!)]) : Read(text);
    }

    /// <summary>Writes rings as text that <see cref="Read"/> reads back as the same rings.</summary>
    /// <param name="rings">The rings; none is null.</param>
    /// <param name="style">Commas with decimal points, or semicolons with decimal commas.</param>
    /// <exception cref="ArgumentNullException">The rings or one of them are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The style is not a defined value.</exception>
    /// <exception cref="ArgumentException">There is no ring, or the file has no words for one; see
    /// <see cref="MeasuredRingFile.Write"/>.</exception>
    public static string Write(IReadOnlyList<MeasuredRing> rings, CsvStyle style = CsvStyle.Comma) =>
        style is CsvStyle.Comma or CsvStyle.Semicolon
        ? RingRowWriter.Write(rings, style)
        : throw new ArgumentOutOfRangeException(nameof(style), Invariant($"style must be Comma or Semicolon, but is {(int)style}."));

    /// <summary>Writes rings to a stream in UTF-8 with a byte-order mark, by which spreadsheets know it. The stream stays open.</summary>
    /// <param name="rings">The rings; none is null.</param>
    /// <param name="stream">The stream.</param>
    /// <param name="style">Commas with decimal points, or semicolons with decimal commas.</param>
    /// <exception cref="ArgumentNullException">An argument or a ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The style is not a defined value.</exception>
    /// <exception cref="ArgumentException">There is no ring, or the file has no words for one; see
    /// <see cref="MeasuredRingFile.Write"/>.</exception>
    public static void Write(IReadOnlyList<MeasuredRing> rings, Stream stream, CsvStyle style = CsvStyle.Comma)
    {
        string text = Write(rings, style);
        UTF8Encoding marked = new(encoderShouldEmitUTF8Identifier: true);
        using StreamWriter writer = new(stream ?? throw new ArgumentNullException(nameof(stream)), marked, 1024, leaveOpen: true);
        writer.Write(text);
    }
}
