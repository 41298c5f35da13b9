using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>How much of a ring is wanted. Immutable and thread-safe.</summary>
public sealed record ArcExtent
{
    private ArcExtent(double radians) => Radians = radians;

    /// <summary>A closed ring, 360°.</summary>
    public static ArcExtent FullRing { get; } = new(2 * Math.PI);

    /// <summary>Turn of the arc.</summary>
    public Angle Turn => Angle.FromRadians(Radians);

    /// <summary>Whether the arc closes.</summary>
    public bool IsFullRing => Math.Abs(Radians - 2 * Math.PI) < 1e-9;

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

    /// <summary>The turn in degrees.</summary>
    public override string ToString() => IsFullRing ? "full ring" : string.Format(CultureInfo.InvariantCulture, "arc of {0:0.###}°", Radians * 180 / Math.PI);
}
