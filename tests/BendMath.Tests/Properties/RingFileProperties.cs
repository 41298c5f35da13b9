using BendMath.Csv;
using BendMath.Forming.Pairs;
using BendMath.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

/// <summary>What is measured is kept: any die and any softness on release come back from a file as they were, digit for digit.</summary>
public sealed class RingFileProperties
{
    private static readonly FlatBar Flat = new(Length.FromMillimeters(25), Length.FromMillimeters(5));

    private static Gen<Length> Lengths { get; } = from part in Sold.Part select Length.FromMeters(1e-4 * Math.Pow(1e4, part));

    private static Gen<Length?> Maybe { get; } = Gen.OneOf(Gen.Constant<Length?>(null), from length in Lengths select (Length?)length);

    private static Gen<MatingDie?> Mates { get; } = Gen.OneOf(
        Gen.Constant<MatingDie?>(null),
        from radius in Lengths
        from share in Sold.Part
        from shims in Maybe
        select (MatingDie?)MatingDie.OfFace(radius, radius * Sold.Between(0.05, 0.99, share), shims),
        from span in Lengths
        from rise in Sold.Part
        from support in Sold.Part
        from shims in Maybe
        select (MatingDie?)MatingDie.OfSupports(span, span * Sold.Between(0.05, 0.99, rise), span * Sold.Between(0.02, 0.9, support),
            shims));

    private static Gen<Die> Dies { get; } =
        from stamp in Sold.Part
        from offset in Maybe
        from face in Maybe
        from nose in Maybe
        from mate in Mates
        select new Die("A", Length.FromMeters(1.2 + stamp),
            offset is { } distance ? ReferenceFace.OffsetBy(distance) : ReferenceFace.OutsideOfBar, face, nose, mate);

    [Property(MaxTest = 200)]
    public Property Any_die_and_softness_come_back() => Prop.ForAll(Dies.ToArbitrary(), Sold.Part.ToArbitrary(), (die, part) =>
    {
        BarMaterial soft =
            new BarMaterial("metal", new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(280)),
                Density.FromKilogramsPerCubicMeter(7850))
            .WithSofterUnloading(Ratio.FromDecimalFractions(Sold.Between(0.5, 1, part)));
        MeasuredRing ring = new(die, BendAnalysis.Of(Flat.EasyWay, soft), BendRadius.Inside(Length.FromMillimeters(250)), Release.Free);
        IReadOnlyList<MeasuredRing>[] read =
        [
            MeasuredRingFile.Read(MeasuredRingFile.Write([ring])).Rings,
            MeasuredRingCsv.Read(MeasuredRingCsv.Write([ring])).Rings,
            MeasuredRingCsv.Read(MeasuredRingCsv.Write([ring], decimalComma: true)).Rings,
        ];
        Assert.All(read, rings =>
        {
            MeasuredRing again = Assert.Single(rings);
            Assert.Equal(die, again.Die);
            Assert.Equal(soft, again.Analysis.Material);
        });
    });
}
