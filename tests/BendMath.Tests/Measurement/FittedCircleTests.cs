using System.Globalization;
using BendMath.Measurement;
using BendMath.Sections.Outlines;
using BendMath.Tests.Properties;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;
using UnitsNet;

namespace BendMath.Tests.Measurement;

public sealed class FittedCircleTests
{
    /// <summary>
    /// The six points of W. Gander, G. H. Golub, R. Strebel, BIT 34 (1994) 558-578, in millimeters; points and results from memory, and
    /// both results agree with the points.
    /// </summary>
    private static readonly (double X, double Y)[] Six = [(1, 7), (2, 6), (5, 8), (7, 7), (9, 5), (3, 7)];

    [Fact]
    public void The_geometric_fit_of_six_published_points()
    {
        FittedCircle fit = Fit(Six);
        Near.Absolute(4.7398, fit.CenterX.Millimeters, 5e-5);
        Near.Absolute(2.9835, fit.CenterY.Millimeters, 5e-5);
        Near.Absolute(4.7142, fit.Radius.Millimeters, 5e-5);

        // Their algebraic fit, min |Bu| with |u| = 1, of the same points: it tells whether the points are remembered right.
        Matrix<double> b = Matrix<double>.Build.DenseOfRows(Six.Select(p => new[] { p.X * p.X + p.Y * p.Y, p.X, p.Y, 1 }));
        Vector<double> u = b.Svd().VT.Row(3);
        Near.Absolute(5.3794, -u[1] / (2 * u[0]), 5e-5);
        Near.Absolute(7.2532, -u[2] / (2 * u[0]), 5e-5);
        Near.Absolute(3.0370, Math.Sqrt((u[1] * u[1] + u[2] * u[2]) / (4 * u[0] * u[0]) - u[3] / u[0]), 5e-5);
    }

    /// <summary>
    /// On a short arc the middle point moved by a thousandth of a millimeter moves the radius by as much as the advisory and the page say:
    /// 6.5 times over 60°, 64.8 times over 20°.
    /// </summary>
    [Theory]
    [InlineData(60, "6.5")]
    [InlineData(20, "64.8")]
    public void The_middle_point_of_a_short_arc_moves_the_radius_as_the_advisory_says(double degrees, string times)
    {
        double half = degrees / 2 * Math.PI / 180;
        FittedCircle Of(double off) =>
            Fit([(-300 * Math.Sin(half), 300 * Math.Cos(half)), (0, 300 + off), (300 * Math.Sin(half), 300 * Math.Cos(half))]);
        double moved = (Of(0).Radius.Millimeters - Of(0.001).Radius.Millimeters) / 0.001;
        Assert.Equal(times, moved.ToString("0.0", CultureInfo.InvariantCulture));
        Assert.Contains($"by about {times} times as much", Of(0).Advisories.Single(advisory => advisory.Code == "short-arc").Message,
            StringComparison.Ordinal);
    }

    /// <summary>MathNet's Levenberg-Marquardt minimizer from another start, with its covariance, is the reference.</summary>
    [Fact]
    public void MathNets_minimizer_finds_the_same_circle_and_the_same_errors()
    {
        Random random = new(77);
        (double X, double Y)[] points = [.. Arc(300, 100, 15).Select(p => (p.X + Gauss(random, 0.4), p.Y + Gauss(random, 0.4)))];
        Vector<double> index = Vector<double>.Build.Dense(points.Length, i => i);
        IObjectiveModel model = ObjectiveFunction.NonlinearModel(
            (p, at) => at.Map(i => Math.Sqrt(Math.Pow(points[(int)i].X - p[0], 2) + Math.Pow(points[(int)i].Y - p[1], 2)) - p[2]), index,
                Vector<double>.Build.Dense(points.Length));
        NonlinearMinimizationResult result =
            new LevenbergMarquardtMinimizer(gradientTolerance: 1e-16, stepTolerance: 1e-14, functionTolerance: 1e-18)
            .FindMinimum(model, Vector<double>.Build.DenseOfArray([20, -10, 250]));
        FittedCircle fit = Fit(points);
        Near.Absolute(result.MinimizingPoint[0], fit.CenterX.Millimeters, 2e-4, "x");
        Near.Absolute(result.MinimizingPoint[1], fit.CenterY.Millimeters, 2e-4, "y");
        Near.Absolute(result.MinimizingPoint[2], fit.Radius.Millimeters, 2e-4, "radius");
        Near.Relative(result.StandardErrors[2], fit.RadiusError!.Value.Millimeters, 1e-3, "error of the radius");
        Near.Relative(result.StandardErrors[0], fit.CenterXError!.Value.Millimeters, 1e-3, "error of x");
        Near.Relative(result.StandardErrors[1], fit.CenterYError!.Value.Millimeters, 1e-3, "error of y");
    }

    /// <summary>Exact points, on arcs down to 3°, anywhere: the circle they were taken from.</summary>
    [Property(MaxTest = 300)]
    public Property Exact_points_give_their_circle() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(20, 5000, part)).ToArbitrary(),
        Sold.Part.Select(part => Sold.Between(3, 360, part)).ToArbitrary(), Gen.Choose(4, 40).ToArbitrary(), (radius, degrees, count) =>
        {
            FittedCircle fit = Fit([.. Arc(radius, degrees, count).Select(p => (p.X + 3 * radius, p.Y - radius))]);

            // Rounding of coordinates near 3R is magnified by the shortness of the arc.
            double magnified = 1e-14 / (1 - Math.Cos(degrees * Math.PI / 360));
            Near.Relative(radius, fit.Radius.Millimeters, 1e-11 + 30 * magnified, $"radius over {degrees}°");
            Near.Absolute(3 * radius, fit.CenterX.Millimeters, (1e-11 + 30 * magnified) * radius, "center");
        });

    /// <summary>
    /// The interval at 95 % holds the radius in 93 to 97 of 100 cases, on half circles and on arcs of 60°; so does that of the center.
    /// </summary>
    [Theory]
    [InlineData(180, 20, 0.3, 1)]
    [InlineData(60, 25, 0.05, 2)]
    [InlineData(360, 8, 0.5, 3)]
    public void The_interval_holds_the_radius_as_often_as_it_says(double degrees, int count, double noise, int seed)
    {
        Random random = new(seed);
        const int Trials = 2000;
        int radius = 0;
        int center = 0;
        for (int trial = 0; trial < Trials; trial++)
        {
            FittedCircle fit = Fit([.. Arc(250, degrees, count).Select(p => (p.X + Gauss(random, noise), p.Y + Gauss(random, noise)))]);
            radius += Holds(fit.RadiusWithin(Ratio.FromPercent(95))!, 250);
            center += Holds(fit.CenterXWithin(Ratio.FromPercent(95))!, 0);
        }

        Assert.InRange(radius / (double)Trials, 0.93, 0.97);
        Assert.InRange(center / (double)Trials, 0.93, 0.97);
        static int Holds(LengthRange range, double millimeters) =>
            range.Low.Millimeters <= millimeters && millimeters <= range.High.Millimeters ? 1 : 0;
    }

    [Fact]
    public void Three_points_give_a_circle_and_no_error()
    {
        FittedCircle fit = Fit([(5, 0), (0, 5), (-5, 0)]);
        Near.Relative(5, fit.Radius.Millimeters, 1e-12);
        Assert.Null(fit.RadiusError);
        Assert.Null(fit.MeasuredRadius);
        Assert.Null(fit.RadiusWithin(Ratio.FromPercent(95)));
        Assert.Equal(["no-spare-point"], fit.Advisories.Select(advisory => advisory.Code));
        Near.Absolute(180, fit.CoveredArc.Degrees, 1e-9);
    }

    [Fact]
    public void Out_of_round_is_the_span_of_the_deviations()
    {
        FittedCircle fit = Fit([(251, 0), (0, 250), (-251, 0), (0, -250), (177, 177), (-177, 177), (-177, -177), (177, -177)]);
        Near.Relative((fit.Deviations.Max(d => d.Millimeters) - fit.Deviations.Min(d => d.Millimeters)), fit.OutOfRound.Millimeters, 1e-12);
        Near.Absolute(251 - 250, fit.OutOfRound.Millimeters, 1e-9, "all other points lie between");
        Near.Absolute(0, fit.Deviations.Sum(d => d.Millimeters), 1e-9, "the best circle lies in the middle");
    }

    [Fact]
    public void A_short_arc_is_said_to_be_one()
    {
        FittedCircle fit = Fit([.. Arc(250, 20, 5).Select((p, i) => (p.X + i % 2 * 0.2, p.Y))]);
        Assert.Equal(["few-points", "short-arc"], fit.Advisories.Select(advisory => advisory.Code).Take(2));
        Near.Absolute(20, fit.CoveredArc.Degrees, 4);
    }

    [Fact]
    public void Points_that_are_no_circle_are_refused_by_name()
    {
        Assert.Throws<ArgumentException>("points", () => Fit([(0, 0), (1, 1)]));
        Assert.Throws<ArgumentException>("points", () => Fit([(0, 0), (1, 1), (2, 2), (5, 5)]));
        Assert.Throws<ArgumentException>("points", () => Fit([(1, 2), (1, 2), (1, 2)]));
        Assert.Throws<ArgumentException>("points", () => Fit([(1, 2), (3, 2), (1, 2), (3, 2)]));
        Assert.Throws<ArgumentException>("points", () => Fit([(0, 1e-6), (100, 0), (200, -1e-6), (300, 1e-6), (400, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>("confidence", () => Fit(Six).RadiusWithin(Ratio.FromPercent(100)));
    }

    private static IEnumerable<(double X, double Y)> Arc(double radius, double degrees, int count) => Enumerable.Range(0, count)
        .Select(i => 0.3 + degrees * Math.PI / 180 * i / (degrees < 360 ? count - 1 : count))
            .Select(angle => (radius * Math.Cos(angle), radius * Math.Sin(angle)));

    private static FittedCircle Fit((double X, double Y)[] points) =>
        FittedCircle.Of([.. points.Select(p => new OutlinePoint(Length.FromMillimeters(p.X), Length.FromMillimeters(p.Y)))]);

    private static double Gauss(Random random, double deviation) => Normal.Sample(random, 0, deviation);
}
