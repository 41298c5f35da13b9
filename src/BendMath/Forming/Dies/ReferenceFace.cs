using BendMath.Guards;
using BendMath.Sections.Features;
using UnitsNet;

namespace BendMath;

/// <summary>
/// The face of the bent bar that a die's stamped radius means. The inside-face radius is the stamp less an offset: nothing when the stamp
/// is the face the bar's inside touches, the thickness of the stack or leg between for a mating face, the whole depth of the bar when the
/// stamp means the outside. A 5 in stamp and a 3/4 in leg are 10 in or 8 1/2 in inside diameter: common practice differs, so the die must
/// say. Immutable and thread-safe.
/// </summary>
public sealed record ReferenceFace
{
    /// <summary>Share of the depth of a bar within which two faces count as one.</summary>
    internal const double Negligible = 0.02;

    private readonly double _offset;

    private readonly bool _wholeDepth;

    private ReferenceFace(double offset, bool wholeDepth)
    {
        _offset = offset;
        _wholeDepth = wholeDepth;
    }

    /// <summary>The stamp is the radius of the face the inside of the bar touches.</summary>
    public static ReferenceFace InsideOfBar { get; } = new(0, wholeDepth: false);

    /// <summary>The stamp is the radius of the outside face of the bar, the whole depth away.</summary>
    public static ReferenceFace OutsideOfBar { get; } = new(0, wholeDepth: true);

    /// <summary>The stamp is the radius of a face that lies a fixed distance outside the inside face of the bar.</summary>
    /// <param name="offset">Distance from the inside face outward, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The offset is negative or not finite.</exception>
    public static ReferenceFace OffsetBy(Length offset) => new(Guard.NonNegative(offset, nameof(offset)), wholeDepth: false);

    /// <summary>Distance from the bar's inside face to the stamped face.</summary>
    /// <param name="section">The bar in its orientation.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    public Length OffsetFor(OrientedSection section) => Length.FromMeters(Offset(Guard.NotNull(section, nameof(section))));

    /// <summary>The face in words.</summary>
    public override string ToString() => _wholeDepth ? "outside of the bar"
        : _offset == 0 ? "inside of the bar"
        : Invariant($"{_offset * 1e3:0.##} mm outside the inside face");

    /// <summary>Distances of the bar's faces from its inside face: the inside, both sides of a leg along the axis, the outside.</summary>
    internal static IReadOnlyList<double> FacesOf(OrientedSection section)
    {
        IReadOnlyList<Outstand> legs = section.Features.Outstands;
        double height = section.Height;
        bool inward = legs.Any(leg => leg.Direction == FlangeDirection.In);
        bool outward = legs.Any(leg => leg.Direction == FlangeDirection.Out);
        IEnumerable<double> legFaces = legs.Where(leg => !leg.IsRadial).Select(leg => leg.Thickness.Meters)
            .SelectMany(t => inward == outward ? new[] { t, height - t } : [inward ? height - t : t]).Distinct();
        return [0, .. legFaces, height];
    }

    /// <summary>Whether the bar has a face there, within 2 % of its depth; the share is a setting, not a finding.</summary>
    internal bool IsFaceOf(OrientedSection section) =>
        FacesOf(section).Any(face => Math.Abs(face - Offset(section)) <= Negligible * section.Height);

    internal double Offset(OrientedSection section) => _wholeDepth ? section.Height : _offset;
}
