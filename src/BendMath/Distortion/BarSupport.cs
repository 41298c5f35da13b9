using BendMath.Guards;
using UnitsNet;

namespace BendMath.Distortion;

/// <summary>How the bar is held in shape and in its plane while it is bent. Immutable and thread-safe.</summary>
public sealed record BarSupport
{
    private readonly double? _unsupported;

    /// <summary>Says what holds the bar; whatever is left out has the default stated with it.</summary>
    /// <param name="holdsFreeEdge">Whether the compressed leg runs in a slot that keeps it from moving sideways; by default it is
    /// free.</param>
    /// <param name="backsAxialLeg">Whether a die, a groove or a roller holds the leg along the axis of the ring on the side it is pushed
    /// to; null when nobody says. A die on the inside holds a leg in tension only: a compressed one moves away from it.</param>
    /// <param name="holdsTube">Whether a tube is held in shape by a grooved die, a filling or a mandrel; by default it is free.</param>
    /// <param name="unsupportedLength">Length of bar between two places where it is kept from moving sideways and from twisting, greater
    /// than zero; null when nobody says.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    public BarSupport(bool holdsFreeEdge = false, bool? backsAxialLeg = null, bool holdsTube = false,
        Length? unsupportedLength = null)
    {
        HoldsFreeEdge = holdsFreeEdge;
        BacksAxialLeg = backsAxialLeg;
        HoldsTube = holdsTube;
        _unsupported = unsupportedLength is { } length ? Guard.Positive(length, nameof(unsupportedLength)) : null;
    }

    /// <summary>Whether the compressed leg runs in a slot.</summary>
    public bool HoldsFreeEdge { get; }

    /// <summary>Whether the leg along the axis of the ring is backed on the side it is pushed to; null when nobody says.</summary>
    public bool? BacksAxialLeg { get; }

    /// <summary>Whether a tube is held in shape by a grooved die, a filling or a mandrel.</summary>
    public bool HoldsTube { get; }

    /// <summary>Length of bar between sideways supports, or null.</summary>
    public Length? UnsupportedLength => _unsupported is { } length ? Length.FromMeters(length) : null;

    /// <summary>The same support with some of it changed, checked as a new one; what is left out stays.</summary>
    /// <param name="holdsFreeEdge">Whether the compressed leg runs in a slot, or null.</param>
    /// <param name="backsAxialLeg">Whether the axial leg is backed, or null.</param>
    /// <param name="holdsTube">Whether a tube is held in shape, or null.</param>
    /// <param name="unsupportedLength">Another length between supports, or null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not positive and finite.</exception>
    public BarSupport With(bool? holdsFreeEdge = null, bool? backsAxialLeg = null, bool? holdsTube = null,
        Length? unsupportedLength = null) =>
        new(holdsFreeEdge ?? HoldsFreeEdge, backsAxialLeg ?? BacksAxialLeg, holdsTube ?? HoldsTube, unsupportedLength ?? UnsupportedLength);

    /// <summary>What is held, and the distance between supports.</summary>
    public override string ToString() => string.Join(
        ", ",
        HoldsFreeEdge ? "compressed leg in a slot" : "compressed leg free",
        BacksAxialLeg switch
        {
            true => "axial leg backed",
            false => "axial leg not backed",
            null => "backing of the axial leg not given",
        },
        HoldsTube ? "tube supported" : "tube free",
        _unsupported is { } length ? $"supports every {Guard.MillimetersText(length)}" : "distance between supports not given");
}
