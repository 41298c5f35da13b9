using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Tests.Definitions;
using UnitsNet;

namespace BendMath.Tests.Forming.Bumps;

/// <summary>A bump over a nose that is not a point: the two contact equations with the running state of the bar.</summary>
public sealed class BluntBumpTests
{
    private static readonly ReferenceTable Cases = ReferenceTable.Load("Definitions/mechanisms.csv");

    public static TheoryData<ReferenceRow> Bumped => new(Cases.Where(row => row["kind"] == "bump"));

    /// <summary>
    /// Independent program to the definition, at stations along the bar; not a published source. Its digits are 4 to 5, and it asks for
    /// 1e-3.
    /// </summary>
    [Theory]
    [MemberData(nameof(Bumped))]
    public void Settled_ring_is_that_of_the_independent_program(ReferenceRow row)
    {
        BendAnalysis analysis = CaseRow.Analysis(row);
        ThreePointSetup setup = new(CaseRow.Millimeters(row, "half_span_mm"), CaseRow.Millimeters(row, "nose_radius_mm"));
        (double curvature, BluntBump.Touch last) =
            Bend(analysis, setup, CaseRow.Millimeters(row, "stroke_mm").Meters, CaseRow.Millimeters(row, "feed_mm").Meters);
        new Comparison(row)
            .Relative("curvature_per_mm", curvature / 1e3, 1e-4)
            .Relative("bending_moment_nmm", last.Tent.Peak * 1e3, 1e-4)
            .Relative("flat_inside_radius_mm",
            BumpedBar.LoadedLeaving(analysis, curvature)!.Release(Release.HeldFlat).Ring.InsideRadius.Millimeters, 1e-4)
            .Verify(3);
    }

    /// <summary>
    /// As the feed goes to zero the ring becomes that of steady three-point bending over the same nose, at first order in the feed:
    /// halving it halves the difference.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    [InlineData(34.5)]
    public void Small_feeds_tend_to_steady_three_point_bending(double nose)
    {
        BendAnalysis analysis = Flat();
        ThreePointSetup setup = new(Length.FromMillimeters(80), Length.FromMillimeters(nose));
        double steady =
            new IncrementalThreePointBending(setup).FormAtStroke(analysis, Length.FromMillimeters(12.8)).Loaded.Release(
                Release.HeldFlat).Ring.Curvature.InverseMeters;
        double before = 0;
        foreach (int part in new[] { 16, 32, 64 })
        {
            double apart = 1 - (Bend(analysis, setup, 0.0128, 0.080 / part).Curvature / steady);
            Assert.InRange(apart, 0.05 / part, 0.6 / part);
            if (before > 0)
            {
                Assert.InRange(before / apart, 1.6, 2.6);
            }

            before = apart;
        }
    }

    /// <summary>A straight bar is touched in the middle, by symmetry; further on the contact moves toward the straight part.</summary>
    [Fact]
    public void First_bite_is_symmetric_and_the_next_is_not()
    {
        BendAnalysis analysis = Flat();
        ThreePointSetup setup = new(Length.FromMillimeters(80), Length.FromMillimeters(34.5));
        BluntBump bump = new(analysis, setup);
        MomentEnvelope bar = new(analysis.FirstLoading, 1);
        bar.Reserve(4);
        BluntBump.Touch first = bump.At(bar, 0.2, setup.NominalOf(0.005));
        Near.Absolute(0, first.Shift, 1e-9, "shift");
        bar.Raise(0.2 + first.Shift, first.Tent);
        Assert.InRange(bump.At(bar, 0.22, setup.NominalOf(0.005)).Shift, 0.0005, 0.02);
        Assert.InRange(bump.At(bar, 0.18, setup.NominalOf(0.005)).Shift, -0.02, -0.0005);
    }

    /// <summary>A bar that is bent enough already clears the supports: nothing happens.</summary>
    [Fact]
    public void The_same_place_with_less_stroke_is_not_touched()
    {
        BendAnalysis analysis = Flat();
        ThreePointSetup setup = new(Length.FromMillimeters(80), Length.FromMillimeters(34.5));
        BluntBump bump = new(analysis, setup);
        MomentEnvelope bar = new(analysis.FirstLoading, 1);
        bar.Reserve(4);
        BluntBump.Touch first = bump.At(bar, 0.2, setup.NominalOf(0.012));
        bar.Raise(0.2, first.Tent);
        Assert.Equal(0, bump.At(bar, 0.2, setup.NominalOf(0.004)).Tent.Peak);
    }

    private static BendAnalysis Flat() => BendAnalysis.Of(
        new FlatBar(Length.FromMillimeters(20), Length.FromMillimeters(8)).EasyWay,
        new BarMaterial("steel",
            new LinearHardening(Pressure.FromGigapascals(200), Pressure.FromMegapascals(310), Pressure.FromMegapascals(1500)),
                Density.FromKilogramsPerCubicMeter(7850)));

    /// <summary>
    /// A pass of four half-spans and thirty feeds, when the kink of the first bite has died out; mean curvature of the last two feeds
    /// that no further bump reaches.
    /// </summary>
    private static (double Curvature, BluntBump.Touch Last) Bend(BendAnalysis analysis, ThreePointSetup setup, double stroke, double feed)
    {
        double a = setup.HalfSpan.Meters;
        int bumps = (int)Math.Ceiling(4 * a / feed) + 30;
        BluntBump bump = new(analysis, setup);
        MomentEnvelope bar = new(analysis.FirstLoading, (2 * a) + ((bumps + 1) * feed));
        bar.Reserve(bumps + 1);
        BluntBump.Touch touch = default;
        for (int i = 0; i <= bumps; i++)
        {
            touch = bump.At(bar, a + (i * feed), setup.NominalOf(stroke));
            bar.Raise(a + (i * feed) + touch.Shift, touch.Tent);
        }

        double end = bumps * feed;
        return (bar.Turn(end - (2 * feed), end) / (2 * feed), touch);
    }
}
