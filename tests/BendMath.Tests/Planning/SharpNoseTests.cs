using BendMath.Forming.ThreePoint;
using BendMath.Tests.Conventions;
using UnitsNet;

namespace BendMath.Tests.Planning;

/// <summary>How sharp a nose may be: an edge, or at least the smallest dimension; what is refused blames what the caller gave.</summary>
public sealed class SharpNoseTests
{
    [Theory]
    [InlineData(1e-21)]
    [InlineData(1e-300)]
    [InlineData(9.99e-4)]
    public void A_nose_that_is_almost_an_edge_is_refused_by_its_name(double millimeters)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => new ThreePointSetup(Length.FromMillimeters(100), Length.FromMillimeters(millimeters)));
        Assert.Equal("noseRadius", refused.ParamName);
        Assert.StartsWith("noseRadius must be 0 mm, or between 0.001 mm and", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.001)]
    [InlineData(0.0015)]
    [InlineData(0.1)]
    public void The_sharpest_noses_plan_the_ring_of_an_edge(double millimeters)
    {
        RingPlan edge = PlanOver(0);
        RingPlan plan = PlanOver(millimeters);
        Assert.Equal(edge.Ring!.Prediction.Die.Name, plan.Ring!.Prediction.Die.Name);
        Assert.Equal(edge.Ring.Prediction.Formed!.RingWhen(Release.Free).InsideDiameter.Millimeters,
            plan.Ring.Prediction.Formed!.RingWhen(Release.Free).InsideDiameter.Millimeters, 0.5);
    }

    private static RingPlan PlanOver(double noseMillimeters) => RingPlan.For(ExampleValues.JobFor(
        250, new IncrementalThreePointBending(new(Length.FromMillimeters(100), Length.FromMillimeters(noseMillimeters)))));
}
