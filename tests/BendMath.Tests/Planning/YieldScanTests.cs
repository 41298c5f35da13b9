using BendMath.Tests.Forming;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Planning;

public sealed class YieldScanTests
{
    private static readonly Die Die = Workshop.Die("B", 250);

    private static readonly Die Wide = Workshop.Die("wide", 2000);

    /// <summary>Wrap bending is monotone in yield: the ends of the range are the rings of the lowest and the highest yield.</summary>
    [Fact]
    public void The_range_of_wrapping_ends_at_the_ends_of_the_yield()
    {
        YieldScan scan = Scan(new WrapBending(), Workshop.Mild(290, Workshop.Range(235, 360)));
        Assert.Null(scan.Note);
        Assert.Equal(Ring(new WrapBending(), 235, Die).InsideDiameter.Millimeters, scan.InsideDiameter!.Low.Millimeters, 1e-9);
        Assert.Equal(Ring(new WrapBending(), 360, Die).InsideDiameter.Millimeters, scan.InsideDiameter.High.Millimeters, 1e-9);
    }

    /// <summary>
    /// Incremental bending is not monotone in yield: the tightest ring lies at a yield between the ends and, here, between two points of the scan.
    /// The range still contains the most likely ring.
    /// </summary>
    [Fact]
    public void The_range_contains_the_nominal_ring_even_where_the_ring_is_tightest()
    {
        IncrementalThreePointBending model = new(Workshop.Bender);
        double coarse = Enumerable.Range(0, 31).Select(i => 100 + i * 25d).MinBy(yield => Ring(model, yield, Wide).InsideDiameter.Meters);
        double tightest = Enumerable.Range(-25, 51).Select(i => coarse + i).MinBy(yield => Ring(model, yield, Wide).InsideDiameter.Meters);
        Assert.InRange(tightest, 101, 849);
        AssertContains(model, Wide, tightest, tightest - 10, tightest + 80);
    }

    [Property(MaxTest = 20)]
    public Property The_range_of_wrapping_contains_the_nominal_ring() => Prop.ForAll(
        Gen.Elements(100d, 150, 200, 300).ToArbitrary(), Gen.Elements(500d, 600, 900).ToArbitrary(), Sold.Part.ToArbitrary(), (low, high, part) =>
            AssertContains(new WrapBending(), Die, low + part * (high - low), low, high));

    [Fact]
    public void One_number_for_the_yield_gives_no_range()
    {
        YieldScan scan = Scan(new WrapBending(), Workshop.Steel);
        Assert.Null(scan.InsideDiameter);
        Assert.Null(scan.DevelopedLength);
        Assert.Equal("no range: the yield of mild steel is given as one number", scan.Note);
        Assert.Equal(scan.Note, scan.ToString());
    }

    [Fact]
    public void A_yield_at_which_the_bar_stays_elastic_gives_no_range()
    {
        YieldScan scan = YieldScan.Of(
            new WrapBending(), Analysis(Workshop.Mild(290, Workshop.Range(235, 360))), Workshop.Die("wide", 14_000), Release.Free, ArcExtent.FullRing);
        Assert.Null(scan.InsideDiameter);
        Assert.StartsWith("no range: at a yield of ", scan.Note, StringComparison.Ordinal);
        Assert.EndsWith("MPa the bar springs back straight", scan.Note, StringComparison.Ordinal);
    }

    private static void AssertContains(FormingModel model, Die die, double yield, double low, double high)
    {
        YieldScan scan = YieldScan.Of(model, Analysis(Workshop.Mild(yield, Workshop.Range(low, high))), die, Release.Free, ArcExtent.FullRing);
        FinishedRing ring = Ring(model, yield, die);
        Assert.InRange(ring.InsideDiameter.Meters, scan.InsideDiameter!.Low.Meters, scan.InsideDiameter.High.Meters);
        Length blank = ring.BlankLengthFor(ArcExtent.FullRing.Turn);
        Assert.InRange(blank.Meters, scan.DevelopedLength!.Low.Meters * (1 - 1e-15), scan.DevelopedLength.High.Meters * (1 + 1e-15));
    }

    private static YieldScan Scan(FormingModel model, BarMaterial material) => YieldScan.Of(model, Analysis(material), Die, Release.Free, ArcExtent.FullRing);

    private static FinishedRing Ring(FormingModel model, double yield, Die die) => model.Form(Analysis(Workshop.Mild(yield, null)), die).RingWhen(Release.Free);

    private static BendAnalysis Analysis(BarMaterial material) => BendAnalysis.Of(Workshop.Rim, material);
}
