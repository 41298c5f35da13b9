using BendMath.Sections.Outlines;
using BendMath.Stock.Standard;
using UnitsNet;

namespace BendMath.Tests.Stock;

/// <summary>What makes two bars equal, and what makes them the same bar. Invented sizes, and those of the catalog.</summary>
public sealed class StockIdentityTests
{
    public static TheoryData<BarStock> All => new(Shapes.All);

    /// <summary>Bars are equal by their dimensions, whatever the unit they were given in.</summary>
    [Fact]
    public void Equal_dimensions_make_equal_bars()
    {
        Assert.Equal(new UnequalAngle(Mm(50), Mm(30), Mm(5), AngleFillets.Sharp),
            new UnequalAngle(Length.FromCentimeters(5), Mm(30), Mm(5), AngleFillets.Of(Mm(0), Mm(0))));
        Assert.NotEqual(new SquareBar(Mm(20)), new SquareBar(Mm(20), Mm(1)));
        Assert.NotEqual(new SquareTube(Mm(40), Mm(3), CornerRadii.Sharp), new SquareTube(Mm(40), Mm(3), Corners(6, 3)));
        Assert.Equal(new Tee(Mm(50), Mm(50), Mm(6), Mm(7), FlangeFillets.Sharp),
            new Tee(Mm(50), Mm(50), Mm(6), Mm(7), FlangeFillets.OfRoot(Mm(0))));
        Assert.NotEqual(new Channel(Mm(80), Mm(45), Mm(6), Mm(8), FlangeFillets.Sharp),
            new Channel(Mm(80), Mm(45), Mm(8), Mm(6), FlangeFillets.Sharp));
        Assert.Equal(new HexagonBar(Mm(17)).GetHashCode(), new HexagonBar(Mm(17)).GetHashCode());
    }

    [Fact]
    public void Corners_by_rule_and_the_same_corners_in_figures_make_equal_tubes()
    {
        Assert.NotEqual(4.8, CornerRadii.HotFinished(Mm(3.2)).Outside.Millimeters);
        Holds(new SquareTube(Mm(40), Mm(3.2), CornerRadii.HotFinished(Mm(3.2))), new SquareTube(Mm(40), Mm(3.2), Corners(4.8, 3.2)));
        Holds(new RectangularTube(Mm(60), Mm(40), Mm(6.3), CornerRadii.ColdFormed(Mm(6.3))),
            new RectangularTube(Mm(60), Mm(40), Mm(6.3), Corners(15.75, 9.45)));
    }

    /// <summary>
    /// Each square and rectangular tube of the catalog against the one whose dimensions somebody types as the table prints them, in
    /// millimeters with six decimals.
    /// </summary>
    [Fact]
    public void Every_tube_of_the_catalog_equals_its_twin_in_figures()
    {
        BarStock[] tubes = [.. StandardSizes.All.Select(size => size.Stock).Where(stock => stock is SquareTube or RectangularTube)];
        Assert.True(tubes.Length >= 71, $"{tubes.Length} tubes");
        Assert.All(tubes, tube => Holds(tube, tube switch
        {
            SquareTube square => new SquareTube(Typed(square.Side), Typed(square.Wall), Figures(square.Corners)),
            RectangularTube other =>
                new RectangularTube(Typed(other.Height), Typed(other.Width), Typed(other.Wall), Figures(other.Corners)),
            _ => throw new InvalidOperationException(),
        }));

        static CornerRadii Figures(CornerRadii corners) => CornerRadii.Of(Typed(corners.Outside), Typed(corners.Inside));
    }

    [Fact]
    public void Inches_and_the_same_millimeters_make_equal_bars()
    {
        foreach (int sixteenths in Enumerable.Range(2, 30))
        {
            double inches = sixteenths / 16.0;
            Length ofInches = Length.FromInches(inches), ofMillimeters = Mm(inches * 25.4), ofFeet = Length.FromFeet(inches / 12);
            foreach (Length same in new[] { ofMillimeters, ofFeet })
            {
                Holds(new RoundBar(ofInches), new RoundBar(same));
                Holds(new FlatBar(ofInches, ofInches / 3), new FlatBar(same, same / 3));
                Holds(new HexagonBar(ofInches), new HexagonBar(same));
                Holds(new EqualAngle(ofInches, ofInches / 8, AngleFillets.FromDesignDistance(ofInches / 6, ofInches / 8)),
                    new EqualAngle(same, same / 8, AngleFillets.FromDesignDistance(same / 6, same / 8)));
            }
        }
    }

    /// <summary>A picometer is the step: what differs by more is another bar, what differs by less is the same one.</summary>
    [Fact]
    public void A_difference_of_two_picometers_is_a_difference()
    {
        Assert.NotEqual(new RoundBar(Length.FromPicometers(16e9)), new RoundBar(Length.FromPicometers(16e9 + 2)));
        Assert.Equal(new RoundBar(Length.FromPicometers(16e9)), new RoundBar(Length.FromPicometers(16e9 + 0.2)));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Bars_of_different_dimensions_or_shapes_differ(BarStock bar)
    {
        BarStock[] equal = [.. Shapes.All.Where(other => other == bar)];
        Assert.Same(bar, Assert.Single(equal));
        Assert.True(bar.Equals((object)bar));
        Assert.False(bar.Equals(null) || bar == null || null == bar);
        Assert.Equal(bar.GetHashCode(), bar.GetHashCode());
    }

    /// <summary>
    /// Equal bars lie the same ways, so a square tube and a rectangular one of even sides are two shapes of one bar; the same of angles and
    /// flats.
    /// </summary>
    [Fact]
    public void Even_sides_are_allowed_everywhere_and_make_the_same_bar_of_another_shape()
    {
        (BarStock Even, BarStock Square)[] pairs =
        [
            (new UnequalAngle(Mm(50), Mm(50), Mm(5), AngleFillets.Of(Mm(7), Mm(3.5))),
                new EqualAngle(Mm(50), Mm(5), AngleFillets.Of(Mm(7), Mm(3.5)))),
            (new FlatBar(Mm(20), Mm(20), Mm(2)), new SquareBar(Mm(20), Mm(2))),
            (new RectangularTube(Mm(40), Mm(40), Mm(3), Corners(6, 3)), new SquareTube(Mm(40), Mm(3), Corners(6, 3))),
        ];
        Assert.All(pairs, pair =>
        {
            Assert.NotEqual(pair.Even, pair.Square);
            Assert.True(pair.Even.IsSameBar(pair.Square, Length.Zero));
            Assert.True(pair.Square.IsSameBar(pair.Even, Length.Zero));
            Assert.True(pair.Even.Orientations[0].IsSameBar(pair.Square.Orientations[0], Length.Zero));
        });
        UnequalAngle even = new(Mm(50), Mm(50), Mm(5), AngleFillets.Sharp);
        Assert.True(even.ShortLegOut.IsSameBar(new EqualAngle(Mm(50), Mm(5), AngleFillets.Sharp).FlangeOut, Length.Zero));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_bar_is_the_same_bar_as_its_own_drawing_however_that_lies(BarStock bar)
    {
        foreach (OrientedSection section in bar.Orientations)
        {
            CustomBar drawn = new("drawing", section.Outline);
            Assert.True(drawn.AsDrawn.IsSameBar(section, Length.Zero), section.ToString());
            Assert.True(section.IsSameBar(drawn.AsDrawn, Length.Zero), section.ToString());
            Assert.True(drawn.IsSameBar(bar, Length.Zero) && bar.IsSameBar(drawn, Length.Zero), section.ToString());
            CustomBar mirrored = new("mirror", new Outline([.. section.Outline.Loops.Select(Mirrored)]));
            Assert.True(mirrored.IsSameBar(bar, Length.Zero), $"{section} end for end");
        }

        Assert.All(Shapes.All.Where(other => other != bar), other => Assert.False(other.IsSameBar(bar, Length.Zero), $"{other} and {bar}"));
    }

    [Fact]
    public void The_tolerance_is_how_far_the_outlines_lie_apart_when_their_middles_lie_on_each_other()
    {
        (BarStock One, BarStock Other, double Apart)[] pairs =
        [
            (new RoundBar(Mm(16)), new RoundBar(Mm(16.4)), 0.2),
            (new RoundTube(Mm(34), Mm(3)), new RoundTube(Mm(34.4), Mm(3.6)), 0.4),
            (new FlatBar(Mm(30), Mm(5)), new FlatBar(Mm(30), Mm(5.3)), 0.15),
            (new EqualAngle(Mm(30), Mm(3), AngleFillets.Sharp), new EqualAngle(Mm(30), Mm(3.5), AngleFillets.Sharp), 0.5 * Math.Sqrt(2)),
        ];
        Assert.All(pairs, pair =>
        {
            Assert.True(pair.One.IsSameBar(pair.Other, Mm(1.01 * pair.Apart)));
            Assert.False(pair.One.Orientations[0].IsSameBar(pair.Other.Orientations[0], Mm(0.99 * pair.Apart)));
            Assert.True(pair.Other.Orientations[0].IsSameBar(pair.One.Orientations[0], Mm(1.01 * pair.Apart)));
        });
        Assert.Throws<ArgumentOutOfRangeException>("tolerance", () => pairs[0].One.IsSameBar(pairs[0].Other, Mm(-1)));
        Assert.Throws<ArgumentNullException>("other", () => pairs[0].One.IsSameBar(null!, Mm(1)));
        Assert.Throws<ArgumentNullException>("other", () => pairs[0].One.Orientations[0].IsSameBar(null!, Mm(1)));
    }

    /// <summary>
    /// A groove of the depth of the tolerance is found from the other side, where no corner of the first bar lies near it.
    /// </summary>
    [Fact]
    public void A_groove_in_the_middle_of_a_side_is_another_bar()
    {
        CustomBar plain = new("a", Polygon((0, 0), (30, 0), (30, 10), (0, 10)));
        CustomBar grooved = new("a", Polygon((0, 0), (30, 0), (30, 10), (16, 10), (16, 9), (14, 9), (14, 10), (0, 10)));
        Assert.False(plain.AsDrawn.IsSameBar(grooved.AsDrawn, Mm(0.9)) || grooved.AsDrawn.IsSameBar(plain.AsDrawn, Mm(0.9)));
        Assert.True(plain.AsDrawn.IsSameBar(grooved.AsDrawn, Mm(1.1)));
        Assert.False(plain.AsDrawn.IsSameBar(Hole().AsDrawn, Mm(1)));

        static CustomBar Hole() =>
            new("a", new Outline([Polygon((0, 0), (30, 0), (30, 10), (0, 10)).Outer, OutlineLoop.Circle(new(Mm(15), Mm(5)), Mm(2))]));
    }

    [Fact]
    public void Drawn_bars_are_equal_by_name_outline_and_torsion_constant()
    {
        CustomBar bar = Trim(10, 5);
        Assert.NotEqual(bar, Trim(40, 20));
        Holds(bar, new CustomBar("edge trim", Polygon((0, 0), (10 / 25.4 * 25.4, 0), (10, 5), (0, 0.1 * 50))));
        Assert.NotEqual(bar, new CustomBar("other trim", bar.Outline));
        Assert.True(bar.IsSameBar(new CustomBar("other trim", bar.Outline), Length.Zero));
        Assert.True(bar.IsSameBar(new FlatBar(Mm(10), Mm(5)), Length.Zero));
        Assert.NotEqual(bar, new CustomBar("edge trim", bar.Outline, AreaMomentOfInertia.FromMillimetersToTheFourth(300)));
        Assert.False(bar.IsSameBar(Trim(40, 20), Length.Zero));
        Assert.Equal("edge trim, drawn 10 × 5 mm, 50 mm²", bar.Description);
    }

    /// <summary>Flange in for flange out, and the drawing turned over; a bar that lies as it lies is not turned over.</summary>
    [Fact]
    public void A_bar_turned_over_shows_its_other_face()
    {
        EqualAngle angle = new(Mm(30), Mm(3), AngleFillets.Of(Mm(5), Mm(2.5)));
        Assert.True(angle.FlangeOut.IsSameBarTurnedOver(angle.FlangeIn, Length.Zero));
        Assert.True(angle.HeelIn.IsSameBarTurnedOver(angle.HeelOut, Length.Zero));
        Assert.False(angle.FlangeOut.IsSameBarTurnedOver(angle.FlangeOut, Length.Zero));
        Assert.True(new FlatBar(Mm(30), Mm(5)).HardWay is var flat && flat.IsSameBarTurnedOver(flat, Length.Zero));
        Assert.Throws<ArgumentNullException>("other", () => flat.IsSameBarTurnedOver(null!, Length.Zero));
    }

    private static void Holds(BarStock one, BarStock other)
    {
        Assert.Equal(one, other);
        Assert.True(one == other && !(one != other));
        Assert.Equal(one.GetHashCode(), other.GetHashCode());
        Assert.True(one.IsSameBar(other, Length.Zero));
        Assert.True(one.Orientations[0].IsSameBar(other.Orientations[0], Length.Zero));
    }

    private static CustomBar Trim(double width, double height) =>
        new("edge trim", Polygon((0, 0), (width, 0), (width, height), (0, height)));

    private static Outline Polygon(params (double X, double Y)[] corners) =>
        new([OutlineLoop.Polygon([.. corners.Select(at => new OutlinePoint(Mm(at.X), Mm(at.Y)))])]);

    private static OutlineLoop Mirrored(OutlineLoop loop) => new([.. loop.Edges.Reverse().Select(edge => edge.IsArc
        ? Math.Abs(edge.Sweep!.Value.Degrees) > 359.9
            ? OutlineEdge.Arc(Mirrored(edge.Center!), edge.Radius!.Value, Angle.Zero, edge.Sweep.Value)
            : OutlineEdge.Arc(Mirrored(edge.End), Mirrored(edge.Start), Mirrored(edge.Center!), edge.Sweep.Value.Radians > 0)
        : OutlineEdge.Line(Mirrored(edge.End), Mirrored(edge.Start)))]);

    private static OutlinePoint Mirrored(OutlinePoint point) => new(-point.X, point.Y);

    private static Length Typed(Length exact) => Mm(Math.Round(exact.Millimeters, 6));

    private static CornerRadii Corners(double outside, double inside) => CornerRadii.Of(Mm(outside), Mm(inside));

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
