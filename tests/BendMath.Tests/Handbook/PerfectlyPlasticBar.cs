using UnitsNet;

namespace BendMath.Tests.Handbook;

/// <summary>
/// A perfectly plastic bar, addressed by the share of the half-depth that stays elastic, η = yield curvature over curvature.
/// </summary>
internal sealed class PerfectlyPlasticBar(OrientedSection section, Pressure modulus, Pressure yield)
{
    public PerfectlyPlasticBar(OrientedSection section)
        : this(section, Pressure.FromGigapascals(200), Pressure.FromMegapascals(250))
    {
    }

    public BendAnalysis Analysis { get; } =
        BendAnalysis.Of(section, new BarMaterial("steel", new PerfectlyPlastic(modulus, yield), Density.FromKilogramsPerCubicMeter(7850)));

    public LoadedBend AtCore(double coreRatio) => Analysis.LoadedAt(Analysis.YieldCurvature / coreRatio);

    /// <summary>Moment over the moment at first yield.</summary>
    public double MomentRatio(double coreRatio) => AtCore(coreRatio).BendingMoment / Analysis.YieldMoment;

    public double KeptCurvature(double coreRatio) => AtCore(coreRatio).Release(Release.HeldFlat).CurvatureKept;

    /// <summary>The state a moment between first yield and the plastic moment brings about.</summary>
    public LoadedBend AtMoment(Torque moment)
    {
        double target = moment.NewtonMeters;
        double yieldCurvature = Analysis.YieldCurvature.InverseMeters;
        double curvature = MathNet.Numerics.RootFinding.Brent.FindRoot(
            k => Analysis.MomentAt(ReciprocalLength.FromInverseMeters(k)).NewtonMeters - target, yieldCurvature, 20 * yieldCurvature,
                1e-12 * yieldCurvature);
        return Analysis.LoadedAt(ReciprocalLength.FromInverseMeters(curvature));
    }

    /// <summary>Depth of the elastic core of a section symmetric about the bending axis.</summary>
    public Length Core(LoadedBend loaded) =>
        Length.FromMeters(2 * Analysis.Law.YieldStress.Pascals / modulus.Pascals / loaded.Curvature.InverseMeters);
}
