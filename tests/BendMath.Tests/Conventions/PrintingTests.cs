using System.Globalization;

namespace BendMath.Tests.Conventions;

/// <summary>What a type prints does not depend on the culture of the machine.</summary>
public sealed class PrintingTests
{
    private static readonly string[] Cultures = ["", "de-DE", "tr-TR", "ar-SA", "fa-IR"];

    [Fact]
    public void Every_public_type_prints_the_same_in_every_culture() =>
        Assert.Empty(PublicApi.Types.Where(type => !type.IsEnum).SelectMany(ExampleValues.Of).Distinct().SelectMany(Violations));

    [Fact]
    public void A_type_that_follows_the_culture_is_reported_by_name() =>
        Assert.Contains(Violations(new Faulty.CultureBound()), violation => violation.Contains("CultureBound", StringComparison.Ordinal));

    private static IEnumerable<string> Violations(object value)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            string[] printed = [.. Cultures.Select(culture =>
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                return value.ToString() ?? string.Empty;
            })];
            return printed.Distinct(StringComparer.Ordinal).Count() == 1
                ? []
                : [$"{PublicApi.Name(value.GetType())} prints {string.Join(" | ", printed.Distinct(StringComparer.Ordinal))}"];
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
