using BendMath.Evidence;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Tests.Stock.Tolerances;

/// <summary>
/// Permitted sizes in millimeters or inches, by the standard named. EN 10058, EN 10059, EN 10219-2 and ASTM A500 were read; EN 10056-2, EN
/// 10060, EN 10210-2, ASTM A6 and ASTM A53 are from memory.
/// </summary>
public sealed class MillToleranceTests
{
    public static TheoryData<MillTolerance> All => new(
        MillTolerance.En10056(Angle(30, 3, 5, 2.5)),
        MillTolerance.En10056(new UnequalAngle(Mm(100), Mm(50), Mm(8), AngleFillets.Of(Mm(8), Mm(4)))),
        MillTolerance.En10058(new FlatBar(Mm(25), Mm(5), Mm(2.5))),
        MillTolerance.En10058(new FlatBar(Mm(20), Mm(20))),
        MillTolerance.En10059(new SquareBar(Mm(20), Mm(1.5))),
        MillTolerance.En10060(new RoundBar(Mm(12))),
        MillTolerance.En10219(new SquareTube(Mm(40), Mm(3), CornerRadii.ColdFormed(Mm(3)))),
        MillTolerance.En10219(new RectangularTube(Mm(60), Mm(40), Mm(4), CornerRadii.ColdFormed(Mm(4)))),
        MillTolerance.En10219(new RoundTube(Mm(33.7), Mm(3))),
        MillTolerance.En10210(new SquareTube(Mm(60), Mm(5), CornerRadii.HotFinished(Mm(5)))),
        MillTolerance.En10210(new RectangularTube(Mm(100), Mm(60), Mm(6.3), CornerRadii.HotFinished(Mm(6.3)))),
        MillTolerance.AstmA6(Angle(19.05, 3.175, 3, 1)),
        MillTolerance.AstmA6(Angle(101.6, 6.35, 9, 3)),
        MillTolerance.AstmA6(new UnequalAngle(In(3), In(2), In(0.25), AngleFillets.Of(In(0.3), In(0.1)))),
        MillTolerance.AstmA500(new SquareTube(In(2), In(0.125), CornerRadii.Hss(In(0.116)))),
        MillTolerance.AstmA500(new RectangularTube(In(6), In(2), In(0.25), CornerRadii.Hss(In(0.233)))),
        MillTolerance.AstmA53(new RoundTube(In(1.315), In(0.133))));

    [Theory]
    [MemberData(nameof(All))]
    public void The_bars_at_the_limits_have_the_sizes_permitted(MillTolerance tolerance)
    {
        Assert.True(tolerance.Lightest.Area < tolerance.Nominal.Area);
        Assert.True(tolerance.Heaviest.Area > tolerance.Nominal.Area);
        Assert.All(tolerance.Dimensions, limit =>
        {
            Assert.InRange(limit.NominalMeters, limit.LowMeters, limit.HighMeters);
            Area low = tolerance.AtLow(limit.Dimension).Area;
            Area high = tolerance.AtHigh(limit.Dimension).Area;
            Assert.True(tolerance.Lightest.Area.SquareMillimeters <= low.SquareMillimeters * (1 + 1e-12) && low < tolerance.Nominal.Area);
            Assert.True(tolerance.Heaviest.Area.SquareMillimeters >= high.SquareMillimeters * (1 - 1e-12) && high > tolerance.Nominal.Area);
        });
        Assert.Contains(tolerance.Source, Sources.All);
        Assert.Contains(tolerance.Standard, tolerance.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30, 3, 1, 1, 0.5, 0.06)]
    [InlineData(50, 5, 1, 1, 0.5, 0.04)]
    [InlineData(60, 6, 2, 2, 0.75, 0.04)]
    [InlineData(120, 12, 3, 3, 1.0, 0.04)]
    [InlineData(200, 16, 4, 4, 1.2, 0.04)]
    [InlineData(250, 28, 4, 6, 1.2, 0.04)]
    public void European_angle(double leg, double thickness, double minus, double plus, double either, double mass)
    {
        MillTolerance tolerance = MillTolerance.En10056(Angle(leg, thickness, thickness, thickness / 2));
        Has(tolerance, StockDimension.Leg, leg - minus, leg + plus);
        Has(tolerance, StockDimension.Thickness, thickness - either, thickness + either);
        Assert.Equal(mass, tolerance.MassTolerance!.Value.DecimalFractions, 1e-12);
    }

    /// <summary>±0.5 mm on a 4 mm leg is about ±12 % of area and second moment (common sense of thin walls).</summary>
    [Fact]
    public void A_thin_leg_at_its_limit_changes_the_section_by_an_eighth()
    {
        MillTolerance tolerance = MillTolerance.En10056(Angle(50, 4, 6, 3));
        SectionProperties nominal = tolerance.Nominal.Orientations[0].Properties;
        SectionProperties thin = tolerance.AtLow(StockDimension.Thickness).Orientations[0].Properties;
        Assert.Equal(-0.12, (thin.Area / nominal.Area) - 1, 0.01);
        Assert.Equal(-0.12, (thin.SecondMomentAboutBendingAxis / nominal.SecondMomentAboutBendingAxis) - 1, 0.01);
    }

    [Theory]
    [InlineData(10, 5, 0.75, 0.5)]
    [InlineData(40, 20, 0.75, 0.5)]
    [InlineData(50, 25, 1.0, 1.0)]
    [InlineData(100, 50, 1.5, 1.5)]
    [InlineData(120, 10, 2.0, 0.5)]
    [InlineData(150, 80, 2.5, 1.5)]
    public void European_flat(double width, double thickness, double ofWidth, double ofThickness)
    {
        MillTolerance tolerance = MillTolerance.En10058(new FlatBar(Mm(width), Mm(thickness)));
        Has(tolerance, StockDimension.Width, width - ofWidth, width + ofWidth);
        Has(tolerance, StockDimension.Thickness, thickness - ofThickness, thickness + ofThickness);
        Assert.Null(tolerance.MassTolerance);
    }

    [Theory]
    [InlineData(8, 0.4)]
    [InlineData(14, 0.4)]
    [InlineData(15, 0.5)]
    [InlineData(30, 0.6)]
    [InlineData(45, 0.8)]
    [InlineData(60, 1.0)]
    [InlineData(100, 1.3)]
    [InlineData(110, 1.5)]
    [InlineData(150, 1.8)]
    public void European_square(double side, double either) =>
        Has(MillTolerance.En10059(new SquareBar(Mm(side))), StockDimension.Side, side - either, side + either);

    [Theory]
    [InlineData(10, 0.4)]
    [InlineData(16, 0.5)]
    [InlineData(30, 0.6)]
    [InlineData(50, 0.8)]
    [InlineData(80, 1.0)]
    [InlineData(100, 1.3)]
    [InlineData(120, 1.5)]
    [InlineData(140, 2.0)]
    [InlineData(200, 2.5)]
    [InlineData(220, 3.0)]
    [InlineData(250, 4.0)]
    public void European_round(double diameter, double either) =>
        Has(MillTolerance.En10060(new RoundBar(Mm(diameter))), StockDimension.Diameter, diameter - either, diameter + either);

    [Theory]
    [InlineData(40, 3, 0.5, 0.3, 1.6, 2.4)]
    [InlineData(90, 5, 0.9, 0.5, 1.6, 2.4)]
    [InlineData(100, 8, 0.8, 0.5, 2.0, 3.0)]
    [InlineData(250, 12, 1.5, 0.5, 2.4, 3.6)]
    public void Cold_formed_square_tube(double side, double wall, double ofSide, double ofWall, double cornerLow, double cornerHigh)
    {
        MillTolerance tolerance = MillTolerance.En10219(new SquareTube(Mm(side), Mm(wall), CornerRadii.ColdFormed(Mm(wall))));
        Has(tolerance, StockDimension.Side, side - ofSide, side + ofSide);
        Has(tolerance, StockDimension.Wall, wall - ofWall, wall + ofWall);
        Assert.Equal(cornerLow * wall, tolerance.OutsideCorner!.Low.Millimeters, 1e-9);
        Assert.Equal(cornerHigh * wall, tolerance.OutsideCorner.High.Millimeters, 1e-9);
        Assert.Equal(6, tolerance.MassTolerance!.Value.Percent, 1e-9);
    }

    /// <summary>Where a standard limits mass and not thickness, the bar at that end has exactly the permitted mass.</summary>
    [Fact]
    public void A_thickness_that_follows_from_the_mass_gives_that_mass()
    {
        MillTolerance tube = MillTolerance.En10210(new SquareTube(Mm(60), Mm(5), CornerRadii.HotFinished(Mm(5))));
        Assert.Equal(4.5, tube.Limits[StockDimension.Wall].Low.Millimeters, 1e-9);
        Assert.Equal(1.06, tube.AtHigh(StockDimension.Wall).Area / tube.Nominal.Area, 1e-12);
        Assert.NotEmpty(tube.Remark);
        MillTolerance angle = MillTolerance.AstmA6(Angle(101.6, 6.35, 9, 3));
        Assert.Equal(0.975, angle.AtLow(StockDimension.Thickness).Area / angle.Nominal.Area, 1e-12);
        Assert.Equal(1.025, angle.AtHigh(StockDimension.Thickness).Area / angle.Nominal.Area, 1e-12);
        Assert.Equal(2.5, angle.MassTolerance!.Value.Percent, 1e-9);
        MillTolerance pipe = MillTolerance.AstmA53(new RoundTube(In(2.375), In(0.154)));
        Assert.Equal(0.875 * 0.154, pipe.Limits[StockDimension.Wall].Low.Inches, 1e-9);
        Assert.Equal(0.99 * 2.375, pipe.Limits[StockDimension.Diameter].Low.Inches, 1e-9);
        Assert.Equal(1.1, pipe.AtHigh(StockDimension.Wall).Area / pipe.Nominal.Area, 1e-12);
    }

    [Theory]
    [InlineData(0.75, 0.125, 0.03125, 0.03125, 0.008)]
    [InlineData(1, 0.25, 0.03125, 0.03125, 0.010)]
    [InlineData(1.5, 0.25, 0.046875, 0.046875, 0.010)]
    [InlineData(2, 0.375, 0.046875, 0.046875, 0.010)]
    [InlineData(2.5, 0.1875, 0.0625, 0.0625, 0.012)]
    [InlineData(2.5, 0.5, 0.0625, 0.0625, 0.015)]
    [InlineData(4, 0.5, 0.09375, 0.125, null)]
    [InlineData(6, 0.5, 0.125, 0.125, null)]
    [InlineData(8, 1, 0.125, 0.1875, null)]
    public void American_angle(double leg, double thickness, double minus, double plus, double? ofThickness)
    {
        MillTolerance tolerance = MillTolerance.AstmA6(new EqualAngle(In(leg), In(thickness), AngleFillets.Sharp));
        Has(tolerance, StockDimension.Leg, (leg - minus) * 25.4, (leg + plus) * 25.4);
        if (ofThickness is { } either)
        {
            Has(tolerance, StockDimension.Thickness, (thickness - either) * 25.4, (thickness + either) * 25.4);
        }
    }

    [Theory]
    [InlineData(2, 0.020)]
    [InlineData(3, 0.025)]
    [InlineData(5, 0.030)]
    [InlineData(8, 0.08)]
    public void American_square_tube(double side, double either)
    {
        MillTolerance tolerance = MillTolerance.AstmA500(new SquareTube(In(side), In(0.25), CornerRadii.Hss(In(0.233))));
        Has(tolerance, StockDimension.Side, (side - either) * 25.4, (side + either) * 25.4);
        Has(tolerance, StockDimension.Wall, 0.225 * 25.4, 0.275 * 25.4);
        Assert.Equal(0.75, tolerance.OutsideCorner!.High.Inches, 1e-9);
    }

    [Fact]
    public void Sizes_outside_a_table_are_refused_by_name()
    {
        Refused("angle", () => MillTolerance.En10056(Angle(300, 30, 20, 10)));
        Refused("angle", () => MillTolerance.En10056(Angle(30, 2, 3, 1)));
        Refused("flat", () => MillTolerance.En10058(new FlatBar(Mm(160), Mm(10))));
        Refused("flat", () => MillTolerance.En10058(new FlatBar(Mm(30), Mm(3))));
        Refused("square", () => MillTolerance.En10059(new SquareBar(Mm(6))));
        Refused("round", () => MillTolerance.En10060(new RoundBar(Mm(260))));
        Refused("tube", () => MillTolerance.En10219(new RoundTube(Mm(508), Mm(10))));
        Refused("tube", () => MillTolerance.En10219(new SquareTube(Mm(15), Mm(1.5), CornerRadii.Sharp)));
        Refused("tube", () => MillTolerance.En10210(new SquareTube(Mm(600), Mm(20), CornerRadii.Sharp)));
        Refused("angle", () => MillTolerance.AstmA6(new EqualAngle(In(1), In(0.4), AngleFillets.Sharp)));
        Refused("tube", () => MillTolerance.AstmA500(new SquareTube(In(40), In(0.5), CornerRadii.Sharp)));
        Refused("pipe", () => MillTolerance.AstmA53(new RoundTube(In(30), In(0.5))));
        Refused("dimension", () => MillTolerance.En10060(new RoundBar(Mm(12))).AtLow(StockDimension.Wall));
    }

    /// <summary>A tube that is nearly solid is none at the thick end of its wall; the tube is refused, not a wall nobody gave.</summary>
    [Fact]
    public void A_tube_without_room_for_its_limits_is_blamed_itself()
    {
        Refused("tube", () => MillTolerance.En10219(new RoundTube(Mm(20), Mm(9.9))));
        Refused("tube", () => MillTolerance.En10219(new SquareTube(Mm(20), Mm(9.5), CornerRadii.Sharp)));
        Refused("tube", () => MillTolerance.En10219(new RectangularTube(Mm(40), Mm(20), Mm(9.8), CornerRadii.Sharp)));
        Refused("tube", () => MillTolerance.En10210(new SquareTube(Mm(40), Mm(19), CornerRadii.Sharp)));
        Refused("pipe", () => MillTolerance.AstmA53(new RoundTube(In(1.05), In(0.44))));
        Refused("pipe", () => MillTolerance.AstmA53(new RoundTube(In(1.05), In(0.52))));
    }

    private static void Refused(string name, Func<object> call) =>
        Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(call).ParamName);

    private static void Has(MillTolerance tolerance, StockDimension dimension, double low, double high)
    {
        LengthRange range = tolerance.Limits[dimension];
        Assert.Equal(low, range.Low.Millimeters, 1e-9);
        Assert.Equal(high, range.High.Millimeters, 1e-9);
    }

    private static EqualAngle Angle(double leg, double thickness, double root, double toe) =>
        new(Mm(leg), Mm(thickness), AngleFillets.Of(Mm(root), Mm(toe)));

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Length In(double value) => Length.FromInches(value);
}
