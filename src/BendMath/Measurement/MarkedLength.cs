using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>
/// A length marked on the straight bar and the turn it became: it tells which fiber kept its length. Around a closed ring the marks meet,
/// and the turn is 360°. Immutable and thread-safe.
/// </summary>
public sealed record MarkedLength
{
    private readonly double _before;

    private readonly double _turn;

    /// <summary>Makes the record.</summary>
    /// <param name="before">Length between the marks on the straight bar, greater than zero; all of it bent, no straight tails between the
    /// marks.</param>
    /// <param name="turn">The turn it became, greater than zero; 360° where the marks meet.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the turn is too small for the
    /// length.</exception>
    public MarkedLength(Length before, Angle turn)
    {
        _before = Guard.Positive(before, nameof(before));
        _turn = Guard.Positive(turn, nameof(turn));
        if (!(_before / _turn < double.PositiveInfinity))
        {
            throw Guard.Fault(nameof(turn), turn, $"must be large enough for a finite radius of {Guard.Text(before)}");
        }
    }

    /// <summary>Length between the marks on the straight bar.</summary>
    public Length Before => Length.FromMeters(_before);

    /// <summary>The turn it became.</summary>
    public Angle Turn => Angle.FromRadians(_turn);

    /// <summary>The radius at which the ring still has that length.</summary>
    /// <remarks>
    /// Equation: R = L₀/θ.
    /// Range: an even arc between the marks.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length KeptRadius => Length.FromMeters(_before / _turn);

    /// <summary>Length and turn.</summary>
    public override string ToString() => Invariant($"{_before * 1e3:0.##} mm became {_turn * 180 / Math.PI:0.##}°");
}
