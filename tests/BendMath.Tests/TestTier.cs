using System.Diagnostics.CodeAnalysis;
using FsCheck.Xunit;

namespace BendMath.Tests;

/// <summary>
/// How many of its seeded cases a test takes: in a plain run enough to notice what broke, with BENDMATH_TEST_TIER=full, as in
/// .ci/run, all of them.
/// </summary>
internal static class TestTier
{
    public const string Variable = "BENDMATH_TEST_TIER";

    public static bool IsFull { get; } = Environment.GetEnvironmentVariable(Variable) switch
    {
        null or "" => false,
        "full" => true,
        var other => throw new InvalidOperationException($"{Variable} is either not set or full, not '{other}'."),
    };

    public static int Cases(int plain, int full) => IsFull ? full : plain;
}

/// <summary>A property that is tried on fewer cases in a plain run; the cases are other ones each time.</summary>
[AttributeUsage(AttributeTargets.Method)]
[SuppressMessage("Extensibility", "xUnit3003", Justification = "The attribute it derives from takes no source information.")]
public sealed class TieredPropertyAttribute : PropertyAttribute
{
    public TieredPropertyAttribute(int plain, int full) => MaxTest = TestTier.Cases(plain, full);
}
