using BendMath.Bending.MomentCurves;
using BendMath.Numerics;

namespace BendMath.Forming.Bumps;

/// <summary>
/// The steady state of equal bumps, each a feed f from the last, under a nose that touches at one point. The outgoing side is a row of
/// tents with peaks m₀ at the feeds and valleys m_v = m₀·(1 − f/2a) between, so everything follows from Φ₁ = ∫κ_p dm and Φ₂ = ∫κ_p·m dm at
/// m₀, at m_v and at the moment over the support. With the lever l = a·m/m₀ under the own tent, (a²/m₀²)·[2Φ₂(m₀) − Φ₂(m_v)]; from each
/// whole peak at i·f, (a/m₀)·[Φ₁(m₀) − Φ₁(m_v)]·2(a − i·f); then the part up to the support; and the elastic 2m₀a²/3. Their sum is κ_nom·a²
/// and rises with the peak curvature. Moments are counted in curvature, m = M/(E·I_b).
/// </summary>
internal sealed class SteadyBumps(MomentCurve curve, double halfSpan, double feed)
{
    /// <summary>Whole peaks whose far valley lies before the support.</summary>
    private readonly int _peaks = (int)Math.Floor(halfSpan / feed - 0.5);

    private readonly double _valley = 1 - feed / (2 * halfSpan);

    /// <summary>The peak curvature, found between nothing and one that opens more than the circle through the contacts.</summary>
    public double PeakFor(double nominal, double high)
    {
        OpeningBalance balance = new(this, nominal);
        return Newton.Root(ref balance, 0, high, Math.Min(high, 1.3 * nominal), rises: true, 1e-15);
    }

    /// <summary>The circle through the contacts that belongs to a peak curvature, and its derivative.</summary>
    public (double Nominal, double Slope) NominalFor(double peak)
    {
        MomentPoint point = curve.At(peak);
        double m = point.Moment;
        Level top = new(curve, point, 1);
        Level valley = LevelAt(point, _valley);
        Part own = new Part(2 * top.Second, 2 * top.SecondSlope).Less(new(valley.Second, valley.SecondSlope)).Over(m, 2);
        Part whole = new Part(top.First, top.FirstSlope).Less(new(valley.First, valley.FirstSlope)).Over(m, 1);
        double levers = 2.0 * _peaks - feed / halfSpan * _peaks * (_peaks + 1.0);
        Part rest = RestFor(point, top, valley);
        double sum = own.Value + levers * whole.Value + rest.Value + 2 * m / 3;
        double slope = own.Slope + levers * whole.Slope + rest.Slope + 2 / 3.0;
        return (sum, slope * point.MomentSlope);
    }

    /// <summary>
    /// Mean permanent curvature over a feed, and how far the facets bulge: from y'' = κ_p − mean with y' = 0 at peak and valley, ∫(f/2 −
    /// x)·κ_p dx − mean·f²/8.
    /// </summary>
    public (double Mean, double FacetRise) ShapeFor(double peak)
    {
        MomentPoint point = curve.At(peak);
        double m = point.Moment;
        Level top = new(curve, point, 1);
        Level valley = LevelAt(point, _valley);
        double first = (top.First - valley.First) * halfSpan / m;
        double second = (top.Second - valley.Second) * halfSpan / m;
        double mean = 2 * first / feed;

        // x = a·(1 − m/m₀) from the peak.
        return (mean, (feed / 2 - halfSpan) * first + second * halfSpan / m - mean * feed * feed / 8);
    }

    /// <summary>From the last valley before the support up to it, over a² and with the lever counted in a.</summary>
    private Part RestFor(in MomentPoint point, in Level top, in Level valley)
    {
        double m = point.Moment;
        double next = (_peaks + 1) * feed / halfSpan;
        double peaksAt = Math.Min(next, 1);
        double cut = 1 - Math.Abs(next - 1);
        Level end = cut >= 1 ? top : LevelAt(point, cut);
        if (peaksAt < next)
        {
            // The support stands on the rise to the next peak: m = m₀·(1 − (d_peak − d)/a), lever 2 − d_peak/a − m/m₀.
            return Rise(end, valley, 2 - next, m);
        }

        // Beyond the next peak: all of its rise, and the fall from it, where the lever is m/m₀ − d_peak/a.
        Part fall = new Part(top.Second, top.SecondSlope).Less(new(end.Second, end.SecondSlope)).Over(m, 2);
        Part pull = new Part(top.First, top.FirstSlope).Less(new(end.First, end.FirstSlope)).Over(m, 1);
        return Rise(top, valley, 2 - next, m).Plus(fall).Less(pull.Times(next));
    }

    private static Part Rise(in Level upper, in Level lower, double lever, double m)
    {
        Part first = new Part(upper.First, upper.FirstSlope).Less(new(lower.First, lower.FirstSlope)).Over(m, 1);
        Part second = new Part(upper.Second, upper.SecondSlope).Less(new(lower.Second, lower.SecondSlope)).Over(m, 2);
        return first.Times(lever).Less(second);
    }

    private Level LevelAt(in MomentPoint peak, double share) =>
        share <= 0 ? default : new(curve, curve.At(curve.UnderMoment(share * peak.Moment, peak.Curvature)), share);

    /// <summary>Φ₁ and Φ₂ at a share of the peak moment, and their derivatives over that.</summary>
    private readonly struct Level
    {
        public Level(MomentCurve curve, in MomentPoint point, double share)
        {
            (First, Second) = curve.Plastic(point.Curvature);
            FirstSlope = share * point.Permanent;
            SecondSlope = share * point.Permanent * point.Moment;
        }

        public double First { get; }

        public double Second { get; }

        public double FirstSlope { get; }

        public double SecondSlope { get; }
    }

    /// <summary>A number and its derivative over m₀.</summary>
    private readonly struct Part(double value, double slope)
    {
        public double Value { get; } = value;

        public double Slope { get; } = slope;

        public Part Plus(in Part other) => new(Value + other.Value, Slope + other.Slope);

        public Part Less(in Part other) => new(Value - other.Value, Slope - other.Slope);

        public Part Times(double factor) => new(factor * Value, factor * Slope);

        /// <summary>Divided by a power of m₀.</summary>
        public Part Over(double m, int power)
        {
            double divisor = power == 1 ? m : m * m;
            return new(Value / divisor, (Slope - power * Value / m) / divisor);
        }
    }

    private readonly struct OpeningBalance(SteadyBumps owner, double nominal) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            (double value, double slope) = owner.NominalFor(x);
            return (value / nominal - 1, slope / nominal);
        }
    }
}
