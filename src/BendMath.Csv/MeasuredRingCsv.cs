using System.Text;
using BendMath.Csv.Rows;
using BendMath.Json;
using BendMath.Json.Parts;

namespace BendMath.Csv;

/// <summary>
/// The rings a shop has measured as CSV, one ring a row, for a spreadsheet, read or written: the rings, or everything that is wrong with
/// the file. Immutable and thread-safe. What is written reads back as the same rings,
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
public sealed class MeasuredRingCsv
{
    internal MeasuredRingCsv(IReadOnlyList<MeasuredRing> rings, IEnumerable<CsvFault> faults)
    {
        Faults = [.. faults.OrderBy(fault => fault.Row ?? 0)];
        Rings = Faults.Count == 0 ? [.. rings] : [];
    }

    /// <summary>The rings in the order of the rows; none when the file has a fault.</summary>
    public IReadOnlyList<MeasuredRing> Rings { get; }

    /// <summary>All faults in the order of the rows; none when the rings can be used.</summary>
    public IReadOnlyList<CsvFault> Faults { get; }

    /// <summary>Whether the rings can be used.</summary>
    public bool IsSound => Faults.Count == 0;

    /// <summary>Reads the text of a file.</summary>
    /// <param name="csv">The text.</param>
    /// <returns>The rings, or all faults; it does not throw for anything the text says.</returns>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    public static MeasuredRingCsv Read(string csv) => new RingRowReader().Read(csv ?? throw new ArgumentNullException(nameof(csv)));

    /// <summary>Reads a file in UTF-8, with or without a byte-order mark.</summary>
    /// <param name="path">Where the file lies.</param>
    /// <returns>The rings, or all faults; a file that is missing or cannot be read is a fault too.</returns>
    /// <exception cref="ArgumentNullException">The path is null.</exception>
    public static MeasuredRingCsv ReadFile(string path)
    {
        string? text = TextFile.Load(path ?? throw new ArgumentNullException(nameof(path)), "file of measured rings", out string? why);
        return text is null ? new([], [new(null, null, why!)]) : Read(text);
    }

    /// <summary>Writes rings as text that <see cref="Read"/> reads back as the same rings.</summary>
    /// <param name="rings">The rings; none is null.</param>
    /// <param name="decimalComma">Whether decimals have a comma and cells are separated by semicolons, as spreadsheets set to German,
    /// French, Spanish and other languages expect it; otherwise decimals have a point and cells are separated by commas (RFC 4180).</param>
    /// <exception cref="ArgumentNullException">The rings or one of them are null.</exception>
    /// <exception cref="ArgumentException">There is no ring, or the file has no words for one; see
    /// <see cref="MeasuredRingFile.Write"/>.</exception>
    public static string Write(IReadOnlyList<MeasuredRing> rings, bool decimalComma = false) =>
        RingRowWriter.Write(rings, decimalComma);

    /// <summary>Writes rings to a stream in UTF-8 with a byte-order mark, by which spreadsheets know it. The stream stays open.</summary>
    /// <param name="rings">The rings; none is null.</param>
    /// <param name="stream">The stream.</param>
    /// <param name="decimalComma">Whether decimals have a comma and cells are separated by semicolons, as spreadsheets set to German,
    /// French, Spanish and other languages expect it; otherwise decimals have a point and cells are separated by commas (RFC 4180).</param>
    /// <exception cref="ArgumentNullException">An argument or a ring is null.</exception>
    /// <exception cref="ArgumentException">There is no ring, or the file has no words for one; see
    /// <see cref="MeasuredRingFile.Write"/>.</exception>
    public static void Write(IReadOnlyList<MeasuredRing> rings, Stream stream, bool decimalComma = false)
    {
        string text = Write(rings, decimalComma);
        UTF8Encoding marked = new(encoderShouldEmitUTF8Identifier: true);
        using StreamWriter writer = new(stream ?? throw new ArgumentNullException(nameof(stream)), marked, 1024, leaveOpen: true);
        writer.Write(text);
    }

    /// <summary>Number of rings or of faults.</summary>
    public override string ToString() => IsSound
        ? Invariant($"{Rings.Count} ring{(Rings.Count == 1 ? string.Empty : "s")}")
        : Invariant($"{Faults.Count} fault{(Faults.Count == 1 ? string.Empty : "s")}");
}
