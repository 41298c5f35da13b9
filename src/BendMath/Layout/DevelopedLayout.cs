using System.Diagnostics.CodeAnalysis;
using BendMath.Cutting;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Lengths;
using UnitsNet;

namespace BendMath;

/// <summary>
/// The straight bar a ring or arc is made from: developed length, blank length, marks, pieces from a bar, mass. Immutable and thread-safe.
/// </summary>
public sealed partial class DevelopedLayout
{
    private readonly double _developed;

    private readonly double _kerf;

    private DevelopedLayout(FinishedRing ring, OrientedSection section, ArcExtent arc, EndAllowance ends, double kerf)
    {
        Ring = ring;
        Section = section;
        Arc = arc;
        Ends = ends;
        _kerf = kerf;
        _developed = arc.Radians / ring.TotalCurvature;
    }

    /// <summary>The finished ring.</summary>
    public FinishedRing Ring { get; }

    /// <summary>The bar in its orientation.</summary>
    public OrientedSection Section { get; }

    /// <summary>How much of the ring is wanted.</summary>
    public ArcExtent Arc { get; }

    /// <summary>Extra length at the ends.</summary>
    public EndAllowance Ends { get; }

    /// <summary>Width of a saw cut.</summary>
    public Length Kerf => Length.FromMeters(_kerf);

    /// <summary>Length of straight bar that becomes the arc itself.</summary>
    /// <remarks>
    /// Equation: L₀ = θ/κ_t.
    /// Range: exact, because curvature is per unit of unbent length.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length DevelopedLength => Length.FromMeters(_developed);

    /// <summary>Length to cut: developed length and ends.</summary>
    public Length BlankLength => Length.FromMeters(Blank);

    /// <summary>Where the arc starts on the blank, from its start.</summary>
    public Length ArcStartMark => Ends.Start;

    /// <summary>Where the arc ends on the blank, from its start: the second trim cut of a ring.</summary>
    public Length ArcEndMark => Length.FromMeters(Ends.StartMeters + _developed);

    internal double Blank => _developed + Ends.TotalMeters;

    /// <summary>Lays out the blank of a ring or arc.</summary>
    /// <param name="ring">The finished ring.</param>
    /// <param name="section">The bar in its orientation.</param>
    /// <param name="arc">How much of the ring is wanted.</param>
    /// <param name="ends">Extra length at the ends; <see cref="EndAllowance.None"/> for the theoretical blank.</param>
    /// <param name="kerf">Width of a saw cut, zero or more.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The ends are those of a forming model.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The kerf is negative or not finite.</exception>
    public static DevelopedLayout For(FinishedRing ring, OrientedSection section, ArcExtent arc, EndAllowance ends, Length kerf) => new(
        Guard.NotNull(ring, nameof(ring)),
        Guard.NotNull(section, nameof(section)),
        Guard.NotNull(arc, nameof(arc)),
        EndAllowance.Given(ends, nameof(ends)),
        Guard.NonNegative(kerf, nameof(kerf)));

    /// <summary>The blank as it is cut: the blank length rounded up to what a rule shows.</summary>
    /// <param name="style">Smallest step of the rule; it rounds up.</param>
    /// <exception cref="ArgumentNullException">The style is null.</exception>
    /// <exception cref="ArgumentException">The style does not round up: the blank would be short.</exception>
    public Length CutLengthIn(LengthStyle style) => Length.FromMeters(BarCuts.Rounded(Blank, style, nameof(style)));

    /// <summary>How many blanks a bar gives and what is left of it.</summary>
    /// <param name="barLength">Length of the bar, greater than zero.</param>
    /// <param name="cutStyle">What each piece is rounded up to when it is cut, as in <see cref="CutLengthIn"/>; null for the exact
    /// blank.</param>
    /// <exception cref="ArgumentException">The style does not round up.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar length is not positive and finite, or would give more than a million
    /// pieces.</exception>
    public BarUtilization PiecesFrom(Length barLength, LengthStyle? cutStyle = null) =>
        BarCuts.Pieces(cutStyle is null ? Blank : BarCuts.Rounded(Blank, cutStyle, nameof(cutStyle)), _kerf, barLength, nameof(barLength));

    /// <summary>Blanks from a bar, unless a bar is more than a million of them long.</summary>
    /// <param name="barLength">Length of a bar, greater than zero.</param>
    /// <param name="cutStyle">The rule blanks are cut by, which rounds up; null for the exact length.</param>
    /// <param name="pieces">Blanks and offcut, or null.</param>
    /// <returns>Whether they were counted.</returns>
    /// <exception cref="ArgumentException">The style does not round up.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is not positive and finite.</exception>
    public bool TryPiecesFrom(Length barLength, LengthStyle? cutStyle, [NotNullWhen(true)] out BarUtilization? pieces)
    {
        double blank = cutStyle is null ? Blank : BarCuts.Rounded(Blank, cutStyle, nameof(cutStyle));
        pieces = BarCuts.TryPieces(blank, _kerf, Guard.Positive(barLength, nameof(barLength)));
        return pieces is not null;
    }

    /// <summary>Mass of the blank.</summary>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public Mass MassOf(Density density) => Mass.FromKilograms(Blank * Section.Properties.MassPerLength(density).KilogramsPerMeter);

    /// <summary>Arc and lengths.</summary>
    public override string ToString() => Invariant($"{Arc}: developed {_developed * 1e3:0.##} mm, blank {Blank * 1e3:0.##} mm");
}
