using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>The line of the bar a radius or diameter is measured to.</summary>
public enum RadiusReference
{
    /// <summary>The face toward the center of the bend.</summary>
    InsideFace,

    /// <summary>The line through the centroids of the sections.</summary>
    Centroid,

    /// <summary>The face away from the center of the bend.</summary>
    OutsideFace,
}

/// <summary>
/// A radius together with the line of the bar it is measured to: a bare number can be misread by the whole depth of the bar. Immutable and
/// thread-safe.
/// </summary>
public sealed record BendRadius
{
    private BendRadius(double radius, RadiusReference reference)
    {
        Radius = radius;
        Reference = reference;
    }

    /// <summary>The line the radius is measured to.</summary>
    public RadiusReference Reference { get; }

    /// <summary>The radius to that line.</summary>
    public Length Value => Length.FromMeters(Radius);

    internal double Radius { get; }

    /// <summary>Radius to the inside face.</summary>
    /// <param name="radius">Greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive and finite.</exception>
    public static BendRadius Inside(Length radius) => new(Guard.Positive(radius, nameof(radius)), RadiusReference.InsideFace);

    /// <summary>Radius to the centroid.</summary>
    /// <inheritdoc cref="Inside(Length)"/>
    public static BendRadius Centroid(Length radius) => new(Guard.Positive(radius, nameof(radius)), RadiusReference.Centroid);

    /// <summary>Radius to the outside face.</summary>
    /// <inheritdoc cref="Inside(Length)"/>
    public static BendRadius Outside(Length radius) => new(Guard.Positive(radius, nameof(radius)), RadiusReference.OutsideFace);

    /// <summary>Diameter between inside faces.</summary>
    /// <param name="diameter">Greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not positive and finite.</exception>
    public static BendRadius InsideDiameter(Length diameter) =>
        new(Guard.Positive(diameter, nameof(diameter)) / 2, RadiusReference.InsideFace);

    /// <summary>Diameter between centroids.</summary>
    /// <inheritdoc cref="InsideDiameter(Length)"/>
    public static BendRadius CentroidDiameter(Length diameter) =>
        new(Guard.Positive(diameter, nameof(diameter)) / 2, RadiusReference.Centroid);

    /// <summary>Diameter between outside faces.</summary>
    /// <inheritdoc cref="InsideDiameter(Length)"/>
    public static BendRadius OutsideDiameter(Length diameter) =>
        new(Guard.Positive(diameter, nameof(diameter)) / 2, RadiusReference.OutsideFace);

    /// <summary>Inside radius of a section bent to this radius, its thickness unchanged.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The section is too deep for the radius: no inside radius is left.</exception>
    /// <remarks>
    /// Equation: R_i = R; R − ȳ where R is measured to the centroid, R − h where to the outside face.
    /// Range: a section that keeps its depth.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Length InsideRadiusOf(OrientedSection section) =>
        Length.FromMeters(InsideOf(Guard.NotNull(section, nameof(section)), nameof(section)));

    /// <summary>Radius and line, in millimeters.</summary>
    public override string ToString() =>
        Invariant(
            $"{Radius * 1e3:0.###} mm to the {(Reference switch { RadiusReference.InsideFace => "inside face", RadiusReference.Centroid => "centroid", _ => "outside face", })}");

    /// <summary>Distance of the referenced line from the inside face.</summary>
    internal double LevelIn(OrientedSection section) => Reference switch
    {
        RadiusReference.InsideFace => 0,
        RadiusReference.Centroid => section.Profile.Moments.CentroidY,
        _ => section.Height,
    };

    /// <summary>Inside radius of an undeformed section bent to this radius.</summary>
    internal double InsideOf(OrientedSection section, string name)
    {
        double inside = Radius - LevelIn(section);
        return inside >= Guard.LeastMeters
            ? inside
            : throw Guard.OutOfRange(name, "must leave an inside radius",
                Invariant(
                    $"to the {(Reference == RadiusReference.Centroid ? "centroid" : "outside face")} of a "
                        + $"bar {section.Height * 1e3:0.###} mm deep it is a radius of {Radius * 1e3:G12} mm, a diameter "
                        + $"of {2e3 * Radius:G12} mm"));
    }
}
