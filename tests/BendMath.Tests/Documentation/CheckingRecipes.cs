using BendMath.Distortion;
using BendMath.Forming.Variation;
using BendMath.Measurement;
using BendMath.Stock.Tolerances;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on joining, checking and method.</summary>
public sealed class CheckingRecipes : RecipeSnippets
{
    [Fact]
    public void Cold_or_hot()
    {
        #region q28
        // Cold, the outside must bear this. A hoop, a handle, and the eye of a scroll:
        var bar = BendAnalysis.Of(new SquareBar(Mm(12)).Section, Steel);
        foreach (double radius in new[] { 300, 60, 15 })
        {
            var loaded = bar.LoadedTo(BendRadius.Inside(Mm(radius)));
            var risk = DistortionReport.Of(loaded).Find(DistortionCheck.OuterFiber)!.Level;
            double strain = loaded.OuterFiberStrain.Percent;
            Console.WriteLine($"{radius} mm inside: {strain:F1} %, risk of a crack {risk}");
        }

        //   300 mm inside: 2.0 %, risk of a crack Low
        //   60 mm inside: 9.1 %, risk of a crack Low
        //   15 mm inside: 28.6 %, risk of a crack High
        #endregion
        Promised("q28");
    }

    [Fact]
    public void Check_the_radius()
    {
        #region q29
        // Inside radius 300 mm, chord 400 mm: the rise, and its band for 1 mm of radius.
        var rise = ChordAndRise.RiseFor(Mm(300), chord: Mm(400));
        var band = ChordAndRise.RiseBand(Mm(300), tolerance: Mm(1), chord: Mm(400));
        Console.WriteLine($"rise {rise.Millimeters:F2} mm"); // rise 76.39 mm
        Console.WriteLine($"from {band.Low.Millimeters:F2} to {band.High.Millimeters:F2} mm");
        //   from 76.05 to 76.74 mm

        // Read: 76.0 mm, to half a millimeter.
        var radius = ChordAndRise.RadiusOf(Mm(400), Mm(76), chordError: Mm(0.5), Mm(0.5));
        Console.WriteLine(radius); // 301.16 ± 1.62 mm
        Console.WriteLine(RingVerdict.Of(radius.Twice, wanted: Mm(600), tolerance: Mm(4)));

        //   Cannot be told: 2.32 mm too wide with an error of 3.24 mm, and 4 mm is accepted.
        //     Measure with an error of at most 1.68 mm.

        // Around the outside with a tape, or with a wheel that is rolled along it.
        var around = MeasuredLength.DiameterByTapeAround(Mm(1924), Mm(1), tapeThickness: Mm(0.2));
        Console.WriteLine(around); // 612.23 ± 0.32 mm
        #endregion
        Promised("q29");
    }

    [Fact]
    public void Close_the_joint()
    {
        #region q30
        var flat = new FlatBar(Mm(30), Mm(6)).EasyWay;
        var ring = RingOf(BendAnalysis.Of(flat, Steel), BendRadius.InsideDiameter(Mm(600)));
        var ends = new EndAllowance(start: Mm(60), end: Mm(60), trim: Mm(20));
        var layout = DevelopedLayout.For(ring, flat, ArcExtent.FullRing, ends, kerf: Mm(2));
        Console.WriteLine(RingClosure.For(layout, JointPreparation.CutOneByOne(Mm(2))));
        Console.WriteLine(RingClosure.For(layout, JointPreparation.CutTogether(Mm(1))));

        //   ends cut one by one: 1901.81 mm from cut to cut, gap 2 mm,
        //     diameter 0 mm at a root opening of 2 mm
        //   both ends cut together: 1901.81 mm from cut to cut, gap 2 mm,
        //     diameter -0.32 mm at a root opening of 1 mm

        // An examination's example: a strip of 40 mm, 1.2 mm thick, closed to a tube and let go.
        var alloy = Yielding("alloy", modulus: MPa(70_000), yieldStress: MPa(250));
        var sheet = new FlatBar(Mm(100), Mm(1.2)).EasyWay;
        var closed = BendRadius.Centroid(Mm(40 / (2 * Math.PI)));
        var bending = BendAnalysis.Of(sheet, alloy, StressState.PlaneStrain);
        var released = bending.LoadedTo(closed).Release(Release.Free);
        Console.WriteLine($"gap {released.EndGapOfClosedRing.Millimeters:F2} mm"); // gap 2.52 mm
        #endregion
        Promised("q30");
    }

    [Fact]
    public void How_tight()
    {
#pragma warning disable xUnit1051 // the page shows the call without a token
        #region q31
        var flat = new FlatBar(Mm(30), Mm(6));
        var bar = BendAnalysis.Of(flat.EasyWay, Steel);
        var wanted = BendRadius.InsideDiameter(Mm(600));
        var needed = bar.LoadedFor(wanted, Release.Free).InsideRadius;
        var die = new Die("made to measure", needed, ReferenceFace.InsideOfBar);

        // Another bar may yield from 260 to 340 MPa and be as thick as EN 10058 lets it be.
        var scatter = new InputVariation(
            new PressureRange(MPa(260), MPa(340)), mill: MillTolerance.En10058(flat));
        var model = new WrapBending();
        var range = RingBounds.Of(model, bar, die, Release.Free, FullTurn, scatter).InsideDiameter!;
        Console.WriteLine($"{range.Low.Millimeters:F0} to {range.High.Millimeters:F0} mm");
        //   579 to 636 mm
        var sample = MonteCarloSample.Of(model, bar, die, Release.Free, FullTurn, scatter);
        foreach (double tolerance in new[] { 2, 5, 10 })
        {
            var chance = sample.ChanceWithin(wanted, Mm(tolerance));
            Console.WriteLine($"within {tolerance} mm: {chance.Percent:F0} of 100 bars");
        }

        //   within 2 mm: 11 of 100 bars
        //   within 5 mm: 29 of 100 bars
        //   within 10 mm: 55 of 100 bars
        #endregion
#pragma warning restore xUnit1051
        Promised("q31");
    }

    [Fact]
    public void Slit_and_weld()
    {
        #region q32
        // A rim of 50 x 50 x 5 mm, 400 mm inside, leg out: is the leg too long to bend?
        var least = DistortionSettings.Default.LeastRadiusFor(radialLeg: Mm(50));
        Console.WriteLine($"bend it from {least.Millimeters:F0} mm inside radius on");
        //   bend it from 333 mm inside radius on

        // In two parts: the upright leg is a flat bent the easy way, the other is cut from plate.
        var upright = new FlatBar(Mm(50), Mm(5)).EasyWay;
        var hoop = RingOf(BendAnalysis.Of(upright, Steel), BendRadius.InsideDiameter(Mm(400)));
        var blank = hoop.BlankLengthFor(FullTurn).Millimeters;
        Console.WriteLine($"upright: cut {blank:F0} mm"); // upright: cut 1272 mm
        Console.WriteLine(
            $"plate: from {hoop.OutsideDiameter.Millimeters:F0} to 500 mm diameter");
        //   plate: from 410 to 500 mm diameter

        // Or slit to the heel: the toe opens by this much in all, shared among 16 slits.
        double opens = (Math.PI * 500) - blank;
        Console.WriteLine($"{opens:F0} mm, {opens / 16:F1} mm each"); // 298 mm, 18.7 mm each
        #endregion
        Promised("q32");
    }
}
