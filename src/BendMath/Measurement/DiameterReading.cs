using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>A diameter measured across a ring at an angle. Immutable and thread-safe.</summary>
public sealed record DiameterReading
{
    /// <summary>Makes a reading.</summary>
    /// <param name="at">Direction of the diameter, from any mark on the ring.</param>
    /// <param name="diameter">The diameter, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not finite or the diameter is not positive and finite.</exception>
    public DiameterReading(Angle at, Length diameter)
    {
        Radians = Guard.Finite(at, nameof(at));
        Meters = Guard.Positive(diameter, nameof(diameter));
    }

    /// <summary>Direction of the diameter.</summary>
    public Angle At => Angle.FromRadians(Radians);

    /// <summary>The diameter.</summary>
    public Length Diameter => Length.FromMeters(Meters);

    internal double Radians { get; }

    internal double Meters { get; }

    /// <summary>Diameter and direction.</summary>
    public override string ToString() => Invariant($"{Meters * 1e3:0.##} mm at {Radians * 180 / Math.PI:0.##}°");
}
