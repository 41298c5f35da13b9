namespace BendMath.Tests.Fibers;

/// <summary>
/// A bar of fibers that each keep their plastic strain: linear hardening, isotropic (the yield range grows) or kinematic (it moves), stress
/// over E. The bar is loaded, let go and loaded again in steps; every step finds the strains e = a + κ(y − ȳ) + κ_r(z − z̄): under load by
/// Newton's method inside a bracket, since N rises with κ at a fixed radius; let go by steps of the elastic stiffness, which is never too
/// small, so that the convex energy falls with each. It shares nothing with the library.
/// </summary>
internal sealed class FiberBar
{
    private readonly Fiber[] _fibers;

    private readonly double _yield;

    private readonly double _hardening;

    private readonly bool _kinematic;

    private readonly double _area;

    private readonly double _y;

    private readonly double _z;

    private double[] _plastic;

    private double[] _grown;

    private double _axial;

    private double _curvature;

    private double _outOfPlane;

    /// <param name="fibers">The section.</param>
    /// <param name="yieldStrain">σ_y/E.</param>
    /// <param name="tangent">E_t/E, less than one.</param>
    /// <param name="kinematic">Whether the yield range moves instead of growing.</param>
    public FiberBar(Fiber[] fibers, double yieldStrain, double tangent, bool kinematic)
    {
        _fibers = fibers;
        _yield = yieldStrain;
        _hardening = tangent / (1 - tangent);
        _kinematic = kinematic;
        _area = fibers.Sum(fiber => fiber.Area);
        _y = fibers.Sum(fiber => fiber.Area * fiber.Y) / _area;
        _z = fibers.Sum(fiber => fiber.Area * fiber.Z) / _area;
        _plastic = new double[fibers.Length];
        _grown = new double[fibers.Length];
    }

    public double Curvature => _curvature;

    public double TotalCurvature => Math.Sqrt((_curvature * _curvature) + (_outOfPlane * _outOfPlane));

    /// <summary>Radius of the inside face at the centroid's axial position.</summary>
    public double InsideRadius => (1 + _axial - (_curvature * _y)) / TotalCurvature;

    public double NeutralAxis => _y - (_axial / _curvature);

    /// <summary>M_b/E of the present state.</summary>
    public double Moment { get; private set; }

    /// <summary>Bends held flat to an inside radius in steps of equal curvature: N = 0 with a = κ(R + ȳ) − 1.</summary>
    public void BendFlat(double insideRadius, int steps)
    {
        double first = _curvature;
        double last = 1 / (insideRadius + _y);
        for (int step = 1; step <= steps; step++)
        {
            double lever = 1 / (first + ((last - first) * step / steps));
            double low = 0.5 / lever;
            double high = 2 / lever;
            double curvature = 1 / lever;
            double size = double.PositiveInfinity;
            for (int i = 0; i < 200 && size > 1e-15; i++)
            {
                Totals totals = Respond((curvature * lever) - 1, curvature, 0, keep: false);
                (low, high) = totals.N > 0 ? (low, curvature) : (curvature, high);
                double next = curvature - (totals.N / ((lever * totals.S0) + totals.Sy));
                next = i % 4 == 3 || !(next > low && next < high) ? (low + high) / 2 : next;
                size = totals.N == 0 ? 0 : Math.Min(Math.Abs(next - curvature), high - low) / curvature;
                curvature = next;
            }

            Keep((curvature * lever) - 1, curvature, 0);
        }
    }

    /// <summary>Lets go: no axial force, no moment about the bending axis and, when free, none about the radial axis.</summary>
    public void Release(Release release)
    {
        double a = _axial;
        double k = _curvature;
        double r = _outOfPlane;
        Totals elastic = default;
        foreach (Fiber fiber in _fibers)
        {
            elastic.Add(fiber.Area, fiber.Y - _y, fiber.Z - _z, 0, 1);
        }

        double size = double.PositiveInfinity;
        for (int i = 0; i < 1000 && size > 1e-15; i++)
        {
            Totals t = Respond(a, k, r, keep: false);
            double determinant = (elastic.Syy * elastic.Szz) - (elastic.Syz * elastic.Syz);
            (double inPlane, double outOfPlane) = release == BendMath.Release.HeldFlat
                ? (t.My / elastic.Syy, 0)
                : (((elastic.Szz * t.My) - (elastic.Syz * t.Mz)) / determinant,
                    ((elastic.Syy * t.Mz) - (elastic.Syz * t.My)) / determinant);
            a -= t.N / elastic.S0;
            k -= inPlane;
            r -= outOfPlane;
            size = (Math.Abs(inPlane) + Math.Abs(outOfPlane)) / _curvature;
        }

        Keep(a, k, r);
    }

    private void Keep(double axial, double curvature, double outOfPlane)
    {
        Totals totals = Respond(axial, curvature, outOfPlane, keep: true);
        (_axial, _curvature, _outOfPlane, Moment) = (axial, curvature, outOfPlane, totals.My);
        Assert.True(Math.Abs(totals.N) < 1e-12 * _area * _yield, "The fibers found no equilibrium.");
    }

    private Totals Respond(double axial, double curvature, double outOfPlane, bool keep)
    {
        Totals totals = default;
        double[] plastic = keep ? new double[_fibers.Length] : [];
        double[] grown = keep ? new double[_fibers.Length] : [];
        for (int i = 0; i < _fibers.Length; i++)
        {
            Fiber fiber = _fibers[i];
            double y = fiber.Y - _y;
            double z = fiber.Z - _z;
            double strain = axial + (curvature * y) + (outOfPlane * z);
            double trial = strain - _plastic[i];
            double shift = _kinematic ? _hardening * _plastic[i] : 0;
            double range = _yield + (_kinematic ? 0 : _hardening * _grown[i]);
            double beyond = Math.Abs(trial - shift) - range;
            double flow = beyond > 0 ? Math.Sign(trial - shift) * beyond / (1 + _hardening) : 0;
            totals.Add(fiber.Area, y, z, trial - flow, beyond > 0 ? _hardening / (1 + _hardening) : 1);
            if (keep)
            {
                plastic[i] = _plastic[i] + flow;
                grown[i] = _grown[i] + Math.Abs(flow);
            }
        }

        if (keep)
        {
            (_plastic, _grown) = (plastic, grown);
        }

        return totals;
    }

    /// <summary>Forces over E and their stiffness.</summary>
    private struct Totals
    {
        public double N;
        public double My;
        public double Mz;
        public double S0;
        public double Sy;
        public double Syy;
        public double Syz;
        public double Szz;

        public void Add(double area, double y, double z, double stress, double stiffness)
        {
            N += area * stress;
            My += area * stress * y;
            Mz += area * stress * z;
            S0 += area * stiffness;
            Sy += area * stiffness * y;
            Syy += area * stiffness * y * y;
            Syz += area * stiffness * y * z;
            Szz += area * stiffness * z * z;
        }
    }
}
