namespace BendMath.Benchmarks;

/// <summary>
/// The textbook way for power-law metal, held flat: 1,000 strips across the depth, the neutral axis by bisection, the loaded radius by
/// bisection around it.
/// </summary>
internal sealed class StripPowerBar
{
    private const int Strips = 1000;

    private readonly double[] _y = new double[Strips];
    private readonly double[] _dA = new double[Strips];
    private readonly double _h;
    private readonly double _centroid;
    private readonly double _area;
    private readonly double _second;
    private readonly double _modulus;
    private readonly double _strength;
    private readonly double _exponent;
    private readonly double _yieldStrain;

    public StripPowerBar(double height, Func<double, double> widthAt, double modulus, double strength, double exponent)
    {
        _h = height;
        _modulus = modulus;
        _strength = strength;
        _exponent = exponent;
        _yieldStrain = Math.Pow(strength / modulus, 1 / (1 - exponent));
        for (int i = 0; i < Strips; i++)
        {
            _y[i] = (i + 0.5) * height / Strips;
            _dA[i] = widthAt(_y[i]) * height / Strips;
        }

        _area = _dA.Sum();
        _centroid = _y.Zip(_dA, (y, a) => y * a).Sum() / _area;
        _second = _y.Zip(_dA, (y, a) => (y - _centroid) * (y - _centroid) * a).Sum();
    }

    public double LoadedInsideFor(double finished)
    {
        double low = 1e-3, high = finished;
        while (high - low > 1e-12 * high)
        {
            double middle = (low + high) / 2;
            if (FinishedInside(middle) < finished)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    private double FinishedInside(double radius)
    {
        double low = 0, high = _h;
        while (high - low > 1e-14 * _h)
        {
            double middle = (low + high) / 2;
            double force = 0;
            for (int i = 0; i < Strips; i++)
            {
                force += Stress((_y[i] - middle) / (radius + middle)) * _dA[i];
            }

            if (force > 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        double axis = (low + high) / 2;
        double curvature = 1 / (radius + axis);
        double moment = 0;
        for (int i = 0; i < Strips; i++)
        {
            moment += Stress((_y[i] - axis) * curvature) * _dA[i] * (_y[i] - _centroid);
        }

        double left = curvature - moment / (_modulus * _second);
        double strain = (_centroid - axis) * curvature - left * _centroid;
        return left > 0 ? (1 + strain) / left : double.PositiveInfinity;
    }

    private double Stress(double strain)
    {
        double size = Math.Abs(strain);
        return size <= _yieldStrain ? _modulus * strain : Math.Sign(strain) * _strength * Math.Pow(size, _exponent);
    }
}
