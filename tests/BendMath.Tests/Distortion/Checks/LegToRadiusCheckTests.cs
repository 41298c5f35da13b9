using BendMath.Distortion;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Distortion.Checks;

public sealed class LegToRadiusCheckTests
{
    /// <summary>
    /// Common practice, no source: a leg of 0.15 of the inside radius, 3/4 in at 5 in, usually bends clean: exactly at a bound counts as
    /// inside, in either unit.
    /// </summary>
    [Fact]
    public void A_leg_at_a_bound_counts_as_inside()
    {
        Assert.Equal(RiskLevel.Low, DistortionSettings.Default.LegToRadius(Length.FromInches(0.75), Length.FromInches(5)).Level);
        Assert.Equal(RiskLevel.Low,
            DistortionSettings.Default.LegToRadius(Length.FromMillimeters(19.05), Length.FromMillimeters(127)).Level);
        Assert.Equal(RiskLevel.Low,
            DistortionReport.Of(SmallAngle.Hardening.LoadedTo(BendRadius.Inside(Length.FromInches(5))))
                .Find(DistortionCheck.LegToRadius)!.Level);
        Assert.Equal(RiskLevel.Medium, DistortionSettings.Default.LegToRadius(Length.FromInches(0.75), Length.FromInches(4.999)).Level);
        Assert.Equal(RiskLevel.Medium, DistortionSettings.Default.LegToRadius(Length.FromInches(0.75), Length.FromInches(3)).Level);
        Assert.Equal(RiskLevel.High, DistortionSettings.Default.LegToRadius(Length.FromInches(0.75), Length.FromInches(2.999)).Level);
    }
}
