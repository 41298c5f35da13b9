using BendMath.Numerics;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;

namespace BendMath.Bending.MomentCurves;

/// <summary>
/// Cuts a stretch of ln κ̂ into pieces along which the states of a section under a law are one polynomial each. Where a break of the law
/// passes a level of the section the states are not smooth: such places are looked for where a polynomial does not do; where round corners
/// begin or end there, the states have a root. Elsewhere a stretch is halved. Eight states with their exact slopes make a piece.
/// </summary>
internal sealed class MomentPieces(BandProfile profile, StressStrainLaw law, double[] breaks, double allowed)
{
    /// <summary>Stretches of ln κ̂ that are not cut any more.</summary>
    private const double Finest = 1e-5;

    /// <summary>The same once there are so many pieces that it is rounding what does not fit.</summary>
    private const double FinestOfMany = 1e-2;

    private const int Many = 200;

    /// <summary>How near to the end of a piece a break may lie unseen.</summary>
    private const double Beside = 1e-7;

    /// <summary>A break that moves by less, in depths, passes nothing: it rides on an axis of symmetry.</summary>
    private const double Still = 1e-11;

    private const int Steps = 8;

    private const int KneeParts = 2;

    private readonly List<MomentPiece> _pieces = [];

    private readonly double _guess = (profile.Moments.CentroidY + profile.Height / 2) / 2;

    private readonly double _reference = law.ReferenceStrain;

    /// <summary>Whether every break shows.</summary>
    private readonly bool _eager = breaks.Length == 1 && breaks[0] > 0;

    private readonly bool _round = profile.Arcs.Length > 0;

    private readonly double _rounding = RoundingOf(profile);

    private Extrapolation _axes = new();

    public MomentPiece[] Between(double start, bool startsAtBreak, double end)
    {
        _pieces.Clear();
        _axes.Clear();
        if (!law.IsSmooth || _eager)
        {
            Cut(start, startsAtBreak, end, false);
            return [.. _pieces];
        }

        // A smooth knee takes several pieces.
        for (int i = 0; i < KneeParts; i++)
        {
            double width = (end - start) / KneeParts;
            Cut(start + i * width, startsAtBreak && i == 0, i == KneeParts - 1 ? end : start + (i + 1) * width, false);
        }

        return [.. _pieces];
    }

    /// <summary>
    /// How much of the sums over the section is lost to rounding, against one of straight edges: a thin wall is the difference of its round
    /// outside and inside.
    /// </summary>
    private static double RoundingOf(BandProfile profile)
    {
        double gross = 0;
        foreach (ref readonly ArcTerm arc in profile.Arcs.AsSpan())
        {
            gross += Math.Abs(arc.WidthFactor) * arc.Radius * arc.Radius;
        }

        return Math.Max(1, gross / profile.Moments.Area);
    }

    private void Cut(double start, bool rootAtStart, double end, bool rootAtEnd)
    {
        if (_round && rootAtStart && rootAtEnd)
        {
            double half = (start + end) / 2;
            Cut(start, true, half, false);
            Cut(half, false, end, true);
            return;
        }

        PieceMap map = !_round ? PieceMap.Even : rootAtStart ? PieceMap.RootAtStart : rootAtEnd ? PieceMap.RootAtEnd : PieceMap.Even;
        Span<Node> nodes = stackalloc Node[HermiteFit.Nodes];
        Span<double> rates = stackalloc double[HermiteFit.Nodes];
        for (int i = 0; i < nodes.Length; i++)
        {
            (double t, rates[i]) = MomentPiece.At(start, end, map, HermiteFit.Places[i]);
            nodes[i] = At(t);
            if (_eager && i > 0 && BreakBetween(nodes[i - 1], nodes[i]) is { } early)
            {
                CutAt(early, nodes.Slice(0, i + 1), start, rootAtStart, end, rootAtEnd, true);
                return;
            }
        }

        MomentPiece piece = Fit(start, end, map, nodes, rates, out bool fits);
        bool isFinest = end - start < (_pieces.Count < Many ? Finest : FinestOfMany);
        double? found = isFinest ? null : fits ? BreakAtEnds(piece, nodes) : BreakIn(nodes) ?? BreakAtEnds(piece, nodes);
        if (found is { } place)
        {
            CutAt(place, nodes, start, rootAtStart, end, rootAtEnd, true);
        }
        else if (fits || isFinest)
        {
            _pieces.Add(piece);
        }
        else
        {
            CutAt((start + end) / 2, nodes, start, rootAtStart, end, rootAtEnd, false);
        }
    }

    /// <summary>In two, with the states on each side to tell where the axis lies there.</summary>
    private void CutAt(double place, ReadOnlySpan<Node> nodes, double start, bool rootAtStart, double end, bool rootAtEnd, bool atBreak)
    {
        int right = 0;
        while (right < nodes.Length && nodes[right].T < place)
        {
            right++;
        }

        Recall(nodes.Slice(0, right));
        Cut(start, rootAtStart, place, atBreak);
        if (atBreak)
        {
            Recall(nodes.Slice(right));
        }

        Cut(place, atBreak, end, rootAtEnd);
    }

    /// <summary>The first of some states last.</summary>
    private void Recall(ReadOnlySpan<Node> nodes)
    {
        if (nodes.Length > 0)
        {
            _axes.Clear();
        }

        for (int i = nodes.Length - 1; i >= 0; i--)
        {
            Keep(nodes[i]);
        }
    }

    private MomentPiece Fit(double start, double end, PieceMap map, ReadOnlySpan<Node> nodes, ReadOnlySpan<double> rates, out bool fits)
    {
        Span<double> values = stackalloc double[HermiteFit.Nodes];
        Span<double> slopes = stackalloc double[HermiteFit.Nodes];
        double noise = 0;
        for (int i = 0; i < nodes.Length; i++)
        {
            noise = Math.Max(noise, nodes[i].Noise);
            (values[i], slopes[i]) = (nodes[i].Axis, rates[i] * nodes[i].AxisSlope);
        }

        double accuracy = Math.Max(allowed, noise);
        double[] axis = HermiteFit.Series(values, slopes, out double left);
        fits = left <= accuracy * profile.Height;
        for (int i = 0; i < nodes.Length; i++)
        {
            (values[i], slopes[i]) = (nodes[i].Share, rates[i] * nodes[i].ShareSlope);
        }

        double[] share = HermiteFit.Series(values, slopes, out left);
        fits &= left <= accuracy;
        double[]? mixed = null;
        if (Math.Abs(profile.Moments.Product) > 1e-12 * profile.Moments.SecondY)
        {
            for (int i = 0; i < nodes.Length; i++)
            {
                (values[i], slopes[i]) = (nodes[i].Mixed, rates[i] * nodes[i].MixedSlope);
            }

            mixed = HermiteFit.Series(values, slopes, out left);
            fits &= left <= accuracy * Math.Max(1, profile.Moments.SecondZ / profile.Moments.SecondY);
        }

        return new(start, end, map, axis, share, mixed);
    }

    /// <summary>
    /// The state at a curvature: Newton from where the last states lead, and the search within a bracket where that does not settle.
    /// </summary>
    private Node At(double t)
    {
        ref readonly AreaMoments m = ref profile.Moments;
        double curvature = _reference * Math.Exp(t);
        double axis = GuessAt(t);
        double previous = double.PositiveInfinity;
        Node node = default;
        for (int i = 0; i < Steps && axis > 0 && axis < profile.Height; i++)
        {
            node = new(m, t, curvature, axis, law.Integrate(profile, curvature, axis), _rounding, out double step, out double core);
            if (Math.Abs(step) <= Math.Max(Math.Min(1e-11, 1e-10 * core), 4e-16 * _rounding / core) * profile.Height)
            {
                return Keep(node);
            }

            if (!(core > 0 && Math.Abs(step) < previous))
            {
                break;
            }

            previous = Math.Abs(step) / 2;
            axis += step;
        }

        axis = AxialBalance.AxisAtCurvature(profile, law, curvature, _guess);
        return Keep(new(m, t, curvature, axis, law.Integrate(profile, curvature, axis), _rounding, out _, out _));
    }

    private Node Keep(in Node node)
    {
        _axes.Add(node.T, node.Axis, node.AxisSlope);
        return node;
    }

    private double GuessAt(double t) => _axes.IsEmpty ? _guess : _axes.Reaches(t) ? _axes.At(t) : _axes.AlongSlope(t);

    private double? BreakIn(ReadOnlySpan<Node> nodes)
    {
        for (int i = 1; i < nodes.Length; i++)
        {
            if (BreakBetween(nodes[i - 1], nodes[i]) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    /// <summary>The same between an end of a piece and the state next to it.</summary>
    private double? BreakAtEnds(MomentPiece piece, ReadOnlySpan<Node> nodes)
    {
        double first = piece.Start + Beside;
        double last = piece.End - Beside;
        return first < nodes[0].T && BreakBetween(Node.On(piece, first), nodes[0]) is { } low ? low
            : last > nodes[nodes.Length - 1].T ? BreakBetween(nodes[nodes.Length - 1], Node.On(piece, last))
            : null;
    }

    /// <summary>Where between two states a break of the law passes a level of the section; null when it passes none.</summary>
    private double? BreakBetween(in Node one, in Node other)
    {
        foreach (double strain in breaks)
        {
            for (int side = -1; side <= (strain == 0 ? -1 : 1); side += 2)
            {
                double from = one.LevelOf(side * strain);
                double to = other.LevelOf(side * strain);
                if (Math.Abs(to - from) < Still * profile.Height)
                {
                    continue;
                }

                foreach (ref readonly Band band in profile.Bands.AsSpan())
                {
                    if ((from < band.Bottom) != (to < band.Bottom))
                    {
                        return Passing(one, other, side * strain, band.Bottom);
                    }
                }

                if ((from < profile.Height) != (to < profile.Height))
                {
                    return Passing(one, other, side * strain, profile.Height);
                }
            }
        }

        return null;
    }

    private double Passing(in Node from, in Node to, double strain, double level)
    {
        double low = from.T;
        double high = to.T;
        bool rises = to.LevelOf(strain) > level;
        double t = low + (high - low) * (level - from.LevelOf(strain)) / (to.LevelOf(strain) - from.LevelOf(strain));
        for (int i = 0; i < 60; i++)
        {
            Node node = At(t);
            double off = node.LevelOf(strain) - level;
            (low, high) = off > 0 == rises ? (low, t) : (t, high);
            double next = t - off / (node.AxisSlope - strain * Math.Exp(-t));
            if (Math.Abs(next - t) < 1e-10)
            {
                break;
            }

            t = next > low && next < high ? next : (low + high) / 2;
        }

        return Math.Min(Math.Max(t, from.T), to.T);
    }

    /// <summary>
    /// A state and its slopes over t = ln κ. From e = κ(y − y_n) and dN = 0: dy_n/dt = (ȳ − y_n) − C1/(A − C0), d(Pb/κ)/dt = C2 + C1²/(A −
    /// C0) − Pb/κ, d(Pr/κ)/dt = Cr1 + Cr0·C1/(A − C0) − Pr/κ. What is left of the axial force moves the axis by its last step, and the rest
    /// with it.
    /// </summary>
    private readonly struct Node
    {
        public Node(in AreaMoments m, double t, double curvature, double axis, in PlasticSums s, double rounding, out double step,
            out double core)
        {
            double elastic = m.Area - s.C0;
            core = elastic / m.Area;
            step = elastic > 0 ? (m.Area * (m.CentroidY - axis) - s.P0 / curvature) / elastic : 0;
            double lean = elastic > 0 ? s.C1 / elastic : 0;
            T = t;
            Axis = axis + step;
            AxisSlope = m.CentroidY - Axis - lean;
            Share = (s.Pb / curvature - s.C1 * step) / m.SecondY;
            ShareSlope = (s.C2 + s.C1 * lean) / m.SecondY - Share;
            Mixed = (s.Pr / curvature - s.Cr0 * step) / m.SecondY;
            MixedSlope = (s.Cr1 + s.Cr0 * lean) / m.SecondY - Mixed;
            Noise = 4e-15 * rounding / Math.Max(1e-12, core);
        }

        private Node(double t, double axis, double axisSlope)
        {
            T = t;
            Axis = axis;
            AxisSlope = axisSlope;
        }

        public double T { get; }

        public double Axis { get; }

        public double AxisSlope { get; }

        public double Share { get; }

        public double ShareSlope { get; }

        public double Mixed { get; }

        public double MixedSlope { get; }

        /// <summary>Rounding of the axis over the depth, and of the slopes.</summary>
        public double Noise { get; }

        /// <summary>The axis of a piece.</summary>
        public static Node On(MomentPiece piece, double t)
        {
            (double axis, double slope) = piece.Axis(t);
            return new(t, axis, slope);
        }

        /// <summary>Where a strain over reference lies.</summary>
        public double LevelOf(double strain) => Axis + strain * Math.Exp(-T);
    }
}
