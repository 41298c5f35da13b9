using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>Bars of a cut list that are cut alike. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: offcut = max(0, L − Σ(l + k)); saw = L − Σl − offcut.
/// Range: the last piece needs no cut when it ends at the end of the bar.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed class CutBar
{
    private readonly double _pieces;

    private readonly double _offcut;

    internal CutBar(BarSupply supply, int count, IReadOnlyList<CutPiece> pieces, double kerf, double leastUseful)
    {
        Supply = supply;
        Count = count;
        Pieces = pieces;
        _pieces = pieces.Sum(piece => piece.Meters);
        _offcut = BarCuts.Offcut(supply.Meters, _pieces + pieces.Count * kerf);
        IsOffcutUseful = _offcut > 0 && _offcut >= leastUseful;
        List<Length> marks = [];
        double at = 0;
        foreach (CutPiece piece in pieces)
        {
            marks.Add(Length.FromMeters(Math.Min(at + piece.Meters, supply.Meters)));
            at += piece.Meters + kerf;
        }

        Marks = marks.AsReadOnly();
    }

    /// <summary>The bars it is cut from.</summary>
    public BarSupply Supply { get; }

    /// <summary>How many bars are cut like this.</summary>
    public int Count { get; }

    /// <summary>The pieces from the start of the bar, the longest first; a piece that is cut several times stands there as often.</summary>
    public IReadOnlyList<CutPiece> Pieces { get; }

    /// <summary>Where each piece ends, from the start of the bar; the next one starts a saw cut further on.</summary>
    public IReadOnlyList<Length> Marks { get; }

    /// <summary>What is left of each bar.</summary>
    public Length Offcut => Length.FromMeters(_offcut);

    /// <summary>Whether what is left is long enough to keep.</summary>
    public bool IsOffcutUseful { get; }

    /// <summary>What the saw takes of each bar; a last cut that runs out of the bar takes less than its width.</summary>
    public Length SawLoss => Length.FromMeters(SawMeters);

    internal double PieceMeters => _pieces;

    internal double OffcutMeters => _offcut;

    internal double SawMeters => Math.Max(0, Supply.Meters - _pieces - _offcut);

    /// <summary>Count, pieces and offcut.</summary>
    public override string ToString() =>
        Invariant(
            $"{Count} × {Supply.Meters * 1e3:0.#} mm: {(string.Join(", ", Pieces.GroupBy(piece => (piece.Name, piece.Meters)).Select(same => Invariant($"{same.Count()} {same.Key.Name} {same.Key.Meters * 1e3:0.#}"))))}; {_offcut * 1e3:0.#} mm left");
}
