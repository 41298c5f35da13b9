using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>
/// The ring (or arc) a released bar has become. Radii are measured from the axis of the ring at the centroid's place along that axis;
/// the ring of an unsymmetric section released free is dished, so its heel lies at a slightly different radius. Immutable and thread-safe.
/// </summary>
public sealed record FinishedRing
{
    private readonly double _inside;

    private readonly double _heel;

    private readonly double _centroid;

    private readonly double _outside;

    private readonly double _curvature;

    private readonly double _outOfPlane;

    private readonly double _inPlane;

    /// <param name="curvature">κ_t.</param>
    /// <param name="inside">Inside radius.</param>
    /// <param name="heel">Inside radius at the heel.</param>
    /// <param name="centroid">Centroid radius.</param>
    /// <param name="outside">Outside radius.</param>
    /// <param name="outOfPlane">−Δκ_r, the part of the curvature out of the plane of the loaded ring.</param>
    /// <param name="inPlane">κ_f, the part in it.</param>
    internal FinishedRing(double curvature, double inside, double heel, double centroid, double outside, double outOfPlane, double inPlane)
    {
        _curvature = curvature;
        _inside = inside;
        _heel = heel;
        _centroid = centroid;
        _outside = outside;
        _outOfPlane = outOfPlane;
        _inPlane = inPlane;
    }

    /// <summary>The ring of a bar that keeps a linear strain.</summary>
    internal static FinishedRing Of(OrientedSection section, in SectionField kept)
    {
        ref readonly AreaMoments m = ref section.Profile.Moments;
        double total = Math.Sqrt(kept.InPlane * kept.InPlane + kept.OutOfPlane * kept.OutOfPlane);
        double axial = 1 + kept.Axial;
        double inside = axial - kept.InPlane * m.CentroidY;
        double radius = 1 / total;
        return new(
            total,
            inside * radius,
            (inside - kept.OutOfPlane * m.CentroidZ) * radius,
            axial * radius,
            (axial + kept.InPlane * (section.Height - m.CentroidY)) * radius,
            kept.OutOfPlane,
            kept.InPlane);
    }

    /// <summary>Radius of the inside face, at the centroid's axial position.</summary>
    public Length InsideRadius => Length.FromMeters(_inside);

    /// <summary>Diameter between inside faces.</summary>
    public Length InsideDiameter => Length.FromMeters(2 * _inside);

    /// <summary>Radius of the inside face at z = 0: at the heel of an angle.</summary>
    public Length InsideRadiusAtHeel => Length.FromMeters(_heel);

    /// <summary>Radius of the line of centroids.</summary>
    public Length CentroidRadius => Length.FromMeters(_centroid);

    /// <summary>Radius of the outside face, at the centroid's axial position.</summary>
    public Length OutsideRadius => Length.FromMeters(_outside);

    /// <summary>Diameter between outside faces.</summary>
    public Length OutsideDiameter => Length.FromMeters(2 * _outside);

    /// <summary>Total curvature κ_t: turn angle per unit of length of the unbent bar.</summary>
    public ReciprocalLength Curvature => ReciprocalLength.FromInverseMeters(_curvature);

    /// <summary>
    /// Distance from the inside face to the fiber where the ring has the length of the blank; it may lie outside the section.
    /// </summary>
    /// <remarks>
    /// Equation: n_f = 1/κ_t − R(0, z̄).
    /// Range: any released ring.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length LengthPreservingFiberFromInside => Length.FromMeters(Fiber);

    /// <summary>
    /// Lean of the section of a released ring; positive when the toe of the axial leg leans outward and the ring is wider at the toe, zero
    /// when held flat.
    /// </summary>
    /// <remarks>
    /// Equation: atan2(−Δκ_r, κ_f).
    /// Range: sections of any shape; zero by symmetry for flats, squares, rounds and tubes.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Angle DishAngle => Angle.FromRadians(Dish);

    internal double TotalCurvature => _curvature;

    private double Dish => Math.Atan2(_outOfPlane, _inPlane);

    internal double Inside => _inside;

    internal double Outside => _outside;

    internal double Fiber => 1 / _curvature - _inside;

    /// <summary>R(y, z), from the axis of the ring.</summary>
    internal double RadiusAt(double y, double z) => _heel + (y * _inPlane + z * _outOfPlane) / _curvature;

    /// <summary>Place of a point along the axis of the ring, from the heel of its inside face.</summary>
    internal double AxialAt(double y, double z) => (z * _inPlane - y * _outOfPlane) / _curvature;

    /// <summary>Length of straight bar that becomes an arc of the ring.</summary>
    /// <param name="arc">Turn of the arc, greater than zero; 360° for a full ring.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not positive and finite.</exception>
    /// <remarks>
    /// Equation: L₀ = θ/κ_t.
    /// Range: exact, because curvature is per unit of unbent length.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length BlankLengthFor(Angle arc) => Length.FromMeters(Guard.Positive(arc, nameof(arc)) / _curvature);

    /// <summary>The radius measured to one of the lines of the bar.</summary>
    /// <param name="reference">The line.</param>
    /// <exception cref="ArgumentOutOfRangeException">The line is not a defined value.</exception>
    public Length RadiusTo(RadiusReference reference) => Guard.Defined(reference, nameof(reference)) switch
    {
        RadiusReference.InsideFace => InsideRadius,
        RadiusReference.Centroid => CentroidRadius,
        _ => OutsideRadius,
    };

    /// <summary>Inside and outside diameter and dish angle.</summary>
    public override string ToString() =>
        Invariant(
            $"ring of {2e3 * _inside:0.##} mm inside and {2e3 * _outside:0.##} mm outside diameter, dish {Dish * 180 / Math.PI:0.##}°");
}
