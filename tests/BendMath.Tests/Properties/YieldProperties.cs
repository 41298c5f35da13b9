using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace BendMath.Tests.Properties;

public sealed class YieldProperties
{
    /// <summary>The yield read off a finished ring is the yield the ring was made with.</summary>
    [Property(MaxTest = 60)]
    public Property Yield_from_a_ring_is_the_yield_it_was_bent_with() => Prop.ForAll(
        Sold.Part.Select(part => Sold.Between(150, 450, part)).ToArbitrary(), Gen.Elements(Release.Free, Release.HeldFlat).ToArbitrary(),
        (yield, release) =>
        {
            EqualAngle angle =
                new(Length.FromMillimeters(30), Length.FromMillimeters(3),
                    AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
            BendRadius die = BendRadius.Inside(Length.FromMillimeters(240));
            foreach (StressStrainLaw law in Laws(yield))
            {
                FinishedRing ring = Analysis(law).LoadedTo(die).Release(release).Ring;
                BendAnalysis guess = Analysis(law.WithYield(Pressure.FromMegapascals(290)));
                Near.Relative(yield, guess.YieldFrom(die, BendRadius.Outside(ring.OutsideRadius), release).Megapascals, 1e-9,
                    law.ToString());
            }

            BendAnalysis Analysis(StressStrainLaw law) =>
                BendAnalysis.Of(angle.FlangeOut, new BarMaterial("steel", law, Density.FromKilogramsPerCubicMeter(7850)));
        });

    [Fact]
    public void A_ring_tighter_than_it_was_loaded_is_refused_by_name()
    {
        BendAnalysis analysis = BendAnalysis.Of(
            new SquareBar(Length.FromMillimeters(12)).Section,
            new BarMaterial("steel", new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(290)),
                Density.FromKilogramsPerCubicMeter(7850)));
        Assert.Throws<ArgumentOutOfRangeException>(
            "finished",
                () =>
                    analysis.YieldFrom(BendRadius.Inside(Length.FromMillimeters(240)), BendRadius.Inside(Length.FromMillimeters(239)),
                        Release.Free));
    }

    private static IEnumerable<StressStrainLaw> Laws(double yield)
    {
        Pressure modulus = Pressure.FromGigapascals(205);
        yield return new PerfectlyPlastic(modulus, Pressure.FromMegapascals(yield));
        yield return new LinearHardening(modulus, Pressure.FromMegapascals(yield), Pressure.FromMegapascals(1500));
        yield return new RambergOsgood(modulus, Pressure.FromMegapascals(yield), 12);
    }
}
