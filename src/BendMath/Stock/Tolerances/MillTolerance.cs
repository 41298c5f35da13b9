using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath.Stock.Tolerances;

/// <summary>A dimension of a bar that a mill tolerance limits.</summary>
public enum StockDimension
{
    /// <summary>Each leg of an equal angle.</summary>
    Leg,

    /// <summary>The longer leg of an unequal angle.</summary>
    LongLeg,

    /// <summary>The shorter leg of an unequal angle.</summary>
    ShortLeg,

    /// <summary>Thickness of an angle or flat.</summary>
    Thickness,

    /// <summary>Width of a flat, the smaller outside dimension of a rectangular tube.</summary>
    Width,

    /// <summary>The larger outside dimension of a rectangular tube.</summary>
    Height,

    /// <summary>Side of a square bar or tube.</summary>
    Side,

    /// <summary>Diameter of a round bar, outside diameter of a round tube.</summary>
    Diameter,

    /// <summary>Wall of a tube.</summary>
    Wall,
}

/// <summary>What a standard permits for one dimension, in meters.</summary>
internal sealed record DimensionTolerance(StockDimension Dimension, double NominalMeters, double LowMeters, double HighMeters)
{
    public LengthRange Range => new(Length.FromMeters(LowMeters), Length.FromMeters(HighMeters));

    /// <summary>Dimension and permitted sizes in millimeters.</summary>
    public override string ToString() => Invariant($"{Dimension} {NominalMeters * 1e3:0.###} mm: {Range}");
}

/// <summary>
/// What a standard lets the mill deliver for a size ordered, and the bars at those limits. Fillets and rounded corners keep their nominal
/// radii at the limits, unless a thinner bar leaves no room for them; corner radii of tubes keep their ratio to the wall. Immutable and
/// thread-safe.
/// </summary>
public sealed partial class MillTolerance
{
    private readonly Func<double[], BarStock> _build;

    private readonly double? _mass;

    private MillTolerance(
        string standard, Source source, BarStock nominal, DimensionTolerance[] dimensions, Func<double[], BarStock> build,
        double? mass = null, LengthRange? outsideCorner = null, string remark = "")
    {
        Standard = standard;
        Source = source;
        Nominal = nominal;
        Dimensions = Array.AsReadOnly(dimensions);
        _build = build;
        _mass = mass;
        OutsideCorner = outsideCorner;
        Remark = remark;
        Lightest = build([.. dimensions.Select(dimension => dimension.LowMeters)]);
        Heaviest = build([.. dimensions.Select(dimension => dimension.HighMeters)]);
        for (int corner = 1; corner < (1 << dimensions.Length) - 1; corner++)
        {
            build([.. dimensions.Select((dimension, i) => (corner >> i & 1) == 0 ? dimension.LowMeters : dimension.HighMeters)]);
        }
    }

    /// <summary>The standard, such as <c>EN 10056-2</c>.</summary>
    public string Standard { get; }

    /// <summary>Whether the standard was read or is cited from memory.</summary>
    public Source Source { get; }

    /// <summary>The bar ordered.</summary>
    public BarStock Nominal { get; }

    /// <summary>The sizes permitted of the limited dimensions.</summary>
    public IReadOnlyDictionary<StockDimension, LengthRange> Limits =>
        Dimensions.ToDictionary(limited => limited.Dimension, limited => limited.Range);

    /// <summary>
    /// Deviation of mass permitted both ways, or null where the standard limits none. It holds besides the limits of the dimensions: a bar
    /// with every dimension at its limit may exceed it.
    /// </summary>
    public Ratio? MassTolerance => _mass is { } mass ? Ratio.FromDecimalFractions(mass) : null;

    /// <summary>Permitted radius of the outside corners of a tube, or null.</summary>
    public LengthRange? OutsideCorner { get; }

    /// <summary>What else to know of a limit; empty where nothing is.</summary>
    public string Remark { get; }

    /// <summary>Every dimension at its lower limit.</summary>
    public BarStock Lightest { get; }

    /// <summary>Every dimension at its upper limit.</summary>
    public BarStock Heaviest { get; }

    /// <summary>The bar with one dimension at its lower limit and all others as ordered.</summary>
    /// <param name="dimension">One of <see cref="Limits"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The shape has no such dimension, or the value is not defined.</exception>
    public BarStock AtLow(StockDimension dimension) => At(dimension, limited => limited.LowMeters);

    /// <summary>The bar with one dimension at its upper limit and all others as ordered.</summary>
    /// <param name="dimension">One of <see cref="Limits"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The shape has no such dimension, or the value is not defined.</exception>
    public BarStock AtHigh(StockDimension dimension) => At(dimension, limited => limited.HighMeters);

    /// <summary>The limited dimensions, in their order.</summary>
    internal IReadOnlyList<DimensionTolerance> Dimensions { get; }

    /// <summary>The bar with its limited dimensions at given sizes, in their order.</summary>
    internal BarStock Build(double[] sizes) => _build(sizes);

    /// <summary>Standard, bar and limits.</summary>
    public override string ToString() => $"{Standard}, {Nominal}: {string.Join("; ", Dimensions)}";

    private BarStock At(StockDimension dimension, Func<DimensionTolerance, double> limit)
    {
        Guard.Defined(dimension, nameof(dimension));
        return Dimensions.Any(limited => limited.Dimension == dimension)
            ? _build([.. Dimensions.Select(limited => limited.Dimension == dimension ? limit(limited) : limited.NominalMeters)])
            : throw Guard.OutOfRange(nameof(dimension),
                $"must be one that {Nominal} has, {string.Join(" or ", Dimensions.Select(limited => limited.Dimension))}",
                    $"is {dimension}");
    }

    private static DimensionTolerance Limit(StockDimension dimension, double nominal, double minus, double plus) =>
        new(dimension, nominal, nominal - minus, nominal + plus);

    private static DimensionTolerance Limit(StockDimension dimension, double nominal, double either) =>
        Limit(dimension, nominal, either, either);

    private static Length Meters(double value) => Length.FromMeters(value);

    /// <summary>
    /// The tolerance of the first row whose upper bound is not exceeded; rows rise. Sizes met but for rounding count as met.
    /// </summary>
    private static double Pick(double size, params (double UpTo, double Tolerance)[] rows) =>
        rows.First(row => size <= row.UpTo * (1 + 1e-9)).Tolerance;

    private static void Check(string name, BarStock stock, string what, double size, double low, double high, string standard)
    {
        if (size < low * (1 - 1e-9) || size > high * (1 + 1e-9))
        {
            throw Guard.OutOfRange(name,
                Invariant($"must have a {what} of {low * 1e3:0.###} to {high * 1e3:0.###} mm, the range of {standard}"), $"is {stock}");
        }
    }

    /// <summary>
    /// The tolerance, once every pair of limits is seen to leave a bar: one that is nearly solid may not stay a tube at the thick end.
    /// </summary>
    private static MillTolerance AtLimits(string name, Func<MillTolerance> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused) when (ArgumentFault.Of(refused) is { } fault)
        {
            throw Guard.OutOfRange(name, "must be a bar at every limit of the standard too",
                $"at one of them {fault.Argument} {fault.Rule}{(fault.Found is { } found ? $" and {found}" : string.Empty)}");
        }
    }

    /// <summary>The thickness or wall at which the bar has a share of its nominal mass, all else nominal; area rises with it.</summary>
    private static double ThicknessForMass(double nominal, double share, Func<double, BarStock> build)
    {
        double target = share * build(nominal).Area.SquareMeters;
        if (share > 1 && build(nominal * (2 * share - 1)).Area.SquareMeters < target)
        {
            throw Guard.Fault(nameof(nominal), Meters(nominal), $"must leave room for a bar of {100 * share:0.#} % of the mass");
        }

        return Bracketed.Root(t => build(t).Area.SquareMeters / target - 1, nominal * (share < 1 ? 2 * share - 1 : 1),
            nominal * (share < 1 ? 1 : 2 * share - 1));
    }

    private static FlatBar AtLimits(FlatBar flat, double width, double thickness) =>
        new(Meters(width), Meters(thickness), Meters(Math.Min(flat.CornerRadius.Meters, thickness / 2)));

    private static SquareBar AtLimits(SquareBar square, double side) =>
        new(Meters(side), Meters(Math.Min(square.CornerRadius.Meters, side / 2)));

    private static EqualAngle AtLimits(EqualAngle angle, double leg, double thickness) =>
        new EqualAngle(Meters(leg), Meters(thickness), angle.Fillets.Within(thickness));

    private static UnequalAngle AtLimits(UnequalAngle angle, double longLeg, double shortLeg, double thickness) =>
        new UnequalAngle(Meters(longLeg), Meters(shortLeg), Meters(thickness), angle.Fillets.Within(thickness));

    private static SquareTube AtLimits(SquareTube tube, double side, double wall) =>
        new SquareTube(Meters(side), Meters(wall), Scaled(tube.Corners, wall / tube.Wall.Meters));

    private static RectangularTube AtLimits(RectangularTube tube, double height, double width, double wall) =>
        new RectangularTube(Meters(height), Meters(Math.Min(height, width)), Meters(wall), Scaled(tube.Corners, wall / tube.Wall.Meters));

    private static CornerRadii Scaled(CornerRadii corners, double factor) =>
        CornerRadii.Of(Meters(corners.OutsideMeters * factor), Meters(corners.InsideMeters * factor));
}
