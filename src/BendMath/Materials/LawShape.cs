namespace BendMath.Materials;

/// <summary>
/// What is left of a law when strains are counted in a strain of reference that goes with the yield: two laws of one shape have the same
/// plastic strain over reference at the same strain over reference. So what a section does under one of them, it does under the other.
/// </summary>
internal abstract record LawShape
{
    /// <summary>Strain over reference up to which nothing is plastic, or so little that no double sees it.</summary>
    public abstract double ElasticLimit { get; }

    /// <summary>Strains over reference, rising, at which the law is not smooth.</summary>
    public abstract double[] Breaks { get; }
}

/// <summary>A straight line beyond the yield strain, which is the reference.</summary>
internal sealed record LineShape(double TangentShare) : LawShape
{
    private static readonly double[] Yield = [1];

    public override double ElasticLimit => 1;

    public override double[] Breaks => Yield;
}

/// <summary>A power of strain beyond the yield strain, which is the reference.</summary>
internal sealed record PowerShape(double Exponent) : LawShape
{
    private static readonly double[] Yield = [1];

    public override double ElasticLimit => 1;

    public override double[] Breaks => Yield;
}

/// <summary>e = u + uⁿ: the reference is the strain at which the elastic and the plastic part are equal, counted once.</summary>
internal sealed record SmoothShape(double Exponent) : LawShape
{
    /// <summary>Plastic over elastic strain that no sum over a section sees.</summary>
    private const double Negligible = 1e-15;

    private static readonly double[] Middle = [0];

    public override double ElasticLimit => Math.Pow(Negligible, 1 / (Exponent - 1));

    public override double[] Breaks => Middle;
}

/// <summary>A curve with kinks at strains of its own; the reference is 1, because another yield bends such a curve out of shape.</summary>
internal sealed record PointsShape(double[] Breaks) : LawShape
{
    public override double ElasticLimit => Breaks[0];

    public override double[] Breaks { get; } = Breaks;
}
