namespace BendMath.Numerics.Geometry;

/// <summary>Why loops bound no section.</summary>
internal enum LoopFaultKind
{
    ZeroLength,
    Open,
    CircleAmongEdges,
    Contact,
    OutsideOuter,
    InsideHole,
}

/// <summary>A fault and where it is. Loops and edges count from 0 in the order given; Size is a gap or a length.</summary>
internal sealed record LoopFault(LoopFaultKind Kind, int Loop, int Edge, int OtherLoop, int OtherEdge, double Y, double Z, double Size);

/// <summary>What was put right in a loop.</summary>
internal enum LoopRepairKind
{
    Joined,
    Straightened,
    Reversed,
}

/// <summary>A repair. Count is the number of points; Size the largest gap that was closed; the point is the first one concerned.</summary>
internal sealed record LoopRepair(LoopRepairKind Kind, int Loop, int Count, double Y, double Z, double Size);
