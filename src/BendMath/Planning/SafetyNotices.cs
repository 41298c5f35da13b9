namespace BendMath;

/// <summary>
/// The usual cautions of the trade, in the order of the work. They do not replace the instructions of the bender, local codes or licensed
/// practice.
/// </summary>
public static class SafetyNotices
{
    /// <summary>Cautions for the choice of the die.</summary>
    public static IReadOnlyList<string> Die { get; } = ["Bend one trial ring and measure it before cutting the rest."];

    /// <summary>Cautions about distortion.</summary>
    public static IReadOnlyList<string> Distortion { get; } =
        ["A crack, a ripple or a sharp kink is a reject, not a cosmetic fault: do not straighten it and use it."];

    /// <summary>Cautions for cutting.</summary>
    public static IReadOnlyList<string> Cut { get; } = ["Deburr both ends before bending; a saw burr cuts hands and starts cracks."];

    /// <summary>Cautions for bending.</summary>
    public static IReadOnlyList<string> Bend { get; } =
    [
        "A bent bar is a loaded spring: stand out of its plane, keep faces and feet clear of both ends, and let the load off slowly.",
        "Keep fingers out of the pinch between bar, nose and supports; the free end sweeps a wide arc. Do not lengthen a lever beyond "
            + "what the bender is built for.",
    ];

    /// <summary>Cautions for the finished ring.</summary>
    public static IReadOnlyList<string> Check { get; } =
    [
        "Where a ring carries load, holds people or goods, or keeps pressure, local codes and a licensed engineer decide, not this plan.",
    ];

    /// <summary>All of them, in the order of the work.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Die, .. Distortion, .. Cut, .. Bend, .. Check];
}
