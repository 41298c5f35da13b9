namespace BendMath.Materials.Standard;

/// <summary>What the printed strength of a grade promises.</summary>
public enum GradeValueKind
{
    /// <summary>A minimum the standard guarantees; the mill usually delivers more.</summary>
    StandardMinimum,

    /// <summary>An estimated minimum that no standard guarantees.</summary>
    EstimatedMinimum,

    /// <summary>A typical value: the bar at hand may be softer or harder.</summary>
    Typical,
}
