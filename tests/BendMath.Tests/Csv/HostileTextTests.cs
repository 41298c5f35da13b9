using System.Text;
using BendMath.Csv;
using BendMath.Tests.Json;
using Microsoft.VisualBasic.FileIO;
using UnitsNet;

namespace BendMath.Tests.Csv;

/// <summary>Names that are more than names to a spreadsheet, a terminal or a page.</summary>
public sealed class HostileTextTests
{
    public static TheoryData<string> Names { get; } =
    [
        "A;=cmd|' /C calc'!A0", "=1+2", "+1", "-C", "@SUM(A1)", "'quoted", "＝1", "＠x", "B, \"wide\"", "a;b,c", "\"", "\"\"", "';=1",
        "<script>alert(1)</script>", "1e5;2,5",
    ];

    /// <summary>
    /// A second reader of CSV, the TextFieldParser of .NET, sees the names in cells that no spreadsheet takes for a formula (the first
    /// characters are those of common practice, no source), and reading gives them back.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void A_name_stays_a_name(string name)
    {
        foreach (bool decimalComma in new[] { false, true })
        {
            MeasuredRing like = RingSets.Every[0];
            BarMaterial material = new(name, like.Analysis.Material.Law, like.Analysis.Material.Density);
            Die die = new(name, Length.FromMillimeters(240), ReferenceFace.InsideOfBar);
            MeasuredRing ring = new(die, BendAnalysis.Of(like.Analysis.Section, material), like.Reading, like.Release, null, name);
            string text = MeasuredRingCsv.Write([ring], decimalComma);
            using TextFieldParser parser = new(new StringReader(text)) { HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = false };
            parser.SetDelimiters(decimalComma ? ";" : ",");
            string[] headings = parser.ReadFields()!;
            string[] cells = parser.ReadFields()!;
            Assert.Equal(headings.Length, cells.Length);
            Assert.All(cells, cell => Assert.False(cell.Length > 0 && "=+-@＝＋－＠".Contains(cell[0], StringComparison.Ordinal), cell));
            Assert.Equal(3, cells.Count(cell => cell == name || cell == "'" + name));
            MeasuredRing back = Assert.Single(MeasuredRingCsv.Read(text).Rings);
            Assert.Equal((name, name, name), (back.Die.Name, back.Analysis.Material.Name, back.Note));
        }
    }

    /// <summary>Each cell in turn holds a long text that would clear a terminal.</summary>
    [Fact]
    public void Faults_are_short_and_leave_the_terminal_alone()
    {
        string hostile = "\u001b[2J\u009b31m\u202e" + new string('x', 100_000);
        string[] headings =
            ["die", "stamped radius [mm]", "stamp means", "inside diameter [mm]", "state", "shape", "width [mm]", "thickness [mm]",
                "orientation", "material", "elastic modulus [MPa]", "strength coefficient [MPa]", "hardening exponent", "density [kg/m3]"];
        string[] cells =
            ["A", "240", "inside of the bar", "490", "free", "flat", "25", "5", "easy way", "mild steel", "210000", "600", "0.2", "7850"];
        Assert.Empty(MeasuredRingCsv.Read($"{string.Join(',', headings)}\n{string.Join(',', cells)}\n").Faults);
        for (int i = 0; i < headings.Length; i++)
        {
            string changed = headings[i];
            (string cell, headings[i]) = (cells[i], hostile);
            Check($"{string.Join(',', headings)}\n{string.Join(',', cells)}\n");
            (headings[i], cells[i]) = (changed, hostile);
            Check($"{string.Join(',', headings)}\n{string.Join(',', cells)},{hostile}\n");
            Check($"{string.Join(';', headings)}\n{string.Join(';', cells)}.5\n");
            cells[i] = cell;
        }

        static void Check(string text)
        {
            IReadOnlyList<CsvFault> faults = MeasuredRingCsv.Read(text).Faults;
            Assert.NotEmpty(faults);
            Assert.All(faults, fault => Assert.True(HostileJsonTests.IsShort(fault.ToString(), 2_000), $"{fault}"));
        }
    }

    [Fact]
    public void Files_that_cannot_be_read_say_why()
    {
        string folder = Directory.CreateTempSubdirectory("bendmath").FullName;
        try
        {
            Assert.Equal("The name of the file is empty.", Assert.Single(MeasuredRingCsv.ReadFile(string.Empty).Faults).Rule);
            Assert.Equal($"\"{folder}\" is a folder, not a file of measured rings.",
                Assert.Single(MeasuredRingCsv.ReadFile(folder).Faults).Rule);
            string latin = Path.Combine(folder, "latin.csv");
            File.WriteAllBytes(latin, [.. Encoding.ASCII.GetBytes("die,"), 0xE9]);
            Assert.Equal($"\"{latin}\" is not text in UTF-8; save it as UTF-8.",
                Assert.Single(MeasuredRingCsv.ReadFile(latin).Faults).Rule);
            Assert.Equal("There is no file \"\\u001b[2J\".", Assert.Single(MeasuredRingCsv.ReadFile("\u001b[2J").Faults).Rule);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
