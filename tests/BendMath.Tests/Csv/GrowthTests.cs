using BendMath.Csv;
using BendMath.Json;

namespace BendMath.Tests.Csv;

/// <summary>
/// Ten times the file costs about ten times the memory, at most twelve: what a reader allocates is counted, because time depends on the
/// machine.
/// </summary>
public sealed class GrowthTests
{
    private const int Small = 100_000;

    private const string Heading =
        "die,stamped radius [mm],stamp means,inside diameter [mm],state,shape,width [mm],thickness [mm],orientation,material,elastic "
            + "modulus [MPa],yield [MPa],density [kg/m3],note\n";

    [Theory]
    [InlineData("empty headings")]
    [InlineData("unknown headings")]
    [InlineData("the same heading")]
    [InlineData("rows with a die each")]
    [InlineData("rows of unknown words")]
    [InlineData("one long cell")]
    [InlineData("a row with too many cells")]
    [InlineData("empty rows")]
    public void Reading_CSV_is_linear(string kind)
    {
        string Text(int size) => kind switch
        {
            "empty headings" => new string(',', size) + "die\n",
            "unknown headings" => Repeated(size, i => FormattableString.Invariant($"x{i},")) + "\n",
            "the same heading" => Repeated(size, _ => "die,") + "\n",
            "rows with a die each" => Heading + Repeated(size, i => Row(FormattableString.Invariant($"D{i}"), "free")),
            "rows of unknown words" => Heading + Repeated(size, i => Row("A", FormattableString.Invariant($"loose {i}"))),
            "one long cell" => Heading + Row("A", new string('x', size)),
            "a row with too many cells" => Heading + Repeated(size, _ => "A,") + "\n",
            _ => Heading + new string('\n', size),
        };
        AssertLinear(Text, text => MeasuredRingCsv.Read(text).Faults.Count);
    }

    [Theory]
    [InlineData("dies")]
    [InlineData("unknown words")]
    [InlineData("the same word")]
    [InlineData("nothing but blanks")]
    public void Reading_JSON_is_linear(string kind)
    {
        string Text(int size) => kind switch
        {
            "dies" =>
                $$"""{ "dies": [{{Repeated(size, i => FormattableString.Invariant($$"""{ "name": "D{{i}}", "stamped radius": "240 mm", "stamp means": "inside of the bar" },"""))}} {}] }""",
            "unknown words" => $$"""{ {{Repeated(size, i => FormattableString.Invariant($"\"x{i}\": 1,"))}} "y": 2 }""",
            "the same word" => $$"""{ {{Repeated(size, _ => "\"x\": 1,")}} "x": 2 }""",
            _ => "{" + new string(' ', size) + "}",
        };
        AssertLinear(Text, text => MeasuredRingFile.Read(text).Faults.Count);
    }

    private static void AssertLinear(Func<int, string> text, Func<string, int> read)
    {
        (string small, string large) = (text(Small), text(10 * Small));
        read(small);
        (long few, long many) = (Allocated(small), Allocated(large));
        Assert.True(many <= 12 * few, FormattableString.Invariant($"{few} bytes for {small.Length} characters, {many} for {large.Length}"));

        long Allocated(string one)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            read(one);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    private static string Row(string die, string state) =>
        $"{die},240,inside of the bar,490,{state},flat,25,5,easy way,mild steel,210000,290,7850,{new string('n', 400)}\n";

    private static string Repeated(int size, Func<int, string> part)
    {
        System.Text.StringBuilder text = new(size + 1000);
        for (int i = 0; text.Length < size; i++)
        {
            text.Append(part(i));
        }

        return text.ToString();
    }
}
