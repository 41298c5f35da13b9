using BendMath.Learning;
using BendMath.Tests.Forming;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>
/// How often the 95 % interval holds the next ring where the truth is not the fit's own model: 2,000 invented shops that bump by bump, each
/// with its own mean yield (260 to 340 MPa) and closing (0.97 to 1.05 of what the die asks); every bar's yield scatters by 12 MPa, every
/// setting by 0.5 %, every diameter is read to ±1/32 in. The fit knows a yield of 300 MPa and the die. The page on learning prints what
/// comes out.
/// </summary>
public sealed class BumpCoverageTests
{
    private const int Shops = 2000;

    private static readonly BendAnalysis Believed = BendAnalysis.Of(Workshop.Rim, Workshop.Mild(300, null));

    private static readonly FinishedRing[] Modeled =
        [.. Workshop.Rack.Select(die => BumpResponse.Model.Form(Believed, die).RingWhen(Release.Free))];

    /// <summary>The table is off by less than a hundredth of what is read: 0.008 mm.</summary>
    [Fact]
    public void The_table_is_the_model()
    {
        Random random = new(7);
        foreach (BumpResponse response in BumpResponse.Rack)
        {
            for (int i = 0; i < 10; i++)
            {
                (double yield, double closing) = (230 + 140 * random.NextDouble(), 0.95 + 0.12 * random.NextDouble());
                Near.Absolute(response.Direct(yield, closing), response.InsideDiameter(yield, closing), 0.008,
                    FormattableString.Invariant($"{response.Die.Name} at {yield:0} MPa, {closing:0.000}"));
            }
        }
    }

    /// <summary>
    /// The rows of the page: rings, share of next rings held, middle width of the interval, share of shops in which a line was taken.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(10)]
    public void The_page_prints_the_coverage_that_is_found(int rings)
    {
        (double held, double width, double lines) = Run(rings);
        string row = FormattableString.Invariant($"| {rings} | {100 * held:0.0} % | {width:0.0} mm | {100 * lines:0} % |");
        Assert.True(
            File.ReadAllText(Path.Combine(Repository.Root, "docs", "concepts", "learning.md")).Contains(row, StringComparison.Ordinal),
            $"docs/concepts/learning.md must hold the row {row}");
        Assert.InRange(held, 0.90, 0.985);
    }

    /// <summary>The shortcut of these tests is the fit as a user makes it.</summary>
    [Fact]
    public void The_shortcut_is_the_fit_from_measured_rings()
    {
        (int Die, double Diameter)[] drawn = Draw(10, new Random(5));
        MeasuredRing[] rings =
            [.. drawn.Select(one => new MeasuredRing(Workshop.Rack[one.Die], Believed, BendRadius.InsideDiameter(Length.FromMillimeters(one.Diameter)), Release.Free))];
        RingFit fit = RingFit.Of(rings, Believed, BumpResponse.Model);
        LeastSquares quick = Fitted(drawn);
        Assert.Equal(quick.Parameters == 2, fit.IsLine);
        LengthRange range = fit.Forecast(Workshop.Rack[1], Release.Free).Interval!;
        (double low, double high) = Interval(quick, 1);
        Near.Relative(range.Low.Millimeters, low, 1e-9);
        Near.Relative(range.High.Millimeters, high, 1e-9);
    }

    private static (double Held, double Width, double Lines) Run(int rings)
    {
        int held = 0;
        int lines = 0;
        List<double> widths = [];
        for (int shop = 0; shop < Shops; shop++)
        {
            (int Die, double Diameter)[] drawn = Draw(rings + 1, new Random(100_000 * rings + shop));
            LeastSquares fit = Fitted(drawn[..rings]);
            (double low, double high) = Interval(fit, drawn[rings].Die);
            held += low <= drawn[rings].Diameter && drawn[rings].Diameter <= high ? 1 : 0;
            lines += fit.Parameters - 1;
            widths.Add(high - low);
        }

        return ((double)held / Shops, MathNet.Numerics.Statistics.Statistics.Median(widths), (double)lines / Shops);
    }

    private static (int Die, double Diameter)[] Draw(int count, Random random)
    {
        double yield = 260 + 80 * random.NextDouble();
        double closing = 0.97 + 0.08 * random.NextDouble();
        return [.. Enumerable.Range(0, count).Select(_ =>
        {
            int die = random.Next(Workshop.Rack.Count);
            double diameter =
                BumpResponse.Rack[die].InsideDiameter(Normal.Sample(random, yield, 12), Normal.Sample(random, closing, 0.005));
            return (die, diameter + 25.4 / 32 * (2 * random.NextDouble() - 1));
        })];
    }

    private static LeastSquares Fitted((int Die, double Diameter)[] rings)
    {
        double[] x = [.. rings.Select(one => Modeled[one.Die].InsideRadius / Workshop.Rim.Depth)];
        double[] y = [.. rings.Select(one =>
        {
            double fiber = Modeled[one.Die].LengthPreservingFiberFromInside.Millimeters;
            return Math.Log((Modeled[one.Die].InsideRadius.Millimeters + fiber) / (one.Diameter / 2 + fiber));
        })];
        return FitChoice.Of(x, y, [.. rings.Select(one => Workshop.Rack[one.Die].StampedRadius.Meters)], null).Fit;
    }

    private static (double Low, double High) Interval(LeastSquares fit, int die)
    {
        FinishedRing modeled = Modeled[die];
        double x = modeled.InsideRadius / Workshop.Rim.Depth;
        double fiber = modeled.LengthPreservingFiberFromInside.Millimeters;
        double inside = modeled.InsideRadius.Millimeters + fiber;
        double reach = LeastSquares.Quantile(fit.Freedom, 0.95) * fit.PredictionError(x)!.Value;
        return (2 * (inside * Math.Exp(-fit.At(x) - reach) - fiber), 2 * (inside * Math.Exp(-fit.At(x) + reach) - fiber));
    }
}
