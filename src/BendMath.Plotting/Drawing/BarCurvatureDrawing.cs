using System.Globalization;
using BendMath.Forming.Bumps;
using ScottPlot;
using UnitsNet;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// Lays out the curvature along a bumped bar: the curve, gray tails with their length, a mark under each place bumped, the mean radius, the
/// kink.
/// </summary>
internal static class BarCurvatureDrawing
{
    private const int Even = 2000;

    /// <summary>Beyond so many places bumped, marks would run into each other.</summary>
    private const int MostMarks = 120;

    public static Plot Draw(BarCurvatureFigure figure, int width, int height)
    {
        BumpedBar bar = figure.Bar;
        (double perMeter, string unit) = Paper.Unit(figure.IsInInches);
        string curvatureUnit = figure.IsInInches ? "1/in" : "1/m";
        double perInverseMeter = figure.IsInInches ? 0.0254 : 1;
        double length = bar.BarLength.Meters;
        double[] bumps = [.. bar.Outcomes.Select(outcome => outcome.Bump.Position.Meters).Distinct().OrderBy(at => at)];
        double[] places =
        [
            .. Enumerable.Range(0, Even + 1).Select(i => length * i / Even)
                .Concat(bumps)
                .Concat(bumps.Zip(bumps.Skip(1), (one, next) => (one + next) / 2))
                .Distinct()
                .OrderBy(at => at),
        ];
        double[] curvature =
            Array.ConvertAll(places, at => bar.PermanentCurvatureAt(Length.FromMeters(at)).InverseMeters * perInverseMeter);
        double mean = bar.MeanCurvature.InverseMeters * perInverseMeter;
        double most = curvature.Max();
        double top = most > 0 ? 1.3 * Math.Max(most, 1.15 * mean) : perInverseMeter;
        double end = length * perMeter;
        double[] marks = bumps.Length is > 0 and <= MostMarks ? Array.ConvertAll(bumps, at => at * perMeter) : [];

        Chart chart = new(width, height, figure.Title, $"place along the unbent bar ({unit})", $"curvature that stays ({curvatureUnit})");
        chart.Limits(0, end, -0.06 * top, top);
        if (!bar.IsStraight)
        {
            double leading = bar.LeadingTail.Meters * perMeter;
            double trailing = end - bar.TrailingTail.Meters * perMeter;
            chart.Band(0, leading);
            chart.Band(trailing, end);
            chart.Words($"tail\n{Number(leading)} {unit}", 0.015 * end, 0.97 * top, Alignment.UpperLeft);
            chart.Words($"tail\n{Number(end - trailing)} {unit}", 0.985 * end, 0.97 * top, Alignment.UpperRight);
            chart.Line(bumps[0] * perMeter, mean, bumps[bumps.Length - 1] * perMeter, mean, 1.2, LinePattern.Dashed);
            double middle = (bumps[0] + bumps[bumps.Length - 1]) / 2 * perMeter;
            chart.Words($"mean (dashed): radius {Number(perMeter / bar.MeanCurvature.InverseMeters)} {unit}", middle,
                Math.Max(mean, Inner(places, curvature, bumps)) + 0.02 * top, Alignment.LowerCenter);
        }

        chart.Line(0, 0, end, 0);
        chart.Curve(Array.ConvertAll(places, at => at * perMeter), curvature);
        if (marks.Length > 0)
        {
            chart.Marks(marks, Array.ConvertAll(marks, _ => -0.025 * top), MarkerShape.FilledTriangleUp, marks.Length > 40 ? 4 : 7);
        }

        if (bar.FirstBiteKink is > 1.5 and { } kink)
        {
            double at = bar.Outcomes[0].Bump.Position.Meters * perMeter;
            bool left = at < end / 2;
            double beside = left ? Math.Max(at, 0.14 * end) : Math.Min(at, 0.86 * end);
            chart.Words(Invariant($"kink of the first bite,\n{kink:0.#} times the rest"), beside, 0.97 * top,
                left ? Alignment.UpperLeft : Alignment.UpperRight);
        }

        return chart.Plot;

        string Number(double value) => value.ToString(figure.IsInInches ? "0.###" : "0.#", CultureInfo.InvariantCulture);
    }

    /// <summary>The largest curvature in the middle third of the bumps, over which the words about the mean stand.</summary>
    private static double Inner(double[] places, double[] curvature, double[] bumps)
    {
        double third = (bumps[bumps.Length - 1] - bumps[0]) / 3;
        return places.Zip(curvature, (at, value) => at >= bumps[0] + third && at <= bumps[0] + 2 * third ? value : 0).Max();
    }
}
