using BendMath.Json.Parts;
using BendMath.Json.Writing;
using BendMath.Lengths;

namespace BendMath.Tests.Json;

/// <summary>
/// What is written reads back as the same double, whatever its digits: 5,000 seeded numbers over all magnitudes a length may have.
/// </summary>
public sealed class ExactTextTests
{
    private static IEnumerable<double> Numbers(double least, double most)
    {
        Random random = new(11);
        return Enumerable.Range(0, 5000).Select(_ => least * Math.Pow(most / least, random.NextDouble()));
    }

    [Fact]
    public void Lengths_come_back() =>
        Assert.All(Numbers(1e-6, 1e6), meters => Assert.Equal(meters, LengthText.Parse(ExactText.Millimeters(meters)).Meters));

    [Fact]
    public void Stresses_percentages_and_angles_come_back()
    {
        Assert.All(Numbers(1, 1e13), pascals => Assert.Equal(pascals, Read(UnitText.Pressures, ExactText.Megapascals(pascals))));
        Assert.All(Numbers(1e-5, 10), share => Assert.Equal(share, Read(UnitText.Percents, ExactText.Percent(share))));
        Assert.All(Numbers(1e-3, 20), radians => Assert.Equal(radians, Read(UnitText.Angles, ExactText.Angle(radians))));
    }

    /// <summary>The point moves, the digits stay.</summary>
    [Theory]
    [InlineData(0.3, 3, "300")]
    [InlineData(0.0254, 3, "25.4")]
    [InlineData(1e-6, 3, "0.001")]
    [InlineData(1.5e21, -6, "1500000000000000")]
    [InlineData(290e6, -6, "290")]
    [InlineData(5, -6, "0.000005")]
    [InlineData(0, 3, "0")]
    public void Digits_are_those_of_the_number(double value, int places, string text) =>
        Assert.Equal(text, ExactText.Shifted(value, places));

    [Fact]
    public void A_full_turn_is_written_in_degrees() => Assert.Equal("360 deg", ExactText.Angle(2 * Math.PI));

    private static double Read(UnitText units, string text)
    {
        Assert.Null(units.Read(text, out double value));
        Assert.DoesNotContain("E", text, StringComparison.Ordinal);
        return value;
    }
}
