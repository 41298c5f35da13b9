using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>
/// A flat 20 × 8 mm bumped the easy way over a half-span of 60 mm, until the contacts lie on a circle of 150 mm where nothing else is said.
/// Metals and bender invented. Meters.
/// </summary>
internal static class BumpCase
{
    public const double HalfSpan = 0.06, Nominal = 1 / 0.15, Modulus = 205e9, Yield = 280e6, Tangent = 1500e6, Width = 0.02, Depth = 0.008;

    public static HardeningFlat Closed { get; } = new(Width, Depth, Modulus, Yield, Tangent);

    public static BendAnalysis Hardening { get; } =
        Of(new LinearHardening(Pressure.FromPascals(Modulus), Pressure.FromPascals(Yield), Pressure.FromPascals(Tangent)));

    public static BendAnalysis WithoutHardening { get; } =
        Of(new PerfectlyPlastic(Pressure.FromPascals(Modulus), Pressure.FromPascals(Yield)));

    public static ThreePointSetup Sharp { get; } = new(M(HalfSpan), Length.Zero);

    /// <summary>A power law whose elastic part is a ten-thousandth of ordinary steel's.</summary>
    public static BendAnalysis Rigid(double n) =>
        Of(new PowerHardening(Pressure.FromPascals(1e4 * Modulus), Pressure.FromMegapascals(600), n));

    public static BendAnalysis Of(StressStrainLaw law) =>
        BendAnalysis.Of(new FlatBar(M(Width), M(Depth)).EasyWay, new("invented", law, Density.FromKilogramsPerCubicMeter(7850)));

    public static BumpBending Feeding(double feed, ThreePointSetup? setup = null) => new(setup ?? Sharp, M(feed));

    /// <summary>The stroke after which the circle through the contacts has a curvature: the smaller root of κ = 2δ/(a² + δ²).</summary>
    public static Length Stroke(double nominal) =>
        M(nominal * HalfSpan * HalfSpan / (1 + Math.Sqrt(1 - (nominal * nominal * HalfSpan * HalfSpan))));

    public static double Finished(FormedBend formed) => formed.RingWhen(Release.HeldFlat).Curvature.InverseMeters;

    public static Length M(double meters) => Length.FromMeters(meters);
}
