using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>An invented workshop that makes hoops and rims for garden planters: its bars, dies and bender.</summary>
internal static class Workshop
{
    public static OrientedSection Rim { get; } = new EqualAngle(
        Length.FromMillimeters(30), Length.FromMillimeters(3),
            AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5))).FlangeOut;

    public static BarMaterial Steel { get; } = Mild(290, null);

    public static BendAnalysis RimSteel { get; } = BendAnalysis.Of(Rim, Steel);

    public static ThreePointSetup Bender { get; } = new(Length.FromMillimeters(130), Length.FromMillimeters(10));

    public static DieRack Rack { get; } = new([Die("C", 300), Die("A", 200), Die("D", 360), Die("B", 250)]);

    public static BarMaterial Mild(double megapascals, PressureRange? range) => new(
        "mild steel",
        new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(megapascals), Pressure.FromMegapascals(1500)),
        Density.FromKilogramsPerCubicMeter(7850),
        yieldRange: range);

    public static PressureRange Range(double low, double high) => new(Pressure.FromMegapascals(low), Pressure.FromMegapascals(high));

    public static Die Die(string name, double millimeters, ReferenceFace? face = null) =>
        new(name, Length.FromMillimeters(millimeters), face ?? ReferenceFace.InsideOfBar);

    public static BendRadius Inside(double millimeters) => BendRadius.Inside(Length.FromMillimeters(millimeters));
}
