using BendMath.Evidence;
using BendMath.Guards;
using UnitsNet;

namespace BendMath.Stock.Tolerances;

public sealed partial class MillTolerance
{
    private const double Inch = 0.0254;

    private const string ThicknessFromMass =
        "The standard limits the weight, not the thickness; the thickness here is the one at which the permitted weight is reached with "
            + "nominal legs.";

    /// <summary>
    /// ASTM A6/A6M: equal angles. Legs under 3 in are bar size, with a tolerance of thickness; above, the weight is limited.
    /// </summary>
    /// <param name="angle">The angle ordered.</param>
    /// <exception cref="ArgumentNullException">The angle is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside the sizes of the standard.</exception>
    public static MillTolerance AstmA6(EqualAngle angle)
    {
        double leg = Guard.NotNull(angle, nameof(angle)).Leg.Meters;
        DimensionTolerance thickness = AmericanThickness(angle, nameof(angle), leg, angle.Thickness.Meters, t => AtLimits(angle, leg, t));
        bool barSize = IsBarSize(leg);
        return AtLimits(nameof(angle), () => new(
            "ASTM A6/A6M",
            Sources.AstmA6,
            angle,
            [AmericanLeg(StockDimension.Leg, leg, leg), thickness],
            size => AtLimits(angle, size[0], size[1]),
            barSize ? null : 0.025,
            remark: barSize ? string.Empty : ThicknessFromMass));
    }

    /// <summary>
    /// ASTM A6/A6M: unequal angles. The longer leg decides: under 3 in bar size, with a tolerance of thickness; above, the weight is
    /// limited.
    /// </summary>
    /// <param name="angle">The angle ordered.</param>
    /// <exception cref="ArgumentNullException">The angle is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside the sizes of the standard.</exception>
    public static MillTolerance AstmA6(UnequalAngle angle)
    {
        double longer = Guard.NotNull(angle, nameof(angle)).LongLeg.Meters;
        double shorter = angle.ShortLeg.Meters;
        DimensionTolerance thickness =
            AmericanThickness(angle, nameof(angle), longer, angle.Thickness.Meters, t => AtLimits(angle, longer, shorter, t));
        bool barSize = IsBarSize(longer);
        return AtLimits(nameof(angle), () => new(
            "ASTM A6/A6M",
            Sources.AstmA6,
            angle,
            [AmericanLeg(StockDimension.LongLeg, longer, longer), AmericanLeg(StockDimension.ShortLeg, longer, shorter), thickness],
            size => AtLimits(angle, size[0], size[1], size[2]),
            barSize ? null : 0.025,
            remark: barSize ? string.Empty : ThicknessFromMass));
    }

    /// <summary>ASTM A500: square tube of 1/2 to 32 in, from its nominal wall.</summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes taken.</exception>
    public static MillTolerance AstmA500(SquareTube tube)
    {
        double side = Guard.NotNull(tube, nameof(tube)).Side.Meters;
        double wall = tube.Wall.Meters;
        CheckA500(tube, nameof(tube), side, wall);
        return AtLimits(nameof(tube), () => new(
            "ASTM A500", Sources.AstmA500Dimensions, tube, [A500Side(StockDimension.Side, side, side), A500Wall(wall)],
                size => AtLimits(tube, size[0], size[1]), null, A500Corner(wall)));
    }

    /// <summary>ASTM A500: rectangular tube, from its nominal wall. The larger outside dimension decides the tolerance of both.</summary>
    /// <param name="tube">The tube ordered.</param>
    /// <exception cref="ArgumentNullException">The tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tube is outside the sizes taken.</exception>
    public static MillTolerance AstmA500(RectangularTube tube)
    {
        double height = Guard.NotNull(tube, nameof(tube)).Height.Meters;
        double width = tube.Width.Meters;
        double wall = tube.Wall.Meters;
        CheckA500(tube, nameof(tube), height, wall);
        return AtLimits(nameof(tube), () => new(
            "ASTM A500",
            Sources.AstmA500Dimensions,
            tube,
            [A500Side(StockDimension.Height, height, height), A500Side(StockDimension.Width, height, width), A500Wall(wall)],
            size => AtLimits(tube, size[0], size[1], size[2]),
            null,
            A500Corner(wall)));
    }

    /// <summary>ASTM A53: pipe. The wall has a lower limit only; its upper end is where the weight limit is reached.</summary>
    /// <param name="pipe">The pipe ordered, from its nominal wall.</param>
    /// <exception cref="ArgumentNullException">The pipe is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pipe is outside the sizes of the standard, NPS 1/8 to 26.</exception>
    public static MillTolerance AstmA53(RoundTube pipe)
    {
        double diameter = Guard.NotNull(pipe, nameof(pipe)).OutsideDiameter.Meters;
        double wall = pipe.Wall.Meters;
        Check(nameof(pipe), pipe, "diameter", diameter, 0.405 * Inch, 26 * Inch, "ASTM A53");
        Check(nameof(pipe), pipe, "wall", wall, 0.5 * Millimeter, diameter / 4, "ASTM A53");
        return AtLimits(nameof(pipe), () => new(
            "ASTM A53",
            Sources.AstmA53Dimensions,
            pipe,
            [
                Limit(StockDimension.Diameter, diameter, diameter <= 1.9 * Inch * (1 + 1e-9) ? Inch / 64 : 0.01 * diameter),
                new(StockDimension.Wall, wall, 0.875 * wall,
                    ThicknessForMass(wall, 1.1, t => new RoundTube(pipe.OutsideDiameter, Meters(t)))),
            ],
            size => new RoundTube(Meters(size[0]), Meters(size[1])),
            0.1,
            remark: WallFromMass));
    }

    private static bool IsBarSize(double longer) => longer < 3 * Inch * (1 - 1e-9);

    private static DimensionTolerance AmericanLeg(StockDimension dimension, double longer, double leg)
    {
        if (IsBarSize(longer))
        {
            return Limit(dimension, leg, Inch * Pick(longer, (1 * Inch, 1.0 / 32), (2 * Inch, 3.0 / 64), (3 * Inch, 1.0 / 16)));
        }

        (double minus, double plus) =
            longer <= 4 * Inch * (1 + 1e-9) ? (3.0 / 32, 1.0 / 8)
                : longer <= 6 * Inch * (1 + 1e-9) ? (1.0 / 8, 1.0 / 8) : (1.0 / 8, 3.0 / 16);
        return Limit(dimension, leg, minus * Inch, plus * Inch);
    }

    private static DimensionTolerance AmericanThickness(BarStock angle, string name, double longer, double thickness,
        Func<double, BarStock> build)
    {
        Check(name, angle, "leg", longer, 0.5 * Inch, 12 * Inch, "ASTM A6/A6M");
        if (!IsBarSize(longer))
        {
            return new(StockDimension.Thickness, thickness, ThicknessForMass(thickness, 0.975, build),
                ThicknessForMass(thickness, 1.025, build));
        }

        bool smallest = longer <= Inch * (1 + 1e-9);
        Check(name, angle, "thickness", thickness, Inch / 10, smallest ? 3 * Inch / 8 : Inch, "ASTM A6/A6M");
        int column = thickness <= 3 * Inch / 16 * (1 + 1e-9) ? 0 : thickness <= 3 * Inch / 8 * (1 + 1e-9) ? 1 : 2;
        double[] row = smallest ? [0.008, 0.010] : longer <= 2 * Inch * (1 + 1e-9) ? [0.010, 0.010, 0.012] : [0.012, 0.015, 0.015];
        return Limit(StockDimension.Thickness, thickness, row[column] * Inch);
    }

    private static void CheckA500(BarStock tube, string name, double larger, double wall)
    {
        Check(name, tube, "larger side", larger, 0.5 * Inch, 32 * Inch, "ASTM A500");
        Check(name, tube, "wall", wall, 0.025 * Inch, Inch, "ASTM A500");
    }

    private static DimensionTolerance A500Side(StockDimension dimension, double larger, double side) => Limit(
        dimension,
        side,
        larger > 5.5 * Inch * (1 + 1e-9) ? 0.01 * side
            : Inch * Pick(larger, (2.5 * Inch, 0.020), (3.5 * Inch, 0.025), (5.5 * Inch, 0.030)));

    private static DimensionTolerance A500Wall(double wall) => Limit(StockDimension.Wall, wall, 0.1 * wall);

    private static LengthRange A500Corner(double wall) => new(Length.Zero, Meters(3 * wall));
}
