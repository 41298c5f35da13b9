using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using BendMath.Tests.Forming;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>
/// A bar that unloads along a line softer than Young's modulus. Shares of 0.8 to 0.9 are those of steel sheet after a few percent (Yoshida,
/// Uemori, Fujiwara 2002, from memory).
/// </summary>
public sealed class SofterUnloadingTests
{
    private static readonly Gen<double> Shares = Sold.Part.Select(part => 0.7 + 0.29 * part);

    /// <summary>
    /// Gardiner 1957 (from memory) with η·E in the springback: of a perfectly plastic rectangle κ_f/κ = 1 − (3x − 4x³)/η, x = R·σ_y/(E·t),
    /// R to the middle. The loaded neutral axis is the middle by symmetry.
    /// </summary>
    [Theory]
    [InlineData(0.8)]
    [InlineData(0.9)]
    [InlineData(1.0)]
    public void A_rectangle_springs_back_by_the_closed_form(double share)
    {
        BendAnalysis analysis = BendAnalysis.Of(
            new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5)).EasyWay,
            new BarMaterial("steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290)),
                Density.FromKilogramsPerCubicMeter(7850))
                .WithSofterUnloading(Ratio.FromDecimalFractions(share)));
        LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(247.5)));
        double x = 250 * 290 / (210e3 * 5);
        Near.Relative(1 - (3 * x - 4 * x * x * x) / share, loaded.Release(Release.HeldFlat).CurvatureKept, 1e-11, "curvature kept");
        Near.Relative(1 - (3 * x - 4 * x * x * x) / share, loaded.Release(Release.Free).CurvatureKept, 1e-11, "curvature kept, free");
    }

    /// <summary>Springback computed apart from the bending and hold-down moments: (Δκ, Δκ_r) = (1/(η·E))·I⁻¹·(M_b, M_r).</summary>
    [Property(MaxTest = 40)]
    public Property The_moments_over_the_softer_stiffness_are_what_springs_back() =>
        Prop.ForAll(Sold.AnyBend.ToArbitrary(), Shares.ToArbitrary(), (bend, share) =>
    {
        LoadedBend loaded = Softer(bend.Analysis(), share).LoadedTo(BendRadius.Inside(bend.Depths * bend.Bar.Section().Depth));
        SectionProperties p = loaded.Analysis.Section.Properties;
        double stiffness = share * bend.Metal.Modulus * 1e9;
        double ib = p.SecondMomentAboutBendingAxis.MetersToTheFourth, ir = p.SecondMomentAboutRadialAxis.MetersToTheFourth,
            product = p.ProductOfInertia.MetersToTheFourth;
        double mb = loaded.BendingMoment.NewtonMeters, mr = loaded.HoldDownMoment.NewtonMeters;
        double determinant = stiffness * (ib * ir - product * product);
        double inPlane = loaded.Curvature.InverseMeters - (ir * mb - product * mr) / determinant;
        double outOfPlane = -(ib * mr - product * mb) / determinant;
        ReleasedBend free = loaded.Release(Release.Free);
        ReleasedBend flat = loaded.Release(Release.HeldFlat);
        Assert.Equal(inPlane <= 0, free.IsStraight);
        if (inPlane > 0)
        {
            Near.Absolute(Math.Sqrt(inPlane * inPlane + outOfPlane * outOfPlane), free.Ring.Curvature.InverseMeters,
                1e-9 * loaded.Curvature.InverseMeters, "free curvature");
            Near.Absolute(Math.Atan2(outOfPlane, inPlane), free.Ring.DishAngle.Radians, 1e-7, "dish");
        }

        double held = loaded.Curvature.InverseMeters - mb / (stiffness * ib);
        Near.Absolute(Math.Max(0, held), flat.IsStraight ? 0 : flat.Ring.Curvature.InverseMeters, 1e-9 * loaded.Curvature.InverseMeters,
            "flat curvature");
    });

    [Property(MaxTest = 60)]
    public Property The_inverse_finds_the_bend_that_left_the_ring() =>
        Prop.ForAll(Sold.Bends(Sold.Bars, Sold.AnyMetal, 3).ToArbitrary(), Shares.ToArbitrary(), Sold.Releases.ToArbitrary(),
        (bend, share, release) =>
    {
        BendAnalysis analysis = Softer(bend.Analysis(), share);
        LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(bend.Depths * analysis.Section.Depth));
        FinishedRing ring = loaded.Release(release).Ring;
        foreach (BendRadius wanted in new[] { BendRadius.Inside(ring.InsideRadius), BendRadius.Outside(ring.OutsideRadius),
            BendRadius.Centroid(ring.CentroidRadius) })
        {
            Near.Relative(loaded.InsideRadius.Meters, analysis.LoadedFor(wanted, release).InsideRadius.Meters, 1e-8, wanted.ToString());
        }

        double[] radii = [loaded.InsideRadius.Meters];
        BendSweep.Of(analysis).FinishedRadii(radii, radii, release);
        Near.Relative(ring.InsideRadius.Meters, radii[0], 1e-12, "sweep");
    });

    [Property(MaxTest = 40)]
    public Property Softer_leaves_a_wider_ring_and_the_same_stress() =>
        Prop.ForAll(Sold.Bends(Sold.Bars, Sold.AnyMetal, 3).ToArbitrary(), Shares.ToArbitrary(), Sold.Releases.ToArbitrary(),
        (bend, share, release) =>
    {
        LoadedBend stiff = bend.Loaded();
        LoadedBend soft = Softer(bend.Analysis(), share).LoadedTo(BendRadius.Inside(bend.Depths * stiff.Analysis.Section.Depth));
        ReleasedBend one = stiff.Release(release), other = soft.Release(release);
        Assert.True(other.Ring.InsideRadius > one.Ring.InsideRadius);
        Length middle = stiff.Analysis.Section.Depth / 2, side = stiff.Analysis.Section.Properties.Width / 3;
        Assert.Equal(one.ResidualStressAt(middle, side), other.ResidualStressAt(middle, side));
        Assert.Equal(stiff.BendingMoment, soft.BendingMoment);
    });

    [Property(MaxTest = 40)]
    public Property The_whole_share_changes_no_bit() =>
        Prop.ForAll(Sold.AnyBend.ToArbitrary(), Sold.Releases.ToArbitrary(), (bend, release) =>
    {
        LoadedBend loaded = bend.Loaded();
        LoadedBend same = Softer(bend.Analysis(), 1).LoadedTo(BendRadius.Inside(bend.Depths * loaded.Analysis.Section.Depth));
        Assert.Equal(loaded.Release(release).Ring, same.Release(release).Ring);
        Assert.Equal(
            loaded.Analysis.LoadedFor(BendRadius.Inside(loaded.Release(release).Ring.InsideRadius), release).InsideRadius,
            same.Analysis.LoadedFor(BendRadius.Inside(loaded.Release(release).Ring.InsideRadius), release).InsideRadius);
    });

    /// <summary>Elastic loading goes along E, so a softer way back would bend the bar the other way: it is straight.</summary>
    [Theory]
    [InlineData(50, true)]
    [InlineData(4.1, true)]
    [InlineData(2, false)]
    public void A_bar_that_would_come_out_curved_the_other_way_is_straight(double meters, bool straight)
    {
        BendAnalysis analysis =
            Softer(BendAnalysis.Of(new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(12)).EasyWay, Workshop.Steel), 0.8);
        ReleasedBend released = analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(meters))).Release(Release.Free);
        Assert.Equal(straight, released.IsStraight);
        Assert.Equal(straight, released.CurvatureKept == 0);
        Assert.Equal(straight, released.Advisories.Any(advisory => advisory.Code == "springs-straight"));
    }

    /// <summary>A pull let go along the softer line takes P/(η·E·A) of the stretch with it.</summary>
    [Fact]
    public void A_pull_is_let_go_along_the_softer_line()
    {
        BendAnalysis analysis = Softer(Workshop.RimSteel, 0.8);
        Force pull = Force.FromKilonewtons(8);
        LoadedBend loaded = analysis.LoadedTo(Workshop.Inside(250), pull);
        SectionProperties p = analysis.Section.Properties;
        double strain = loaded.StrainAt(p.CentroidFromInside).DecimalFractions - 8000 / (0.8 * 210e9 * p.Area.SquareMeters);
        FinishedRing ring = loaded.Release(Release.HeldFlat).Ring;
        Near.Relative(1 + strain, ring.CentroidRadius.Meters * ring.Curvature.InverseMeters, 1e-12, "stretch of the line of centroids");
    }

    /// <summary>Rings far wider than the bar can hold a shape at: found or refused, never a wrong state.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(300)]
    [InlineData(3000)]
    public void A_very_wide_ring_is_found_or_refused(double meters)
    {
        BendAnalysis analysis = Softer(Workshop.RimSteel, 0.8);
        foreach (Release release in new[] { Release.Free, Release.HeldFlat })
        {
            BendRadius wanted = BendRadius.Inside(Length.FromMeters(meters));
            if (release == Release.HeldFlat || meters < 100)
            {
                Near.Relative(meters, analysis.LoadedFor(wanted, release).Release(release).Ring.InsideRadius.Meters, 1e-6, "radius");
            }
            else
            {
                Assert.Contains("softer line",
                    Assert.Throws<ArgumentOutOfRangeException>("finished", () => analysis.LoadedFor(wanted, release)).Message,
                        StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Slopes_and_yield_follow_the_softer_release()
    {
        BendAnalysis analysis = Softer(Workshop.RimSteel, 0.85);
        double inside = 0.25, step = 1e-5;
        double At(double radius) =>
            analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(radius))).Release(Release.Free).Ring.InsideRadius.Meters;
        RingSensitivity slopes = analysis.LoadedTo(BendRadius.Inside(Length.FromMeters(inside))).Release(Release.Free).Sensitivity;
        Near.Relative((At(inside + step) - At(inside - step)) / (2 * step), slopes.PerLoadedRadius, 1e-6, "per loaded radius");
        double Yield(double megapascals) =>
            BendAnalysis.Of(Workshop.Rim, analysis.Material.WithYield(Pressure.FromMegapascals(megapascals)))
            .LoadedTo(BendRadius.Inside(Length.FromMeters(inside))).Release(Release.Free).Ring.InsideRadius.Meters;
        Near.Relative((Yield(290.5) - Yield(289.5)) / 1, slopes.PerMegapascalOfYield.Meters, 1e-5, "per yield");
        Assert.Equal(0.85, analysis.Material.WithYield(Pressure.FromMegapascals(300)).UnloadingShare.DecimalFractions);
        Near.Relative(290e6,
            analysis.YieldFrom(Workshop.Inside(250), BendRadius.Inside(Length.FromMeters(At(inside))), Release.Free).Pascals, 1e-9,
                "yield found");
    }

    /// <summary>
    /// The shape between nose and supports, integrated apart: ∫κ(u)·u du from each support with κ from the moment–curvature curve on the
    /// way in and κ₀ − (M₀ − M)/(η·E·I) on the way out, must reach the supports.
    /// </summary>
    [Theory]
    [InlineData(0.8)]
    [InlineData(1.0)]
    public void A_pinched_bar_touches_both_supports(double share)
    {
        BendAnalysis analysis =
            Softer(BendAnalysis.Of(new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(12)).EasyWay, Workshop.Steel), share);
        FormedBend formed = new IncrementalThreePointBending(Workshop.Bender).FormAtStroke(analysis, Length.FromMillimeters(15));
        double a = 0.13, x = formed.Contact!.ContactShift.Meters, peak = formed.Loaded.Curvature.InverseMeters,
            moment = formed.Loaded.BendingMoment.NewtonMeters;
        double rise = a * a / (2 * formed.Contact.ThreeContactRadius.Meters), rn = 0.010 + formed.Loaded.NeutralAxisFromInside.Meters;
        double stiffness = share * 210e9 * analysis.Section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
        const int Steps = 20000;
        double incoming = 0, outgoing = 0, last = 0;
        for (int i = 1; i <= Steps; i++)
        {
            // Incoming: u = (a − x)·M/M₀, by steps of curvature; midpoints of κ·u and steps of u.
            double curvature = peak * i / Steps;
            double now = (a - x) * analysis.MomentAt(ReciprocalLength.FromInverseMeters(curvature)).NewtonMeters / moment;
            incoming += peak * (i - 0.5) / Steps * (now + last) / 2 * (now - last);
            last = now;
            double u = (a + x) * (i - 0.5) / Steps;
            outgoing += (peak - (moment - moment * u / (a + x)) / stiffness) * u * (a + x) / Steps;
        }

        Near.Relative(rise - x * a / rn + x * x / (2 * rn), incoming, 1e-6, "incoming side");
        Near.Relative(rise + x * a / rn + x * x / (2 * rn), outgoing, 1e-6, "outgoing side");
        Near.Relative(peak - moment / stiffness, formed.RingWhen(Release.HeldFlat).Curvature.InverseMeters, 1e-9, "finished curvature");
    }

    [Fact]
    public void A_share_beyond_its_range_is_refused_and_bumps_refuse_a_softer_release()
    {
        Assert.Throws<ArgumentOutOfRangeException>("share", () => Workshop.Steel.WithSofterUnloading(Ratio.FromPercent(101)));
        Assert.Throws<ArgumentOutOfRangeException>("share", () => Workshop.Steel.WithSofterUnloading(Ratio.Zero));
        BendAnalysis softer = Softer(Workshop.RimSteel, 0.85);
        BumpBending bumps = new(Workshop.Bender, Length.FromMillimeters(20));
        Assert.Throws<ArgumentOutOfRangeException>("analysis", () => bumps.FormAtStroke(softer, Length.FromMillimeters(10)));
        Assert.False(bumps.TryForm(softer, Workshop.Die("B", 250), out _, out string? refusal));
        Assert.Contains("softer line", refusal, StringComparison.Ordinal);
        MeasuredRing measured = new(Workshop.Die("B", 250), Workshop.RimSteel, Workshop.Inside(260), Release.Free);
        FormingModel corrected = RingDiagnosis.Of(measured, new WrapBending()).Find(HypothesisKind.CurvatureRatio)!.Model!;
        Assert.Contains(corrected.Form(softer, Workshop.Die("B", 250)).Advisories,
            advisory => advisory.Code == "extrapolated" && advisory.Message.Contains("stiffness on release", StringComparison.Ordinal));
    }

    private static BendAnalysis Softer(BendAnalysis analysis, double share) =>
        BendAnalysis.Of(analysis.Section, analysis.Material.WithSofterUnloading(Ratio.FromDecimalFractions(share)));
}
