using UnitsNet;

namespace BendMath.Tests.Layout;

public sealed class ArcExtentTests
{
    [Fact]
    public void A_turn_of_360_degrees_closes_the_ring()
    {
        Assert.True(ArcExtent.FullRing.IsFullRing);
        Assert.True(ArcExtent.Of(Angle.FromDegrees(360)).IsFullRing);
        Assert.True(ArcExtent.Of(Angle.FromRevolutions(1)).IsFullRing);
        Assert.False(ArcExtent.Of(Angle.FromDegrees(359.9)).IsFullRing);
        Assert.Equal(360, ArcExtent.FullRing.Turn.Degrees, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-90)]
    [InlineData(360.001)]
    public void Other_turns_are_refused(double degrees) =>
        Assert.Throws<ArgumentOutOfRangeException>("turn", () => ArcExtent.Of(Angle.FromDegrees(degrees)));

    [Fact]
    public void It_prints_as_a_ring_or_in_degrees()
    {
        Assert.Equal("full ring", ArcExtent.FullRing.ToString());
        Assert.Equal("arc of 92.5°", ArcExtent.Of(Angle.FromDegrees(92.5)).ToString());
    }
}
