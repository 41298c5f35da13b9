namespace BendMath.Numerics;

/// <summary>A band of a section between two levels: polynomials in (y − Bottom) for the chord width w and its moment q, and the arc terms [FirstArc, EndArc).</summary>
internal readonly struct Band(double bottom, double top, double width0, double width1, double moment0, double moment1, double moment2, int firstArc, int endArc)
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

/// <summary>An arc crossing a band: it adds WidthFactor·s to the width and MomentFactor·s to the moment, with s = √(r² − (y − CenterY)²).</summary>
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
    /// The angle φ of the level, y = CenterY + r·sin φ, in [−π/2, π/2]. Taken from both u and s: near the ends of the arc an arcsine of u/r turns one
    /// rounding into an angle of 1e-8, which u·s does not cancel.
    /// </summary>
    public double AngleAt(double y) => Math.Atan2(y - CenterY, HalfChord(y));

    /// <summary>∫s dy and ∫y·s dy between two levels, closed form: ∫s du = (u·s + r²·φ)/2, ∫u·s du = −s³/3.</summary>
    public (double S0, double S1) Integrals(double from, double to)
    {
        double sFrom = HalfChord(from);
        double sTo = HalfChord(to);
        double s0 = ((to - CenterY) * sTo - (from - CenterY) * sFrom + Radius * Radius * (AngleAt(to) - AngleAt(from))) / 2;
        return (s0, CenterY * s0 + (sFrom * sFrom * sFrom - sTo * sTo * sTo) / 3);
    }
}
