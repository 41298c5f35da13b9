using BendMath.Bending.Guides;
using UnitsNet;
using static BendMath.Tests.Bending.GuideTests;

namespace BendMath.Tests.Bending.Guides;

/// <summary>
/// The stiffness of a guide from a ring that was computed with it, and the slopes at that ring against differences of whole calculations.
/// </summary>
public sealed class GuideEstimateTests
{
    private static readonly LinearHardening Linear =
        new(Pressure.FromGigapascals(200), Pressure.FromMegapascals(310), Pressure.FromMegapascals(1500));

    [Theory]
    [InlineData(0.01)]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(3)]
    public void Dish_and_pressed_flat_radius_give_the_stiffness_back(double ratio)
    {
        BendAnalysis analysis = Angle(Linear);
        OutOfPlaneGuide guide = Guide(analysis, ratio);
        LoadedBend loaded = analysis.LoadedTo(Radius(127), guide);
        Angle dish = loaded.Release(Release.Free).Ring.DishAngle;
        BendRadius flat = BendRadius.Inside(loaded.Release(Release.HeldFlat).Ring.InsideRadius);
        Near.Relative(guide.NewtonSquareMeters,
            GuideEstimate.FromDish(analysis, Radius(127), dish, UnitsNet.Angle.Zero).Only!.NewtonSquareMeters, 1e-9);
        Near.Relative(guide.NewtonSquareMeters,
            GuideEstimate.FromPressedFlat(analysis, Radius(127), flat, Length.Zero).Only!.NewtonSquareMeters, 1e-9);
        GuideEstimate wide = GuideEstimate.FromDish(analysis, Radius(127), dish, UnitsNet.Angle.FromDegrees(0.3));
        GuideRange range = Assert.Single(wide.Ranges);
        Assert.InRange(guide.NewtonSquareMeters, range.Softest.NewtonSquareMeters,
            range.Stiffest.IsRigid ? double.PositiveInfinity : range.Stiffest.NewtonSquareMeters);
        Assert.True(wide.AgreesWith(GuideEstimate.FromPressedFlat(analysis, Radius(127), flat, Length.FromMillimeters(0.2))));
    }

    /// <summary>
    /// The free radius rises before it falls: near the held one it only says "at least", above it two guides explain it, below all of
    /// them none.
    /// </summary>
    [Fact]
    public void Free_radius_alone_gives_an_interval_or_several_values()
    {
        BendAnalysis analysis = Angle(Linear);
        GuideRange least = Assert.Single(Free(131.19, 0.3).Ranges);
        Assert.True(least.Stiffest.IsRigid);
        Assert.InRange(least.Softest.RatioFor(analysis), 0.1, 0.3);
        GuideEstimate two = Free(131.205, 0);
        Assert.Equal(2, two.Ranges.Count);
        Assert.Null(two.Only);
        Assert.Empty(Free(114, 1).Ranges);
        Assert.Contains("No guide", Free(114, 1).ToString(), StringComparison.Ordinal);
        Assert.False(
            Free(114, 1)
                .AgreesWith(
                    GuideEstimate.FromDish(analysis, Radius(127), UnitsNet.Angle.FromDegrees(10), UnitsNet.Angle.FromDegrees(0.6))));
        Assert.Empty(GuideEstimate.FromDish(analysis, Radius(127), UnitsNet.Angle.FromDegrees(40), UnitsNet.Angle.FromDegrees(0.3)).Ranges);

        GuideEstimate Free(double radius, double error) =>
            GuideEstimate.FromFreeRadius(analysis, Radius(127), Radius(radius), Length.FromMillimeters(error));
    }

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1)]
    [InlineData(0.1)]
    [InlineData(0.01)]
    public void Slopes_are_those_of_whole_calculations(double ratio)
    {
        BendAnalysis analysis = Angle(Linear);
        OutOfPlaneGuide guide = Guide(analysis, ratio);
        foreach (Release release in new[] { Release.Free, Release.HeldFlat })
        {
            RingSensitivity slopes = RingSensitivity.Of(analysis.LoadedTo(Radius(127), guide).Release(release), guide);
            Check("radius", slopes.PerLoadedRadius, slopes.DishPerMillimeterOfRadius!.Value.Degrees, step => (127 + step, 310, ratio), 0.01,
                1);
            Check("yield", slopes.PerMegapascalOfYield.Millimeters, slopes.DishPerMegapascalOfYield!.Value.Degrees,
                step => (127, 310 + step, ratio), 0.1, 1);
            if (!double.IsInfinity(ratio))
            {
                Check("stiffness", slopes.PerHundredthOfStiffness!.Value.Millimeters, slopes.DishPerHundredthOfStiffness!.Value.Degrees,
                    step => (127, 310, ratio + step), 1e-3 * ratio, 0.01);
            }

            void Check(string what, double inside, double dish, Func<double, (double Radius, double Yield, double Ratio)> with, double step,
                double unit)
            {
                (double R, double Dish) far = At(2), near = At(1), back = At(-1), farBack = At(-2);
                Near.Absolute(Slope(far.R, near.R, back.R, farBack.R), inside, 2e-8, $"{what}, {release}, radius");
                Near.Absolute(Slope(far.Dish, near.Dish, back.Dish, farBack.Dish), dish, 2e-8, $"{what}, {release}, dish");

                double Slope(double a, double b, double c, double d) => unit * ((8 * (b - c)) - (a - d)) / (12 * step);

                (double R, double Dish) At(int steps)
                {
                    (double radius, double yield, double stiffness) = with(steps * step);
                    BendAnalysis other =
                        Angle(
                            new LinearHardening(Pressure.FromGigapascals(200), Pressure.FromMegapascals(yield),
                                Pressure.FromMegapascals(1500)));
                    FinishedRing ring = other.LoadedTo(Radius(radius), Guide(other, stiffness)).Release(release).Ring;
                    return (ring.InsideRadius.Millimeters, ring.DishAngle.Degrees);
                }
            }
        }
    }

    [Fact]
    public void Slopes_of_another_guide_are_refused()
    {
        BendAnalysis analysis = Angle(Linear);
        ReleasedBend released = analysis.LoadedTo(Radius(127), Guide(analysis, 1)).Release(Release.Free);
        Assert.Throws<ArgumentException>(() => RingSensitivity.Of(released, Guide(analysis, 0.1)));
    }
}
