using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

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

    /// <summary>Radius of the face the chord was laid against, with the error that errors of the readings leave.</summary>
    /// <param name="chord">Length of the chord, greater than zero.</param>
    /// <param name="rise">Greatest distance between chord and arc, greater than zero.</param>
    /// <param name="chordError">Error of the chord either way, less than the chord.</param>
    /// <param name="riseError">Error of the rise either way, less than the rise.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or the radius may be beyond a thousand
    /// kilometers.</exception>
    /// <remarks>
    /// Equation: ΔR = √((c/(4h)·Δc)² + ((c²/(8h²) − 1/2)·Δh)²); worst case: the least and greatest R of all c ± Δc and h ± Δh.
    /// Range: the first-order error where the errors are small against the readings and independent; the worst case always, also past the
    /// half circle, where R has its least value c/2.
    /// Source: <see cref="Sources.Gum"/>
    /// </remarks>
    public static MeasuredLength RadiusOf(Length chord, Length rise, Length chordError, Length riseError)
    {
        double radius = RadiusOf(chord, rise).Meters;
        double c = Guard.Positive(chord, nameof(chord));
        double h = Guard.Positive(rise, nameof(rise));
        double dc = Guard.Place(chordError, nameof(chordError));
        double dh = Guard.Place(riseError, nameof(riseError));
        if (dc >= c)
        {
            throw Guard.Fault(nameof(chordError), chordError, $"must be less than the chord, {Guard.Text(chord)}");
        }

        if (dh >= h)
        {
            throw Guard.Fault(nameof(riseError), riseError, $"must be less than the rise, {Guard.Text(rise)}");
        }

        double byChord = c / (4 * h) * dc;
        double byRise = (c * c / (8 * h * h) - 0.5) * dh;
        double error = Math.Sqrt(byChord * byChord + byRise * byRise);

        // R rises with c. Over h it has one valley, at h = c/2: greatest at an end of the range, least there or as near to it as the range
        // comes.
        double most = Math.Max(Of(c + dc, h - dh), Of(c + dc, h + dh));
        double least = Of(c - dc, Math.Min(Math.Max((c - dc) / 2, h - dh), h + dh));
        return Math.Max(most, radius + error) <= Guard.MostMeters
            ? new(radius, error, new(Length.FromMeters(least), Length.FromMeters(most)))
            : throw Guard.Fault(nameof(riseError), riseError,
                $"must leave a radius of at most {Guard.MillimetersText(Guard.MostMeters)} for a rise of {Guard.Text(rise)} on a chord "
                    + $"of {Guard.Text(chord)}");

        static double Of(double chord, double rise) => chord * chord / (8 * rise) + rise / 2;
    }

    /// <summary>
    /// The shortest chord on which a reading of the rise tells the radius well enough. Longer is better: always use the longest chord that
    /// fits.
    /// </summary>
    /// <param name="radius">About the radius of the face, greater than zero.</param>
    /// <param name="riseError">Error of the rise either way, greater than zero.</param>
    /// <param name="radiusError">Error of the radius that is accepted, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <remarks>
    /// Equation: |dR/dh| = cos α/(1 − cos α) with c = 2R·sin α; c = 2R·√(1 − (q/(1 + q))²), q = ΔR/Δh.
    /// Range: first order in the errors; the error of the chord is left out.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static Length ShortestChordFor(Length radius, Length riseError, Length radiusError)
    {
        double r = Guard.Positive(radius, nameof(radius));
        double quotient = Guard.Positive(radiusError, nameof(radiusError)) / Guard.Positive(riseError, nameof(riseError));

        // 1 − (q/(1 + q))² = (1 + 2q)/(1 + q)², without cancellation.
        return Length.FromMeters(2 * r * Math.Sqrt(1 + 2 * quotient) / (1 + quotient));
    }

    /// <summary>The rises a template or straightedge may show on a good ring: less is too wide, more is too tight.</summary>
    /// <param name="radius">Wanted radius of the face, greater than zero.</param>
    /// <param name="tolerance">Difference of the radius that is accepted either way, zero or more, less than the radius.</param>
    /// <param name="chord">Length of the chord, greater than zero and not greater than the least diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    /// <remarks>
    /// Equation: h(R + T) to h(R − T), h(R) = R − √(R² − c²/4).
    /// Range: c ≤ 2(R − T); the error of reading the rise must still be taken off at both ends.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static LengthRange RiseBand(Length radius, Length tolerance, Length chord)
    {
        double r = Guard.Positive(radius, nameof(radius));
        double t = Guard.NonNegative(tolerance, nameof(tolerance));
        double half = Guard.Positive(chord, nameof(chord)) / 2;
        return t >= r ? throw Guard.Fault(nameof(tolerance), tolerance, $"must be less than the radius, {Guard.Text(radius)}")
            : half > r - t
                ? throw Guard.Fault(nameof(chord), chord,
                    $"must not be greater than the least diameter, {Guard.MillimetersText(2 * (r - t))}")
            : new(Length.FromMeters(Rise(r + t, half)), Length.FromMeters(Rise(r - t, half)));
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
            ? Length.FromMeters(Rise(r, half))
            : throw Guard.Fault(nameof(chord), chord, $"must not be greater than the diameter, {Guard.MillimetersText(2 * r)}");
    }

    private static double Rise(double radius, double half) => half * half / (radius + Math.Sqrt((radius - half) * (radius + half)));
}
