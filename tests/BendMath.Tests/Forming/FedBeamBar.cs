namespace BendMath.Tests.Forming;

/// <summary>
/// A rectangular bar of layers that remember: every point along the bar has layers over half its depth (the other half mirrors them), each
/// with its plastic strain and its grown yield range (linear isotropic hardening). Newtons and millimeters. It shares nothing with the
/// library.
/// </summary>
internal sealed class FedBeamBar
{
    private readonly double[] _levels;

    private readonly double _area;

    private readonly double _modulus;

    private readonly double _yield;

    private readonly double _hardening;

    private readonly double[] _plastic;

    private readonly double[] _grown;

    private readonly double[] _curvature;

    /// <param name="depth">Depth in the plane of the ring.</param>
    /// <param name="width">Width along its axis.</param>
    /// <param name="modulus">E.</param>
    /// <param name="yield">Yield stress.</param>
    /// <param name="tangent">Slope beyond yield.</param>
    /// <param name="points">Number of points along the bar.</param>
    /// <param name="layers">Number of layers over half the depth.</param>
    public FedBeamBar(double depth, double width, double modulus, double yield, double tangent, int points, int layers)
    {
        _levels = [.. Enumerable.Range(0, layers).Select(i => (i + 0.5) * depth / 2 / layers)];
        _area = 2 * width * depth / 2 / layers;
        _modulus = modulus;
        _yield = yield;
        _hardening = tangent * modulus / (modulus - tangent);
        _plastic = new double[points * layers];
        _grown = new double[points * layers];
        _curvature = new double[points];
    }

    /// <summary>Moment at a point under a curvature, and its slope.</summary>
    public (double Moment, double Slope) Respond(int point, double curvature, bool keep = false)
    {
        int layers = _levels.Length;
        double moment = 0;
        double slope = 0;
        for (int i = 0; i < layers; i++)
        {
            int at = (point * layers) + i;
            double y = _levels[i];
            double trial = _modulus * ((y * curvature) - _plastic[at]);
            double beyond = Math.Abs(trial) - _yield - (_hardening * _grown[at]);
            double stiffness = _modulus;
            if (beyond > 0)
            {
                double flow = beyond / (_modulus + _hardening);
                trial -= Math.Sign(trial) * _modulus * flow;
                stiffness *= _hardening / (_modulus + _hardening);
                if (keep)
                {
                    _plastic[at] += Math.Sign(trial) * flow;
                    _grown[at] += flow;
                }
            }

            moment += _area * y * trial;
            slope += _area * y * y * stiffness;
        }

        return (moment, slope);
    }

    /// <summary>
    /// The curvature under a moment. The moment rises with the curvature, in straight pieces: Newton's method between the nearest values
    /// known to be too small and too great.
    /// </summary>
    public double CurvatureUnder(int point, double moment)
    {
        double curvature = _curvature[point];
        double low = double.NegativeInfinity;
        double high = double.PositiveInfinity;
        for (int i = 0; ; i++)
        {
            Assert.True(i < 200, "No curvature was found.");
            (double found, double slope) = Respond(point, curvature);
            double step = (moment - found) / slope;
            if (Math.Abs(step) < 1e-12)
            {
                return _curvature[point] = curvature + step;
            }

            (low, high) = step > 0 ? (curvature, high) : (low, curvature);
            double next = curvature + step;
            curvature = next > low && next < high ? next : (low + high) / 2;
        }
    }

    /// <summary>Loads a point to a moment and lets it go: its layers remember.</summary>
    public void Keep(int point, double moment) => Respond(point, CurvatureUnder(point, moment), keep: true);
}
