using System.Globalization;
using BendMath.Learning;
using ScottPlot;

namespace BendMath.Plotting.Drawing;

/// <summary>Says what the lines, marks and areas of an choice mean.</summary>
internal static class DieChoiceKey
{
    private const int LongestName = 12;

    public static ChartKey Of(DieChoiceFigure figure, DieChoiceCurves curves)
    {
        ChartKey key = new();
        DieChoice choice = figure.Choice;
        FormingModel model = choice.Model;
        DiePlace[] places = curves.IsSwept ? curves.Swept : curves.Rack;
        Rings(key, curves);
        if (places.Any(place => place.Ring is not null))
        {
            key.Add(
                model.CorrectionName ?? model.Name,
                (chart, from, to) => Stroke(chart, from, to, 1.8, LinePattern.Solid));
            if (curves.IsSwept && places.Any(place => place.IsBeyond))
            {
                key.Add("carried on beyond these rings", (chart, from, to) => Stroke(chart, from, to, 1.8, LinePattern.Dotted));
            }
        }

        DiePrediction[] forecasts = [.. choice.Predictions.Where(forecast => forecast.Ring is not null)];
        if (Array.Find(forecasts, forecast => forecast.Interval is not null) is { } ranged)
        {
            key.Add(
                ranged.IsIntervalMeasured ? Text("{0:0} % of rings to come", DiePrediction.Confidence.Percent)
                    : ranged.IntervalNote, Shade);
        }
        else if (forecasts.Length > 0)
        {
            key.Add($"no interval: {forecasts[0].ChanceNote ?? forecasts[0].IntervalNote}", Nothing);
        }

        if (model.Basis is { } basis && places.Any(place => place.Plain is not null))
        {
            key.Add($"{basis.Name}, uncorrected", (chart, from, to) => Stroke(chart, from, to, 1.2, LinePattern.Dashed));
        }

        key.Add(Wanted(choice, figure.IsInInches), (chart, from, to) =>
        {
            Stroke(chart, from, to, 0.8, LinePattern.Solid);
            Stroke(chart, from + new Spot(0, 4), to + new Spot(0, 4), 0.8, LinePattern.Dotted);
            Stroke(chart, from - new Spot(0, 4), to - new Spot(0, 4), 0.8, LinePattern.Dotted);
        });
        key.Add("die of the rack", Mark(MarkerShape.OpenTriangleUp, 9));
        if (choice.Best is { } best)
        {
            string name = $"best die: {Short(best.Die.Name)}";
            key.Add(best.Chance is { } chance ? Text("{0}, {1:0} of 100 within", name, chance.Percent) : name,
                Mark(MarkerShape.FilledTriangleUp, 9));
        }
        else
        {
            key.Add("no die of the rack leaves a ring", Nothing);
        }

        return key;
    }

    /// <summary>A line between two places in pixels.</summary>
    public static void Stroke(Chart chart, Spot from, Spot to, double width, LinePattern pattern)
    {
        Spot one = chart.At(from);
        Spot other = chart.At(to);
        chart.Line(one.X, one.Y, other.X, other.Y, width, pattern);
    }

    /// <summary>A name that does not crowd out its neighbors.</summary>
    public static string Short(string name) => name.Length <= LongestName ? name : name.Remove(LongestName - 1) + "…";

    private static void Rings(ChartKey key, DieChoiceCurves curves)
    {
        int even = curves.Rings.Count(ring => !ring.IsOdd);
        if (even > 0)
        {
            key.Add(Text(even == 1 ? "{0} measured ring" : "{0} measured rings", even), Mark(MarkerShape.FilledCircle, 6));
        }

        if (curves.Rings.FirstOrDefault(ring => ring.IsOdd) is { } odd)
        {
            key.Add(Text("ring {0} does not fit with the others: look at it again", odd.Number), Mark(MarkerShape.Eks, 10));
        }

        if (curves.NotShown > 0)
        {
            key.Add(
                Text(
                    curves.NotShown == 1 ? "{0} measured ring of another kind is not drawn"
                        : "{0} measured rings of another kind are not drawn", curves.NotShown), Nothing);
        }
    }

    private static string Wanted(DieChoice choice, bool inInches)
    {
        (double perMeter, string unit) = Paper.Unit(inInches);
        string format = inInches ? "0.###" : "0.#";
        BendRadius wanted = choice.Wanted;
        string line =
            wanted.Reference switch
            {
                RadiusReference.InsideFace => string.Empty,
                RadiusReference.Centroid => " at the centroid",
                _ => " outside"
            };
        return Text("wanted: {0} ± {1} {2}{3}", Number(2 * wanted.Value.Meters), Number(choice.Tolerance!.Value.Meters), unit, line);

        string Number(double meters) => (meters * perMeter).ToString(format, CultureInfo.InvariantCulture);
    }

    private static void Shade(Chart chart, Spot from, Spot to)
    {
        Spot low = chart.At(from - new Spot(0, 5));
        Spot high = chart.At(to + new Spot(0, 5));
        chart.Area([low.X, high.X], [low.Y, low.Y], [high.Y, high.Y]);
    }

    private static Action<Chart, Spot, Spot> Mark(MarkerShape shape, double size) => (chart, from, to) =>
    {
        Spot middle = chart.At((from + to) * 0.5);
        chart.Marks([middle.X], [middle.Y], shape, size);
    };

    private static void Nothing(Chart chart, Spot from, Spot to)
    {
    }

    private static string Text(string format, params object[] values) => string.Format(CultureInfo.InvariantCulture, format, values);
}
