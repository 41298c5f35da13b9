using BendMath.Bending.Unloading;
using BendMath.Materials.Unloading;
using BendMath.Numerics.Integrals;
using BendMath.Tests.Fibers;
using BendMath.Tests.Properties;
using UnitsNet;

namespace BendMath.Tests.Bending;

public sealed class MemoryReleaseTests
{
    private static readonly ChordModulus Falling = new(Ratio.FromPercent(80), 50);

    /// <summary>
    /// The rule of the back stress, dX = γ(X_sat·de_p − X·dp), and of yielding integrated in many small steps by the classical
    /// fourth-order rule, forward, back and forward again.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(60e6)]
    [InlineData(-30e6)]
    public void A_fiber_follows_the_rates_of_its_law(double range)
    {
        BackStress metal = new(200e9, 120e6, 190e6, 90, 1500e6, range, 8);
        FiberState fiber = metal.Untouched;
        (double stress, double back, double flow) = (0, 0, 0);
        double strain = 0;
        foreach (double next in new[] { 0.02, 0.012, 0.03, -0.01 })
        {
            int side = next > strain ? 1 : -1;
            fiber = metal.Advance(fiber, next);
            double elastic = (side * Radius(flow)) + back - stress;
            strain += elastic / 200e9;
            stress += elastic;
            const int Steps = 4000;
            double step = (next - strain) / Steps;
            for (int i = 0; i < Steps; i++)
            {
                (double b1, double f1) = Rates(back, flow);
                (double b2, double f2) = Rates(back + (step / 2 * b1), flow + (step / 2 * f1));
                (double b3, double f3) = Rates(back + (step / 2 * b2), flow + (step / 2 * f2));
                (double b4, double f4) = Rates(back + (step * b3), flow + (step * f3));
                back += step / 6 * (b1 + (2 * b2) + (2 * b3) + b4);
                flow += step / 6 * (f1 + (2 * f2) + (2 * f3) + f4);
            }

            strain = next;
            stress = back + (side * Radius(flow));
            Near.Relative(stress, fiber.Stress, 1e-9, $"stress at {next}");
            Near.Relative(back, fiber.Back, 1e-9, $"back stress at {next}");
            Near.Relative(flow, fiber.Flow, 1e-9, $"flow at {next}");

            (double Back, double Flow) Rates(double x, double p)
            {
                double slope = (90 * (190e6 - (side * x))) + 1500e6 + (range * 8 * Math.Exp(-8 * p));
                double rate = 200e9 / (200e9 + slope);
                return (90 * ((190e6 * rate) - (side * x * rate)), side * rate);
            }
        }

        double Radius(double p) => 120e6 + (1500e6 * p) + (range * (1 - Math.Exp(-8 * p)));
    }

    /// <summary>No back stress and an elastic range that is not left: the elastic release.</summary>
    [Fact]
    public void Without_back_stress_a_rectangle_is_let_go_elastically()
    {
        foreach (double radius in new[] { 40.0, 150, 600 })
        {
            LoadedBend loaded =
                Bar("flat", new KinematicHardening(E, Mpa(300), Mpa(0), 100, Mpa(1500), Mpa(0), 1)).LoadedTo(Radius(radius));
            Near.Relative(loaded.Release(Release.Free).Ring.InsideRadius.Meters,
                loaded.Release(Release.Free, UnloadingRule.WithMemory).Ring.InsideRadius.Meters, 1e-12);
        }
    }

    /// <summary>In angles fibers between neutral and centroid yield further in their old direction: about 1e-4 of the radius.</summary>
    [Fact]
    public void Without_back_stress_an_angle_is_let_go_nearly_elastically()
    {
        LoadedBend loaded = Bar("sharp", new KinematicHardening(E, Mpa(300), Mpa(0), 100, Mpa(1500), Mpa(0), 1)).LoadedTo(Radius(300));
        double apart =
            (loaded.Release(Release.Free, UnloadingRule.WithMemory).Ring.InsideRadius / loaded.Release(Release.Free).Ring.InsideRadius) - 1;
        Assert.InRange(Math.Abs(apart), 1e-6, 3e-4);
    }

    /// <summary>
    /// γ → 0 with C = E·E_t/(E − E_t) kept is linear kinematic hardening, whose first loading is the straight line of slope E_t; the rest
    /// is of the order of γ.
    /// </summary>
    [Theory]
    [InlineData("flat")]
    [InlineData("sharp")]
    public void A_back_stress_that_never_saturates_hardens_along_a_line(string name)
    {
        LoadedBend line = Bar(name, new LinearHardening(E, Mpa(300), Mpa(1500))).LoadedTo(Radius(300));
        double before = 0;
        foreach (double rate in new[] { 1e-2, 1e-3, 1e-4 })
        {
            LoadedBend loaded = Bar(name, Linear(rate)).LoadedTo(Radius(300));
            double apart = 1 - (loaded.BendingMoment / line.BendingMoment);
            Assert.InRange(apart, 1e-9, 0.01 * rate);
            if (before > 0)
            {
                Near.Relative(10, before / apart, 0.01, "order in γ");
            }

            before = apart;
        }
    }

    /// <summary>
    /// Linear kinematic hardening, bent, let go, bent tighter, let go, against a bar of fibers that shares nothing with the library; its
    /// mesh is good to about 1e-5.
    /// </summary>
    [Theory]
    [InlineData("flat", Release.Free)]
    [InlineData("sharp", Release.Free)]
    [InlineData("sharp", Release.HeldFlat)]
    [InlineData("rolled", Release.Free)]
    [InlineData("rolled", Release.HeldFlat)]
    public void Two_bends_and_their_releases_are_those_of_a_bar_of_fibers(string name, Release release)
    {
        SoldBar sold = Sold(name);
        LoadedBend loaded = Bar(name, Linear(1e-5)).LoadedTo(Radius(300));
        double axis = loaded.NeutralAxisFromInside.Meters;
        double core = 300 / 200e3 / loaded.Curvature.InverseMeters;
        FiberBar fibers = new(FiberMesh.Of(sold, [axis - core, axis, axis + core], 120, 24), 300 / 200e3, 1500 / 200e3, true);
        fibers.BendFlat(0.3, 1);
        fibers.Release(release);
        ReleasedBend first = loaded.Release(release, UnloadingRule.WithMemory);
        Near.Relative(fibers.InsideRadius, first.Ring.InsideRadius.Meters, 1e-5, "first ring");
        fibers.BendFlat(0.2, 1);
        SecondBend second = first.BendAgainTo(Radius(200));
        Near.Relative(fibers.Moment * 200e9, second.BendingMoment.NewtonMeters, 1e-5, "moment");
        Near.Relative(fibers.NeutralAxis, second.NeutralAxisFromInside.Meters, 1e-4, "neutral axis");
        fibers.Release(release);
        FinishedRing ring = second.Release(release);
        Near.Relative(fibers.InsideRadius, ring.InsideRadius.Meters, 1e-5, "second ring");
        Near.Relative(fibers.TotalCurvature, ring.Curvature.InverseMeters, 1e-5, "curvature");
    }

    /// <summary>N = M_b = M_r = 0 of the stresses that stay, over points of a mesh of their own.</summary>
    [Theory]
    [InlineData("sharp")]
    [InlineData("rolled")]
    public void Stresses_that_stay_are_in_balance(string name)
    {
        foreach (UnloadingRule rule in new[] { UnloadingRule.WithMemory, UnloadingRule.WithChord(Falling),
            UnloadingRule.WithMemoryAndChord(Falling) })
        {
            LoadedBend loaded = Bar(name, Mild).LoadedTo(Radius(300));
            ReleasedBend released = loaded.Release(Release.Free, rule);
            double axis = loaded.NeutralAxisFromInside.Meters;
            SectionProperties section = loaded.Analysis.Section.Properties;
            double force = 0, bending = 0, holdDown = 0, size = 0;
            foreach (Fiber fiber in FiberMesh.Of(Sold(name), [axis], 150, 60))
            {
                double stress = released.ResidualStressAt(Length.FromMeters(fiber.Y), Length.FromMeters(fiber.Z)).Pascals * fiber.Area;
                force += stress;
                bending += stress * (fiber.Y - section.CentroidFromInside.Meters);
                holdDown += stress * (fiber.Z - section.CentroidAxial.Meters);
                size += Math.Abs(stress);
            }

            double lever = section.Depth.Meters;
            Near.Absolute(0, force / size, 1e-4, "force");
            Near.Absolute(0, bending / size / lever, 1e-4, "bending");
            Near.Absolute(0, holdDown / size / lever, 1e-4, "hold-down");
        }
    }

    /// <summary>
    /// A modulus that does not fall gives the elastic release; one that has fallen everywhere, the share of the whole section.
    /// </summary>
    [Theory]
    [InlineData("flat", Release.Free)]
    [InlineData("sharp", Release.Free)]
    [InlineData("sharp", Release.HeldFlat)]
    public void Limits_of_the_falling_modulus(string name, Release release)
    {
        LoadedBend loaded = Bar(name, new LinearHardening(E, Mpa(300), Mpa(1500))).LoadedTo(Radius(150));
        FinishedRing elastic = loaded.Release(release).Ring;
        FinishedRing same = loaded.Release(release, UnloadingRule.WithChord(new ChordModulus(Ratio.FromPercent(100), 50))).Ring;
        Near.Relative(elastic.InsideRadius.Meters, same.InsideRadius.Meters, 1e-12);
        Near.Absolute(elastic.DishAngle.Degrees, same.DishAngle.Degrees, 1e-11);
        Near.Relative(
            elastic.InsideRadius.Meters,
                loaded.Release(release, UnloadingRule.WithChord(new ChordModulus(Ratio.FromPercent(80), 0))).Ring.InsideRadius.Meters,
                    1e-12, "no rate");

        // Fibers that stayed elastic keep E, and their share shrinks with the square of the yield.
        BendAnalysis soft = Bar(name, new LinearHardening(E, Mpa(0.003), Mpa(1500)));
        BarMaterial eased = soft.Material.WithSofterUnloading(Ratio.FromPercent(80));
        double share = BendAnalysis.Of(soft.Section, eased).LoadedTo(Radius(150)).Release(release).Ring.InsideRadius.Meters;
        Near.Relative(share,
            soft.LoadedTo(Radius(150))
                .Release(release, UnloadingRule.WithChord(new ChordModulus(Ratio.FromPercent(80), 1e9))).Ring.InsideRadius.Meters, 1e-6,
                    "share");
    }

    [Fact]
    public void A_bar_that_stayed_elastic_comes_back_straight()
    {
        foreach (UnloadingRule rule in new[] { UnloadingRule.WithMemory, UnloadingRule.WithChord(Falling),
            UnloadingRule.WithMemoryAndChord(Falling) })
        {
            LoadedBend loaded = Bar("sharp", Mild).LoadedTo(Radius(60_000));
            Assert.True(loaded.IsElastic);
            Assert.True(loaded.Release(Release.Free, rule).IsStraight);
        }
    }

    /// <summary>The springback of a rectangle with memory over that without depends on depth over radius alone.</summary>
    [Fact]
    public void Width_of_a_flat_does_not_matter()
    {
        double narrow = Ring(10), wide = Ring(60);
        Near.Relative(narrow, wide, 1e-12);

        static double Ring(double width) =>
            BendAnalysis.Of(new FlatBar(Length.FromMillimeters(width), Length.FromMillimeters(6.35)).EasyWay, GuideTests.Material(Mild))
            .LoadedTo(Radius(150)).Release(Release.Free, UnloadingRule.WithMemory).Ring.InsideRadius.Meters;
    }

    /// <summary>
    /// A flat 6.35 mm deep, let go elastically and with memory. Radii: an independent program to the definitions, not a published source.
    /// </summary>
    [Theory]
    [InlineData(150, 170.29, 174.92)]
    [InlineData(600, 939.1, 1013.9)]
    public void Memory_widens_a_ring(double loaded, double elastic, double remembered)
    {
        LoadedBend bend =
            BendAnalysis.Of(new FlatBar(Length.FromMillimeters(25.4), Length.FromMillimeters(6.35)).EasyWay, GuideTests.Material(Mild))
            .LoadedTo(Radius(loaded));
        Near.Relative(elastic, bend.Release(Release.Free).Ring.InsideRadius.Millimeters, 1e-4);
        Near.Relative(remembered, bend.Release(Release.Free, UnloadingRule.WithMemory).Ring.InsideRadius.Millimeters, 1e-4);
    }

    [Fact]
    public void Memory_and_falling_modulus_together_are_advised_of()
    {
        LoadedBend loaded = Bar("flat", Mild).LoadedTo(Radius(150));
        Assert.Contains(loaded.Release(Release.Free, UnloadingRule.WithMemoryAndChord(Falling)).Advisories,
            advisory => advisory.Code == "reversal-counted-twice");
        Assert.DoesNotContain(loaded.Release(Release.Free, UnloadingRule.WithMemory).Advisories,
            advisory => advisory.Code == "reversal-counted-twice");
        double both = Kept(UnloadingRule.WithMemoryAndChord(Falling)), memory = Kept(UnloadingRule.WithMemory),
            chord = Kept(UnloadingRule.WithChord(Falling));
        Assert.True(both < memory && both < chord);
        Near.Relative(memory, Kept(UnloadingRule.WithMemoryAndChord(new ChordModulus(Ratio.FromPercent(100), 50))), 1e-12);

        double Kept(UnloadingRule rule) => loaded.Release(Release.Free, rule).CurvatureKept;
    }

    /// <summary>
    /// Where the range shrinks faster than the back stress grows the metal softens: refused at once, or from the strain on where it
    /// begins.
    /// </summary>
    [Fact]
    public void Softening_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new KinematicHardening(E, Mpa(200), Mpa(20), 30, Mpa(0), Mpa(-100), 20));
        KinematicHardening late = new(E, Mpa(200), Mpa(200), 30, Mpa(0), Mpa(-60), 5);
        Assert.InRange(late.LargestStrain.Percent, 5, 60);
        LoadedBend tight = Bar("flat", late).LoadedTo(Radius(3));
        Assert.Contains(tight.Advisories, advisory => advisory.Code == "beyond-hardening");
        Assert.Throws<ArgumentException>(() => tight.Release(Release.Free, UnloadingRule.WithMemory));
        Assert.Equal(1, Bar("flat", late).LoadedTo(Radius(150)).Release(Release.Free, UnloadingRule.WithMemory).CurvatureKept, 0.2);
    }

    [Fact]
    public void Rules_that_do_not_suit_are_refused()
    {
        LoadedBend plain = Bar("flat", new LinearHardening(E, Mpa(300), Mpa(1500))).LoadedTo(Radius(150));
        Assert.Throws<ArgumentException>(() => plain.Release(Release.Free, UnloadingRule.WithMemory));
        BendAnalysis eased = BendAnalysis.Of(plain.Analysis.Section, plain.Analysis.Material.WithSofterUnloading(Ratio.FromPercent(90)));
        Assert.Throws<ArgumentException>(() => eased.LoadedTo(Radius(150)).Release(Release.Free, UnloadingRule.WithChord(Falling)));
        LoadedBend pulled = Bar("flat", Mild).LoadedTo(Radius(150), Force.FromNewtons(1000));
        Assert.Throws<ArgumentException>(() => pulled.Release(Release.Free, UnloadingRule.WithMemory));
        ReleasedBend elastic = Bar("flat", Mild).LoadedTo(Radius(150)).Release(Release.Free);
        Assert.Throws<InvalidOperationException>(() => elastic.BendAgainTo(Radius(100)));
        ReleasedBend memory = Bar("flat", Mild).LoadedTo(Radius(150)).Release(Release.Free, UnloadingRule.WithMemory);
        Assert.Throws<ArgumentOutOfRangeException>(() => memory.BendAgainTo(Radius(151)));
    }

    /// <summary>
    /// By symmetry y_n stays and every fiber is bent further: without back stress the last bend alone counts; with it the first bend
    /// leaves a trace.
    /// </summary>
    [Fact]
    public void A_symmetric_bar_without_back_stress_forgets_its_first_bend()
    {
        BendAnalysis plain = Bar("flat", new KinematicHardening(E, Mpa(300), Mpa(0), 100, Mpa(1500), Mpa(0), 1));
        FinishedRing twice =
            plain.LoadedTo(Radius(300)).Release(Release.Free, UnloadingRule.WithMemory).BendAgainTo(Radius(150)).Release(Release.Free);
        Near.Relative(plain.LoadedTo(Radius(150)).Release(Release.Free).Ring.InsideRadius.Meters, twice.InsideRadius.Meters, 1e-9);
        BendAnalysis mild = Bar("flat", Mild);
        FinishedRing again =
            mild.LoadedTo(Radius(300)).Release(Release.Free, UnloadingRule.WithMemory).BendAgainTo(Radius(150)).Release(Release.Free);
        double trace =
            (again.InsideRadius / mild.LoadedTo(Radius(150)).Release(Release.Free, UnloadingRule.WithMemory).Ring.InsideRadius) - 1;
        Assert.InRange(Math.Abs(trace), 1e-5, 0.01);
    }

    private static readonly Pressure E = Pressure.FromGigapascals(200);

    private static readonly KinematicHardening Mild = new(E, Mpa(120), Mpa(190), 600, Mpa(1500), Mpa(0), 1);

    private static KinematicHardening Linear(double rate) =>
        new(E, Mpa(300), Mpa(200e3 * 1500 / (200e3 - 1500) / rate), rate, Mpa(0), Mpa(0), 1);

    private static Pressure Mpa(double value) => Pressure.FromMegapascals(value);

    private static BendRadius Radius(double millimeters) => BendRadius.Inside(Length.FromMillimeters(millimeters));

    private static SoldBar Sold(string name) => name switch
    {
        "flat" => new("flat", 25, 6.35, 0, 0),
        "sharp" => new("angle", 25, 3.2, 0, 0),
        _ => new("angle", 25, 3.2, 4, 0),
    };

    private static BendAnalysis Bar(string name, StressStrainLaw law) => BendAnalysis.Of(Sold(name).Section(), GuideTests.Material(law));
}
