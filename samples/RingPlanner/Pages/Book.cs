using BendMath;
using BendMath.Json;
using BendMath.Plotting;
using RingPlanner.Drawings;
using RingPlanner.Papers;

namespace RingPlanner.Pages;

/// <summary>All plans of a file on one paper.</summary>
internal static class Book
{
    public static string Print(IReadOnlyList<(RingPlan Plan, RingJobEntry Entry)> plans, PlanCuts cuts, CommandLine command, bool plain)
    {
        Paper paper = command.Form switch
        {
            Form.Markdown => new MarkdownPaper(),
            Form.Html => new HtmlPaper(string.Join(", ", plans.Select(pair => pair.Plan.Job.Name))),
            _ => new ConsolePaper(plain),
        };
        bool details = command.Details || command.Form != Form.Text;
        if (!details && !command.Workings)
        {
            SummaryPage.Print(paper, [.. plans.Select(pair => (pair.Plan, pair.Entry, Units(pair, command)))], cuts);
            return paper.ToString()!;
        }

        for (int i = 0; i < plans.Count; i++)
        {
            if (i > 0)
            {
                paper.Gap();
            }

            (RingPlan plan, RingJobEntry entry) = plans[i];
            Units units = Units(plans[i], command);
            if (details)
            {
                PlanPage.Print(paper, plan, entry, units);
                DrawingsOf(paper, plan, units);
            }
            else
            {
                paper.Title(plan.Job.Name);
            }

            if (command.Workings)
            {
                WorkingsPage.Print(paper, plan, units);
            }
        }

        if (details && cuts.List is not null)
        {
            paper.Gap();
            paper.Title("Cutting");
            CutPage.Print(paper, cuts, plan => Units(plans.First(pair => ReferenceEquals(pair.Plan, plan)), command));
        }

        return paper.ToString()!;
    }

    private static Units Units((RingPlan Plan, RingJobEntry Entry) pair, CommandLine command) =>
        new(pair.Entry.IsInInches || command.Fraction is not null, pair.Plan.Job.Cutting.CutStyle, command.Fraction);

    private static void DrawingsOf(Paper paper, RingPlan plan, Units units)
    {
        if (plan.Ring is not { } ring || !paper.ShowsPictures)
        {
            return;
        }

        paper.Heading("Drawings");
        OrientedSection section = plan.Job.Analysis.Section;
        paper.Picture(
            "The section as it lies in the bender, the center of the ring below",
            BendFigure.OfSection(section, units.AreInches).ToSvg(640, 480));
        paper.Picture("The finished ring as it comes off, with the chord and rise to check", RingDrawing.Of(ring, units));
        paper.Picture("The blank: cut to length, mark, bend, trim at the marks", BlankDrawing.Of(ring, units));
    }
}
