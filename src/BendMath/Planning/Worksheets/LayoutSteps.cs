using BendMath.Evidence;
using BendMath.Sections.Features;

namespace BendMath.Planning.Worksheets;

/// <summary>From the free ring to the blank and its check.</summary>
internal sealed class LayoutSteps(RingJob job, PlannedRing ring, StepUnits units)
{
    public IEnumerable<WorkedStep> All()
    {
        DevelopedLayout layout = ring.Layout;
        WorkedTerm turn = new("θ", "turn of the arc", layout.Arc.Turn.Degrees, "°");
        WorkedTerm curvature = units.Of("κ_t", "curvature of the finished ring", ring.Free.Curvature);
        WorkedTerm developed = units.Of("L_0", "length of straight bar that becomes the arc", layout.DevelopedLength);
        WorkedTerm blank = units.Of("L", "blank", layout.BlankLength);
        WorkedTerm start = units.Of("s", "start", layout.Ends.Start);
        WorkedTerm cut = units.Of("L_c", "blank as it is cut", ring.CutLength);
        yield return new("length of straight bar that becomes the arc", "L_0", "θ·π/180/κ_t", [turn, curvature], developed.Value,
            developed.Unit, Sources.Mechanics);
        yield return new(
            "blank",
            "L",
            "L_0 + s + e + t",
            [developed, start, units.Of("e", "end", layout.Ends.End), units.Of("t", "trim", layout.Ends.Trim)],
            blank.Value,
            blank.Unit,
            Sources.Definition);
        yield return new("second mark, from the start of the blank", "m_2", "s + L_0", [start, developed], units.In(layout.ArcEndMark),
            units.Length, Sources.Definition);
        foreach (WorkedStep working in Handbook())
        {
            yield return working;
        }

        yield return new("blank as it is cut", "L_c", "q·ceil(L/q)",
            [blank, units.Of("q", "smallest step of the rule", job.Cutting.CutStyle.Step)], cut.Value, cut.Unit, Sources.Definition);
        if (ring.Bar is { } bar)
        {
            WorkedTerm stock = units.Of("B", "bar in stock", bar.BarLength);
            WorkedTerm kerf = units.Of("k", "saw cut", layout.Kerf);
            WorkedTerm pieces = new("n", "pieces from a bar", bar.Pieces, string.Empty);
            yield return new("pieces from a bar", "n", "floor((B + k)/(L_c + k))", [stock, kerf, cut], bar.Pieces, string.Empty,
                Sources.Definition);
            yield return new("left of the bar", "r", "max(0, B - n·(L_c + k))", [stock, pieces, cut, kerf], units.In(bar.Offcut),
                units.Length, Sources.Definition);
        }

        WorkedTerm area = units.Of("A", "area of the section", layout.Section.Properties.Area);
        WorkedTerm density = units.Of("ρ", "density", job.Analysis.Material.Density);
        yield return new("mass of the blank", "m", "A·L·ρ", [area, blank, density], units.In(ring.BlankMass), units.Mass,
            Sources.Definition);
        foreach (WorkedStep working in Checks(turn))
        {
            yield return working;
        }
    }

    private IEnumerable<WorkedStep> Handbook()
    {
        if (ring.HandbookLength is not { } length || ring.Layout.Section.EqualLegs is not { } leg)
        {
            yield break;
        }

        bool flangeOut = leg.Direction == FlangeDirection.Out;
        WorkedTerm heel =
            flangeOut ? units.Of("D_i", "finished inside diameter", ring.Free.InsideDiameter)
                : units.Of("D_o", "finished outside diameter", ring.Free.OutsideDiameter);
        yield return new(
            "the ring by the handbook rule",
            "L_h",
            flangeOut ? "π·(D_i + b/3 + t_b)" : "π·(D_o - b/3 - t_b)",
            [heel, units.Of("b", "length of a leg", leg.Length), units.Of("t_b", "thickness of a leg", leg.Thickness)],
            units.In(length),
            units.Length,
            Sources.MachinerysHandbookAngleRings);
    }

    private IEnumerable<WorkedStep> Checks(WorkedTerm turn)
    {
        RingCheck check = ring.Check;
        WorkedTerm inside = units.Of("R_i", "finished inside radius", ring.Free.InsideRadius);
        WorkedTerm chord = units.Of("c", "chord laid against the inside", check.Chord);
        if (check.OpeningBetweenEnds is { } opening)
        {
            yield return new("distance between the ends, inside", "w", "2·R_i·sin(θ·π/360)", [inside, turn], units.In(opening),
                units.Length, Sources.Definition);
        }
        else
        {
            yield return new(
                "tape around the outside", "C_o", "π·D_o", [units.Of("D_o", "finished outside diameter", check.OutsideDiameter)],
                    units.In(check.TapeAroundOutside), units.Length, Sources.Definition);
        }

        WorkedTerm rise = units.Of("f", "rise over the chord", check.Rise);
        yield return new(rise.Meaning, rise.Symbol, "R_i - √(R_i² - c²/4)", [inside, chord], rise.Value, rise.Unit, Sources.Definition);
        yield return new(
            "less rise when it is 1 % too wide", "f_1", "f - c²/(4·(1.01·R_i + √((1.01·R_i)² - c²/4)))", [rise, inside, chord],
                -units.In(check.RiseChangePerPercent), units.Length, Sources.Definition);
    }
}
