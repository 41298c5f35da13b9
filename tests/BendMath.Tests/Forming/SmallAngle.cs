using BendMath.Forming.ThreePoint;
using BendMath.Learning;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>
/// A 3/4 × 3/4 × 1/8 in angle, flange out, over a die stamped 5 in. Root 1/8 in and toe 1/16 in are those of bar-size angles, from memory.
/// The yield is invented within what such bars have.
/// </summary>
internal static class SmallAngle
{
    public static EqualAngle Bar { get; } = new(
        Length.FromInches(0.75), Length.FromInches(0.125), AngleFillets.Of(root: Length.FromInches(0.125), toe: Length.FromInches(0.0625)));

    public static BendRadius Nine { get; } = BendRadius.InsideDiameter(Length.FromInches(9));

    public static BendRadius TenInches { get; } = BendRadius.InsideDiameter(Length.FromInches(10));

    public static ThreePointSetup Setup { get; } = new(halfSpan: Length.FromInches(3), noseRadius: Length.Zero);

    public static Die FiveInches { get; } = DieOf(5, ReferenceFace.InsideOfBar);

    public static BendAnalysis Hardening { get; } = BendAnalysis.Of(Bar.FlangeOut, Steel(new LinearHardening(
        Pressure.FromGigapascals(200), Pressure.FromMegapascals(300), Pressure.FromMegapascals(1500))));

    public static BendAnalysis PerfectlyPlastic { get; } = BendAnalysis.Of(Bar.FlangeOut, Steel(new PerfectlyPlastic(
        Pressure.FromGigapascals(200), Pressure.FromMegapascals(300))));

    /// <summary>The die and a ring of 9 in inside diameter that came off it.</summary>
    public static RingDiagnosis Correction { get; } =
        RingDiagnosis.Of(new MeasuredRing(FiveInches, Hardening, Nine, Release.Free), new WrapBending(Setup));

    public static Die DieOf(double inches, ReferenceFace face) =>
        new(FormattableString.Invariant($"{inches} in"), Length.FromInches(inches), face);

    private static BarMaterial Steel(StressStrainLaw law) => new("mild steel", law, Density.FromKilogramsPerCubicMeter(7850));
}
