using UnitsNet;

namespace BendMath.Distortion;

/// <summary>One change that lowers the level of a finding. Immutable and thread-safe.</summary>
public sealed record DistortionRemedy
{
    internal DistortionRemedy(string sentence) => Sentence = sentence;

    /// <summary>A wider ring: the least inside radius while loaded, or null.</summary>
    public Length? LeastRadius { get; internal init; }

    /// <summary>A shallower bar or a shorter leg: the largest one, or null.</summary>
    public Length? LargestLeg { get; internal init; }

    /// <summary>A thicker leg or wall: the least thickness, or null.</summary>
    public Length? LeastThickness { get; internal init; }

    /// <summary>Supports closer together: the largest distance between them, or null.</summary>
    public Length? LargestSupportDistance { get; internal init; }

    /// <summary>Another way of laying the bar into the bender, which gives another ring, or null.</summary>
    public OrientedSection? Section { get; internal init; }

    /// <summary>
    /// The change in words, with its number. Where it is all there is, a support named by a setting is meant: a slot, a backing, a groove
    /// or mandrel, holding the ring flat.
    /// </summary>
    public string Sentence { get; }

    /// <summary>The sentence.</summary>
    public override string ToString() => Sentence;
}
