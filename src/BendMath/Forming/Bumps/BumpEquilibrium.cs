using BendMath.Bending;
using BendMath.Bending.MomentCurves;
using BendMath.Forming.ThreePoint;
using BendMath.Numerics;

namespace BendMath.Forming.Bumps;

/// <summary>
/// One bump: with the tangent at the nose free, the bar touches both supports when both sides' ∫[max(κ_p, κ_p(M)) + M/(E·I_b)]·(a − |x|)dx
/// add up to 2d. The sum rises with M₀ from what the bar at rest has, so there is one root between 0 and the moment M_n at which the
/// curvature is that of the nose; beyond it the bar lies on the nose along 2w, and the sum rises with w up to 1/R_n·a² at w = a.
/// </summary>
internal sealed class BumpEquilibrium
{
    private readonly BendAnalysis _analysis;

    private readonly double _a;

    private readonly double _nose;

    private NoseLimit? _limit;

    public BumpEquilibrium(BendAnalysis analysis, ThreePointSetup setup)
    {
        _analysis = analysis;
        _a = setup.A;
        _nose = Math.Max(setup.Nose, analysis.Section.TightestRadius);
        _limit = analysis.Law.IsSmooth ? null : new(analysis, _nose);
    }

    public FirstLoadingCurve Curve => _analysis.FirstLoading;

    public double HalfSpan => _a;

    private double Stiffness => _analysis.Law.E * _analysis.Moments.SecondY;

    /// <summary>1/R_n of a bar that takes the curvature of the nose.</summary>
    public double NoseCurvature => Limit.Curvature;

    /// <summary>M_n.</summary>
    public double LargestMoment => Math.Min(Curve.LastMoment, Limit.Moment);

    private NoseLimit Limit => _limit ??= new(_analysis, _nose);

    /// <summary>
    /// Whether a circle is wider than the nose. No neutral axis lies beyond the outside face, so most are without asking.
    /// </summary>
    public bool IsWiderThanNose(double nominal) => nominal * (_nose + _analysis.Section.Height) < 1 || nominal < NoseCurvature;

    /// <summary>
    /// The moments under a bump with 2d = κ_nom·a²; no moment when the bar already clears. A guess of M₀ near the answer saves steps.
    /// </summary>
    public BumpMomentDiagram Tent(MomentEnvelope bar, double center, double nominal, double guess)
    {
        double target = nominal * _a * _a;
        BumpMomentDiagram none = new(_a, 0, 0);
        if (Opening(bar, center, none) >= target)
        {
            return none;
        }

        BumpMomentDiagram full = new(_a, LargestMoment, 0);
        if (Opening(bar, center, full) > target)
        {
            PeakResidual peak = new(this, bar, center, target);
            return new(_a, Newton.Root(ref peak, 0, LargestMoment, guess, rises: true, 1e-13), 0);
        }

        double widest = _a * (1 - 1e-6);
        if (Opening(bar, center, new(_a, LargestMoment, widest)) <= target)
        {
            return new(_a, LargestMoment, widest);
        }

        FlatResidual flat = new(this, bar, center, target);
        return new(_a, LargestMoment, Newton.Root(ref flat, 0, widest, 0, rises: true, 1e-13));
    }

    /// <summary>The circle through the contacts that leaves a bar under given moments.</summary>
    public double NominalOf(MomentEnvelope bar, double center, in BumpMomentDiagram tent) => Opening(bar, center, tent) / (_a * _a);

    /// <summary>
    /// The steady state of equal bumps, each a feed from the last: the outgoing side is a row of equal tents, and the bump that meets 2d is
    /// one of them. The sum rises with M₀ (and then w) on both sides, so one root again; where the bar touches the nose at one point, it is
    /// that of <see cref="SteadyBumps"/>.
    /// </summary>
    public SteadyState Steady(double nominal, double feed)
    {
        SteadyBumps row = new(_analysis.Curve, _a, feed);

        // A bar cannot be bent over the nose yet: no neutral axis lies beyond the outside face.
        double below = 1 / (_nose + _analysis.Section.Height);
        double high = Math.Min(below, 2 * nominal);
        while (row.NominalFor(high).Nominal < nominal)
        {
            if (high >= below && high >= NoseCurvature)
            {
                return SteadyOnNose(nominal, feed);
            }

            high = Math.Min(2 * high, high < below ? below : NoseCurvature);
        }

        double peak = row.PeakFor(nominal, high);
        (double mean, double rise) = row.ShapeFor(peak);
        return new(new(_a, Stiffness * _analysis.Curve.At(peak).Moment, 0), mean, rise);
    }

    private SteadyState SteadyOnNose(double nominal, double feed)
    {
        double widest = 1 - 1e-6;
        double Residual(double share)
        {
            BumpMomentDiagram tent = new(_a, LargestMoment, share * _a);
            return NominalOf(Row(feed, tent), 2 * _a, tent) / nominal - 1;
        }

        double share = Residual(widest) <= 0 ? widest : Residual(0) >= 0 ? 0 : Bracketed.Root(Residual, 0, widest);
        BumpMomentDiagram found = new(_a, LargestMoment, share * _a);
        MomentEnvelope bar = Row(feed, found);
        double last = 2 * _a - feed;
        return new(found, bar.Turn(last - feed, last) / feed, BumpShape.FacetRise(bar, last - feed, last));
    }

    /// <summary>A bar bumped from its start up to, not including, a place two half-spans along it, four half-spans long.</summary>
    public MomentEnvelope Row(double feed, in BumpMomentDiagram tent)
    {
        int bumps = (int)Math.Ceiling(2 * _a / feed) + 1;
        double[] s = new double[3 * bumps + 4];
        double[] mu = new double[3 * bumps + 4];
        double flat = Math.Min(tent.Flat, feed / 2);
        double valley = tent.At(feed / 2);
        int n = 0;

        void Add(double place, double moment)
        {
            if (n == 0 || place > s[n - 1])
            {
                s[n] = Math.Max(0, place);
                mu[n++] = moment;
            }
        }

        for (int i = bumps; i >= 1; i--)
        {
            double center = 2 * _a - i * feed;
            if (center + feed / 2 <= 0)
            {
                continue;
            }

            Add(0, tent.At(center));
            Add(center - flat, tent.Peak);
            Add(center + flat, tent.Peak);
            Add(i > 1 ? center + feed / 2 : center + _a, i > 1 ? valley : 0);
        }

        Add(4 * _a, 0);
        return new(Curve, s, mu, n);
    }

    private double Opening(MomentEnvelope bar, double center, in BumpMomentDiagram tent) =>
        bar.Opening(center, tent).Sum + tent.Elastic() / Stiffness;

    /// <summary>A bar that takes the curvature of the nose.</summary>
    private sealed class NoseLimit
    {
        public NoseLimit(BendAnalysis analysis, double nose)
        {
            BentState state = analysis.StateAtRadius(nose);
            Curvature = state.Curvature;
            Moment = state.BendingMoment(analysis.Moments, analysis.Law.E);
        }

        public double Curvature { get; }

        public double Moment { get; }
    }

    private readonly struct PeakResidual(BumpEquilibrium owner, MomentEnvelope bar, double center, double target) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            BumpMomentDiagram tent = new(owner._a, x, 0);
            (double sum, double slope) = bar.Opening(center, tent);
            double elastic = tent.Elastic() / owner.Stiffness;
            return ((sum + elastic) / target - 1, (slope + elastic) / (x * target));
        }
    }

    private readonly struct FlatResidual(BumpEquilibrium owner, MomentEnvelope bar, double center, double target) : IDifferentiable
    {
        public (double Value, double Slope) At(double x)
        {
            BumpMomentDiagram tent = new(owner._a, owner.LargestMoment, x);
            (double sum, double slope) = bar.Opening(center, tent);
            double lever = owner._a - x;
            double elastic = tent.Elastic() / owner.Stiffness;
            return ((sum + elastic) / target - 1, (slope / lever + 2 * tent.Peak * lever / (3 * owner.Stiffness)) / target);
        }
    }
}

/// <summary>
/// A bar far from its ends after equal bumps: the moments under one of them, the mean curvature that stays, the bulge of its facets.
/// </summary>
internal readonly struct SteadyState(BumpMomentDiagram tent, double mean, double facetRise)
{
    public BumpMomentDiagram Tent { get; } = tent;

    public double Mean { get; } = mean;

    public double FacetRise { get; } = facetRise;
}
