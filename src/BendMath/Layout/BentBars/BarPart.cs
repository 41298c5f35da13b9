using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>The side a bar turns to, seen by whoever walks along it from its start.</summary>
public enum BendSide
{
    /// <summary>It turns left: the inside of the bend is the left face of the bar.</summary>
    Left,

    /// <summary>It turns right: the inside of the bend is the right face of the bar.</summary>
    Right,
}

/// <summary>
/// One part of a bar with several bends: a straight, or a bend with its ring. The same bar bent to the other side lies turned over in the
/// bender, flange in instead of flange out, so each bend brings its section as it lies there. Immutable and thread-safe.
/// </summary>
public sealed record BarPart
{
    private BarPart(double developed) => Developed = developed;

    private BarPart(FinishedRing ring, OrientedSection section, ArcExtent arc, BendSide side)
        : this(arc.Radians / ring.TotalCurvature)
    {
        Ring = ring;
        Section = section;
        Arc = arc;
        Side = side;
    }

    /// <summary>Whether it is a bend.</summary>
    public bool IsBend => Ring is not null;

    /// <summary>The ring the bend is a part of, or null for a straight.</summary>
    public FinishedRing? Ring { get; }

    /// <summary>The bar as it lies for this bend, or null for a straight.</summary>
    public OrientedSection? Section { get; }

    /// <summary>Turn of the bend, or null for a straight.</summary>
    public ArcExtent? Arc { get; }

    /// <summary>The side it turns to, or null for a straight.</summary>
    public BendSide? Side { get; }

    /// <summary>Length of unbent bar it takes.</summary>
    /// <remarks>
    /// Equation: L₀ = θ/κ_t of a bend; a straight is as long as it is.
    /// Range: exact, because curvature is per unit of unbent length.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length DevelopedLength => Length.FromMeters(Developed);

    internal double Developed { get; }

    /// <summary>A straight.</summary>
    /// <param name="length">Its length, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    public static BarPart Straight(Length length) => new(Guard.Positive(length, nameof(length)));

    /// <summary>A bend.</summary>
    /// <param name="ring">The ring it is a part of.</param>
    /// <param name="section">The bar as it lies for this bend.</param>
    /// <param name="arc">Its turn.</param>
    /// <param name="side">The side it turns to.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The ring is not one of this section: its depth differs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The side is not a defined value.</exception>
    public static BarPart Bend(FinishedRing ring, OrientedSection section, ArcExtent arc, BendSide side)
    {
        double height = Guard.NotNull(section, nameof(section)).Height;
        double found = Guard.NotNull(ring, nameof(ring)).RadiusAt(height, section.Profile.Moments.CentroidZ) - ring.Outside;
        return Math.Abs(found) <= 1e-9 * height
            ? new(ring, section, Guard.NotNull(arc, nameof(arc)), Guard.Defined(side, nameof(side)))
            : throw Guard.Refused(nameof(ring), $"must be one of {section}",
                $"a bar of that depth would differ from it by {Guard.MillimetersText(Math.Abs(found))} in outside radius");
    }

    /// <summary>What it is, in millimeters and degrees.</summary>
    public override string ToString() => Ring is null
        ? Invariant($"straight of {Developed * 1e3:0.##} mm")
        : Invariant(
            $"bend of {Arc!.Turn.Degrees:0.##}° {(Side == BendSide.Left ? "left" : "right")} at {Ring.Inside * 1e3:0.##} mm inside radius");
}
