using BendMath.Stock;
using UnitsNet;

namespace BendMath;

/// <summary>Flat bar with sharp corners. Immutable and thread-safe.</summary>
public sealed record FlatBar : BarStock
{
    private readonly double _width;

    private readonly double _thickness;

    /// <summary>Makes the flat from its dimensions.</summary>
    /// <param name="width">The larger dimension, greater than zero.</param>
    /// <param name="thickness">The smaller dimension, greater than zero and not greater than the width.</param>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is not positive and finite, or the thickness exceeds the width.</exception>
    public FlatBar(Length width, Length thickness)
    {
        _width = Guard.Positive(width, nameof(width));
        _thickness = Guard.Positive(thickness, nameof(thickness));
        if (_thickness > _width)
        {
            throw Guard.Fault(nameof(thickness), thickness, $"must not be greater than the width, {Guard.MillimetersText(_width)}");
        }

        EasyWay = new(Name, "easy way", [CornerOutline.Rectangle(_thickness, _width)], _width, new SectionFeatures(_thickness, flatEasyWay: true));
        HardWay = new(Name, "hard way", [CornerOutline.Rectangle(_width, _thickness)], _thickness, new SectionFeatures(_width));
        Orientations = [EasyWay, HardWay];
    }

    /// <summary>The larger dimension.</summary>
    public Length Width => Length.FromMeters(_width);

    /// <summary>The smaller dimension.</summary>
    public Length Thickness => Length.FromMeters(_thickness);

    /// <summary>Easy way: the thickness lies in the plane of the ring, like a barrel hoop.</summary>
    public OrientedSection EasyWay { get; }

    /// <summary>Hard way (on edge): the width lies in the plane of the ring, like a washer.</summary>
    public OrientedSection HardWay { get; }

    /// <inheritdoc/>
    public override string Name => Millimeters("flat", _width, _thickness);

    /// <inheritdoc/>
    public override IReadOnlyList<OrientedSection> Orientations { get; }

    /// <summary>Equal when both dimensions are equal.</summary>
    /// <param name="other">Another flat.</param>
    public bool Equals(FlatBar? other) => other is not null && _width == other._width && _thickness == other._thickness;

    /// <inheritdoc/>
    public override int GetHashCode() => (_width, _thickness).GetHashCode();
}
