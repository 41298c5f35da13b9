using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>A bender that gives: what is set and what closes. Figures of the bender are invented.</summary>
public sealed class BenderGiveTests
{
    private static readonly Length Set = Length.FromMillimeters(18);

    [Fact]
    public void A_stiffness_is_printed_and_refused_with_its_unit()
    {
        ThreePointSetup setup = new(Set, Set, Force.FromKilonewtons(6) / Length.FromMillimeters(1.5));
        Near.Relative(4e6, setup.Stiffness!.Value.NewtonsPerMeter, 1e-14, "stiffness");
        Assert.EndsWith(", 4 kN per millimeter of give", setup.ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("stiffness", () => new ThreePointSetup(Set, Set, ForcePerLength.Zero));
    }

    /// <summary>
    /// What closes is the stroke at which the bar pushes back with exactly the force that makes the bender give the rest.
    /// </summary>
    [Property(MaxTest = 30)]
    public Property The_force_makes_the_bender_give_the_rest() =>
        Prop.ForAll(Stiffnesses.ToArbitrary(), Sold.Part.ToArbitrary(), (stiffness, part) =>
    {
        Length set = Length.FromMillimeters(2 + 24 * part);
        ThreePointContact contact = Model(stiffness).FormAtStroke(Workshop.RimSteel, set).Contact!;
        FormedBend rigid = new IncrementalThreePointBending(Workshop.Bender).FormAtStroke(Workshop.RimSteel, contact.Stroke);
        Near.Relative(set.Meters, contact.SetStroke.Meters, 1e-14, "set stroke");
        Near.Relative(set.Meters, contact.Stroke.Meters + rigid.Contact!.NoseForce.Newtons / stiffness, 1e-7, "closed stroke and give");
    });

    [Property(MaxTest = 30)]
    public Property Stiffer_is_tighter() => Prop.ForAll(Stiffnesses.ToArbitrary(), stiffness =>
    {
        FinishedRing soft = Model(stiffness).FormAtStroke(Workshop.RimSteel, Set).RingWhen(Release.Free);
        FinishedRing stiff = Model(1.1 * stiffness).FormAtStroke(Workshop.RimSteel, Set).RingWhen(Release.Free);
        Assert.True(stiff.InsideRadius < soft.InsideRadius, $"{stiff} is not tighter than {soft}");
    });

    /// <summary>The difference from the rigid bender falls as 1/k.</summary>
    [Fact]
    public void A_very_stiff_bender_is_the_rigid_one()
    {
        double rigid =
            new IncrementalThreePointBending(Workshop.Bender).FormAtStroke(Workshop.RimSteel, Set)
                .RingWhen(Release.Free).Curvature.InverseMeters;
        double Off(double stiffness) =>
            rigid - Model(stiffness).FormAtStroke(Workshop.RimSteel, Set).RingWhen(Release.Free).Curvature.InverseMeters;
        double near = Off(1e9);
        Assert.InRange(near, 1e-7, 1e-1);
        Near.Relative(0.1, Off(1e10) / near, 1e-2, "ratio of the differences");
        Near.Absolute(0, Off(1e14), 1e-6, "difference");
    }

    [Property(MaxTest = 20)]
    public Property Scaling_lengths_and_stiffness_scales_the_ring() =>
        Prop.ForAll(Stiffnesses.ToArbitrary(), Sold.Part.Select(part => Sold.Between(0.1, 20, part)).ToArbitrary(), (stiffness, s) =>
    {
        BendAnalysis scaled = BendAnalysis.Of(
            new EqualAngle(Length.FromMillimeters(30 * s), Length.FromMillimeters(3 * s),
                AngleFillets.Of(Length.FromMillimeters(5 * s), Length.FromMillimeters(2.5 * s))).FlangeOut, Workshop.Steel);
        IncrementalThreePointBending model =
            new(new ThreePointSetup(Workshop.Bender.HalfSpan * s, Workshop.Bender.NoseRadius * s, Stiffness(stiffness * s)));
        FinishedRing one = Model(stiffness).FormAtStroke(Workshop.RimSteel, Set).RingWhen(Release.Free);
        Near.Relative(s * one.InsideRadius.Meters, model.FormAtStroke(scaled, Set * s).RingWhen(Release.Free).InsideRadius.Meters, 1e-7,
            "finished radius");
    });

    [Property(MaxTest = 30)]
    public Property The_stroke_for_a_ring_has_the_give_in_it() =>
        Prop.ForAll(Stiffnesses.ToArbitrary(), Sold.Releases.ToArbitrary(), (stiffness, release) =>
    {
        FormedBend formed = Model(stiffness).FormAtStroke(Workshop.RimSteel, Set);
        if (formed.IsStraightWhen(release))
        {
            return;
        }

        Length? found = Model(stiffness).StrokeFor(Workshop.RimSteel, BendRadius.Inside(formed.RingWhen(release).InsideRadius), release);
        Near.Relative(Set.Meters, found!.Value.Meters, 1e-6, "stroke to set");
    });

    /// <summary>
    /// A nose the bar lies on: the force that starts the wrap decides the give; an edge folds the bar when too much is set.
    /// </summary>
    [Fact]
    public void A_wrapped_nose_and_a_fold_stay_what_they_are()
    {
        IncrementalThreePointBending blunt =
            new(new ThreePointSetup(Length.FromMillimeters(130), Length.FromMillimeters(700), Stiffness(5e6)));
        FormedBend formed = blunt.FormAtStroke(Workshop.RimSteel, Length.FromMillimeters(20));
        Assert.True(formed.Contact!.WrapsNose);
        Near.Relative(formed.Contact.NoseForce.Newtons / 5e6, formed.Contact.Give.Meters, 1e-6, "give");
        IncrementalThreePointBending soft = Model(2e6);
        Assert.Contains(soft.FormAtStroke(Workshop.RimSteel, Length.FromMillimeters(12)).Advisories,
            advisory => advisory.Code == "bender-gives");
        Assert.DoesNotContain(Model(1e9).FormAtStroke(Workshop.RimSteel, Set).Advisories, advisory => advisory.Code == "bender-gives");
        Assert.Throws<ArgumentException>("setup", () => new BumpBending(soft.Setup, Length.FromMillimeters(20)));
    }

    [Fact]
    public void A_rigid_bender_gives_nothing() => Assert.Equal(
        Length.Zero, new IncrementalThreePointBending(Workshop.Bender).FormAtStroke(Workshop.RimSteel, Set).Contact!.Give);

    private static Gen<double> Stiffnesses { get; } = Sold.Part.Select(part => Sold.Between(1e6, 1e9, part));

    private static ForcePerLength Stiffness(double newtonsPerMeter) =>
        Force.FromNewtons(newtonsPerMeter / 1000) / Length.FromMillimeters(1);

    private static IncrementalThreePointBending Model(double newtonsPerMeter) =>
        new(new ThreePointSetup(Workshop.Bender.HalfSpan, Workshop.Bender.NoseRadius, Stiffness(newtonsPerMeter)));
}
