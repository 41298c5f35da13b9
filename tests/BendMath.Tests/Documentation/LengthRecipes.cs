using BendMath.Bending.NeutralAxes;
using BendMath.Cutting;
using BendMath.Forming.ThreePoint;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on length and layout.</summary>
public sealed class LengthRecipes : RecipeSnippets
{
    [Fact]
    public void Length_of_a_ring()
    {
        #region q1
        var wanted = BendRadius.InsideDiameter(Mm(600));
        double Blank(OrientedSection bar) =>
            RingOf(BendAnalysis.Of(bar, Steel), wanted).BlankLengthFor(FullTurn).Millimeters;

        Console.WriteLine($"flat 30 x 6: {Blank(new FlatBar(Mm(30), Mm(6)).EasyWay):F1} mm");
        //   flat 30 x 6: 1903.8 mm
        Console.WriteLine($"square 12: {Blank(new SquareBar(Mm(12)).Section):F1} mm");
        //   square 12: 1922.7 mm
        Console.WriteLine($"round 12: {Blank(new RoundBar(Mm(12)).Section):F1} mm");
        //   round 12: 1922.7 mm
        Console.WriteLine(
            $"by hand: {Math.PI * (600 + 6):F1} mm and {Math.PI * (600 + 12):F1} mm");
        //   by hand: 1903.8 mm and 1922.7 mm

        var strip = BendAnalysis.Of(new FlatBar(Inches(1), Inches(0.25)).EasyWay, Steel);
        var hoop = RingOf(strip, BendRadius.OutsideDiameter(Inches(20)));
        Console.WriteLine(
            $"1 x 1/4 in, 20 in outside: {hoop.BlankLengthFor(FullTurn).Inches:F2} in");
        //   1 x 1/4 in, 20 in outside: 62.05 in
        #endregion
        Promised("q1");
    }

    [Fact]
    public void Which_diameter()
    {
        #region q2
        var bar = BendAnalysis.Of(new FlatBar(Mm(30), Mm(6)).EasyWay, Steel);
        double Blank(BendRadius wanted) =>
            RingOf(bar, wanted).BlankLengthFor(FullTurn).Millimeters;

        Console.WriteLine($"600 mm inside: {Blank(BendRadius.InsideDiameter(Mm(600))):F1} mm");
        //   600 mm inside: 1903.8 mm
        Console.WriteLine($"600 mm mean: {Blank(BendRadius.CentroidDiameter(Mm(600))):F1} mm");
        //   600 mm mean: 1885.0 mm
        Console.WriteLine($"600 mm outside: {Blank(BendRadius.OutsideDiameter(Mm(600))):F1} mm");
        //   600 mm outside: 1866.1 mm
        #endregion
        Promised("q2");
    }

    [Fact]
    public void Ends_and_trim()
    {
        #region q3
        var bar = BendAnalysis.Of(new FlatBar(Mm(30), Mm(6)).EasyWay, Steel);
        var bender = new ThreePointSetup(halfSpan: Mm(60), noseRadius: Mm(10));
        var pinching = new IncrementalThreePointBending(bender);
        var stroke = pinching.StrokeFor(bar, BendRadius.InsideDiameter(Mm(600)), Release.Free);
        var formed = pinching.FormAtStroke(bar, stroke!.Value);

        var ends = EndAllowance.For(formed, trim: Mm(20));
        Console.WriteLine(ends); // 60 mm at the start, 60 mm at the end, 20 mm trim
        var ring = formed.RingWhen(Release.Free);
        var layout = DevelopedLayout.For(ring, bar.Section, ArcExtent.FullRing, ends, kerf: Mm(2));
        Console.WriteLine(layout); // full ring: developed 1903.81 mm, blank 2043.81 mm
        var (first, last) = (layout.ArcStartMark.Millimeters, layout.ArcEndMark.Millimeters);
        Console.WriteLine($"marks at {first:F0} and {last:F0} mm");
        //   marks at 60 and 1964 mm
        #endregion
        Promised("q3");
    }

    [Fact]
    public void Angle_ring()
    {
        #region q4
        // In print: a ring of 3 x 3 x 3/8 in for a stand-pipe of 20 ft.
        var pipe = new EqualAngle(Inches(3), Inches(0.375), AngleFillets.Sharp);
        double Rule(FlangeDirection leg) => pipe.HandbookBlankLength(Inches(240), leg).Inches;
        Console.WriteLine(
            $"leg in {Rule(FlangeDirection.In):F2} in, leg out {Rule(FlangeDirection.Out):F2} in");
        //   leg in 749.66 in, leg out 758.30 in

        // A rim of 30 x 30 x 3 mm, leg out, loaded to 250 mm inside radius.
        var angle = new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(root: Mm(5), toe: Mm(2.5)));
        var bar = BendAnalysis.Of(angle.FlangeOut, Steel);
        var answers = NeutralAxisAnswers.For(bar, BendRadius.Inside(Mm(250)));
        NeutralAxisAnswer[] shown =
        [
            answers.Shortest,
            answers.Find(NeutralAxisMethod.ReleasedFree)!,
            answers.Find(NeutralAxisMethod.AngleRule)!,
            answers.Longest,
        ];
        foreach (var answer in shown)
        {
            Console.WriteLine($"{answer.Name}: {answer.BlankLength.Millimeters:F0} mm");
        }

        //   equal-area axis: 1589 mm
        //   this material, released free: 1595 mm
        //   handbook rule for angles: 1612 mm
        //   centroid: 1623 mm
        #endregion
        Promised("q4");
    }

    [Fact]
    public void From_one_stick()
    {
#pragma warning disable xUnit1051 // the page shows the call without a token
        #region q5
        var list = CutList.For(
            [new CutPiece("rim", Mm(1880), 4), new CutPiece("hoop", Mm(1120), quantity: 6)],
            [new BarSupply(Mm(6000))], kerf: Mm(2), leastUsefulOffcut: Mm(300));
        foreach (var bar in list.Groups[0].Bars)
        {
            Console.WriteLine(bar);
        }

        //   1 × 6000 mm: 3 rim 1880; 354 mm left
        //   1 × 6000 mm: 1 rim 1880, 3 hoop 1120; 752 mm left
        //   1 × 6000 mm: 3 hoop 1120; 2634 mm left

        Console.WriteLine(list); // 3 bars, 18000 mm; no list takes less
        #endregion
#pragma warning restore xUnit1051
        Promised("q5");
    }

    [Fact]
    public void Coil_and_cut()
    {
        #region q6
        var flat = new FlatBar(Mm(30), Mm(6)).EasyWay;
        var ring = RingOf(BendAnalysis.Of(flat, Steel), BendRadius.InsideDiameter(Mm(600)));
        var tail = Mm(60);

        var ends = new EndAllowance(start: tail, end: tail, trim: Mm(20));
        var single = DevelopedLayout.For(ring, flat, ArcExtent.FullRing, ends, kerf: Mm(2));
        Console.WriteLine($"one by one: {single.PiecesFrom(Mm(6000)).Pieces} rings");
        //   one by one: 2 rings
        var none = EndAllowance.None;
        var turn = DevelopedLayout.For(ring, flat, ArcExtent.FullRing, none, kerf: Mm(2));
        Console.WriteLine(
            $"from the coil: {turn.PiecesFrom(Mm(6000) - (2 * tail)).Pieces} rings");
        //   from the coil: 3 rings

        // The turns rise by the width of the bar; pressed flat, a ring is this much too long.
        double around = ring.BlankLengthFor(FullTurn).Millimeters;
        Console.WriteLine($"{Math.Sqrt((around * around) + (30 * 30)) - around:F2} mm");
        //   0.24 mm
        #endregion
        Promised("q6");
    }

    [Fact]
    public void Unequal_angle()
    {
        #region q7
        var fillets = AngleFillets.Of(root: Mm(5), toe: Mm(2.5));
        var angle = new UnequalAngle(longLeg: Mm(50), shortLeg: Mm(30), thickness: Mm(4), fillets);
        foreach (var lying in angle.Orientations)
        {
            var ring = RingOf(BendAnalysis.Of(lying, Steel), BendRadius.InsideDiameter(Mm(900)));
            double blank = ring.BlankLengthFor(FullTurn).Millimeters;
            double outside = ring.OutsideDiameter.Millimeters;
            Console.WriteLine($"{lying.Orientation}: cut {blank:F0} mm, {outside:F0} mm outside");
        }

        //   long leg radial, flange out: cut 2908 mm, 1000 mm outside
        //   long leg radial, flange in: cut 3061 mm, 1000 mm outside
        //   short leg radial, flange out: cut 2846 mm, 960 mm outside
        //   short leg radial, flange in: cut 2997 mm, 960 mm outside
        #endregion
        Promised("q7");
    }

    [Fact]
    public void Easy_and_hard_way()
    {
        #region q8
        var flat = new FlatBar(Mm(30), Mm(6));
        foreach (var lying in flat.Orientations)
        {
            var moment = BendAnalysis.Of(lying, Steel).PlasticMoment;
            double depth = lying.Depth.Millimeters;
            Console.WriteLine(
                $"{lying.Orientation}: {depth:F0} mm deep, {moment.NewtonMeters:F0} N*m");
        }

        //   easy way: 6 mm deep, 78 N*m
        //   hard way: 30 mm deep, 391 N*m

        var angle = new EqualAngle(Mm(30), Mm(3), AngleFillets.Sharp);
        Console.WriteLine(
            string.Join(", ", angle.Orientations.Select(lying => lying.Orientation)));
        //   flange out, flange in, heel in, heel out
        #endregion
        Promised("q8");
    }

    [Fact]
    public void K_factor()
    {
        #region q9
        var (t, r, bend) = (Mm(5), Mm(5), Angle.FromDegrees(90));
        Console.WriteLine($"DIN 6935: K = {SheetBend.ByStandard(t, r, bend).ThicknessFactor:F3}");
        //   DIN 6935: K = 0.325
        foreach (var metal in new[] { SheetMetal.SoftBrass, SheetMetal.SoftSteel, SheetMetal.ColdRolledSteel })
        {
            var sheet = SheetBend.ByMetal(t, r, bend, metal);
            Console.WriteLine($"{metal}: K = {sheet.ThicknessFactor:F3}");
        }

        //   SoftBrass: K = 0.350
        //   SoftSteel: K = 0.408
        //   ColdRolledSteel: K = 0.452

        // A ring of the same flat, 300 mm inside radius, derived from its material.
        var bar = BendAnalysis.Of(new FlatBar(Mm(30), t).EasyWay, Steel);
        var ring = RingOf(bar, BendRadius.Inside(Mm(300)));
        Console.WriteLine($"ring: K = {ring.LengthPreservingFiberFromInside / t:F3}");
        //   ring: K = 0.500
        #endregion
        Promised("q9");
    }

    [Fact]
    public void Square_corners()
    {
        #region q10
        // A bracket of flat 25 x 4 mm: 100, 60 and 100 mm outside, corners of 4 mm inside radius.
        var corner = SheetBend.ByStandard(Mm(4), insideRadius: Mm(4), Angle.FromDegrees(90));
        Console.WriteLine($"each corner saves {corner.BendDeduction.Millimeters:F2} mm");
        //   each corner saves 7.67 mm
        Console.WriteLine($"cut {100 + 60 + 100 - (2 * corner.BendDeduction.Millimeters):F1} mm");
        //   cut 244.7 mm

        // A textbook example: straights of 38 and 25 mm, 60 degrees at 4.75 mm, K = 0.33.
        var (sheet, sixty) = (Mm(3.2), Angle.FromDegrees(60));
        var printed = SheetBend.Of(sheet, insideRadius: Mm(4.75), sixty, fiber: 0.33 * sheet);
        Console.WriteLine($"blank {38 + printed.BendAllowance.Millimeters + 25:F2} mm");
        //   blank 69.08 mm
        #endregion
        Promised("q10");
    }
}
