using System.Globalization;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>
/// Finds what lowers a risk by making the check again with one thing changed, so that the number it hands out is one that passes.
/// </summary>
internal static class Remedies
{
    private const double WidestMeters = 1e6;

    /// <summary>
    /// The least inside radius at which the check finds nothing; the risk falls with the radius. Null when none is found, and for a bar
    /// that is pulled.
    /// </summary>
    public static DistortionRemedy? Radius(LoadedBend loaded, Func<LoadedBend, Judgment> check)
    {
        if (loaded.IsPulled)
        {
            return null;
        }

        BendAnalysis bar = loaded.Analysis.ForSearch();
        double low = loaded.State.InsideRadius;
        double high = low;
        do
        {
            low = high;
            high = 2 * low;
            if (high > WidestMeters)
            {
                return null;
            }
        }
        while (!check(bar.LoadedToInside(high)).IsHarmless);

        while (high > low * (1 + 1e-6))
        {
            double middle = Math.Sqrt(low * high);
            if (check(bar.LoadedToInside(middle)).IsHarmless)
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return AtLeastRadius(high);
    }

    public static DistortionRemedy AtLeastRadius(double meters)
    {
        double value = RoundedUp(meters);
        return new(Text("use an inside radius of at least {0} mm while loaded", value)) { LeastRadius = Length.FromMeters(value) };
    }

    public static DistortionRemedy AtMostLeg(string name, double meters)
    {
        double value = RoundedDown(meters);
        return new(Text("use a " + name + " of at most {0} mm", value)) { LargestLeg = Length.FromMeters(value) };
    }

    public static DistortionRemedy AtLeastThickness(string name, double meters)
    {
        double value = RoundedUp(meters);
        return new(Text("use a " + name + " of at least {0} mm", value)) { LeastThickness = Length.FromMeters(value) };
    }

    public static DistortionRemedy AtMostDistance(double meters)
    {
        double value = RoundedDown(meters);
        return new(Text("guide the bar sideways at least every {0} mm", value)) { LargestSupportDistance = Length.FromMeters(value) };
    }

    public static DistortionRemedy Support(string sentence) => new(sentence);

    /// <summary>
    /// Another orientation of the same stock that lowers the level at the same inside radius; the one that lowers it most. Null when there
    /// is none.
    /// </summary>
    public static DistortionRemedy? Orientation(LoadedBend loaded, RiskLevel level, Func<LoadedBend, Judgment> check)
    {
        if (loaded.IsPulled)
        {
            return null;
        }

        OrientedSection? best = null;
        RiskLevel lowest = level;
        foreach (LoadedBend other in loaded.LaidOtherwise)
        {
            Judgment judgment = check(other);
            if (judgment.NotMade is null && (judgment.Finding?.Level ?? RiskLevel.Low) < lowest)
            {
                best = other.Analysis.Section;
                lowest = judgment.Finding?.Level ?? RiskLevel.Low;
            }
        }

        return best is null ? null
            : new($"lay it otherwise ({best.Orientation}), which makes another ring") { Section = best };
    }

    private static string Text(string format, double meters) =>
        string.Format(CultureInfo.InvariantCulture, format, (meters * 1e3).ToString("0.#####", CultureInfo.InvariantCulture));

    // Four digits, to the safe side, so that the printed number is the one that passes.
    private static double RoundedUp(double meters) => Math.Ceiling(meters / Step(meters) * (1 - 1e-12)) * Step(meters);

    private static double RoundedDown(double meters) => Math.Floor(meters / Step(meters) * (1 + 1e-12)) * Step(meters);

    private static double Step(double meters) => Math.Pow(10, Math.Floor(Math.Log10(meters)) - 3);
}
