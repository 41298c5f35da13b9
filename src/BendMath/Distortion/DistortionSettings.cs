using BendMath.Distortion.Checks;
using BendMath.Guards;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>A rule of a code on strain or radius that a user may switch on. None is a rule for rings of bar.</summary>
public enum StrainRule
{
    /// <summary>At most 5 % strain of the extreme fiber, depth over twice the radius of the middle line.</summary>
    FivePercent,

    /// <summary>Inside radius of at least ten depths.</summary>
    TenThicknesses,

    /// <summary>Inside radius of at least four and a half depths.</summary>
    FourAndHalfThicknesses,

    /// <summary>Inside radius of at least two depths.</summary>
    TwoThicknesses,
}

/// <summary>
/// How the leg along the axis of the ring is held against moving to and from the center of the bend. A die on the inside holds a leg in
/// tension only: a compressed one moves away from it.
/// </summary>
public enum LegBacking
{
    /// <summary>Nobody says.</summary>
    Unknown,

    /// <summary>It stands free on the side it is pushed to.</summary>
    Free,

    /// <summary>A die, a groove or a roller holds it on the side it is pushed to.</summary>
    Backed,
}

/// <summary>
/// What distortion depends on and the section cannot know, with the bounds a shop may set for itself. Immutable and thread-safe.
/// </summary>
public sealed record DistortionSettings
{
    private readonly double? _torsion;

    private readonly double? _wall;

    /// <summary>Makes the settings; whatever is left out has the default stated with it.</summary>
    /// <param name="support">How the bar is held while it is bent; free as far as anybody says when null.</param>
    /// <param name="release">Whether the ring lies free or is held flat where it is used; free by default.</param>
    /// <param name="requiredWall">Least wall a bent tube must have after bending, greater than zero; null when none is asked for.</param>
    /// <param name="legToRadius">Bounds of the leg-to-radius ratio; those of common practice when null.</param>
    /// <param name="torsionConstant">Torsion constant J, greater than zero; that of the stock when null.</param>
    /// <param name="rules">Rules of codes to check besides; none when null.</param>
    /// <exception cref="ArgumentException">A rule is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the release is not defined.</exception>
    public DistortionSettings(
        BarSupport? support = null,
        Release release = Release.Free,
        Length? requiredWall = null,
        LegToRadiusCheck? legToRadius = null,
        AreaMomentOfInertia? torsionConstant = null,
        IReadOnlyList<StrainRule>? rules = null)
    {
        Support = support ?? new BarSupport();
        Release = Guard.Defined(release, nameof(release));
        _wall = requiredWall is { } wall ? Guard.Positive(wall, nameof(requiredWall)) : null;
        LegToRadius = legToRadius ?? LegToRadiusCheck.CommonPractice;
        _torsion = torsionConstant is { } torsion ? Guard.Positive(torsion, nameof(torsionConstant)) : null;
        Rules = [.. (rules ?? []).Select(rule => Guard.Defined(rule, nameof(rules))).Distinct()];
    }

    /// <summary>
    /// Nothing supported, nothing known of backing, no distance between supports, the bounds of common practice, no rule of a code.
    /// </summary>
    public static DistortionSettings Default { get; } = new();

    /// <summary>How the bar is held while it is bent.</summary>
    public BarSupport Support { get; }

    /// <summary>Whether the ring lies free or is held flat where it is used.</summary>
    public Release Release { get; }

    /// <summary>Least wall after bending, or null.</summary>
    public Length? RequiredWall => _wall is { } wall ? Length.FromMeters(wall) : null;

    /// <summary>Bounds of the leg-to-radius ratio.</summary>
    public LegToRadiusCheck LegToRadius { get; }

    /// <summary>Torsion constant in place of that of the stock, or null.</summary>
    public AreaMomentOfInertia? TorsionConstant => _torsion is { } torsion ? AreaMomentOfInertia.FromMetersToTheFourth(torsion) : null;

    /// <summary>Rules of codes that are switched on.</summary>
    public IReadOnlyList<StrainRule> Rules { get; }

    internal double? TorsionMeters => _torsion;

    /// <summary>The same settings with some of them changed, checked as new ones; what is left out stays.</summary>
    /// <param name="support">Another support, or null.</param>
    /// <param name="release">Another use of the ring, or null.</param>
    /// <param name="requiredWall">Another least wall, or null.</param>
    /// <param name="legToRadius">Other bounds of the leg-to-radius ratio, or null.</param>
    /// <param name="torsionConstant">Another torsion constant, or null.</param>
    /// <param name="rules">Other rules, or null.</param>
    /// <exception cref="ArgumentException">A rule is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the release is not defined.</exception>
    public DistortionSettings With(
        BarSupport? support = null,
        Release? release = null,
        Length? requiredWall = null,
        LegToRadiusCheck? legToRadius = null,
        AreaMomentOfInertia? torsionConstant = null,
        IReadOnlyList<StrainRule>? rules = null) =>
        new(support ?? Support, release ?? Release, requiredWall ?? RequiredWall, legToRadius ?? LegToRadius,
            torsionConstant ?? TorsionConstant, rules ?? Rules);

    /// <summary>Equal when all settings are equal.</summary>
    /// <param name="other">Other settings.</param>
    public bool Equals(DistortionSettings? other) =>
        other is not null
            && (Support, Release, _wall, LegToRadius, _torsion)
                == (other.Support, other.Release, other._wall, other.LegToRadius, other._torsion) && Rules.SequenceEqual(other.Rules);

    /// <inheritdoc/>
    public override int GetHashCode() => (Support, Release, _wall, LegToRadius, _torsion, Rules.Count).GetHashCode();

    /// <summary>Supports and distance between them.</summary>
    public override string ToString() => Support.ToString();
}
