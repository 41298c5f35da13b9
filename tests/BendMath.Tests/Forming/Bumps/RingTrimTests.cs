using BendMath.Forming.Bumps;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Tests.Forming.Bumps;

/// <summary>Where a bumped bar is cut to a ring and how its ends meet, against the plane curve integrated apart from the library.</summary>
public sealed class RingTrimTests
{
    private const double A = BumpCase.HalfSpan;

    private const int Steps = 400;

    /// <summary>
    /// The curve of the straightforward way (<see cref="SlowBumps"/>), on its grid of 400 steps in a half-span, by the midpoint rule; a
    /// flat keeps the length of its centroid line.
    /// </summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Cuts_gap_and_overlap_are_those_of_the_curve_of_the_straightforward_way(bool lighter)
    {
        BumpBending model = BumpCase.Feeding(0.015);
        Length length = BumpCase.M(0.75);
        IReadOnlyList<Bump> bumps = lighter
            ? model.PassWithLighterFirstBites(BumpCase.Hardening, length, BumpCase.Stroke(BumpCase.Nominal))
            : Bump.Pass(BumpCase.M(A), length - BumpCase.M(A), model.Feed, BumpCase.Stroke(BumpCase.Nominal));
        BumpedBar bar = model.Bend(BumpCase.Hardening, length, bumps);
        RingTrim trim = bar.Trim();
        Assert.True(trim.IsFullTurn);

        SlowBumps slow = new(BumpCase.Closed, A, length.Meters, Steps);
        foreach (Bump bump in bumps)
        {
            double closed = bump.Stroke.Meters;
            slow.Bump(bump.Position.Meters, 2 * closed / ((A * A) + (closed * closed)));
        }

        double[] curvature = slow.Permanent;
        int first = (int)Math.Round(bumps[0].Position.Meters / slow.Step);
        int last = (int)Math.Round(bumps[^1].Position.Meters / slow.Step);
        double mean = Enumerable.Range(first, last - first).Sum(i => (curvature[i] + curvature[i + 1]) / 2) / (last - first);
        double start = WhereHalf(curvature, mean, 0, 1) * slow.Step;
        double end = WhereHalf(curvature, mean, curvature.Length - 1, -1) * slow.Step;
        Near.Absolute(start, trim.StartCut.Meters, 2e-4 * A, "first cut");
        (double turned, double gap) = Walk(curvature, slow.Step, start);
        Near.Absolute(turned, trim.EndCut.Meters, 1e-3 * A, "second cut");
        Near.Absolute(gap, trim.EndGap.Meters, 5e-4 * A, "gap of the ends");
        Near.Absolute(end - turned, trim.Overlap.Meters, 1e-3 * A, "overlap");
        Near.Relative(360, trim.Turn.Degrees, 1e-9, "turn");
        Assert.Equal(Length.Zero, trim.Missing);
        Assert.Equal(lighter, trim.EndGap.Meters < 0.1 * A);
    }

    /// <summary>
    /// The points of the centroid line are the curve of the permanent curvature handed out, integrated here: the midpoint rule on 250,000
    /// pieces.
    /// </summary>
    [Fact]
    public void Points_are_those_of_the_permanent_curvature()
    {
        BumpedBar bar = BumpCase.Feeding(0.015).BendWhole(BumpCase.Hardening, BumpCase.M(0.75), BumpCase.Stroke(BumpCase.Nominal));
        IReadOnlyList<OutlinePoint> points = bar.Points(RadiusReference.Centroid, 26);
        IReadOnlyList<OutlinePoint> inside = bar.Points(RadiusReference.InsideFace, 26);
        IReadOnlyList<OutlinePoint> outside = bar.Points(RadiusReference.OutsideFace, 26);
        const int Pieces = 10_000;
        double x = 0;
        double y = 0;
        double direction = 0;
        for (int i = 1; i <= 25; i++)
        {
            double h = 0.03 / Pieces;
            for (int j = 0; j < Pieces; j++)
            {
                double turn = h * bar.PermanentCurvatureAt(BumpCase.M(Math.Min(0.75, (0.03 * (i - 1)) + ((j + 0.5) * h)))).InverseMeters;
                x += h * Math.Cos(direction + (turn / 2));
                y += h * Math.Sin(direction + (turn / 2));
                direction += turn;
            }

            Near.Absolute(x, points[i].X.Meters, 1e-7, "right");
            Near.Absolute(y, points[i].Y.Meters, 1e-7, "up");
            double half = BumpCase.Depth / 2;
            Near.Absolute(x - (half * Math.Sin(direction)), inside[i].X.Meters, 1e-7, "right, inside face");
            Near.Absolute(x + (half * Math.Sin(direction)), outside[i].X.Meters, 1e-7, "right, outside face");
        }

        Near.Absolute(direction, bar.TurnBetween(Length.Zero, bar.BarLength).Radians, 1e-7, "turn");
    }

    /// <summary>
    /// A bar too short for a full turn says what lacks: the rest of the turn at the mean curvature. Its gap is the chord of what it has.
    /// </summary>
    [Fact]
    public void A_bar_too_short_says_what_lacks()
    {
        BumpBending model = BumpCase.Feeding(0.001);
        Length length = BumpCase.M(0.45);
        BumpedBar bar =
            model.Bend(BumpCase.Hardening, length,
                model.PassWithLighterFirstBites(BumpCase.Hardening, length, BumpCase.Stroke(BumpCase.Nominal)));
        RingTrim trim = bar.TrimFrom(BumpCase.M(A));
        Assert.False(trim.IsFullTurn);
        double turn = bar.TurnBetween(trim.StartCut, trim.EndCut).Radians;
        double radius = 1 / bar.MeanCurvature.InverseMeters;
        Near.Relative(turn, trim.Turn.Radians, 1e-9, "turn");
        Near.Relative(radius * ((2 * Math.PI) - turn), trim.Missing!.Value.Meters, 1e-9, "missing");
        Near.Relative(2 * radius * Math.Abs(Math.Sin(turn / 2)), trim.EndGap.Meters, 0.05, "chord of an even ring");
        Assert.Equal(0, trim.Overlap.Meters);
    }

    /// <summary>A bar that sprang back straight is no full turn, and no length of it makes one.</summary>
    [Fact]
    public void A_straight_bar_is_no_ring()
    {
        BumpedBar bar =
            BumpCase.Feeding(0.01).BendWhole(BumpCase.Hardening, BumpCase.M(0.5), BumpCase.Stroke(0.5 * BumpCase.Closed.YieldCurvature));
        RingTrim trim = bar.Trim();
        Assert.False(trim.IsFullTurn);
        Assert.Null(trim.Missing);
        Assert.Equal(0, trim.Turn.Radians);
        Near.Relative(0.5, trim.EndGap.Meters, 1e-12, "gap");
    }

    /// <summary>
    /// f²/(8R) is the rise of a chord of one feed; facets less sharp than corners bulge less, and the bulge falls with at least the square
    /// of the feed.
    /// </summary>
    [Fact]
    public void Facets_rise_less_than_those_of_a_polygon()
    {
        double[] rises = [.. new[] { A / 4, A / 8, A / 16 }.Select(feed =>
        {
            FormedBend formed = BumpCase.Feeding(feed).FormAtStroke(BumpCase.Hardening, BumpCase.Stroke(BumpCase.Nominal));
            double rise = formed.Contact!.FacetRise.Meters;
            Assert.InRange(rise, 1e-9, feed * feed * BumpCase.Finished(formed) / 8);
            return rise;
        })];
        Assert.True(rises[0] > 4 * rises[1] && rises[1] > 4 * rises[2]);
    }

    private static double WhereHalf(double[] curvature, double mean, int from, int step)
    {
        int i = from;
        while (curvature[i] < mean / 2)
        {
            i += step;
        }

        return i - (step * (curvature[i] - (mean / 2)) / (curvature[i] - curvature[i - step]));
    }

    private static (double Turned, double Gap) Walk(double[] curvature, double step, double start)
    {
        double x = 0;
        double y = 0;
        double direction = 0;
        double at = start;
        while (true)
        {
            int i = (int)(at / step * (1 + 1e-12));
            double piece = ((i + 1) * step) - at;
            double middle = (at + (piece / 2)) / step - i;
            double here = curvature[i] + (middle * (curvature[i + 1] - curvature[i]));
            double left = ((2 * Math.PI) - direction) / here;
            double go = Math.Min(piece, left);
            x += go * Math.Cos(direction + (go * here / 2));
            y += go * Math.Sin(direction + (go * here / 2));
            direction += go * here;
            at += go;
            if (go == left)
            {
                return (at, Math.Sqrt((x * x) + (y * y)));
            }
        }
    }
}
