using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// One part of a bar with several bends: a straight, or a bend with its ring. The same bar bent to the other side lies turned over in the
/// bender, flange in instead of flange out, so each bend brings its section as it lies there. Immutable and thread-safe.
/// </summary>
public sealed record BarPart
{
    private BarPart(double developed) => Developed = developed;

    private BarPart(FinishedRing ring, OrientedSection section, ArcExtent arc, bool toLeft)
        : this(arc.Radians / ring.TotalCurvature)
    {
        Ring = ring;
        Section = section;
        Arc = arc;
        IsLeft = toLeft;
    }

    /// <summary>Whether it is a bend.</summary>
    public bool IsBend => Ring is not null;

    /// <summary>The ring the bend is a part of, or null for a straight.</summary>
    public FinishedRing? Ring { get; }

    /// <summary>The bar as it lies for this bend, or null for a straight.</summary>
    public OrientedSection? Section { get; }

    /// <summary>Turn of the bend, or null for a straight.</summary>
    public ArcExtent? Arc { get; }

    /// <summary>
    /// Whether it is a bend that turns left, seen by whoever walks along the bar from its start: its inside is the left face of the bar.
    /// </summary>
    public bool IsLeft { get; }

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

    /// <summary>A bend to the left: its inside is the left face of the bar.</summary>
    /// <param name="ring">The ring it is a part of.</param>
    /// <param name="section">The bar as it lies for this bend.</param>
    /// <param name="arc">Its turn.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The ring is not one of this section: its depth differs.</exception>
    public static BarPart BendLeft(FinishedRing ring, OrientedSection section, ArcExtent arc) => Bend(ring, section, arc, true);

    /// <summary>A bend to the right: its inside is the right face of the bar.</summary>
    /// <inheritdoc cref="BendLeft"/>
    public static BarPart BendRight(FinishedRing ring, OrientedSection section, ArcExtent arc) => Bend(ring, section, arc, false);

    /// <summary>What it is, in millimeters and degrees.</summary>
    public override string ToString() => Ring is null
        ? Invariant($"straight of {Developed * 1e3:0.##} mm")
        : Invariant(
            $"bend of {Arc!.Turn.Degrees:0.##}° {(IsLeft ? "left" : "right")} at {Ring.Inside * 1e3:0.##} mm inside radius");

    private static BarPart Bend(FinishedRing ring, OrientedSection section, ArcExtent arc, bool toLeft)
    {
        double height = Guard.NotNull(section, nameof(section)).Height;
        double found = Guard.NotNull(ring, nameof(ring)).RadiusAt(height, section.Profile.Moments.CentroidZ) - ring.Outside;
        return Math.Abs(found) <= 1e-9 * height
            ? new(ring, section, Guard.NotNull(arc, nameof(arc)), toLeft)
            : throw Guard.Refused(nameof(ring), $"must be one of {section}",
                $"a bar of that depth would differ from it by {Guard.MillimetersText(Math.Abs(found))} in outside radius");
    }
}
