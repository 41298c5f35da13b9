using UnitsNet;

namespace BendMath.Distortion;

/// <summary>What is changed to lower a risk of distortion.</summary>
public enum RemedyKind
{
    /// <summary>A wider ring: the least inside radius while loaded.</summary>
    Radius,

    /// <summary>A shallower bar or a shorter leg: the largest one.</summary>
    Leg,

    /// <summary>A thicker leg or wall: the least thickness.</summary>
    Thickness,

    /// <summary>Supports closer together: the largest distance between them.</summary>
    SupportDistance,

    /// <summary>A support named by a setting: a slot, a backing, a groove or mandrel, holding the ring flat.</summary>
    Support,

    /// <summary>Another way of laying the bar into the bender, which gives another ring.</summary>
    Orientation,
}

/// <summary>One change that lowers the level of a finding. Immutable and thread-safe.</summary>
public sealed record DistortionRemedy
{
    private readonly double? _value;

    internal DistortionRemedy(RemedyKind kind, string sentence, double? value = null, OrientedSection? section = null)
    {
        Kind = kind;
        Sentence = sentence;
        _value = value;
        Section = section;
    }

    /// <summary>What is changed.</summary>
    public RemedyKind Kind { get; }

    /// <summary>
    /// To what it is changed: the least radius or thickness, the largest leg or distance; null for a support and an orientation.
    /// </summary>
    public Length? Value => _value is { } meters ? Length.FromMeters(meters) : null;

    /// <summary>The bar as it is to lie, for an orientation; else null.</summary>
    public OrientedSection? Section { get; }

    /// <summary>The change in words, with its number.</summary>
    public string Sentence { get; }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;
}
