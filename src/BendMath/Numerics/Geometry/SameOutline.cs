namespace BendMath.Numerics.Geometry;

/// <summary>Whether two outlines run along each other.</summary>
internal static class SameOutline
{
    private const int Stations = 4;

    /// <summary>
    /// Whether each outline lies within the tolerance of the other. Looked at are the ends of all edges and three points between: an
    /// outline of lines and arcs that leaves the other one has a corner or the middle of an edge away from it, or lets the other one go
    /// where it does not.
    /// </summary>
    public static bool Within(Edge[][] one, Edge[][] other, double tolerance) =>
        one.Length == other.Length && Covers(one, other, tolerance) && Covers(other, one, tolerance);

    private static bool Covers(Edge[][] by, Edge[][] loops, double tolerance)
    {
        foreach (Edge edge in loops.SelectMany(loop => loop))
        {
            for (int station = 0; station < Stations; station++)
            {
                (double y, double z) = edge.PointAt(station / (double)Stations);
                if (!Array.Exists(by, loop => Array.Exists(loop, near => near.DistanceTo(y, z) <= tolerance)))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
