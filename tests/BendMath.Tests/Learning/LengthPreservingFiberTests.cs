using BendMath.Learning;
using BendMath.Measurement;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Learning;

/// <summary>The fiber that kept its length, from bar and ring.</summary>
public sealed class KeptFiberTests
{
    /// <summary>
    /// Blanks of the model's own length around the model's own rings give its fiber back; 1 mm more on a full ring is 1/(2π) mm.
    /// </summary>
    [Fact]
    public void Bar_before_and_ring_after_give_the_fiber()
    {
        MeasuredRing[] rings =
            [Marked("A", 0), Marked("B", 1), Marked("C", 2), new(Shop.Die("D"), Workshop.RimSteel, Workshop.Inside(360), Release.Free)];
        LengthPreservingFiber fiber = LengthPreservingFiber.Of(rings, Workshop.Rim)!;
        Assert.Equal(3, fiber.Rings.Count);
        Near.Absolute(1 / (2 * Math.PI), (fiber.FromInside - fiber.ModeledFromInside).Millimeters, 1e-6, "mean difference");
        double[] measured = [.. rings.Take(3).Select(ring => ring.KeptFiberFromInside!.Value.Millimeters)];
        Near.Relative(MathNet.Numerics.Statistics.Statistics.StandardDeviation(measured), fiber.Scatter!.Value.Millimeters, 1e-9);
        Assert.Equal(measured.Min(), fiber.Lowest.Millimeters, 1e-9);
        Assert.Equal(measured.Max(), fiber.Highest.Millimeters, 1e-9);

        // t₀.₉₇₅ of 2 degrees of freedom, 4.303 (tables, from memory).
        Near.Relative(2 * 4.303 * fiber.Scatter.Value.Millimeters * Math.Sqrt(4.0 / 3),
            (fiber.Interval!.High - fiber.Interval.Low).Millimeters, 2e-4);
        FinishedRing ring = rings[1].Ring;
        Near.Relative(2 * Math.PI * (ring.InsideRadius + fiber.FromInside).Millimeters,
            fiber.BlankLengthFor(ring, Angle.FromDegrees(360)).Millimeters, 1e-12);
    }

    [Fact]
    public void One_ring_shows_no_scatter_and_none_gives_nothing()
    {
        LengthPreservingFiber one = LengthPreservingFiber.Of([Marked("A", 0.5)], Workshop.Rim)!;
        Assert.Null(one.Interval);
        Assert.Null(one.Scatter);
        Assert.Contains("one ring shows no scatter", one.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("0.5 mm shorter on a full ring.", one.Sentence, StringComparison.Ordinal);
        Assert.Null(LengthPreservingFiber.Of(Shop.Rings(("A", 0.1)), Workshop.Rim));
        Assert.Null(LengthPreservingFiber.Of([Marked("A", 0)], new FlatBar(Length.FromMillimeters(20), Length.FromMillimeters(5)).EasyWay));
    }

    private static MeasuredRing Marked(string die, double millimetersMore)
    {
        FinishedRing ring = Shop.Wrap.Form(Workshop.RimSteel, Shop.Die(die)).RingWhen(Release.Free);
        Length bar = ring.BlankLengthFor(Angle.FromDegrees(360)) + Length.FromMillimeters(millimetersMore);
        return new(Shop.Die(die), Workshop.RimSteel, RingReading.Of(BendRadius.InsideDiameter(ring.InsideDiameter)), Release.Free,
            new(bar, Angle.FromDegrees(360)));
    }
}
