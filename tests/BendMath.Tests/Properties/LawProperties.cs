using BendMath.Tests.Fibers;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>A bend of a sold bar whose metal has no straight lines: the power law or Ramberg–Osgood.</summary>
internal sealed record CurvedLawBend(SoldBar Bar, StressStrainLaw Law, double Depths)
{
    public BendAnalysis Analysis(double scale = 1) =>
        BendAnalysis.Of(Bar.Section(scale), new BarMaterial("metal", Law, Density.FromKilogramsPerCubicMeter(7850)));

    public LoadedBend Loaded(double scale = 1)
    {
        BendAnalysis analysis = Analysis(scale);
        return analysis.LoadedTo(BendRadius.Inside(Depths * analysis.Section.Depth));
    }
}

/// <summary>The relations of the bending core for the laws that are curves; those of straight lines stand beside.</summary>
public sealed class LawProperties
{
    private static Gen<StressStrainLaw> Laws { get; } = Gen.OneOf(
        from n in Sold.Part
        from strength in Sold.Part
        select (StressStrainLaw)new PowerHardening(Pressure.FromGigapascals(205),
            Pressure.FromMegapascals(Sold.Between(400, 1200, strength)), 0.05 + (0.35 * n)),
        from n in Sold.Part
        from proof in Sold.Part
        select (StressStrainLaw)new RambergOsgood(Pressure.FromGigapascals(70), Pressure.FromMegapascals(Sold.Between(100, 350, proof)),
            Sold.Between(3, 40, n)));

    private static Gen<CurvedLawBend> Bends { get; } =
        from bar in Sold.Bars
        from law in Laws
        from part in Sold.Part
        select new CurvedLawBend(bar, law,
            Sold.Between(3, Math.Max(6, Math.Min(300, 0.5 * Sold.FarFace(bar) / (law.YieldStress / law.ElasticModulus))), part));

    [Property(MaxTest = 150)]
    public Property Moment_never_falls_and_never_exceeds_the_elastic_one() =>
        Prop.ForAll(Bends.ToArbitrary(), Sold.Part.ToArbitrary(), (bend, part) =>
    {
        LoadedBend loaded = bend.Loaded();
        SectionProperties section = loaded.Analysis.Section.Properties;
        double less = loaded.Analysis.MomentAt(loaded.Curvature * part).NewtonMeters;
        double elastic =
            bend.Law.ElasticModulus.Pascals * section.SecondMomentAboutBendingAxis.MetersToTheFourth * loaded.Curvature.InverseMeters;
        Assert.True(less <= loaded.BendingMoment.NewtonMeters * (1 + 1e-13));
        Assert.True(loaded.BendingMoment.NewtonMeters < elastic);
        Assert.True(loaded.TangentBendingStiffness >= 0);
    });

    [Property(MaxTest = 150)]
    public Property Release_after_load_inverts() => Prop.ForAll(Bends.ToArbitrary(), Sold.Releases.ToArbitrary(), (bend, release) =>
    {
        LoadedBend loaded = bend.Loaded();
        FinishedRing ring = loaded.Release(release).Ring;
        LoadedBend found = loaded.Analysis.LoadedFor(BendRadius.Inside(ring.InsideRadius), release);
        double spread = ring.InsideRadius / loaded.InsideRadius;
        Assert.True(spread > 1);
        Near.Relative(ring.InsideRadius.Meters, found.Release(release).Ring.InsideRadius.Meters, 1e-10 * spread * spread,
            "finished radius");
    });

    [Property(MaxTest = 150)]
    public Property More_yield_springs_back_more() =>
        Prop.ForAll(Bends.ToArbitrary(), Sold.Part.Select(part => 1.01 + (0.3 * part)).ToArbitrary(), Sold.Releases.ToArbitrary(),
        (bend, factor, release) =>
    {
        FinishedRing ring = bend.Loaded().Release(release).Ring;
        ReleasedBend stronger = (bend with { Law = bend.Law.WithYield(bend.Law.YieldStress * factor) }).Loaded().Release(release);
        Assert.True(stronger.IsStraight || stronger.Ring.InsideRadius > ring.InsideRadius);
    });

    [Property(MaxTest = 100)]
    public Property Flange_in_mirrors_flange_out() => Prop.ForAll(Bends.Where(bend => bend.Bar.Kind == "angle").ToArbitrary(), bend =>
    {
        LoadedBend first = bend.Loaded();
        LoadedBend second = (bend with { Bar = bend.Bar with { Lies = 1 - bend.Bar.Lies } }).Analysis().LoadedAt(first.Curvature);
        double depth = first.Analysis.Section.Depth.Meters;
        double moment = first.BendingMoment.NewtonMeters;
        Near.Absolute(depth - first.NeutralAxisFromInside.Meters, second.NeutralAxisFromInside.Meters, 1e-10 * depth, "neutral axis");
        Near.Relative(moment, second.BendingMoment.NewtonMeters, 1e-10, "bending moment");
        Near.Absolute(-first.HoldDownMoment.NewtonMeters, second.HoldDownMoment.NewtonMeters, 1e-10 * moment, "hold-down moment");
        Near.Absolute(-first.Release(Release.Free).Ring.DishAngle.Radians, second.Release(Release.Free).Ring.DishAngle.Radians, 1e-9,
            "dish angle");
    });

    [Property(MaxTest = 100)]
    public Property Scaling_all_lengths_scales_every_result() =>
        Prop.ForAll(Bends.ToArbitrary(), Sold.Part.Select(part => Sold.Between(0.02, 50, part)).ToArbitrary(), (bend, s) =>
    {
        LoadedBend one = bend.Loaded();
        LoadedBend scaled = bend.Loaded(s);
        Near.Relative(s * one.NeutralAxisFromInside.Meters, scaled.NeutralAxisFromInside.Meters, 1e-10, "neutral axis");
        Near.Relative(s * s * s * one.BendingMoment.NewtonMeters, scaled.BendingMoment.NewtonMeters, 1e-10, "moment");
        FinishedRing ring = one.Release(Release.Free).Ring;
        FinishedRing larger = scaled.Release(Release.Free).Ring;
        Near.Relative(s * ring.InsideRadius.Meters, larger.InsideRadius.Meters, 1e-9 * (ring.InsideRadius / one.InsideRadius),
            "finished radius");
        Near.Absolute(ring.DishAngle.Radians, larger.DishAngle.Radians, 1e-9, "dish angle");
    });

    /// <summary>
    /// Every shape, rolled angles, bars and tubes included, summed over fibers laid out by the tests, finely about the knee of the law:
    /// free of N, M_b and M_r, held flat of N and M_b while M_r − (I_br/I_b)·M_b stays.
    /// </summary>
    [Property(MaxTest = 60)]
    public Property Residual_stress_is_in_equilibrium_in_every_shape() => Prop.ForAll(
        Gen.OneOf(Bends.Select(bend => (bend.Bar, Loaded: bend.Loaded())), Sold.AnyBend.Select(bend => (bend.Bar, Loaded: bend.Loaded())))
            .ToArbitrary(),
        Sold.Releases.ToArbitrary(),
        (bend, release) =>
        {
            LoadedBend loaded = bend.Loaded;
            ReleasedBend released = loaded.Release(release);
            SectionProperties section = loaded.Analysis.Section.Properties;
            double axis = loaded.NeutralAxisFromInside.Meters;
            double core = loaded.Analysis.Law.YieldStress / loaded.Analysis.Law.ElasticModulus / loaded.Curvature.InverseMeters;
            double[] cores =
                [0, 0.2, 0.4, .. Enumerable.Range(5, 16).Select(i => i / 10.0), 3, .. Enumerable.Range(2, 13).Select(i => Math.Pow(2, i))];
            double[] levels = [.. cores.SelectMany(share => new[] { axis - (share * core), axis + (share * core) }).Distinct()];
            double force = 0;
            double bending = 0;
            double radial = 0;
            foreach (Fiber fiber in FiberMesh.Of(bend.Bar, levels, 1, 1))
            {
                double pull = fiber.Area * released.ResidualStressAt(Length.FromMeters(fiber.Y), Length.FromMeters(fiber.Z)).Pascals;
                force += pull;
                bending += pull * (fiber.Y - section.CentroidFromInside.Meters);
                radial += pull * (fiber.Z - section.CentroidAxial.Meters);
            }

            double scale = loaded.Analysis.Law.YieldStress.Pascals * section.Area.SquareMeters;
            double stays = release == Release.Free
                ? 0
                : loaded.HoldDownMoment.NewtonMeters
                    - (loaded.BendingMoment.NewtonMeters * (section.ProductOfInertia / section.SecondMomentAboutBendingAxis));
            Near.Absolute(0, force, 1e-9 * scale, "axial force");
            Near.Absolute(0, bending, 1e-9 * scale * section.Depth.Meters, "bending moment");
            Near.Absolute(stays, radial, 1e-9 * scale * section.Width.Meters, "moment about the radial axis");
        });
}
