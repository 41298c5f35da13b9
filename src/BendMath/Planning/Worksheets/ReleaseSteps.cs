using BendMath.Evidence;
using UnitsNet;

namespace BendMath.Planning.Worksheets;

/// <summary>From the loaded state to the free ring.</summary>
internal sealed class ReleaseSteps(LoadedBend loaded, FinishedRing ring, StepUnits units)
{
    private readonly SectionProperties _section = loaded.Analysis.Section.Properties;

    private bool IsDished => Math.Abs(ring.DishAngle.Radians) > 1e-12;

    public IEnumerable<WorkedStep> All()
    {
        WorkedTerm radius = units.Of("R", "loaded radius of the inside face", loaded.InsideRadius);
        WorkedTerm axis = units.Of("y_n", "neutral axis from the inside face", loaded.NeutralAxisFromInside);
        WorkedTerm curvature = units.Of("κ", "loaded curvature", loaded.Curvature);
        WorkedTerm depth = units.Of("h", "depth of the bar", _section.Depth);
        WorkedTerm centroid = units.Of("y_c", "centroid from the inside face", _section.CentroidFromInside);
        yield return Searched("neutral axis from the inside face", axis, "∫σ dA = 0", [radius]);
        yield return new("loaded curvature", "κ", "1/(R + y_n)", [radius, axis], curvature.Value, curvature.Unit, Sources.Mechanics);
        yield return new("strain of the outside face", "e_o", "100·κ·(h - y_n)", [curvature, depth, axis], loaded.OuterFiberStrain.Percent,
            "%", Sources.Mechanics);

        WorkedTerm moment = units.Of("M_b", "bending moment", loaded.BendingMoment);
        WorkedTerm held = units.Of("M_r", "hold-down moment", loaded.HoldDownMoment);
        yield return Searched("bending moment", moment, "∫σ·(y - y_c)dA with σ of this state", [centroid]);
        if (IsDished)
        {
            yield return Searched("hold-down moment", held, "∫σ·(z - z_c)dA with σ of this state", []);
        }

        ReciprocalLength inPlane = ring.Curvature * Math.Cos(ring.DishAngle.Radians);
        ReciprocalLength outOfPlane = ring.Curvature * -Math.Sin(ring.DishAngle.Radians);
        WorkedTerm spring = units.Of("Δκ", "curvature lost on release", loaded.Curvature - inPlane);
        WorkedTerm springAside = units.Of("Δκ_r", "curvature lost about the radial axis", outOfPlane);
        WorkedTerm modulus =
            units.Of("E", Unloading(), loaded.Analysis.Law.ElasticModulus * loaded.Analysis.Material.UnloadingShare.DecimalFractions);
        WorkedTerm second = units.Of("I_b", "second moment about the bending axis", _section.SecondMomentAboutBendingAxis);
        if (IsDished)
        {
            WorkedTerm aside = units.Of("I_r", "second moment about the radial axis", _section.SecondMomentAboutRadialAxis);
            WorkedTerm product = units.Of("I_br", "product of inertia", _section.ProductOfInertia);
            WorkedTerm[] all = [modulus, second, aside, product, moment, held];
            yield return new("curvature lost on release", "Δκ", "(I_r·M_b - I_br·M_r)/(E·(I_b·I_r - I_br²))", all, spring.Value,
                spring.Unit, Sources.Mechanics);
            yield return new("curvature lost about the radial axis", "Δκ_r", "(I_b·M_r - I_br·M_b)/(E·(I_b·I_r - I_br²))", all,
                springAside.Value, springAside.Unit, Sources.Mechanics);
        }
        else
        {
            yield return new("curvature lost on release", "Δκ", "M_b/(E·I_b)", [moment, modulus, second], spring.Value, spring.Unit,
                Sources.Mechanics);
        }

        WorkedTerm kept = units.Of("κ_f", "curvature kept in the plane", inPlane);
        WorkedTerm total = units.Of("κ_t", "curvature of the finished ring", ring.Curvature);
        yield return new("curvature kept in the plane", "κ_f", "κ - Δκ", [curvature, spring], kept.Value, kept.Unit, Sources.Mechanics);
        yield return IsDished
            ? new("curvature of the finished ring", "κ_t", "√(κ_f² + Δκ_r²)", [kept, springAside], total.Value, total.Unit,
                Sources.Mechanics)
            : new("curvature of the finished ring", "κ_t", "κ_f", [kept], total.Value, total.Unit, Sources.Mechanics);
        if (IsDished)
        {
            yield return new("dish angle", "β", "atan2(-Δκ_r, κ_f)·180/π", [springAside, kept], ring.DishAngle.Degrees, "°",
                Sources.Mechanics);
        }

        WorkedTerm inside = units.Of("R_i", "finished inside radius", ring.InsideRadius);
        WorkedTerm outside = units.Of("R_o", "finished outside radius", ring.OutsideRadius);
        yield return new("finished inside radius", "R_i", "(1 - κ·y_n + Δκ·y_c)/κ_t", [curvature, axis, spring, centroid, total],
            inside.Value, inside.Unit, Sources.Mechanics);
        yield return new("finished inside diameter", "D_i", "2·R_i", [inside], units.In(ring.InsideDiameter), units.Length,
            Sources.Definition);
        yield return new("finished outside radius", "R_o", "(1 + κ·(h - y_n) - Δκ·(h - y_c))/κ_t",
            [curvature, depth, axis, spring, centroid, total], outside.Value, outside.Unit, Sources.Mechanics);
        yield return new("finished outside diameter", "D_o", "2·R_o", [outside], units.In(ring.OutsideDiameter), units.Length,
            Sources.Definition);
    }

    /// <summary>The same bar pressed flat, where that is another ring: only the moment in the plane springs back.</summary>
    public IEnumerable<WorkedStep> Flat()
    {
        if (loaded.HoldDownMoment.NewtonMeters == 0 || Math.Abs(loaded.Release(Release.Free).Ring.DishAngle.Radians) <= 1e-12)
        {
            yield break;
        }

        WorkedTerm curvature = units.Of("κ", "loaded curvature", loaded.Curvature);
        WorkedTerm axis = units.Of("y_n", "neutral axis from the inside face", loaded.NeutralAxisFromInside);
        WorkedTerm centroid = units.Of("y_c", "centroid from the inside face", _section.CentroidFromInside);
        WorkedTerm kept = units.Of("κ_p", "curvature of the ring pressed flat", ring.Curvature);
        yield return new(
            kept.Meaning,
            kept.Symbol,
            "κ - M_b/(E·I_b)",
            [
                curvature,
                units.Of("M_b", "bending moment", loaded.BendingMoment),
                units.Of("E", Unloading(), loaded.Analysis.Law.ElasticModulus * loaded.Analysis.Material.UnloadingShare.DecimalFractions),
                units.Of("I_b", "second moment about the bending axis", _section.SecondMomentAboutBendingAxis),
            ],
            kept.Value,
            kept.Unit,
            Sources.Mechanics);
        yield return new(
            "inside diameter, pressed flat", "D_p", "2·(1 - κ·y_n + (κ - κ_p)·y_c)/κ_p", [curvature, axis, kept, centroid],
                units.In(ring.InsideDiameter), units.Length, Sources.Mechanics);
    }

    private string Unloading() =>
        loaded.Analysis.Material.UnloadingShare.DecimalFractions == 1 ? "elastic modulus" : "elastic modulus on release";

    private static WorkedStep Searched(string name, WorkedTerm result, string condition, WorkedTerm[] terms) =>
        new(name, result.Symbol, condition, terms, result.Value, result.Unit, Sources.Mechanics, isSearched: true);
}
