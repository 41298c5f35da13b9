using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BendMath.Evidence;

namespace BendMath.Tests.Conventions;

/// <summary>Every public member says what it means, and every formula carries its equation, its range and a source that exists.</summary>
internal static partial class DocumentationRules
{
    private static readonly HashSet<string> KnownSources =
        [.. typeof(Sources).GetProperties().Where(property => property.PropertyType == typeof(Source)).Select(DocumentationFile.Id)];

    public static IEnumerable<string> Violations(Type type, DocumentationFile documentation) =>
        new MemberInfo[] { type }.Concat(PublicApi.WrittenMembers(type)).SelectMany(member => Violations(member, documentation));

    private static IEnumerable<string> Violations(MemberInfo member, DocumentationFile documentation)
    {
        XElement? text = documentation.Of(member);
        if (text is null && (IsImplicitConstructor(member) || IsOverrideOfFramework(member)))
        {
            return [];
        }

        bool inherits = text?.Element("inheritdoc") is not null;
        bool hasSummary = inherits || !string.IsNullOrWhiteSpace(text?.Element("summary")?.Value);
        IEnumerable<string> found = hasSummary ? [] : [$"{DocumentationFile.Id(member)} has no summary"];
        found =
            inherits ? found
                : found.Concat(
                    Undescribed(member, text).Select(parameter => $"{DocumentationFile.Id(member)} does not say what '{parameter}' is"));
        return found.Concat(
            (text?.Elements("remarks") ?? []).SelectMany(
                remarks => FormulaFaults(remarks).Select(fault => $"{DocumentationFile.Id(member)} {fault}")));
    }

    private static IEnumerable<string> Undescribed(MemberInfo member, XElement? text) => (member switch
    {
        MethodBase method => method.GetParameters(),
        PropertyInfo property => property.GetIndexParameters(),
        _ => [],
    }).Select(parameter => parameter.Name!)
        .Where(
            name =>
                !(text?.Elements("param") ?? []).Any(
                    described =>
                        described.Attribute("name")?.Value == name && !string.IsNullOrWhiteSpace(string.Concat(described.Nodes()))));

    private static IEnumerable<string> FormulaFaults(XElement remarks)
    {
        string text = string.Concat(remarks.Nodes().Select(node => node.ToString(SaveOptions.DisableFormatting)));
        if (!text.Contains("Equation:", StringComparison.Ordinal))
        {
            yield break;
        }

        if (!EquationLine().IsMatch(text))
        {
            yield return "has an empty equation";
        }

        if (!RangeLine().IsMatch(text))
        {
            yield return "has an equation without a range";
        }

        int source = text.IndexOf("Source:", StringComparison.Ordinal);
        string[] cited = source < 0 ? [] : [.. Reference().Matches(text[source..]).Select(match => match.Groups[1].Value)];
        if (!cited.Any(KnownSources.Contains))
        {
            yield return "has an equation without a source among Sources";
        }
    }

    private static bool IsImplicitConstructor(MemberInfo member) =>
        member is ConstructorInfo constructor && constructor.GetParameters().Length == 0;

    private static bool IsOverrideOfFramework(MemberInfo member) =>
        member is MethodInfo method && method.GetBaseDefinition().DeclaringType is { } origin
            && origin.Assembly != method.DeclaringType!.Assembly;

    [GeneratedRegex(@"Equation:[ \t]*[^\s]")]
    private static partial Regex EquationLine();

    [GeneratedRegex(@"Range:\s*(?!Source:)[^\s]")]
    private static partial Regex RangeLine();

    [GeneratedRegex("""<see cref="([^"]+)"\s*/>""")]
    private static partial Regex Reference();
}

public sealed class DocumentationRulesTests
{
    private static readonly DocumentationFile OfTests = DocumentationFile.For(typeof(DocumentationRulesTests).Assembly);

    [Fact]
    public void Every_public_member_is_documented_and_every_formula_carries_range_and_source() =>
        Assert.Empty(PublicApi.Assemblies.SelectMany(assembly =>
        {
            DocumentationFile documentation = DocumentationFile.For(assembly);
            return assembly.GetExportedTypes().SelectMany(type => DocumentationRules.Violations(type, documentation));
        }));

    [Fact]
    public void The_library_has_formulas_to_check()
    {
        DocumentationFile documentation = DocumentationFile.For(typeof(Source).Assembly);
        int formulas = typeof(Source).Assembly.GetExportedTypes()
            .SelectMany(PublicApi.WrittenMembers)
            .Count(member => documentation.Of(member)?.Element("remarks")?.Value.Contains("Equation:", StringComparison.Ordinal) == true);
        Assert.True(formulas >= 10, $"only {formulas} members carry an equation: is the documentation file still read?");
    }

    [Theory]
    [InlineData("P:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutSummary has no summary")]
    [InlineData("M:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutRange(System.Double) has an equation without a range")]
    [InlineData("M:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutRange(System.Double) does not say what 'a' is")]
    [InlineData("M:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithEmptyParameter(System.Double) does not say what 'a' is")]
    [InlineData("P:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutSource has an equation without a source among Sources")]
    [InlineData("P:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutRealSource has an equation without a source among Sources")]
    [InlineData("P:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithEmptyEquation has an empty equation")]
    public void A_badly_documented_member_is_reported_by_name(string expected) =>
        Assert.Contains(expected, DocumentationRules.Violations(typeof(Faulty.BadlyDocumented), OfTests));

    [Fact]
    public void A_sound_type_is_not_reported() => Assert.Empty(DocumentationRules.Violations(typeof(Faulty.Sound), OfTests));
}
