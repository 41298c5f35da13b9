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

/// <summary>Which stress–strain law a grade is turned into.</summary>
public enum GradeLaw
{
    /// <summary>Perfectly plastic at the grade's yield.</summary>
    PerfectlyPlastic,

    /// <summary>
    /// The power law of the grade's credible pair of K and n; its yield is where it meets the elastic line, not that of the grade.
    /// </summary>
    PowerHardening,
}
