using BendMath.Cutting;
using BendMath.Forming.Bumps;
using BendMath.Layout.BentBars;
using BendMath.Measurement;
using BendMath.Sections.Outlines;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the pages on layout and on checking, compiled and run. What a page prints behind <c>//</c> is what the code gives.</summary>
public sealed class LayoutSnippets
{
    private static readonly BarMaterial Steel = new(
        "mild steel",
        new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500)),
        Density.FromKilogramsPerCubicMeter(7850));

    [Fact]
    public void Bent_bar()
    {
        BarMaterial steel = Steel;
        #region bent-bar
        var square = new SquareBar(Length.FromMillimeters(12)).Section;
        var bending = BendAnalysis.Of(square, steel);
        var ring = bending.LoadedFor(BendRadius.Inside(Length.FromMillimeters(100)), Release.HeldFlat).Release(Release.HeldFlat).Ring;
        var quarter = BarPart.BendLeft(ring, square, ArcExtent.Of(Angle.FromDegrees(90)));
        var ends = new EndAllowance(start: Length.FromMillimeters(30), end: Length.FromMillimeters(30), trim: Length.Zero);

        // A bracket: two quarter bends with straights between. The bender needs 130 mm of straight bar on each side of a bend.
        var bracket = BentBar.For(
            [BarPart.Straight(Length.FromMillimeters(200)), quarter, BarPart.Straight(Length.FromMillimeters(150)), quarter, BarPart.Straight(Length.FromMillimeters(200))],
            ends, kerf: Length.FromMillimeters(2), grip: Length.FromMillimeters(130));
        Console.WriteLine(bracket); // 2 bends: developed 883.01 mm, blank 943.01 mm
        Console.WriteLine(bracket.Bends[0]); // step 1: from 230 to 396.5 mm, bend of 90° left at 100 mm inside radius
        Console.WriteLine(bracket.Bends[1]); // step 2: from 546.5 to 713 mm, bend of 90° left at 100 mm inside radius
        Console.WriteLine($"end of the bar still straight: {bracket.Bends[1].IsEndFree}"); // end of the bar still straight: True
        Console.WriteLine($"x {bracket.AlongX}, y {bracket.AlongY}"); // x 0 to 312 mm, y -12 to 362 mm
        #endregion
        Check("bent-bar", bracket.ToString(), bracket.Bends[0].ToString(), bracket.Bends[1].ToString(), $"end of the bar still straight: {bracket.Bends[1].IsEndFree}", $"x {bracket.AlongX}, y {bracket.AlongY}");
    }

    [Fact]
    public void Holes()
    {
        BarMaterial steel = Steel;
        #region holes
        var angle = new EqualAngle(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));
        var rim = BendAnalysis.Of(angle.FlangeOut, steel).LoadedFor(BendRadius.InsideDiameter(Length.FromMillimeters(500)), Release.Free).Release(Release.Free).Ring;
        var layout = DevelopedLayout.For(
            rim, angle.FlangeOut, ArcExtent.FullRing,
            new EndAllowance(Length.FromMillimeters(130), Length.FromMillimeters(130), Length.FromMillimeters(20)), kerf: Length.FromMillimeters(2));

        // Four holes of 6 mm in the radial leg, 18 mm from its inside edge: where to drill them in the straight bar?
        foreach (var degrees in new[] { 45, 135, 225, 315 })
        {
            var place = layout.PlaceFromAngle(Angle.FromDegrees(degrees), fromInside: Length.FromMillimeters(18), axial: Length.FromMillimeters(1.5));
            Console.WriteLine(place);
        }

        var hole = layout.PlaceFromAngle(Angle.FromDegrees(45), Length.FromMillimeters(18), Length.FromMillimeters(1.5));
        Console.WriteLine(hole); // 329.41 mm along the bar: 45° at radius 267.91 mm, strain 5.52 %
        Console.WriteLine($"{hole.HoleLength(Length.FromMillimeters(6)).Millimeters:F3} mm along the bar after bending"); // 6.331 mm along the bar after bending

        // Both ends cut at once where they overlap, closed to a weld gap of 1 mm.
        Console.WriteLine(RingClosure.For(layout, JointPreparation.CutTogether(Length.FromMillimeters(1)))); // both ends cut together: 1593.33 mm from cut to cut, gap 2 mm, diameter -0.32 mm at a root opening of 1 mm
        #endregion
        Check("holes", hole.ToString(), FormattableString.Invariant($"{hole.HoleLength(Length.FromMillimeters(6)).Millimeters:F3} mm along the bar after bending"), RingClosure.For(layout, JointPreparation.CutTogether(Length.FromMillimeters(1))).ToString());
    }

    [Fact]
    public void Cut_list()
    {
#pragma warning disable xUnit1051 // the page shows the call without a token
        #region cut-list
        var list = CutList.For(
            [
                new CutPiece("rim", Length.FromMillimeters(1880), quantity: 5),
                new CutPiece("hoop", Length.FromMillimeters(1120), quantity: 8),
                new CutPiece("brace", Length.FromMillimeters(640), quantity: 6),
            ],
            [new BarSupply(Length.FromMeters(6)), new BarSupply(Length.FromMeters(3), quantity: 2)],
            kerf: Length.FromMillimeters(2), leastUsefulOffcut: Length.FromMillimeters(300));
        foreach (var bar in list.Groups[0].Bars)
        {
            Console.WriteLine(bar);
        }

        Console.WriteLine(list); // 4 bars, 24000 mm; no list takes less
        #endregion
#pragma warning restore xUnit1051
        Check("cut-list", list.ToString());
    }

    [Fact]
    public void Checking()
    {
        #region checking
        // A straightedge of 400 mm, read to 1 mm, shows a rise of 100.6 mm, read to 0.5 mm.
        var radius = ChordAndRise.RadiusOf(
            chord: Length.FromMillimeters(400), rise: Length.FromMillimeters(100.6), chordError: Length.FromMillimeters(1), riseError: Length.FromMillimeters(0.5));
        Console.WriteLine(radius); // 249.11 ± 1.24 mm
        Console.WriteLine(RingVerdict.Of(radius.Twice, wanted: Length.FromMillimeters(500), tolerance: Length.FromMillimeters(2))); // Cannot be told: 1.79 mm too tight with an error of 2.48 mm, and 2 mm is accepted. Measure with an error of at most 0.21 mm.

        // A tape around the closed ring is better.
        var tape = MeasuredLength.DiameterByTapeAround(Length.FromMillimeters(1762), readingError: Length.FromMillimeters(1), tapeThickness: Length.FromMillimeters(0.2));
        var verdict = RingVerdict.Of(tape, wanted: Length.FromMillimeters(560), tolerance: Length.FromMillimeters(2));
        Console.WriteLine(verdict); // Good: 0.66 mm too wide, within 2 mm even with the error of 0.32 mm.
        Console.WriteLine($"chance of a good ring {verdict.ChanceWithin.Percent:F0} %"); // chance of a good ring 100 %
        #endregion
        Check("checking", radius.ToString(), RingVerdict.Of(radius.Twice, Length.FromMillimeters(500), Length.FromMillimeters(2)).ToString(), verdict.ToString(), FormattableString.Invariant($"chance of a good ring {verdict.ChanceWithin.Percent:F0} %"));
    }

    [Fact]
    public void Fit_and_correct()
    {
        BarMaterial steel = Steel;
        #region fit-and-correct
        // Points on the inside face of an arc, in millimeters from a corner of the bench (invented).
        double[] x = [12.4, 61.5, 130.1, 212.1, 298.5, 380.0, 448.5, 496.9];
        double[] y = [161.7, 90.2, 38.1, 11.3, 11.1, 38.6, 90.8, 161.9];
        var circle = FittedCircle.Of([.. x.Zip(y, (right, up) => new OutlinePoint(Length.FromMillimeters(right), Length.FromMillimeters(up)))]);
        Console.WriteLine(circle); // radius 267.369 ± 0.649 mm from 8 points over 130°, 0.54 mm out of round

        // What next? The die that left it is stamped 250 mm at the inside of the bar, and 262 mm was wanted.
        var square = new SquareBar(Length.FromMillimeters(12)).Section;
        var measured = new MeasuredRing(
            new Die("A", Length.FromMillimeters(250), ReferenceFace.InsideOfBar), BendAnalysis.Of(square, steel), BendRadius.Inside(circle.Radius), Release.Free);
        Console.WriteLine(BendCorrection.For(measured, wanted: BendRadius.Inside(Length.FromMillimeters(262)))); // Bend it more: 1.83 % more curvature under load, a stamp of 245.39 mm instead of 250 mm. This one can be bent again on it.
        #endregion
        Check("fit-and-correct", circle.ToString(), BendCorrection.For(measured, BendRadius.Inside(Length.FromMillimeters(262))).ToString());
    }

    /// <summary>What stands behind <c>WriteLine(…); //</c> in a region is what was printed.</summary>
    private static void Check(string region, params string[] printed)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Documentation", "LayoutSnippets.cs"));
        Assert.Equal(
            lines.Select(line => line.Trim()).SkipWhile(line => line != "#region " + region).TakeWhile(line => line != "#endregion")
                .Where(line => line.Contains("; // ", StringComparison.Ordinal) && line.Contains("WriteLine", StringComparison.Ordinal))
                .Select(line => line[(line.IndexOf("; // ", StringComparison.Ordinal) + 5)..]),
            printed);
    }
}
