using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion.Checks;

/// <summary>
/// Thickness of a solid bar at its inside and outside edge, where it is bent the hard way: the section becomes a keystone. Immutable and
/// thread-safe.
/// </summary>
/// <remarks>
/// Equation: t(y) = t/√(1 + e(y)); keystoning (t_in − t_out)/t; low up to 5 %, high above 10 %.
/// Range: constant volume, the bar free to change its thickness; 5 % is house practice for distortion of sections, 10 % a setting.
/// Source: <see cref="Sources.ModernSteel2019"/>
/// </remarks>
internal static class KeystoneCheck
{
    private const double Low = 0.05;

    private const double Medium = 0.1;

    private const string Validity = "Flats the hard way, constant volume, edges free to thicken; 10 % as the upper bound is a setting.";

    public static Judgment Judge(LoadedBend loaded)
    {
        OrientedSection section = loaded.Analysis.Section;
        if (!section.Features.IsFlatHardWay)
        {
            return default;
        }

        double inside = 1 / Math.Sqrt(1 + loaded.Strain(0));
        double outside = 1 / Math.Sqrt(1 + loaded.Strain(section.Height));
        double thickness = section.Properties.Width.Millimeters;
        double keystoning = inside - outside;
        RiskLevel level = Judgment.Level(keystoning, Low, Medium);
        string sentence = Invariant(
            $"The flat becomes {thickness * inside:0.##} mm thick at its inside edge and {thickness * outside:0.##} mm at its outside "
                + $"edge, a keystone of {100 * keystoning:0.0} %; up to 5 % counts as low.");
        return new DistortionFinding(DistortionCheck.Keystoning,
            "keystoning", keystoning, Low, level, sentence, Sources.ModernSteel2019, Validity,
                () => [Remedies.Radius(loaded, Judge), Remedies.Orientation(loaded, level, Judge)]);
    }
}
