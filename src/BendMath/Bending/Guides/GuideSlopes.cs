using BendMath.Bending.Unloading;
using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;
using BendMath.Numerics.Integrals;
using UnitsNet;

namespace BendMath.Bending.Guides;

/// <summary>The slopes of <see cref="RingSensitivity.Of(ReleasedBend, OutOfPlaneGuide)"/>.</summary>
internal static class GuideSlopes
{
    public static RingSensitivity Of(ReleasedBend released, OutOfPlaneGuide guide)
    {
        LoadedBend loaded = released.Loaded;
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
        double unit = loaded.Analysis.Moments.SecondZ;
        (double perRadius, double dishPerRadius) = EffectOf(released, slopes.Of(1, 0, none));
        (double perStiffness, double dishPerStiffness) = EffectOf(released, slopes.Of(0, unit, none));
        (double perYield, double dishPerYield) = EffectOf(released, slopes.Of(0, 0, YieldEffect(loaded)));
        double yield = loaded.Analysis.Material.Law.YieldStress.Pascals;
        return new(perRadius, perYield / yield)
        {
            PerHundredthOfStiffness = Length.FromMeters(0.01 * perStiffness),
            DishPerMillimeterOfRadius = Angle.FromRadians(1e-3 * dishPerRadius),
            DishPerMegapascalOfYield = Angle.FromRadians(1e6 * (dishPerYield / yield)),
            DishPerHundredthOfStiffness = Angle.FromRadians(0.01 * dishPerStiffness),
        };
    }

    private static (double Inside, double Dish) EffectOf(ReleasedBend released, in LeaningSlopes.Change change)
    {
        AreaMoments m = released.Loaded.Analysis.Moments;
        bool free = released.Kind == Release.Free;
        (double f, double r) = released.Loaded.State.Permanent(m, free);
        (double df, double dr) = BentState.Unloaded(m, free, change.Pb, change.Pr);
        double total = released.Ring.TotalCurvature;
        return (
            (change.P0 / m.Area - df * m.CentroidY - released.Ring.Inside * (f * df + r * dr) / total) / total,
            (f * dr - r * df) / (total * total));
    }

    /// <summary>Change of the plastic integrals with the logarithm of the yield, at fixed strains.</summary>
    private static PlasticMoments YieldEffect(LoadedBend loaded)
    {
        BentState state = loaded.State;
        BendAnalysis analysis = loaded.Analysis;
        return RingSensitivity.YieldEffect(At);

        PlasticMoments At(int steps) =>
            LeaningState.MomentsOf(analysis.Section, analysis.LawAtYield(1 + steps * RingSensitivity.Step), state);
    }
}
