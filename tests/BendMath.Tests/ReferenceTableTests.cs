namespace BendMath.Tests;

public sealed class ReferenceTableTests
{
    private const string Text = """
        # a remark
        name,depth,note
        a,12.50,"one, two"
        b,,
        c,1.20e3,x
        """;

    private static readonly ReferenceTable Table = ReferenceTable.Parse(new StringReader(Text), "sample.csv");

    [Fact]
    public void Cells_are_found_by_column_name()
    {
        Assert.Equal(["name", "depth", "note"], Table.Columns);
        Assert.Equal(["a", "b", "c"], Table.Rows.Select(row => row["name"]));
        Assert.Equal("one, two", Table.Rows[0]["note"]);
        Assert.Equal(12.5, Table.Rows[0].Number("depth"));
        Assert.Null(Table.Rows[1].NumberOrNull("depth"));
        Assert.Equal(1200, Table.Rows[2].Number("depth"));
    }

    [Fact]
    public void Print_rounding_is_half_a_unit_of_the_last_digit()
    {
        Assert.Equal(0.005, Table.Rows[0].PrintRounding("depth"), 1e-9);
        Assert.Equal(5, Table.Rows[2].PrintRounding("depth"), 1e-6);
    }

    [Fact]
    public void Complaints_name_file_and_column()
    {
        Assert.Contains("sample.csv", Assert.Throws<KeyNotFoundException>(() => Table.Rows[0]["width"]).Message, StringComparison.Ordinal);
        Assert.Contains("'depth'", Assert.Throws<FormatException>(() => Table.Rows[1].Number("depth")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("name,depth")]
    [InlineData("name,name\na,b")]
    [InlineData("name,depth\na,1,2")]
    [InlineData("name,depth\na")]
    public void A_malformed_table_is_refused(string text) =>
        Assert.Throws<FormatException>(() => ReferenceTable.Parse(new StringReader(text), "bad.csv"));

    [Fact]
    public void A_missing_table_is_an_error() => Assert.Throws<FileNotFoundException>(() => ReferenceTable.Load("none.csv"));
}
