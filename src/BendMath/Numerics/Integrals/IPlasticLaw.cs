namespace BendMath.Numerics.Integrals;

/// <summary>
/// What the integration over a section asks of a smooth law: its plastic strain e_p = e − σ/E and c = de_p/de, for e ≥ 0.
/// </summary>
internal interface IPlasticLaw
{
    /// <summary>Strain up to which e_p is exactly zero.</summary>
    double ElasticLimit { get; }

    /// <summary>e_p and c at a strain e &gt; 0.</summary>
    (double Plastic, double Rate) At(double strain);

    /// <summary>The strain up to which, from the given one on, twelve Gauss points integrate the law to rounding.</summary>
    double NextBreak(double strain);

    /// <summary>Antiderivatives at a strain not below the elastic limit.</summary>
    StrainPrimitives PrimitivesAt(double strain);
}

/// <summary>Antiderivatives over strain: P_k of e_p·eᵏ and C_k of c·eᵏ.</summary>
internal struct StrainPrimitives
{
    public double P0;
    public double P1;
    public double P2;
    public double C0;
    public double C1;
    public double C2;
    public double C3;

    public static StrainPrimitives operator -(in StrainPrimitives to, in StrainPrimitives from) => new()
    {
        P0 = to.P0 - from.P0,
        P1 = to.P1 - from.P1,
        P2 = to.P2 - from.P2,
        C0 = to.C0 - from.C0,
        C1 = to.C1 - from.C1,
        C2 = to.C2 - from.C2,
        C3 = to.C3 - from.C3,
    };
}
