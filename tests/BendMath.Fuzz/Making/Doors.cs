using System.Collections.Concurrent;
using System.Reflection;
using BendMath.Tests.Conventions;

namespace BendMath.Fuzz.Making;

/// <summary>
/// The public members that make a value of a type, found by reflection: a new shape, law or model is found without being told.
/// </summary>
internal static class Doors
{
    private static readonly ConcurrentDictionary<Type, IReadOnlyList<MemberInfo>> Found = new();

    private static readonly ConcurrentDictionary<Type, IReadOnlyList<Type>> Kinds = new();

    private static readonly ConcurrentDictionary<Type, IReadOnlyList<MemberInfo>> Lying = new();

    /// <summary>Concrete public types below an abstract one, by name.</summary>
    public static IReadOnlyList<Type> KindsOf(Type type) =>
        Kinds.GetOrAdd(type, static wanted => [.. PublicApi.Types.Where(kind => !kind.IsAbstract && wanted.IsAssignableFrom(kind))]);

    /// <summary>Its own constructors and static members; for a type that has none, every member of any type that hands one out.</summary>
    public static IReadOnlyList<MemberInfo> Of(Type type) =>
        Found.GetOrAdd(type, static made => Own(made) is { Count: > 0 } own ? own : Others(made));

    /// <summary>Ways a shape can lie, as the members of its type that hand out a section without being told how it lies.</summary>
    public static IReadOnlyList<MemberInfo> OrientationsOf(Type shape) => Lying.GetOrAdd(shape, static shape =>
        [.. shape.GetMembers(BindingFlags.Public | BindingFlags.Instance).Where(member => TypeOf(member) == typeof(OrientedSection) && ParametersOf(member).All(parameter => parameter.ParameterType != typeof(Orientation)))]);

    public static ParameterInfo[] ParametersOf(MemberInfo door) => door is MethodBase method ? method.GetParameters() : [];

    public static bool IsStatic(MemberInfo door) => door switch
    {
        ConstructorInfo => true,
        MethodInfo method => method.IsStatic,
        PropertyInfo property => property.GetMethod!.IsStatic,
        _ => throw new NotSupportedException($"{door} is no door."),
    };

    public static Type? TypeOf(MemberInfo member) => member switch
    {
        MethodInfo { IsSpecialName: false } method => method.ReturnType,
        PropertyInfo { GetMethod: not null } property when property.GetIndexParameters().Length == 0 => property.PropertyType,
        _ => null,
    };

    private static List<MemberInfo> Own(Type type) =>
    [
        .. type.GetConstructors().Where(constructor => !type.IsAbstract && !PublicApi.IsCompilerGenerated(constructor)),
        .. type.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly).Where(member => TypeOf(member) == type),
    ];

    private static List<MemberInfo> Others(Type type) =>
        [.. PublicApi.Types.Where(owner => owner != type).SelectMany(PublicApi.WrittenMembers).Where(member => TypeOf(member) is { } handed && (handed == type || IsListOf(handed, type)))];

    private static bool IsListOf(Type list, Type type) =>
        list.IsGenericType && list.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) && list.GetGenericArguments()[0] == type;
}
