using BendMath.Evidence;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>A die with a short face: how far the bar may be pushed and still be wrapped.</summary>
public sealed class WrapReachTests
{
    private static readonly BendAnalysis Square = BendAnalysis.Of(
        new SquareBar(Length.FromMillimeters(10)).Section,
        new BarMaterial("steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(250)),
            Density.FromKilogramsPerCubicMeter(7850)));

    /// <summary>
    /// Fully plastic rectangle: M = 1.5·M_y (Beer and Johnston, ch. 4), so the moment exceeds M_y along a third of the reach, and a face of
    /// 60 mm serves up to 180 mm. At 200 mm of radius M is 0.2 % short of it.
    /// </summary>
    [Fact]
    public void The_moment_exceeds_yield_along_no_more_than_the_face()
    {
        Die die = new("short", Length.FromMillimeters(200), ReferenceFace.InsideOfBar, Length.FromMillimeters(60));
        LoadedBend loaded = new WrapBending().Form(Square, die).Loaded;
        double reach = die.LongestReach(loaded)!.Value.Meters;
        Near.Relative(0.180, reach, 1e-2, "reach");

        // Along the reach the moment falls evenly; counted point by point, it exceeds the yield moment along the length of the face.
        int above =
            Enumerable.Range(0, 100_000)
                .Count(i => loaded.BendingMoment.NewtonMeters * (1 - (i + 0.5) / 100_000) > Square.YieldMoment.NewtonMeters);
        Near.Relative(0.060, reach * above / 100_000, 1e-4, "length above yield");
        Assert.Null(Workshop.Die("all around", 200).LongestReach(loaded));
        Assert.Null(die.LongestReach(Square.LoadedTo(BendRadius.Inside(Length.FromMeters(50)))));
    }

    [Theory]
    [InlineData(60, "face-length", true)]
    [InlineData(10, "pinched-not-wrapped", false)]
    public void A_short_face_is_said(double millimeters, string code, bool minor)
    {
        Die die = new("short", Length.FromMillimeters(200), ReferenceFace.InsideOfBar, Length.FromMillimeters(millimeters));
        Advisory advisory = Assert.Single(new WrapBending().Form(Square, die).Advisories, advisory => advisory.Code == code);
        Assert.Equal(minor, advisory.IsMinor);
        Assert.DoesNotContain(new WrapBending().Form(Square, Workshop.Die("all around", 200)).Advisories,
            advisory => advisory.Code is "face-length" or "pinched-not-wrapped");
    }

    /// <summary>A die that is itself the nose of a three-point bender counts with its own nose radius.</summary>
    [Fact]
    public void A_die_brings_its_own_nose()
    {
        Die own = new("own nose", Length.FromMillimeters(250), ReferenceFace.InsideOfBar, noseRadius: Length.FromMillimeters(80));
        FormedBend formed = new IncrementalThreePointBending(Workshop.Bender).Form(Workshop.RimSteel, own);
        FormedBend same =
            new IncrementalThreePointBending(new ThreePointSetup(Workshop.Bender.HalfSpan, Length.FromMillimeters(80))).Form(
                Workshop.RimSteel, Workshop.Die("B", 250));
        Assert.Equal(same.RingWhen(Release.Free), formed.RingWhen(Release.Free));
        Assert.NotEqual(
            new IncrementalThreePointBending(Workshop.Bender).Form(Workshop.RimSteel, Workshop.Die("B", 250)).RingWhen(Release.Free),
                formed.RingWhen(Release.Free));
    }
}
