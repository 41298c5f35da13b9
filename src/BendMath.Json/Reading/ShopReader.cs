using BendMath.Distortion;
using BendMath.Forming.Variation;
using BendMath.Json.Parts;
using BendMath.Json.Words;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Json.Reading;

/// <summary>Reads what scatters from ring to ring, and what the distortion checks cannot know.</summary>
internal static class ShopReader
{
    /// <summary>Null where the file says nothing; the yield range of the material scatters anyway.</summary>
    public static InputVariation? Scatter(JobObject job, OrientedSection? section, BarMaterial? material)
    {
        if (job.OptionalObject("scatter") is not { } scatter)
        {
            return null;
        }

        string? standard = scatter.OptionalWord("bar to", MillWords.Standards);
        Length? stroke = scatter.OptionalLength("stroke", "0.1 mm");
        Ratio? curvature = scatter.OptionalPercent("curvature", "1 %");
        scatter.Close();
        MillTolerance? mill = standard is not null && section is not null ? Mill(scatter, section, standard) : null;
        return material is null ? null : scatter.Build(() => new InputVariation(material.YieldRange, mill, stroke, curvature));
    }

    public static DistortionSettings? Distortion(JobObject job)
    {
        if (job.OptionalObject("distortion") is not { } settings)
        {
            return null;
        }

        string? axial = settings.OptionalWord("axial leg", "backed", "free");
        string? compressed = settings.OptionalWord("compressed leg", "in a slot", "free");
        string? tube = settings.OptionalWord("tube", "held in shape", "free");
        Length? supports = settings.OptionalLength("distance between supports", "500 mm");
        Length? wall = settings.OptionalLength("least wall", "2 mm");
        string? used = settings.OptionalWord("used", "free", "held flat");
        settings.Close();
        return settings.Build(() => new DistortionSettings(
            new(compressed == "in a slot", axial is null ? null : axial == "backed", tube == "held in shape", supports),
                used == "held flat" ? Release.HeldFlat : Release.Free, wall));
    }

    private static MillTolerance? Mill(JobObject scatter, OrientedSection section, string standard)
    {
        Func<MillTolerance>? tolerance = MillWords.For(standard, section.Stock);
        if (tolerance is null)
        {
            scatter.Fault("bar to", $"\"bar to\" must be a standard for the bar of the job, {section.Stock.Name}, but is \"{standard}\".");
            return null;
        }

        return scatter.Build(tolerance, ("angle", "bar to"), ("flat", "bar to"), ("square", "bar to"), ("round", "bar to"),
            ("tube", "bar to"), ("pipe", "bar to"));
    }
}
