using BendMath.Guards;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>
/// Which pieces to cut from which bars, with the least length of bars. Offcuts long enough to keep are shown, but do not count as saved:
/// what is least is what is taken from the rack. The same input gives the same list. Immutable and thread-safe.
/// </summary>
public sealed class CutList
{
    /// <summary>The largest number of bar lengths.</summary>
    private const int MostSupplies = 20;

    private readonly double _kerf;

    private readonly double _leastUseful;

    private CutList(IReadOnlyList<CutGroup> groups, double kerf, double leastUseful)
    {
        Groups = groups;
        _kerf = kerf;
        _leastUseful = leastUseful;
    }

    /// <summary>The most lines of pieces a list takes: 500.</summary>
    public static int MostLines => 500;

    /// <summary>The most pieces a list takes in all: 5,000.</summary>
    public static int MostPieces => CutPiece.Most;

    /// <summary>The lists of each kind of bar, in the order of the pieces.</summary>
    public IReadOnlyList<CutGroup> Groups { get; }

    /// <summary>Width of a saw cut.</summary>
    public Length Kerf => Length.FromMeters(_kerf);

    /// <summary>Length from which an offcut is kept.</summary>
    public Length LeastUsefulOffcut => Length.FromMeters(_leastUseful);

    /// <summary>Length of all bars together.</summary>
    public Length BarLength => Length.FromMeters(Groups.Sum(group => group.BarMeters));

    /// <summary>Whether no other list leaves out fewer pieces or takes less length of bars.</summary>
    public bool IsProven => Groups.All(group => group.IsProven);

    /// <summary>Whether all pieces are cut.</summary>
    public bool IsComplete => Groups.All(group => group.Missing.Count == 0);

    /// <summary>Makes a cut list.</summary>
    /// <param name="pieces">From 1 to 500 lines, up to 5,000 pieces in all. Each must fit a bar of its kind.</param>
    /// <param name="bars">From 1 to 20 lengths of bars. Pieces that bars of limited number do not suffice for are reported as
    /// missing.</param>
    /// <param name="kerf">Width of a saw cut, zero or more. The last piece of a bar needs no cut when it ends at the end of the
    /// bar.</param>
    /// <param name="leastUsefulOffcut">Length from which an offcut is kept, zero or more.</param>
    /// <param name="cancellation">
    /// Stops the search for a better list. It throws nothing: what has been found by then is a lawful list and is handed out, with
    /// <see cref="CutGroup.WasStopped"/>.
    /// </param>
    /// <exception cref="ArgumentNullException">A list is null.</exception>
    /// <exception cref="ArgumentException">A line is missing, there is none, or a piece fits no bar of its kind.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is negative or not finite, or there are too many lines or pieces.</exception>
    public static CutList For(IReadOnlyList<CutPiece> pieces, IReadOnlyList<BarSupply> bars, Length kerf, Length leastUsefulOffcut,
        CancellationToken cancellation = default)
    {
        CutPiece[] lines = Guard.Items(pieces, nameof(pieces), 1);
        BarSupply[] supplies = Guard.Items(bars, nameof(bars), 1);
        double saw = Guard.NonNegative(kerf, nameof(kerf));
        double useful = Guard.NonNegative(leastUsefulOffcut, nameof(leastUsefulOffcut));
        if (lines.Length > MostLines)
        {
            throw Guard.Fault(nameof(pieces), lines.Length, "must hold at most 500 lines");
        }

        if (lines.Sum(line => line.Quantity) is > CutPiece.Most and var count)
        {
            throw Guard.Fault(nameof(pieces), count, "must be at most 5,000 pieces in all");
        }

        if (supplies.Length > MostSupplies)
        {
            throw Guard.Fault(nameof(bars), supplies.Length, "must hold at most 20 lengths");
        }

        foreach (CutPiece line in lines)
        {
            double most =
                supplies.Where(supply => BarKind.AreSame(supply.Kind, line.Kind)).Select(supply => supply.Meters).DefaultIfEmpty(0).Max();
            if (line.Meters + saw > BarCuts.Room(most, saw))
            {
                throw Guard.Refused(nameof(pieces), "must each fit a bar of their kind", most > 0
                    ? $"\"{line.Name}\" of {Guard.Text(line.Length)} is longer than the longest one, {Guard.MillimetersText(most)}"
                    : $"there is no bar {(line.Kind is { } kind ? $"of {kind.Description}" : "of no kind")} for \"{line.Name}\"");
            }
        }

        List<BarKind?> kinds = [];
        foreach (CutPiece line in lines.Where(line => !kinds.Exists(kind => BarKind.AreSame(kind, line.Kind))))
        {
            kinds.Add(line.Kind);
        }

        string[] names = BarKind.Names(kinds);
        CutGroup[] groups = [.. kinds.Select((kind, i) => CutGrouping.Solve(
            kind,
            names[i],
            [.. lines.Where(line => BarKind.AreSame(kind, line.Kind))],
            [.. supplies.Where(supply => BarKind.AreSame(kind, supply.Kind))],
            saw,
            useful,
            cancellation))];

        return new(Array.AsReadOnly(groups), saw, useful);
    }

    /// <summary>Groups and length.</summary>
    public override string ToString() => Invariant($"{string.Join("; ", Groups)}");
}
