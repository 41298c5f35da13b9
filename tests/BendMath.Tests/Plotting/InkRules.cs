using System.Globalization;
using System.Text.RegularExpressions;
using BendMath.Plotting;

namespace BendMath.Tests.Plotting;

/// <summary>What every picture keeps to: it prints in black and gray, and is the same in every culture.</summary>
internal static class InkRules
{
    public static void Hold(BendFigure figure)
    {
        string svg = figure.ToSvg();
        string[] colors = [.. Regex.Matches(svg, "(?:fill|stroke)=\"([^\"]+)\"").Select(match => match.Groups[1].Value).Distinct()];
        Assert.NotEmpty(colors);
        Assert.All(colors,
            color =>
                Assert.Matches("^(?:none|black|white|#(?<hex>[0-9A-Fa-f]{2})\\k<hex>\\k<hex>|rgb\\((?<part>\\d+),\\k<part>,\\k<part>\\))$",
                    color));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(svg, figure.ToSvg());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
