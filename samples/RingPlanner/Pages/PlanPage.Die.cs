using System.Globalization;
using BendMath;
using BendMath.Learning;
using RingPlanner.Papers;
using UnitsNet;

namespace RingPlanner.Pages;

internal sealed partial class PlanPage
{
    private void DieStep()
    {
        DieChoice choice = _plan.Choice;
        _paper.Heading("1. Which die, and what ring it leaves");
        _paper.Show(Dies(choice));
        foreach (IGrouping<string, Die> kind in _plan.Job.Bender.Rack.GroupBy(die => _plan.Model.FaceOf(die).ToString()))
        {
            string told = kind.Any(die => die.Face != _plan.Model.FaceOf(die)) ? ", as the measured ring says" : string.Empty;
            _paper.Fact("Stamp means", _units.Sentence($"{kind.Key}{told}: ") + string.Join(", ", kind.Select(die => die.Name)));
        }

        if (_plan.Ring is { } ring)
        {
            BestDie(ring);
        }
        else
        {
            _paper.Sentence("No die of this rack leaves a ring; there is nothing to cut or to bend.");
        }

        _paper.Fact("Die to make", DieToMake(choice));
        foreach (ShopChange change in _plan.Ring is { Serves: true } ? [] : _plan.Choice.Changes)
        {
            _paper.Fact("To hit it", _units.Sentence(change.Sentence));
        }

        foreach (string sentence in _plan.Fit?.Sentences ?? [])
        {
            _paper.Fact("Measured rings", _units.Sentence(sentence));
        }

        if (_plan.TrialToNarrow is { } next)
        {
            _paper.Fact("Next test ring", _units.Sentence(next.Sentence));
        }

        foreach (RingDiagnosis correction in _plan.Fit is null ? _plan.Corrections : [])
        {
            Explain(correction);
        }

        foreach (Hypothesis agreement in _plan.Fit is null ? _plan.Agreements : [])
        {
            _paper.Fact(agreement.Fits ? "Rings together: agree" : "Rings together: differ", agreement.Sentence);
        }

        if (_plan.TrialToTellApart is { } second)
        {
            _paper.Fact("Which one is it", _units.Sentence(second.Sentence));
        }

        Cautions(SafetyNotices.Die);
    }

    private string DieToMake(DieChoice choice)
    {
        if (choice.Ideal is not { } ideal)
        {
            return "no die of this kind leaves the wanted ring";
        }

        ReferenceFace face = _plan.Model.FaceOf(ideal.Die!);
        string stamp =
            face == ReferenceFace.InsideOfBar ? string.Empty
                : $"; its stamp, if it means {(face == ReferenceFace.OutsideOfBar ? "the" : "a face")} {_units.Sentence(face.ToString())}, is {_units.Size(choice.IdealStampedRadius!.Value)}";
        string stroke =
            ideal.Contact is { WrapsNose: false } contact ? $"; the stroke to set is then {_units.Fine(contact.SetStroke)}" : string.Empty;
        string tight = ideal.Loaded.Advisories.Count > 0 ? ". So tight a bend is doubtful: make a trial first" : string.Empty;
        return $"an inside face of radius {_units.Size(choice.IdealInsideFaceRadius!.Value)} would leave the wanted "
            + $"ring{stamp}{stroke}{tight}";
    }

    private Listing Dies(DieChoice choice)
    {
        string unit = _units.ColumnUnit;
        Column[] columns =
        [
            new(string.Empty),
            new("die", MayWrap: true),
            new($"stamped\nradius,\n{unit}", IsNumber: true),
            new($"inside\ndiameter, free,\n{unit}", IsNumber: true),
            new($"the same,\npressed flat,\n{unit}", IsNumber: true),
            new($"{WantedLine(choice.Wanted)}\nless wanted,\n{unit}", IsNumber: true),
            .. HasChances ? [new Column("within\ntolerance\nof 100", IsNumber: true)] : Array.Empty<Column>(),
            new("remark", MayWrap: true),
        ];
        return new(columns, [.. _plan.Choice.Predictions.Select(outcome => Row(choice, outcome))]);
    }

    private bool HasChances => _plan.Choice.Predictions.Any(outcome => outcome.Chance is not null);

    private string[] Row(DieChoice choice, DiePrediction outcome)
    {
        FinishedRing? flat =
            outcome.Formed is { } formed && !formed.IsStraightWhen(Release.HeldFlat) ? formed.RingWhen(Release.HeldFlat) : null;
        return
        [
            ReferenceEquals(outcome, _plan.Choice.Best) ? ">" : string.Empty,
            outcome.Die.Name,
            _units.Cell(outcome.Die.StampedRadius),
            outcome.Ring is { } ring ? _units.Cell(ring.InsideDiameter) : "-",
            flat is null ? "-" : _units.Cell(flat.InsideDiameter),
            outcome.Difference is { } difference ? _units.Signed(2 * difference) : "-",
            .. HasChances ? [outcome.Chance is { } chance ? chance.Percent.ToString("0", CultureInfo.InvariantCulture) : "-"]
                : Array.Empty<string>(),
            _units.Sentence(Remark(choice, outcome)),
        ];
    }

    private static string WantedLine(BendRadius wanted) => wanted.Reference switch
    {
        RadiusReference.InsideFace => "inside\ndiameter",
        RadiusReference.Centroid => "centroid\ndiameter",
        _ => "outside\ndiameter",
    };

    private string Remark(DieChoice choice, DiePrediction outcome) =>
        outcome.Refusal is { } refusal ? refusal
        : ReferenceEquals(outcome, choice.Nearest) ? "nearest"
        : ReferenceEquals(outcome, _plan.Choice.Best) ? "most likely"
        : ReferenceEquals(outcome, choice.NextTighter) ? "next tighter"
        : ReferenceEquals(outcome, choice.NextWider) ? "next wider"
        : string.Empty;

    private void BestDie(PlannedRing ring)
    {
        string wide = ring.Prediction.Difference!.Value.Meters > 0 ? "wider" : "tighter";
        Length off = Length.FromMeters(2 * Math.Abs(ring.Prediction.Difference.Value.Meters));
        _paper.Fact(
            $"> {(ring.Serves ? "Use die" : "Nearest is")} {ring.Prediction.Die.Name}",
            $"the ring comes off {_units.Size(off)} {wide} in diameter than wanted{(ring.Serves ? string.Empty : ": NO DIE OF THIS RACK "
                + "SERVES")}");
        if (ring.Prediction.Formed!.Contact is { } contact)
        {
            string give = contact.Give.Meters > 0 ? $", of which the bender gives {_units.Fine(contact.Give)}" : string.Empty;
            _paper.Fact(ring.Prediction.Die.Mate is null ? "Set the stroke" : "The pair closes",
                $"{_units.Fine(contact.SetStroke)} past the line tangent to the nose{give}; the circle through the three contacts then "
                    + $"has a radius of {_units.Size(contact.ThreeContactRadius)}");
            _paper.Fact("At the nose", contact.WrapsNose ? "the bar lies down on the nose" : "the bar touches the nose at one point");
        }

        _paper.Fact("As it comes off",
            $"inside {_units.Size(ring.Free.InsideDiameter)}, outside {_units.Size(ring.Free.OutsideDiameter)}{Dish(ring.Free)}");
        if (Math.Abs(ring.Free.DishAngle.Degrees) > 1e-6)
        {
            _paper.Fact("Pressed flat",
                $"inside {_units.Size(ring.Flattened.InsideDiameter)}, outside {_units.Size(ring.Flattened.OutsideDiameter)}");
        }

        if (ring.Prediction is { IsIntervalMeasured: true, Interval: { } interval } forecast)
        {
            _paper.Fact("To expect", $"inside {_units.Range(interval)}, {forecast.IntervalNote}");
        }

        _paper.Fact("If it differs",
            ring.Range.InsideDiameter is { } range ? $"inside {_units.Range(range)} for {_units.Sentence(ring.Range.Scatter.ToString())}"
                : ring.Range.Note!);
        if (ring.Range.Contributions.Count > 1)
        {
            _paper.Fact("What matters most",
                string.Join(", ",
                    ring.Range.Contributions.Select(one => FormattableString.Invariant($"{one.Input} {one.Share.Percent:0} %"))));
        }
    }

    private static string Dish(FinishedRing ring)
    {
        double degrees = ring.DishAngle.Degrees;
        return Math.Abs(degrees) <= 1e-6
            ? string.Empty
            : FormattableString.Invariant(
                $"; dished, the section leans {Math.Abs(degrees):0.0}° with its toe {(degrees > 0 ? "outward" : "inward")}");
    }

    private void Explain(RingDiagnosis correction)
    {
        _paper.Fact("Measured ring", Ring(correction.Ring));
        foreach (Hypothesis explanation in correction.Hypotheses)
        {
            bool used = ReferenceEquals(correction.Ring, _plan.UsedRing) && explanation.Kind == _plan.Job.Calibration.Correction;
            _paper.Fact(used ? "  used in this plan" : explanation.Fits ? "  fits" : "  does not fit",
                _units.Sentence(explanation.Sentence));
        }
    }
}
