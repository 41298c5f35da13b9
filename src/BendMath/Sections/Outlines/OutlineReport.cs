using BendMath.Evidence;
using BendMath.Guards;
using BendMath.Numerics.Geometry;

namespace BendMath.Sections.Outlines;

/// <summary>Says in words, counted from 1, what is wrong with drawn loops and what was put right.</summary>
internal static class OutlineReport
{
    public static (Edge[][] Edges, IReadOnlyList<Advisory> Advisories) Read(OutlineLoop[] loops, string name)
    {
        Edge[][] drawn = Array.ConvertAll(loops, loop => loop.Edges.Select(edge => edge.Edge).ToArray());
        (Edge[][] edges, IReadOnlyList<LoopRepair> repairs, LoopFault? fault) = LoopReader.Read(drawn);
        return fault is null
            ? (edges, Array.AsReadOnly(repairs.Select(Advise).ToArray()))
            : throw Refusal(name, fault);
    }

    private static ArgumentException Refusal(string name, LoopFault fault)
    {
        string edge = Number("edge", fault.Edge);
        string loop = Number("loop", fault.Loop);
        string place = Place(fault.Z, fault.Y);
        string size = Guard.MillimetersText(fault.Size);
        string other =
            fault.Loop == fault.OtherLoop ? $"{Number("edge", fault.OtherEdge)} of {loop}"
                : $"{Number("edge", fault.OtherEdge)} of {Number("loop", fault.OtherLoop)}";
        return fault.Kind switch
        {
            LoopFaultKind.ZeroLength =>
                Guard.Refused(name, "must have no edge without length", $"{edge} of {loop} is {size} long at {place}"),
            LoopFaultKind.Open =>
                Guard.Refused(name, "must be closed",
                    $"{edge} of {loop} ends at {place}, {size} from where {Number("edge", fault.OtherEdge)} begins"),
            LoopFaultKind.CircleAmongEdges =>
                Guard.Refused(name, "must have a full circle alone in its loop", $"{edge} of {loop}, from {place}, is one among others"),
            LoopFaultKind.Contact => Guard.Refused(name, "must not cross or touch", $"{edge} of {loop} meets {other} at {place}"),
            LoopFaultKind.OutsideOuter => Guard.Refused(
                name, $"must have all holes inside the largest loop, {Number("loop", fault.OtherLoop)}",
                    $"{loop} at {place} lies outside it"),
            _ => Guard.Refused(name, "must have no hole in a hole", $"{loop} at {place} lies inside {Number("loop", fault.OtherLoop)}"),
        };
    }

    private static Advisory Advise(LoopRepair repair) => repair.Kind switch
    {
        LoopRepairKind.Joined =>
            new("joined-ends",
                Invariant(
                    $"{Capital(repair)} had {repair.Count} joints, the first at {Place(repair.Z, repair.Y)}, where the ends of edges "
                        + $"missed each other by up to {Guard.MillimetersText(repair.Size)}; they were joined."), Sources.Definition),
        LoopRepairKind.Straightened =>
            new("collinear-points",
                Invariant(
                    $"{Capital(repair)} had {repair.Count} points on a straight line between their neighbors, the first "
                        + $"at {Place(repair.Z, repair.Y)}; they were dropped."), Sources.Definition),
        _ =>
            new("reversed-winding",
                $"{Capital(repair)} ran the wrong way round and was reversed: the outer loop runs counter-clockwise, holes clockwise.",
                    Sources.Definition),
    };

    private static string Capital(LoopRepair repair) => Number("Loop", repair.Loop);

    private static string Number(string what, int index) => Invariant($"{what} {index + 1}");

    private static string Place(double x, double y) => $"x = {Guard.MillimetersText(x)}, y = {Guard.MillimetersText(y)}";
}
