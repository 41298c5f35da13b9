namespace BendMath.Numerics;

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
    public static BandProfile Of(IReadOnlyList<Edge[]> loops)
    {
        AreaMoments moments = AreaMoments.Of(loops);
        List<Piece> pieces = Pieces(loops, moments.CentroidZ);
        double[] levels = Levels(pieces);
        Band[] bands = new Band[levels.Length - 1];
        List<ArcTerm> arcs = [];
        for (int i = 0; i < bands.Length; i++)
        {
            bands[i] = BandBetween(levels[i], levels[i + 1], pieces, arcs);
        }

        return new(bands, [.. arcs], moments);
    }

    /// <summary>Area of the part below the level and its first moment about y = 0.</summary>
    public (double Area, double FirstMoment) Below(double level)
    {
        double area = 0;
        double first = 0;
        foreach (Band band in Bands)
        {
            if (level <= band.Bottom)
            {
                break;
            }

            double top = Math.Min(level, band.Top);
            double d = top - band.Bottom;
            area += d * (band.Width0 + d * band.Width1 / 2);
            first += d * (band.Bottom * (band.Width0 + d * band.Width1 / 2) + d * (band.Width0 / 2 + d * band.Width1 / 3));
            for (int i = band.FirstArc; i < band.EndArc; i++)
            {
                ArcTerm arc = Arcs[i];
                (double s0, double s1) = arc.Integrals(band.Bottom, top);
                area += arc.WidthFactor * s0;
                first += arc.WidthFactor * s1;
            }
        }

        return (area, first);
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

    private static List<Piece> Pieces(IReadOnlyList<Edge[]> loops, double centroidZ)
    {
        List<Piece> pieces = [];
        foreach (Edge[] loop in loops)
        {
            foreach (Edge edge in loop)
            {
                if (!edge.IsArc)
                {
                    if (edge.Y1 != edge.Y2)
                    {
                        pieces.Add(Piece.Line(edge, centroidZ));
                    }

                    continue;
                }

                AddMonotoneArcs(edge, centroidZ, pieces);
            }
        }

        return pieces;
    }

    /// <summary>Cuts an arc at its highest and lowest points, φ = π/2 + kπ, so that y is monotone along each piece.</summary>
    private static void AddMonotoneArcs(in Edge edge, double centroidZ, List<Piece> pieces)
    {
        const double Slack = 1e-12;
        double low = Math.Min(edge.StartAngle, edge.StartAngle + edge.Sweep);
        double high = Math.Max(edge.StartAngle, edge.StartAngle + edge.Sweep);
        double from = low;
        double yFrom = edge.Sweep > 0 ? edge.Y1 : edge.Y2;
        double yEnd = edge.Sweep > 0 ? edge.Y2 : edge.Y1;
        int k = (int)Math.Floor(low / Math.PI - 0.5) + 1;
        while (true)
        {
            double cut = (k + 0.5) * Math.PI;
            bool last = cut >= high - Slack;
            double to = last ? high : cut;
            double yTo = last ? yEnd : edge.CenterY + (k % 2 == 0 ? edge.Radius : -edge.Radius);
            if (to - from > Slack)
            {
                pieces.Add(Piece.Arc(edge, centroidZ, (from + to) / 2, yFrom, yTo));
            }

            if (last)
            {
                return;
            }

            from = to;
            yFrom = yTo;
            k++;
        }
    }

    private static double[] Levels(List<Piece> pieces)
    {
        double[] all = [.. pieces.SelectMany(p => new[] { p.Bottom, p.Top }).OrderBy(y => y)];
        double same = 1e-13 * (all[all.Length - 1] - all[0]);
        List<double> levels = [all[0]];
        foreach (double y in all)
        {
            if (y - levels[levels.Count - 1] > same)
            {
                levels.Add(y);
            }
        }

        return [.. levels];
    }

    private static Band BandBetween(double bottom, double top, List<Piece> pieces, List<ArcTerm> arcs)
    {
        double middle = (bottom + top) / 2;
        int firstArc = arcs.Count;
        double w0 = 0, w1 = 0, q0 = 0, q1 = 0, q2 = 0;
        foreach (Piece piece in pieces)
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
                arcs[i] = new(added.CenterY, added.Radius, arcs[i].WidthFactor + added.WidthFactor, arcs[i].MomentFactor + added.MomentFactor);
                return;
            }
        }

        arcs.Add(added);
    }

    /// <summary>A part of an edge along which y is monotone. Sign is +1 where a counter-clockwise loop climbs; Z is taken from the centroid.</summary>
    private readonly struct Piece
    {
        private Piece(double bottom, double top, int sign, double z, double slope, double centerY, double radius, int side)
        {
            Bottom = bottom;
            Top = top;
            Sign = sign;
            Z = z;
            Slope = slope;
            CenterY = centerY;
            Radius = radius;
            Side = side;
        }

        public double Bottom { get; }

        public double Top { get; }

        public int Sign { get; }

        public double Z { get; }

        public double Slope { get; }

        public double CenterY { get; }

        public double Radius { get; }

        public int Side { get; }

        public static Piece Line(in Edge edge, double centroidZ)
        {
            bool climbs = edge.Y2 > edge.Y1;
            double slope = (edge.Z2 - edge.Z1) / (edge.Y2 - edge.Y1);
            return climbs
                ? new(edge.Y1, edge.Y2, 1, edge.Z1 - centroidZ, slope, 0, 0, 0)
                : new(edge.Y2, edge.Y1, -1, edge.Z2 - centroidZ, slope, 0, 0, 0);
        }

        public static Piece Arc(in Edge edge, double centroidZ, double middleAngle, double y1, double y2)
        {
            int side = Math.Cos(middleAngle) > 0 ? 1 : -1;
            int sign = edge.Sweep > 0 ? side : -side;
            return new(Math.Min(y1, y2), Math.Max(y1, y2), sign, edge.CenterZ - centroidZ, 0, edge.CenterY, edge.Radius, side);
        }
    }
}
