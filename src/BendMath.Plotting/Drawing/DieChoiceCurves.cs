using BendMath.Learning;
using UnitsNet;

namespace BendMath.Plotting.Drawing;

/// <summary>One place on the axis of dies: what comes off there, in meters.</summary>
internal sealed class DiePlace(double x, Die die, FormedBend? formed, double? ring, double? plain, LengthRange? interval)
{
    /// <summary>Place on the axis.</summary>
    public double X => x;

    /// <summary>A die of the rack, or one that would stand there.</summary>
    public Die Die => die;

    /// <summary>Inside diameter, or null when no ring comes off.</summary>
    public double? Ring => ring;

    /// <summary>The same by the model without its correction.</summary>
    public double? Plain => plain;

    /// <summary>Inside diameters to expect, or null.</summary>
    public LengthRange? Interval => interval;

    /// <summary>Whether the fit is carried on beyond the rings it is from.</summary>
    public bool IsBeyond { get; } = formed is not null && formed.Advisories.Any(advisory => advisory.Code == "outside-measured-radii");
}

/// <summary>A measured ring that may stand beside what is predicted, in meters.</summary>
internal sealed class RingPoint(double x, double diameter, int number, bool isOdd)
{
    public double X => x;

    public double Diameter => diameter;

    public int Number => number;

    public bool IsOdd => isOdd;
}

/// <summary>What the figure of an choice shows, before it is laid out.</summary>
internal sealed class DieChoiceCurves
{
    private const int Even = 24;

    private readonly DieChoice _choice;

    private readonly Die _first;

    public DieChoiceCurves(DieChoice choice, RingFit? fit)
    {
        _choice = choice;
        FormingModel model = choice.Model;
        Die[] rack = [.. choice.Predictions.Select(one => one.Die)];
        _first = rack[0];
        IsSwept = rack.All(IsAlike);
        MeasuredRing[] shown = [.. model.Evidence.Where(IsComparable)];
        NotShown = model.Evidence.Count - shown.Length;
        ReferenceFace[] faces = [.. rack.Concat(shown.Select(ring => ring.Die)).Select(model.FaceOf).Distinct()];
        IsByStamp = faces.Length == 1;
        Rings = [.. shown.Select(ring => new RingPoint(
            X(ring.Die),
            ring.Ring.InsideDiameter.Meters,
            model.Evidence.TakeWhile(one => !ReferenceEquals(one, ring)).Count() + 1,
            ReferenceEquals(fit?.OddRing?.Ring, ring)))];
        Rack = [.. choice.Predictions.Select(one => Predicted(X(one.Die), one)).OrderBy(place => place.X)];
        double[] places = [.. Rack.Select(place => place.X).Concat(Rings.Select(ring => ring.X))];
        double span = places.Max() - places.Min();
        double margin = span > 0 ? 0.06 * span : 0.1 * Math.Abs(places[0]);
        Low = places.Min() > 0 ? Math.Max(places.Min() - margin, 0.2 * places.Min()) : places.Min() - margin;
        High = places.Max() + margin;
        bool isCheap = choice.Predictions.All(one => one.IsIntervalMeasured || one.Ring is null);
        HashSet<double> ranged = [.. Rack.Select(place => place.X), Low, High];
        Swept = IsSwept
            ? [.. Enumerable.Range(1, Even - 1).Select(i => Low + (High - Low) * i / Even).Concat(places).Concat([Low, High]).Where(x => x >= 1e-4).Distinct().OrderBy(x => x)
                .Select(x => Between(x, isCheap || ranged.Contains(x)))]
            : [];
        Ranged = IsSwept ? [.. Swept.Where(place => isCheap || ranged.Contains(place.X))] : Rack;
    }

    /// <summary>Whether anything can stand between two dies of the rack.</summary>
    public bool IsSwept { get; }

    /// <summary>Whether places are stamps; otherwise radii of the inside of the bar, because the stamps mean different faces.</summary>
    public bool IsByStamp { get; }

    public double Low { get; }

    public double High { get; }

    /// <summary>The dies of the rack, from the smallest on.</summary>
    public DiePlace[] Rack { get; }

    /// <summary>Places along the lines, from left to right.</summary>
    public DiePlace[] Swept { get; }

    /// <summary>
    /// Those of them where an interval was asked for: bounds take a search each, so they stand at the dies of the rack and at both ends
    /// only.
    /// </summary>
    public DiePlace[] Ranged { get; }

    public RingPoint[] Rings { get; }

    /// <summary>Measured rings behind the model that cannot stand beside this bar.</summary>
    public int NotShown { get; }

    private bool IsAlike(Die die) => die.Mate == _first.Mate && die.NoseRadius?.Meters == _first.NoseRadius?.Meters;

    private bool IsComparable(MeasuredRing ring) =>
        ring.Release == _choice.Release && ring.IsOf(_choice.Analysis.Section) && ring.IsOf(_choice.Analysis.Law)
        && ring.Analysis.Material.UnloadingShare.DecimalFractions.Equals(_choice.Analysis.Material.UnloadingShare.DecimalFractions)
            && IsSwept && IsAlike(ring.Die);

    private double X(Die die) =>
        die.StampedRadius.Meters - (IsByStamp ? 0 : _choice.Model.FaceOf(die).OffsetFor(_choice.Analysis.Section).Meters);

    private DiePlace Between(double x, bool isRanged)
    {
        Die die =
            new("between", Length.FromMeters(x), IsByStamp ? _first.Face : ReferenceFace.InsideOfBar, noseRadius: _first.NoseRadius,
                mate: _first.Mate);
        DieChoice choice = _choice;
        if (isRanged)
        {
            return Predicted(x, DiePrediction.Of(choice.Model, _choice.Analysis, die, choice.Release, _choice.Scatter));
        }

        FormedBend? formed = Formed(choice.Model, die);
        return new(x, die, formed, Diameter(formed), Plain(die), null);
    }

    private DiePlace Predicted(double x, DiePrediction forecast) =>
        new(x, forecast.Die, forecast.Formed, forecast.Ring?.InsideDiameter.Meters, Plain(forecast.Die), forecast.Interval);

    private double? Plain(Die die) => _choice.Model.Basis is { } basis ? Diameter(Formed(basis, die)) : null;

    private FormedBend? Formed(FormingModel model, Die die) =>
        model.TryForm(_choice.Analysis, die, out FormedBend? formed, out _) ? formed : null;

    private double? Diameter(FormedBend? formed) =>
        formed is null || formed.IsStraightWhen(_choice.Release) ? null
            : formed.RingWhen(_choice.Release).InsideDiameter.Meters;
}
