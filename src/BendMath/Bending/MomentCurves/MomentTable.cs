using BendMath.Materials;
using BendMath.Numerics;
using BendMath.Numerics.Geometry;

namespace BendMath.Bending.MomentCurves;

/// <summary>
/// The held-flat states of a section under all laws of one shape, over κ̂ = κ/e_ref: neutral axis, permanent curvature and their integrals,
/// from first yield on in cells of a factor of four in curvature. A cell is made when it is first needed; two threads may both make it,
/// with the same numbers.
/// </summary>
internal sealed class MomentTable(BandProfile profile, StressStrainLaw law, bool isForSearch)
{
    private const double Width = 2 * 0.69314718055994531;

    private const int Most = 64;

    private const double Fine = 1e-12;

    /// <summary>For a law that needs a table for every yield, in a search that ends at 1e-7.</summary>
    private const double Coarse = 1e-9;

    private readonly LawShape _shape = law.Shape;

    private readonly double _start =
        Math.Log(law.Shape.ElasticLimit / Math.Max(profile.Moments.CentroidY, profile.Height - profile.Moments.CentroidY));

    private readonly MomentPiece[]?[] _cells = new MomentPiece[Most][];

    private readonly Total?[] _works = new Total[Most];

    private readonly Total?[] _plastics = new Total[Most];

    public LawShape Shape => _shape;

    public ref readonly AreaMoments Moments => ref profile.Moments;

    /// <summary>κ̂ at which the first fiber yields.</summary>
    public double FirstYield => Math.Exp(_start);

    /// <summary>The piece with a place t = ln κ̂; null while the bar is elastic.</summary>
    public MomentPiece? PieceAt(double t) => t <= _start ? null : PieceIn(Cell(CellOf(t)), t);

    /// <summary>∫m² dκ̂ from nothing.</summary>
    public double Work(double t)
    {
        if (t <= _start)
        {
            return Math.Exp(3 * t) / 3;
        }

        int cell = CellOf(t);
        MomentPiece[] pieces = Cell(cell);
        double sum = WorkBefore(cell).First;
        for (int i = 0; ; i++)
        {
            if (i == pieces.Length - 1 || t <= pieces[i].End)
            {
                return sum + pieces[i].Work(t);
            }

            sum += pieces[i].Work(pieces[i].End);
        }
    }

    /// <summary>∫κ̂_p dm and ∫κ̂_p·m dm from nothing.</summary>
    public (double First, double Second) Plastic(double t)
    {
        if (t <= _start)
        {
            return (0, 0);
        }

        int cell = CellOf(t);
        MomentPiece[] pieces = Cell(cell);
        Total before = PlasticBefore(cell);
        (double first, double second) = (before.First, before.Second);
        for (int i = 0; ; i++)
        {
            bool last = i == pieces.Length - 1 || t <= pieces[i].End;
            (double more, double moreSecond) = pieces[i].Plastic(last ? t : pieces[i].End);
            first += more;
            second += moreSecond;
            if (last)
            {
                return (first, second);
            }
        }
    }

    private static MomentPiece PieceIn(MomentPiece[] pieces, double t)
    {
        int i = 0;
        while (i < pieces.Length - 1 && t > pieces[i].End)
        {
            i++;
        }

        return pieces[i];
    }

    private int CellOf(double t) => Math.Min(Most - 1, (int)((t - _start) / Width));

    private MomentPiece[] Cell(int cell)
    {
        if (Volatile.Read(ref _cells[cell]) is { } made)
        {
            return made;
        }

        double from = _start + cell * Width;
        MomentPiece[] pieces =
            new MomentPieces(profile, law, _shape.Breaks, law.IsScaledByYield || !isForSearch ? Fine : Coarse).Between(from, cell == 0,
                from + Width);
        return Interlocked.CompareExchange(ref _cells[cell], pieces, null) ?? pieces;
    }

    private Total WorkBefore(int cell)
    {
        if (Volatile.Read(ref _works[cell]) is { } made)
        {
            return made;
        }

        double sum = cell == 0 ? Math.Exp(3 * _start) / 3 : WorkBefore(cell - 1).First;
        foreach (MomentPiece piece in cell == 0 ? [] : Cell(cell - 1))
        {
            sum += piece.Work(piece.End);
        }

        return Once.Keep(ref _works[cell], new(sum, 0));
    }

    private Total PlasticBefore(int cell)
    {
        if (Volatile.Read(ref _plastics[cell]) is { } made)
        {
            return made;
        }

        (double first, double second) = cell == 0 ? (0, 0) : (PlasticBefore(cell - 1).First, PlasticBefore(cell - 1).Second);
        foreach (MomentPiece piece in cell == 0 ? [] : Cell(cell - 1))
        {
            (double more, double moreSecond) = piece.Plastic(piece.End);
            first += more;
            second += moreSecond;
        }

        return Once.Keep(ref _plastics[cell], new(first, second));
    }

    private sealed class Total(double first, double second)
    {
        public double First { get; } = first;

        public double Second { get; } = second;
    }
}
