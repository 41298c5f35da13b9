using System.Globalization;
using BendMath.Distortion.Shape;
using BendMath.Learning;
using ScottPlot;

namespace BendMath.Plotting.Drawing;

/// <summary>
/// Lays out the finished ring against the die: lines and band, measured rings, the wanted ring, the dies along the axis with their names,
/// and a key where nothing else is.
/// </summary>
internal sealed class DieChoiceDrawing
{
    /// <summary>Below everything else, for the dies of the rack.</summary>
    private const double Strip = 40;

    private const double Above = 14;

    private const double NameHeight = 16;

    private readonly DieChoiceFigure _figure;

    private readonly DieChoiceCurves _curves;

    private readonly Chart _chart;

    private readonly double _perMeter;

    private readonly string _unit;

    private readonly double? _wanted;

    private DieChoiceDrawing(DieChoiceFigure figure, int width, int height)
    {
        _figure = figure;
        _curves = new(figure.Choice, figure.Fit);
        (_perMeter, _unit) = Paper.Unit(figure.IsInInches);
        _wanted = WantedInside();
        string bottom = _curves.IsByStamp ? "radius stamped on the die" : "radius of the inside of the bar on the die";
        string left =
            figure.Choice.Release == Release.Free ? "inside diameter of the ring, let go" : "inside diameter of the ring, held flat";
        _chart = new(width, height, figure.Title, $"{bottom} ({_unit})", $"{left} ({_unit})");
    }

    private DieChoice Choice => _figure.Choice;

    public static Plot Draw(DieChoiceFigure figure, int width, int height)
    {
        DieChoiceDrawing drawing = new(figure, width, height);
        drawing.Draw();
        return drawing._chart.Plot;
    }

    private void Draw()
    {
        ChartKey key = DieChoiceKey.Of(_figure, _curves);
        Limits(Above);
        Box upper = key.Corner(_chart.Size, upperLeft: true, Strip);
        Box lower = key.Corner(_chart.Size, upperLeft: false, Strip);
        Box place = !IsFree(upper) && IsFree(lower) ? lower : upper;
        for (double above = Above; !IsFree(place) && above < key.Height + 2 * Above; above += Above)
        {
            Limits(above + Above);
        }

        Lines();
        Wanted();
        Marks(place);
        Dies();
        key.Draw(_chart, place);
    }

    /// <summary>
    /// The inside diameter of the wanted ring, which may be given to another line of the bar; null where no ring shows how far that line is
    /// from the inside.
    /// </summary>
    private double? WantedInside()
    {
        BendRadius wanted = Choice.Wanted;
        FinishedRing? ring = Choice.Best?.Ring;
        return wanted.Reference == RadiusReference.InsideFace ? 2 * wanted.Value.Meters
            : ring is null ? null
            : 2 * (wanted.Value.Meters - (ring.RadiusTo(wanted.Reference).Meters - ring.InsideRadius.Meters));
    }

    /// <summary>Lines may rise beyond use at the ends, and an interval be as wide: they must not press all else together.</summary>
    private void Limits(double above)
    {
        double tolerance = Choice.Tolerance!.Value.Meters;
        double[] rings =
            [.. _curves.Rack.SelectMany(place => new[] { place.Ring, place.Plain }).OfType<double>(),
                .. _curves.Rings.Select(ring => ring.Diameter)];
        double least = 0.7 * rings.DefaultIfEmpty(0).Min();
        double most = 1.4 * rings.DefaultIfEmpty(0).Max();
        double[] heights =
        [
            .. rings,
            .. _curves.Rack.Concat(_curves.Swept)
                .SelectMany(place => new[] { place.Ring, place.Plain, place.Interval?.Low.Meters, place.Interval?.High.Meters })
                .OfType<double>()
                .Where(height => height > least && height < most),
            .. _wanted is { } wanted ? new[] { wanted - tolerance, wanted + tolerance } : [],
        ];
        double low = heights.DefaultIfEmpty(0).Min();
        double high = heights.DefaultIfEmpty(1).Max();
        if (!(high - low > 0.02 * Math.Abs(high)))
        {
            (low, high) = (low - 0.05 * Math.Abs(high), high + 0.05 * Math.Abs(high));
        }

        double perPixel = (high - low) / Math.Max(40, _chart.Size.Y - Strip - above);
        _chart.Limits(_curves.Low * _perMeter, _curves.High * _perMeter, (low - Strip * perPixel) * _perMeter,
            (high + above * perPixel) * _perMeter);
    }

    private void Lines()
    {
        if (!_curves.IsSwept)
        {
            foreach (DiePlace place in _curves.Rack)
            {
                double x = place.X * _perMeter;
                if (place.Interval is { } range)
                {
                    _chart.Line(x, range.Low.Meters * _perMeter, x, range.High.Meters * _perMeter, 6, color: Chart.Gray);
                }

                Dash(x, place.Ring, 1.8, LinePattern.Solid);
                Dash(x, place.Plain, 1.2, LinePattern.Dashed);
            }

            return;
        }

        foreach (DiePlace[] run in Runs(_curves.Ranged, place => place.Interval is not null))
        {
            _chart.Area([.. run.Select(place => place.X * _perMeter)], [.. run.Select(place => place.Interval!.Low.Meters * _perMeter)],
                [.. run.Select(place => place.Interval!.High.Meters * _perMeter)]);
        }

        foreach (DiePlace[] run in Runs(_curves.Swept, place => place.Plain is not null))
        {
            _chart.Curve([.. run.Select(place => place.X * _perMeter)], [.. run.Select(place => place.Plain!.Value * _perMeter)], 1.2,
                LinePattern.Dashed);
        }

        foreach (DiePlace[] run in Runs(_curves.Swept, place => place.Ring is not null))
        {
            int from = 0;
            for (int to = 1; to < run.Length; to++)
            {
                if (to == run.Length - 1 || IsBeyond(to) != IsBeyond(to + 1))
                {
                    DiePlace[] part = [.. run.Skip(from).Take(to - from + 1)];
                    _chart.Curve([.. part.Select(place => place.X * _perMeter)], [.. part.Select(place => place.Ring!.Value * _perMeter)],
                        1.8, IsBeyond(to) ? LinePattern.Dotted : LinePattern.Solid);
                    from = to;
                }
            }

            bool IsBeyond(int to) => run[to].IsBeyond || run[to - 1].IsBeyond;
        }
    }

    private void Dash(double x, double? height, double width, LinePattern pattern)
    {
        if (height is { } meters)
        {
            Spot middle = _chart.Pixel(x, meters * _perMeter);
            DieChoiceKey.Stroke(_chart, middle - new Spot(8, 0), middle + new Spot(8, 0), width, pattern);
        }
    }

    private void Wanted()
    {
        if (_wanted is { } wanted)
        {
            double tolerance = Choice.Tolerance!.Value.Meters;
            (double left, double right) = (_curves.Low * _perMeter, _curves.High * _perMeter);
            _chart.Line(left, wanted * _perMeter, right, wanted * _perMeter);
            _chart.Line(left, (wanted - tolerance) * _perMeter, right, (wanted - tolerance) * _perMeter, 0.8, LinePattern.Dotted);
            _chart.Line(left, (wanted + tolerance) * _perMeter, right, (wanted + tolerance) * _perMeter, 0.8, LinePattern.Dotted);
        }
    }

    /// <summary>Measured rings, the best die on its line, and the number of an odd ring on the side away from the lines.</summary>
    private void Marks(Box key)
    {
        RingPoint[] plain = [.. _curves.Rings.Where(ring => !ring.IsOdd)];
        if (plain.Length > 0)
        {
            _chart.Marks([.. plain.Select(ring => ring.X * _perMeter)], [.. plain.Select(ring => ring.Diameter * _perMeter)],
                MarkerShape.FilledCircle, 6);
        }

        foreach (RingPoint odd in _curves.Rings.Where(ring => ring.IsOdd))
        {
            Spot at = _chart.Pixel(odd.X * _perMeter, odd.Diameter * _perMeter);
            _chart.Marks([odd.X * _perMeter], [odd.Diameter * _perMeter], MarkerShape.Eks, 10);
            Spot[] beside = [new(14, -12), new(-14, 12), new(14, 12), new(-14, -12), new(18, 0), new(-18, 0)];
            Box[] numbers = Array.ConvertAll(beside, step => new Box(at + step, 8.0 * Digits(odd).Length, 14));
            int free = Array.FindIndex(numbers, box => IsFree(box) && !box.Meets(key));
            Box number = numbers[Math.Max(0, free)];
            Spot middle = _chart.At(number.Center);
            _chart.Words(Digits(odd), middle.X, middle.Y, Alignment.MiddleCenter, padding: 0);
        }

        if (_curves.Rack.FirstOrDefault(place => place.Die == Choice.Best?.Die) is { Ring: { } ring } best)
        {
            _chart.Marks([best.X * _perMeter], [ring * _perMeter], MarkerShape.OpenCircle, 13);
        }
    }

    /// <summary>A triangle for every die, and as many names as have room, the best die first.</summary>
    private void Dies()
    {
        List<Box> taken = [];
        foreach (DiePlace place in _curves.Rack.OrderBy(place => place.Die == Choice.Best?.Die ? 0 : 1))
        {
            bool isBest = place.Die == Choice.Best?.Die;
            Spot at = new(_chart.Pixel(place.X * _perMeter, 0).X, 7);
            Spot mark = _chart.At(at);
            _chart.Marks([mark.X], [mark.Y], isBest ? MarkerShape.FilledTriangleUp : MarkerShape.OpenTriangleUp, 9);
            string name = DieChoiceKey.Short(place.Die.Name);
            double half = ChartKey.WidthOf(name) / 2 + 3;
            Box box = new(new(Math.Min(Math.Max(at.X, half), _chart.Size.X - half), 23), 2 * half, NameHeight);
            if (taken.TrueForAll(other => !box.Meets(other)))
            {
                taken.Add(box);
                Spot words = _chart.At(box.Center);
                _chart.Words(name, words.X, words.Y, Alignment.MiddleCenter, padding: 0);
            }
        }
    }

    /// <summary>Whether neither a line, a mark nor the edge of the paper meets a rectangle.</summary>
    private bool IsFree(Box box)
    {
        if (box.Left < 0 || box.Right > _chart.Size.X || box.Bottom < 0 || box.Top > _chart.Size.Y)
        {
            return false;
        }

        double tolerance = Choice.Tolerance!.Value.Meters;
        if (_wanted is { } wanted && _chart.Pixel(0, (wanted + tolerance) * _perMeter).Y > box.Bottom - 2
            && _chart.Pixel(0, (wanted - tolerance) * _perMeter).Y < box.Top + 2)
        {
            return false;
        }

        DiePlace[] places = _curves.IsSwept ? _curves.Swept : _curves.Rack;
        IEnumerable<Spot> obstacles = Line(places, place => place.Ring)
            .Concat(Line(places, place => place.Plain))
            .Concat(Line(_curves.Ranged, place => place.Interval?.Low.Meters))
            .Concat(Line(_curves.Ranged, place => place.Interval?.High.Meters))
            .Concat(_curves.Rings.Select(ring => Pixel(ring.X, ring.Diameter)));
        return !obstacles.Any(spot => box.Contains(spot, 8));
    }

    private IEnumerable<Spot> Line(DiePlace[] places, Func<DiePlace, double?> height) =>
        Runs(places, place => height(place) is not null)
            .SelectMany(run => Along([.. run.Select(place => Pixel(place.X, height(place)!.Value))]));

    private Spot Pixel(double x, double diameter) => _chart.Pixel(x * _perMeter, diameter * _perMeter);

    private static string Digits(RingPoint ring) => ring.Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The longest stretches of places that have something.</summary>
    private static IEnumerable<DiePlace[]> Runs(DiePlace[] places, Func<DiePlace, bool> has)
    {
        List<DiePlace> run = [];
        foreach (DiePlace place in places)
        {
            if (has(place))
            {
                run.Add(place);
                continue;
            }

            if (run.Count > 0)
            {
                yield return [.. run];
                run.Clear();
            }
        }

        if (run.Count > 0)
        {
            yield return [.. run];
        }
    }

    /// <summary>Places along a line, not further apart than a few pixels.</summary>
    private static IEnumerable<Spot> Along(Spot[] corners)
    {
        yield return corners[0];
        foreach ((Spot from, Spot to) in corners.Zip(corners.Skip(1), (from, to) => (from, to)))
        {
            int steps = (int)Math.Min(1000, Math.Ceiling((to - from).Length / 6));
            for (int i = 1; i <= steps; i++)
            {
                yield return from + (to - from) * ((double)i / steps);
            }
        }
    }
}
