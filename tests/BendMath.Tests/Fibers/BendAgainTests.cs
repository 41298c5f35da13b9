using BendMath.Tests.Properties;

namespace BendMath.Tests.Fibers;

/// <summary>
/// Bend, release, bend tighter, release: what a bar of fibers with a memory does, beside what the library says of the last bend alone.
/// </summary>
public sealed class BendAgainTests
{
    public static MatrixTheoryData<string, double, Release, bool> Symmetric => new(
        ["flat 0", "flat 1", "square", "round", "tube"], [0, 1500], [Release.Free, Release.HeldFlat], [true, false]);

    public static MatrixTheoryData<string, double, Release, bool> Angles => new(
        ["sharp 0", "sharp 1", "rolled 0", "rolled 1"], [0, 1500], [Release.Free, Release.HeldFlat], [true, false]);

    /// <summary>
    /// By symmetry the neutral axis stays, every fiber is only bent further, and release stays elastic: the last bend alone counts, to
    /// rounding.
    /// </summary>
    [Theory]
    [MemberData(nameof(Symmetric))]
    public void Symmetric_sections_forget_the_first_bend(string name, double tangent, Release between, bool kinematic)
    {
        SoldBar bar = Bar(name);
        BendAnalysis analysis = Analysis(bar, tangent);
        LoadedBend direct = analysis.LoadedTo(BendRadius.Inside(8 * analysis.Section.Depth));
        double axis = direct.NeutralAxisFromInside.Meters;
        FiberBar fibers = Fibers(bar, tangent, kinematic, Core(direct), 1, 1);
        Bend(fibers, analysis, between, 12, 8, 4);
        Near.Relative(axis, fibers.NeutralAxis, 1e-12, "neutral axis");
        Near.Relative(direct.BendingMoment.NewtonMeters, fibers.Moment * analysis.Law.ElasticModulus.Pascals, 1e-12, "moment");
        Near.Relative(direct.Curvature.InverseMeters, fibers.Curvature, 1e-12, "curvature");
        fibers.Release(Release.HeldFlat);
        Near.Relative(direct.Release(Release.HeldFlat).Ring.Curvature.InverseMeters, fibers.Curvature, 1e-12, "finished curvature");
        Near.Relative(direct.Release(Release.HeldFlat).Ring.InsideRadius.Meters, fibers.InsideRadius, 1e-12, "finished radius");
    }

    /// <summary>
    /// In an angle the neutral axis wanders and fibers yield on release, so the path counts; measured here: at most 0.17 % of the finished
    /// radius.
    /// </summary>
    [Theory]
    [MemberData(nameof(Angles))]
    public void Angles_remember_less_than_two_in_a_thousand(string name, double tangent, Release between, bool kinematic)
    {
        SoldBar bar = Bar(name);
        BendAnalysis analysis = Analysis(bar, tangent);
        foreach ((double first, double second) in new[] { (12.0, 8.0), (40, 10), (9, 8) })
        {
            LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(second * analysis.Section.Depth));
            FiberBar fibers = Fibers(bar, tangent, kinematic, Core(loaded), 6, 3);
            Bend(fibers, analysis, between, first, second, 8);
            fibers.Release(between);
            FinishedRing direct = loaded.Release(between).Ring;
            Near.Relative(direct.InsideRadius.Meters, fibers.InsideRadius, 0.002, "finished radius");
        }
    }

    /// <summary>
    /// Loaded in one step the fibers hold the library's moment. Let go, some yield again, which the library leaves out: less than 0.1 % of
    /// the finished radius when the yield range grows, and 1.3 % at 3 depths when it moves instead, so that hardening in one direction is
    /// softening in the other (the full Bauschinger effect of 1500 MPa at strains of 25 %).
    /// </summary>
    [Theory]
    [MemberData(nameof(Angles))]
    public void Yielding_on_release_moves_the_finished_radius_of_an_angle_little(string name, double tangent, Release release,
        bool kinematic)
    {
        SoldBar bar = Bar(name);
        BendAnalysis analysis = Analysis(bar, tangent);
        bool softens = kinematic && tangent > 0;
        foreach ((double depths,
            double allowed) in new[] { (3.0, softens ? 0.013 : 1e-3), (8, softens ? 0.002 : 1e-3), (20, 1e-3), (50, 1e-3) })
        {
            LoadedBend loaded = analysis.LoadedTo(BendRadius.Inside(depths * analysis.Section.Depth));
            FiberBar fibers = Fibers(bar, tangent, kinematic, Core(loaded), 6, 3);
            fibers.BendFlat(loaded.InsideRadius.Meters, 1);
            Near.Relative(loaded.BendingMoment.NewtonMeters, fibers.Moment * analysis.Law.ElasticModulus.Pascals, 1e-7, "moment");
            fibers.Release(release);
            Near.Relative(loaded.Release(release).Ring.InsideRadius.Meters, fibers.InsideRadius, allowed,
                FormattableString.Invariant($"finished radius at {depths} depths"));
        }
    }

    private static void Bend(FiberBar fibers, BendAnalysis analysis, Release between, double first, double second, int steps)
    {
        double depth = analysis.Section.Depth.Meters;
        fibers.BendFlat(first * depth, steps);
        fibers.Release(between);
        fibers.BendFlat(second * depth, steps);
    }

    private static SoldBar Bar(string name) => name switch
    {
        "flat 0" => new("flat", 40, 8, 0, 0),
        "flat 1" => new("flat", 40, 8, 0, 1),
        "square" => new("square", 12, 0, 0, 0),
        "round" => new("round", 12, 0, 0, 0),
        "tube" => new("tube", 33.7, 3.2, 0, 0),
        "sharp 0" => new("angle", 30, 3, 0, 0),
        "sharp 1" => new("angle", 30, 3, 0, 1),
        "rolled 0" => new("angle", 30, 3, 5, 0),
        _ => new("angle", 30, 3, 5, 1),
    };

    private static BendAnalysis Analysis(SoldBar bar, double tangent) =>
        BendAnalysis.Of(bar.Section(), new Metal("steel", 205, 290, tangent).Material());

    /// <summary>The levels between which the stress of a loaded bar is smooth.</summary>
    private static double[] Core(LoadedBend loaded)
    {
        double axis = loaded.NeutralAxisFromInside.Meters;
        double half = loaded.Analysis.Law.YieldStress / loaded.Analysis.Law.ElasticModulus / loaded.Curvature.InverseMeters;
        return [axis - half, axis, axis + half];
    }

    private static FiberBar Fibers(SoldBar bar, double tangent, bool kinematic, double[] levels, int pieces, int across) =>
        new(FiberMesh.Of(bar, levels, pieces, across), 290 / 205e3, tangent / 205e3, kinematic);
}
