namespace BendMath.Tests;

/// <summary>Equality to a relative tolerance.</summary>
internal static class Near
{
    public static void Relative(double expected, double actual, double tolerance, string what = "the value") =>
        Absolute(expected, actual, tolerance * Math.Abs(expected), what);

    public static void Absolute(double expected, double actual, double tolerance, string what = "the value") => Assert.True(
        expected.Equals(actual) || Math.Abs(actual - expected) <= tolerance,
        FormattableString.Invariant(
            $"{what}: expected {expected:R}, found {actual:R}, apart by {actual - expected:0.##e+0}, allowed {tolerance:0.##e+0}"));
}
