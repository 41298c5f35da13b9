using BendMath.Guards;

namespace BendMath.Forming.Variation;

/// <summary>What a set of inputs leaves: the radii of the free or flattened ring and its curvature; or why there is no ring.</summary>
internal readonly record struct RingReply(double Inside, double Centroid, double Outside, double Curvature, string? Refusal,
    bool IsStraight = false)
{
    public static RingReply Straight { get; } = new(0, 0, 0, 0, "the bar springs back straight", IsStraight: true);

    /// <summary>A ring whose circumference is longer than any length the library takes.</summary>
    public static RingReply NearlyStraight { get; } = new(0, 0, 0, 0, "the bar springs back nearly straight", IsStraight: true);

    public static RingReply Refused(string why) => new(0, 0, 0, 0, why);

    /// <summary>A ring of another curvature: every line of the bar keeps its distance from the one that keeps its length.</summary>
    public RingReply Times(double ratio)
    {
        double shift = (1 / ratio - 1) / Curvature;
        return new(Inside + shift, Centroid + shift, Outside + shift, Curvature * ratio, null);
    }

    /// <summary>The ring, or the news that it is as good as straight.</summary>
    public RingReply Checked() =>
        2 * Math.PI * Outside < Guard.MostMeters && Curvature * Guard.MostMeters > 2 * Math.PI ? this : NearlyStraight;
}
