using UnitsNet;

namespace BendMath;

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

/// <summary>How the leg along the axis of the ring is held against moving to and from the center of the bend. A die on the inside holds a leg in tension only: a compressed one moves away from it.</summary>
public enum LegBacking
{
    /// <summary>Nobody says.</summary>
    Unknown,

    /// <summary>It stands free on the side it is pushed to.</summary>
    Free,

    /// <summary>A die, a groove or a roller holds it on the side it is pushed to.</summary>
    Backed,
}

/// <summary>What distortion depends on and the section cannot know, with the bounds a shop may set for itself. Immutable and thread-safe.</summary>
public sealed record DistortionSettings
{
    private readonly double? _unsupported;

    private readonly double? _torsion;

    private readonly double? _wall;

    /// <summary>Makes the settings; whatever is left out has the default stated with it.</summary>
    /// <param name="legToRadius">Bounds of the leg-to-radius ratio; those of common practice when null.</param>
    /// <param name="freeEdgeSupported">Whether the compressed leg runs in a slot that keeps it from moving sideways; by default it is free.</param>
    /// <param name="axialLeg">How the leg along the axis of the ring is held against moving to and from the center of the bend; by default nobody says.</param>
    /// <param name="tubeSupported">Whether a tube is held in shape by a grooved die, a filling or a mandrel; by default it is free.</param>
    /// <param name="unsupportedLength">Length of bar between two places where it is kept from moving sideways and from twisting, greater than zero; null when nobody says.</param>
    /// <param name="torsionConstant">Torsion constant J, greater than zero; that of the stock when null.</param>
    /// <param name="requiredWall">Least wall a bent tube must have after bending, greater than zero; null when none is asked for.</param>
    /// <param name="release">Whether the ring lies free or is held flat where it is used; free by default.</param>
    /// <param name="rules">Rules of codes to check besides; none when null.</param>
    /// <exception cref="ArgumentException">A rule is not defined.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive and finite, or the backing or the release is not defined.</exception>
    public DistortionSettings(
        LegToRadiusCheck? legToRadius = null,
        bool freeEdgeSupported = false,
        LegBacking axialLeg = LegBacking.Unknown,
        bool tubeSupported = false,
        Length? unsupportedLength = null,
        AreaMomentOfInertia? torsionConstant = null,
        Length? requiredWall = null,
        Release release = Release.Free,
        IReadOnlyList<StrainRule>? rules = null)
    {
        LegToRadius = legToRadius ?? LegToRadiusCheck.CommonPractice;
        FreeEdgeSupported = freeEdgeSupported;
        AxialLeg = Guard.Defined(axialLeg, nameof(axialLeg));
        TubeSupported = tubeSupported;
        _unsupported = unsupportedLength is { } length ? Guard.Positive(length, nameof(unsupportedLength)) : null;
        _torsion = torsionConstant is { } torsion ? Guard.Positive(torsion, nameof(torsionConstant)) : null;
        _wall = requiredWall is { } wall ? Guard.Positive(wall, nameof(requiredWall)) : null;
        Release = Guard.Defined(release, nameof(release));
        Rules = [.. (rules ?? []).Select(rule => Guard.Defined(rule, nameof(rules))).Distinct()];
    }

    /// <summary>Nothing supported, nothing known of backing, no distance between supports, the bounds of common practice, no rule of a code.</summary>
    public static DistortionSettings Default { get; } = new();

    /// <summary>Bounds of the leg-to-radius ratio.</summary>
    public LegToRadiusCheck LegToRadius { get; }

    /// <summary>Whether the compressed leg runs in a slot.</summary>
    public bool FreeEdgeSupported { get; }

    /// <summary>How the leg along the axis of the ring is held.</summary>
    public LegBacking AxialLeg { get; }

    /// <summary>Whether a tube is held in shape by a grooved die, a filling or a mandrel.</summary>
    public bool TubeSupported { get; }

    /// <summary>Length of bar between sideways supports, or null.</summary>
    public Length? UnsupportedLength => _unsupported is { } length ? Length.FromMeters(length) : null;

    /// <summary>Torsion constant in place of that of the stock, or null.</summary>
    public AreaMomentOfInertia? TorsionConstant => _torsion is { } torsion ? AreaMomentOfInertia.FromMetersToTheFourth(torsion) : null;

    /// <summary>Least wall after bending, or null.</summary>
    public Length? RequiredWall => _wall is { } wall ? Length.FromMeters(wall) : null;

    /// <summary>Whether the ring lies free or is held flat where it is used.</summary>
    public Release Release { get; }

    /// <summary>Rules of codes that are switched on.</summary>
    public IReadOnlyList<StrainRule> Rules { get; }

    internal double? TorsionMeters => _torsion;

    private (bool, LegBacking, bool, double?, double?, double?, Release) Flags => (FreeEdgeSupported, AxialLeg, TubeSupported, _unsupported, _torsion, _wall, Release);

    /// <summary>Equal when all settings are equal.</summary>
    /// <param name="other">Other settings.</param>
    public bool Equals(DistortionSettings? other) => other is not null && LegToRadius == other.LegToRadius && Flags == other.Flags && Rules.SequenceEqual(other.Rules);

    /// <inheritdoc/>
    public override int GetHashCode() => (LegToRadius, Flags, Rules.Count).GetHashCode();

    /// <summary>Supports and distance between them.</summary>
    public override string ToString() => string.Join(
        ", ",
        FreeEdgeSupported ? "compressed leg in a slot" : "compressed leg free",
        AxialLeg switch { LegBacking.Backed => "axial leg backed", LegBacking.Free => "axial leg not backed", _ => "backing of the axial leg not given" },
        TubeSupported ? "tube supported" : "tube free",
        _unsupported is { } length ? $"supports every {Guard.MillimetersText(length)}" : "distance between supports not given");
}
