using BendMath.Numerics.Geometry;

namespace BendMath.Numerics.Integrals;

/// <summary>
/// A section seen along y as chords: in each band between two neighboring levels the edges that cross it stand in the order of z, and
/// every other pair of them bounds a chord.
/// Unlike <see cref="BandProfile"/> it serves integrands that vary along the chord in any way.
/// </summary>
internal sealed class ChordProfile
{
    private readonly MonotonePiece[][] _pieces;

    private ChordProfile(double[] levels, MonotonePiece[][] pieces)
    {
        Levels = levels;
        _pieces = pieces;
    }

    /// <summary>Ends of edges and tops and bottoms of arcs, rising: one band between each two.</summary>
    public double[] Levels { get; }

    /// <summary>The edges that cross a band, in the order of z.</summary>
    public MonotonePiece[] PiecesOf(int band) => _pieces[band];

    public static ChordProfile Of(Edge[][] loops)
    {
        MonotonePiece[] all = MonotonePiece.Rent(loops, 0, axial: false, out int count);
        try
        {
            double[] levels = BandProfile.Levels(all, count);
            MonotonePiece[][] pieces = new MonotonePiece[levels.Length - 1][];
            for (int i = 0; i < pieces.Length; i++)
            {
                double middle = (levels[i] + levels[i + 1]) / 2;
                pieces[i] =
                    [.. all.Take(count).Where(piece => piece.Bottom < middle && piece.Top > middle).OrderBy(piece => piece.PlaceAt(middle))];
            }

            return new(levels, pieces);
        }
        finally
        {
            MonotonePiece.Return(all);
        }
    }
}
