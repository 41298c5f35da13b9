using System.Globalization;
using BendMath.Bending;
using BendMath.Numerics;
using UnitsNet;

namespace BendMath;

/// <summary>How the finished inside radius answers to small changes of what went in: slopes at this state, for tolerances and for a next try. Immutable and thread-safe.</summary>
public sealed record RingSensitivity
{
    private const double Step = 2e-4;

    private readonly double _perYield;

    private RingSensitivity(double perLoadedRadius, double perYield)
    {
        PerLoadedRadius = perLoadedRadius;
        _perYield = perYield;
    }

    /// <summary>Change of the finished inside radius over the change of the loaded inside radius; above one, because a wider bend springs back more.</summary>
    /// <remarks>
    /// Equation: dR_f/dR_i, with dy_n/dR_i from dN = 0.
    /// Range: small changes; exact slope.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public double PerLoadedRadius { get; }

    /// <summary>Change of the finished inside radius when the yield stress rises by one megapascal, the other numbers of the law kept as <see cref="StressStrainLaw.WithYield"/> keeps them.</summary>
    /// <remarks>
    /// Equation: dR_f/dσ_y·1 MPa, with dy_n/dσ_y from dN = 0.
    /// Range: small changes; the effect of the yield on the integrals of the plastic strain is a central difference of fourth order.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length PerMegapascalOfYield => Length.FromMeters(1e6 * _perYield);

    /// <summary>Both slopes.</summary>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture, "{0:0.####} per loaded radius, {1:0.####} mm per MPa of yield", PerLoadedRadius, 1e9 * _perYield);

    internal static RingSensitivity Of(ReleasedBend released)
    {
        LoadedBend loaded = released.Loaded;
        BendAnalysis analysis = loaded.Analysis;
        ref readonly AreaMoments m = ref analysis.Moments;
        ref readonly BentState state = ref loaded.State;
        bool free = released.Kind == Release.Free;
        PlasticSums sums = analysis.Law.Integrate(analysis.Section.Profile, state.Curvature, state.NeutralAxis);
        double yield = analysis.Material.Law.YieldStress.Pascals;
        return new(
            FinishedSlope(m, state, StateSlopes.OfRadius(m, state, sums), free),
            FinishedSlope(m, state, StateSlopes.OfLaw(m, state, sums, YieldEffect(analysis, state)), free) / yield);
    }

    /// <summary>Change of R_f = (1 + P0/A − κ_f·ȳ)/κ_t.</summary>
    private static double FinishedSlope(in AreaMoments m, in BentState state, in StateSlopes slopes, bool free)
    {
        (double f, double r) = state.Permanent(m, free);
        (double df, double dr) = BentState.Unloaded(m, free, slopes.Pb, slopes.Pr);
        double total = Math.Sqrt(f * f + r * r);
        double inside = (1 + state.Sums.P0 / m.Area - f * m.CentroidY) / total;
        return (slopes.P0 / m.Area - df * m.CentroidY - inside * (f * df + r * dr) / total) / total;
    }

    /// <summary>Change of P0, Pb and Pr with the logarithm of the yield, at fixed strains.</summary>
    private static PlasticMoments YieldEffect(BendAnalysis analysis, in BentState state)
    {
        BandProfile profile = analysis.Section.Profile;
        double curvature = state.Curvature;
        double axis = state.NeutralAxis;
        PlasticMoments far = At(2), near = At(1), back = At(-1), farBack = At(-2);
        return new(
            Slope(far.P0, near.P0, back.P0, farBack.P0),
            Slope(far.Pb, near.Pb, back.Pb, farBack.Pb),
            Slope(far.Pr, near.Pr, back.Pr, farBack.Pr));

        PlasticMoments At(int steps) => analysis.LawAtYield(1 + steps * Step).MomentsOf(profile, curvature, axis);

        static double Slope(double far, double near, double back, double farBack) => (8 * (near - back) - (far - farBack)) / (12 * Step);
    }
}
