namespace BendMath.Numerics.Geometry;

/// <summary>
/// Looks for edges that cross or touch, over all loops. Only edges whose bounding boxes overlap are held against each other.
/// </summary>
internal static class LoopContacts
{
    public static LoopFault? First(Edge[][] loops, Joint[][] joints, double tolerance)
    {
        Entry[] entries =
            [.. loops.SelectMany((loop, i) => loop.Select((edge, j) => new Entry(i, j, edge.Bounds()))).OrderBy(entry => entry.LowY)];
        LoopFault? first = null;
        Span<Joint> shared = stackalloc Joint[2];
        for (int i = 0; i < entries.Length; i++)
        {
            for (int j = i + 1; j < entries.Length && entries[j].LowY <= entries[i].HighY + tolerance; j++)
            {
                bool inOrder = (entries[i].Loop, entries[i].Edge).CompareTo((entries[j].Loop, entries[j].Edge)) < 0;
                Entry a = inOrder ? entries[i] : entries[j];
                Entry b = inOrder ? entries[j] : entries[i];
                if (a.LowZ > b.HighZ + tolerance || b.LowZ > a.HighZ + tolerance)
                {
                    continue;
                }

                int count = Shared(a, b, joints, shared);
                EdgeContact contact = new(loops[a.Loop][a.Edge], loops[b.Loop][b.Edge], shared.Slice(0, count), tolerance);
                if (contact.Find()
                    && (first is null
                        || (a.Loop, a.Edge, b.Loop, b.Edge).CompareTo((first.Loop, first.Edge, first.OtherLoop, first.OtherEdge)) < 0))
                {
                    first = new(LoopFaultKind.Contact, a.Loop, a.Edge, b.Loop, b.Edge, contact.Y, contact.Z, 0);
                }
            }
        }

        return first;
    }

    /// <summary>The joints two neighbors share: joint j lies between edge j and the next.</summary>
    private static int Shared(in Entry a, in Entry b, Joint[][] joints, Span<Joint> shared)
    {
        int count = 0;
        if (a.Loop == b.Loop)
        {
            int length = joints[a.Loop].Length;
            if ((a.Edge + 1) % length == b.Edge)
            {
                shared[count++] = joints[a.Loop][a.Edge];
            }

            if ((b.Edge + 1) % length == a.Edge)
            {
                shared[count++] = joints[a.Loop][b.Edge];
            }
        }

        return count;
    }

    private readonly struct Entry(int loop, int edge, (double LowY, double HighY, double LowZ, double HighZ) bounds)
    {
        public int Loop { get; } = loop;

        public int Edge { get; } = edge;

        public double LowY { get; } = bounds.LowY;

        public double HighY { get; } = bounds.HighY;

        public double LowZ { get; } = bounds.LowZ;

        public double HighZ { get; } = bounds.HighZ;
    }
}
