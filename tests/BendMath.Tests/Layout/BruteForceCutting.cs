namespace BendMath.Tests.Layout;

/// <summary>
/// The least length of bars for a handful of pieces, by trying everything: each piece into each bar already open or into a new one of each
/// length.
/// </summary>
internal static class BruteForceCutting
{
    /// <summary>Pieces left out first, then length of bars, in millimeters.</summary>
    public static (int LeftOut, double Bars) Least(int[] pieces, (int Length, int Count)[] bars, int kerf)
    {
        int[] left = [.. bars.Select(bar => bar.Count)];
        List<int> room = [];
        (int LeftOut, double Bars) best = (int.MaxValue, 0);
        Try(0, 0, 0);
        return best;

        void Try(int piece, int leftOut, double length)
        {
            if (leftOut > best.LeftOut || (leftOut == best.LeftOut && length >= best.Bars))
            {
                return;
            }

            if (piece == pieces.Length)
            {
                best = (leftOut, length);
                return;
            }

            int size = pieces[piece] + kerf;
            for (int b = 0; b < room.Count; b++)
            {
                if (room[b] >= size)
                {
                    room[b] -= size;
                    Try(piece + 1, leftOut, length);
                    room[b] += size;
                }
            }

            for (int j = 0; j < bars.Length; j++)
            {
                if (left[j] > 0 && bars[j].Length + kerf >= size)
                {
                    left[j]--;
                    room.Add(bars[j].Length + kerf - size);
                    Try(piece + 1, leftOut, length + bars[j].Length);
                    room.RemoveAt(room.Count - 1);
                    left[j]++;
                }
            }

            Try(piece + 1, leftOut + 1, length);
        }
    }
}
