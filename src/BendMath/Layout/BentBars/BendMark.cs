using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Layout.BentBars;

/// <summary>
/// One bend of a bar, with its marks on the straight bar, at its turn in the order of the work. Marks count from the start of the blank.
/// Immutable and thread-safe.
/// </summary>
/// <remarks>
/// Equation: start mark = extra length at the start + Σ L₀ of the parts before; end mark = start mark + θ/κ_t.
/// Range: exact, because curvature is per unit of unbent length.
/// Source: <see cref="Sources.Mechanics"/>
/// </remarks>
public sealed record BendMark
{
    private readonly double _start;

    private readonly double _before;

    private readonly double _after;

    internal BendMark(int step, int number, BarPart part, double start, bool startIsFree, bool endIsFree, double before, double after)
    {
        Step = step;
        Number = number;
        Part = part;
        IsStartFree = startIsFree;
        IsEndFree = endIsFree;
        _start = start;
        _before = before;
        _after = after;
    }

    /// <summary>When it is bent: 1 for the first.</summary>
    public int Step { get; }

    /// <summary>Which bend it is, counted along the bar from its start: 1 for the first.</summary>
    public int Number { get; }

    /// <summary>The bend.</summary>
    public BarPart Part { get; }

    /// <summary>Whether the bar is still straight all the way to its start, so that it can be laid in and drawn out there.</summary>
    public bool IsStartFree { get; }

    /// <summary>Whether the bar is still straight all the way to its end.</summary>
    public bool IsEndFree { get; }

    /// <summary>Where the bend starts.</summary>
    public Length StartMark => Length.FromMeters(_start);

    /// <summary>Where it ends.</summary>
    public Length EndMark => Length.FromMeters(_start + Part.Developed);

    /// <summary>Its middle: where the nose of a pinching bender comes in the middle of the bend.</summary>
    public Length MiddleMark => Length.FromMeters(_start + Part.Developed / 2);

    /// <summary>Straight bar before it when it is bent: to the last bend already made on that side, or to the start of the bar.</summary>
    public Length StraightBefore => Length.FromMeters(_before);

    /// <summary>Straight bar behind it when it is bent.</summary>
    public Length StraightAfter => Length.FromMeters(_after);

    /// <summary>Step, marks and bend.</summary>
    public override string ToString() =>
        Invariant($"step {Step}: from {_start * 1e3:0.#} to {(_start + Part.Developed) * 1e3:0.#} mm, {Part}");
}
