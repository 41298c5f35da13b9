using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Layout;

public sealed class RingClosureTests
{
    private static readonly FinishedRing Ring = Workshop.RimSteel.LoadedFor(Workshop.Inside(250), Release.Free).Release(Release.Free).Ring;

    private static DevelopedLayout Layout(double trim = 20, ArcExtent? arc = null) => DevelopedLayout.For(
        Ring, Workshop.Rim, arc ?? ArcExtent.FullRing,
            new EndAllowance(Length.FromMillimeters(130), Length.FromMillimeters(130), Length.FromMillimeters(trim)),
                Length.FromMillimeters(2));

    [Fact]
    public void Touching_ends_cut_one_by_one_are_the_developed_length()
    {
        RingClosure closure = RingClosure.For(Layout(), JointPreparation.CutOneByOne(Length.Zero));
        Near.Relative(Layout().DevelopedLength.Meters, closure.LengthBetweenCuts.Meters, 1e-12);
        Assert.Equal(0, closure.DiameterChange.Meters);
        Assert.Empty(closure.Advisories);
        Near.Relative(Layout().ArcEndMark.Meters, closure.SecondCutMark.Meters, 1e-12);
    }

    /// <summary>
    /// Finished length along the line of centroids and gap make up the circumference there, whatever way the ends are cut; pulled to the
    /// opening, π times the new diameter.
    /// </summary>
    [Theory]
    [InlineData(false, 3, 3, 0)]
    [InlineData(true, 3, 2, 1)]
    [InlineData(true, 0, 2, -2)]
    [InlineData(true, 2, 2, 0)]
    public void Bar_and_gap_make_up_the_circumference(bool together, double opening, double gap, double pulledByPi)
    {
        RingClosure closure = RingClosure.For(Layout(),
            together ? JointPreparation.CutTogether(Length.FromMillimeters(opening))
                : JointPreparation.CutOneByOne(Length.FromMillimeters(opening)));
        double circumference = 2 * Math.PI * Ring.CentroidRadius.Millimeters;
        double finished = closure.LengthBetweenCuts / Layout().DevelopedLength * circumference;
        Assert.Equal(gap, closure.GapAfterCut.Millimeters, 1e-12);
        Near.Relative(circumference, finished + gap, 1e-12, "bar and gap");
        Near.Relative((finished + opening) / Math.PI, 2 * Ring.CentroidRadius.Millimeters + closure.DiameterChange.Millimeters, 1e-12,
            "diameter at the opening");
        Near.Absolute(pulledByPi / Math.PI, closure.DiameterChange.Millimeters, 1e-12);
        Near.Absolute(finished / Math.PI, 2 * Ring.CentroidRadius.Millimeters + closure.DiameterChangeWhenClosed.Millimeters, 1e-9,
            "diameter closed");
        Near.Relative(opening / Math.PI, closure.DiameterChangeAtFullLength.Millimeters, 1e-12);
    }

    [Fact]
    public void What_is_doubtful_is_said()
    {
        Assert.Equal(["no-overlap", "welded-ring"],
            RingClosure.For(Layout(trim: 1), JointPreparation.CutTogether(Length.FromMillimeters(2))).Advisories.Select(
                advisory => advisory.Code));
        Assert.Throws<ArgumentException>("layout",
            () => RingClosure.For(Layout(arc: ArcExtent.Of(Angle.FromDegrees(350))), JointPreparation.CutTogether(Length.Zero)));
        Assert.Throws<ArgumentException>("joint",
            () => RingClosure.For(Layout(), JointPreparation.CutTogether(Length.FromMeters(0.2))));
    }

    /// <summary>A pinching bender leaves a half-span straight at each end, a wrapping one nothing, a bumped bar its tails.</summary>
    [Fact]
    public void Ends_come_from_the_way_of_bending()
    {
        Length trim = Length.FromMillimeters(5);
        EndAllowance pinched =
            EndAllowance.For(new IncrementalThreePointBending(Workshop.Bender).FormAtStroke(Workshop.RimSteel, Length.FromMillimeters(15)),
                trim);
        Near.Relative(265, pinched.Total.Millimeters, 1e-12);
        Assert.Equal(5, EndAllowance.For(new WrapBending().Form(Workshop.RimSteel, Workshop.Die("A", 250)), trim).Total.Millimeters, 1e-12);
        BumpedBar bumped =
            new BumpBending(Workshop.Bender, Length.FromMillimeters(20)).BendWhole(Workshop.RimSteel, Length.FromMillimeters(900),
                Length.FromMillimeters(15));
        EndAllowance tails = EndAllowance.For(bumped, trim);
        Assert.Equal(bumped.LeadingTail, tails.Start);
        Assert.Equal(bumped.TrailingTail, tails.End);
    }
}
