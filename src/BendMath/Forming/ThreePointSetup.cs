using System.Globalization;
using UnitsNet;

namespace BendMath;

/// <summary>The fixed geometry of a bender that pinches the bar between a nose and two supports. Immutable and thread-safe.</summary>
public sealed record ThreePointSetup
{
    /// <summary>Makes a setup.</summary>
    /// <param name="halfSpan">Distance a from the nose to each support along the bar, greater than zero.</param>
    /// <param name="noseRadius">Radius of the nose the inside of the bar touches; zero for an edge.</param>
    /// <exception cref="ArgumentOutOfRangeException">The half-span is not positive or the nose radius is negative, or one is not finite.</exception>
    public ThreePointSetup(Length halfSpan, Length noseRadius)
    {
        A = Guard.Positive(halfSpan, nameof(halfSpan));
        Nose = Guard.NonNegative(noseRadius, nameof(noseRadius));
    }

    /// <summary>Distance a from the nose to each support.</summary>
    public Length HalfSpan => Length.FromMeters(A);

    /// <summary>Radius of the nose; zero for an edge.</summary>
    public Length NoseRadius => Length.FromMeters(Nose);

    internal double A { get; }

    internal double Nose { get; }

    /// <summary>Half-span and nose radius.</summary>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "half-span {0:0.##} mm, nose radius {1:0.##} mm", A * 1e3, Nose * 1e3);
}
