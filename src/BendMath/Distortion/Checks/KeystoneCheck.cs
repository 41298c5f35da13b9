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
public static class KeystoneCheck
{
    private const double Low = 0.05;

    private const double Medium = 0.1;

    private const string Validity = "Flats the hard way, constant volume, edges free to thicken; 10 % as the upper bound is a setting.";

    /// <summary>Checks a loaded bend; null for all but flats the hard way.</summary>
    /// <param name="loaded">The bend.</param>
    /// <exception cref="ArgumentNullException">The bend is null.</exception>
    public static DistortionFinding? Of(LoadedBend loaded) => Judge(Guard.NotNull(loaded, nameof(loaded))).Finding;

    /// <summary>Thickness of a fiber after bending.</summary>
    /// <param name="thickness">Thickness before, greater than zero.</param>
    /// <param name="strain">Strain along the bar, tension positive, greater than −100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <remarks>
    /// Equation: t(e) = t/√(1 + e).
    /// Range: constant volume, the bar free to change its thickness.
    /// Source: <see cref="Sources.ModernSteel2019"/>
    /// </remarks>
    public static Length ThicknessAfter(Length thickness, Ratio strain)
    {
        double t = Guard.Positive(thickness, nameof(thickness));
        double e = Guard.Finite(strain, nameof(strain));
        return e > -1 + 1e-9 ? Length.FromMeters(t / Math.Sqrt(1 + e))
            : throw Guard.Fault(nameof(strain), strain, "must be greater than -100 %");
    }

    internal static Judgment Judge(LoadedBend loaded)
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
        return new DistortionFinding(
            "keystoning", keystoning, Low, level, sentence, Sources.ModernSteel2019, Validity,
                () => [Remedies.Radius(loaded, Judge), Remedies.Orientation(loaded, level, Judge)]);
    }
}
