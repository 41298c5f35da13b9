namespace BendMath.Numerics.Geometry;

/// <summary>
/// A band of a section between two levels: polynomials in (y − Bottom) for the chord width w and its moment q, and the arc terms [FirstArc,
/// EndArc).
/// </summary>
internal readonly struct Band(double bottom, double top, double width0, double width1, double moment0, double moment1, double moment2,
    int firstArc, int endArc)
{
    public double Bottom { get; } = bottom;

    public double Top { get; } = top;

    public double Width0 { get; } = width0;

    public double Width1 { get; } = width1;

    public double Moment0 { get; } = moment0;

    public double Moment1 { get; } = moment1;

    public double Moment2 { get; } = moment2;

    public int FirstArc { get; } = firstArc;

    public int EndArc { get; } = endArc;
}

/// <summary>
/// An arc crossing a band: it adds WidthFactor·s to the width and MomentFactor·s to the moment, with s = √(r² − (y − CenterY)²).
/// </summary>
internal readonly struct ArcTerm(double centerY, double radius, double widthFactor, double momentFactor)
{
    public double CenterY { get; } = centerY;

    public double Radius { get; } = radius;

    public double WidthFactor { get; } = widthFactor;

    public double MomentFactor { get; } = momentFactor;

    public double HalfChord(double y)
    {
        double u = y - CenterY;
        return Math.Sqrt(Math.Max(0, (Radius - u) * (Radius + u)));
    }

    /// <summary>
    /// The angle φ of the level, y = CenterY + r·sin φ, in [−π/2, π/2]. Taken from both u and s: near the ends of the arc an arcsine of u/r
    /// turns one rounding into an angle of 1e-8, which u·s does not cancel.
    /// </summary>
    public double AngleAt(double y)
    {
        double u = y - CenterY;
        double s = HalfChord(y);
        return s == 0 ? (u > 0 ? Math.PI / 2 : -Math.PI / 2) : u == 0 ? 0 : Math.Atan2(u, s);
    }
}
