using BendMath.Numerics;

namespace BendMath.Distortion.Shape;

/// <summary>
/// A round tube bent to a curvature, its wall free to change its curvature without changing its length: ψ = θ + Σ b_n·sin 2nθ is the
/// direction of the wall, θ = s/r from the neutral plane to the crown. Free, both halves deform alike and the neutral axis stays in the
/// middle. In a groove, the inner half keeps its shape and the neutral axis moves.
/// </summary>
internal sealed class TubeRing : LeastWork
{
    private const int Modes = QuarterRing.Modes;

    private const int Stations = QuarterRing.Places;

    private const int Width = Modes + 1;

    private const int MostRounds = 30;

    private readonly double _diameter;

    private readonly double _thickness;

    private readonly double _middle;

    private readonly double _insideRadius;

    private readonly double? _play;

    private readonly double[] _direction = new double[Stations];

    private readonly double[] _spread = new double[Modes];

    private double _curvature;

    private double _crown;

    private double _halfWidth;

    private double _push;

    private double _wall;

    private double _pushed;

    private double _mostOvality;

    /// <param name="diameter">Outside diameter D.</param>
    /// <param name="thickness">Wall thickness t.</param>
    /// <param name="law">The law.</param>
    /// <param name="insideRadius">Radius of the inside face of the round tube.</param>
    /// <param name="play">How far the lips of a groove stand off the tube; null for a free tube.</param>
    public TubeRing(double diameter, double thickness, in TwoWayLaw law, double insideRadius, double? play)
        : base(law, play is null ? Modes : Width, 2 * (Stations + 1), Width)
    {
        _diameter = diameter;
        _thickness = thickness;
        _middle = (diameter - thickness) / 2;
        _insideRadius = insideRadius;
        _play = play;
        _curvature = 1 / (insideRadius + diameter / 2);
        WallRule rule = new(thickness, _middle);
        Sizes.AsSpan().Fill(1);
        for (int half = 0; half < 2; half++)
        {
            for (int i = 0; i <= Stations; i++)
            {
                int place = half * (Stations + 1) + i;
                Places[place].Rule = rule;
                Places[place].Weight = i < Stations ? 2 * _middle * QuarterRing.Weights[i] : 0;
                for (int n = 0; n < Modes; n++)
                {
                    bool still = half == 1 && play is not null;
                    double atCrown = (n & 1) == 0 ? -2 * (n + 1) : 2 * (n + 1);
                    double slope = i < Stations ? QuarterRing.Cosines[i * Modes + n] : atCrown;
                    Index[place * Width + n] = still ? -1 : n;
                    KSlopes[place * Width + n] = still ? 0 : slope / _middle;
                }

                Index[place * Width + Modes] = play is null ? -1 : Modes;
            }
        }
    }

    public double Curvature => _curvature;

    /// <summary>From the inside face of the round tube.</summary>
    public double NeutralAxis => 1 / _curvature - _insideRadius;

    /// <summary>Height of the middle of the outside crown above the neutral plane of the round tube.</summary>
    public double CrownHeight => _middle * _crown;

    /// <summary>Half width of the middle of the wall at that plane.</summary>
    public double HalfWidth => _middle * _halfWidth;

    /// <summary>How far the outside crown comes toward the middle of the tube.</summary>
    public double CrownInward => _middle * (1 - _crown);

    /// <summary>(D_max − D_min)/D of a free tube; in a groove, how far the crown comes in over D.</summary>
    public double Ovality => _middle * (_play is null ? 2 * (_halfWidth - _crown) : 1 - _crown) / _diameter;

    public double ThicknessStrainOutside => Thinning(Stations);

    public double ThicknessStrainInside => Thinning(2 * Stations + 1);

    protected override double LargestStep => 0.1;

    /// <summary>Finds the shape; false where the tube kinks.</summary>
    public bool Settle(double mostOvality, CancellationToken cancellation)
    {
        _mostOvality = mostOvality;
        if (_play is null)
        {
            return Settle(cancellation) && Ovality <= mostOvality;
        }

        _wall = 10 * Law.Modulus * _thickness * _thickness * _thickness / _middle;
        for (int round = 0; round < MostRounds; round++)
        {
            if (!Settle(cancellation))
            {
                return false;
            }

            double push = Math.Max(0, _push + _wall * Beyond());
            double give = Math.Abs(push - _push) / _wall;
            _push = push;
            if (give <= 1e-7)
            {
                return Ovality <= mostOvality;
            }
        }

        return false;
    }

    /// <summary>∫σ_h·(y − y_n) dA.</summary>
    public double Moment()
    {
        double sum = 0;
        for (int i = 0; i < Places.Length; i++)
        {
            sum += Places[i].Weight * (Sums[i].N * Places[i].P + Sums[i].NMoment * Places[i].Q) / _curvature;
        }

        return sum;
    }

    protected override bool IsBeyond(ReadOnlySpan<double> displacements) => Ovality > 2 * _mostOvality;

    protected override void Put(ReadOnlySpan<double> displacements)
    {
        double axis = 0;
        if (_play is not null)
        {
            axis = _middle * displacements[Modes];
            _curvature = 1 / (_insideRadius + _diameter / 2 + axis);
        }

        Array.Clear(_spread, 0, Modes);
        double crown = 0;
        double width = 0;
        for (int i = 0; i < Stations; i++)
        {
            double turn = 0;
            for (int n = 0; n < Modes; n++)
            {
                turn += displacements[n] * QuarterRing.Sines[i * Modes + n];
            }

            _direction[i] = QuarterRing.Angles[i] + turn;
            crown += QuarterRing.Weights[i] * Math.Cos(_direction[i]);
            width += QuarterRing.Weights[i] * Math.Sin(_direction[i]);
        }

        _crown = crown;
        _halfWidth = width;
        for (int i = 0; i < Stations; i++)
        {
            double cosine = Math.Cos(_direction[i]);
            for (int n = 0; n < Modes; n++)
            {
                _spread[n] += QuarterRing.Weights[i] * cosine * QuarterRing.Sines[i * Modes + n];
            }
        }

        for (int i = 0; i <= Stations; i++)
        {
            PutPlace(i, displacements, axis);
        }

        Array.Clear(OtherGradient, 0, OtherGradient.Length);
        _pushed = _play is null ? 0 : Math.Max(0, _push + _wall * Beyond());
        for (int n = 0; n < Modes; n++)
        {
            OtherGradient[n] = _pushed * _spread[n];
        }
    }

    private double Beyond() => _halfWidth - 1 - _play.GetValueOrDefault() / _middle;

    private void PutPlace(int i, ReadOnlySpan<double> displacements, double axis)
    {
        double k = 0;
        double height = 0;
        int outer = i * Width;
        int inner = (Stations + 1 + i) * Width;
        bool free = _play is null;
        for (int n = 0; n < Modes; n++)
        {
            k += displacements[n] * KSlopes[outer + n];
        }

        Span<double> slopes = stackalloc double[Modes];
        for (int j = 0; j < Stations; j++)
        {
            double weight = i < Stations ? QuarterRing.Running[i * Stations + j] : QuarterRing.Weights[j];
            height += weight * Math.Cos(_direction[j]);
            double sine = weight * Math.Sin(_direction[j]);
            for (int n = 0; n < Modes; n++)
            {
                slopes[n] -= sine * QuarterRing.Sines[j * Modes + n];
            }
        }

        double angle = i < Stations ? QuarterRing.Angles[i] : Math.PI / 2;
        double direction = i < Stations ? _direction[i] : angle;
        double q = _curvature * Math.Sin(direction);
        double cosine = i < Stations ? _curvature * Math.Cos(direction) : 0;
        double scale = _curvature * _middle;
        for (int n = 0; n < Modes; n++)
        {
            double p = scale * slopes[n];
            double turn = i < Stations ? cosine * QuarterRing.Sines[i * Modes + n] : 0;
            PSlopes[outer + n] = p;
            QSlopes[outer + n] = turn;
            PSlopes[inner + n] = free ? -p : 0;
            QSlopes[inner + n] = free ? -turn : 0;
        }

        PSlopes[outer + Modes] = -scale;
        PSlopes[inner + Modes] = -scale;
        ref WallPlace atOutside = ref Places[i];
        ref WallPlace atInside = ref Places[Stations + 1 + i];
        atOutside.P = _curvature * (_middle * height - axis);
        atOutside.Q = q;
        atOutside.K = k;
        atInside.P = free ? -atOutside.P : _curvature * (-_middle * Math.Sin(angle) - axis);
        atInside.Q = free ? -q : -_curvature * Math.Sin(angle);
        atInside.K = free ? k : 0;
    }

    /// <summary>
    /// y = r·∫cos ψ and sin ψ curve with the modes: ∂²y/∂b_n∂b_m = −r·∫cos ψ·sin 2nθ·sin 2mθ, ∂²(sin ψ) = −sin ψ·sin 2nθ·sin 2mθ.
    /// </summary>
    protected override void AddOther(SymmetricSystem system)
    {
        Span<double> along = stackalloc double[Stations];
        Span<double> turned = stackalloc double[Stations];
        for (int i = 0; i < Stations; i++)
        {
            double n = Places[i].Weight * Sums[i].N;
            turned[i] = Places[i].Weight * Sums[i].NMoment;
            if (_play is null)
            {
                n -= Places[Stations + 1 + i].Weight * Sums[Stations + 1 + i].N;
                turned[i] -= Places[Stations + 1 + i].Weight * Sums[Stations + 1 + i].NMoment;
            }

            for (int j = 0; j < Stations; j++)
            {
                along[j] += n * QuarterRing.Running[i * Stations + j];
            }
        }

        for (int j = 0; j < Stations; j++)
        {
            double sine = Math.Sin(_direction[j]);
            double cosine = Math.Cos(_direction[j]);
            double bend = -_curvature * (_middle * cosine * along[j] + sine * turned[j]) - _pushed * QuarterRing.Weights[j] * sine;
            for (int n = 0; n < Modes; n++)
            {
                for (int m = 0; m <= n; m++)
                {
                    system[n, m] += bend * QuarterRing.Sines[j * Modes + n] * QuarterRing.Sines[j * Modes + m];
                }
            }
        }

        if (_pushed > 0)
        {
            for (int n = 0; n < Modes; n++)
            {
                for (int m = 0; m <= n; m++)
                {
                    system[n, m] += _wall * _spread[n] * _spread[m];
                }
            }
        }
    }
}
