using BendMath.Learning;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;

namespace BendMath.Tests.Learning;

/// <summary>
/// Least squares against a textbook's worked example, MathNet's QR solution and refitting without each point. The example: boiling point of
/// water (°F) and 100·log₁₀ of the pressure of the air (in Hg), 17 places, rounded to two decimals as the book prints it, after J. D.
/// Forbes, as worked in S. Weisberg, Applied Linear Regression, 2nd ed.; data and results from memory.
/// </summary>
public sealed class LeastSquaresTests
{
    private static readonly double[] Boiling =
        [194.5, 194.3, 197.9, 198.4, 199.4, 199.9, 200.9, 201.1, 201.4, 201.3, 203.6, 204.6, 209.5, 208.6, 210.7, 211.9, 212.2];

    private static readonly double[] Pressure =
        [20.79, 20.79, 22.40, 22.67, 23.15, 23.35, 23.89, 23.99, 24.02, 24.01, 25.14, 26.57, 28.49, 27.76, 29.04, 29.88, 30.06];

    private static readonly double[] Logs = [.. Pressure.Select(p => Math.Round(100 * Math.Log10(p), 2))];

    /// <summary>Slope 0.895, standard error of regression 0.379.</summary>
    [Fact]
    public void The_textbook_line_is_found()
    {
        LeastSquares line = new(Boiling, Logs, sloped: true);
        Near.Absolute(0.895, line.Slope, 0.001, "slope");
        Near.Absolute(-42.1, line.At(0), 0.1, "intercept");
        Near.Absolute(0.379, line.Deviation!.Value, 0.0005, "standard deviation");
        Assert.Equal(15, line.Freedom);
    }

    /// <summary>
    /// The predicted value at 200 °F is 136.961 with a standard error of 0.393; the 99 % prediction interval is 135.80 to 138.12.
    /// </summary>
    [Fact]
    public void The_textbook_prediction_interval_is_found()
    {
        LeastSquares line = new(Boiling, Logs, sloped: true);
        double reach = LeastSquares.Quantile(line.Freedom, 0.99) * line.PredictionError(200)!.Value;
        Near.Absolute(136.961, line.At(200), 0.0015, "prediction");
        Near.Absolute(0.393, line.PredictionError(200)!.Value, 0.0005, "its standard error");
        Near.Absolute(135.80, line.At(200) - reach, 0.01, "lower end");
        Near.Absolute(138.12, line.At(200) + reach, 0.01, "upper end");
    }

    /// <summary>
    /// Case 12 is the outlier of the book: residual 1.36, outlier t of 12.4 on 14 degrees of freedom, which no chance explains.
    /// </summary>
    [Fact]
    public void The_outlier_of_the_textbook_is_found()
    {
        LeastSquares line = new(Boiling, Logs, sloped: true);
        Near.Absolute(1.36, line.Residual(11), 0.005, "residual");
        Near.Absolute(12.4, line.Studentized(11)!.Value, 0.06, "outlier t");
        Assert.True(line.OddChance(11) < 1e-6);
        Assert.All(Enumerable.Range(0, 17).Where(i => i != 11), i => Assert.True(line.OddChance(i) > 0.5));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_fit_is_that_of_a_QR_decomposition(bool sloped)
    {
        LeastSquares fit = new(Boiling, Logs, sloped);
        Matrix<double> design = Matrix<double>.Build.Dense(17, sloped ? 2 : 1, (i, j) => j == 0 ? 1 : Boiling[i]);
        Vector<double> solution = MultipleRegression.QR(design, Vector<double>.Build.Dense(Logs));
        Vector<double> residuals = Vector<double>.Build.Dense(Logs) - design * solution;
        Matrix<double> hat = design * (design.TransposeThisAndMultiply(design)).Inverse() * design.Transpose();
        Near.Relative(solution[0] + (sloped ? 200 * solution[1] : 0), fit.At(200), 1e-12);
        Near.Relative(residuals.DotProduct(residuals), fit.SumOfSquares, 1e-9);
        Assert.All(Enumerable.Range(0, 17), i => Near.Absolute(hat[i, i], fit.Leverage(i), 1e-10, $"leverage {i}"));
    }

    /// <summary>Deleted residuals, studentized residuals and distances by really leaving each point out.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Leaving_out_is_what_refitting_gives(bool sloped)
    {
        LeastSquares all = new(Boiling, Logs, sloped);
        double sum = 0;
        for (int i = 0; i < 17; i++)
        {
            LeastSquares others = new([.. Boiling.Where((_, k) => k != i)], [.. Logs.Where((_, k) => k != i)], sloped);
            double deleted = Logs[i] - others.At(Boiling[i]);
            sum += deleted * deleted;
            Near.Absolute(deleted, all.Deleted[i]!.Value, 1e-10, $"deleted residual {i}");
            Near.Relative(deleted / others.PredictionError(Boiling[i])!.Value, all.Studentized(i)!.Value, 1e-9,
                $"studentized residual {i}");
            double moved = Boiling.Sum(x => (all.At(x) - others.At(x)) * (all.At(x) - others.At(x)));
            Near.Relative(moved / (all.Parameters * all.Deviation!.Value * all.Deviation.Value), all.CookDistance(i)!.Value, 1e-8,
                $"distance {i}");
        }

        Near.Relative(Math.Sqrt(sum / 17), all.LeaveOneOutError!.Value, 1e-12);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void One_more_point_is_what_refitting_gives(bool sloped)
    {
        LeastSquares all = new(Boiling, Logs, sloped);
        LeastSquares more = new([.. Boiling, 190], [.. Logs, all.At(190)], sloped);
        Near.Relative(all.Deviation!.Value * Math.Sqrt(1 + more.LeverageAt(205)), all.PredictionErrorWith(190, 205)!.Value, 1e-10);
    }

    /// <summary>Percentage points of Student's distribution as tables print them (t₀.₉₇₅), from memory.</summary>
    [Theory]
    [InlineData(1, 12.706)]
    [InlineData(2, 4.303)]
    [InlineData(4, 2.776)]
    [InlineData(9, 2.262)]
    [InlineData(30, 2.042)]
    public void Quantiles_are_those_of_the_tables(int freedom, double table) =>
        Near.Absolute(table, LeastSquares.Quantile(freedom, 0.95), 5.1e-4);

    [Fact]
    public void What_cannot_be_told_is_null()
    {
        LeastSquares one = new([1.0], [2.0], sloped: false);
        Assert.Null(one.Deviation);
        Assert.Null(one.LeaveOneOutError);
        Assert.Null(one.PredictionError(1));
        Assert.Null(one.Studentized(0));
        Assert.Null(one.CookDistance(0));
        LeastSquares alone = new([1.0, 1.0, 2.0], [1.0, 2.0, 5.0], sloped: true);
        Assert.Null(alone.Deleted[2]);
        Assert.Null(alone.LeaveOneOutError);
    }
}
