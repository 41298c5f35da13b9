namespace BendMath.Numerics.Integrals;

/// <summary>
/// Integrals over the section of the plastic strain and of its rate c = de_p/de, with d = y − ȳ and b = z − z̄:
/// P0 = ∫e_p, Pb = ∫e_p·d, Pr = ∫e_p·b; C0 = ∫c, C1 = ∫c·d, C2 = ∫c·d², Cr0 = ∫c·b, Cr1 = ∫c·d·b.
/// Everything else follows from them: N/E = κA(ȳ − y_n) − P0, M_b/E = κI_b − Pb, M_r/E = κI_br − Pr.
/// </summary>
internal struct PlasticSums
{
    public double P0;
    public double Pb;
    public double Pr;
    public double C0;
    public double C1;
    public double C2;
    public double Cr0;
    public double Cr1;

    public readonly PlasticMoments Moments => new(P0, Pb, Pr);

    public void Add(double weightW, double weightQ, double d, double plastic, double rate)
    {
        P0 += weightW * plastic;
        Pb += weightW * plastic * d;
        Pr += weightQ * plastic;
        C0 += weightW * rate;
        C1 += weightW * rate * d;
        C2 += weightW * rate * d * d;
        Cr0 += weightQ * rate;
        Cr1 += weightQ * rate * d;
    }
}

/// <summary>The part of <see cref="PlasticSums"/> that moments and release need.</summary>
internal readonly struct PlasticMoments(double p0, double pb, double pr)
{
    /// <summary>∫e_p dA.</summary>
    public double P0 { get; } = p0;

    /// <summary>∫e_p·(y − ȳ) dA.</summary>
    public double Pb { get; } = pb;

    /// <summary>∫e_p·(z − z̄) dA.</summary>
    public double Pr { get; } = pr;
}

/// <summary>The part of <see cref="PlasticSums"/> that the balance of axial forces and its slope need.</summary>
internal readonly struct AxialSums(double plastic, double rate, double rateMoment)
{
    /// <summary>∫e_p dA/κ, in cubic meters: the first moment of the section that the plastic strain takes away.</summary>
    public double Plastic { get; } = plastic;

    /// <summary>C0 = ∫c.</summary>
    public double C0 { get; } = rate;

    /// <summary>C1 = ∫c·d.</summary>
    public double C1 { get; } = rateMoment;
}
