namespace BendMath.Forming;

/// <summary>
/// The moment along the bar under one bump, M(x) = M₀·(a − |x|)/(a − w) beyond the stretch of half-length w that lies on the nose, M₀ on it; w = 0 for a bar that touches the
/// nose at one point.
/// </summary>
internal readonly struct BumpTent(double halfSpan, double peak, double flat)
{
    public double HalfSpan { get; } = halfSpan;

    public double Peak { get; } = peak;

    public double Flat { get; } = flat;

    /// <summary>Force of each support.</summary>
    public double SupportForce => Peak / (HalfSpan - Flat);

    public double At(double x)
    {
        double u = Math.Abs(x);
        return u <= Flat ? Peak : u >= HalfSpan ? 0 : Peak * (HalfSpan - u) / (HalfSpan - Flat);
    }

    /// <summary>Both sides of ∫M·(a − x)dx.</summary>
    public double Elastic()
    {
        double lever = HalfSpan - Flat;
        return Peak * (HalfSpan * HalfSpan - lever * lever / 3);
    }
}
