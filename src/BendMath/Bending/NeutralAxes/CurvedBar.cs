using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath.Bending.NeutralAxes;

/// <summary>
/// An elastic bar that already is curved, after Winkler and Bach: plane sections stay plane, and because inner fibers are shorter than
/// outer ones the stress follows a hyperbola over the depth. A moment is positive when it increases the curvature (closes the ring
/// further): it compresses the inside face and stretches the outside face. An axial force acts through the centroid and is positive in
/// tension. Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: r_n = A/∫dA/r; e = R̄ − r_n = ∫(y − ȳ)²/r dA/(R̄·∫dA/r); σ = M·(r − r_n)/(A·e·r) + N/A.
/// Range: elastic; any closed outline; symmetric about the plane of the ring, or held so that it stays flat. Thin flanges of I, T and angle
/// sections curl and carry less than this says.
/// Source: <see cref="Sources.CurvedBars"/>
/// </remarks>
public sealed class CurvedBar
{
    private readonly double _inside;

    private readonly double _eccentricity;

    private CurvedBar(OrientedSection section, double inside)
    {
        Section = section;
        _inside = inside;
        CurvedSums sums = CurvedIntegrator.Below(section.Profile, inside, section.Height);
        _eccentricity = sums.Second / (Centroid * sums.Inverse);
    }

    /// <summary>The section, in its orientation.</summary>
    public OrientedSection Section { get; }

    /// <summary>Radius of the inside face.</summary>
    public Length InsideRadius => Length.FromMeters(_inside);

    /// <summary>Radius R̄ of the line of centroids.</summary>
    public Length CentroidRadius => Length.FromMeters(Centroid);

    /// <summary>Radius of the outside face.</summary>
    public Length OutsideRadius => Length.FromMeters(_inside + Section.Height);

    /// <summary>Radius r_n of the fiber that a moment leaves without stress.</summary>
    /// <remarks>
    /// Equation: r_n = A/∫dA/r.
    /// Range: elastic; without axial force.
    /// Source: <see cref="Sources.CurvedBars"/>
    /// </remarks>
    public Length NeutralRadius => Length.FromMeters(Centroid - _eccentricity);

    /// <summary>Distance e of the neutral axis from the centroid, toward the inside face; always positive.</summary>
    /// <remarks>
    /// Equation: e = ∫(y − ȳ)²/r dA/(R̄·∫dA/r), which tends to I_b/(R̄·A) for a slightly curved bar.
    /// Range: any radius; a sum of positive terms, so it keeps its digits where the difference R̄ − r_n loses them.
    /// Source: <see cref="Sources.CurvedBars"/>
    /// </remarks>
    public Length Eccentricity => Length.FromMeters(_eccentricity);

    /// <summary>Distance of the neutral axis from the inside face, r_n − R_i.</summary>
    public Length NeutralAxisFromInside => Length.FromMeters(Axis);

    /// <summary>Stress at the inside face over what straight-beam theory says, k_i; above one for common shapes.</summary>
    /// <remarks>
    /// Equation: k_i = (ȳ − e)/(A·e·R_i)·I_b/ȳ.
    /// Range: elastic; moment only.
    /// Source: <see cref="Sources.CurvedBarFactors"/>
    /// </remarks>
    public double InsideStressFactor => Axis / (M.Area * _eccentricity * _inside) * M.SecondY / M.CentroidY;

    /// <summary>Stress at the outside face over what straight-beam theory says, k_o; below one for common shapes.</summary>
    /// <remarks>
    /// Equation: k_o = (h − ȳ + e)/(A·e·R_o)·I_b/(h − ȳ).
    /// Range: elastic; moment only.
    /// Source: <see cref="Sources.CurvedBarFactors"/>
    /// </remarks>
    public double OutsideStressFactor
    {
        get
        {
            double c = Section.Height - M.CentroidY;
            return (c + _eccentricity) / (M.Area * _eccentricity * (_inside + Section.Height)) * M.SecondY / c;
        }
    }

    internal double Axis => M.CentroidY - _eccentricity;

    private double Centroid => _inside + M.CentroidY;

    private AreaMoments M => Section.Profile.Moments;

    /// <summary>A section bent, before it is loaded, to a radius.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <param name="radius">Its radius; it must leave a positive inside radius.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius leaves no inside radius.</exception>
    public static CurvedBar Of(OrientedSection section, BendRadius radius) => new(
        Guard.NotNull(section, nameof(section)), Guard.NotNull(radius, nameof(radius)).InsideOf(section, nameof(radius)));

    /// <summary>Stress along the bar in the fiber at a distance from the inside face, tension positive.</summary>
    /// <param name="fromInside">Between zero and the depth of the section.</param>
    /// <param name="moment">Moment about the centroid, positive when it increases the curvature.</param>
    /// <param name="axial">Force through the centroid, positive in tension.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fiber lies outside the section, or a load is not finite.</exception>
    /// <remarks>
    /// Equation: σ = M·(r − r_n)/(A·e·r) + N/A.
    /// Range: elastic: compare the result with the yield stress.
    /// Source: <see cref="Sources.CurvedBars"/>
    /// </remarks>
    public Pressure StressAt(Length fromInside, Torque moment, Force axial)
    {
        double y = Section.LevelOf(fromInside, nameof(fromInside));
        double bending = Guard.Finite(moment, nameof(moment)) * (y - Axis) / (M.Area * _eccentricity * (_inside + y));
        return Pressure.FromPascals(bending + Guard.Finite(axial, nameof(axial)) / M.Area);
    }

    /// <summary>
    /// Stress across the bar, in the radial direction, at a distance from the inside face, tension positive: a moment that opens the ring
    /// pulls the fibers apart.
    /// </summary>
    /// <param name="fromInside">Between zero and the depth of the section, where the section has a width.</param>
    /// <param name="moment">Moment about the centroid, positive when it increases the curvature.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fiber lies outside the section or where it has no width, or the moment is not
    /// finite.</exception>
    /// <remarks>
    /// Equation: σ_r = M/(A·e·w·r)·∫(r′ − r_n)/r′ dA′ over the part of the section between the inside face and r, w being its width at r.
    /// Range: elastic; moment only; spread evenly over the width. At a step of the width the smaller width counts.
    /// Source: <see cref="Sources.CurvedBarRadialStress"/>
    /// </remarks>
    public Pressure RadialStressAt(Length fromInside, Torque moment)
    {
        double y = Section.LevelOf(fromInside, nameof(fromInside));
        double bending = Guard.Finite(moment, nameof(moment));
        double nudge = 1e-12 * Section.Height;
        double width =
            Math.Min(Section.Profile.WidthAt(Math.Max(0, y - nudge)), Section.Profile.WidthAt(Math.Min(Section.Height, y + nudge)));
        if (width <= 1e-9 * Section.Properties.Breadth)
        {
            throw Guard.Fault(nameof(fromInside), fromInside, "must lie where the section has a width");
        }

        CurvedSums part = CurvedIntegrator.Below(Section.Profile, _inside, y);
        double resultant = part.First + _eccentricity * part.Inverse;
        return Pressure.FromPascals(bending * resultant / (M.Area * _eccentricity * width * (_inside + y)));
    }

    /// <summary>Section, radius and neutral axis.</summary>
    public override string ToString() =>
        Invariant(
            $"{Section} curved to an inside radius of {_inside * 1e3:0.###} mm, neutral axis {_eccentricity * 1e3:0.######} mm inside the "
                + $"centroid");
}
