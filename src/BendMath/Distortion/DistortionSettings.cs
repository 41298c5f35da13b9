using BendMath.Distortion.Checks;
using BendMath.Guards;
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
    /// <param name="lowLegToRadius">Leg over loaded inside radius up to and including which the risk is low, greater than zero; 0.15 is
    /// common practice without a source.</param>
    /// <param name="mediumLegToRadius">The same up to and including which the risk is medium, not below the first; 0.25 is a
    /// setting.</param>
    /// <param name="torsionConstant">Torsion constant J, greater than zero; that of the stock when null.</param>
    /// <param name="rules">Rules of codes to check besides; none when null.</param>
    /// <exception cref="ArgumentException">A rule is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the release is not defined.</exception>
    public DistortionSettings(
        BarSupport? support = null,
        Release release = Release.Free,
        Length? requiredWall = null,
        double lowLegToRadius = 0.15,
        double mediumLegToRadius = 0.25,
        AreaMomentOfInertia? torsionConstant = null,
        IReadOnlyList<StrainRule>? rules = null)
    {
        Support = support ?? new BarSupport();
        Release = Guard.Defined(release, nameof(release));
        _wall = requiredWall is { } wall ? Guard.Positive(wall, nameof(requiredWall)) : null;
        LowLegToRadius = Guard.Positive(lowLegToRadius, nameof(lowLegToRadius));
        MediumLegToRadius = Guard.Positive(mediumLegToRadius, nameof(mediumLegToRadius));
        if (mediumLegToRadius < lowLegToRadius)
        {
            throw Guard.Fault(nameof(mediumLegToRadius), mediumLegToRadius,
                Invariant($"must not be below the lower bound, {lowLegToRadius}"));
        }

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

    /// <summary>Leg over loaded inside radius up to and including which the risk is low.</summary>
    public double LowLegToRadius { get; }

    /// <summary>Leg over loaded inside radius up to and including which the risk is medium.</summary>
    public double MediumLegToRadius { get; }

    /// <summary>Torsion constant in place of that of the stock, or null.</summary>
    public AreaMomentOfInertia? TorsionConstant => _torsion is { } torsion ? AreaMomentOfInertia.FromMetersToTheFourth(torsion) : null;

    /// <summary>Rules of codes that are switched on.</summary>
    public IReadOnlyList<StrainRule> Rules { get; }

    internal double? TorsionMeters => _torsion;

    /// <summary>Checks a leg against a radius.</summary>
    /// <param name="radialLeg">Leg, width or diameter in the plane of the ring, greater than zero.</param>
    /// <param name="loadedInsideRadius">Inside radius while loaded, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not positive and finite, or their ratio is not finite.</exception>
    public DistortionFinding LegToRadius(Length radialLeg, Length loadedInsideRadius)
    {
        double leg = Guard.Positive(radialLeg, nameof(radialLeg));
        double radius = Guard.Positive(loadedInsideRadius, nameof(loadedInsideRadius));
        return leg / radius is > 0 and < double.PositiveInfinity
            ? LegToRadiusCheck.Of(leg, radius, this)
            : throw Guard.Fault(nameof(loadedInsideRadius), loadedInsideRadius,
                $"must be comparable with the leg, {Guard.Text(radialLeg)}");
    }

    /// <summary>Largest leg of low risk at a radius.</summary>
    /// <param name="loadedInsideRadius">Inside radius while loaded, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive and finite.</exception>
    public Length LargestLegFor(Length loadedInsideRadius) =>
        Length.FromMeters(LowLegToRadius * Guard.Positive(loadedInsideRadius, nameof(loadedInsideRadius)));

    /// <summary>Least loaded inside radius of low risk for a leg.</summary>
    /// <param name="radialLeg">Leg in the plane of the ring, greater than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">The leg is not positive and finite, or too long for a finite radius.</exception>
    public Length LeastRadiusFor(Length radialLeg)
    {
        double radius = Guard.Positive(radialLeg, nameof(radialLeg)) / LowLegToRadius;
        return radius < double.PositiveInfinity ? Length.FromMeters(radius)
            : throw Guard.Fault(nameof(radialLeg), radialLeg, "must be short enough for a finite radius");
    }

    /// <summary>The same settings with some of them changed, checked as new ones; what is left out stays.</summary>
    /// <param name="support">Another support, or null.</param>
    /// <param name="release">Another use of the ring, or null.</param>
    /// <param name="requiredWall">Another least wall, or null.</param>
    /// <param name="lowLegToRadius">Another bound of low risk of the leg-to-radius ratio, or null.</param>
    /// <param name="mediumLegToRadius">Another bound of medium risk of that ratio, or null.</param>
    /// <param name="torsionConstant">Another torsion constant, or null.</param>
    /// <param name="rules">Other rules, or null.</param>
    /// <exception cref="ArgumentException">A rule is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the release is not defined.</exception>
    public DistortionSettings With(
        BarSupport? support = null,
        Release? release = null,
        Length? requiredWall = null,
        double? lowLegToRadius = null,
        double? mediumLegToRadius = null,
        AreaMomentOfInertia? torsionConstant = null,
        IReadOnlyList<StrainRule>? rules = null) =>
        new(support ?? Support, release ?? Release, requiredWall ?? RequiredWall, lowLegToRadius ?? LowLegToRadius,
            mediumLegToRadius ?? MediumLegToRadius,
            torsionConstant ?? TorsionConstant, rules ?? Rules);

    /// <summary>Equal when all settings are equal.</summary>
    /// <param name="other">Other settings.</param>
    public bool Equals(DistortionSettings? other) =>
        other is not null
            && (Support, Release, _wall, LowLegToRadius, MediumLegToRadius, _torsion)
                == (other.Support, other.Release, other._wall, other.LowLegToRadius, other.MediumLegToRadius, other._torsion)
                    && Rules.SequenceEqual(other.Rules);

    /// <inheritdoc/>
    public override int GetHashCode() => (Support, Release, _wall, LowLegToRadius, MediumLegToRadius, _torsion, Rules.Count).GetHashCode();

    /// <summary>Supports and distance between them.</summary>
    public override string ToString() => Support.ToString();
}
