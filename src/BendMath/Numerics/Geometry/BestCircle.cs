using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BendMath.Numerics.Geometry;

/// <summary>
/// The circle with the least sum of squared distances to points, and how certain it is. Points are moved to their middle and scaled to size
/// one, so no tolerance carries a unit.
/// </summary>
internal sealed class BestCircle
{
    /// <summary>Radius over the extent of the points beyond which they lie on a straight line as far as anyone can tell.</summary>
    private const double Straight = 1e4;

    private const int Rounds = 500;

    private readonly double[] _x;

    private readonly double[] _y;

    private readonly double _size;

    private readonly double _middleX;

    private readonly double _middleY;

    private double _a;

    private double _b;

    private double _r;

    private BestCircle(double[] x, double[] y)
    {
        _middleX = x.Average();
        _middleY = y.Average();
        _size = Math.Sqrt(Enumerable.Range(0, x.Length).Average(i => Square(x[i] - _middleX) + Square(y[i] - _middleY)));
        _x = [.. x.Select(value => (value - _middleX) / _size)];
        _y = [.. y.Select(value => (value - _middleY) / _size)];
    }

    public double X => _middleX + _size * _a;

    public double Y => _middleY + _size * _b;

    public double Radius => _size * _r;

    /// <summary>Distances of the points from the circle, outward positive.</summary>
    public double[] Deviations => [.. Enumerable.Range(0, _x.Length).Select(i => _size * Deviation(i, _a, _b, _r))];

    /// <summary>Standard deviation of a distance, or null for three points.</summary>
    public double? Scatter => _x.Length > 3 ? _size * Math.Sqrt(Sum(_a, _b, _r) / (_x.Length - 3)) : null;

    /// <summary>Standard errors of center and radius, or null for three points.</summary>
    public (double X, double Y, double Radius)? Errors
    {
        get
        {
            if (Scatter is not { } scatter)
            {
                return null;
            }

            Matrix<double> inverse = Jacobian(0).QR(QRMethod.Thin).R.Inverse();
            return (scatter * inverse.Row(0).L2Norm(), scatter * inverse.Row(1).L2Norm(), scatter * inverse.Row(2).L2Norm());
        }
    }

    /// <summary>The circle, or null where the points coincide or lie on a straight line.</summary>
    public static BestCircle? Through(double[] x, double[] y)
    {
        BestCircle circle = new(x, y);
        return circle._size > 0 && circle.Start() && circle.Refine() ? circle : null;
    }

    /// <summary>
    /// Taubin's algebraic fit, by the smallest singular vector: nearly without the bias to small radii that plain algebraic fits have on
    /// short arcs.
    /// </summary>
    private bool Start()
    {
        // The mean of x² + y² is one, which is the scale of Taubin's condition.
        Matrix<double> points =
            Matrix<double>.Build.Dense(_x.Length, 3, (i, k) => k == 0 ? (_x[i] * _x[i] + _y[i] * _y[i] - 1) / 2 : k == 1 ? _x[i] : _y[i]);
        Matrix<double> vectors = points.QR(QRMethod.Thin).R.Svd().VT;
        double curved = vectors[2, 0] / 2;
        double u = vectors[2, 1];
        double v = vectors[2, 2];
        if (Math.Abs(curved) * Straight < Math.Sqrt(u * u + v * v) / 2)
        {
            return false;
        }

        _a = -u / (2 * curved);
        _b = -v / (2 * curved);
        _r = Math.Sqrt(_a * _a + _b * _b + 1);
        return true;
    }

    /// <summary>
    /// Levenberg and Marquardt on the distances themselves. Steps come from the orthogonal factors of J, whose condition is the root of
    /// that of JᵀJ: short arcs need it.
    /// </summary>
    private bool Refine()
    {
        double damping = 1e-4;
        double sum = Sum(_a, _b, _r);
        for (int round = 0; round < Rounds; round++)
        {
            Vector<double> against = Vector<double>.Build.Dense(_x.Length + 3, i => i < _x.Length ? -Deviation(i, _a, _b, _r) : 0);
            Vector<double> step = Jacobian(damping).QR(QRMethod.Thin).Solve(against);
            (double a, double b, double r) = (_a + step[0], _b + step[1], _r + step[2]);
            double next = Sum(a, b, r);
            double moved = step.L2Norm() / _r;
            if (next <= sum)
            {
                (_a, _b, _r, sum) = (a, b, r, next);
                damping /= 10;
            }
            else
            {
                damping = Math.Max(damping, 1e-12) * 10;
            }

            if (!(_r < Straight) || double.IsNaN(moved))
            {
                return false;
            }

            if (moved < 1e-13)
            {
                break;
            }
        }

        Matrix<double> factor = Jacobian(0).QR(QRMethod.Thin).R;
        return _r > 0 && Enumerable.Range(0, 3).Min(k => Math.Abs(factor[k, k])) > 1e-12;
    }

    /// <summary>Slopes of the distances √((x − a)² + (y − b)²) − r, and below them the damping of each column by its size.</summary>
    private Matrix<double> Jacobian(double damping)
    {
        Matrix<double> slopes = Matrix<double>.Build.Dense(_x.Length + 3, 3);
        Span<double> squares = stackalloc double[3];
        for (int i = 0; i < _x.Length; i++)
        {
            double distance = Distance(i, _a, _b);
            slopes[i, 0] = distance > 0 ? (_a - _x[i]) / distance : 0;
            slopes[i, 1] = distance > 0 ? (_b - _y[i]) / distance : 0;
            slopes[i, 2] = -1;
            for (int k = 0; k < 3; k++)
            {
                squares[k] += Square(slopes[i, k]);
            }
        }

        for (int k = 0; k < 3; k++)
        {
            slopes[_x.Length + k, k] = Math.Sqrt(damping * squares[k]);
        }

        return slopes;
    }

    private double Sum(double a, double b, double r)
    {
        double sum = 0;
        for (int i = 0; i < _x.Length; i++)
        {
            sum += Square(Deviation(i, a, b, r));
        }

        return sum;
    }

    private double Deviation(int i, double a, double b, double r) => Distance(i, a, b) - r;

    private double Distance(int i, double a, double b) => Math.Sqrt(Square(_x[i] - a) + Square(_y[i] - b));

    private static double Square(double value) => value * value;
}
