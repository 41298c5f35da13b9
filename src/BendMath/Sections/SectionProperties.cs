using System.Globalization;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Geometric properties of a section in its bending position. y runs from the inside face outward, z along the axis of the ring.
/// Exact closed-form boundary integrals over lines and circular arcs. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: A = ∫dA; ȳ = ∫y dA/A; I_b = ∫(y − ȳ)² dA; I_r = ∫(z − z̄)² dA; I_br = ∫(y − ȳ)(z − z̄) dA; W = I_b/c; Z = ∫|y − y_p| dA with equal areas on both sides of y_p.
/// Range: any closed outline.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed record SectionProperties
{
    private readonly AreaMoments _moments;

    internal SectionProperties(BandProfile profile, double width)
    {
        _moments = profile.Moments;
        Height = profile.Height;
        Breadth = width;
        EqualArea = EqualAreaLevel(profile);
        Plastic = PlasticModulusOf(profile, EqualArea);
        double mean = (_moments.SecondY + _moments.SecondZ) / 2;
        double half = Math.Sqrt(Math.Pow((_moments.SecondY - _moments.SecondZ) / 2, 2) + _moments.Product * _moments.Product);
        PrincipalMajor = mean + half;
        PrincipalMinor = mean - half;
    }

    /// <summary>Area of the section, holes taken off.</summary>
    public Area Area => Area.FromSquareMeters(_moments.Area);

    /// <summary>Extent h from the inside face to the outside face, in the plane of the ring.</summary>
    public Length Depth => Length.FromMeters(Height);

    /// <summary>Extent along the axis of the ring.</summary>
    public Length Width => Length.FromMeters(Breadth);

    /// <summary>Distance ȳ of the centroid from the inside face.</summary>
    public Length CentroidFromInside => Length.FromMeters(_moments.CentroidY);

    /// <summary>Position z̄ of the centroid along the axis of the ring, from the heel face of an angle's radial leg or from the edge of the bounding box.</summary>
    public Length CentroidAxial => Length.FromMeters(_moments.CentroidZ);

    /// <summary>Second moment I_b about the centroidal axis parallel to the axis of the ring: the one that resists bending in the plane of the ring.</summary>
    public AreaMomentOfInertia SecondMomentAboutBendingAxis => AreaMomentOfInertia.FromMetersToTheFourth(_moments.SecondY);

    /// <summary>Second moment I_r about the centroidal axis in the radial direction: the one that resists bending out of the plane of the ring.</summary>
    public AreaMomentOfInertia SecondMomentAboutRadialAxis => AreaMomentOfInertia.FromMetersToTheFourth(_moments.SecondZ);

    /// <summary>Product of inertia I_br; zero for a section symmetric about either axis, negative for an angle with the flange out.</summary>
    public AreaMomentOfInertia ProductOfInertia => AreaMomentOfInertia.FromMetersToTheFourth(_moments.Product);

    /// <summary>Larger principal second moment.</summary>
    public AreaMomentOfInertia PrincipalSecondMomentMajor => AreaMomentOfInertia.FromMetersToTheFourth(PrincipalMajor);

    /// <summary>Smaller principal second moment.</summary>
    public AreaMomentOfInertia PrincipalSecondMomentMinor => AreaMomentOfInertia.FromMetersToTheFourth(PrincipalMinor);

    /// <summary>Angle from the bending axis to the major principal axis, positive toward the outside face, in (−90°, 90°]; zero where the principal moments are equal.</summary>
    /// <remarks>
    /// Equation: tan 2α = −2·I_br/(I_b − I_r).
    /// Range: any section; a square or round has no distinct principal axes.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Angle PrincipalAxisAngle => Angle.FromRadians(PrincipalMajor - PrincipalMinor <= 1e-12 * PrincipalMajor
        ? 0
        : -0.5 * Math.Atan2(2 * _moments.Product, _moments.SecondY - _moments.SecondZ));

    /// <summary>Elastic section modulus to the inside face, I_b/ȳ.</summary>
    public Volume ElasticModulusInside => Volume.FromCubicMeters(_moments.SecondY / _moments.CentroidY);

    /// <summary>Elastic section modulus to the outside face, I_b/(h − ȳ).</summary>
    public Volume ElasticModulusOutside => Volume.FromCubicMeters(_moments.SecondY / (Height - _moments.CentroidY));

    /// <summary>Distance y_p of the equal-area axis from the inside face: the neutral axis of a fully plastic section.</summary>
    public Length EqualAreaAxisFromInside => Length.FromMeters(EqualArea);

    /// <summary>Plastic section modulus Z about the bending axis.</summary>
    public Volume PlasticModulus => Volume.FromCubicMeters(Plastic);

    /// <summary>Z over the smaller elastic modulus: fully plastic moment over moment at first yield.</summary>
    public double ShapeFactor => Plastic * Math.Max(_moments.CentroidY, Height - _moments.CentroidY) / _moments.SecondY;

    /// <summary>Radius of gyration about the bending axis, √(I_b/A).</summary>
    public Length RadiusOfGyrationAboutBendingAxis => Length.FromMeters(Math.Sqrt(_moments.SecondY / _moments.Area));

    /// <summary>Radius of gyration about the radial axis, √(I_r/A).</summary>
    public Length RadiusOfGyrationAboutRadialAxis => Length.FromMeters(Math.Sqrt(_moments.SecondZ / _moments.Area));

    /// <summary>Length of the outline, the outlines of holes included.</summary>
    public Length Perimeter => Length.FromMeters(_moments.Perimeter);

    internal double Height { get; }

    internal double Breadth { get; }

    internal double EqualArea { get; }

    internal double Plastic { get; }

    internal double PrincipalMajor { get; }

    internal double PrincipalMinor { get; }

    /// <summary>Mass of one metre of bar.</summary>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public LinearDensity MassPerLength(Density density) =>
        LinearDensity.FromKilogramsPerMeter(_moments.Area * Guard.Positive(density, nameof(density)));

    /// <summary>Area, depth, centroid and equal-area axis, in millimetres.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "A {0:0.###} mm², depth {1:0.###} mm, centroid {2:0.###} mm and equal-area axis {3:0.###} mm from the inside face, I_b {4:0.###} mm⁴",
        _moments.Area * 1e6,
        Height * 1e3,
        _moments.CentroidY * 1e3,
        EqualArea * 1e3,
        _moments.SecondY * 1e12);

    private static double EqualAreaLevel(BandProfile profile)
    {
        AreaBelow function = new(profile);
        return Newton.Root(ref function, 0, profile.Height, profile.Moments.CentroidY, rises: true, 1e-16 * profile.Moments.Area);
    }

    /// <summary>Z = first moment above the level minus first moment below it, about the level.</summary>
    private static double PlasticModulusOf(BandProfile profile, double level)
    {
        (double area, double first) = profile.Below(level);
        double total = profile.Moments.Area;
        return profile.Moments.CentroidY * total - 2 * first - level * (total - 2 * area);
    }

    private readonly struct AreaBelow(BandProfile profile) : IDifferentiable
    {
        public (double Value, double Slope) At(double x) => (profile.Below(x).Area - profile.Moments.Area / 2, profile.WidthAt(x));
    }
}
