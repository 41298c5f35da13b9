using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Pairs;

/// <summary>
/// The face that closes on a bar from outside, against a die: a hollow face, or two supports and a rest between them. Closed, the outside
/// of the bar touches it at its middle and at both ends, or as far as the die lets it. Immutable and thread-safe.
/// </summary>
public sealed record MatingDie
{
    private readonly double _shims;

    private MatingDie(double halfSpan, double rise, double supportRadius, double radius, double shims, bool isFace)
    {
        Span = halfSpan;
        Deep = rise;
        Support = supportRadius;
        R = radius;
        _shims = shims;
        IsHollowFace = isFace;
    }

    /// <summary>Whether it is a hollow face; otherwise two supports and a rest between them.</summary>
    public bool IsHollowFace { get; }

    /// <summary>Half the distance between its ends: the edges of a hollow face, or the middles of two round supports.</summary>
    public Length HalfSpan => Length.FromMeters(Span);

    /// <summary>How far its ends stand out past the place where the middle of the bar comes to rest.</summary>
    /// <remarks>
    /// Equation: R − √(R² − a²) for a hollow face.
    /// Range: given for supports.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length Rise => Length.FromMeters(Deep);

    /// <summary>Radius of the supports where the bar touches them; zero for edges.</summary>
    public Length SupportRadius => Length.FromMeters(Support);

    /// <summary>Thickness of shims between the bar and this face, bent along with the bar.</summary>
    public Length Shims => Length.FromMeters(_shims);

    /// <summary>Radius of the circle that touches it at the middle and at both ends.</summary>
    /// <remarks>
    /// Equation: R = (a² + s²)/(2s) − r, with half-span a, rise s and support radius r.
    /// Range: the radius of the face itself for a hollow one.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length Radius => Length.FromMeters(R);

    internal double Span { get; }

    internal double Deep { get; }

    internal double Support { get; }

    internal double R { get; }

    internal double Shim => _shims;

    /// <summary>A hollow face of one radius.</summary>
    /// <param name="radius">Its radius, greater than zero.</param>
    /// <param name="halfSpan">Half the distance from edge to edge, greater than zero and not greater than the radius.</param>
    /// <param name="shims">Thickness of shims between the bar and the face, zero or more; null for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MatingDie OfFace(Length radius, Length halfSpan, Length? shims = null)
    {
        double r = Guard.Positive(radius, nameof(radius));
        double a = Guard.Positive(halfSpan, nameof(halfSpan));
        return a <= r
            ? new(a, a * a / (r + Math.Sqrt((r - a) * (r + a))), 0, r, Thickness(shims), isFace: true)
            : throw Guard.Fault(nameof(halfSpan), halfSpan, $"must not be greater than the radius of the face, {Guard.MillimetersText(r)}");
    }

    /// <summary>Two supports and a rest between them.</summary>
    /// <param name="halfSpan">Half the distance between the middles of the supports, greater than zero.</param>
    /// <param name="rise">How far the supports stand out past the rest, greater than zero and not greater than the half-span.</param>
    /// <param name="supportRadius">Radius of the supports, zero for edges; small enough that a circle touches both and the rest.</param>
    /// <param name="shims">Thickness of shims between the bar and the rest, zero or more; null for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static MatingDie OfSupports(Length halfSpan, Length rise, Length supportRadius, Length? shims = null)
    {
        double a = Guard.Positive(halfSpan, nameof(halfSpan));
        double s = Guard.Positive(rise, nameof(rise));
        double r = Guard.NonNegative(supportRadius, nameof(supportRadius));
        if (s > a)
        {
            throw Guard.Fault(nameof(rise), rise, $"must not be greater than the half-span, {Guard.MillimetersText(a)}");
        }

        double through = (a * a + s * s) / (2 * s);
        return through - r >= Guard.LeastMeters
            ? new(a, s, r, through - r, Thickness(shims), isFace: false)
            : throw Guard.Fault(nameof(supportRadius), supportRadius,
                $"must be less than the radius of the circle through the supports and the rest, {Guard.MillimetersText(through)}");
    }

    /// <summary>The face or the supports.</summary>
    public override string ToString() =>
        IsHollowFace
            ? Invariant(
                $"hollow face of radius {R * 1e3:0.##} mm, {2e3 * Span:0.##} mm wide{(_shims == 0 ? string.Empty : Invariant($", shims "
                    + $"of {_shims * 1e3:0.##} mm"))}")
                        : Invariant(
                            $"supports {2e3 * Span:0.##} mm apart, {Deep * 1e3:0.##} mm above the rest, of radius {Support * 1e3:0.##} "
                                + $"mm{(_shims == 0 ? string.Empty : Invariant($", shims of {_shims * 1e3:0.##} mm"))}");

    private static double Thickness(Length? shims) => shims is { } given ? Guard.NonNegative(given, nameof(shims)) : 0;
}
