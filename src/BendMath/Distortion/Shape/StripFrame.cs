using BendMath.Numerics;

namespace BendMath.Distortion.Shape;

/// <summary>
/// Strips of a section that is bent to an inside radius without axial force, each free to move along its normal: m″ + n·κ·cos β = 0. At a
/// given curvature the work stored is a convex function of displacements and neutral axis together. κ = 1/(R_i + y_n) follows the neutral
/// axis from step to step, which changes it little, as y_n is small beside R_i.
/// </summary>
internal sealed partial class StripFrame : LeastWork
{
    private const int Points = 3;

    /// <summary>Rounds of the wall's push after which it is settled to rounding.</summary>
    private const int MostRounds = 30;

    private static readonly double[] GaussPlaces = [(1 - Math.Sqrt(0.6)) / 2, 0.5, (1 + Math.Sqrt(0.6)) / 2];

    private static readonly double[] GaussWeights = [5.0 / 18, 8.0 / 18, 5.0 / 18];

    private readonly Strip[] _strips;

    private readonly RigidPart _rest;

    private readonly double _radius;

    private readonly int _axis;

    private readonly double[] _push;

    /// <summary>For each deflection, toward which side a wall stands, +1 or −1; zero where there is none.</summary>
    private readonly int[] _sides;

    private double _clearance;

    private double _stiffness;

    private double _wall;

    /// <param name="strips">The strips.</param>
    /// <param name="unknowns">Number of their unknowns.</param>
    /// <param name="rest">What does not move.</param>
    /// <param name="law">The law.</param>
    /// <param name="insideRadius">Radius of the inside face.</param>
    /// <param name="neutralAxis">Neutral axis of the section that keeps its shape, from the inside face.</param>
    public StripFrame(Strip[] strips, int unknowns, in RigidPart rest, in TwoWayLaw law, double insideRadius, double neutralAxis)
        : base(law, unknowns + 1, strips.Sum(strip => Points * (strip.Nodes - 1)), 5)
    {
        _strips = strips;
        _rest = rest;
        _radius = insideRadius;
        _axis = unknowns;
        _push = new double[unknowns];
        _sides = new int[unknowns];
        double thickness = strips.Max(strip => strip.Thickness);
        Sizes.AsSpan().Fill(thickness);
        foreach (Strip strip in strips)
        {
            for (int node = 0; node < strip.Nodes; node++)
            {
                if (strip.Slope(node) >= 0)
                {
                    Sizes[strip.Slope(node)] = thickness / strip.Width;
                }
            }
        }

        Start(_axis, neutralAxis);
        int i = 0;
        foreach (Strip strip in strips)
        {
            WallRule rule = new(strip.Thickness);
            for (int element = 0; element < strip.Nodes - 1; element++)
            {
                for (int point = 0; point < Points; point++, i++)
                {
                    Places[i].Rule = rule;
                    Places[i].Weight = strip.Count * GaussWeights[point] * strip.ElementLength;
                    strip.OfElement(element).CopyTo(Index.AsSpan(5 * i));
                    Index[5 * i + 4] = _axis;
                    Curvatures(GaussPlaces[point], strip.ElementLength, KSlopes.AsSpan(5 * i, 4));
                }
            }
        }
    }

    public double NeutralAxis => this[_axis];

    public double Curvature => 1 / (_radius + NeutralAxis);

    public IReadOnlyList<Strip> Strips => _strips;

    public double Deflection(Strip strip, int node) => this[strip.Deflection(node)];

    public double Slope(Strip strip, int node) => this[strip.Slope(node)];

    /// <summary>Finds the equilibrium without a wall beyond the strips; false where there is none.</summary>
    public bool SettleFree(CancellationToken cancellation) => Settle(cancellation);

    /// <summary>
    /// Goes on to the equilibrium with a wall parallel to each undisplaced strip, on the side to which its end has moved, that it cannot
    /// pass. The wall is elastic at first, 100 times as stiff as an element, and its push corrected until nothing is left of its give
    /// (augmented Lagrangian).
    /// </summary>
    /// <param name="clearance">How far the strips can move before they touch the wall.</param>
    /// <param name="cancellation">To stop.</param>
    public bool SettleAgainstWall(double clearance, CancellationToken cancellation)
    {
        _clearance = clearance;
        double thickness = 0;
        foreach (Strip strip in _strips)
        {
            int side = Math.Sign(Deflection(strip, strip.Nodes - 1));
            double plate = Law.Modulus * Math.Pow(strip.Thickness, 3) / 12;
            _wall = Math.Max(_wall, 100 * plate / Math.Pow(strip.ElementLength, 3));
            thickness = Math.Max(thickness, strip.Thickness);
            for (int node = 0; node < strip.Nodes; node++)
            {
                if (strip.Deflection(node) is >= 0 and int unknown)
                {
                    _sides[unknown] = side;
                }
            }
        }

        for (int round = 0; round < MostRounds; round++)
        {
            if (!Settle(cancellation))
            {
                return false;
            }

            double give = 0;
            for (int j = 0; j < _push.Length; j++)
            {
                double push = Push(j, this[j]);
                give = Math.Max(give, Math.Abs(push - _push[j]) / _wall);
                _push[j] = push;
            }

            if (give <= 1e-6 * thickness)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>∫σ_h·(y − y_n) dA and ∫σ_h·z dA.</summary>
    public (double Bending, double HoldDown) Moments()
    {
        (double bending, double holdDown) = _rest.Moments(Curvature, NeutralAxis);
        int i = 0;
        foreach (Strip strip in _strips)
        {
            for (int element = 0; element < strip.Nodes - 1; element++)
            {
                for (int point = 0; point < Points; point++, i++)
                {
                    double s = (element + GaussPlaces[point]) * strip.ElementLength;
                    ref readonly WallSums sums = ref Sums[i];
                    bending += Places[i].Weight * (sums.N * Places[i].P / Curvature + sums.NMoment * strip.Cos);
                    holdDown += Places[i].Weight * (sums.N * (strip.Start.Z + s * strip.Cos) - sums.NMoment * strip.Sin);
                }
            }
        }

        return (bending, holdDown);
    }

    protected override void Put(ReadOnlySpan<double> displacements)
    {
        double axis = displacements[_axis];
        double curvature = 1 / (_radius + axis);
        Span<double> value = stackalloc double[4];
        int i = 0;
        foreach (Strip strip in _strips)
        {
            double length = strip.ElementLength;
            for (int element = 0; element < strip.Nodes - 1; element++)
            {
                ReadOnlySpan<int> unknowns = strip.OfElement(element);
                for (int point = 0; point < Points; point++, i++)
                {
                    Deflections(GaussPlaces[point], length, value);
                    double v = 0;
                    double k = 0;
                    for (int j = 0; j < 4; j++)
                    {
                        PSlopes[5 * i + j] = curvature * strip.Cos * value[j];
                        double x = unknowns[j] < 0 ? 0 : displacements[unknowns[j]];
                        v += value[j] * x;
                        k += KSlopes[5 * i + j] * x;
                    }

                    PSlopes[5 * i + 4] = -curvature;
                    double s = (element + GaussPlaces[point]) * length;
                    Places[i].P = curvature * (strip.Start.Y + s * strip.Sin + v * strip.Cos - axis);
                    Places[i].Q = curvature * strip.Cos;
                    Places[i].K = k;
                }
            }
        }

        Array.Clear(OtherGradient, 0, OtherGradient.Length);
        (double force, double stiffness) = _rest.Axial(curvature, axis);
        OtherGradient[_axis] = -curvature * force;
        _stiffness = curvature * curvature * stiffness;
        for (int j = 0; j < _push.Length; j++)
        {
            OtherGradient[j] = _sides[j] * Push(j, displacements[j]);
        }
    }

    protected override void AddOther(SymmetricSystem system)
    {
        system[_axis, _axis] += _stiffness;
        for (int j = 0; j < _push.Length; j++)
        {
            if (OtherGradient[j] != 0)
            {
                system[j, j] += _wall;
            }
        }
    }

    /// <summary>The wall's push against a deflection.</summary>
    private double Push(int unknown, double deflection) =>
        _sides[unknown] == 0 ? 0 : Math.Max(0, _push[unknown] + _wall * (_sides[unknown] * deflection - _clearance));

    /// <summary>Weights of v, v′ at the start and v, v′ at the end of an element (Hermite's cubics) in the deflection.</summary>
    private static void Deflections(double x, double length, Span<double> weights)
    {
        weights[0] = 1 + x * x * (2 * x - 3);
        weights[1] = length * x * (1 - x) * (1 - x);
        weights[2] = x * x * (3 - 2 * x);
        weights[3] = length * x * x * (x - 1);
    }

    /// <summary>The same in −v″.</summary>
    private static void Curvatures(double x, double length, Span<double> weights)
    {
        weights[0] = (6 - 12 * x) / (length * length);
        weights[1] = (4 - 6 * x) / length;
        weights[2] = -weights[0];
        weights[3] = (2 - 6 * x) / length;
    }
}
