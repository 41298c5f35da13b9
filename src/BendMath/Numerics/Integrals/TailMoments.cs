namespace BendMath.Numerics.Integrals;

/// <summary>
/// Moments of the part of a section beyond a level, with x the distance from the level into that part, x ≥ 0:
/// W0 = ∫dA, W1 = ∫x dA, W2 = ∫x² dA and, with b = z − z̄, Q0 = ∫b dA, Q1 = ∫x·b dA.
/// </summary>
internal struct TailMoments
{
    public double W0;
    public double W1;
    public double W2;
    public double Q0;
    public double Q1;

    /// <summary>The same part seen from a level farther away: x grows by the distance. A sum of positive terms.</summary>
    public readonly TailMoments SeenFrom(double distance) => new()
    {
        W0 = W0,
        W1 = W1 + distance * W0,
        W2 = W2 + distance * (2 * W1 + distance * W0),
        Q0 = Q0,
        Q1 = Q1 + distance * Q0,
    };
}
