namespace BendMath;

/// <summary>The steps of a plan, in the order of the work.</summary>
public enum PlanStep
{
    /// <summary>Which die, and what ring it leaves.</summary>
    Die,

    /// <summary>Will it distort.</summary>
    Distortion,

    /// <summary>How long to cut and how many from a bar.</summary>
    Cut,

    /// <summary>How hard it pulls and how hard to hold it down.</summary>
    Bend,

    /// <summary>What to check afterwards.</summary>
    Check,
}

/// <summary>A caution at the step it belongs to. Immutable and thread-safe.</summary>
public sealed record SafetyNotice
{
    private SafetyNotice(PlanStep step, string text)
    {
        Step = step;
        Text = text;
    }

    /// <summary>
    /// The usual cautions of the trade, in the order of the work. They do not replace the instructions of the bender, local codes or
    /// licensed practice.
    /// </summary>
    public static IReadOnlyList<SafetyNotice> All { get; } =
    [
        new(PlanStep.Die, "Bend one trial ring and measure it before cutting the rest."),
        new(PlanStep.Distortion, "A crack, a ripple or a sharp kink is a reject, not a cosmetic fault: do not straighten it and use it."),
        new(PlanStep.Cut, "Deburr both ends before bending; a saw burr cuts hands and starts cracks."),
        new(PlanStep.Bend,
            "A bent bar is a loaded spring: stand out of its plane, keep faces and feet clear of both ends, and let the load off slowly."),
        new(PlanStep.Bend,
            "Keep fingers out of the pinch between bar, nose and supports; the free end sweeps a wide arc. Do not lengthen a lever beyond "
                + "what the bender is built for."),
        new(PlanStep.Check,
            "Where a ring carries load, holds people or goods, or keeps pressure, local codes and a licensed engineer decide, not this "
                + "plan."),
    ];

    /// <summary>The step it belongs to.</summary>
    public PlanStep Step { get; }

    /// <summary>What to mind.</summary>
    public string Text { get; }

    /// <summary>Step and text.</summary>
    public override string ToString() => $"{Step}: {Text}";
}
