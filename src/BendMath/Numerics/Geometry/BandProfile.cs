using BendMath.Numerics.Integrals;

namespace BendMath.Numerics.Geometry;

/// <summary>
/// A section seen along y. Between two neighboring levels (ends of edges, top and bottom of arcs) the chord width w(y) and its first
/// moment q(y) about the centroid's z are a polynomial plus arc terms: each edge z(y) crossing the band adds ± z to w and ± z²/2 to q,
/// and for an arc z = z_c ± s with s = √(r² − (y − y_c)²), so that s enters linearly and s² is a polynomial.
/// Then ∫f dA = ∫f·w dy and ∫f·(z − z̄) dA = ∫f·q dy hold exactly for any f(y).
/// </summary>
internal sealed class BandProfile
{
    private readonly AreaMoments _moments;

    private TailTable? _tails;

    private BandProfile(Band[] bands, ArcTerm[] arcs, AreaMoments moments)
    {
        Bands = bands;
        Arcs = arcs;
        _moments = moments;
    }

    public Band[] Bands { get; }

    public ArcTerm[] Arcs { get; }

    public ref readonly AreaMoments Moments => ref _moments;

    /// <summary>Moments beyond any level; made when first asked for. Two threads may both make it, with the same numbers.</summary>
    public TailTable Tails => _tails ??= new(Bands, Arcs);

    /// <summary>The outside face; the inside face is at y = 0.</summary>
    public double Height => Bands[Bands.Length - 1].Top;

    /// <summary>Builds the profile of loops whose lowest point is at y = 0.</summary>
    public static BandProfile Of(Edge[][] loops) => Of(loops, AreaMoments.Of(loops));

    /// <summary>Builds the profile of loops whose lowest point is at y = 0 and whose moments are known.</summary>
    public static BandProfile Of(Edge[][] loops, in AreaMoments moments)
    {
        MonotonePiece[] pieces = MonotonePiece.Rent(loops, moments.CentroidZ, axial: false, out int count);
        try
        {
            double[] levels = Levels(pieces, count);
            Band[] bands = new Band[levels.Length - 1];
            List<ArcTerm> arcs = [];
            for (int i = 0; i < bands.Length; i++)
            {
                bands[i] = BandBetween(levels[i], levels[i + 1], pieces.AsSpan(0, count), arcs);
            }

            return new(bands, [.. arcs], moments);
        }
        finally
        {
            MonotonePiece.Return(pieces);
        }
    }

    /// <summary>Chord width at the level.</summary>
    public double WidthAt(double level)
    {
        foreach (Band band in Bands)
        {
            if (level <= band.Top)
            {
                double width = band.Width0 + band.Width1 * (level - band.Bottom);
                for (int i = band.FirstArc; i < band.EndArc; i++)
                {
                    width += Arcs[i].WidthFactor * Arcs[i].HalfChord(level);
                }

                return width;
            }
        }

        return 0;
    }

    /// <summary>Where pieces begin and end, rising, each once.</summary>
    public static double[] Levels(MonotonePiece[] pieces, int count)
    {
        double[] levels = new double[2 * count];
        for (int i = 0; i < count; i++)
        {
            levels[2 * i] = pieces[i].Bottom;
            levels[2 * i + 1] = pieces[i].Top;
        }

        Array.Sort(levels);
        double same = 1e-13 * (levels[levels.Length - 1] - levels[0]);
        int kept = 1;
        foreach (double y in levels)
        {
            if (y - levels[kept - 1] > same)
            {
                levels[kept++] = y;
            }
        }

        Array.Resize(ref levels, kept);
        return levels;
    }

    private static Band BandBetween(double bottom, double top, ReadOnlySpan<MonotonePiece> pieces, List<ArcTerm> arcs)
    {
        double middle = (bottom + top) / 2;
        int firstArc = arcs.Count;
        double w0 = 0, w1 = 0, q0 = 0, q1 = 0, q2 = 0;
        foreach (ref readonly MonotonePiece piece in pieces)
        {
            if (piece.Bottom >= middle || piece.Top <= middle)
            {
                continue;
            }

            if (piece.Radius == 0)
            {
                double z = piece.Z + piece.Slope * (bottom - piece.Bottom);
                w0 += piece.Sign * z;
                w1 += piece.Sign * piece.Slope;
                q0 += piece.Sign * z * z / 2;
                q1 += piece.Sign * z * piece.Slope;
                q2 += piece.Sign * piece.Slope * piece.Slope / 2;
                continue;
            }

            double u = bottom - piece.CenterY;
            w0 += piece.Sign * piece.Z;
            q0 += piece.Sign * (piece.Z * piece.Z + piece.Radius * piece.Radius - u * u) / 2;
            q1 -= piece.Sign * u;
            q2 -= piece.Sign / 2.0;
            Merge(arcs, firstArc, new(piece.CenterY, piece.Radius, piece.Sign * piece.Side, piece.Sign * piece.Side * piece.Z));
        }

        return new(bottom, top, w0, w1, q0, q1, q2, firstArc, arcs.Count);
    }

    private static void Merge(List<ArcTerm> arcs, int firstArc, in ArcTerm added)
    {
        for (int i = firstArc; i < arcs.Count; i++)
        {
            if (arcs[i].CenterY == added.CenterY && arcs[i].Radius == added.Radius)
            {
                arcs[i] =
                    new(added.CenterY, added.Radius, arcs[i].WidthFactor + added.WidthFactor, arcs[i].MomentFactor + added.MomentFactor);
                return;
            }
        }

        arcs.Add(added);
    }
}
