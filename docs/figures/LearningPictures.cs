using BendMath;
using BendMath.Forming.Variation;
using BendMath.Learning;
using BendMath.Plotting;
using UnitsNet;

namespace Figures;

/// <summary>The pictures about measured rings. Bars, dies and rings invented; the first shows the rings of the page.</summary>
internal static class LearningPictures
{
    private static readonly OrientedSection Angle = new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(Mm(5), Mm(2.5))).FlangeOut;

    private static readonly int[] Radii = [200, 250, 300, 360], RadiiInInches = [8, 10, 12, 14];

    private static readonly DieRack Rack = new(Radii.Select(radius => new Die($"{radius}", Mm(radius), ReferenceFace.InsideOfBar)));

    private static readonly WrapBending Wrap = new();

    public static IEnumerable<Picture> All =>
    [
        Picture.Of("rings-ratio",
            Fitted([("200", 373), ("250", 468), ("250", 471), ("300", 566), ("360", 680), ("360", 686)], 565, 4,
                "Six measured rings: one ratio")),
        Picture.Of("rings-line",
            Fitted([("200", 395), ("200", 393), ("250", 489), ("250", 486), ("300", 540), ("300", 577), ("360", 681), ("360", 676)], 490,
                10, "Eight measured rings: a line, and one ring to look at again")),
        Picture.Of("rings-bounds", Bounds()),
    ];

    private static BendFigure Fitted((string Die, double InsideDiameter)[] rings, double wanted, double tolerance, string title)
    {
        BendAnalysis bending = BendAnalysis.Of(Angle, Steel(null));
        MeasuredRing[] measured =
            [.. rings.Select(ring => new MeasuredRing(Rack.Find(ring.Die)!, bending, BendRadius.InsideDiameter(Mm(ring.InsideDiameter)), Release.Free))];
        RingFit fit = RingFit.Of(measured, bending, Wrap);
        return BendFigure.OfDies(
            DieChoice.For(Rack, bending, BendRadius.InsideDiameter(Mm(wanted)), fit.Model, Release.Free, Mm(tolerance)),
            inInches: false, fit, title);
    }

    private static BendFigure Bounds()
    {
        BendAnalysis bending = BendAnalysis.Of(Angle, Steel(new(Pressure.FromMegapascals(235), Pressure.FromMegapascals(355))));
        InputVariation scatter = new(bending.Material.YieldRange, curvature: Ratio.FromPercent(2));
        DieRack rack = new(RadiiInInches.Select(radius => new Die($"{radius} in", Length.FromInches(radius), ReferenceFace.InsideOfBar)));
        return BendFigure.OfDies(
            DieChoice.For(rack, bending, BendRadius.InsideDiameter(Length.FromInches(24.5)), Wrap, Release.Free, Length.FromInches(0.25),
                scatter: scatter), inInches: true, name: "Nothing measured yet: bounds");
    }

    private static BarMaterial Steel(PressureRange? range) => new(
        "mild steel",
        new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500)),
        Density.FromKilogramsPerCubicMeter(7850),
        yieldRange: range);

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
