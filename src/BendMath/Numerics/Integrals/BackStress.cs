namespace BendMath.Numerics.Integrals;

/// <summary>
/// What a fiber remembers: strain, stress, back stress, the sum of all plastic strain it went through, and the slope it unloads with.
/// </summary>
internal readonly struct FiberState(double strain, double stress, double back, double flow, double modulus)
{
    public double Strain { get; } = strain;

    public double Stress { get; } = stress;

    public double Back { get; } = back;

    public double Flow { get; } = flow;

    public double Modulus { get; } = modulus;

    /// <summary>The stress a strain would bring without any further plastic flow.</summary>
    public double TrialStress(double next) => Stress + Modulus * (next - Strain);
}

/// <summary>
/// A fiber of a metal with memory, in the units of its modulus: σ = E(e − e_p), yield |σ − X| = σ₀ + R(p), dX = C·de_p − γX·dp with C =
/// γ·X_sat, R = H·p + Q(1 − exp(−b·p)).
/// Over a straight change of strain everything is a function of the plastic strain q of that leg, with s its direction: X = s·X_sat + (X₁
/// − s·X_sat)·exp(−γq),
/// σ = X + s·(σ₀ + R(p₁ + q)) and e = e₁ + (σ − σ₁)/E + s·q.
/// </summary>
internal readonly struct BackStress(double modulus, double yield, double saturation, double rate, double linear, double range,
    double rangeRate)
{
    private const int Enough = 100;

    /// <summary>A step this small, relative to the plastic strain, has squared its error below rounding.</summary>
    private const double Settled = 1e-9;

    public double Modulus { get; } = modulus;

    /// <summary>σ₀.</summary>
    public double Yield { get; } = yield;

    /// <summary>X_sat.</summary>
    public double Saturation { get; } = saturation;

    /// <summary>γ.</summary>
    public double Rate { get; } = rate;

    /// <summary>H.</summary>
    public double Linear { get; } = linear;

    /// <summary>Q.</summary>
    public double Range { get; } = range;

    /// <summary>b.</summary>
    public double RangeRate { get; } = rangeRate;

    /// <summary>A fiber of the straight bar.</summary>
    public FiberState Untouched => new(0, 0, 0, 0, Modulus);

    /// <summary>σ₀ + R(p).</summary>
    public double Radius(double flow) => Yield + Linear * flow - Range * Expm1(-RangeRate * flow);

    /// <summary>Slope of the first loading over plastic strain: γ·X_sat·exp(−γp) + H + Q·b·exp(−b·p).</summary>
    public double FirstSlope(double flow) =>
        Rate * Saturation * Math.Exp(-Rate * flow) + Linear + Range * RangeRate * Math.Exp(-RangeRate * flow);

    /// <summary>Stress and slope dσ/de when a fiber is brought to another strain; plastic strain of the leg, zero when elastic.</summary>
    public (double Stress, double Slope, double Flow) Respond(in FiberState from, double strain)
    {
        double trial = from.TrialStress(strain);
        double beyond = Math.Abs(trial - from.Back) - Radius(from.Flow);
        if (beyond <= 0)
        {
            return (trial, from.Modulus, 0);
        }

        int side = trial > from.Back ? 1 : -1;
        double apart = Saturation - side * from.Back;
        double least = Math.Max(0, Range) * Math.Exp(-RangeRate * from.Flow) + apart;
        double flow =
            Math.Max(beyond / (from.Modulus + Rate * apart + Linear + Math.Max(0, least - apart) * RangeRate),
                (beyond - least) / (from.Modulus + Linear));
        double slope = 0;

        // g(q) = s(σ(q) − σ_trial) + E·q rises and, where Q ≥ 0, is concave; it is below its tangent at 0 and below its line for q → ∞, so
        // both roots lie below its own, from where Newton's steps rise onto it. Where Q < 0 a step may pass it, and the next comes back.
        for (int i = 0; i < Enough; i++)
        {
            double faded = Math.Exp(-Rate * flow);
            double turned = Range == 0 ? 0 : Math.Exp(-RangeRate * (from.Flow + flow));
            slope = Rate * apart * faded + Linear + Range * RangeRate * turned;
            double value =
                Saturation - apart * faded + Yield + Linear * (from.Flow + flow) + Range * (1 - turned) - side * trial
                    + from.Modulus * flow;
            double step = -value / (from.Modulus + slope);
            flow = Math.Max(0, flow + step);
            if (Math.Abs(step) <= Settled * flow)
            {
                break;
            }
        }

        double shift = side * Saturation + (from.Back - side * Saturation) * Math.Exp(-Rate * flow);
        return (shift + side * Radius(from.Flow + flow), from.Modulus * slope / (from.Modulus + slope), flow);
    }

    /// <summary>The fiber after it was brought to another strain.</summary>
    public FiberState Advance(in FiberState from, double strain)
    {
        (double stress, _, double flow) = Respond(from, strain);
        if (flow == 0)
        {
            return new(strain, stress, from.Back, from.Flow, from.Modulus);
        }

        int side = from.TrialStress(strain) > from.Back ? 1 : -1;
        double back = side * Saturation + (from.Back - side * Saturation) * Math.Exp(-Rate * flow);
        return new(strain, stress, back, from.Flow + flow, from.Modulus);
    }

    /// <summary>exp(x) − 1 without cancellation for small x, x ≤ 0.</summary>
    private static double Expm1(double x) => x > -1e-5 ? x * (1 + x / 2 * (1 + x / 3)) : Math.Exp(x) - 1;
}
