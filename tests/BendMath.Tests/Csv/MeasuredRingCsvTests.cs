using System.Globalization;
using System.Text;
using BendMath.Csv;
using BendMath.Tests.Json;
using CsvHelper;
using CsvHelper.Configuration;

namespace BendMath.Tests.Csv;

public sealed class MeasuredRingCsvTests
{
    private const string Heading =
        "die,stamped radius [mm],stamp means,inside diameter [mm],state,shape,width [mm],thickness [mm],orientation,material,elastic "
            + "modulus [MPa],yield [MPa],density [kg/m3],note";

    private const string First = "A,240,inside of the bar,490,free,flat,25,5,easy way,mild steel,210000,290,7850,14 March";

    private const string Second = "A,,,19 1/4 in,free,flat,1 in,3/16 in,easy way,mild steel,210000,290,7850,";

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_is_written_reads_back_the_same_to_the_last_digit(bool decimalComma)
    {
        string text = MeasuredRingCsv.Write(RingSets.Every, decimalComma);
        MeasuredRingCsv reading = MeasuredRingCsv.Read(text);
        Assert.Empty(reading.Faults);
        Assert.Equal(RingSets.Every.Select(RingSets.Told), reading.Rings.Select(RingSets.Told));
        Assert.Equal(RingSets.Every.Select(ring => ring.Die), reading.Rings.Select(ring => ring.Die));
        Assert.Equal(RingSets.Every.Select(ring => ring.Analysis.Material), reading.Rings.Select(ring => ring.Analysis.Material));
        Assert.Equal(text, MeasuredRingCsv.Write(reading.Rings, decimalComma));
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("fr-CH")]
    public void The_culture_of_the_program_changes_nothing(string culture)
    {
        string[] texts = [MeasuredRingCsv.Write(RingSets.Every), MeasuredRingCsv.Write(RingSets.Every, decimalComma: true)];
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(texts[0], MeasuredRingCsv.Write(RingSets.Every));
            Assert.Equal(texts[1], MeasuredRingCsv.Write(RingSets.Every, decimalComma: true));
            Assert.All(texts,
                text => Assert.Equal(RingSets.Every.Select(RingSets.Told), MeasuredRingCsv.Read(text).Rings.Select(RingSets.Told)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>
    /// RFC 4180, rules 1, 5, 6 and 7: CRLF ends a row; a cell with a comma or a quotation mark stands in quotation marks, a mark within
    /// doubled. CsvHelper's reader of whole tables agrees on the shape.
    /// </summary>
    [Fact]
    public void The_text_obeys_RFC_4180()
    {
        string text = MeasuredRingCsv.Write(RingSets.Every);
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", text.Replace("\r\n", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("\"B, \"\"wide\"\"; it's = new\"", text, StringComparison.Ordinal);
        using CsvReader reader = new(new StringReader(text), new CsvConfiguration(CultureInfo.InvariantCulture) { DetectColumnCountChanges = true });
        Assert.True(reader.Read());
        Assert.True(reader.ReadHeader());
        int rows = 0;
        while (reader.Read())
        {
            Assert.Equal(reader.HeaderRecord!.Length, reader.ColumnCount);
            rows++;
        }

        Assert.Equal(RingSets.Every.Count, rows);
    }

    /// <summary>No cell begins as a formula does, and yet the text comes back.</summary>
    [Theory]
    [InlineData(false, ',')]
    [InlineData(true, ';')]
    public void No_cell_is_a_formula(bool decimalComma, char separator)
    {
        using CsvParser parser = new(new StringReader(MeasuredRingCsv.Write(RingSets.Every, decimalComma)), new CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = $"{separator}" });
        while (parser.Read())
        {
            Assert.All(parser.Record!, cell => Assert.False(cell.Length > 0 && "=+-@".Contains(cell[0], StringComparison.Ordinal), cell));
        }
    }

    [Fact]
    public void What_people_type_is_read()
    {
        MeasuredRingCsv reading = MeasuredRingCsv.Read($"\uFEFF{Heading}\n{First}\n,,,\n\n{Second}\n");
        Assert.Empty(reading.Faults);
        Assert.Equal(2, reading.Rings.Count);
        Assert.Equal(245, reading.Rings[0].Measured.Value.Millimeters, 1e-12);
        Assert.Equal("14 March", reading.Rings[0].Note);
        Assert.Equal(19.25 * 25.4 / 2, reading.Rings[1].Measured.Value.Millimeters, 1e-12);
        Assert.Equal(25.4 * 3 / 16, reading.Rings[1].Analysis.Section.Depth.Millimeters, 1e-12);
        Assert.Equal(reading.Rings[0].Die, reading.Rings[1].Die);
    }

    [Fact]
    public void A_spreadsheet_with_decimal_commas_is_read()
    {
        string text =
            $"{Heading};lowest yield [MPa];highest yield [MPa]\r\n{First};235,5;355\r\n".Replace(',', ';')
                .Replace("235;5", "235,5", StringComparison.Ordinal).Replace(";490;", ";490,25;", StringComparison.Ordinal);
        MeasuredRingCsv reading = MeasuredRingCsv.Read(text);
        Assert.Empty(reading.Faults);
        Assert.Equal(490.25, 2 * reading.Rings[0].Measured.Value.Millimeters, 1e-12);
        Assert.Equal(235.5, reading.Rings[0].Analysis.Material.YieldRange!.Low.Megapascals, 1e-12);
        CsvFault fault = Assert.Single(MeasuredRingCsv.Read(text.Replace("490,25", "1.490", StringComparison.Ordinal)).Faults);
        Assert.Equal(
            "row 2, inside diameter: \"1.490\" could mean two things: in a file with semicolons between the cells the decimal sign is a "
                + "comma, and thousands are not set apart.", fault.ToString());
    }

    [Theory]
    [InlineData("490", "four", 2, "inside diameter", "not a unit of length")]
    [InlineData("490", "\"4,90\"", 2, "inside diameter", "comma")]
    [InlineData("490", "-490", 2, "inside diameter", "minus")]
    [InlineData(",free,", ",loose,", 2, "state", "must be \"free\" or \"held flat\"")]
    [InlineData("A,240", ",240", 2, "die", "must name its \"die\"")]
    [InlineData("A,240", "A,", 2, "stamped radius", "missing")]
    [InlineData("flat,25,", "flat,,", 2, "width", "missing")]
    [InlineData(",flat,", ",,", 2, "shape", "must name the \"shape\"")]
    [InlineData("mild steel,210000", ",210000", 2, "material", "must name its \"material\"")]
    [InlineData("14 March", "14 March,1", 2, null, "more cells than the first has headings, 14")]
    [InlineData("490", "", 2, null, "Exactly one of")]
    [InlineData("width [mm]", "breadth [mm]", 1, "breadth", "is not a column of measured rings")]
    [InlineData("width [mm]", "thickness [mm]", 1, "thickness", "one column only")]
    [InlineData("width [mm]", "width", 2, "width", "unit")]
    [InlineData("25,5,easy", "25,5,\"hard \"way", 2, null, "quotation mark")]
    [InlineData("240,inside of the bar", "240,somewhere", 2, "stamp means", "must be")]
    public void A_fault_is_told_with_its_cell(string old, string replacement, int row, string? column, string rule)
    {
        string text = $"{Heading}\r\n{First}\r\n";
        int at = text.IndexOf(old, row == 1 ? 0 : Heading.Length, StringComparison.Ordinal);
        if (row != 1 && Heading.Contains(old, StringComparison.Ordinal))
        {
            at = text.IndexOf(old, StringComparison.Ordinal);
        }

        MeasuredRingCsv reading = MeasuredRingCsv.Read(text[..at] + replacement + text[(at + old.Length)..]);
        Assert.Empty(reading.Rings);
        Assert.Contains(reading.Faults,
            fault => fault.Row == row && fault.Column == column && fault.Rule.Contains(rule, StringComparison.Ordinal));
    }

    [Fact]
    public void A_die_that_changes_from_row_to_row_is_a_fault()
    {
        CsvFault fault =
            Assert.Single(MeasuredRingCsv.Read($"{Heading}\n{First}\n{First.Replace("240", "250", StringComparison.Ordinal)}\n").Faults);
        Assert.Equal(
            "row 3, stamped radius: \"stamped radius\" of die \"A\" must be the same in every row, but is \"250 mm\" here and \"240 mm\" "
                + "in row 2.", fault.ToString());
    }

    [Fact]
    public void A_file_without_rings_is_a_fault()
    {
        Assert.Equal("The file is empty.", Assert.Single(MeasuredRingCsv.Read(" \r\n").Faults).Rule);
        Assert.Equal("The file must hold at least one ring below its headings.",
            Assert.Single(MeasuredRingCsv.Read(Heading + "\r\n,,,\r\n").Faults).Rule);
        Assert.Equal("There is no file \"no such file.csv\".", Assert.Single(MeasuredRingCsv.ReadFile("no such file.csv").Faults).Rule);
        Assert.Throws<ArgumentException>("rings", () => MeasuredRingCsv.Write([]));
    }

    [Fact]
    public void A_file_on_disk_carries_the_mark_spreadsheets_know_UTF_8_by()
    {
        string path = Path.Combine(Directory.CreateTempSubdirectory("bendmath").FullName, "rings.csv");
        using (FileStream file = File.Create(path))
        {
            MeasuredRingCsv.Write(RingSets.Every, file, decimalComma: true);
            Assert.True(file.CanWrite, "the stream stays open");
        }

        Assert.Equal(Encoding.UTF8.GetPreamble(), File.ReadAllBytes(path)[..3]);
        Assert.Equal(RingSets.Every.Select(RingSets.Told), MeasuredRingCsv.ReadFile(path).Rings.Select(RingSets.Told));
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    /// <summary>The table on the page of the package.</summary>
    [Fact]
    public void The_table_of_the_package_page_is_read()
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "src", "BendMath.Csv", "README.md")).ReplaceLineEndings("\n");
        int start = page.IndexOf("```text\n", StringComparison.Ordinal) + 8;
        MeasuredRingCsv reading = MeasuredRingCsv.Read(page[start..page.IndexOf("```", start, StringComparison.Ordinal)]);
        Assert.Empty(reading.Faults);
        Assert.Equal(2, reading.Rings.Count);
    }
}
