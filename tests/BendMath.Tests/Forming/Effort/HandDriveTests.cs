using BendMath.Forming.Effort;
using BendMath.Forming.Pairs;
using BendMath.Forming.ThreePoint;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Forming.Effort;

/// <summary>Lever, advantage, work and the limit of a pull.</summary>
public sealed class HandDriveTests
{
    private static readonly BarMaterial Steel =
        new("steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(250)),
            Density.FromKilogramsPerCubicMeter(7850));

    private static readonly BendAnalysis Square = BendAnalysis.Of(new SquareBar(Length.FromMillimeters(12)).Section, Steel);

    private static readonly Length Lever = Length.FromMeters(0.9);

    private static FormedBend Wrapped => new WrapBending().Form(Square, Workshop.Die("B", 200));

    private static FormedBend Pinched => new IncrementalThreePointBending(Workshop.Bender).FormAtStroke(Square, Length.FromMillimeters(25));

    /// <summary>
    /// Lever: F = M/L (elementary statics). A square of 12 mm that yields at 250 MPa is fully plastic at M_p = 250·12³/4 = 108 N·m, so a
    /// lever of 0.9 m takes 120 N; at 200 mm of radius M is within 0.1 % of it.
    /// </summary>
    [Fact]
    public void A_lever_takes_the_moment_over_its_length()
    {
        BendEffort effort = BendEffort.Of(Wrapped, new HandDrive(Lever));
        Near.Relative(120, effort.HandForce!.Value.Newtons, 2e-3, "pull");
        Near.Relative(effort.HandForce.Value.Newtons / 3, BendEffort.Of(Wrapped, new HandDrive(Lever, 3)).HandForce!.Value.Newtons, 1e-12,
            "with gears");
    }

    /// <summary>
    /// Center force of a bar on two supports: F = 4M/S with S the span (elementary statics); the contact shift moves it by x²/a².
    /// </summary>
    [Fact]
    public void A_nose_takes_four_moments_over_the_span()
    {
        FormedBend formed = Pinched;
        double x = formed.Contact!.ContactShift.Meters / 0.13;
        BendEffort effort = BendEffort.Of(formed, new HandDrive(advantage: 20));
        double center = 4 * formed.Loaded.BendingMoment.NewtonMeters / 0.26;
        Near.Relative(center / (1 - x * x), effort.NoseForce!.Value.Newtons, 1e-12, "nose force");
        Near.Relative(effort.NoseForce.Value.Newtons / 20, effort.HandForce!.Value.Newtons, 1e-12, "hand force");
        Assert.Null(effort.WhyNoHandForce);
        Assert.Contains("mechanical advantage nobody has given", BendEffort.Of(formed, new HandDrive(Lever)).WhyNoHandForce,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(200, true)]
    [InlineData(100, false)]
    public void The_limit_of_the_pull_judges_and_names_the_lever(double newtons, bool within)
    {
        Force limit = Force.FromNewtons(newtons);
        foreach (BendEffort effort in new[] { BendEffort.Of(Wrapped, new HandDrive(Lever, pullLimit: limit)),
            BendEffort.Of(Pinched, new HandDrive(Lever, 12, limit)) })
        {
            Assert.Equal(within, effort.IsWithinPullLimit);
            double gain = effort.Drive.Advantage ?? 1;

            // The advantage of a three-point bender is that of its lever, so it grows with it.
            HandDrive longer = effort.NoseForce is null
                ? new(effort.LeverLengthAtLimit, pullLimit: limit)
                : new(effort.LeverLengthAtLimit, gain * effort.LeverLengthAtLimit!.Value.Meters / 0.9, limit);
            BendEffort at = BendEffort.Of(effort.Formed, longer);
            Near.Relative(newtons, at.HandForce!.Value.Newtons, 1e-12, "pull at that lever");
            Assert.True(at.IsWithinPullLimit);
            if (effort.AdvantageAtLimit >= 1)
            {
                Near.Relative(newtons,
                    BendEffort.Of(effort.Formed, new HandDrive(Lever, effort.AdvantageAtLimit, limit)).HandForce!.Value.Newtons, 1e-12,
                        "pull at that advantage");
            }
        }
    }

    [Fact]
    public void Without_a_limit_or_a_pull_there_is_no_verdict()
    {
        Assert.Null(BendEffort.Of(Wrapped, Lever).IsWithinPullLimit);
        Assert.Null(BendEffort.Of(Wrapped, Lever).LeverLengthAtLimit);
        BendEffort unknown = BendEffort.Of(Pinched, new HandDrive(Lever, pullLimit: Force.FromNewtons(200)));
        Assert.Null(unknown.IsWithinPullLimit);
        Assert.Null(unknown.LeverLengthAtLimit);
        Near.Relative(unknown.NoseForce!.Value.Newtons / 200, unknown.AdvantageAtLimit!.Value, 1e-12, "advantage it would take");
        Assert.Throws<ArgumentOutOfRangeException>("advantage", () => new HandDrive(advantage: 0.99));
        Assert.Throws<ArgumentOutOfRangeException>("pullLimit", () => new HandDrive(pullLimit: Force.Zero));
        Assert.Equal("lever of 900 mm, advantage 3, pull of at most 200 N", new HandDrive(Lever, 3, Force.FromNewtons(200)).ToString());
    }

    /// <summary>The force that starts to lay a bar down is the least it takes: it can be beyond a limit, never within one.</summary>
    [Fact]
    public void A_bar_that_is_laid_down_has_no_verdict_of_within()
    {
        Die pair =
            new("pair", Length.FromMillimeters(200), ReferenceFace.InsideOfBar,
                mate: MatingDie.OfFace(Length.FromMillimeters(212), Length.FromMillimeters(80)));
        FormedBend formed = new PairBending().Form(Square, pair);
        BendEffort strong = BendEffort.Of(formed, new HandDrive(Lever, 20, Force.FromKilonewtons(2)));
        Assert.True(strong.IsLeast);
        Assert.Null(strong.IsWithinPullLimit);
        Assert.Null(strong.LeverLengthAtLimit);
        Assert.Null(strong.AdvantageAtLimit);
        Assert.False(BendEffort.Of(formed, new HandDrive(Lever, 20, Force.FromNewtons(20))).IsWithinPullLimit);
        Assert.False(BendEffort.Of(Pinched).IsLeast);
    }

    /// <summary>
    /// Perfectly plastic rectangle, M = 1.5·M_y·(1 − (κ_y/κ)²/3) beyond κ_y (Beer and Johnston, ch. 4), integrated by hand: w = M_y·κ_y/2 +
    /// 1.5·M_y·[(κ − κ_y) + (κ_y²/3)(1/κ − 1/κ_y)].
    /// </summary>
    [Fact]
    public void The_work_of_a_rectangle_has_its_closed_form()
    {
        FormedBend formed = Wrapped;
        double k = formed.Loaded.Curvature.InverseMeters, ky = 250 / 210e3 / 0.006, my = 250e6 * 0.012 * 0.012 * 0.012 / 6;
        double work = my * ky / 2 + 1.5 * my * (k - ky + ky * ky / 3 * (1 / k - 1 / ky));
        BendEffort effort = BendEffort.Of(formed);
        Near.Relative(work, effort.WorkPerLength.Newtons, 1e-9, "work per length");
        Near.Relative(1.3 * work, effort.WorkFor(Length.FromMeters(1.3)).Joules, 1e-9, "work");

        // What comes back is the triangle under the elastic line of release: M²/(2·E·I).
        double moment = formed.Loaded.BendingMoment.NewtonMeters;
        Near.Relative(moment * moment / (2 * 210e9 * Math.Pow(0.012, 4) / 12), effort.StoredEnergyPerLength.Newtons, 1e-9, "stored energy");
    }

    /// <summary>
    /// Held flat without axial force the moment works on curvature only, so ∫M dκ is the strain energy of all fibers, ∫∫σ de dA. Fibers of
    /// a mesh of its own: strips across the section, with the strain energy of a bilinear law in closed form.
    /// </summary>
    [Property(MaxTest = 25)]
    public Property The_work_is_the_strain_energy_of_the_fibers() =>
        Prop.ForAll(Sold.Bends(Sold.Flats, Sold.Hardening).ToArbitrary(), bend =>
    {
        LoadedBend loaded = bend.Loaded();
        OrientedSection section = loaded.Analysis.Section;
        double e = bend.Metal.Modulus * 1e9, t = bend.Metal.Tangent * 1e6, ey = bend.Metal.YieldStrain, depth = section.Depth.Meters,
            width = section.Properties.Width.Meters;
        double k = loaded.Curvature.InverseMeters, axis = loaded.NeutralAxisFromInside.Meters;
        const int Strips = 40_000;
        double energy = 0;
        for (int i = 0; i < Strips; i++)
        {
            double strain = Math.Abs(k * ((i + 0.5) / Strips * depth - axis));
            double beyond = Math.Max(0, strain - ey);
            double elastic = Math.Min(strain, ey);
            energy += (e * elastic * elastic / 2 + e * ey * beyond + t * beyond * beyond / 2) * depth * width / Strips;
        }

        Die die = new("invented", loaded.InsideRadius, ReferenceFace.InsideOfBar);
        Near.Relative(energy, BendEffort.Of(new WrapBending().Form(loaded.Analysis, die)).WorkPerLength.Newtons, 1e-6, "work per length");
    });

    /// <summary>
    /// The same for angles, where the neutral axis wanders and some fibers unload on the way: trapezoids of the moment over the curvature.
    /// </summary>
    [Fact]
    public void The_work_of_an_angle_is_the_area_under_its_curve()
    {
        FormedBend formed = new WrapBending().Form(Workshop.RimSteel, Workshop.Die("B", 250));
        double last = formed.Loaded.Curvature.InverseMeters;
        const int Steps = 20_000;
        double area =
            Enumerable.Range(0, Steps)
                .Sum(
                    i =>
                        Workshop.RimSteel.MomentAt(ReciprocalLength.FromInverseMeters((i + 0.5) * last / Steps)).NewtonMeters * last
                            / Steps);
        BendEffort effort = BendEffort.Of(formed);
        Near.Relative(area, effort.WorkPerLength.Newtons, 1e-7, "work");

        // Free release: ½·(M_b, M_r)·(E·I)⁻¹·(M_b, M_r).
        SectionProperties p = formed.Loaded.Analysis.Section.Properties;
        double ib = p.SecondMomentAboutBendingAxis.MetersToTheFourth, ir = p.SecondMomentAboutRadialAxis.MetersToTheFourth,
            ibr = p.ProductOfInertia.MetersToTheFourth;
        double mb = formed.Loaded.BendingMoment.NewtonMeters, mr = formed.Loaded.HoldDownMoment.NewtonMeters;
        Near.Relative((ir * mb * mb - 2 * ibr * mb * mr + ib * mr * mr) / (2 * 210e9 * (ib * ir - ibr * ibr)),
            effort.StoredEnergyPerLength.Newtons, 1e-9, "stored energy");
        Assert.True(effort.StoredEnergyFor(Length.FromMeters(1)) < effort.WorkFor(Length.FromMeters(1)));
    }
}
