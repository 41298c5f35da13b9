using BendMath.Guards;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Tee with a flange of even thickness and a stem of even thickness in its middle. Tees with tapered flange or stem are not covered.
/// Immutable and thread-safe.
/// </summary>
public sealed class Tee : BarStock
{
    /// <summary>Makes the tee from its dimensions.</summary>
    /// <param name="depth">From the face of the flange to the end of the stem; greater than flange, root radius and stem corners
    /// together.</param>
    /// <param name="flangeWidth">Over the flange; greater than stem, root radii and toe radii together.</param>
    /// <param name="stemThickness">Greater than zero.</param>
    /// <param name="flangeThickness">Greater than zero.</param>
    /// <param name="fillets">Root, toe and stem corner radii; <see cref="FlangeFillets.Sharp"/> for none. The toe radius may not exceed the
    /// flange thickness, that of the stem corners half the stem thickness.</param>
    /// <exception cref="ArgumentNullException">The fillets are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public Tee(Length depth, Length flangeWidth, Length stemThickness, Length flangeThickness, FlangeFillets fillets)
    {
        Fillets = Guard.NotNull(fillets, nameof(fillets));
        Profile = new(
            Guard.Positive(depth, nameof(depth)),
            Guard.Positive(flangeWidth, nameof(flangeWidth)),
            Guard.Positive(stemThickness, nameof(stemThickness)),
            Guard.Positive(flangeThickness, nameof(flangeThickness)),
            fillets);
        Profile.Check(depth, flangeWidth, nameof(depth), nameof(flangeWidth), nameof(fillets));
        StemOut = Profile.Oriented(this, TeePosition.StemOut);
        StemIn = Profile.Oriented(this, TeePosition.StemIn);
        StemUp = Profile.Oriented(this, TeePosition.StemUp);
        Orientations = [StemOut, StemIn, StemUp];
    }

    /// <summary>From the face of the flange to the end of the stem.</summary>
    public Length Depth => Length.FromMeters(Profile.Depth);

    /// <summary>Width over the flange.</summary>
    public Length FlangeWidth => Length.FromMeters(Profile.Flange);

    /// <summary>Thickness of the stem.</summary>
    public Length StemThickness => Length.FromMeters(Profile.Stem);

    /// <summary>Thickness of the flange.</summary>
    public Length FlangeThickness => Length.FromMeters(Profile.Thickness);

    /// <summary>Root, toe and stem corner radii.</summary>
    public FlangeFillets Fillets { get; }

    /// <summary>Stem out: the flange lies at the inside face and the stem stands outward.</summary>
    public OrientedSection StemOut { get; }

    /// <summary>Stem in: the flange lies at the outside face and the stem stands inward.</summary>
    public OrientedSection StemIn { get; }

    /// <summary>Stem up: the flange lies in the plane of the ring and the stem along its axis.</summary>
    public OrientedSection StemUp { get; }

    /// <inheritdoc/>
    public override string Shape => "tee";

    /// <inheritdoc/>
    public override string Name => Millimeters(Profile.Depth, Profile.Flange, Profile.Stem, Profile.Thickness);

    /// <inheritdoc/>
    public override string Description => $"{Name}, {Fillets}";

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    private TeeProfile Profile { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => TorsionFormulas.Tee(Profile);

    private protected override (double Value, SectionFormula Formula)? Warping =>
        (OpenShapeFormulas.TeeWarping(Profile), OpenShapeFormulas.TeeWarpingFormula);

    private protected override object Identity => Profile.Identity;
}
