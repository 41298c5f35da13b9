using BendMath.Forming.Variation;
using BendMath.Learning;
using BendMath.Measurement;
using BendMath.Tests.Forming;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>More tolerance, more chance: by measured rings, by rings drawn at random, and by one measurement and its error.</summary>
public sealed class ChanceProperties
{
    private static readonly Angle Turn = Angle.FromDegrees(360);

    private static readonly MeasuredRing[] Rings =
    [
        .. from pair in new[] { ("A", 193.0), ("B", 243), ("B", 246), ("C", 291), ("D", 349) }
           select new MeasuredRing(Workshop.Rack.Find(pair.Item1)!, Workshop.RimSteel, Workshop.Inside(pair.Item2), Release.Free),
    ];

    private static readonly DiePrediction Forecast =
        RingFit.Of(Rings, Workshop.RimSteel, new WrapBending()).Forecast(Workshop.Rack.Find("B")!, Release.Free);

    private static readonly MonteCarloSample Sample = MonteCarloSample.Of(
        new WrapBending(), Workshop.RimSteel, Workshop.Rack.Find("B")!, Release.Free, Turn,
            new(Workshop.Range(235, 360), curvature: Ratio.FromPercent(2)), count: 500, cancel: CancellationToken.None);

    [Property]
    public Property More_tolerance_more_chance() => Prop.ForAll(
        Gen.Choose(-200, 200).Select(off => off / 10.0).ToArbitrary(), Gen.Choose(1, 400).Select(i => i / 10.0).ToArbitrary(),
        Gen.Choose(1, 400).Select(i => i / 10.0).ToArbitrary(), (off, tolerance, more) =>
        {
            BendRadius wanted = Workshop.Inside(Forecast.Ring!.InsideRadius.Millimeters + off);
            Length less = Length.FromMillimeters(tolerance), wider = Length.FromMillimeters(tolerance + more);
            double byRings = Forecast.ChanceWithin(wanted, less)!.Value.DecimalFractions;
            double byRingsMore = Forecast.ChanceWithin(wanted, wider)!.Value.DecimalFractions;
            double byDraws = Sample.ChanceWithin(wanted, less).DecimalFractions;
            double byDrawsMore = Sample.ChanceWithin(wanted, wider).DecimalFractions;
            MeasuredLength measured = new(Length.FromMillimeters(500 + off), Length.FromMillimeters(2));
            double byReading = RingVerdict.Of(measured, Length.FromMillimeters(500), less).ChanceWithin.DecimalFractions;
            double byReadingMore = RingVerdict.Of(measured, Length.FromMillimeters(500), wider).ChanceWithin.DecimalFractions;
            Assert.True(byRingsMore > byRings, $"by measured rings {byRings} at ±{less}, {byRingsMore} at ±{wider}");
            Assert.True(byDrawsMore >= byDraws, $"by draws {byDraws} at ±{less}, {byDrawsMore} at ±{wider}");
            Assert.True(byReadingMore >= byReading - 1e-15, $"by a reading {byReading} at ±{less}, {byReadingMore} at ±{wider}");
            Assert.InRange(byRings, 0, 1);
        });
}
