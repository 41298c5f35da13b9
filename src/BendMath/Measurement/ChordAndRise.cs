using UnitsNet;

namespace BendMath;

/// <summary>Radius from a straightedge laid across an arc, and back.</summary>
public static class ChordAndRise
{
    /// <summary>Radius of the face the chord was laid against.</summary>
    /// <param name="chord">Length of the chord, greater than zero.</param>
    /// <param name="rise">Greatest distance between chord and arc, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive and finite.</exception>
    /// <remarks>
    /// Equation: R = c²/(8h) + h/2.
    /// Range: any arc; a reading error dh changes R by about R·dh/h, so use the longest chord that fits.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static Length RadiusOf(Length chord, Length rise)
    {
        double c = Guard.Positive(chord, nameof(chord));
        double h = Guard.Positive(rise, nameof(rise));
        double radius = c * c / (8 * h) + h / 2;
        return radius < double.PositiveInfinity
            ? Length.FromMeters(radius)
            : throw Guard.Fault(nameof(rise), rise, $"must be large enough for a finite radius on a chord of {Guard.Text(chord)}");
    }

    /// <summary>Rise of the shorter arc of a radius over a chord: what a template or straightedge should show.</summary>
    /// <param name="radius">Radius of the face the chord is laid against, greater than zero.</param>
    /// <param name="chord">Length of the chord, greater than zero and not greater than the diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <remarks>
    /// Equation: h = R − √(R² − c²/4) = (c²/4)/(R + √(R² − c²/4)).
    /// Range: c ≤ 2R.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static Length RiseFor(Length radius, Length chord)
    {
        double r = Guard.Positive(radius, nameof(radius));
        double half = Guard.Positive(chord, nameof(chord)) / 2;
        return half <= r
            ? Length.FromMeters(half * half / (r + Math.Sqrt((r - half) * (r + half))))
            : throw Guard.Fault(nameof(chord), chord, $"must not be greater than the diameter, {Guard.MillimetersText(2 * r)}");
    }
}
