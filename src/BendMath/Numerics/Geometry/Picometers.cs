namespace BendMath.Numerics.Geometry;

/// <summary>
/// A length as it counts for equality: two that come by different arithmetic, such as inches and the same millimeters, are one.
/// </summary>
internal static class Picometers
{
    /// <summary>Whole picometers; adding zero makes one of both signs of zero.</summary>
    public static double Of(double meters) => Math.Round(meters * 1e12) + 0.0;
}
