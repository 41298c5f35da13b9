using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>
/// How a bar lies in the bender, whatever its shape and size: the hard way of a flat is that of a tube. Immutable and thread-safe.
/// </summary>
public sealed class Orientation : IEquatable<Orientation>
{
    private readonly string _words;

    private readonly double? _degrees;

    private Orientation(string words, double? degrees = null)
    {
        _words = words;
        _degrees = degrees;
    }

    /// <summary>
    /// The way that needs no word: a round bar or tube, and a square bar or tube with a face toward the center of the bend.
    /// </summary>
    public static Orientation Usual { get; } = new(string.Empty);

    /// <summary>An angle with one leg outward in the plane of the ring and the other at the inside face.</summary>
    public static Orientation FlangeOut { get; } = new("flange out");

    /// <summary>An angle with one leg inward in the plane of the ring and the other at the outside face.</summary>
    public static Orientation FlangeIn { get; } = new("flange in");

    /// <summary>An angle on its bisector, the heel toward the center of the bend.</summary>
    public static Orientation HeelIn { get; } = new("heel in");

    /// <summary>An angle on its bisector, the heel away from the center of the bend.</summary>
    public static Orientation HeelOut { get; } = new("heel out");

    /// <summary>An unequal angle, flange out, with its long leg in the plane of the ring.</summary>
    public static Orientation LongLegFlangeOut { get; } = new("long leg radial, flange out");

    /// <summary>An unequal angle, flange in, with its long leg in the plane of the ring.</summary>
    public static Orientation LongLegFlangeIn { get; } = new("long leg radial, flange in");

    /// <summary>An unequal angle, flange out, with its short leg in the plane of the ring.</summary>
    public static Orientation ShortLegFlangeOut { get; } = new("short leg radial, flange out");

    /// <summary>An unequal angle, flange in, with its short leg in the plane of the ring.</summary>
    public static Orientation ShortLegFlangeIn { get; } = new("short leg radial, flange in");

    /// <summary>A flat or tube with its smaller dimension in the plane of the ring.</summary>
    public static Orientation EasyWay { get; } = new("easy way");

    /// <summary>A flat or tube with its larger dimension in the plane of the ring, and a channel with its web in it.</summary>
    public static Orientation HardWay { get; } = new("hard way");

    /// <summary>A square bar with a corner toward the center of the bend.</summary>
    public static Orientation OnDiagonal { get; } = new("on the diagonal");

    /// <summary>A hexagon with a face toward the center of the bend.</summary>
    public static Orientation OnFlat { get; } = new("on the flat");

    /// <summary>A hexagon with a corner toward the center of the bend.</summary>
    public static Orientation OnCorner { get; } = new("on the corner");

    /// <summary>A channel the easy way with both flanges outward.</summary>
    public static Orientation FlangesOut { get; } = new("flanges out (easy way)");

    /// <summary>A channel the easy way with both flanges inward.</summary>
    public static Orientation FlangesIn { get; } = new("flanges in (easy way)");

    /// <summary>A tee with its stem outward.</summary>
    public static Orientation StemOut { get; } = new("stem out");

    /// <summary>A tee with its stem inward.</summary>
    public static Orientation StemIn { get; } = new("stem in");

    /// <summary>A tee with its stem along the axis of the ring.</summary>
    public static Orientation StemUp { get; } = new("stem up");

    /// <summary>A drawn bar as its drawing shows it.</summary>
    public static Orientation AsDrawn { get; } = new("as drawn", 0);

    /// <summary>Whether it is the way that needs no word, <see cref="Usual"/>.</summary>
    public bool IsUsual => ReferenceEquals(this, Usual);

    /// <summary>
    /// How far the drawing of a drawn bar is turned, from 0° to 360°, positive counter-clockwise; null for all other bars.
    /// </summary>
    public Angle? Turn => _degrees is { } degrees ? Angle.FromDegrees(degrees) : null;

    /// <summary>Whether two orientations are equal, or both null.</summary>
    /// <param name="left">An orientation.</param>
    /// <param name="right">Another orientation.</param>
    public static bool operator ==(Orientation? left, Orientation? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two orientations differ, or one of them is null.</summary>
    /// <param name="left">An orientation.</param>
    /// <param name="right">Another orientation.</param>
    public static bool operator !=(Orientation? left, Orientation? right) => !(left == right);

    /// <summary>A drawn bar with its drawing turned. Full turns do not count, nor does what is less than a billionth of a degree.</summary>
    /// <param name="turn">Turn of the drawing, positive counter-clockwise.</param>
    /// <exception cref="ArgumentOutOfRangeException">The turn is not finite.</exception>
    public static Orientation TurnedBy(Angle turn)
    {
        double degrees = Guard.Finite(turn, nameof(turn)) * 180 / Math.PI % 360;
        double rounded = Math.Round(degrees < 0 ? degrees + 360 : degrees, 9) % 360;
        return rounded == 0 ? AsDrawn : new($"turned by {Guard.Text(Angle.FromDegrees(rounded))}", rounded);
    }

    /// <summary>Equal when both are the same way to lie; of drawn bars, when both are turned alike.</summary>
    /// <param name="other">Another orientation.</param>
    public bool Equals(Orientation? other) =>
        ReferenceEquals(this, other) || (other is not null && _degrees is { } degrees && degrees == other._degrees);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Orientation);

    /// <inheritdoc/>
    public override int GetHashCode() => _degrees?.GetHashCode() ?? System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);

    /// <summary>The words of the trade, such as <c>flange out</c>; empty for <see cref="Usual"/>.</summary>
    public override string ToString() => _words;
}
