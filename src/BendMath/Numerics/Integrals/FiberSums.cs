namespace BendMath.Numerics.Integrals;

/// <summary>A linear field over a section: Axial + InPlane·(y − ȳ) + OutOfPlane·(z − z̄).</summary>
internal readonly struct SectionField(double axial, double inPlane, double outOfPlane)
{
    public double Axial { get; } = axial;

    public double InPlane { get; } = inPlane;

    public double OutOfPlane { get; } = outOfPlane;

    public double At(double d, double b) => Axial + InPlane * d + OutOfPlane * b;

    public SectionField Plus(in SectionField other, double factor) => new(
        Axial + factor * other.Axial, InPlane + factor * other.InPlane, OutOfPlane + factor * other.OutOfPlane);

    /// <summary>The same field seen in axes turned counter-clockwise: d′ = d·cos α + b·sin α.</summary>
    public SectionField Turned(double cosine, double sine) => new(
        Axial, InPlane * cosine + OutOfPlane * sine, OutOfPlane * cosine - InPlane * sine);
}

/// <summary>
/// The balance of a section of fibers: N, M_b and M_r, and the stiffness matrix ∫E_t·g·gᵀ dA with g = (1, y − ȳ, z − z̄).
/// </summary>
internal readonly struct FiberSums
{
    /// <summary>Number of integrals.</summary>
    public const int Size = 9;

    public FiberSums(double[] sums)
    {
        (Force, Bending, HoldDown) = (sums[0], sums[1], sums[2]);
        (S, Sd, Sb) = (sums[3], sums[4], sums[5]);
        (Sdd, Sdb, Sbb) = (sums[6], sums[7], sums[8]);
    }

    private FiberSums(double force, double bending, double holdDown, double s, double sd, double sb, double sdd, double sdb, double sbb)
    {
        (Force, Bending, HoldDown) = (force, bending, holdDown);
        (S, Sd, Sb) = (s, sd, sb);
        (Sdd, Sdb, Sbb) = (sdd, sdb, sbb);
    }

    public double Force { get; }

    public double Bending { get; }

    public double HoldDown { get; }

    public double S { get; }

    public double Sd { get; }

    public double Sb { get; }

    public double Sdd { get; }

    public double Sdb { get; }

    public double Sbb { get; }

    /// <summary>Adds one point of a rule: its force and stiffness, weight included, at its distances from the centroid.</summary>
    public static void AddPoint(Span<double> sums, double force, double stiffness, double d, double b)
    {
        sums[0] += force;
        sums[1] += force * d;
        sums[2] += force * b;
        sums[3] += stiffness;
        sums[4] += stiffness * d;
        sums[5] += stiffness * b;
        sums[6] += stiffness * d * d;
        sums[7] += stiffness * d * b;
        sums[8] += stiffness * b * b;
    }

    /// <summary>Adds a chord of one stress and one stiffness, between two distances from the centroid.</summary>
    public static void AddChord(Span<double> sums, double stress, double stiffness, double d, double from, double to)
    {
        double width = to - from;
        double first = width * (from + to) / 2;
        double second = width * (from * from + from * to + to * to) / 3;
        sums[0] += stress * width;
        sums[1] += stress * width * d;
        sums[2] += stress * first;
        sums[3] += stiffness * width;
        sums[4] += stiffness * width * d;
        sums[5] += stiffness * first;
        sums[6] += stiffness * width * d * d;
        sums[7] += stiffness * first * d;
        sums[8] += stiffness * second;
    }

    /// <summary>The sums of turned axes, seen in the section's own.</summary>
    public FiberSums TurnedBack(double c, double s) => new(
        Force,
        c * Bending - s * HoldDown,
        s * Bending + c * HoldDown,
        S,
        c * Sd - s * Sb,
        s * Sd + c * Sb,
        c * c * Sdd - 2 * c * s * Sdb + s * s * Sbb,
        c * s * (Sdd - Sbb) + (c * c - s * s) * Sdb,
        s * s * Sdd + 2 * c * s * Sdb + c * c * Sbb);

    /// <summary>The field that the stiffness answers to these forces with; free, or without curvature out of the plane.</summary>
    public SectionField Solve(double force, double bending, double holdDown, bool free)
    {
        // Symmetric elimination, the axial row first.
        double ld = Sd / S;
        double lb = Sb / S;
        double dd = Sdd - ld * Sd;
        double db = Sdb - ld * Sb;
        double bb = Sbb - lb * Sb;
        double m = bending - ld * force;
        double r = holdDown - lb * force;
        if (!free)
        {
            double only = m / dd;
            return new((force - Sd * only) / S, only, 0);
        }

        double outOfPlane = (r - db / dd * m) / (bb - db / dd * db);
        double inPlane = (m - db * outOfPlane) / dd;
        return new((force - Sd * inPlane - Sb * outOfPlane) / S, inPlane, outOfPlane);
    }
}
