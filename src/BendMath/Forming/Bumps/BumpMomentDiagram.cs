using BendMath.Numerics;

namespace BendMath.Forming.Bumps;

/// <summary>
/// The moment along the bar under one bump, M(x) = M₀·(L − |x|)/(L − w) beyond the stretch of half-length w that lies on the nose, M₀ on
/// it, with L the distance of the support on that side from the contact; w = 0 for a bar that touches the nose at one point. A nose that is
/// not a point is touched off its middle, and the two distances differ.
/// </summary>
internal readonly struct BumpMomentDiagram(double before, double after, double peak, double flat)
{
    public BumpMomentDiagram(double halfSpan, double peak, double flat)
        : this(halfSpan, halfSpan, peak, flat)
    {
    }

    /// <summary>Distance of the support toward the start of the bar.</summary>
    public double Before { get; } = before;

    /// <summary>Distance of the support toward its end.</summary>
    public double After { get; } = after;

    public double HalfSpan => (Before + After) / 2;

    public double Peak { get; } = peak;

    public double Flat { get; } = flat;

    /// <summary>Force of each support of a bar that touches the nose in its middle.</summary>
    public double SupportForce => Peak / (HalfSpan - Flat);

    public double Reach(double x) => x < 0 ? Before : After;

    public double At(double x)
    {
        double u = Math.Abs(x);
        double reach = Reach(x);
        return u <= Flat ? Peak : u >= reach ? 0 : Peak * (reach - u) / (reach - Flat);
    }

    /// <summary>Both sides of ∫M·(L − x)dx.</summary>
    public double Elastic() => Elastic(Before) + Elastic(After);

    /// <summary>∫M·(L − x)dx on the side with a support at a distance L.</summary>
    public double Elastic(double reach)
    {
        double lever = reach - Flat;
        return Peak * (reach * reach - lever * lever / 3) / 2;
    }
}
