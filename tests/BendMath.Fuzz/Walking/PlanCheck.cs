using System.Reflection;
using BendMath.Fuzz.Making;
using BendMath.Json;
using BendMath.Planning.Worksheets;
using UnitsNet;

namespace BendMath.Fuzz.Walking;

/// <summary>
/// A job that is built must be planned, and every number and text of its plan, of its workings and of its file must be sound.
/// </summary>
internal static class PlanCheck
{
    private static readonly MethodInfo Cutting = typeof(PlanCuts).GetMethod(nameof(PlanCuts.For))!;

    /// <param name="job">The job.</param>
    /// <param name="repro">Writes down how it was made.</param>
    /// <param name="cut">Gets how often a chain of objects was too long to be followed.</param>
    public static Failure? Of(RingJob job, Func<string> repro, out int cut)
    {
        cut = 0;
        RingPlan plan;
        try
        {
            plan = RingPlan.For(job);
        }
        catch (Exception thrown)
        {
            return Failure.Of(thrown, "planning", repro());
        }

        PublicWalk walk = new(Judge.MayThrow);
        string? fault = walk.FaultOf(plan);
        cut = walk.Cut;
        return fault is not null ? new(fault, "plan", repro())
            : Asked("the workings", () => plan.Ring is null ? null : PlanWorksheet.Of(plan), walk, repro)
            ?? Asked("the workings in inches", () => plan.Ring is null ? null : PlanWorksheet.Of(plan, true), walk, repro)
            ?? Asked("the cut list", () => Cuts(plan), walk, repro)
            ?? Asked("the JSON", () => RingPlanJson.Write(plan).ReplaceLineEndings(" "), walk, repro);
    }

    /// <summary>A list of two of them, or null where that is more than a list takes.</summary>
    private static PlanCuts? Cuts(RingPlan plan)
    {
        try
        {
            return PlanCuts.For([plan, plan], Length.Zero);
        }
        catch (ArgumentException refused) when (Judge.MayThrow(Cutting, refused))
        {
            return null;
        }
    }

    private static Failure? Asked(string what, Func<object?> ask, PublicWalk walk, Func<string> repro)
    {
        try
        {
            return walk.FaultOf(ask()) is { } fault ? new($"{what}{fault}", what, repro()) : null;
        }
        catch (Exception thrown)
        {
            return Failure.Of(thrown, what, repro());
        }
    }
}
