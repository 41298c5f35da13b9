using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;

namespace BendMath.Sections.Outlines;

/// <summary>
/// The outline of a section: one outer loop, run counter-clockwise, and any number of holes, run clockwise. The section lies to the left of
/// every edge. Immutable and thread-safe.
/// </summary>
public sealed record Outline
{
    /// <summary>
    /// Takes closed loops as a drawing program hands them over, in any order and sense. The largest is the outer one, the others are holes.
    /// Repaired and reported in <see cref="Advisories"/>: loops run the wrong way, points along a straight line, and ends of edges that
    /// miss each other by less than a millionth of the larger extent. Every loop is made to begin at its lowest corner.
    /// </summary>
    /// <param name="loops">The outer loop and the holes. Edges that come closer than 1e-9 of the larger extent touch.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">
    /// The list is empty or a loop is null; a loop is open, crosses or touches itself or another; an edge has no length; a hole lies
    /// outside the outer loop or inside another hole. The message says where, with edges and loops counted from 1 in the order given.
    /// </exception>
    public Outline(IReadOnlyList<OutlineLoop> loops)
        : this(OutlineReport.Read([.. Guard.Items(loops, nameof(loops), atLeast: 1)], nameof(loops)))
    {
    }

    internal Outline(Edge[][] edges, IReadOnlyList<Advisory> advisories)
        : this((edges, advisories))
    {
    }

    private Outline((Edge[][] Edges, IReadOnlyList<Advisory> Advisories) sound)
    {
        Edges = sound.Edges;
        Advisories = sound.Advisories;
        Loops = Array.AsReadOnly(Array.ConvertAll(sound.Edges, loop => new OutlineLoop(loop)));
    }

    /// <summary>The outer loop first, then the holes in the order given.</summary>
    public IReadOnlyList<OutlineLoop> Loops { get; }

    /// <summary>The loop around the section, counter-clockwise.</summary>
    public OutlineLoop Outer => Loops[0];

    /// <summary>The loops around the holes, clockwise.</summary>
    public IEnumerable<OutlineLoop> Holes => Loops.Skip(1);

    /// <summary>
    /// What was repaired in the loops given: <c>reversed-winding</c>, <c>collinear-points</c>, <c>joined-ends</c>. Empty when nothing was.
    /// </summary>
    public IReadOnlyList<Advisory> Advisories { get; }

    internal Edge[][] Edges { get; }

    /// <summary>Equal when all loops are equal, however they were drawn.</summary>
    /// <param name="other">Another outline.</param>
    public bool Equals(Outline? other) => other is not null && Loops.SequenceEqual(other.Loops);

    /// <inheritdoc/>
    public override int GetHashCode() => (Loops.Count, Outer).GetHashCode();

    /// <summary>Number of edges and holes.</summary>
    public override string ToString() => Invariant($"{Counted.Text(Outer.Edges.Count, "edge")}, {Counted.Text(Loops.Count - 1, "hole")}");
}
