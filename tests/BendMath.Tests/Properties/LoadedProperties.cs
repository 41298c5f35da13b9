using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>Relations of the loaded state and of the moment–curvature curve.</summary>
public sealed class LoadedProperties
{
    /// <summary>
    /// y → h − y turns flange out into flange in and every strain into its opposite. Hence y_n → h − y_n, the same bending moment, the
    /// opposite hold-down moment, the same finished curvature and the opposite dish.
    /// </summary>
    [Property(MaxTest = 300)]
    public Property Flange_in_mirrors_flange_out_at_equal_curvature() =>
        Prop.ForAll(Sold.Bends(Sold.Angles, Sold.AnyMetal).ToArbitrary(), bend =>
    {
        LoadedBend first = bend.Loaded();
        LoadedBend second = (bend with { Bar = bend.Bar with { Lies = 1 - bend.Bar.Lies } }).Analysis().LoadedAt(first.Curvature);
        double depth = first.Analysis.Section.Depth.Meters;
        double moment = first.BendingMoment.NewtonMeters;
        Near.Absolute(depth - first.NeutralAxisFromInside.Meters, second.NeutralAxisFromInside.Meters, 1e-10 * depth, "neutral axis");
        Near.Relative(moment, second.BendingMoment.NewtonMeters, 1e-10, "bending moment");
        Near.Absolute(-first.HoldDownMoment.NewtonMeters, second.HoldDownMoment.NewtonMeters, 1e-10 * moment, "hold-down moment");
        Assert.Equal(bend.Bar.Lies == 0, first.HoldDownMoment.NewtonMeters < 0);
        foreach (Release release in Enum.GetValues<Release>())
        {
            FinishedRing one = first.Release(release).Ring;
            FinishedRing other = second.Release(release).Ring;
            Near.Relative(one.Curvature.InverseMeters, other.Curvature.InverseMeters, 1e-10, "finished curvature");
            Near.Absolute(-one.DishAngle.Radians, other.DishAngle.Radians, 1e-10, "dish angle");
        }
    });

    /// <summary>By symmetry the neutral axis of tube, solid bar and bore is the center, so moments subtract as areas do.</summary>
    [Property(MaxTest = 200)]
    public Property Moment_of_a_tube_is_that_of_the_solid_less_that_of_the_bore() =>
        Prop.ForAll(Sold.Bends(Sold.Tubes, Sold.AnyMetal).ToArbitrary(), bend =>
    {
        LoadedBend tube = bend.Loaded();
        BarMaterial material = tube.Analysis.Material;
        double solid = Round(bend.Bar.Size, material).MomentAt(tube.Curvature).NewtonMeters;
        double bore = Round(bend.Bar.Size - 2 * bend.Bar.Thickness, material).MomentAt(tube.Curvature).NewtonMeters;
        Near.Absolute(solid - bore, tube.BendingMoment.NewtonMeters, 1e-12 * solid, "moment");
    });

    [Property(MaxTest = 300)]
    public Property Moment_never_falls_with_curvature() => Prop.ForAll(Sold.AnyBend.ToArbitrary(), Sold.Part.ToArbitrary(), (bend, part) =>
    {
        LoadedBend loaded = bend.Loaded();
        double less = loaded.Analysis.MomentAt(loaded.Curvature * part).NewtonMeters;
        Assert.True(less <= loaded.BendingMoment.NewtonMeters * (1 + 1e-13),
            FormattableString.Invariant($"{less:R} at {part} of the curvature, then {loaded.BendingMoment.NewtonMeters:R}"));
    });

    /// <summary>
    /// M_b = ∫σ(y − ȳ)dA = ∫σ(y − y_p)dA because N = 0, and |σ| ≤ σ_y: so M_b ≤ σ_y·Z for every section, the unsymmetric ones included.
    /// </summary>
    [Property(MaxTest = 300)]
    public Property Perfectly_plastic_moment_stays_between_first_yield_and_fully_plastic() =>
        Prop.ForAll(Sold.Bends(Sold.Bars, Sold.PerfectlyPlastic).ToArbitrary(), bend =>
    {
        LoadedBend loaded = bend.Loaded();
        double fully = loaded.Analysis.PlasticMoment.NewtonMeters;
        Assert.True(loaded.BendingMoment.NewtonMeters > loaded.Analysis.YieldMoment.NewtonMeters);
        Assert.True(loaded.BendingMoment.NewtonMeters <= fully * (1 + 1e-13),
            FormattableString.Invariant($"{loaded.BendingMoment.NewtonMeters:R} > {fully:R}"));
    });

    /// <summary>
    /// The neutral axis wanders from the centroid (elastic) toward the equal-area axis (fully plastic) and never past either.
    /// </summary>
    [Property(MaxTest = 300)]
    public Property Neutral_axis_lies_between_centroid_and_equal_area_axis() => Prop.ForAll(Sold.AnyBend.ToArbitrary(), bend =>
    {
        LoadedBend loaded = bend.Loaded();
        double depth = loaded.Analysis.Section.Depth.Meters;
        double centroid = loaded.Analysis.Section.Properties.CentroidFromInside.Meters;
        double equal = loaded.Analysis.Section.Properties.EqualAreaAxisFromInside.Meters;
        Assert.InRange(loaded.NeutralAxisFromInside.Meters, Math.Min(centroid, equal) - 1e-12 * depth,
            Math.Max(centroid, equal) + 1e-12 * depth);
    });

    private static BendAnalysis Round(double millimeters, BarMaterial material) =>
        BendAnalysis.Of(new RoundBar(Length.FromMillimeters(millimeters)).Section, material);
}
