using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath.Bending.Guides;

/// <summary>How a ring bent along a guide that gives answers to small changes of what went in. Immutable and thread-safe.</summary>
/// <remarks>
/// Equation: implicit slopes of N = 0 and M_r + k·κ_r = 0, dκ_r/dk = −κ_r/(d(M_r + k·κ_r)/dκ_r), carried through an elastic release.
/// Range: small changes; held flat and without guide included, where the slope over k is one-sided.
/// Source: <see cref="Sources.Mechanisms"/>
/// </remarks>
public sealed record GuideSensitivity
{
    private const double Step = 2e-4;

    private readonly Effect _radius;

    private readonly Effect _stiffness;

    private readonly Effect _yield;

    private GuideSensitivity(Effect radius, Effect stiffness, Effect yield)
    {
        _radius = radius;
        _stiffness = stiffness;
        _yield = yield;
    }

    /// <summary>Change of the finished inside radius over the change of the loaded one.</summary>
    public double PerLoadedRadius => _radius.Inside;

    /// <summary>Change of the finished inside radius when the yield stress rises by one megapascal.</summary>
    public Length PerMegapascalOfYield => Length.FromMeters(1e6 * _yield.Inside);

    /// <summary>Change of the finished inside radius when the stiffness k rises by one hundredth of E·I_r.</summary>
    public Length PerHundredthOfStiffness => Length.FromMeters(0.01 * _stiffness.Inside);

    /// <summary>Change of the dish when the loaded radius grows by one millimeter.</summary>
    public Angle DishPerMillimeterOfRadius => Angle.FromRadians(1e-3 * _radius.Dish);

    /// <summary>Change of the dish when the yield stress rises by one megapascal.</summary>
    public Angle DishPerMegapascalOfYield => Angle.FromRadians(1e6 * _yield.Dish);

    /// <summary>Change of the dish when the stiffness k rises by one hundredth of E·I_r.</summary>
    public Angle DishPerHundredthOfStiffness => Angle.FromRadians(0.01 * _stiffness.Dish);

    /// <summary>The slopes of a released ring.</summary>
    /// <param name="released">A ring bent along the guide and let go elastically.</param>
    /// <param name="guide">The guide it was bent along.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The bar came back straight, was pulled, did not unload elastically with Young's modulus, or
    /// was not bent along this guide.</exception>
    public static GuideSensitivity Of(ReleasedBend released, OutOfPlaneGuide guide)
    {
        LoadedBend loaded = Guard.NotNull(released, nameof(released)).Loaded;
        Guard.NotNull(guide, nameof(guide));
        if (released.IsStraight || loaded.IsPulled || released.Rule != UnloadingRule.Elastic || loaded.Analysis.Unloading < 1)
        {
            throw Guard.Refused(
                nameof(released), "must be a ring bent without pull and let go elastically, with the modulus itself", $"is {released}");
        }

        ref readonly BentState state = ref loaded.State;
        BentState own = guide.StateAt(loaded.Analysis, state.InsideRadius);
        if (Math.Abs(own.OutOfPlane - state.OutOfPlane) + Math.Abs(own.Curvature - state.Curvature) > 1e-6 * state.Curvature)
        {
            throw Guard.Refused(nameof(guide), "must be the one the bar was bent along", $"is {guide}");
        }

        LeaningSlopes slopes = new(loaded, guide.Stiffness);
        PlasticMoments none = default;
        StressStrainLaw law = loaded.Analysis.Law;
        double unit = loaded.Analysis.Moments.SecondZ;
        return new(
            EffectOf(released, slopes.Of(1, 0, none)),
            EffectOf(released, slopes.Of(0, unit, none)),
            EffectOf(released, slopes.Of(0, 0, YieldEffect(loaded))).Over(loaded.Analysis.Material.Law.YieldStress.Pascals));
    }

    /// <summary>The slopes of radius and dish.</summary>
    public override string ToString() => Invariant(
        $"{PerLoadedRadius:0.####} and {DishPerMillimeterOfRadius.Degrees:0.####}° per loaded "
            + $"radius, {PerMegapascalOfYield.Millimeters:0.####} mm and {DishPerMegapascalOfYield.Degrees:0.####}° per MPa of "
            + $"yield, {PerHundredthOfStiffness.Millimeters:0.####} mm and {DishPerHundredthOfStiffness.Degrees:0.####}° per hundredth of "
            + $"stiffness");

    private static Effect EffectOf(ReleasedBend released, in LeaningSlopes.Change change)
    {
        AreaMoments m = released.Loaded.Analysis.Moments;
        bool free = released.Kind == Release.Free;
        (double f, double r) = released.Loaded.State.Permanent(m, free);
        (double df, double dr) = BentState.Unloaded(m, free, change.Pb, change.Pr);
        double total = released.Ring.TotalCurvature;
        return new(
            (change.P0 / m.Area - df * m.CentroidY - released.Ring.Inside * (f * df + r * dr) / total) / total,
            (f * dr - r * df) / (total * total));
    }

    /// <summary>Change of the plastic integrals with the logarithm of the yield, at fixed strains.</summary>
    private static PlasticMoments YieldEffect(LoadedBend loaded)
    {
        BentState state = loaded.State;
        BendAnalysis analysis = loaded.Analysis;
        PlasticMoments far = At(2), near = At(1), back = At(-1), farBack = At(-2);
        return new(
            Slope(far.P0, near.P0, back.P0, farBack.P0), Slope(far.Pb, near.Pb, back.Pb, farBack.Pb),
                Slope(far.Pr, near.Pr, back.Pr, farBack.Pr));

        PlasticMoments At(int steps) => LeaningState.MomentsOf(analysis.Section, analysis.LawAtYield(1 + steps * Step), state);

        static double Slope(double far, double near, double back, double farBack) => (8 * (near - back) - (far - farBack)) / (12 * Step);
    }

    private readonly record struct Effect(double Inside, double Dish)
    {
        public Effect Over(double divisor) => new(Inside / divisor, Dish / divisor);
    }
}
