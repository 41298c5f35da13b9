using MathNet.Numerics.Integration;

namespace BendMath.Bending;

/// <summary>
/// W(κ) = ∫₀^κ M² dκ of a held-flat section: the elastic part in closed form, the rest over t = ln κ, where M is smooth but for weak kinks at
/// which a plastic zone reaches a corner of the section; the adaptive rule finds those. Whole steps of t are kept, so that a search over κ
/// integrates each stretch once. Thread-safe.
/// </summary>
internal sealed class MomentSquaredIntegral(BendAnalysis analysis)
{
    private const double Step = 0.25;

    private const double RelativeError = 1e-11;

    private const int Depth = 12;

    private const int Order = 15;

    private readonly List<double> _whole = [0];

    private readonly double _start = Math.Log(analysis.FirstYield);

    public double UpTo(double curvature)
    {
        double stiffness = analysis.Law.E * analysis.Moments.SecondY;
        double yield = Math.Min(curvature, analysis.FirstYield);
        double elastic = stiffness * stiffness * yield * yield * yield / 3;
        double t = Math.Log(curvature);
        if (t <= _start)
        {
            return elastic;
        }

        int steps = (int)((t - _start) / Step);
        return elastic + Whole(steps) + Part(_start + steps * Step, t);
    }

    private double Whole(int steps)
    {
        lock (_whole)
        {
            while (_whole.Count <= steps)
            {
                double from = _start + (_whole.Count - 1) * Step;
                _whole.Add(_whole[_whole.Count - 1] + Part(from, from + Step));
            }

            return _whole[steps];
        }
    }

    private double Part(double from, double to)
    {
        if (to <= from)
        {
            return 0;
        }

        double axis = analysis.Moments.CentroidY;
        double Integrand(double t)
        {
            double curvature = Math.Exp(t);
            BentState state = HeldFlat.AtCurvature(analysis.Section.Profile, analysis.Law, curvature, axis);
            axis = state.NeutralAxis;
            double moment = state.BendingMoment(analysis.Moments, analysis.Law.E);
            return moment * moment * curvature;
        }

        return GaussKronrodRule.Integrate(Integrand, from, to, out _, out _, RelativeError, Depth, Order);
    }
}
