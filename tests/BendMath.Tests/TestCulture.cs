using System.Globalization;
using System.Runtime.CompilerServices;

namespace BendMath.Tests;

/// <summary>
/// Runs the whole suite under the culture named by BENDMATH_TEST_CULTURE: <c>de-DE</c> writes decimal commas, <c>tr-TR</c> has an i of its
/// own.
/// </summary>
public static class TestCulture
{
    public const string Variable = "BENDMATH_TEST_CULTURE";

    public static string? Requested => Environment.GetEnvironmentVariable(Variable);

    [ModuleInitializer]
    internal static void Apply()
    {
        if (Requested is not { } name)
        {
            return;
        }

        CultureInfo culture =
            name is "" or "invariant" ? CultureInfo.InvariantCulture : CultureInfo.GetCultureInfo(name, predefinedOnly: true);
        CultureInfo.DefaultThreadCurrentCulture = culture;
        CultureInfo.DefaultThreadCurrentUICulture = culture;
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = culture;
    }
}

public sealed class TestCultureTests
{
    [Fact]
    public void Tests_run_under_the_requested_culture()
    {
        if (TestCulture.Requested is { } name)
        {
            Assert.Equal(name == "invariant" ? string.Empty : name, CultureInfo.CurrentCulture.Name);
        }
        else
        {
            Assert.Null(CultureInfo.DefaultThreadCurrentCulture);
        }
    }

    [Fact]
    public void Decimal_commas_are_really_written_under_German()
    {
        Assert.Equal("1,5", 1.5.ToString(CultureInfo.GetCultureInfo("de-DE")));
        Assert.Equal("ı", "I".ToLower(CultureInfo.GetCultureInfo("tr-TR")));
    }
}
