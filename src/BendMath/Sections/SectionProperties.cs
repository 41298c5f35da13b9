using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Geometric properties of a section in its bending position. y runs from the inside face outward, z along the axis of the ring.
/// Exact closed-form boundary integrals over lines and circular arcs. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: A = ∫dA; ȳ = ∫y dA/A; I_b = ∫(y − ȳ)² dA; I_r = ∫(z − z̄)² dA; I_br = ∫(y − ȳ)(z − z̄) dA; W = I_b/c; Z = ∫|y − y_p| dA with
/// equal areas on both sides of y_p.
/// Range: any closed outline.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed record SectionProperties
{
    private readonly AreaMoments _moments;

    private readonly EqualAreaAxis _radial;

    private readonly EqualAreaAxis _axial;

    private readonly Edge[][] _loops;

    internal SectionProperties(Edge[][] loops)
    {
        _loops = loops;
        _moments = AreaMoments.Of(loops);
        _radial = EqualAreaAxis.Of(loops, _moments, axial: false);
        _axial = EqualAreaAxis.Of(loops, _moments, axial: true);
        double mean = (_moments.SecondY + _moments.SecondZ) / 2;
        double difference = (_moments.SecondY - _moments.SecondZ) / 2;
        double half = Math.Sqrt(difference * difference + _moments.Product * _moments.Product);
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

    /// <summary>
    /// Position z̄ of the centroid along the axis of the ring, from the heel face of an angle's radial leg or from the edge of the bounding
    /// box.
    /// </summary>
    public Length CentroidAxial => Length.FromMeters(_moments.CentroidZ);

    /// <summary>
    /// Second moment I_b about the centroidal axis parallel to the axis of the ring: the one that resists bending in the plane of the ring.
    /// </summary>
    public AreaMomentOfInertia SecondMomentAboutBendingAxis => AreaMomentOfInertia.FromMetersToTheFourth(_moments.SecondY);

    /// <summary>
    /// Second moment I_r about the centroidal axis in the radial direction: the one that resists bending out of the plane of the ring.
    /// </summary>
    public AreaMomentOfInertia SecondMomentAboutRadialAxis => AreaMomentOfInertia.FromMetersToTheFourth(_moments.SecondZ);

    /// <summary>
    /// Product of inertia I_br; zero for a section symmetric about either axis, negative for an angle with the flange out.
    /// </summary>
    public AreaMomentOfInertia ProductOfInertia => AreaMomentOfInertia.FromMetersToTheFourth(_moments.Product);

    /// <summary>Larger principal second moment.</summary>
    public AreaMomentOfInertia PrincipalSecondMomentMajor => AreaMomentOfInertia.FromMetersToTheFourth(PrincipalMajor);

    /// <summary>Smaller principal second moment.</summary>
    public AreaMomentOfInertia PrincipalSecondMomentMinor => AreaMomentOfInertia.FromMetersToTheFourth(PrincipalMinor);

    /// <summary>
    /// Angle from the bending axis to the major principal axis, positive toward the outside face, in (−90°, 90°]; zero where the principal
    /// moments are equal.
    /// </summary>
    /// <remarks>
    /// Equation: tan 2α = −2·I_br/(I_b − I_r).
    /// Range: any section; a square or round has no distinct principal axes.
    /// Source: <see cref="Sources.Definition"/>
    /// </remarks>
    public Angle PrincipalAxisAngle => Angle.FromRadians(PrincipalAngle);

    /// <summary>Elastic section modulus to the inside face, I_b/ȳ.</summary>
    public Volume ElasticModulusInside => Volume.FromCubicMeters(_moments.SecondY / _moments.CentroidY);

    /// <summary>Elastic section modulus to the outside face, I_b/(h − ȳ).</summary>
    public Volume ElasticModulusOutside => Volume.FromCubicMeters(_moments.SecondY / (Height - _moments.CentroidY));

    /// <summary>Elastic section modulus about the radial axis to the edge at z = 0, I_r/z̄.</summary>
    public Volume ElasticModulusAboutRadialAxisNear => Volume.FromCubicMeters(_moments.SecondZ / _moments.CentroidZ);

    /// <summary>Elastic section modulus about the radial axis to the edge at z = width, I_r/(width − z̄).</summary>
    public Volume ElasticModulusAboutRadialAxisFar => Volume.FromCubicMeters(_moments.SecondZ / (Breadth - _moments.CentroidZ));

    /// <summary>
    /// Smaller elastic section modulus about the major principal axis, I_max over the farthest distance of the outline from that axis.
    /// </summary>
    public Volume PrincipalElasticModulusMajor => Volume.FromCubicMeters(PrincipalMajor / Reach(PrincipalAngle));

    /// <summary>
    /// Smaller elastic section modulus about the minor principal axis, I_min over the farthest distance of the outline from that axis.
    /// </summary>
    public Volume PrincipalElasticModulusMinor => Volume.FromCubicMeters(PrincipalMinor / Reach(PrincipalAngle + Math.PI / 2));

    /// <summary>Distance y_p of the equal-area axis from the inside face: the neutral axis of a fully plastic section.</summary>
    public Length EqualAreaAxisFromInside => Length.FromMeters(EqualArea);

    /// <summary>Plastic section modulus Z about the bending axis.</summary>
    public Volume PlasticModulus => Volume.FromCubicMeters(Plastic);

    /// <summary>Position z_p of the radial equal-area axis, measured like <see cref="CentroidAxial"/>.</summary>
    public Length EqualAreaAxisAxial => Length.FromMeters(_axial.Level);

    /// <summary>Plastic section modulus ∫|z − z_p| dA about the radial axis.</summary>
    public Volume PlasticModulusAboutRadialAxis => Volume.FromCubicMeters(_axial.Modulus);

    /// <summary>Z over the smaller elastic modulus: fully plastic moment over moment at first yield.</summary>
    public double ShapeFactor => Plastic * Math.Max(_moments.CentroidY, Height - _moments.CentroidY) / _moments.SecondY;

    /// <summary>Radius of gyration about the bending axis, √(I_b/A).</summary>
    public Length RadiusOfGyrationAboutBendingAxis => Length.FromMeters(Math.Sqrt(_moments.SecondY / _moments.Area));

    /// <summary>Radius of gyration about the radial axis, √(I_r/A).</summary>
    public Length RadiusOfGyrationAboutRadialAxis => Length.FromMeters(Math.Sqrt(_moments.SecondZ / _moments.Area));

    /// <summary>Radius of gyration about the major principal axis, √(I_max/A).</summary>
    public Length PrincipalRadiusOfGyrationMajor => Length.FromMeters(Math.Sqrt(PrincipalMajor / _moments.Area));

    /// <summary>Radius of gyration about the minor principal axis, √(I_min/A): the smallest of all.</summary>
    public Length PrincipalRadiusOfGyrationMinor => Length.FromMeters(Math.Sqrt(PrincipalMinor / _moments.Area));

    /// <summary>Length of the outline, the outlines of holes included: the whole surface of the bar per unit of length.</summary>
    public Length Perimeter => Length.FromMeters(_moments.Perimeter);

    /// <summary>Length of the outer outline alone: the surface to paint or galvanize from outside, per unit of length.</summary>
    public Length OuterPerimeter => Length.FromMeters(_moments.OuterPerimeter);

    internal AreaMoments Moments => _moments;

    internal double Height => _radial.High;

    internal double Breadth => _axial.High;

    internal double EqualArea => _radial.Level;

    internal double Plastic => _radial.Modulus;

    private double PrincipalAngle => PrincipalMajor - PrincipalMinor <= 1e-12 * PrincipalMajor
        ? 0
        : -0.5 * Math.Atan2(2 * _moments.Product, _moments.SecondY - _moments.SecondZ);

    internal double PrincipalMajor { get; }

    internal double PrincipalMinor { get; }

    /// <summary>Mass of one meter of bar.</summary>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public LinearDensity MassPerLength(Density density) =>
        LinearDensity.FromKilogramsPerMeter(_moments.Area * Guard.Positive(density, nameof(density)));

    /// <summary>Equal when area, centroid, second moments, extents and equal-area axes are the same to the last bit.</summary>
    /// <param name="other">Other properties.</param>
    public bool Equals(SectionProperties? other) =>
        other is not null && _moments == other._moments && _radial == other._radial && _axial == other._axial;

    /// <inheritdoc/>
    public override int GetHashCode() => (_moments, _radial, _axial).GetHashCode();

    /// <summary>Area, depth, centroid and equal-area axis, in millimeters.</summary>
    public override string ToString() =>
        Invariant(
            $"A {_moments.Area * 1e6:0.###} mm², depth {Height * 1e3:0.###} mm, centroid {_moments.CentroidY * 1e3:0.###} mm and "
                + $"equal-area axis {EqualArea * 1e3:0.###} mm from the inside face, I_b {_moments.SecondY * 1e12:0.###} mm⁴");

    /// <summary>
    /// Farthest distance of the outline from the axis through the centroid that leans by the angle from the bending axis.
    /// </summary>
    private double Reach(double angle)
    {
        double sine = Math.Sin(angle);
        double cosine = Math.Cos(angle);
        double farthest = 0;
        foreach (Edge[] loop in _loops)
        {
            foreach (ref readonly Edge edge in loop.AsSpan())
            {
                // Distances grow along the direction φ = angle + 90°; an arc that faces it, or the opposite, reaches one radius beyond its
                // center.
                farthest = Math.Max(farthest, Math.Abs(Across(edge.Y1, edge.Z1)));
                if (edge.IsArc)
                {
                    double center = Across(edge.CenterY, edge.CenterZ);
                    farthest = edge.Faces(angle + Math.PI / 2) ? Math.Max(farthest, Math.Abs(center + edge.Radius)) : farthest;
                    farthest = edge.Faces(angle - Math.PI / 2) ? Math.Max(farthest, Math.Abs(center - edge.Radius)) : farthest;
                }
            }
        }

        return farthest;

        double Across(double y, double z) => (y - _moments.CentroidY) * cosine - (z - _moments.CentroidZ) * sine;
    }
}
