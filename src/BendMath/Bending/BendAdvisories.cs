using System.Globalization;

namespace BendMath.Bending;

/// <summary>The advisories of loaded and released states.</summary>
internal static class BendAdvisories
{
    private const double TightRatio = 3;

    public static IReadOnlyList<Advisory> ForLoaded(BendAnalysis analysis, BentState state)
    {
        double ratio = state.InsideRadius / analysis.Section.Height;
        if (ratio >= TightRatio)
        {
            return [];
        }

        string message = string.Format(
            CultureInfo.InvariantCulture,
            "The inside radius is {0:0.##} depths of the section. Below 3 depths, engineering strain without thinning is no longer accurate: expect more than 1 % error in cut length.",
            ratio);
        return [new("tight-radius", message, Sources.Mechanics)];
    }

    public static IReadOnlyList<Advisory> ForReleased(LoadedBend loaded, bool straight)
    {
        if (!straight)
        {
            return loaded.Advisories;
        }

        string message = string.Format(
            CultureInfo.InvariantCulture,
            "Held at an inside radius of {0:0.#} mm the bar stays elastic or nearly so: it springs back straight.",
            loaded.State.InsideRadius * 1e3);
        return [.. loaded.Advisories, new("springs-straight", message, Sources.Mechanics)];
    }
}
