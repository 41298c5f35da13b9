using BendMath.Guards;
using BendMath.Numerics.Geometry;
using UnitsNet;

namespace BendMath.Sections.Outlines;

/// <summary>A closed row of edges, each beginning where the one before it ends. Immutable and thread-safe.</summary>
public sealed record OutlineLoop
{
    /// <summary>Makes a loop. Whether it is closed and sound is checked when it becomes part of an <see cref="Outline"/>.</summary>
    /// <param name="edges">At least one; a full circle stands alone.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">The list is empty or an edge is null.</exception>
    public OutlineLoop(IReadOnlyList<OutlineEdge> edges)
        : this([.. Guard.Items(edges, nameof(edges), atLeast: 1)])
    {
    }

    internal OutlineLoop(Edge[] edges)
        : this([.. edges.Select(edge => new OutlineEdge(edge))])
    {
    }

    private OutlineLoop(OutlineEdge[] edges) => Edges = Array.AsReadOnly(edges);

    /// <summary>The edges in the order they are run.</summary>
    public IReadOnlyList<OutlineEdge> Edges { get; }

    /// <summary>A loop of straight edges.</summary>
    /// <param name="corners">At least three; the first need not be repeated at the end, but may be.</param>
    /// <exception cref="ArgumentNullException">The list is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than three corners, or one is null.</exception>
    public static OutlineLoop Polygon(IReadOnlyList<OutlinePoint> corners)
    {
        OutlinePoint[] given = Guard.Items(corners, nameof(corners), atLeast: 3);
        int count = given[given.Length - 1] == given[0] ? given.Length - 1 : given.Length;
        return new([.. Enumerable.Range(0, count).Select(i => OutlineEdge.Line(given[i], given[(i + 1) % count]))]);
    }

    /// <summary>A full circle.</summary>
    /// <param name="center">Its center.</param>
    /// <param name="radius">Greater than zero.</param>
    /// <exception cref="ArgumentNullException">The center is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The radius is not positive and finite.</exception>
    public static OutlineLoop Circle(OutlinePoint center, Length radius) =>
        new([OutlineEdge.Arc(center, radius, Angle.Zero, Angle.FromDegrees(360))]);

    /// <summary>Equal when all edges are equal, in order.</summary>
    /// <param name="other">Another loop.</param>
    public bool Equals(OutlineLoop? other) => other is not null && Edges.SequenceEqual(other.Edges);

    /// <inheritdoc/>
    public override int GetHashCode() => (Edges.Count, Edges[0]).GetHashCode();

    /// <summary>Number of edges and where the loop begins.</summary>
    public override string ToString() => Invariant($"{Counted.Text(Edges.Count, "edge")} from {Edges[0].Start}");
}
