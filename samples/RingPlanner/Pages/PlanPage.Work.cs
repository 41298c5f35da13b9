using System.Globalization;
using BendMath;
using BendMath.Distortion;
using BendMath.Forming.Effort;
using BendMath.Measurement;
using UnitsNet;

namespace RingPlanner.Pages;

internal sealed partial class PlanPage
{
    private void DistortionStep(PlannedRing ring)
    {
        _paper.Heading("2. Will it distort");
        bool partly = ring.Distortion.NotChecked.Count > 0;
        _paper.Fact("Risk", ring.Distortion.Level.ToString().ToUpperInvariant() + (partly ? ", as far as it is checked" : string.Empty));
        foreach (DistortionFinding finding in ring.Distortion.Findings)
        {
            _paper.Fact($"{finding.Check}: {finding.Level.ToString().ToLowerInvariant()}",
                $"{_units.Sentence(finding.Sentence)} [{finding.Source}]");
        }

        if (ring.Distortion.Advice.Count > 0)
        {
            _paper.Fact("To lower the worst", _units.Sentence(string.Join("; or ", ring.Distortion.Advice)));
        }

        if (partly)
        {
            _paper.Fact("NOT checked", string.Join("; ", ring.Distortion.NotChecked));
        }

        Cautions(SafetyNotices.Distortion);
    }

    private void CutStep(PlannedRing ring)
    {
        DevelopedLayout layout = ring.Layout;
        _paper.Heading(
            $"3. How long to cut, for the ring die {ring.Prediction.Die.Name} "
                + $"leaves{(ring.Serves ? string.Empty : " (not the wanted ring)")}");
        _paper.Fact(layout.Arc.IsFullRing ? "The ring itself" : "The arc itself", $"{_units.Size(layout.DevelopedLength)} of straight bar");
        if (ring.HandbookLength is { } handbook)
        {
            _paper.Fact("By the handbook rule", $"{_units.Size(handbook)}; it knows neither steel nor radius (leg/6 + t/2 from the heel)");
        }

        if (ring.Range.DevelopedLength is { } range)
        {
            _paper.Fact("If it differs", $"{_units.Range(range)} for {_units.Sentence(ring.Range.Scatter.ToString())}");
        }

        EndAllowance ends = layout.Ends;
        _paper.Fact("Ends",
            ends.Total.Meters == 0 ? "none: nothing is added"
                : $"{_units.Size(ends.Start)} start + {_units.Size(ends.End)} end + {_units.Size(ends.Trim)} trim{(_plan.Job.Cutting.Ends.AreFromModel ? ", as the model leaves them" : string.Empty)}");
        _paper.Fact("Cut the blank", _units.Cut(layout.BlankLength));
        if (ends.Total.Meters > 0)
        {
            _paper.Fact("Marks from its start",
                $"{_units.Mark(layout.ArcStartMark)} and {_units.Mark(layout.ArcEndMark)}: the {(layout.Arc.IsFullRing ? "ring" : "arc")} "
                    + $"lies between them");
        }

        if (ring.Closure is { } closure)
        {
            _paper.Fact("Trim and close", Closing(closure));
        }

        _paper.Fact("Weight of the blank", _units.Weight(ring.BlankMass));
        _paper.Fact("From a bar", FromBar(ring));
        Cautions(SafetyNotices.Cut);
    }

    private string Closing(RingClosure closure)
    {
        string gap = closure.Joint.IsCutTogether ? "cut both ends together, which leaves one saw cut" : "cut the ends one by one";
        string change =
            closure.DiameterChange.Meters == 0 ? string.Empty
                : $"; pulled to that, the diameter changes by {_units.Fine(closure.DiameterChange)}";
        return $"{gap}: marks at {_units.Mark(closure.FirstCutMark)} and {_units.Mark(closure.SecondCutMark)}, a root opening "
            + $"of {_units.Fine(closure.Joint.RootOpening)}{change}";
    }

    private string FromBar(PlannedRing ring) => ring.Bar switch
    {
        null => "no bar length is given",
        { Pieces: 0 } bar => $"NONE: a bar of {_units.Size(bar.BarLength)} is shorter than the blank",
        { } bar => string.Create(
            CultureInfo.InvariantCulture,
            $"{bar.Pieces} of that length from {_units.Size(bar.BarLength)} with saw cuts "
                + $"of {_units.Size(ring.Layout.Kerf)}; {_units.Size(bar.Offcut)} left over"),
    };

    private void BendStep(PlannedRing ring)
    {
        BendEffort effort = ring.Effort;
        _paper.Heading("4. How hard it pulls, and how hard to hold it down");
        _paper.Fact("Bending moment", _units.Moment(effort.BendingMoment));
        if (effort.NoseForce is { } nose)
        {
            _paper.Fact("Force of the nose", _units.Push(nose));
        }

        _paper.Fact("Pull at the lever",
            effort.HandForce is { } hand
                ? $"{(effort.IsLeast ? "at least " : string.Empty)}{_units.Push(hand)} {LeverOf(effort)}; {(effort.IsLeast ? "pressing "
                    + "the bar down all the way takes more, and " : string.Empty)}friction comes on top" : effort.WhyNoHandForce!);
        if (effort.Drive.PullLimit is { } limit)
        {
            _paper.Fact("Against the limit", Verdict(effort, limit));
        }

        _paper.Fact("Work",
            $"{_units.Work(ring.Work)} for the {(ring.Layout.Arc.IsFullRing ? "ring" : "arc")}; {_units.WorkPerLength(effort.StoredEnergyPerLength)} springs back where it is let go");
        _paper.Fact("Hold it down", effort.HoldDownMoment.NewtonMeters == 0
            ? "nothing needed: the bar bends in its own plane"
            : $"it twists out of plane with {_units.Moment(effort.HoldDownMoment.Abs())}; the hold-down "
                + $"takes {_units.CouplePerLength(effort.HoldDownCouplePerLength.Abs())}");
        Cautions(SafetyNotices.Bend);
    }

    private string LeverOf(BendEffort effort) => (effort.NoseForce is null, effort.Drive.LeverLength) switch
    {
        (true, { } lever) when effort.Drive.Advantage is { } gain =>
            FormattableString.Invariant(
                $"square to the end of a lever of {_units.Size(lever)} that turns the bar with an advantage of {gain:0.##}"),
        (true, { } lever) => $"square to the end of a lever of {_units.Size(lever)} that turns the bar directly",
        _ => FormattableString.Invariant($"where the nose gets {effort.Drive.Advantage:0.##} times as much"),
    };

    private string Verdict(BendEffort effort, Force limit)
    {
        string verdict = effort.IsWithinPullLimit switch
        {
            true => $"within the limit of {_units.Push(limit)}",
            false => $"BEYOND THE LIMIT of {_units.Push(limit)}: do not bend it by hand on this bender",
            null => $"not known whether it is within {_units.Push(limit)}",
        };
        return effort.LeverLengthAtLimit is { } lever ? effort.IsWithinPullLimit switch
        {
            true => $"{verdict}; a lever of {_units.Size(lever)} would reach it",
            false => $"{verdict}; it would take a lever of {_units.Size(lever)}, which only a bender built for one may have",
            null => $"{verdict}; it takes a lever of {_units.Size(lever)}, on a bender built for one",
        }
            : effort.AdvantageAtLimit is { } gain && effort.IsWithinPullLimit is null
                ? verdict + FormattableString.Invariant($"; it takes an advantage of {Math.Max(1, gain):0.#}")
            : verdict;
    }

    private void CheckStep(PlannedRing ring)
    {
        RingCheck check = ring.Check;
        _paper.Heading("5. What to check afterwards, free as it comes off");
        if (check.OpeningBetweenEnds is { } opening)
        {
            _paper.Fact("Inside radius", _units.Size(ring.Free.InsideRadius));
            _paper.Fact("Outside radius", _units.Size(ring.Free.OutsideRadius));
            _paper.Fact("Between the ends", $"{_units.Size(opening)} from inside face to inside face, where the arc itself ends");
        }
        else
        {
            _paper.Fact("Inside diameter", _units.Size(check.InsideDiameter));
            _paper.Fact("Outside diameter", _units.Size(check.OutsideDiameter));
            _paper.Fact("Tape around outside", _units.Size(check.TapeAroundOutside));
        }

        Length change = Length.FromMeters(Math.Abs(check.RiseChangePerPercent.Meters));
        _paper.Fact("Chord and rise",
            $"a chord of {_units.Size(check.Chord)} inside shows a rise of {_units.Fine(check.Rise)}; 1 % too wide "
                + $"shows {_units.Fine(change)} less");
        if (GoodRises(check) is { } rises)
        {
            _paper.Fact("Good is",
                $"a rise of {_units.Fine(rises.Low)} to {_units.Fine(rises.High)} on that chord: the wanted ring and its tolerance");
        }

        Cautions(SafetyNotices.Check);
    }

    /// <summary>The rises over the chord of rings within the tolerance; null where the chord does not fit the tightest of them.</summary>
    private LengthRange? GoodRises(RingCheck check)
    {
        Length wanted = _plan.Job.Wanted.Radius.InsideRadiusOf(_plan.Job.Analysis.Section);
        Length tolerance = _plan.Job.Wanted.Tolerance / 2;
        return check.Chord < 2 * (wanted - tolerance) ? ChordAndRise.RiseBand(wanted, tolerance, check.Chord) : null;
    }
}
