using BendMath;
using Spectre.Console;
using UnitsNet;

namespace RingPlanner.Pages;

internal sealed partial class PlanPage
{
    private void DieStep()
    {
        DieChoice choice = _plan.Choice;
        _page.Heading("1. Which die, and what ring it leaves");
        _page.Show(Dies(choice));
        foreach (IGrouping<string, Die> kind in _plan.Job.Rack.GroupBy(die => die.Face.ToString()))
        {
            _page.Fact("Stamp means", $"{kind.Key}: {string.Join(", ", kind.Select(die => die.Name))}");
        }

        if (_plan.Ring is { } ring)
        {
            BestDie(ring);
        }
        else
        {
            _page.Sentence("No die of this rack leaves a ring; there is nothing to cut or to bend.");
        }

        _page.Fact("Die to make", choice.IdealStampedRadius is { } stamp
            ? $"stamped radius {_units.Size(stamp)} ({(choice.Best?.Die ?? choice.Outcomes[0].Die).Face}) would leave the wanted ring"
            : "no stamped radius of this kind of die leaves the wanted ring");
        foreach (DieCorrection correction in _plan.Corrections)
        {
            Explain(correction);
        }

        Cautions(PlanStep.Die);
    }

    private Table Dies(DieChoice choice)
    {
        string unit = _units.ColumnUnit;
        Table table = new Table().Border(TableBorder.Square);
        table.AddColumn(new TableColumn(string.Empty).NoWrap());
        table.AddColumn(new TableColumn("die"));
        table.AddColumn(new TableColumn($"stamped\nradius,\n{unit}").RightAligned().NoWrap());
        table.AddColumn(new TableColumn($"inside\ndiameter, free,\n{unit}").RightAligned().NoWrap());
        table.AddColumn(new TableColumn($"the same,\npressed flat,\n{unit}").RightAligned().NoWrap());
        table.AddColumn(new TableColumn($"{WantedLine(choice.Wanted)}\nless wanted,\n{unit}").RightAligned().NoWrap());
        table.AddColumn(new TableColumn("remark"));
        foreach (DieOutcome outcome in choice.Outcomes)
        {
            FinishedRing? flat = outcome.Formed is { } formed && !formed.IsStraightWhen(Release.HeldFlat) ? formed.RingWhen(Release.HeldFlat) : null;
            table.AddRow(new[]
            {
                ReferenceEquals(outcome, choice.Best) ? ">" : string.Empty,
                outcome.Die.Name,
                _units.Cell(outcome.Die.StampedRadius),
                outcome.Ring is { } ring ? _units.Cell(ring.InsideDiameter) : "-",
                flat is null ? "-" : _units.Cell(flat.InsideDiameter),
                outcome.Difference is { } difference ? _units.Signed(2 * difference) : "-",
                Remark(choice, outcome),
            }.Select(cell => new Text(cell)));
        }

        return table;
    }

    private static string WantedLine(BendRadius wanted) => wanted.Reference switch
    {
        RadiusReference.InsideFace => "inside\ndiameter",
        RadiusReference.Centroid => "centroid\ndiameter",
        _ => "outside\ndiameter",
    };

    private static string Remark(DieChoice choice, DieOutcome outcome) =>
        outcome.Refusal is { } refusal ? refusal
        : ReferenceEquals(outcome, choice.Best) ? "nearest"
        : ReferenceEquals(outcome, choice.NextTighter) ? "next tighter"
        : ReferenceEquals(outcome, choice.NextWider) ? "next wider"
        : string.Empty;

    private void BestDie(PlannedRing ring)
    {
        string wide = ring.Outcome.Difference!.Value.Meters > 0 ? "wider" : "tighter";
        Length off = Length.FromMeters(2 * Math.Abs(ring.Outcome.Difference.Value.Meters));
        _page.Fact($"> Use die {ring.Outcome.Die.Name}", $"the ring comes off {_units.Size(off)} {wide} in diameter than wanted");
        _page.Fact("As it comes off", $"inside {_units.Size(ring.Free.InsideDiameter)}, outside {_units.Size(ring.Free.OutsideDiameter)}{Dish(ring.Free)}");
        if (Math.Abs(ring.Free.DishAngle.Degrees) > 1e-6)
        {
            _page.Fact("Pressed flat", $"inside {_units.Size(ring.Flattened.InsideDiameter)}, outside {_units.Size(ring.Flattened.OutsideDiameter)}");
        }

        _page.Fact("Over the yield range", ring.Range.InsideDiameter is { } range ? $"inside {_units.Range(range)} as it comes off" : ring.Range.Note!);
    }

    private static string Dish(FinishedRing ring)
    {
        double degrees = ring.DishAngle.Degrees;
        return Math.Abs(degrees) <= 1e-6
            ? string.Empty
            : FormattableString.Invariant($"; dished, the section leans {Math.Abs(degrees):0.0}° with its toe {(degrees > 0 ? "outward" : "inward")}");
    }

    private void Explain(DieCorrection correction)
    {
        _page.Fact("Measured ring", Ring(correction.Ring));
        foreach (Explanation explanation in correction.Explanations)
        {
            bool used = ReferenceEquals(correction.Ring, _plan.UsedRing) && explanation.Kind == _plan.Job.Correction;
            string mark = used ? "  used in this plan" : explanation.Fits ? "  fits too" : "  does not fit";
            _page.Fact(mark, explanation.Sentence);
        }

        if (correction.Explanations.Count(explanation => explanation.Fits) > 1)
        {
            _page.Fact(string.Empty, "One ring cannot tell these apart: a ring measured on a second die can.");
        }
    }
}
