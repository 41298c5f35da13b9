using BendMath.Bending.Guides;
using BendMath.Bending.Unloading;
using BendMath.Materials.Unloading;
using UnitsNet;

namespace BendMath.Tests.Definitions;

/// <summary>Source of every number: independent program, quadrature over chords, to the definitions; not a published source.</summary>
public sealed class MechanismTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Load("Definitions/mechanisms.csv");

    private static readonly string[] Kinds = ["guided", "turned", "memory", "falling modulus", "law", "bump"];

    public static TheoryData<ReferenceRow> Bends => new(Table.Where(row => row["kind"] != "bump"));

    [Fact]
    public void No_case_drops_out() =>
        Assert.Equal([11, 3, 5, 3, 3, 4], Kinds.Select(kind => Table.Where(row => row["kind"] == kind).Count));

    [Theory]
    [MemberData(nameof(Bends))]
    public void Every_figure_has_the_digits_of_the_independent_program(ReferenceRow row)
    {
        LoadedBend loaded = Loaded(row);
        UnloadingRule rule = Rule(row);
        FinishedRing free = loaded.Release(Release.Free, rule).Ring;
        double tolerance = Math.Pow(10, -row.Number("digits"));
        double moment = row.Number("bending_moment_nmm");
        Comparison comparison = new Comparison(row)
            .Relative("neutral_axis_mm", loaded.NeutralAxisFromInside.Millimeters, tolerance)
            .Relative("curvature_per_mm", loaded.Curvature.InverseMillimeters, tolerance)
            .Relative("out_of_plane_curvature_per_mm", loaded.OutOfPlaneCurvature.InverseMillimeters, tolerance,
            row.Number("curvature_per_mm"))
            .Relative("bending_moment_nmm", loaded.BendingMoment.NewtonMillimeters, tolerance)
            .Relative("hold_down_moment_nmm", loaded.HoldDownMoment.NewtonMillimeters, tolerance,
            Math.Max(moment, Math.Abs(row.Number("hold_down_moment_nmm"))))
            .Relative("free_inside_radius_mm", free.InsideRadius.Millimeters, tolerance)
            .Relative("free_heel_radius_mm", free.InsideRadiusAtHeel.Millimeters, tolerance)
            .Relative("dish_deg", free.DishAngle.Degrees, tolerance, Math.Max(1, Math.Abs(row.Number("dish_deg"))))
            .RelativeWherePrinted("flat_inside_radius_mm", loaded.Release(Release.HeldFlat, rule).Ring.InsideRadius.Millimeters, tolerance);
        comparison.Verify(8);
    }

    /// <summary>The inverse gives back the loaded radius of every case, free and pressed flat.</summary>
    [Theory]
    [MemberData(nameof(Bends))]
    public void The_loaded_radius_is_found_again_from_the_finished_one(ReferenceRow row)
    {
        BendAnalysis analysis = CaseRow.Analysis(row);
        UnloadingRule rule = Rule(row);
        LoadedBend loaded = Loaded(row);
        foreach (Release release in new[] { Release.Free, Release.HeldFlat })
        {
            BendRadius finished = BendRadius.Inside(loaded.Release(release, rule).Ring.InsideRadius);
            LoadedBend found =
                Guide(row) is { } guide ? analysis.LoadedFor(finished, release, guide) : analysis.LoadedFor(finished, release, rule);
            Near.Relative(row.Number("inside_radius_mm"), found.InsideRadius.Millimeters, 1e-9, $"loaded radius, {release}");
        }
    }

    private static LoadedBend Loaded(ReferenceRow row)
    {
        BendRadius radius = BendRadius.Inside(CaseRow.Millimeters(row, "inside_radius_mm"));
        BendAnalysis analysis = CaseRow.Analysis(row);
        return Guide(row) is { } guide ? analysis.LoadedTo(radius, guide) : analysis.LoadedTo(radius);
    }

    private static BarGuide? Guide(ReferenceRow row) => row["kind"] switch
    {
        "guided" => row["guide_nmm2"] == "rigid" ? OutOfPlaneGuide.Rigid : OutOfPlaneGuide.Of(row.Number("guide_nmm2") / 1e6),
        "turned" => BarGuide.AgainstTurning(Force.FromNewtons(row.Number("turning_guide_n"))),
        _ => null,
    };

    private static UnloadingRule Rule(ReferenceRow row) => row["kind"] switch
    {
        "memory" => UnloadingRule.WithMemory,
        "falling modulus" => UnloadingRule.WithChord(
            new ChordModulus(Ratio.FromDecimalFractions(row.Number("saturated_modulus_mpa") / row.Number("elastic_modulus_mpa")),
                row.Number("modulus_rate"))),
        _ => UnloadingRule.Elastic,
    };
}
