using System.Reflection;

namespace BendMath.Tests.Conventions;

/// <summary>A person can fill a public constructor: parts that belong together are a type of their own.</summary>
internal static class ConstructorRules
{
    private const int MostParameters = 8;

    public static IEnumerable<string> Violations(Type type) => type
        .GetConstructors(BindingFlags.Instance | BindingFlags.Public)
        .Where(constructor => constructor.GetParameters().Length > MostParameters)
        .Select(
            constructor =>
                $"{PublicApi.Name(type)} has a public constructor with {constructor.GetParameters().Length} parameters, more "
                    + $"than {MostParameters}");
}

public sealed class ConstructorRulesTests
{
    [Fact]
    public void No_public_constructor_has_more_parameters_than_a_person_can_fill() =>
        Assert.Empty(PublicApi.Types.SelectMany(ConstructorRules.Violations));

    [Fact]
    public void A_constructor_with_too_many_parameters_is_reported_by_name() =>
        Assert.EndsWith("Crowded has a public constructor with 9 parameters, more than 8",
            Assert.Single(ConstructorRules.Violations(typeof(Faulty.Crowded))), StringComparison.Ordinal);

    [Fact]
    public void A_sound_type_is_not_reported() => Assert.Empty(ConstructorRules.Violations(typeof(Faulty.Sound)));
}
