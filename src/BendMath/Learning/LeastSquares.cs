using MathNet.Numerics.Distributions;

namespace BendMath.Learning;

/// <summary>
/// Least squares of y on a constant, or on a constant and x, about the mean of x: y = b₀ + b₁(x − x̄). Leverage h = 1/n + (x − x̄)²/S_xx,
/// deleted residual e/(1 − h), its standard error s₍ᵢ₎/√(1 − h) with s₍ᵢ₎² = (SSE − e²/(1 − h))/(n − p − 1). What would divide by zero is
/// null.
/// </summary>
internal sealed class LeastSquares
{
    private readonly double[] _x;

    private readonly double[] _residuals;

    private readonly double _sxx;

    public LeastSquares(IReadOnlyList<double> x, IReadOnlyList<double> y, bool sloped)
    {
        _x = [.. x];
        Count = _x.Length;
        MeanX = _x.Average();
        Center = y.Average();
        _sxx = sloped ? _x.Sum(one => (one - MeanX) * (one - MeanX)) : 0;
        Slope = sloped ? _x.Zip(y, (one, value) => (one - MeanX) * (value - Center)).Sum() / _sxx : 0;
        Parameters = sloped ? 2 : 1;
        _residuals = [.. _x.Zip(y, (one, value) => value - At(one))];
        SumOfSquares = _residuals.Sum(e => e * e);
        Deleted = [.. Enumerable.Range(0, Count).Select(DeletedResidual)];
    }

    public int Count { get; }

    /// <summary>1 for a constant, 2 for a line.</summary>
    public int Parameters { get; }

    public double MeanX { get; }

    /// <summary>Value at the mean of x.</summary>
    public double Center { get; }

    public double Slope { get; }

    public double SumOfSquares { get; }

    public int Freedom => Count - Parameters;

    /// <summary>Standard deviation of the scatter, or null where nothing is left to tell it.</summary>
    public double? Deviation => Freedom > 0 ? Math.Sqrt(SumOfSquares / Freedom) : null;

    /// <summary>Deleted residuals: value less what the fit without it predicts; null where the fit cannot be made without it.</summary>
    public IReadOnlyList<double?> Deleted { get; }

    /// <summary>Root mean square of the deleted residuals, or null where one is missing.</summary>
    public double? LeaveOneOutError =>
        Deleted.All(one => one is not null) ? Math.Sqrt(Deleted.Sum(one => one!.Value * one.Value) / Count) : null;

    public double At(double x) => Center + Slope * (x - MeanX);

    public double Residual(int i) => _residuals[i];

    public double Leverage(int i) => LeverageAt(_x[i]);

    public double LeverageAt(double x) => 1.0 / Count + (_sxx > 0 ? (x - MeanX) * (x - MeanX) / _sxx : 0);

    public double? CookDistance(int i) => Deleted[i] is { } deleted && SumOfSquares > 0 && Freedom > 0
        ? deleted * deleted * Leverage(i) * Freedom / (Parameters * SumOfSquares)
        : null;

    /// <summary>
    /// Whether the other values agree to the last digit and only this one is off: then they show no scatter to hold it against.
    /// </summary>
    public bool IsAlone(int i) =>
        Freedom > 1 && Deleted[i] is { } deleted && SumOfSquares > 0 && SumOfSquares - deleted * _residuals[i] <= 1e-12 * SumOfSquares;

    /// <summary>Deleted residual over its standard error; Student t with one degree of freedom less than the fit.</summary>
    public double? Studentized(int i)
    {
        if (Freedom < 2 || Deleted[i] is not { } deleted)
        {
            return null;
        }

        double others = (SumOfSquares - deleted * _residuals[i]) / (Freedom - 1);
        return others > 1e-12 * SumOfSquares ? _residuals[i] / Math.Sqrt(others * (1 - Leverage(i))) : null;
    }

    /// <summary>How often, by chance, the oddest of all would be at least as far off as this one (Bonferroni).</summary>
    public double? OddChance(int i) => Studentized(i) is { } t
        ? Math.Min(1, Count * 2 * StudentT.CDF(0, 1, Freedom - 1, -Math.Abs(t)))
        : null;

    /// <summary>Standard error of a new value at x, or null.</summary>
    public double? PredictionError(double x) => Deviation is { } s ? s * Math.Sqrt(1 + LeverageAt(x)) : null;

    /// <summary>The standard error at x after one more value was had at another place, the scatter staying what it is.</summary>
    public double? PredictionErrorWith(double another, double x)
    {
        if (Deviation is not { } s)
        {
            return null;
        }

        double mean = (Count * MeanX + another) / (Count + 1);
        double spread = _sxx + (another - MeanX) * (another - MeanX) * Count / (Count + 1);
        double leverage = 1.0 / (Count + 1) + (Parameters == 2 ? (x - mean) * (x - mean) / spread : 0);
        return s * Math.Sqrt(1 + leverage);
    }

    /// <summary>The t that holds a share of Student's distribution between −t and t.</summary>
    public static double Quantile(int freedom, double share) => StudentT.InvCDF(0, 1, freedom, (1 + share) / 2);

    private double? DeletedResidual(int i) => 1 - Leverage(i) > 1e-9 ? _residuals[i] / (1 - Leverage(i)) : null;
}
