using System.Globalization;
using System.Text.Json.Nodes;
using BendMath.Json;

namespace BendMath.Tests.Json;

/// <summary>
/// Whatever a file says, its faults are sentences of a length a person reads, and no character of it moves the cursor of a terminal.
/// </summary>
public sealed class HostileJsonTests
{
    private static readonly string Hostile = "\u001b[2J\u009b31m\u202e\r\n" + new string('x', 100_000);

    /// <summary>Every text of a job in turn is replaced by a hostile one, and so is every word.</summary>
    [Fact]
    public void Faults_are_short_and_leave_the_terminal_alone()
    {
        int count = Places(JsonNode.Parse(JobTexts.Sound)!).Count();
        Assert.InRange(count, 30, 200);
        for (int i = 0; i < count; i++)
        {
            foreach (bool isWord in new[] { false, true })
            {
                JsonNode root = JsonNode.Parse(JobTexts.Sound)!;
                JsonNode place = Places(root).ElementAt(i);
                if (!isWord)
                {
                    place.ReplaceWith(JsonValue.Create(Hostile));
                }
                else if (place.Parent is JsonObject owner)
                {
                    owner[Hostile] = 1;
                }
                else
                {
                    place.ReplaceWith(JsonValue.Create(new string('9', 100_000)));
                }

                Check(root.ToJsonString());
            }
        }
    }

    [Theory]
    [InlineData("{ \"kerf\": none,\n")]
    [InlineData("{ \"kerf\": \u001b[31m")]
    [InlineData("{ \"kerf\": 5\u001b")]
    [InlineData("{ \"kerf\": \"a\u001b")]
    [InlineData("{ \u001b")]
    [InlineData("\u001b")]
    [InlineData("{} \u001b")]
    [InlineData("{ \"kerf\": 1")]
    public void What_is_no_JSON_is_not_printed_back(string start)
    {
        Check(start + string.Concat(Enumerable.Repeat("\u001b[2J and another line\n", 5_000)));
        Check(start + new string('9', 100_000));
    }

    /// <summary>A file of many dies does not list them all at every ring that names none of them.</summary>
    [Fact]
    public void Lists_of_names_are_short()
    {
        string dies =
            string.Join(", ",
                Enumerable.Range(0, 500)
                    .Select(
                        i =>
                            string.Create(CultureInfo.InvariantCulture,
                                $$"""{ "name": "die {{i}}", "stamped radius": "240 mm", "stamp means": "inside of the bar" }""")));
        JsonFault fault =
            Assert.Single(MeasuredRingFile.Read($$"""{ "dies": [{{dies}}], "rings": [{ "die": "A" }] }""").Faults,
                fault => fault.Place == "rings[0].die");
        Assert.EndsWith("\"die 11\" and 488 more), but is \"A\".", fault.Rule, StringComparison.Ordinal);
    }

    /// <summary>
    /// Whether a sentence is no longer than asked and holds no character of the categories Cc and Cf (Unicode 15, chapter 4.5, from memory)
    /// and no separator of lines.
    /// </summary>
    internal static bool IsShort(string sentence, int longest) =>
        sentence.Length <= longest && !sentence.Any(c => char.GetUnicodeCategory(c) is UnicodeCategory.Control
        or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate);

    private static void Check(string json)
    {
        IReadOnlyList<JsonFault> faults = RingJobFile.Read(json).Faults;
        Assert.NotEmpty(faults);
        Assert.All(faults, fault => Assert.True(IsShort(fault.ToString(), 1_000), $"{fault}"));
    }

    private static IEnumerable<JsonNode> Places(JsonNode node) => node switch
    {
        JsonObject members => members.SelectMany(member => Places(member.Value!)),
        JsonArray items => items.SelectMany(item => Places(item!)),
        _ => [node],
    };
}
