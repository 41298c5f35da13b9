using BendMath.Measurement;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Measurement;

public sealed class ChordAndRiseTests
{
    /// <summary>Half-chord 4, radius 5, distance from center to chord 3 (Euclid, Elements III.35): rise 2.</summary>
    [Fact]
    public void The_3_4_5_triangle()
    {
        Assert.Equal(5, ChordAndRise.RadiusOf(Length.FromInches(8), Length.FromInches(2)).Inches, 1e-12);
        Assert.Equal(2, ChordAndRise.RiseFor(Length.FromInches(5), Length.FromInches(8)).Inches, 1e-12);
    }

    /// <summary>The chord may be all of the diameter; then the rise is the radius.</summary>
    [Fact]
    public void A_diameter_rises_by_the_radius() =>
        Assert.Equal(250, ChordAndRise.RiseFor(Length.FromMillimeters(250), Length.FromMillimeters(500)).Millimeters, 1e-9);

    [Property(MaxTest = 500)]
    public Property Radius_from_the_rise_of_a_radius_is_that_radius() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(0.02, 20, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(0.05, 2, part)).ToArbitrary(), (radius, share) =>
        {
            Length chord = Length.FromMeters(radius * share);
            Near.Relative(radius, ChordAndRise.RadiusOf(chord, ChordAndRise.RiseFor(Length.FromMeters(radius), chord)).Meters, 1e-12,
                "radius");
        });

    [Fact]
    public void Unlawful_lengths_are_refused_by_name()
    {
        Assert.Throws<ArgumentOutOfRangeException>("chord",
            () => ChordAndRise.RiseFor(Length.FromMillimeters(250), Length.FromMillimeters(501)));
        Assert.Throws<ArgumentOutOfRangeException>("rise", () => ChordAndRise.RadiusOf(Length.FromMillimeters(250), Length.Zero));
    }
}
