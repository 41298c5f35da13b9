using BendMath.Bending.MomentCurves;

namespace BendMath.Forming.Bumps;

/// <summary>
/// A bumped bar. κ_p(M) rises with M, so the running maximum of permanent curvatures is the permanent curvature of the running maximum μ(s)
/// of moments; the moment under a bump is straight between contacts, so μ is a chain of straight lines and is kept without error: only its
/// corners are stored, a few for each bump. Not thread-safe while it is being bent.
/// </summary>
internal sealed class MomentEnvelope
{
    private double[] _s;

    private double[] _mu;

    private double[] _newS = [];

    private double[] _newMu = [];

    private int _new;

    public MomentEnvelope(FirstLoadingCurve curve, double length)
    {
        Curve = curve;
        Length = length;
        _s = [0, length];
        _mu = [0, 0];
        Count = 2;
    }

    public MomentEnvelope(MomentEnvelope other)
    {
        Curve = other.Curve;
        Length = other.Length;
        _s = [.. other._s.Take(other.Count)];
        _mu = [.. other._mu.Take(other.Count)];
        Count = other.Count;
    }

    /// <summary>A given chain of corners; the arrays are used, not copied.</summary>
    public MomentEnvelope(FirstLoadingCurve curve, double[] s, double[] mu, int count)
    {
        Curve = curve;
        Length = s[count - 1];
        _s = s;
        _mu = mu;
        Count = count;
    }

    public FirstLoadingCurve Curve { get; }

    public double Length { get; }

    /// <summary>Number of corners.</summary>
    public int Count { get; private set; }

    public double Position(int corner) => _s[corner];

    /// <summary>Makes room for the corners of so many bumps, so that bending allocates nothing.</summary>
    public void Reserve(int bumps)
    {
        int room = Count + 6 * bumps + 8;
        if (_s.Length < room)
        {
            Array.Resize(ref _s, room);
            Array.Resize(ref _mu, room);
        }

        _newS = new double[room];
        _newMu = new double[room];
    }

    public double At(double s)
    {
        int i = PieceOf(s);
        return Between(i, s);
    }

    public double Permanent(double s) => Curve.Permanent(At(s));

    /// <summary>∫κ_p ds between two places, the second not before the first.</summary>
    public double Turn(double from, double to)
    {
        double sum = 0;
        double s = from;
        for (int i = PieceOf(from); s < to; i++)
        {
            double end = i + 2 < Count ? Math.Min(to, _s[i + 1]) : to;
            sum += Curve.Integral(Between(i, s), Between(i, end), 1, 1, end - s);
            s = end;
        }

        return sum;
    }

    /// <summary>
    /// The plastic part of both sides' ∫[max(κ_p, κ_p(M))]·(a − |x|)dx under a bump, and M₀ times its derivative over M₀ where the bar is
    /// not on the nose: along a stretch where M governs, M₀·∂/∂M₀∫κ_p(M)·l dx = κ_p(M₁)·l₁² − κ_p(M₂)·l₂² − 2∫κ_p(M)·l dx, by parts, l
    /// being the lever and 1 its end nearer to the nose.
    /// </summary>
    public (double Sum, double Slope) Opening(double center, in BumpMomentDiagram tent) =>
        Opening(center, tent, center - tent.Before, center + tent.After);

    /// <summary>The same of the side toward the start of the bar.</summary>
    public (double Sum, double Slope) OpeningBefore(double center, in BumpMomentDiagram tent) =>
        Opening(center, tent, center - tent.Before, center);

    /// <summary>The same of the side toward its end.</summary>
    public (double Sum, double Slope) OpeningAfter(double center, in BumpMomentDiagram tent) =>
        Opening(center, tent, center, center + tent.After);

    /// <summary>Raises the envelope to the moments of a bump.</summary>
    public void Raise(double center, in BumpMomentDiagram tent)
    {
        double start = Math.Max(0, center - tent.Before);
        double end = Math.Min(Length, center + tent.After);
        int i = PieceOf(start);
        int from = _s[i] < start ? i + 1 : i;
        BumpMomentDiagram bump = tent;
        _new = 0;
        double x = start;
        while (x < end)
        {
            double corner = _s[i + 1];
            double next = Math.Min(corner, NextVertex(center, tent, x, end));
            Piece piece = new(Between(i, x), Between(i, next), Moment(x), Moment(next));
            AddCorner(x, piece.State1, piece.Tent1, x == _s[i], x == start || x == center - tent.Flat || x == center + tent.Flat);
            double at = piece.Crossing;
            if (at > 0 && at < 1)
            {
                Add(x + at * (next - x), piece.State1 + at * (piece.State2 - piece.State1));
            }

            i = next == corner && i + 2 < Count ? i + 1 : i;
            x = next;
        }

        AddCorner(x, Between(i, x), 0, x == _s[i] || x == _s[i + 1], true);
        Splice(from, _s[i] > end ? i : _s[i + 1] > end ? i + 1 : i + 2);

        // Zero at the supports though the places are rounded: a trace of moment left there would hide the foot of a later bump.
        double Moment(double at) => at <= start || at >= end ? 0 : bump.At(at - center);
    }

    private static double NextVertex(double center, in BumpMomentDiagram tent, double x, double end) =>
        x < center - tent.Flat ? center - tent.Flat : x < center ? center : x < center + tent.Flat ? center + tent.Flat : end;

    private (double Sum, double Slope) Opening(double center, in BumpMomentDiagram tent, double from, double to)
    {
        double start = Math.Max(0, from);
        double end = Math.Min(Length, to);
        double sum = 0;
        double slope = 0;
        double x = start;
        for (int i = PieceOf(start); x < end;)
        {
            double corner = i + 2 < Count ? _s[i + 1] : double.PositiveInfinity;
            double next = Math.Min(corner, NextVertex(center, tent, x, end));
            Piece piece = new(Between(i, x), Between(i, next), tent.At(x - center), tent.At(next - center));
            double at = piece.Crossing;
            if (at > 0 && at < 1)
            {
                double middle = x + at * (next - x);
                AddPiece(center, tent, x, middle, piece.Before(at), ref sum, ref slope);
                AddPiece(center, tent, middle, next, piece.After(at), ref sum, ref slope);
            }
            else
            {
                AddPiece(center, tent, x, next, piece, ref sum, ref slope);
            }

            i = next == corner ? i + 1 : i;
            x = next;
        }

        return (sum, slope);
    }

    private void AddPiece(double center, in BumpMomentDiagram tent, double from, double to, in Piece piece, ref double sum,
        ref double slope)
    {
        double reach = tent.Reach((from + to) / 2 - center);
        double lever1 = reach - Math.Abs(from - center);
        double lever2 = reach - Math.Abs(to - center);
        if (piece.Tent1 + piece.Tent2 <= piece.State1 + piece.State2)
        {
            sum += Curve.Integral(piece.State1, piece.State2, lever1, lever2, to - from);
            return;
        }

        double part = Curve.Integral(piece.Tent1, piece.Tent2, lever1, lever2, to - from);
        sum += part;
        if (piece.Tent1 != piece.Tent2)
        {
            double ends = Curve.Permanent(piece.Tent1) * lever1 * lever1 - Curve.Permanent(piece.Tent2) * lever2 * lever2;
            slope += Math.Abs(ends) - 2 * part;
        }
    }

    private void AddCorner(double x, double state, double tent, bool isCornerOfState, bool isCornerOfTent)
    {
        if (isCornerOfState && state >= tent)
        {
            Add(x, state);
        }
        else if (isCornerOfTent && tent >= state)
        {
            Add(x, tent);
        }
    }

    private void Add(double s, double mu)
    {
        if (_new > 0 && s <= _newS[_new - 1])
        {
            return;
        }

        _newS[_new] = s;
        _newMu[_new++] = mu;
    }

    /// <summary>Puts the new corners in the place of those from one index up to, not including, another.</summary>
    private void Splice(int from, int to)
    {
        int count = Count - (to - from) + _new;
        if (_s.Length < count)
        {
            Array.Resize(ref _s, 2 * count);
            Array.Resize(ref _mu, 2 * count);
        }

        Array.Copy(_s, to, _s, from + _new, Count - to);
        Array.Copy(_mu, to, _mu, from + _new, Count - to);
        Array.Copy(_newS, 0, _s, from, _new);
        Array.Copy(_newMu, 0, _mu, from, _new);
        Count = count;
    }

    private double Between(int i, double s) => s >= _s[i + 1] ? _mu[i + 1]
        : s <= _s[i] ? _mu[i]
        : _mu[i] + (_mu[i + 1] - _mu[i]) * ((s - _s[i]) / (_s[i + 1] - _s[i]));

    /// <summary>The last piece that starts at or before a place.</summary>
    private int PieceOf(double s)
    {
        int i = Array.BinarySearch(_s, 0, Count, s);
        return Math.Min(Count - 2, i >= 0 ? i : Math.Max(0, ~i - 1));
    }

    /// <summary>Old and new moment at both ends of a stretch along which both are straight.</summary>
    private readonly struct Piece(double state1, double state2, double tent1, double tent2)
    {
        public double State1 { get; } = state1;

        public double State2 { get; } = state2;

        public double Tent1 { get; } = tent1;

        public double Tent2 { get; } = tent2;

        /// <summary>Share of the stretch at which they cross; outside 0 to 1 when they do not.</summary>
        public double Crossing => (Tent1 - State1) * (Tent2 - State2) < 0 ? (Tent1 - State1) / (Tent1 - State1 - (Tent2 - State2)) : -1;

        private double StateAt(double share) => State1 + share * (State2 - State1);

        public Piece Before(double share) => new(State1, StateAt(share), Tent1, StateAt(share));

        public Piece After(double share) => new(StateAt(share), State2, StateAt(share), Tent2);
    }
}
