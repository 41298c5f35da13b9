using UnitsNet;

namespace BendMath.Planning;

/// <summary>The demands of the distortion checks.</summary>
internal sealed class DistortionWorkings(PlannedRing ring, WorkingUnits units)
{
    private readonly LoadedBend _loaded = ring.Outcome.Formed!.Loaded;

    public IEnumerable<Working> All() => ring.Distortion.Findings.Select(Of).OfType<Working>();

    /// <summary>Null for a check whose demand stands elsewhere in the plan already, as the outside strain does. A demand without a closed form has the sentence of its check in place of an equation.</summary>
    private Working? Of(DistortionFinding finding)
    {
        WorkingTerm radius = units.Of("R", "loaded radius of the inside face", _loaded.InsideRadius);
        return finding.Check switch
        {
            "outside face strain" => null,
            "leg to radius" => Ratio(finding, "d_r", "b_r/R", [units.Of("b_r", "leg, width or diameter in the plane of the ring", _loaded.Analysis.Section.Features.RadialDepth), radius]),
            "leg angle" => LegAngle(finding, radius),
            "dish" => Ratio(finding, "d_β", "sin(β·π/180)/cos(β·π/180)", [new("β", "dish angle", Math.Abs(ring.Free.DishAngle.Degrees), "°")]),
            "tube radius in diameters" => Ratio(finding, "d_D", "h/(R + h/2)", [units.Of("h", "depth of the bar", _loaded.Analysis.Section.Properties.Depth), radius]),
            _ => new(finding.Check, Symbol(finding), finding.Sentence, [], finding.Demand, string.Empty, finding.Source, isSearched: true),
        };
    }

    private Working LegAngle(DistortionFinding finding, WorkingTerm radius)
    {
        IReadOnlyList<Outstand> legs = _loaded.Analysis.Section.Features.Outstands;
        Outstand leg = legs.Where(one => one.FreeEdge == FreeEdge.Side).OrderByDescending(one => one.Length.Meters).First();
        bool outside = legs.Any(one => one.FreeEdge == FreeEdge.Inside) && !legs.Any(one => one.FreeEdge == FreeEdge.Outside);
        Length middle = outside ? _loaded.Analysis.Section.Depth - leg.Thickness / 2 : leg.Thickness / 2;
        return Ratio(
            finding,
            "d_a",
            "(b_a - t_a/2)²/((R + y_a)·t_a)",
            [units.Of("b_a", "leg along the axis of the ring", leg.Length), units.Of("t_a", "its thickness", leg.Thickness), radius, units.Of("y_a", "its middle from the inside face", middle)]);
    }

    private static string Symbol(DistortionFinding finding) => "d_" + new string([.. finding.Check.Where(char.IsLetterOrDigit)]);

    private static Working Ratio(DistortionFinding finding, string symbol, string equation, WorkingTerm[] terms) =>
        new($"{finding.Check}, what the bend asks", symbol, equation, terms, finding.Demand, string.Empty, finding.Source);
}
