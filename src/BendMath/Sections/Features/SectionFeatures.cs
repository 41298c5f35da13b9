using BendMath.Guards;
using UnitsNet;

namespace BendMath.Sections.Features;

/// <summary>A leg or flange held along one edge only. Immutable and thread-safe.</summary>
public sealed record Outstand
{
    private readonly double _length;

    private readonly double _thickness;

    /// <summary>Makes an outstand, for an outline that cannot tell its own.</summary>
    /// <param name="length">Full length of the leg, from the heel; greater than the thickness.</param>
    /// <param name="thickness">Thickness of the leg, greater than zero.</param>
    /// <param name="direction">Which way it stands: in, its free edge compressed, or out, its free edge stretched; null along the axis of
    /// the ring.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not positive and finite, the leg is not longer than it is thick, or the
    /// direction is not defined.</exception>
    public Outstand(Length length, Length thickness, FlangeDirection? direction)
        : this(Guard.Positive(length, nameof(length)), Guard.Positive(thickness, nameof(thickness)),
            direction is { } way ? Guard.Defined(way, nameof(direction)) : null)
    {
        if (_length <= _thickness)
        {
            throw Guard.Fault(nameof(length), length, $"must be greater than the thickness, {Guard.Text(thickness)}");
        }
    }

    internal Outstand(double length, double thickness, FlangeDirection? direction)
    {
        _length = length;
        _thickness = thickness;
        Direction = direction;
    }

    /// <summary>Full length of the leg, from the heel.</summary>
    public Length Length => Length.FromMeters(_length);

    /// <summary>Thickness of the leg.</summary>
    public Length Thickness => Length.FromMeters(_thickness);

    /// <summary>Which way its free edge lies in the bent bar: in, compressed, or out, stretched; null along the axis of the ring.</summary>
    public FlangeDirection? Direction { get; }

    /// <summary>Whether the leg lies in the plane of the ring.</summary>
    public bool IsRadial => Direction is not null;

    internal bool HasSizeOf(Outstand other) => _length == other._length && _thickness == other._thickness;

    /// <summary>Length, thickness and free edge.</summary>
    public override string ToString()
    {
        string edge = Direction is null ? "Side" : Direction == FlangeDirection.In ? "Inside" : "Outside";
        return Invariant($"{_length * 1e3:0.###} × {_thickness * 1e3:0.###} mm, free edge {edge}");
    }
}

/// <summary>What the distortion checks need to know of a section beyond its integrals. Immutable and thread-safe.</summary>
internal sealed record SectionFeatures
{
    private readonly double _radialDepth;

    private readonly double? _wall;

    private readonly double? _diameter;

    public SectionFeatures(
        double radialDepth, IReadOnlyList<Outstand>? outstands = null, double? wall = null, double? diameter = null,
        bool flatEasyWay = false, bool flatHardWay = false)
    {
        _radialDepth = radialDepth;
        _wall = wall;
        _diameter = diameter;
        IsFlatHardWay = flatHardWay;
        Outstands = outstands ?? [];
        IsFlatEasyWay = flatEasyWay;
    }

    /// <summary>
    /// Whether anybody said what stands out: false for an outline from a drawing that came without that word, whose list of outstands is
    /// then empty.
    /// </summary>
    public bool OutstandsAreKnown { get; private init; } = true;

    /// <summary>The leg, width or diameter in the plane of the ring, the measure of the leg-to-radius ratio.</summary>
    public Length RadialDepth => Length.FromMeters(_radialDepth);

    /// <summary>
    /// Legs and flanges with a free edge; empty for solid bars and tubes, and where <see cref="OutstandsAreKnown"/> is false.
    /// </summary>
    public IReadOnlyList<Outstand> Outstands { get; }

    /// <summary>Wall thickness of a tube, or null.</summary>
    public Length? WallThickness => _wall is { } wall ? Length.FromMeters(wall) : null;

    /// <summary>Outside diameter of a round tube, or null.</summary>
    public Length? TubeDiameter => _diameter is { } diameter ? Length.FromMeters(diameter) : null;

    /// <summary>Whether the section is a tube with flat walls.</summary>
    public bool HasFlatWalls => _wall is not null && _diameter is null;

    /// <summary>Whether the section is a flat with its width in the plane of the ring.</summary>
    public bool IsFlatHardWay { get; }

    /// <summary>Whether the section is a flat with its thickness in the plane of the ring, to which the rules for sheet apply.</summary>
    public bool IsFlatEasyWay { get; }

    /// <summary>The radial leg of an angle with two equal legs, or null for any other shape.</summary>
    public Outstand? EqualLegs =>
        Outstands.Count == 2 && Outstands[0].IsRadial != Outstands[1].IsRadial && Outstands[0].HasSizeOf(Outstands[1])
        ? Outstands.First(leg => leg.IsRadial)
        : null;

    /// <summary>The flat walls that may be pushed out of place; null where none are known.</summary>
    internal WallLayout? Walls { get; init; }

    /// <summary>Equal when all features are equal, outstand by outstand.</summary>
    /// <param name="other">The features of another section.</param>
    public bool Equals(SectionFeatures? other) => other is not null
        && _radialDepth == other._radialDepth && _wall == other._wall && _diameter == other._diameter
            && IsFlatEasyWay == other.IsFlatEasyWay
        && IsFlatHardWay == other.IsFlatHardWay && OutstandsAreKnown == other.OutstandsAreKnown && Outstands.SequenceEqual(other.Outstands);

    /// <inheritdoc/>
    public override int GetHashCode() => (_radialDepth, _wall, IsFlatEasyWay, Outstands.Count).GetHashCode();

    /// <summary>Features of an outline from a drawing.</summary>
    internal static SectionFeatures OfOutline(double radialDepth, IReadOnlyList<Outstand>? outstands) =>
        new(radialDepth, outstands) { OutstandsAreKnown = outstands is not null };

    /// <summary>Radial depth, outstands and wall.</summary>
    public override string ToString() =>
        Invariant($"radial depth {_radialDepth * 1e3:0.###} mm, {Counted.Text(Outstands.Count, "outstand")}");
}
