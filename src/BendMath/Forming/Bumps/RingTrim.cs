using UnitsNet;

namespace BendMath.Forming.Bumps;

/// <summary>
/// Where to cut a bumped bar so that it makes a ring, and how well its ends meet. Places count along the unbent bar from its start.
/// Immutable and thread-safe.
/// </summary>
public sealed record RingTrim
{
    private readonly double _start;

    private readonly double _end;

    private readonly double _turn;

    private readonly double _gap;

    private readonly double _overlap;

    private readonly double? _missing;

    internal RingTrim(double start, double end, double turn, double gap, double overlap, double? missing)
    {
        _start = start;
        _end = end;
        _turn = turn;
        _gap = gap;
        _overlap = overlap;
        _missing = missing;
    }

    /// <summary>Place of the first cut.</summary>
    public Length StartCut => Length.FromMeters(_start);

    /// <summary>Place of the second cut.</summary>
    public Length EndCut => Length.FromMeters(_end);

    /// <summary>Turn from cut to cut: one full turn, or less when the bar is too short.</summary>
    public Angle Turn => Angle.FromRadians(_turn);

    /// <summary>Whether the bar makes a full turn between its tails.</summary>
    public bool IsFullTurn => _missing == 0;

    /// <summary>
    /// Distance between the centroids of the cut ends as they come off, before they are pulled together: the gap of a bar too short, the
    /// misfit of a full turn that is not quite round.
    /// </summary>
    public Length EndGap => Length.FromMeters(_gap);

    /// <summary>Bent bar beyond the second cut, up to the trailing tail: what overlaps before it is cut off.</summary>
    public Length Overlap => Length.FromMeters(_overlap);

    /// <summary>
    /// Bar that lacks for a full turn at the mean curvature; zero for a full turn, null for a bar that sprang back straight, of which no
    /// length makes one.
    /// </summary>
    public Length? Missing => _missing is { } lacks ? Length.FromMeters(lacks) : null;

    /// <summary>Cuts and gap in millimeters.</summary>
    public override string ToString() =>
        Invariant($"cut at {_start * 1e3:0.#} mm and {_end * 1e3:0.#} mm, turn {_turn * 180 / Math.PI:0.#}°, end gap {_gap * 1e3:0.##} mm");
}
