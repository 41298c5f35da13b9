using UnitsNet;

namespace BendMath.Tests.Stock;

public sealed class OrientationTests
{
    public static TheoryData<BarStock> All => new(Shapes.All);

    [Theory]
    [MemberData(nameof(All))]
    public void Every_way_a_bar_lies_is_found_by_its_orientation_and_is_its_own(BarStock bar)
    {
        Assert.All(bar.Orientations, section => Assert.Same(section, bar.Lying(section.Orientation)));
        Assert.All(bar.Orientations, section => Assert.Same(bar, section.Stock));
        Assert.Equal(bar.Orientations.Count, bar.Orientations.Select(section => section.Orientation).Distinct().Count());
        Assert.Equal(bar.Orientations.Count,
            bar.Orientations.Select(section => section.ToString()).Distinct(StringComparer.Ordinal).Count());
        Assert.Null(bar.Lying(Orientation.AsDrawn));
        Assert.Throws<ArgumentNullException>("orientation", () => bar.Lying(null!));
    }

    /// <summary>The hard way of a flat is that of a tube; that of another bar of the same shape is the same whatever its size.</summary>
    [Fact]
    public void An_orientation_means_the_same_for_every_bar()
    {
        FlatBar flat = new(Mm(30), Mm(8));
        Assert.Equal(flat.HardWay.Orientation, new RectangularTube(Mm(60), Mm(40), Mm(3), CornerRadii.Sharp).HardWay.Orientation);
        Assert.NotEqual(flat.HardWay.Orientation, flat.EasyWay.Orientation);
        Assert.True(Orientation.Usual.IsUsual && new RoundBar(Mm(10)).Section.Orientation == Orientation.Usual);
        Assert.False(Orientation.FlangeOut.IsUsual || Orientation.FlangeOut == null);
        Assert.Empty(Orientation.Usual.ToString());
        Assert.Equal("long leg radial, flange out", Orientation.LongLegFlangeOut.ToString());
        Assert.Null(Orientation.FlangeOut.Turn);
    }

    [Theory]
    [InlineData(30, 390)]
    [InlineData(-90, 270)]
    [InlineData(-30, 330)]
    [InlineData(0, 360)]
    [InlineData(0, -720)]
    [InlineData(30, 30.0000000000001)]
    public void Turns_that_lay_a_drawing_alike_are_equal(double one, double other)
    {
        Orientation first = Orientation.TurnedBy(Angle.FromDegrees(one)),
            second = Orientation.TurnedBy(Angle.FromRadians(other * Math.PI / 180));
        Assert.Equal(first, second);
        Assert.Equal(first.GetHashCode(), second.GetHashCode());
        Assert.Equal(first.ToString(), second.ToString());
        Assert.InRange(first.Turn!.Value.Degrees, 0, 359.999);
        CustomBar bar = new("bar", new RoundBar(Mm(10)).Section.Outline);
        Assert.Equal(first, bar.Lying(second)!.Orientation);
        Assert.Null(bar.Lying(Orientation.FlangeOut));
    }

    [Fact]
    public void Turns_that_lay_it_differently_differ()
    {
        Assert.NotEqual(Orientation.TurnedBy(Angle.FromDegrees(30)), Orientation.TurnedBy(Angle.FromDegrees(31)));
        Assert.Equal("turned by 30°", Orientation.TurnedBy(Angle.FromDegrees(30)).ToString());
        Assert.Equal("as drawn", Orientation.TurnedBy(Angle.FromDegrees(360)).ToString());
    }

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
