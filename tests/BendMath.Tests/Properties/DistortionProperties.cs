using BendMath.Distortion;
using BendMath.Distortion.Checks;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>A wider ring, a thicker leg, closer supports never make it worse; nothing depends on the unit of length.</summary>
public sealed class DistortionProperties
{
    private static readonly string[] FallWithRadius =
    [
        "leg to radius", "compressed free edge", "leg angle", "keystoning", "tube radius in diameters", "tube wall thinning",
        "tube ovality", "tube wrinkling", "inside radius of 10 depths", "extreme fiber strain of 5 %",
    ];

    [Property(MaxTest = 60)]
    public Property A_wider_ring_asks_less() =>
        Prop.ForAll(Sold.AnyBend.ToArbitrary(), Sold.Part.Select(part => 1.001 + part).ToArbitrary(), (bend, wider) =>
    {
        DistortionSettings settings = new(rules: [StrainRule.FivePercent, StrainRule.TenThicknesses]);
        DistortionReport tight = DistortionReport.Of(bend.Loaded(), settings);
        DistortionReport wide = DistortionReport.Of((bend with { Depths = bend.Depths * wider }).Loaded(), settings);
        foreach (DistortionFinding finding in tight.Findings.Where(finding => FallWithRadius.Contains(finding.Check)))
        {
            DistortionFinding after = wide.Findings.Single(other => other.Check == finding.Check);
            Assert.True(after.Demand < finding.Demand && after.Level <= finding.Level, $"{finding} then {after}");
        }
    });

    [Property(MaxTest = 60)]
    public Property Demands_do_not_depend_on_the_unit_of_length() =>
        Prop.ForAll(Sold.AnyBend.ToArbitrary(), Gen.Elements(0.1, 25.4).ToArbitrary(), (bend, scale) =>
    {
        DistortionReport Report(double times) =>
            DistortionReport.Of(bend.Loaded(times), new DistortionSettings(new(unsupportedLength: Length.FromMillimeters(300 * times))));
        foreach ((DistortionFinding one,
            DistortionFinding other) in Report(1).Findings.OrderBy(finding => finding.Check)
                .Zip(Report(scale).Findings.OrderBy(finding => finding.Check)))
        {
            Assert.Equal(one.Check, other.Check);
            Near.Relative(one.Demand, other.Demand, 1e-7, one.Check);
            Near.Relative(one.Limit, other.Limit, 1e-7, one.Check);
        }
    });

    [Property(MaxTest = 60)]
    public Property The_demand_of_rolling_over_is_the_distance_in_its_largest() => Prop.ForAll(
        Sold.Bends(Sold.Symmetric, Sold.AnyMetal).ToArbitrary(), Sold.Part.Select(part => Sold.Between(10, 3000, part)).ToArbitrary(),
        (bend, distance) =>
        {
            LoadedBend loaded = bend.Loaded();
            LateralBuckling buckling = LateralBuckling.Of(loaded, DistortionSettings.Default)!;
            Assert.True(
                buckling.LargestSupportDistance <= buckling.DistanceByIncrementalTheory
                    && buckling.LargestSupportDistance <= buckling.DistanceIfElastic);
            if (RollOverCheck.Judge(loaded, new(new(unsupportedLength: Length.FromMillimeters(distance)))).Finding is { } finding)
            {
                Near.Relative(distance / buckling.LargestSupportDistance.Millimeters, finding.Demand, 1e-12);
            }
        });

    [Property(MaxTest = 60)]
    public Property A_thicker_leg_bears_more_and_an_even_strain_is_the_worst() => Prop.ForAll(
        Sold.AnyMetal.ToArbitrary(), Sold.Part.Select(part => 0.03 + 0.3 * part).ToArbitrary(),
        Sold.Part.Select(part => 1 - 1.9 * part).ToArbitrary(), (metal, slenderness, ratio) =>
        {
            StressStrainLaw law = metal.Material().Law;
            double Critical(double thickness, double hinge) =>
                FreeEdgeCheck.Critical(law, thickness, hinge);
            Assert.True(Critical(1.05 * slenderness, ratio) >= Critical(slenderness, ratio), "thickness");
            Assert.True(Critical(slenderness, ratio) >= Critical(slenderness, 1) * (1 - 1e-9), "gradient");
        });
}
