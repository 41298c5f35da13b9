using UnitsNet;

namespace BendMath.Tests.Stock;

/// <summary>Dimensions that make no bar are refused by the name of the argument, with the rule, the other size and the value.</summary>
public sealed class ShapeRefusalTests
{
    public static TheoryData<string, string, Func<BarStock>> Impossible => new()
    {
        { "shortLeg", "must not be longer than the long leg, 30 mm", () => new UnequalAngle(Mm(30), Mm(50), Mm(5), AngleFillets.Sharp) },
        { "shortLeg", "must be longer than thickness, root radius and toe radius together, 31 mm",
            () => new UnequalAngle(Mm(50), Mm(30), Mm(20), AngleFillets.Of(Mm(7), Mm(4))) },
        { "fillets", "toe radius not greater than the thickness, 5 mm",
            () => new UnequalAngle(Mm(50), Mm(30), Mm(5), AngleFillets.Of(Mm(7), Mm(6))) },
        { "leg", "must be longer than thickness, root radius and toe radius together, 14.5 mm",
            () => new EqualAngle(Mm(14), Mm(5), AngleFillets.Of(Mm(7), Mm(2.5))) },
        { "longLeg", "must be greater than 0 mm", () => new UnequalAngle(Mm(0), Mm(30), Mm(5), AngleFillets.Sharp) },
        { "wall", "must be smaller than half the side, 20 mm", () => new SquareTube(Mm(40), Mm(20), CornerRadii.Sharp) },
        { "corners", "outside radius not greater than half the side, 20 mm", () => new SquareTube(Mm(40), Mm(3), Corners(21, 17)) },
        { "corners", "inside radius not greater than half the smaller side of the bore, 17 mm",
            () => new SquareTube(Mm(40), Mm(3), Corners(20, 17.5)) },
        { "corners", "else no wall is left in the corners", () => new SquareTube(Mm(40), Mm(3), Corners(11, 0)) },
        { "width", "must not be greater than the height, 40 mm", () => new RectangularTube(Mm(40), Mm(60), Mm(3), CornerRadii.Sharp) },
        { "wall", "must be smaller than half the width, 20 mm", () => new RectangularTube(Mm(60), Mm(40), Mm(25), CornerRadii.Sharp) },
        { "cornerRadius", "must not be greater than half the side, 10 mm", () => new SquareBar(Mm(20), Mm(10.5)) },
        { "cornerRadius", "must not be less than 0 mm", () => new SquareBar(Mm(20), Mm(-1)) },
        { "cornerRadius", "must not be greater than half the thickness, 4 mm", () => new FlatBar(Mm(30), Mm(8), Mm(4.1)) },
        { "thickness", "must not be greater than the width, 30 mm", () => new FlatBar(Mm(30), Mm(31), Mm(1)) },
        { "acrossFlats", "must be greater than 0 mm", () => new HexagonBar(Mm(0)) },
        { "depth", "greater than both flanges and root radii together, 32 mm",
            () => new Channel(Mm(32), Mm(45), Mm(6), Mm(8), FlangeFillets.OfRoot(Mm(8))) },
        { "flangeWidth", "greater than web, root radius and toe radius together, 18 mm",
            () => new Channel(Mm(80), Mm(18), Mm(6), Mm(8), FlangeFillets.Of(Mm(8), Mm(4), Mm(0))) },
        { "fillets", "toe radius not greater than the flange thickness, 8 mm",
            () => new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.Of(Mm(8), Mm(9), Mm(0))) },
        { "fillets", "else no material is left in the corners",
            () => new Channel(Mm(80), Mm(45), Mm(3), Mm(3), FlangeFillets.Of(Mm(0), Mm(0), Mm(11))) },
        { "fillets", "outer radius not greater than half the depth or the flange width, 40 mm",
            () => new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.Of(Mm(0), Mm(0), Mm(41))) },
        { "depth", "greater than flange, root radius and stem corner radius together, 14 mm",
            () => new Tee(Mm(14), Mm(50), Mm(6), Mm(7), FlangeFillets.OfRoot(Mm(7))) },
        { "flangeWidth", "greater than stem, root radii and toe radii together, 20 mm",
            () => new Tee(Mm(50), Mm(20), Mm(6), Mm(7), FlangeFillets.OfRoot(Mm(7))) },
        { "fillets", "toe radius not greater than the flange thickness, 7 mm",
            () => new Tee(Mm(50), Mm(50), Mm(6), Mm(7), FlangeFillets.Of(Mm(7), Mm(7.5), Mm(0))) },
        { "fillets", "outer radius not greater than half the stem thickness, 3 mm",
            () => new Tee(Mm(50), Mm(50), Mm(6), Mm(7), FlangeFillets.Of(Mm(7), Mm(0), Mm(4))) },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_makes_no_bar_is_refused(string name, string rule, Func<BarStock> make)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(make);
        Assert.Equal(name, refused.ParamName);
        Assert.Contains(rule, refused.Message, StringComparison.Ordinal);
        Assert.Contains("but is ", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Fillets_and_corners_must_be_given()
    {
        Assert.Equal("fillets", Assert.Throws<ArgumentNullException>(() => new UnequalAngle(Mm(50), Mm(30), Mm(5), null!)).ParamName);
        Assert.Equal("corners", Assert.Throws<ArgumentNullException>(() => new SquareTube(Mm(40), Mm(3), null!)).ParamName);
        Assert.Equal("corners", Assert.Throws<ArgumentNullException>(() => new RectangularTube(Mm(60), Mm(40), Mm(3), null!)).ParamName);
        Assert.Equal("fillets", Assert.Throws<ArgumentNullException>(() => new Channel(Mm(80), Mm(45), Mm(6), Mm(8), null!)).ParamName);
        Assert.Equal("fillets", Assert.Throws<ArgumentNullException>(() => new Tee(Mm(50), Mm(50), Mm(6), Mm(7), null!)).ParamName);
    }

    /// <summary>
    /// The longest leg there may be: two thin rectangles at right angles, Z/S = 1.8 with the flange out, and 3/2, a rectangle's, on the
    /// bisector.
    /// </summary>
    [Theory]
    [InlineData(5, 2.5)]
    [InlineData(3.5, 2)]
    [InlineData(0, 0)]
    [InlineData(0, 3)]
    public void The_longest_angle_has_figures(double root, double toe)
    {
        EqualAngle angle = new(Length.FromMeters(1e6), Mm(3), AngleFillets.Of(Mm(root), Mm(toe)));
        Assert.Equal([1.8, 1.8, 1.5, 1.5], angle.Orientations.Select(section => Math.Round(section.Properties.ShapeFactor, 5)));
    }

    private static CornerRadii Corners(double outside, double inside) => CornerRadii.Of(Mm(outside), Mm(inside));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
