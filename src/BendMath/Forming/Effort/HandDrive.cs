using BendMath.Guards;
using UnitsNet;

namespace BendMath.Forming.Effort;

/// <summary>
/// How a hand drives the bender: the lever, what multiplies its pull, and how hard the person is willing to pull. Immutable and
/// thread-safe.
/// </summary>
public sealed record HandDrive
{
    private readonly double? _lever;

    private readonly double? _limit;

    /// <summary>Describes the drive; what is not known stays out.</summary>
    /// <param name="leverLength">From the axis of the bend to the hand, or from the pivot of the lever to the hand in three-point bending;
    /// greater than zero. Null when not known.</param>
    /// <param name="advantage">
    /// What the mechanism multiplies, 1 or more. In three-point bending and die pairs nose force over hand force, lever included, as a
    /// luggage scale at the grip and the thread, gears or piston tell; in wrap bending what comes on top of the lever, such as gears. Null
    /// when not known; in wrap bending then 1.
    /// </param>
    /// <param name="pullLimit">The most the person at the lever can and may pull, greater than zero. The library has no figure for it: it
    /// depends on the person, the stance and local rules.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public HandDrive(Length? leverLength = null, double? advantage = null, Force? pullLimit = null)
    {
        _lever = leverLength is { } lever ? Guard.Positive(lever, nameof(leverLength)) : null;
        Advantage = advantage is not { } gain ? null
            : Guard.Positive(gain, nameof(advantage)) >= 1 ? gain
            : throw Guard.Fault(nameof(advantage), gain, "must be 1 or more");
        _limit = pullLimit is { } limit ? Guard.Positive(limit, nameof(pullLimit)) : null;
    }

    /// <summary>Length of the lever, or null.</summary>
    public Length? LeverLength => _lever is { } lever ? Length.FromMeters(lever) : null;

    /// <summary>What the mechanism multiplies, or null.</summary>
    public double? Advantage { get; }

    /// <summary>The most the person can and may pull, or null.</summary>
    public Force? PullLimit => _limit is { } limit ? Force.FromNewtons(limit) : null;

    internal double? Lever => _lever;

    internal double? Limit => _limit;

    /// <summary>Lever, advantage and limit, as far as known.</summary>
    public override string ToString()
    {
        List<string> known = [];
        if (_lever is { } lever)
        {
            known.Add(Invariant($"lever of {lever * 1e3:0.##} mm"));
        }

        if (Advantage is { } gain)
        {
            known.Add(Invariant($"advantage {gain:0.##}"));
        }

        if (_limit is { } limit)
        {
            known.Add(Invariant($"pull of at most {limit:0.#} N"));
        }

        return known.Count == 0 ? "a drive nobody has described" : string.Join(", ", known);
    }
}
