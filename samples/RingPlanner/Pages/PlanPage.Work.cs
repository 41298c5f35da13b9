using System.Globalization;
using BendMath;
using UnitsNet;

namespace RingPlanner.Pages;

internal sealed partial class PlanPage
{
    private void DistortionStep(PlannedRing ring)
    {
        _page.Heading("2. Will it distort");
        _page.Fact("Risk", ring.Distortion.Level.ToString().ToUpperInvariant());
        foreach (DistortionFinding finding in ring.Distortion.Findings)
        {
            _page.Fact($"{finding.Check}: {finding.Level.ToString().ToLowerInvariant()}", $"{finding.Sentence} [{finding.Source}]");
        }

        foreach (string sentence in ring.Distortion.NotChecked)
        {
            _page.Fact("not checked", sentence);
        }

        Cautions(PlanStep.Distortion);
    }

    private void CutStep(PlannedRing ring)
    {
        DevelopedLayout layout = ring.Layout;
        _page.Heading($"3. How long to cut, for the ring die {ring.Outcome.Die.Name} leaves");
        _page.Fact(layout.Arc.IsFullRing ? "The ring itself" : "The arc itself", $"{_units.Size(layout.DevelopedLength)} of straight bar");
        if (ring.HandbookLength is { } handbook)
        {
            _page.Fact("By the handbook rule", $"{_units.Size(handbook)}; it knows neither steel nor radius (leg/6 + t/2 from the heel)");
        }

        if (ring.Range.DevelopedLength is { } range)
        {
            _page.Fact("Over the yield range", _units.Range(range));
        }

        EndAllowance ends = layout.Ends;
        _page.Fact("Ends", ends.Total.Meters == 0 ? "none: nothing is added" : $"{_units.Size(ends.Start)} start + {_units.Size(ends.End)} end + {_units.Size(ends.Trim)} trim");
        _page.Fact("Cut the blank", _units.Cut(layout.BlankLength));
        if (ends.Total.Meters > 0)
        {
            _page.Fact("Marks from its start", $"{_units.Size(layout.ArcStartMark)} and {_units.Size(layout.ArcEndMark)}: the {(layout.Arc.IsFullRing ? "ring" : "arc")} lies between them");
        }

        _page.Fact("Weight of the blank", _units.Weight(ring.BlankMass));
        _page.Fact("From a bar", ring.Bar is { } bar
            ? string.Format(CultureInfo.InvariantCulture, "{0} from {1} with saw cuts of {2}; {3} left over", bar.Pieces, _units.Size(bar.BarLength), _units.Size(layout.Kerf), _units.Size(bar.Offcut))
            : "no bar length is given");
        Cautions(PlanStep.Cut);
    }

    private void BendStep(PlannedRing ring)
    {
        BendEffort effort = ring.Effort;
        _page.Heading("4. How hard it pulls, and how hard to hold it down");
        _page.Fact("Bending moment", _units.Moment(effort.BendingMoment));
        if (effort.NoseForce is { } nose)
        {
            _page.Fact("Force of the nose", _units.Push(nose));
        }

        _page.Fact("Pull at the lever", effort.HandForce is { } hand && _plan.Job.LeverLength is { } lever
            ? $"{_units.Push(hand)} square to the end of a lever of {_units.Size(lever)} that turns the bar directly; friction comes on top"
            : "no lever length is given");
        _page.Fact("Hold it down", effort.HoldDownMoment.NewtonMeters == 0
            ? "nothing needed: the bar bends in its own plane"
            : $"it twists out of plane with {_units.Moment(effort.HoldDownMoment)}; the hold-down takes {_units.CouplePerLength(effort.HoldDownCouplePerLength)}");
        Cautions(PlanStep.Bend);
    }

    private void CheckStep(PlannedRing ring)
    {
        RingCheck check = CheckWithin(ring);
        bool full = ring.Layout.Arc.IsFullRing;
        _page.Heading("5. What to check afterwards, free as it comes off");
        _page.Fact("Inside diameter", _units.Size(check.InsideDiameter) + (full ? string.Empty : ", if the arc went on to a full ring"));
        _page.Fact("Outside diameter", _units.Size(check.OutsideDiameter) + (full ? string.Empty : ", if the arc went on to a full ring"));
        if (full)
        {
            _page.Fact("Tape around outside", _units.Size(check.TapeAroundOutside));
        }

        Length change = Length.FromMeters(Math.Abs(check.RiseChangePerPercent.Meters));
        _page.Fact("Chord and rise", $"a {_units.Size(check.Chord)} chord inside shows a rise of {_units.Fine(check.Rise)}; 1 % too wide shows {_units.Fine(change)} less");
        Cautions(PlanStep.Check);
    }

    /// <summary>The check of the plan; with a chord of whole inches for a job in inches, and one that fits on a short arc.</summary>
    private RingCheck CheckWithin(PlannedRing ring)
    {
        double half = Math.Min(ring.Layout.Arc.Turn.Radians / 2, Math.PI / 2);
        double reach = 2 * ring.Free.InsideRadius.Meters * Math.Sin(half);
        double inch = Length.FromInches(1).Meters;
        double chord = ring.Check.Chord.Meters;
        chord = _units.Inches && chord > inch ? Math.Floor(ring.Free.InsideRadius.Meters / inch) * inch : chord;
        return RingCheck.Of(ring.Free, Length.FromMeters(chord <= reach ? chord : reach));
    }
}
