using BendMath.Measurement;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>Rings an invented shop could have measured: what a model says, times a ratio of curvature.</summary>
internal static class Shop
{
    public static WrapBending Wrap { get; } = new();

    /// <summary>A ring on a die whose curvature is that of the model times exp(y).</summary>
    public static MeasuredRing Ring(Die die, BendAnalysis bar, double y, FormingModel? model = null, string? note = null)
    {
        FinishedRing modeled = (model ?? Wrap).Form(bar, die).RingWhen(Release.Free);
        double fiber = modeled.LengthPreservingFiberFromInside.Meters;
        double inside = (modeled.InsideRadius.Meters + fiber) * Math.Exp(-y) - fiber;
        return new(die, bar, RingReading.Of(BendRadius.InsideDiameter(Length.FromMeters(2 * inside))), Release.Free, note: note);
    }

    public static Die Die(string name) => Workshop.Rack.Find(name)!;

    /// <summary>Inside radius of the wrapped rim over its depth.</summary>
    public static double Variable(Die die) => Wrap.Form(Workshop.RimSteel, die).RingWhen(Release.Free).InsideRadius / Workshop.Rim.Depth;

    public static MeasuredRing[] Rings(params (string Die, double Y)[] rings) =>
        [.. rings.Select(ring => Ring(Die(ring.Die), Workshop.RimSteel, ring.Y))];
}
