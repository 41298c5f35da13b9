using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code on the pages of the documentation: each region appears there as it stands here.</summary>
public sealed class Snippets
{
    [Fact]
    public void From_bar_to_ring()
    {
        #region from-bar-to-ring
        var angle = new EqualAngle(
            leg: Length.FromMillimeters(30),
            thickness: Length.FromMillimeters(3),
            fillets: AngleFillets.Of(root: Length.FromMillimeters(5), toe: Length.FromMillimeters(2.5)));
        var law = new PerfectlyPlastic(
            elasticModulus: Pressure.FromGigapascals(205),
            yieldStress: Pressure.FromMegapascals(290));
        var steel = new BarMaterial("mild steel", law, Density.FromKilogramsPerCubicMeter(7850));

        var analysis = BendAnalysis.Of(angle.FlangeOut, steel);
        var loaded = analysis.LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));
        var released = loaded.Release(Release.HeldFlat);

        double neutralAxis = loaded.NeutralAxisFromInside.Millimeters;
        double insideDiameter = released.Ring.InsideDiameter.Millimeters;
        double blank = released.Ring.BlankLengthFor(Angle.FromDegrees(360)).Millimeters;
        #endregion

        Assert.InRange(neutralAxis, angle.FlangeOut.Properties.EqualAreaAxisFromInside.Millimeters, angle.FlangeOut.Properties.CentroidFromInside.Millimeters);
        Assert.True(insideDiameter > 2 * 240, "a wrapped bar finishes wider than the die");
        Assert.InRange(blank, Math.PI * insideDiameter, Math.PI * (insideDiameter + (2 * 30)));
    }

    [Fact]
    public void From_ring_to_bar()
    {
        var angle = new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp);
        var steel = Steel(290);

        #region from-ring-to-bar
        var analysis = BendAnalysis.Of(angle.FlangeOut, steel);
        var wanted = BendRadius.InsideDiameter(Length.FromMillimeters(500));
        var loaded = analysis.LoadedFor(finished: wanted, Release.HeldFlat);

        double radiusOnTheDie = loaded.InsideRadius.Millimeters;
        #endregion

        Assert.True(radiusOnTheDie < 250);
        Assert.Equal(500, loaded.Release(Release.HeldFlat).Ring.InsideDiameter.Millimeters, 1e-6);
    }

    [Fact]
    public void Yield_range()
    {
        var angle = new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Sharp);
        var steel = Steel(290);

        #region yield-range
        var onTheDie = BendRadius.Inside(Length.FromMillimeters(240));
        double DiameterAt(double yield) => BendAnalysis
            .Of(angle.FlangeOut, steel.WithYield(Pressure.FromMegapascals(yield)))
            .LoadedTo(onTheDie)
            .Release(Release.HeldFlat)
            .Ring.InsideDiameter.Millimeters;

        double tightest = DiameterAt(235);
        double widest = DiameterAt(360);
        #endregion

        Assert.True(tightest < widest, "harder yield springs back more");
    }

    private static BarMaterial Steel(double megapascals) => new(
        "mild steel",
        new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(megapascals)),
        Density.FromKilogramsPerCubicMeter(7850));
}
