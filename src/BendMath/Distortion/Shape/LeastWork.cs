namespace BendMath.Distortion.Shape;

/// <summary>
/// The shape of least stored work ∫W(e_h, e_x) dA of thin walls at an imposed curvature. Unknown are a few displacements and, at every
/// place, the strain a across the wall, which leaves no force across it; the latter are eliminated place by place. Newton's method, a step
/// shortened where the work would rise again: where W is convex in the unknowns, it finds the only least value.
/// </summary>
internal abstract class LeastWork
{
    private const int Enough = 80;

    private const double Settled = 1e-6;

    /// <summary>Across over along for a wall beyond yield, a little less than ½.</summary>
    private const double FirstRatio = -0.45;

    private readonly TwoWayLaw _law;

    private readonly int _width;

    private readonly double[] _unknowns;

    private readonly double[] _across;

    private readonly double[] _strains;

    private readonly WallSums[] _sums;

    private readonly double[] _direction;

    private readonly double[] _acrossDirection;

    private readonly double[] _acrossTrial;

    private readonly double[] _trial;

    private readonly SymmetricSystem _system;

    private bool _started;

    /// <param name="law">The law of the walls.</param>
    /// <param name="unknowns">Number of displacements.</param>
    /// <param name="places">Number of places.</param>
    /// <param name="width">Of how many displacements the strains of one place depend.</param>
    protected LeastWork(in TwoWayLaw law, int unknowns, int places, int width)
    {
        _law = law;
        _width = width;
        _unknowns = new double[unknowns];
        _direction = new double[unknowns];
        _trial = new double[unknowns];
        _system = new(unknowns);
        _across = new double[places];
        _acrossDirection = new double[places];
        _acrossTrial = new double[places];
        _sums = new WallSums[places];
        _strains = new double[places * WallRule.Points];
        Places = new WallPlace[places];
        Index = new int[places * width];
        PSlopes = new double[places * width];
        QSlopes = new double[places * width];
        KSlopes = new double[places * width];
        OtherGradient = new double[unknowns];
        Sizes = new double[unknowns];
    }

    /// <summary>Displacements of the last solution.</summary>
    public ReadOnlySpan<double> Unknowns => _unknowns;

    public ReadOnlySpan<WallSums> Sums => _sums;

    protected ref readonly TwoWayLaw Law => ref _law;

    protected WallPlace[] Places { get; }

    /// <summary>Of which displacements the strains of a place depend; −1 where there are fewer.</summary>
    protected int[] Index { get; }

    protected double[] PSlopes { get; }

    protected double[] QSlopes { get; }

    protected double[] KSlopes { get; }

    /// <summary>Slope of all work that is not stored in the places.</summary>
    protected double[] OtherGradient { get; }

    /// <summary>What each displacement is measured by: the search ends when none changes by more than a millionth of it.</summary>
    protected double[] Sizes { get; }

    /// <summary>The largest step of a displacement over its size.</summary>
    protected virtual double LargestStep => double.PositiveInfinity;

    protected double this[int unknown] => unknown < 0 ? 0 : _unknowns[unknown];

    protected void Start(int unknown, double value) => _unknowns[unknown] = value;

    /// <summary>Puts strains, their slopes and <see cref="OtherGradient"/> for the displacements.</summary>
    protected abstract void Put(ReadOnlySpan<double> displacements);

    /// <summary>Adds the curvature of all work that the slopes of the places do not give, after <see cref="Put"/>.</summary>
    protected abstract void AddOther(SymmetricSystem system);

    /// <summary>Whether a step leads to displacements that no answer is wanted for.</summary>
    protected virtual bool IsBeyond(ReadOnlySpan<double> displacements) => false;

    protected double Thinning(int place) =>
        Places[place].Rule.Thinning(_law, Places[place].P, Places[place].Q, _across[place], Places[place].K, StrainsOf(place));

    /// <summary>
    /// Finds the equilibrium from the last displacements; false where it lies beyond what an answer is wanted for, or nowhere.
    /// </summary>
    protected bool Settle(CancellationToken cancellation)
    {
        Sweep(_unknowns, _across, first: !_started);
        _started = true;
        for (int i = 0; i < Enough; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            bool definite = Assemble();
            double largest = 0;
            for (int j = 0; j < _direction.Length; j++)
            {
                largest = Math.Max(largest, Math.Abs(_direction[j]) / Sizes[j]);
            }

            AcrossDirection();
            Search(Math.Min(1, LargestStep / largest));
            _trial.CopyTo(_unknowns, 0);
            _acrossTrial.CopyTo(_across, 0);
            if (IsBeyond(_unknowns))
            {
                return false;
            }

            if (definite && largest <= Settled)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The longest of some shortened steps after which the work does not rise steeper than it fell before.</summary>
    private void Search(double length)
    {
        double before = -Slope();
        for (int k = 0; ; k++)
        {
            for (int j = 0; j < _trial.Length; j++)
            {
                _trial[j] = _unknowns[j] + length * _direction[j];
            }

            for (int j = 0; j < _across.Length; j++)
            {
                _acrossTrial[j] = _across[j] + length * _acrossDirection[j];
            }

            Sweep(_trial, _acrossTrial, first: false);
            double after = Slope();
            if (after <= 0.9 * before || k == 12)
            {
                return;
            }

            length *= Math.Min(0.9, Math.Max(0.1, before / (before + after)));
        }
    }

    private Span<double> StrainsOf(int place) => _strains.AsSpan(place * WallRule.Points, WallRule.Points);

    private void Sweep(double[] displacements, double[] across, bool first)
    {
        Put(displacements);
        for (int i = 0; i < Places.Length; i++)
        {
            ref WallPlace place = ref Places[i];
            across[i] = first ? FirstRatio * place.P : across[i];
            place.Rule.Integrate(_law, place.P, place.Q, across[i], place.K, StrainsOf(i), out _sums[i]);
        }
    }

    /// <summary>Solves for the direction; whether the work is convex here.</summary>
    private bool Assemble()
    {
        _system.Clear();
        for (int j = 0; j < OtherGradient.Length; j++)
        {
            _system.Right[j] = -OtherGradient[j];
        }

        for (int i = 0; i < Places.Length; i++)
        {
            double weight = Places[i].Weight;
            if (weight != 0)
            {
                AddPlace(i, weight, _sums[i]);
            }
        }

        AddOther(_system);
        bool definite = _system.Solve();
        _system.Right.CopyTo(_direction, 0);
        return definite;
    }

    private void AddPlace(int place, double weight, in WallSums s)
    {
        double hx0 = s.HX0 / s.XX0;
        double hx1 = s.HX1 / s.XX0;
        double xx1 = s.XX1 / s.XX0;
        double n = weight * (s.N - hx0 * s.X);
        double f = weight * (s.NMoment - hx1 * s.X);
        double m = weight * (s.XMoment - xx1 * s.X);
        double pp = weight * (s.HH0 - hx0 * s.HX0);
        double pq = weight * (s.HH1 - hx0 * s.HX1);
        double pk = weight * (s.HX1 - hx0 * s.XX1);
        double qq = weight * (s.HH2 - hx1 * s.HX1);
        double qk = weight * (s.HX2 - hx1 * s.XX1);
        double kk = weight * (s.XX2 - xx1 * s.XX1);
        ReadOnlySpan<int> index = Index.AsSpan(place * _width, _width);
        ReadOnlySpan<double> p = PSlopes.AsSpan(place * _width, _width);
        ReadOnlySpan<double> q = QSlopes.AsSpan(place * _width, _width);
        ReadOnlySpan<double> k = KSlopes.AsSpan(place * _width, _width);
        for (int i = 0; i < index.Length; i++)
        {
            int row = index[i];
            if (row < 0)
            {
                continue;
            }

            _system.Right[row] -= n * p[i] + f * q[i] + m * k[i];
            double byP = pp * p[i] + pq * q[i] + pk * k[i];
            double byQ = pq * p[i] + qq * q[i] + qk * k[i];
            double byK = pk * p[i] + qk * q[i] + kk * k[i];
            for (int j = 0; j < index.Length; j++)
            {
                if (index[j] >= 0 && index[j] <= row)
                {
                    _system[row, index[j]] += byP * p[j] + byQ * q[j] + byK * k[j];
                }
            }
        }
    }

    private void AcrossDirection()
    {
        for (int i = 0; i < Places.Length; i++)
        {
            (double p, double q, double k) = Turned(i);
            ref WallSums s = ref _sums[i];
            _acrossDirection[i] = -(s.X + s.HX0 * p + s.HX1 * q + s.XX1 * k) / s.XX0;
        }
    }

    /// <summary>Change of all work along the direction, at the displacements last put.</summary>
    private double Slope()
    {
        double sum = 0;
        for (int j = 0; j < OtherGradient.Length; j++)
        {
            sum += OtherGradient[j] * _direction[j];
        }

        for (int i = 0; i < Places.Length; i++)
        {
            (double p, double q, double k) = Turned(i);
            ref WallSums s = ref _sums[i];
            sum += Places[i].Weight * (s.N * p + s.NMoment * q + s.XMoment * k + s.X * _acrossDirection[i]);
        }

        return sum;
    }

    private (double P, double Q, double K) Turned(int place)
    {
        double p = 0;
        double q = 0;
        double k = 0;
        for (int j = place * _width; j < (place + 1) * _width; j++)
        {
            if (Index[j] >= 0)
            {
                double step = _direction[Index[j]];
                p += PSlopes[j] * step;
                q += QSlopes[j] * step;
                k += KSlopes[j] * step;
            }
        }

        return (p, q, k);
    }
}
