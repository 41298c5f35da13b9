using System.Reflection;
using BendMath.Tests.Conventions;

namespace BendMath.Fuzz.Making;

/// <summary>
/// What a door may throw when it gets drawn arguments: what its documentation promises, and an exception about an argument names one it
/// has.
/// </summary>
internal static class Judge
{
    private static readonly Dictionary<Assembly, DocumentationFile> Documentation =
        PublicApi.Assemblies.ToDictionary(assembly => assembly, DocumentationFile.For);

    public static bool MayThrow(MemberInfo door, Exception thrown) => thrown is ArgumentException argument
        ? Doors.ParametersOf(door).Any(parameter => parameter.Name == argument.ParamName) && Promises(door, thrown)
        : thrown is InvalidOperationException or FormatException && Promises(door, thrown);

    /// <summary>A type of another library may refuse what was drawn for it.</summary>
    private static bool Promises(MemberInfo door, Exception thrown) =>
        !Documentation.TryGetValue(door.DeclaringType!.Assembly, out DocumentationFile? ours) || ours.Promises(door, thrown.GetType());
}
