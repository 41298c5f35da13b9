using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>A range of stress, both ends included. Immutable and thread-safe.</summary>
public sealed record PressureRange
{
    private readonly double _low;

    private readonly double _high;

    /// <summary>Makes a range.</summary>
    /// <param name="low">Lower end, finite.</param>
    /// <param name="high">Upper end, finite and not below the lower one.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite, or the upper end is below the lower one.</exception>
    public PressureRange(Pressure low, Pressure high)
    {
        _low = Guard.Finite(low, nameof(low));
        _high = Guard.Finite(high, nameof(high));
        if (_high < _low)
        {
            throw Guard.Fault(nameof(high), high, $"must not be below the lower end, {Guard.Text(low)}");
        }
    }

    /// <summary>Lower end.</summary>
    public Pressure Low => Pressure.FromPascals(_low);

    /// <summary>Upper end.</summary>
    public Pressure High => Pressure.FromPascals(_high);

    /// <summary>Both ends in megapascals.</summary>
    public override string ToString() => Invariant($"{_low / 1e6:0.#} to {_high / 1e6:0.#} MPa");
}

/// <summary>A range of length, both ends included. Immutable and thread-safe.</summary>
public sealed record LengthRange
{
    private readonly double _low;

    private readonly double _high;

    /// <summary>Makes a range.</summary>
    /// <param name="low">Lower end, finite.</param>
    /// <param name="high">Upper end, finite and not below the lower one.</param>
    /// <exception cref="ArgumentOutOfRangeException">An end is not finite, or the upper end is below the lower one.</exception>
    public LengthRange(Length low, Length high)
    {
        _low = Guard.Finite(low, nameof(low));
        _high = Guard.Finite(high, nameof(high));
        if (_high < _low)
        {
            throw Guard.Fault(nameof(high), high, $"must not be below the lower end, {Guard.Text(low)}");
        }
    }

    internal LengthRange(double low, double high)
    {
        _low = low;
        _high = high;
    }

    /// <summary>Lower end.</summary>
    public Length Low => Length.FromMeters(_low);

    /// <summary>Upper end.</summary>
    public Length High => Length.FromMeters(_high);

    /// <summary>Both ends twice as far out: diameters from radii, which may exceed what one length may be.</summary>
    internal LengthRange Twice => new(2 * _low, 2 * _high);

    /// <summary>Both ends in millimeters.</summary>
    public override string ToString() => Invariant($"{_low * 1e3:0.###} to {_high * 1e3:0.###} mm");
}
