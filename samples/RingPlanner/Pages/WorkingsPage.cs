using BendMath;
using BendMath.Evidence;
using BendMath.Planning.Worksheets;
using RingPlanner.Papers;

namespace RingPlanner.Pages;

/// <summary>How each number of a plan came about, as a student would write it.</summary>
internal static class WorkingsPage
{
    public static void Print(Paper paper, RingPlan plan, Units units)
    {
        if (plan.Ring is null)
        {
            return;
        }

        IReadOnlyList<WorkedStep> workings = PlanWorksheet.Of(plan, units.AreInches);
        paper.Heading("How each number came about");
        paper.Sentence(
            units.AreInches ? "In inches, pounds and pounds per square inch, so that the bare numbers can be put in as they stand."
                : "In millimeters, newtons and megapascals, so that the bare numbers can be put in as they stand.");
        foreach (WorkedStep working in workings)
        {
            paper.Fact(working.Name,
                $"{working.Symbol} = {working.Equation}{(working.IsSearched ? string.Empty : $" = {working.Substituted}")}{(working.IsSearched ? $": {working.Symbol} = " : " = ")}{working.Result} [{working.Source}]");
        }

        paper.Heading("What the letters mean");
        foreach (WorkedTerm term in workings.SelectMany(working => working.Terms).GroupBy(term => term.Symbol)
            .Select(group => group.First()))
        {
            paper.Fact(term.ToString(), term.Meaning);
        }
    }
}
