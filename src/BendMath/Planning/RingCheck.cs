using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath;

/// <summary>What a good ring measures: the numbers to check after bending. Immutable and thread-safe.</summary>
public sealed class RingCheck
{
    private readonly FinishedRing _ring;

    private readonly double _chord;

    private readonly double? _turn;

    private RingCheck(FinishedRing ring, double chord, double? turn)
    {
        _ring = ring;
        _chord = chord;
        _turn = turn;
    }

    /// <summary>Diameter between inside faces.</summary>
    public Length InsideDiameter => _ring.InsideDiameter;

    /// <summary>Diameter between outside faces.</summary>
    public Length OutsideDiameter => _ring.OutsideDiameter;

    /// <summary>Tape around the outside of a closed ring.</summary>
    public Length TapeAroundOutside => Length.FromMeters(Math.PI * _ring.OutsideDiameter.Meters);

    /// <summary>Distance between the two ends of an arc, from inside face to inside face; null for a full ring.</summary>
    /// <remarks>
    /// Equation: w = 2·R·sin(θ/2).
    /// Range: an arc of one radius to its ends; straight tails are not in it.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length? OpeningBetweenEnds => _turn is { } turn ? Length.FromMeters(_ring.InsideDiameter.Meters * Math.Sin(turn / 2)) : null;

    /// <summary>Chord to lay against the inside face.</summary>
    public Length Chord => Length.FromMeters(_chord);

    /// <summary>Rise that chord should show.</summary>
    public Length Rise => Length.FromMeters(RiseAt(1));

    /// <summary>
    /// How much the rise changes when the inside diameter is one percent too wide: it tells whether a rule can see the error. Negative.
    /// </summary>
    public Length RiseChangePerPercent => Length.FromMeters(RiseAt(1.01) - RiseAt(1));

    /// <summary>The check of a finished ring.</summary>
    /// <param name="ring">The ring.</param>
    /// <param name="chord">Chord to lay against the inside face, greater than zero and not greater than the inside diameter.</param>
    /// <param name="arc">How much of the ring there is; null for all of it.</param>
    /// <exception cref="ArgumentNullException">The ring is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The chord is outside its range.</exception>
    public static RingCheck Of(FinishedRing ring, Length chord, ArcExtent? arc = null)
    {
        double inside = Guard.NotNull(ring, nameof(ring)).InsideRadius.Meters;
        double value = Guard.Positive(chord, nameof(chord));
        return value <= 2 * inside
            ? new(ring, value, arc is null or { IsFullRing: true } ? null : arc.Turn.Radians)
            : throw Guard.Fault(nameof(chord), chord, $"must not be greater than the inside diameter, {Guard.MillimetersText(2 * inside)}");
    }

    internal static RingCheck Of(FinishedRing ring, double chord, ArcExtent arc) =>
        new(ring, chord, arc.IsFullRing ? null : arc.Turn.Radians);

    /// <summary>Diameters, tape and rise.</summary>
    public override string ToString() =>
        Invariant(
            $"inside {InsideDiameter.Millimeters:0.#} mm, outside {OutsideDiameter.Millimeters:0.#} mm, rise {Rise.Millimeters:0.##} mm "
                + $"on a chord of {_chord * 1e3:0.#} mm");

    /// <summary>As <see cref="ChordAndRise.RiseFor"/>, for a chord as small as the arc leaves it.</summary>
    private double RiseAt(double share)
    {
        double radius = share * _ring.InsideRadius.Meters;
        double half = _chord / 2;
        return half * half / (radius + Math.Sqrt((radius - half) * (radius + half)));
    }
}
