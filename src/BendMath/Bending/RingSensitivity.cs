using BendMath.Bending;
using BendMath.Bending.Guides;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath;

/// <summary>
/// How the finished inside radius answers to small changes of what went in: slopes at this state, for tolerances and for a next try.
/// Immutable and thread-safe.
/// </summary>
public sealed record RingSensitivity
{
    internal const double Step = 2e-4;

    private readonly double _perYield;

    internal RingSensitivity(double perLoadedRadius, double perYield, double? perThickness = null)
    {
        PerThickness = perThickness;
        PerLoadedRadius = perLoadedRadius;
        _perYield = perYield;
    }

    /// <summary>
    /// Change of the finished inside radius over the change of the loaded inside radius; above one, because a wider bend springs back more.
    /// </summary>
    /// <remarks>
    /// Equation: dR_f/dR_i, with dy_n/dR_i from dN = 0.
    /// Range: small changes; exact slope.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public double PerLoadedRadius { get; }

    /// <summary>
    /// Change of the finished inside radius when the yield stress rises by one megapascal, the other numbers of the law kept as
    /// <see cref="StressStrainLaw.WithYield"/> keeps them.
    /// </summary>
    /// <remarks>
    /// Equation: dR_f/dσ_y·1 MPa, with dy_n/dσ_y from dN = 0.
    /// Range: small changes; the effect of the yield on the integrals of the plastic strain is a central difference of fourth order.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public Length PerMegapascalOfYield => Length.FromMeters(1e6 * _perYield);

    /// <summary>
    /// Change of the finished inside radius over the change of the thickness of an angle or flat, the wall of a tube, or the size of a
    /// solid square, round or hexagon, at the same loaded inside radius and outside dimensions; null for shapes with more than one
    /// thickness, and for drawn outlines.
    /// </summary>
    /// <remarks>
    /// Equation: dR_f/dt.
    /// Range: small changes; fillets stay as they are, corner radii of tubes go with the wall; central difference of fourth order of whole
    /// calculations.
    /// Source: <see cref="Sources.Mechanics"/>
    /// </remarks>
    public double? PerThickness { get; }

    /// <summary>Change of the finished inside radius when the stiffness k of the guide rises by one hundredth of E·I_r; null without
    /// one.</summary>
    /// <remarks>
    /// Equation: 0.01·E·I_r·dR_f/dk.
    /// Range: as <see cref="Of(ReleasedBend, OutOfPlaneGuide)"/>.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Length? PerHundredthOfStiffness { get; internal init; }

    /// <summary>Change of the dish when the loaded radius grows by one millimeter; null without a guide that gives.</summary>
    /// <remarks>
    /// Equation: dβ/dR_i·1 mm, β the dish angle.
    /// Range: as <see cref="Of(ReleasedBend, OutOfPlaneGuide)"/>.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Angle? DishPerMillimeterOfRadius { get; internal init; }

    /// <summary>Change of the dish when the yield stress rises by one megapascal; null without a guide that gives.</summary>
    /// <remarks>
    /// Equation: dβ/dσ_y·1 MPa.
    /// Range: as <see cref="Of(ReleasedBend, OutOfPlaneGuide)"/>.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Angle? DishPerMegapascalOfYield { get; internal init; }

    /// <summary>Change of the dish when the stiffness k rises by one hundredth of E·I_r; null without a guide that gives.</summary>
    /// <remarks>
    /// Equation: 0.01·E·I_r·dβ/dk.
    /// Range: as <see cref="Of(ReleasedBend, OutOfPlaneGuide)"/>.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public Angle? DishPerHundredthOfStiffness { get; internal init; }

    /// <summary>The slopes of a ring bent along a guide that gives; those over the thickness are left out.</summary>
    /// <param name="released">A ring bent along the guide and let go elastically.</param>
    /// <param name="guide">The guide it was bent along.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The bar came back straight, was pulled, did not unload elastically with Young's modulus, or
    /// was not bent along this guide.</exception>
    /// <remarks>
    /// Equation: implicit slopes of N = 0 and M_r + k·κ_r = 0, dκ_r/dk = −κ_r/(d(M_r + k·κ_r)/dκ_r), carried through an elastic release.
    /// Range: small changes; held flat and without guide included, where the slope over k is one-sided.
    /// Source: <see cref="Sources.Mechanisms"/>
    /// </remarks>
    public static RingSensitivity Of(ReleasedBend released, OutOfPlaneGuide guide) =>
        GuideSlopes.Of(Guard.NotNull(released, nameof(released)), Guard.NotNull(guide, nameof(guide)));

    /// <summary>The slopes.</summary>
    public override string ToString()
    {
        string thickness = PerThickness is { } slope ? Invariant($", {slope:0.####} per thickness") : string.Empty;
        string guide = PerHundredthOfStiffness is { } stiffer ? Invariant($", {stiffer.Millimeters:0.####} mm per hundredth of stiffness")
            : string.Empty;
        return Invariant(
            $"{PerLoadedRadius:0.####} per loaded radius, {1e9 * _perYield:0.####} mm per MPa of yield{thickness}{guide}");
    }

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
            FinishedSlope(analysis, state, StateSlopes.OfRadius(m, state, sums), 1, free),
            FinishedSlope(analysis, state, StateSlopes.OfLaw(m, state, sums, YieldEffect(analysis, state)), 0, free) / yield,
            ThicknessSlope(analysis, state.InsideRadius, released.Kind));
    }

    /// <summary>Change of R_f = (1 + P0/A − κ_f·ȳ)/κ_t, where the loaded radius changes by a number of units.</summary>
    private static double FinishedSlope(BendAnalysis analysis, in BentState state, in StateSlopes slopes, double radius, bool free)
    {
        ref readonly AreaMoments m = ref analysis.Moments;
        (double f, double r) = state.Left(m, free, analysis.Unloading);
        (double df, double dr) = BentState.Unloaded(m, free, slopes.Pb, slopes.Pr);
        if (analysis.Unloading < 1)
        {
            double more = 1 / analysis.Unloading - 1;
            df -= more * (-state.Curvature * state.Curvature * (radius + slopes.Axis) - df);
            dr += more * dr;
        }

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
        return YieldEffect(At);

        PlasticMoments At(int steps) => analysis.LawAtYield(1 + steps * Step).MomentsOf(profile, curvature, axis);
    }

    /// <summary>Slopes of the plastic integrals from those some steps away.</summary>
    internal static PlasticMoments YieldEffect(Func<int, PlasticMoments> at)
    {
        PlasticMoments far = at(2), near = at(1), back = at(-1), farBack = at(-2);
        return new(
            Slope(far.P0, near.P0, back.P0, farBack.P0),
            Slope(far.Pb, near.Pb, back.Pb, farBack.Pb),
            Slope(far.Pr, near.Pr, back.Pr, farBack.Pr));
    }

    /// <summary>
    /// Null where the shape has no single thickness, or none of the neighbors is a bar, or the bar springs back straight at one of them.
    /// </summary>
    private static double? ThicknessSlope(BendAnalysis analysis, double insideRadius, Release release)
    {
        BarStock stock = analysis.Section.Stock;
        if (stock.MainThickness is not { } thickness)
        {
            return null;
        }

        return At(2) is { } far && At(1) is { } near && At(-1) is { } back && At(-2) is { } farBack
            ? Slope(far, near, back, farBack) / thickness
            : null;

        double? At(int steps)
        {
            if (stock.WithThickness(thickness * (1 + steps * Step))?.Lying(analysis.Section.Orientation) is not { } section)
            {
                return null;
            }

            ReleasedBend released = BendAnalysis.Of(section, analysis.Material, analysis.StressState)
                .LoadedTo(BendRadius.Inside(Length.FromMeters(insideRadius))).Release(release);
            return released.IsStraight ? null : released.Ring.Inside;
        }
    }

    /// <summary>Slope at the middle of five points.</summary>
    private static double Slope(double far, double near, double back, double farBack) =>
        (8 * (near - back) - (far - farBack)) / (12 * Step);
}
