using BendMath.Guards;
using UnitsNet;

namespace BendMath.Measurement;

/// <summary>Heights of a ring above a plate at one angle. Immutable and thread-safe.</summary>
public sealed record HeightReading
{
    /// <summary>Makes a reading.</summary>
    /// <param name="at">Where, as an angle on the ring from any mark.</param>
    /// <param name="inner">Height of the inside edge above the plate, finite.</param>
    /// <param name="outer">Height of the outside edge above the plate; null when only one edge is measured.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite.</exception>
    public HeightReading(Angle at, Length inner, Length? outer = null)
    {
        Radians = Guard.Finite(at, nameof(at));
        InnerMeters = Guard.Finite(inner, nameof(inner));
        OuterMeters = outer is { } height ? Guard.Finite(height, nameof(outer)) : null;
    }

    /// <summary>Where on the ring.</summary>
    public Angle At => Angle.FromRadians(Radians);

    /// <summary>Height of the inside edge.</summary>
    public Length Inner => Length.FromMeters(InnerMeters);

    /// <summary>Height of the outside edge, or null.</summary>
    public Length? Outer => OuterMeters is { } height ? Length.FromMeters(height) : null;

    internal double Radians { get; }

    internal double InnerMeters { get; }

    internal double? OuterMeters { get; }

    /// <summary>Angle and heights.</summary>
    public override string ToString() =>
        OuterMeters is null ? Invariant($"{InnerMeters * 1e3:0.##} mm at {Radians * 180 / Math.PI:0.##}°")
            : Invariant($"{InnerMeters * 1e3:0.##} mm inside and {OuterMeters * 1e3:0.##} mm outside at {Radians * 180 / Math.PI:0.##}°");
}
