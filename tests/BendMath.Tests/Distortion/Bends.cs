using BendMath.Distortion;
using UnitsNet;

namespace BendMath.Tests.Distortion;

/// <summary>Bends of an invented workshop for the distortion checks.</summary>
internal static class Bends
{
    public static BarMaterial Steel { get; } = new(
        "mild steel",
        new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500)),
        Density.FromKilogramsPerCubicMeter(7850),
        Ratio.FromPercent(26));

    public static BarMaterial Plastic { get; } = new(
        "plain steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290)),
            Density.FromKilogramsPerCubicMeter(7850), poissonsRatio: 0.3);

    public static EqualAngle RimAngle { get; } = new(Mm(30), Mm(3), AngleFillets.Of(Mm(5), Mm(2.5)));

    public static FlatBar Flat { get; } = new(Mm(25), Mm(5));

    public static RoundTube Tube { get; } = new(Mm(33.7), Mm(3.2));

    public static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);

    public static LoadedBend At(OrientedSection section, double insideMillimeters, BarMaterial? steel = null) =>
        BendAnalysis.Of(section, steel ?? Steel).LoadedTo(BendRadius.Inside(Mm(insideMillimeters)));

    public static DistortionFinding? Find(this DistortionReport report, string check) =>
        report.Findings.SingleOrDefault(finding => finding.Check == check);
}
