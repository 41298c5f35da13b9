using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Stock.Tolerances;

public sealed partial class MillTolerance
{
    private const double Millimeter = 1e-3;

    private const string WallFromMass =
        "The standard gives the wall a lower limit only; its upper end here is the wall at which the permitted mass is reached with all "
            + "else nominal.";

    /// <summary>EN 10056-2: equal angles of 20 to 250 mm, at least 3 mm thick.</summary>
    /// <param name="angle">The angle ordered.</param>
    /// <exception cref="ArgumentNullException">The angle is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside the sizes of the standard.</exception>
    public static MillTolerance En10056(EqualAngle angle)
    {
        double leg = Guard.NotNull(angle, nameof(angle)).Leg.Meters;
        double thickness = angle.Thickness.Meters;
        CheckEn10056(angle, nameof(angle), leg, leg, thickness);
        return AtLimits(nameof(angle), () => new(
            "EN 10056-2", Sources.En10056, angle, [EuropeanLeg(StockDimension.Leg, leg), EuropeanThickness(thickness)],
                size => AtLimits(angle, size[0], size[1]), EuropeanMass(thickness)));
    }

    /// <summary>EN 10056-2: unequal angles of 20 to 250 mm, at least 3 mm thick. Each leg is limited by its own length.</summary>
    /// <param name="angle">The angle ordered.</param>
    /// <exception cref="ArgumentNullException">The angle is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside the sizes of the standard.</exception>
    public static MillTolerance En10056(UnequalAngle angle)
    {
        double longer = Guard.NotNull(angle, nameof(angle)).LongLeg.Meters;
        double shorter = angle.ShortLeg.Meters;
        double thickness = angle.Thickness.Meters;
        CheckEn10056(angle, nameof(angle), shorter, longer, thickness);
        return AtLimits(nameof(angle), () => new(
            "EN 10056-2",
            Sources.En10056,
            angle,
            [EuropeanLeg(StockDimension.LongLeg, longer), EuropeanLeg(StockDimension.ShortLeg, shorter), EuropeanThickness(thickness)],
            size => AtLimits(angle, size[0], size[1], size[2]),
            EuropeanMass(thickness)));
    }

    /// <summary>EN 10058: flats 10 to 150 mm wide and 5 to 80 mm thick.</summary>
    /// <param name="flat">The flat ordered.</param>
    /// <exception cref="ArgumentNullException">The flat is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The flat is outside the sizes of the standard.</exception>
    public static MillTolerance En10058(FlatBar flat)
    {
        double width = Guard.NotNull(flat, nameof(flat)).Width.Meters;
        double thickness = flat.Thickness.Meters;
        Check(nameof(flat), flat, "width", width, 0.010, 0.150, "EN 10058");
        Check(nameof(flat), flat, "thickness", thickness, 0.005, 0.080, "EN 10058");
        return AtLimits(nameof(flat), () => new(
            "EN 10058",
            Sources.En10058,
            flat,
            [
                Limit(StockDimension.Width, width,
                    Millimeter * Pick(width, (0.040, 0.75), (0.080, 1.0), (0.100, 1.5), (0.120, 2.0), (0.150, 2.5))),
                Limit(StockDimension.Thickness, thickness, Millimeter * Pick(thickness, (0.020, 0.5), (0.040, 1.0), (0.080, 1.5))),
            ],
            size => AtLimits(flat, Math.Max(size[0], size[1]), Math.Min(size[0], size[1]))));
    }

    /// <summary>EN 10059: square bars of 8 to 150 mm.</summary>
    /// <param name="square">The bar ordered.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is outside the sizes of the standard.</exception>
    public static MillTolerance En10059(SquareBar square)
    {
        double side = Guard.NotNull(square, nameof(square)).Side.Meters;
        Check(nameof(square), square, "side", side, 0.008, 0.150, "EN 10059");
        double either =
            Millimeter
                * Pick(side, (0.014, 0.4), (0.025, 0.5), (0.035, 0.6), (0.050, 0.8), (0.090, 1.0), (0.100, 1.3), (0.120, 1.5), (0.150, 1.8));
        return AtLimits(nameof(square),
            () => new("EN 10059", Sources.En10059, square, [Limit(StockDimension.Side, side, either)], size => AtLimits(square, size[0])));
    }

    /// <summary>EN 10060: round bars of 10 to 250 mm.</summary>
    /// <param name="round">The bar ordered.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bar is outside the sizes of the standard.</exception>
    public static MillTolerance En10060(RoundBar round)
    {
        double diameter = Guard.NotNull(round, nameof(round)).Diameter.Meters;
        Check(nameof(round), round, "diameter", diameter, 0.010, 0.250, "EN 10060");
        double either = Millimeter * Pick(
            diameter, (0.015, 0.4), (0.025, 0.5), (0.035, 0.6), (0.050, 0.8), (0.080, 1.0), (0.100, 1.3), (0.120, 1.5), (0.160, 2.0),
                (0.200, 2.5), (0.220, 3.0), (0.250, 4.0));
        return AtLimits(nameof(round),
            () =>
                new("EN 10060", Sources.En10060, round, [Limit(StockDimension.Diameter, diameter, either)],
                    size => new RoundBar(Meters(size[0]))));
    }

    /// <summary>EN 10219-2: cold-formed square tube up to 500 mm.</summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes of the standard.</exception>
    public static MillTolerance En10219(SquareTube tube)
    {
        double side = Guard.NotNull(tube, nameof(tube)).Side.Meters;
        double wall = tube.Wall.Meters;
        Check(nameof(tube), tube, "side", side, 0.020, 0.500, "EN 10219-2");
        return AtLimits(nameof(tube), () => new(
            "EN 10219-2", Sources.En10219, tube, [ColdSide(StockDimension.Side, side), ColdWall(wall)],
                size => AtLimits(tube, size[0], size[1]), 0.06, ColdCorner(wall)));
    }

    /// <summary>EN 10219-2: cold-formed rectangular tube up to 500 mm. Each side is limited by its own length.</summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes of the standard.</exception>
    public static MillTolerance En10219(RectangularTube tube)
    {
        double height = Guard.NotNull(tube, nameof(tube)).Height.Meters;
        double width = tube.Width.Meters;
        double wall = tube.Wall.Meters;
        Check(nameof(tube), tube, "width", width, 0.020, 0.500, "EN 10219-2");
        Check(nameof(tube), tube, "height", height, 0.020, 0.500, "EN 10219-2");
        return AtLimits(nameof(tube), () => new(
            "EN 10219-2",
            Sources.En10219,
            tube,
            [ColdSide(StockDimension.Height, height), ColdSide(StockDimension.Width, width), ColdWall(wall)],
            size => AtLimits(tube, size[0], size[1], size[2]),
            0.06,
            ColdCorner(wall)));
    }

    /// <summary>EN 10219-2: cold-formed round tube of 20 to 406.4 mm.</summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes of the standard.</exception>
    public static MillTolerance En10219(RoundTube tube)
    {
        double diameter = Guard.NotNull(tube, nameof(tube)).OutsideDiameter.Meters;
        Check(nameof(tube), tube, "diameter", diameter, 0.020, 0.4064, "EN 10219-2");
        return AtLimits(nameof(tube),
            () =>
                new("EN 10219-2", Sources.En10219, tube, [RoundDiameter(diameter), ColdWall(tube.Wall.Meters)],
                    size => new RoundTube(Meters(size[0]), Meters(size[1])), 0.06));
    }

    /// <summary>
    /// EN 10210-2: hot-finished square tube up to 500 mm. The wall has a lower limit only; its upper end is where the mass limit is
    /// reached.
    /// </summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes of the standard.</exception>
    public static MillTolerance En10210(SquareTube tube)
    {
        double side = Guard.NotNull(tube, nameof(tube)).Side.Meters;
        Check(nameof(tube), tube, "side", side, 0.020, 0.500, "EN 10210-2");
        return AtLimits(nameof(tube), () => new(
            "EN 10210-2",
            Sources.En10210,
            tube,
            [HotSide(StockDimension.Side, side), HotWall(tube.Wall.Meters, wall => AtLimits(tube, side, wall))],
            size => AtLimits(tube, size[0], size[1]),
            0.06,
            new(Length.Zero, 3 * tube.Wall),
            WallFromMass));
    }

    /// <summary>
    /// EN 10210-2: hot-finished rectangular tube up to 500 mm. The wall has a lower limit only; its upper end is where the mass limit is
    /// reached.
    /// </summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes of the standard.</exception>
    public static MillTolerance En10210(RectangularTube tube)
    {
        double height = Guard.NotNull(tube, nameof(tube)).Height.Meters;
        double width = tube.Width.Meters;
        Check(nameof(tube), tube, "width", width, 0.020, 0.500, "EN 10210-2");
        Check(nameof(tube), tube, "height", height, 0.020, 0.500, "EN 10210-2");
        return AtLimits(nameof(tube), () => new(
            "EN 10210-2",
            Sources.En10210,
            tube,
            [HotSide(StockDimension.Height, height), HotSide(StockDimension.Width, width),
                HotWall(tube.Wall.Meters, wall => AtLimits(tube, height, width, wall))],
            size => AtLimits(tube, size[0], size[1], size[2]),
            0.06,
            new(Length.Zero, 3 * tube.Wall),
            WallFromMass));
    }

    private static void CheckEn10056(BarStock angle, string name, double shorter, double longer, double thickness)
    {
        Check(name, angle, "leg", shorter, 0.020, 0.250, "EN 10056-1");
        Check(name, angle, "leg", longer, 0.020, 0.250, "EN 10056-1");
        Check(name, angle, "thickness", thickness, 0.003, 0.035, "EN 10056-1");
    }

    private static DimensionTolerance EuropeanLeg(StockDimension dimension, double leg) => leg > 0.200 * (1 + 1e-9)
        ? Limit(dimension, leg, 4 * Millimeter, 6 * Millimeter)
        : Limit(dimension, leg, Millimeter * Pick(leg, (0.050, 1), (0.100, 2), (0.150, 3), (0.200, 4)));

    private static DimensionTolerance EuropeanThickness(double thickness) =>
        Limit(StockDimension.Thickness, thickness,
            Millimeter * Pick(thickness, (0.005, 0.5), (0.010, 0.75), (0.015, 1.0), (double.MaxValue, 1.2)));

    private static double EuropeanMass(double thickness) => Pick(thickness, (0.004, 0.06), (double.MaxValue, 0.04));

    private static DimensionTolerance ColdSide(StockDimension dimension, double side) =>
        Limit(dimension, side,
            side < 0.100 * (1 - 1e-9) ? Math.Max(0.01 * side, 0.5 * Millimeter)
                : side * Pick(side, (0.200, 0.008), (double.MaxValue, 0.006)));

    private static DimensionTolerance ColdWall(double wall) =>
        Limit(StockDimension.Wall, wall, wall <= 0.005 * (1 + 1e-9) ? 0.1 * wall : 0.5 * Millimeter);

    private static LengthRange ColdCorner(double wall)
    {
        double low = Pick(wall, (0.006, 1.6), (0.010, 2.0), (double.MaxValue, 2.4));
        return new(Meters(low * wall), Meters(1.5 * low * wall));
    }

    private static DimensionTolerance RoundDiameter(double diameter) =>
        Limit(StockDimension.Diameter, diameter, Math.Min(10 * Millimeter, Math.Max(0.5 * Millimeter, 0.01 * diameter)));

    private static DimensionTolerance HotSide(StockDimension dimension, double side) =>
        Limit(dimension, side, Math.Max(0.01 * side, 0.5 * Millimeter));

    private static DimensionTolerance HotWall(double wall, Func<double, BarStock> build) =>
        new(StockDimension.Wall, wall, 0.9 * wall, ThicknessForMass(wall, 1.06, build));
}
