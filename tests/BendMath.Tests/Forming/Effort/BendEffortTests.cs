using BendMath.Forming.Effort;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Forming.Effort;

public sealed class BendEffortTests
{
    private static readonly Length Lever = Length.FromMillimeters(900);

    [Fact]
    public void A_lever_that_turns_the_bar_around_the_die_has_a_hand_force()
    {
        FormedBend formed = new WrapBending().Form(Workshop.RimSteel, Workshop.Die("B", 250));
        BendEffort effort = BendEffort.Of(formed, Lever);
        Assert.Equal(formed.Loaded.BendingMoment.NewtonMeters / 0.9, effort.HandForce!.Value.Newtons, 1e-9);
        Assert.Null(effort.WhyNoHandForce);
        Assert.Null(BendEffort.Of(formed).HandForce);
        Assert.Equal("no lever length is given", BendEffort.Of(formed).WhyNoHandForce);
    }

    /// <summary>In three-point bending the lever does not turn the bar: moment over lever is no force of the hand.</summary>
    [Fact]
    public void Pinching_has_a_nose_force_and_no_hand_force()
    {
        BendEffort effort =
            BendEffort.Of(new IncrementalThreePointBending(Workshop.Bender).Form(Workshop.RimSteel, Workshop.Die("B", 250)), Lever);
        Assert.NotNull(effort.NoseForce);
        Assert.Null(effort.HandForce);
        Assert.Contains("force of the nose", effort.WhyNoHandForce!, StringComparison.Ordinal);
    }

    public static TheoryData<string, bool> Sections { get; } = new()
    {
        { "round tube", false }, { "round", false }, { "flat", false }, { "square", false }, { "angle", true },
    };

    [Theory]
    [MemberData(nameof(Sections))]
    public void Only_a_bar_without_symmetry_about_the_plane_of_the_ring_needs_hold_down(string kind, bool needs)
    {
        OrientedSection section = kind switch
        {
            "round tube" => new RoundTube(Length.FromMillimeters(21.3), Length.FromMillimeters(2.6)).Section,
            "round" => new RoundBar(Length.FromMillimeters(10)).Section,
            "flat" => new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5)).HardWay,
            "square" => new SquareBar(Length.FromMillimeters(12)).Section,
            _ => Workshop.Rim,
        };
        BendEffort effort = BendEffort.Of(new WrapBending().Form(BendAnalysis.Of(section, Workshop.Steel), Workshop.Die("B", 250)));
        Assert.Equal(needs, effort.HoldDownMoment.NewtonMeters != 0);
        Assert.Equal(needs, effort.HoldDownCouplePerLength.Newtons != 0);
    }

    /// <summary>
    /// One sign for the moment and its couple wherever they are told: with the flange the other way the same bar is pushed the other way.
    /// </summary>
    [Fact]
    public void Hold_down_has_the_sign_of_the_loaded_state()
    {
        BendEffort[] ways =
            [.. new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp).Orientations.Take(2).Select(section => BendEffort.Of(new WrapBending().Form(BendAnalysis.Of(section, Workshop.Steel), Workshop.Die("B", 250))))];
        Assert.All(ways, effort =>
        {
            Assert.Equal(effort.Formed.Loaded.HoldDownMoment, effort.HoldDownMoment);
            Assert.Equal(effort.Formed.Loaded.HoldDownCouplePerLength, effort.HoldDownCouplePerLength);
            Near.Relative(effort.HoldDownMoment.NewtonMeters * effort.Formed.Loaded.Curvature.InverseMeters,
                effort.HoldDownCouplePerLength.Newtons, 1e-12);
        });
        Assert.Equal(-Math.Sign(ways[0].HoldDownMoment.NewtonMeters), Math.Sign(ways[1].HoldDownMoment.NewtonMeters));
    }
}
