using System.Collections;
using System.Reflection;

namespace BendMath.Tests.Conventions;

/// <summary>
/// Invariants are checked in constructors, so nothing may get around them: no open records, no positional ones, no public setters.
/// </summary>
internal static class RecordRules
{
    public static IEnumerable<string> Violations(Type type)
    {
        string name = PublicApi.Name(type);
        if (PublicApi.IsRecordClass(type) && !type.IsSealed && !IsClosedHierarchy(type))
        {
            yield return $"{name} is a public record that is neither sealed nor closed to other assemblies";
        }

        if (PublicApi.IsRecord(type) && type.GetMethod("Deconstruct") is { } deconstruct && PublicApi.IsCompilerGenerated(deconstruct))
        {
            yield return $"{name} is a positional record: its constructor checks nothing";
        }

        foreach (PropertyInfo property in type.GetProperties()
            .Where(property => property.DeclaringType == type && property.SetMethod is { IsPublic: true }))
        {
            yield return $"{PublicApi.Name(property)} has a public set or init accessor";
        }

        foreach (FieldInfo field in type.GetFields().Where(field => field is { IsInitOnly: false, IsLiteral: false } && !type.IsEnum))
        {
            yield return $"{PublicApi.Name(field)} is a public field that can be changed";
        }

        if (PublicApi.IsRecord(type) && !type.IsAbstract && type.GetMethod(nameof(ToString), Type.EmptyTypes) is { } print
            && PublicApi.IsCompilerGenerated(print))
        {
            yield return $"{name} is a public record without a ToString of its own";
        }

        if (!PublicApi.IsRecord(type) && type is { IsAbstract: false, IsEnum: false } && !type.IsSubclassOf(typeof(Delegate))
            && type.GetMethod(nameof(ToString), Type.EmptyTypes)!.DeclaringType is var origin
                && (origin == typeof(object) || origin == typeof(ValueType)))
        {
            yield return $"{name} is a public type without a ToString of its own";
        }
    }

    /// <summary>A list that is an array behind its interface can be changed by whoever casts it back.</summary>
    public static IEnumerable<string> OpenLists(object value) => value.GetType().GetProperties()
        .Where(
            property =>
                property.GetIndexParameters().Length == 0 && typeof(IEnumerable).IsAssignableFrom(property.PropertyType)
                    && property.PropertyType != typeof(string))
        .Where(property => property.GetValue(value) is Array { Length: > 0 } or IList { IsReadOnly: false, Count: > 0 })
        .Select(property => $"{PublicApi.Name(property)} hands out a list that can be changed");

    private static bool IsClosedHierarchy(Type type) => type.IsAbstract && type
        .GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
        .Where(constructor => !PublicApi.IsCompilerGenerated(constructor))
        .All(constructor => constructor is { IsPublic: false, IsFamily: false, IsFamilyOrAssembly: false });
}

public sealed class RecordRulesTests
{
    [Fact]
    public void Public_types_cannot_be_changed_or_made_unchecked() => Assert.Empty(PublicApi.Types.SelectMany(RecordRules.Violations));

    [Theory]
    [InlineData(typeof(Faulty.OpenRecord), "OpenRecord is a public record that is neither sealed")]
    [InlineData(typeof(Faulty.OpenBase), "OpenBase is a public record that is neither sealed")]
    [InlineData(typeof(Faulty.PositionalRecord), "PositionalRecord is a positional record")]
    [InlineData(typeof(Faulty.PositionalRecord), "PositionalRecord.Depth has a public set or init accessor")]
    [InlineData(typeof(Faulty.PositionalRecord), "PositionalRecord is a public record without a ToString")]
    [InlineData(typeof(Faulty.PositionalStruct), "PositionalStruct is a positional record")]
    [InlineData(typeof(Faulty.Settable), "Settable.Depth has a public set or init accessor")]
    [InlineData(typeof(Faulty.Mute), "Mute is a public type without a ToString")]
    [InlineData(typeof(Faulty.MuteStruct), "MuteStruct is a public type without a ToString")]
    [InlineData(typeof(Faulty.Settable), "Settable.Width is a public field that can be changed")]
    public void A_faulty_type_is_reported_by_name(Type type, string expected) =>
        Assert.Contains(RecordRules.Violations(type), violation => violation.Contains(expected, StringComparison.Ordinal));

    [Fact]
    public void No_list_of_a_result_can_be_changed() =>
        Assert.Empty(PublicApi.Types.Where(type => !type.IsEnum).SelectMany(ExampleValues.Of).SelectMany(RecordRules.OpenLists).Distinct());

    [Fact]
    public void A_list_that_can_be_changed_is_reported_by_name() =>
        Assert.Contains(RecordRules.OpenLists(new Faulty.Settable()),
            violation => violation.Contains("Settable.Depths hands out a list", StringComparison.Ordinal));

    [Fact]
    public void A_sound_type_is_not_reported() => Assert.Empty(RecordRules.Violations(typeof(Faulty.Sound)));
}
