using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>How much of a ring is wanted, by its turn, its chord or its length along a face. Immutable and thread-safe.</summary>
public sealed record ArcExtent
{
    private ArcExtent(double radians) => Radians = radians;

    /// <summary>A closed ring, 360°.</summary>
    public static ArcExtent FullRing { get; } = new(2 * Math.PI);

    /// <summary>Turn of the arc.</summary>
    public Angle Turn => Angle.FromRadians(Radians);

    /// <summary>Whether the arc closes.</summary>
    public bool IsFullRing => Math.Abs(Radians - 2 * Math.PI) < 1e-9;

    /// <summary>What is left of the ring when the arc is taken out, or null for a full ring.</summary>
    public ArcExtent? Rest => IsFullRing ? null : new(2 * Math.PI - Radians);

    internal double Radians { get; }

    /// <summary>An arc of a turn.</summary>
    /// <param name="turn">Greater than zero and not greater than 360°.</param>
    /// <exception cref="ArgumentOutOfRangeException">The turn is outside its range.</exception>
    public static ArcExtent Of(Angle turn)
    {
        double radians = Guard.Positive(turn, nameof(turn));
        return radians <= 2 * Math.PI * (1 + 1e-12)
            ? new(radians)
            : throw Guard.Fault(nameof(turn), turn, "must not be greater than 360°");
    }

    /// <summary>The shorter arc of a ring over a chord; <see cref="Rest"/> is the longer one.</summary>
    /// <param name="ring">The finished ring.</param>
    /// <param name="line">The line of the bar the chord ends on.</param>
    /// <param name="chord">Straight distance between the ends along that line, greater than zero and not greater than its diameter.</param>
    /// <exception cref="ArgumentNullException">The ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value or the chord is outside its range.</exception>
    /// <remarks>
    /// Equation: θ = 2·asin(c/(2R)).
    /// Range: c ≤ 2R.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static ArcExtent ForChord(FinishedRing ring, RadiusReference line, Length chord)
    {
        double radius = RadiusOf(ring, line);
        double share = Guard.Positive(chord, nameof(chord)) / (2 * radius);
        return share <= 1 + 1e-12
            ? new(2 * Math.Asin(Math.Min(1, share)))
            : throw Guard.Fault(nameof(chord), chord, $"must not be greater than the diameter there, {Guard.MillimetersText(2 * radius)}");
    }

    /// <summary>The arc of a ring that has a length along one of its lines.</summary>
    /// <param name="ring">The finished ring.</param>
    /// <param name="line">The line of the bar the tape follows.</param>
    /// <param name="length">Length along that line, greater than zero and not greater than its circumference.</param>
    /// <exception cref="ArgumentNullException">The ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value or the length is outside its range.</exception>
    /// <remarks>
    /// Equation: θ = l/R.
    /// Range: l ≤ 2πR.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public static ArcExtent ForLength(FinishedRing ring, RadiusReference line, Length length)
    {
        double radius = RadiusOf(ring, line);
        double turn = Guard.Positive(length, nameof(length)) / radius;
        return turn <= 2 * Math.PI * (1 + 1e-12)
            ? new(Math.Min(turn, 2 * Math.PI))
            : throw Guard.Fault(nameof(length), length,
                $"must not be greater than the circumference there, {Guard.MillimetersText(2 * Math.PI * radius)}");
    }

    /// <summary>Straight distance between the ends of the arc on one of its lines; zero for a full ring.</summary>
    /// <param name="ring">The finished ring.</param>
    /// <param name="line">The line of the bar.</param>
    /// <exception cref="ArgumentNullException">The ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value.</exception>
    /// <remarks>
    /// Equation: c = 2R·sin(θ/2).
    /// Range: any arc up to a full ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length ChordOn(FinishedRing ring, RadiusReference line) =>
        Length.FromMeters(IsFullRing ? 0 : 2 * RadiusOf(ring, line) * Math.Sin(Radians / 2));

    /// <summary>Length of the arc along one of its lines: what a tape shows there.</summary>
    /// <param name="ring">The finished ring.</param>
    /// <param name="line">The line of the bar.</param>
    /// <exception cref="ArgumentNullException">The ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value.</exception>
    /// <remarks>
    /// Equation: l = R·θ.
    /// Range: any arc up to a full ring.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length LengthOn(FinishedRing ring, RadiusReference line) => Length.FromMeters(RadiusOf(ring, line) * Radians);

    /// <summary>The turn in degrees.</summary>
    public override string ToString() => IsFullRing ? "full ring" : Invariant($"arc of {Radians * 180 / Math.PI:0.###}°");

    private static double RadiusOf(FinishedRing ring, RadiusReference line) =>
        Guard.NotNull(ring, nameof(ring)).RadiusTo(Guard.Defined(line, nameof(line))).Meters;
}
