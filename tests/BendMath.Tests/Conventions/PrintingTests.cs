using System.Globalization;
using System.Text.RegularExpressions;
using BendMath.Json;

namespace BendMath.Tests.Conventions;

/// <summary>What a type prints does not depend on the culture of the machine.</summary>
public sealed partial class PrintingTests
{
    private static readonly string[] Cultures = ["", "de-DE", "tr-TR", "ar-SA", "fa-IR"];

    [Fact]
    public void Every_public_type_prints_the_same_in_every_culture() =>
        Assert.Empty(PublicApi.Types.Where(type => !type.IsEnum).SelectMany(ExampleValues.Of).Distinct().SelectMany(Violations));

    [Fact]
    public void A_type_that_follows_the_culture_is_reported_by_name() =>
        Assert.Contains(Violations(new Faulty.CultureBound()), violation => violation.Contains("CultureBound", StringComparison.Ordinal));

    [Fact]
    public void One_of_a_kind_is_printed_in_the_singular() =>
        Assert.Empty(PublicApi.Types.Where(type => !type.IsEnum).SelectMany(ExampleValues.Of).Concat(Alone).Distinct().SelectMany(Plurals));

    [Fact]
    public void A_type_that_prints_one_in_the_plural_is_reported_by_name() =>
        Assert.Contains(Plurals(new Faulty.Lonely()), violation => violation.Contains("Lonely prints '1 hoops'", StringComparison.Ordinal));

    /// <summary>Results that hold one of what they usually hold several of.</summary>
    private static IEnumerable<object> Alone =>
    [
        RingJobFile.Read("{ \"jobs\": [] }"),
        RingJobFile.Read(Json.JobTexts.Sound),
        new DieRack([new Die("250", UnitsNet.Length.FromMillimeters(250), ReferenceFace.InsideOfBar)]),
    ];

    private static IEnumerable<string> Plurals(object value) =>
        SingleInPlural().Matches(value.ToString() ?? string.Empty)
            .Select(match => $"{PublicApi.Name(value.GetType())} prints '{match.Value}'");

    [GeneratedRegex(@"(?<![\d.,/\-×x ])1 (?!axis\b)[a-z]{3,}s\b|^1 [a-z]{3,}s\b|(?<=, |of |: )1 [a-z]{3,}s\b")]
    private static partial Regex SingleInPlural();

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
