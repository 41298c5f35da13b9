using System.Reflection;
using UnitsNet;

namespace BendMath.Tests.Conventions;

/// <summary>
/// Which members must carry an equation. Every public member that hands out a number or a quantity either carries one and stands in
/// formulas.txt, or stands in plain-numbers.txt: read from a table, given by the caller, or said by the member it stands beside. Other
/// members with an equation stand in formulas.txt too. Both lists are complete and hold nothing else, so an equation that is deleted, and a
/// new number without one, is noticed.
/// </summary>
internal sealed class FormulaRules(DocumentationFile documentation, IReadOnlySet<string> formulas, IReadOnlySet<string> plain)
{
    public IEnumerable<string> Violations(Type type) => PublicApi.WrittenMembers(type).Prepend(type).Select(Violation).OfType<string>();

    /// <summary>Entries of the lists that no member of these types bears out.</summary>
    public IEnumerable<string> Stale(IEnumerable<Type> types)
    {
        HashSet<string> known = [.. types.SelectMany(type => PublicApi.WrittenMembers(type).Prepend(type)).Select(DocumentationFile.Id)];
        return formulas.Concat(plain).Where(id => !known.Contains(id)).Select(id => $"{id} is listed, but there is no such member");
    }

    private string? Violation(MemberInfo member)
    {
        string id = DocumentationFile.Id(member);
        bool carries =
            documentation.Of(member)?.Elements("remarks").Any(remarks => remarks.Value.Contains("Equation:", StringComparison.Ordinal))
                == true;
        return carries && plain.Contains(id) ? $"{id} carries an equation, but is listed in plain-numbers.txt"
            : carries && !formulas.Contains(id) ? $"{id} carries an equation, but is not listed in formulas.txt"
            : !carries && formulas.Contains(id) ? $"{id} has lost its equation"
            : !carries && IsNumber(Handed(member)) && !plain.Contains(id) ? $"{id} hands out a number without an equation"
            : null;
    }

    private static Type? Handed(MemberInfo member) => member switch
    {
        PropertyInfo property => property.PropertyType,
        MethodInfo method => method.ReturnType,
        _ => null,
    };

    private static bool IsNumber(Type? type) => type is not null && (Nullable.GetUnderlyingType(type) ?? type) is var bare
        && (bare == typeof(double) || (bare.IsValueType && typeof(IQuantity).IsAssignableFrom(bare)));
}

public sealed class FormulaRulesTests
{
    private static readonly DocumentationFile OfTests = DocumentationFile.For(typeof(FormulaRulesTests).Assembly);

    [Fact]
    public void Every_number_of_the_library_carries_its_equation_or_is_known_to_have_none()
    {
        IReadOnlySet<string> formulas = Listed("formulas.txt"), plain = Listed("plain-numbers.txt");
        string[] violations =
        [
            .. PublicApi.Assemblies.SelectMany(
                assembly =>
                    assembly.GetExportedTypes().SelectMany(new FormulaRules(DocumentationFile.For(assembly), formulas, plain).Violations)),
            .. new FormulaRules(OfTests, formulas, plain).Stale(PublicApi.Types),
        ];
        Assert.True(violations.Length == 0, string.Join(Environment.NewLine, violations));
    }

    [Theory]
    [InlineData("P:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutSummary", "", "WithoutSummary has lost its equation")]
    [InlineData("", "", "WithoutSummary hands out a number without an equation")]
    [InlineData("", "", "WithoutSource carries an equation, but is not listed in formulas.txt")]
    [InlineData("", "P:BendMath.Tests.Conventions.Faulty.BadlyDocumented.WithoutSource",
        "WithoutSource carries an equation, but is listed in plain-numbers.txt")]
    public void A_faulty_member_is_reported_by_name(string formula, string plain, string expected) => Assert.Contains(
        new FormulaRules(OfTests, new HashSet<string> { formula }, new HashSet<string> { plain }).Violations(
            typeof(Faulty.BadlyDocumented)),
        violation => violation.EndsWith(expected, StringComparison.Ordinal));

    [Fact]
    public void An_entry_without_a_member_is_reported_by_name() => Assert.Equal(
        ["P:Gone.Away is listed, but there is no such member"],
        new FormulaRules(OfTests, new HashSet<string> { "P:Gone.Away" }, new HashSet<string>()).Stale([typeof(Faulty.BadlyDocumented)]));

    private static HashSet<string> Listed(string file) =>
        [.. File.ReadLines(Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Conventions", file)).Where(line => line.Length > 0 && line[0] != '#')];
}
