using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>How the ends of a full ring are cut and how far apart they are welded. Immutable and thread-safe.</summary>
public sealed record JointPreparation
{
    private readonly double _rootOpening;

    private JointPreparation(bool cutTogether, Length rootOpening)
    {
        IsCutTogether = cutTogether;
        _rootOpening = Guard.NonNegative(rootOpening, nameof(rootOpening));
    }

    /// <summary>Whether both ends are cut at once; otherwise each is cut on its own mark.</summary>
    public bool IsCutTogether { get; }

    /// <summary>Distance between the ends when they are welded; zero for ends that touch.</summary>
    public Length RootOpening => Length.FromMeters(_rootOpening);

    /// <summary>Each end cut on its own mark, so that the ring keeps its diameter.</summary>
    /// <param name="rootOpening">Distance between the ends when they are welded, zero or more; zero for ends that touch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The opening is negative or not finite.</exception>
    public static JointPreparation CutOneByOne(Length rootOpening) => new(false, rootOpening);

    /// <summary>Both ends cut at once, where they overlap: the ends match, and one saw cut is missing from the ring.</summary>
    /// <inheritdoc cref="CutOneByOne"/>
    public static JointPreparation CutTogether(Length rootOpening) => new(true, rootOpening);

    /// <summary>Cut and opening.</summary>
    public override string ToString() => Invariant($"{Words}, root opening {_rootOpening * 1e3:0.##} mm");

    internal string Words => IsCutTogether ? "both ends cut together" : "ends cut one by one";

    internal double OpeningMeters => _rootOpening;
}
