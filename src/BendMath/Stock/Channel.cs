using BendMath.Guards;
using BendMath.Sections.Features;
using BendMath.Stock.Geometry;
using UnitsNet;

namespace BendMath;

/// <summary>
/// Channel with two parallel flanges of even thickness. Channels with tapered flanges are not covered. Immutable and thread-safe.
/// </summary>
public sealed class Channel : BarStock
{
    /// <summary>Makes the channel from its dimensions.</summary>
    /// <param name="depth">Over both flanges, along the web; greater than both flanges and root radii together.</param>
    /// <param name="flangeWidth">From the back of the web to the toes; greater than web, root radius and toe radius together.</param>
    /// <param name="webThickness">Greater than zero.</param>
    /// <param name="flangeThickness">Greater than zero.</param>
    /// <param name="fillets">Root, toe and outside corner radii; <see cref="FlangeFillets.Sharp"/> for none. The toe radius may not exceed
    /// the flange thickness; the outside corners must fit and leave material in the corner.</param>
    /// <exception cref="ArgumentNullException">The fillets are null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its range.</exception>
    public Channel(Length depth, Length flangeWidth, Length webThickness, Length flangeThickness, FlangeFillets fillets)
    {
        Fillets = Guard.NotNull(fillets, nameof(fillets));
        Profile = new(
            Guard.Positive(depth, nameof(depth)),
            Guard.Positive(flangeWidth, nameof(flangeWidth)),
            Guard.Positive(webThickness, nameof(webThickness)),
            Guard.Positive(flangeThickness, nameof(flangeThickness)),
            fillets);
        Profile.Check(depth, flangeWidth, nameof(depth), nameof(flangeWidth), nameof(fillets));
        FlangesOut = Profile.Oriented(this, ChannelPosition.FlangesOut);
        FlangesIn = Profile.Oriented(this, ChannelPosition.FlangesIn);
        HardWay = Profile.Oriented(this, ChannelPosition.HardWay);
        Orientations = [FlangesOut, FlangesIn, HardWay];
    }

    /// <summary>Over both flanges, along the web.</summary>
    public Length Depth => Length.FromMeters(Profile.Depth);

    /// <summary>From the back of the web to the toes.</summary>
    public Length FlangeWidth => Length.FromMeters(Profile.Flange);

    /// <summary>Thickness of the web.</summary>
    public Length WebThickness => Length.FromMeters(Profile.Web);

    /// <summary>Thickness of both flanges.</summary>
    public Length FlangeThickness => Length.FromMeters(Profile.Thickness);

    /// <summary>Root, toe and outside corner radii.</summary>
    public FlangeFillets Fillets { get; }

    /// <summary>Easy way, flanges out (legs out): the web lies at the inside face and both flanges stand outward.</summary>
    public OrientedSection FlangesOut { get; }

    /// <summary>Easy way, flanges in (legs in): the web lies at the outside face and both flanges stand inward.</summary>
    public OrientedSection FlangesIn { get; }

    /// <summary>Hard way: the web lies in the plane of the ring, one flange at the inside face and one at the outside face.</summary>
    public OrientedSection HardWay { get; }

    /// <inheritdoc/>
    public override string Shape => "channel";

    /// <inheritdoc/>
    public override string Name => Millimeters(Profile.Depth, Profile.Flange, Profile.Web, Profile.Thickness);

    /// <inheritdoc/>
    public override string Description => $"{Name}, {Fillets}";

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    private ChannelProfile Profile { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<TorsionConstant> TorsionConstants => TorsionFormulas.Channel(Profile);

    private protected override (double Value, SectionFormula Formula)? Warping =>
        (OpenShapeFormulas.ChannelWarping(Profile), OpenShapeFormulas.ChannelWarpingFormula);

    private protected override object Identity => Profile.Identity;
}
