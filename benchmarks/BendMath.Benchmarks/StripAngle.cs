namespace BendMath.Benchmarks;

/// <summary>The textbook way: strips across the depth, the neutral axis by bisection, the loaded radius by bisection around it.</summary>
internal sealed class StripAngle
{
    private readonly double[] _y;
    private readonly double[] _b;
    private readonly double[] _dA;
    private readonly double _h;
    private readonly double _modulus;
    private readonly double _yield;
    private readonly double _tangent;
    private readonly double _centroid;
    private readonly double _area;
    private readonly double _ib;
    private readonly double _ir;
    private readonly double _ibr;

    public StripAngle(double leg, double thickness, double modulus, double yield, double tangent, int strips)
    {
        _h = leg;
        _modulus = modulus;
        _yield = yield;
        _tangent = tangent;
        double height = leg / strips;
        _y = [.. Enumerable.Range(0, strips).Select(i => (i + 0.5) * height)];
        double[] width = [.. _y.Select(y => y < thickness ? leg : thickness)];
        _dA = [.. width.Select(w => w * height)];
        _area = _dA.Sum();
        _centroid = _y.Zip(_dA, (y, a) => y * a).Sum() / _area;
        double z = width.Zip(_dA, (w, a) => w / 2 * a).Sum() / _area;
        _b = [.. width.Select(w => w / 2 - z)];
        for (int i = 0; i < strips; i++)
        {
            double d = _y[i] - _centroid;
            _ib += d * d * _dA[i];
            _ibr += d * _b[i] * _dA[i];
            _ir += (_b[i] * _b[i] + width[i] * width[i] / 12) * _dA[i];
        }
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

    public double FinishedInside(double radius)
    {
        double low = 0, high = _h;
        while (high - low > 1e-14 * _h)
        {
            double middle = (low + high) / 2;
            double force = 0;
            for (int i = 0; i < _y.Length; i++)
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
        double bending = 0, radial = 0;
        for (int i = 0; i < _y.Length; i++)
        {
            double force = Stress((_y[i] - axis) * curvature) * _dA[i];
            bending += force * (_y[i] - _centroid);
            radial += force * _b[i];
        }

        double determinant = _modulus * (_ib * _ir - _ibr * _ibr);
        double inPlane = curvature - (_ir * bending - _ibr * radial) / determinant;
        double outOfPlane = -(_ib * radial - _ibr * bending) / determinant;
        double strain = (_centroid - axis) * curvature - inPlane * _centroid;
        return (1 + strain) / Math.Sqrt(inPlane * inPlane + outOfPlane * outOfPlane);
    }

    private double Stress(double strain)
    {
        double size = Math.Abs(strain);
        double limit = _yield / _modulus;
        return size <= limit ? _modulus * strain : Math.Sign(strain) * (_yield + _tangent * (size - limit));
    }
}
