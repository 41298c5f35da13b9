using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Cutting;

/// <summary>The cut list of one kind of bar. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: Σ bars = Σ pieces + saw + useful offcuts + scrap.
/// Range: any cut list; with the masses, bars of one section.
/// Source: <see cref="Sources.Definition"/>
/// </remarks>
public sealed class CutGroup
{
    private readonly double _lowerBound;

    internal CutGroup(BarKind? kind, string name, IReadOnlyList<CutBar> bars, IReadOnlyList<CutPiece> missing, double lowerBound,
        CutSearchStatus status)
    {
        Kind = kind;
        Name = name;
        Bars = bars;
        Missing = missing;
        BarMeters = Sum(bar => bar.Supply.Meters);
        _lowerBound = Math.Min(lowerBound, BarMeters);
        Status = status;
    }

    /// <summary>The kind of bar, or null where the pieces name none.</summary>
    public BarKind? Kind { get; }

    /// <summary>The kind of bar in words that no other group of the list has; empty where the pieces name none.</summary>
    public string Name { get; }

    /// <summary>The bars and what is cut from them.</summary>
    public IReadOnlyList<CutBar> Bars { get; }

    /// <summary>Pieces for which the bars at hand do not suffice; empty where all are cut.</summary>
    public IReadOnlyList<CutPiece> Missing { get; }

    /// <summary>
    /// Whether no other cut list of these pieces leaves out fewer of them or takes less length of bars; otherwise <see cref="Gap"/> says
    /// how much a better one could save at most.
    /// </summary>
    public bool IsProven => Status == CutSearchStatus.Proven;

    /// <summary>Whether the caller stopped the search: the list is the best it had found by then.</summary>
    public bool WasStopped => Status == CutSearchStatus.Stopped;

    /// <summary>Number of bars.</summary>
    public int BarCount => Bars.Sum(bar => bar.Count);

    /// <summary>Length of all bars together: what the list keeps least.</summary>
    public Length BarLength => Length.FromMeters(BarMeters);

    /// <summary>Length of all pieces that are cut.</summary>
    public Length PieceLength => Length.FromMeters(Sum(bar => bar.PieceMeters));

    /// <summary>What the saw takes.</summary>
    public Length SawLoss => Length.FromMeters(Sum(bar => bar.SawMeters));

    /// <summary>Offcuts long enough to keep, together.</summary>
    public Length UsefulOffcuts => Length.FromMeters(Sum(bar => bar.IsOffcutUseful ? bar.OffcutMeters : 0));

    /// <summary>Offcuts too short to keep, together.</summary>
    public Length Scrap => Length.FromMeters(Sum(bar => bar.IsOffcutUseful ? 0 : bar.OffcutMeters));

    /// <summary>A length of bars below which no cut list of all these pieces can come.</summary>
    /// <remarks>
    /// Equation: the least sum of bar lengths not below max(Σ(l + k)·min L/(L + k), Σ v·n), with prices v of the pieces for which no way to
    /// cut a bar is worth more than the bar.
    /// Range: any pieces; limits on the number of bars are left out of it, so it may be low where they bind.
    /// Source: <see cref="Sources.GilmoreGomory"/>
    /// </remarks>
    public Length LowerBound => Length.FromMeters(_lowerBound);

    /// <summary>
    /// How much less a better list could take at most, as a share of the lower bound; zero where the list is proven or pieces are missing.
    /// </summary>
    public Ratio Gap =>
        Ratio.FromDecimalFractions(IsProven || Missing.Count > 0 ? 0 : Math.Max(0, BarMeters / _lowerBound - 1));

    internal CutSearchStatus Status { get; }

    internal double BarMeters { get; }

    /// <summary>Mass of all bars.</summary>
    /// <param name="section">The bar.</param>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public Mass BarMass(OrientedSection section, Density density) => MassOf(BarMeters, section, density);

    /// <summary>Mass of all pieces that are cut.</summary>
    /// <param name="section">The bar.</param>
    /// <param name="density">Density of the material, greater than zero.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The density is not positive and finite.</exception>
    public Mass PieceMass(OrientedSection section, Density density) => MassOf(PieceLength.Meters, section, density);

    /// <summary>Bars, length and how far the search went.</summary>
    public override string ToString() =>
        Invariant(
            $"{(Name.Length == 0 ? string.Empty : Name + ": ")}{Counted.Text(BarCount, "bar")}, {BarMeters * 1e3:0.#} mm; {(IsProven ? "no list takes less" : Invariant($"at most {Gap.Percent:0.##} % above the least"))}{(Missing.Count == 0 ? string.Empty : "; missing: " + string.Join(", ", Missing))}");

    private static Mass MassOf(double meters, OrientedSection section, Density density) =>
        Mass.FromKilograms(meters * Guard.NotNull(section, nameof(section)).Properties.MassPerLength(density).KilogramsPerMeter);

    private double Sum(Func<CutBar, double> value) => Bars.Sum(bar => bar.Count * value(bar));
}
