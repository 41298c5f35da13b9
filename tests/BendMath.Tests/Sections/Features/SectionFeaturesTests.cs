using BendMath.Sections.Features;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Sections.Features;

public sealed class SectionFeaturesTests
{
    private static readonly SectionFeatures Rim = Workshop.Rim.Features;

    [Fact]
    public void Features_of_two_bars_of_one_size_are_equal()
    {
        SectionFeatures again = Angle(30).FlangeOut.Features;
        Assert.Equal(Rim, again);
        Assert.Equal(Rim.GetHashCode(), again.GetHashCode());
    }

    [Fact]
    public void Another_size_or_a_free_edge_elsewhere_makes_a_difference()
    {
        Assert.NotEqual(Rim, Angle(35).FlangeOut.Features);
        Assert.NotEqual(Rim, Angle(30).FlangeIn.Features);
    }

    private static EqualAngle Angle(double leg) => new(
        Length.FromMillimeters(leg), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
}
