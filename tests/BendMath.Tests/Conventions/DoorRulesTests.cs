using System.Reflection;
using BendMath.Fuzz.Walking;

namespace BendMath.Tests.Conventions;

public sealed class DoorRulesTests
{
    private static readonly DocumentationFile OfTests = DocumentationFile.For(typeof(DoorRulesTests).Assembly);

    [Fact]
    public void Every_public_type_has_an_example() => Assert.Empty(PublicApi.Types
        .Where(type => !PublicApi.IsStatic(type) && !type.IsSubclassOf(typeof(Delegate)) && ExampleValues.Of(type).Count == 0)
        .Select(type => $"{PublicApi.Name(type)} has no example in ExampleValues"));

    [Fact]
    public void No_bad_value_gets_through_a_public_door()
    {
        int calls = 0;
        List<string> violations = [];
        foreach (Assembly assembly in PublicApi.Assemblies)
        {
            DoorRules rules = new(DocumentationFile.For(assembly), TimeSpan.FromSeconds(20));
            violations.AddRange(assembly.GetExportedTypes().SelectMany(PublicApi.Callables).SelectMany(method => rules.Violations(method)));
            calls += rules.Calls;
        }

        Assert.True(violations.Count == 0, string.Join(Environment.NewLine, violations.Take(400)));
        Assert.True(calls > 300, $"only {calls} calls were made");
    }

    [Fact]
    public void Methods_on_spans_are_the_ones_with_a_test_of_their_own() => Assert.Equal(
        Bending.BendSweepTests.Doors.Select(door => $"BendMath.{nameof(BendSweep)}.{door}").Order(StringComparer.Ordinal),
        PublicApi.Types.SelectMany(PublicApi.SpanDoors).Select(PublicApi.Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_property_of_every_example_is_finite_and_every_text_clean()
    {
        List<string> violations = [];
        foreach (Assembly assembly in PublicApi.Assemblies)
        {
            DocumentationFile documentation = DocumentationFile.For(assembly);
            PublicWalk walk =
                new((property, thrown) => thrown is InvalidOperationException && documentation.Promises(property, thrown.GetType()));
            violations.AddRange(assembly.GetExportedTypes()
                .SelectMany(type => ExampleValues.Of(type).Select(value => (type.Name, value)))
                .Concat(assembly.GetExportedTypes()
                    .SelectMany(type => type.GetProperties(BindingFlags.Public | BindingFlags.Static))
                    .Select(property => (PublicApi.Name(property), property.GetValue(null)!)))
                .Select(example => walk.FaultOf(example.Item2) is { } fault ? example.Item1 + fault : null)
                .OfType<string>());
        }

        Assert.Empty(violations);
    }

    [Theory]
    [InlineData(nameof(Faulty.BadAtTheDoor.NotANumber), "NotANumber(depth) with depth = -1 returns, but its result is NaN")]
    [InlineData(nameof(Faulty.BadAtTheDoor.WrongName),
        "WrongName(depth) with depth = 0 throws ArgumentOutOfRangeException that blames 'val'")]
    [InlineData(nameof(Faulty.BadAtTheDoor.NoName), "NoName(depth) with depth = 0 throws ArgumentException that blames ''")]
    [InlineData(nameof(Faulty.BadAtTheDoor.Crash), "Crash(text) with text = null throws NullReferenceException")]
    [InlineData(nameof(Faulty.BadAtTheDoor.Undocumented),
        "Undocumented(depth) with depth = 0 throws InvalidOperationException, which its documentation does not promise")]
    [InlineData(nameof(Faulty.BadAtTheDoor.Unchecked),
        "Unchecked(depth) with depth = 1E+300 Meter throws ArgumentException that blames 'val'")]
    [InlineData(nameof(Faulty.BadAtTheDoor.Nested), "Nested(depth) with depth = 0 returns, but its result.Values[1] is Infinity")]
    [InlineData(nameof(Faulty.BadAtTheDoor.Unpromised),
        "Unpromised(depth) with depth = 0 throws ArgumentOutOfRangeException, which its documentation does not promise")]
    [InlineData(nameof(Faulty.BadAtTheDoor.NoRule), "NoRule(depth) with depth = 0 throws ArgumentOutOfRangeException without a rule")]
    [InlineData(nameof(Faulty.BadAtTheDoor.NoValue),
        "NoValue(depth) with depth = -1 throws ArgumentOutOfRangeException without the value, -1")]
    [InlineData(nameof(Faulty.BadAtTheDoor.NoUnit),
        "NoUnit(depth) with depth = -1 Meter throws ArgumentOutOfRangeException without the value, -1000 mm")]
    [InlineData(nameof(Faulty.BadAtTheDoor.NeverValid), "NeverValid(depth) with valid arguments throws ArgumentOutOfRangeException")]
    [InlineData(nameof(Faulty.BadAtTheDoor.Hang), "Hang(depth) with depth = 1E+300 did not come back")]
    public void A_faulty_door_is_reported_by_name(string method, string expected)
    {
        DoorRules rules = new(OfTests, TimeSpan.FromSeconds(0.5));
        IEnumerable<string> violations = rules.Violations(typeof(Faulty.BadAtTheDoor).GetMethod(method)!);
        Assert.Contains(violations, violation => violation.Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void A_faulty_indexer_is_reported_by_name() => Assert.Contains(
        PublicApi.Callables(typeof(Faulty.OpenIndexer)).Where(method => method.Name == "get_Item")
            .SelectMany(method => new DoorRules(OfTests, TimeSpan.FromSeconds(5)).Violations(method, new Faulty.OpenIndexer())),
        violation =>
            violation.Contains("OpenIndexer.get_Item(index) with index = -1 throws IndexOutOfRangeException", StringComparison.Ordinal));

    [Fact]
    public void A_sound_door_is_not_reported() =>
        Assert.Empty(
            PublicApi.Callables(typeof(Faulty.Sound)).Where(member => member.IsConstructor)
                .SelectMany(method => new DoorRules(OfTests, TimeSpan.FromSeconds(5)).Violations(method)));
}
