using System.Reflection;
using System.Runtime.CompilerServices;
using BendMath.Evidence;

namespace BendMath.Tests.Conventions;

/// <summary>The public types and members of the library, without what the compiler writes for records.</summary>
internal static class PublicApi
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static IReadOnlyList<Assembly> Assemblies { get; } =
        [typeof(Source).Assembly, Assembly.Load("BendMath.Json"), Assembly.Load("BendMath.Plotting"), Assembly.Load("BendMath.Csv")];

    public static IReadOnlyList<Type> Types { get; } =
        [.. Assemblies.SelectMany(assembly => assembly.GetExportedTypes()).OrderBy(Name, StringComparer.Ordinal)];

    public static string Name(MemberInfo member) => member switch
    {
        Type type => type.FullName ?? type.Name,
        _ => $"{Name(member.DeclaringType!)}.{member.Name}",
    };

    public static bool IsRecord(Type type) => IsRecordClass(type) || IsRecordStruct(type);

    public static bool IsRecordClass(Type type) => type.IsClass && type.GetMethod("<Clone>$") is not null;

    public static bool IsStatic(Type type) => type is { IsAbstract: true, IsSealed: true };

    public static bool IsCompilerGenerated(MemberInfo member) => member.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false);

    /// <summary>Fields, properties, events, constructors and methods a person wrote, declared on the type itself.</summary>
    public static IEnumerable<MemberInfo> WrittenMembers(Type type) => type.GetMembers(Declared).Where(member => member switch
    {
        Type => false,
        FieldInfo field => !field.IsSpecialName,
        MethodInfo method => !IsAccessor(method) && !IsGenerated(method),
        ConstructorInfo constructor => !IsGenerated(constructor),
        _ => true,
    });

    /// <summary>Constructors and methods a caller can hand arguments to, by reflection.</summary>
    public static IEnumerable<MethodBase> Callables(Type type) => Doors(type).Where(method => !TakesSpans(method));

    /// <summary>Methods on spans, which reflection cannot call: each has a test of its own.</summary>
    public static IEnumerable<MethodBase> SpanDoors(Type type) => Doors(type).Where(TakesSpans);

    private static bool TakesSpans(MethodBase method) => method.GetParameters().Any(parameter => parameter.ParameterType.IsByRefLike);

    private static IEnumerable<MethodBase> Doors(Type type) => WrittenMembers(type)
        .Select(member => member is PropertyInfo property && property.GetIndexParameters().Length > 0 ? property.GetMethod : member)
        .OfType<MethodBase>()
        .Where(
            method =>
                !type.IsSubclassOf(typeof(Delegate)) && !(method.IsConstructor && type.IsAbstract) && !method.IsAbstract
                    && method.Name != "<Clone>$");

    private static bool IsRecordStruct(Type type) =>
        type.IsValueType && type.GetMethod("PrintMembers", BindingFlags.NonPublic | BindingFlags.Instance) is not null;

    private static bool IsGenerated(MethodBase method) => IsCompilerGenerated(method) || method.Name == "<Clone>$";

    private static bool IsAccessor(MethodInfo method) =>
        method.IsSpecialName && !method.Name.StartsWith("op_", StringComparison.Ordinal);
}
