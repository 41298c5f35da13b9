using BendMath.Guards;
using UnitsNet;

namespace BendMath;

/// <summary>How the ends of a full ring are cut and how far apart they are welded. Immutable and thread-safe.</summary>
public sealed record JointPreparation
{
    private readonly double _rootOpening;

    /// <summary>Describes the joint.</summary>
    /// <param name="cut">How the ends are cut.</param>
    /// <param name="rootOpening">Distance between the ends when they are welded, zero or more; zero for ends that touch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cut is not a defined value, or the opening is negative or not finite.</exception>
    public JointPreparation(TrimCut cut, Length rootOpening)
    {
        Cut = Guard.Defined(cut, nameof(cut));
        _rootOpening = Guard.NonNegative(rootOpening, nameof(rootOpening));
    }

    /// <summary>How the ends are cut.</summary>
    public TrimCut Cut { get; }

    /// <summary>Distance between the ends when they are welded; zero for ends that touch.</summary>
    public Length RootOpening => Length.FromMeters(_rootOpening);

    /// <summary>Cut and opening.</summary>
    public override string ToString() =>
        Invariant(
            $"{(Cut == TrimCut.Together ? "both ends cut together" : "ends cut one by one")}, root opening {_rootOpening * 1e3:0.##} mm");
}
