using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Stock.Standard;

/// <summary>
/// One size of a standard: what a designation such as <c>L2X2X1/8</c> means in dimensions, and the stock with the fillets and corners that
/// the tables of the standard assume. Immutable and thread-safe; there is one object of each size, in <see cref="StandardSizes.All"/>.
/// </summary>
public sealed class StandardSize
{
    private readonly SizeGroup _group;

    private readonly SizeFigures _figures;

    private BarStock? _stock;

    internal StandardSize(SizeGroup group, string designation, SizeKind kind, SizeSpelling spelling, SizeFigures figures)
    {
        _group = group;
        _figures = figures;
        Designation = designation;
        Kind = kind;
        DesignatedNumbers = spelling.Numbers;
        Schedule = spelling.Schedule;
        Dimensions = Array.AsReadOnly([.. figures.Dimensions.Select(Typed)]);
    }

    /// <summary>The designation as the standard writes it, such as <c>CHS 42.4x3.2</c>. It may stand in more than one system.</summary>
    public string Designation { get; }

    /// <summary>The standard, or common stock, that lists the size.</summary>
    public SizeSystem System => _group.System;

    internal SizeKind Kind { get; }

    /// <summary>Where the dimensions are printed, and whether the print was read or is cited from memory.</summary>
    public Source Source => _group.Source;

    /// <summary>
    /// What <see cref="Stock"/> assumes beyond the designation: which wall, which fillets or corner radii, and on what they rest. One or
    /// two sentences.
    /// </summary>
    public string Assumptions => _group.Assumptions;

    /// <summary>
    /// The dimensions in the unit of the system, millimeters or inches, from the largest: both legs and the thickness of an angle, outside
    /// diameter or both sides and the nominal wall of a tube, width and thickness of a flat, the one size of a round or square bar.
    /// </summary>
    public IReadOnlyList<Length> Dimensions { get; }

    /// <summary>
    /// The wall that the tables of the system calculate with, for HSS and pipe of <see cref="SizeSystem.Aisc"/>: 0.93 of the nominal wall,
    /// as printed; null for every other size.
    /// </summary>
    public Length? DesignWall => _figures.DesignWall is { } wall ? Typed(wall) : null;

    /// <summary>
    /// System and designation, such as <c>EN 10219-2 CHS 42.4x3.2</c>: unique among <see cref="StandardSizes.All"/> and accepted by
    /// <see cref="StandardSizes.Find(string)"/>.
    /// </summary>
    public string FullName => $"{System.Name} {Designation}";

    /// <summary>
    /// The bar as it lies on the rack: nominal dimensions, with the fillets and corners of <see cref="Assumptions"/>. Its type follows from
    /// <see cref="Kind"/>.
    /// </summary>
    public BarStock Stock
    {
        get
        {
            if (_stock is null)
            {
                Interlocked.CompareExchange(ref _stock, StockOf(_figures.Dimensions[_figures.Dimensions.Count - 1]), null);
            }

            return _stock;
        }
    }

    /// <summary>
    /// The tube with the design wall instead of the nominal one, to compare with the printed properties of the tables. It is not the tube
    /// on the rack.
    /// </summary>
    /// <exception cref="InvalidOperationException">The size has no <see cref="DesignWall"/>.</exception>
    public BarStock WithDesignWall() => StockOf(_figures.DesignWall ?? throw new InvalidOperationException(
        $"{FullName} has no design wall; only HSS and pipe of {SizeSystem.Aisc} have one."));

    /// <summary>System and designation.</summary>
    public override string ToString() => FullName;

    /// <summary>What the designation counts, from the largest: the dimensions, or the nominal size of a pipe.</summary>
    internal IReadOnlyList<double> DesignatedNumbers { get; }

    /// <summary>Schedule or weight of a pipe; empty for other sizes.</summary>
    internal string Schedule { get; }

    private BarStock StockOf(double smallest)
    {
        Length first = Dimensions[0];
        Length last = Typed(smallest);
        return Kind switch
        {
            SizeKind.EqualAngle => new EqualAngle(first, last, Fillets),
            SizeKind.UnequalAngle => new UnequalAngle(first, Dimensions[1], last, Fillets),
            SizeKind.RoundTube => new RoundTube(first, last),
            SizeKind.SquareTube => new SquareTube(first, last, _group.Corners(last)),
            SizeKind.RectangularTube => new RectangularTube(first, Dimensions[1], last, _group.Corners(last)),
            SizeKind.RoundBar => new RoundBar(first),
            SizeKind.SquareBar => new SquareBar(first),
            _ => new FlatBar(first, last),
        };
    }

    private AngleFillets Fillets => _group.Fillets(Dimensions[2], Typed(_figures.FilletFigure));

    private Length Typed(double value) => System.IsMetric ? Length.FromMillimeters(value) : Length.FromInches(value);
}
