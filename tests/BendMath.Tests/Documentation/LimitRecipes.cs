using BendMath.Distortion;
using BendMath.Materials.Standard;
using BendMath.Measurement;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on limits and distortion.</summary>
public sealed class LimitRecipes : RecipeSnippets
{
    [Fact]
    public void Corkscrew()
    {
        #region q19
        var angle = new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(root: Mm(5), toe: Mm(2.5)));
        var bar = BendAnalysis.Of(angle.FlangeOut, Steel);
        var unheld = bar.LoadedUnheldTo(BendRadius.Inside(Mm(250)));
        Console.WriteLine($"not held flat it leans {unheld.RollOverAngle.Degrees:F0} degrees");
        //   not held flat it leans 23 degrees

        // Held flat while it is bent, and then let go:
        var loaded = bar.LoadedFor(BendRadius.InsideDiameter(Mm(500)), Release.Free);
        var free = loaded.Release(Release.Free).Ring;
        Console.WriteLine($"a dish of {free.DishAngle.Degrees:F2} degrees");
        //   a dish of 0.71 degrees
        var pressed = loaded.Release(Release.HeldFlat).Ring;
        Console.WriteLine($"pressed flat {pressed.InsideDiameter.Millimeters:F1} mm inside");
        //   pressed flat 503.8 mm inside
        #endregion
        Promised("q19");
    }

    [Fact]
    public void Out_of_square()
    {
        #region q20
        var angle = new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(root: Mm(5), toe: Mm(2.5)));
        var bar = BendAnalysis.Of(angle.FlangeOut, Steel);
        var loaded = bar.LoadedFor(BendRadius.InsideDiameter(Mm(500)), Release.Free);
        Console.WriteLine($"bending {loaded.BendingMoment.NewtonMeters:F0} N*m");
        //   bending 453 N*m
        Console.WriteLine($"holding flat {Math.Abs(loaded.HoldDownMoment.NewtonMeters):F0} N*m");
        //   holding flat 359 N*m
        foreach (bool backed in new[] { false, true })
        {
            var settings = new DistortionSettings(new(backsAxialLeg: backed));
            var finding = DistortionReport.Of(loaded, settings).Find(DistortionCheck.LegAngle)!;
            string way = backed ? "backed" : "free";
            Console.WriteLine(
                $"leg {way}: {finding.Level}, {finding.Demand:F2} against {finding.Limit:F2}");
        }

        //   leg free: High, 1.11 against 0.25
        //   leg backed: Low, 1.11 against 0.25
        #endregion
        Promised("q20");
    }

    [Fact]
    public void Leg_in_or_out()
    {
        #region q21
        var angle = new EqualAngle(Mm(30), Mm(3), AngleFillets.Of(root: Mm(5), toe: Mm(2.5)));
        foreach (var lying in new[] { angle.FlangeOut, angle.FlangeIn })
        {
            var bar = BendAnalysis.Of(lying, Steel);
            var loaded = bar.LoadedFor(BendRadius.InsideDiameter(Mm(500)), Release.Free);
            var worst = DistortionReport.Of(loaded).Findings[0];
            Console.WriteLine($"{lying.Orientation}: {worst.Level}, {worst.Check}");
            double inside = loaded.InnerFiberStrain.Percent;
            double outside = loaded.OuterFiberStrain.Percent;
            Console.WriteLine($"strain inside {inside:F1} %, outside {outside:F1} %");
        }

        //   flange out: Medium, leg angle
        //   strain inside -1.6 %, outside 10.5 %
        //   flange in: High, compressed free edge
        //   strain inside -9.8 %, outside 1.5 %

        var rule = DistortionSettings.Default;
        Console.WriteLine(
            $"a 30 mm leg: from {rule.LeastRadiusFor(Mm(30)).Millimeters:F0} mm on");
        //   a 30 mm leg: from 200 mm on
        Console.WriteLine(
            $"a radius of 250 mm: legs up to {rule.LargestLegFor(Mm(250)).Millimeters:F0} mm");
        //   a radius of 250 mm: legs up to 38 mm
        #endregion
        Promised("q21");
    }

    [Fact]
    public void Flat_the_hard_way()
    {
        #region q22
        foreach (var flat in new[] { new FlatBar(Mm(20), Mm(6)), new FlatBar(Mm(40), Mm(4)) })
        {
            var bar = BendAnalysis.Of(flat.HardWay, Steel);
            var loaded = bar.LoadedFor(BendRadius.InsideDiameter(Mm(600)), Release.HeldFlat);
            var leaning = LateralBuckling.Of(loaded, DistortionSettings.Default)!;
            var edges = DistortionReport.Of(loaded).Find(DistortionCheck.Keystoning)!.Demand;
            Console.WriteLine(
                $"{flat}: outside edge {loaded.OuterFiberStrain.Percent:F1} % longer");
            Console.WriteLine(
                $"a guide every {leaning.LargestSupportDistance.Millimeters:F0} mm");
            Console.WriteLine($"one edge {edges:P0} thicker than the other");
        }

        //   flat 20 × 6 mm: outside edge 3.5 % longer
        //   a guide every 119 mm
        //   one edge 3 % thicker than the other
        //   flat 40 × 4 mm: outside edge 6.5 % longer
        //   a guide every 16 mm
        //   one edge 7 % thicker than the other
        #endregion
        Promised("q22");
    }

    [Fact]
    public void Least_radius()
    {
        #region q23
        OrientedSection[] bars =
        [
            new FlatBar(Mm(30), Mm(6)).EasyWay,
            new FlatBar(Mm(20), Mm(6)).HardWay,
            new RoundTube(Mm(25), Mm(2)).Section,
        ];
        foreach (var bar in bars)
        {
            var tooTight = BendAnalysis.Of(bar, Steel).LoadedTo(BendRadius.Inside(1.2 * bar.Depth));
            Console.WriteLine($"{bar}:");
            foreach (var finding in DistortionReport.Of(tooTight).Findings)
            {
                foreach (var remedy in finding.Remedies.Where(item => item.LeastRadius is not null))
                {
                    Console.WriteLine($"{finding.Check}: {remedy.Sentence}");
                }
            }
        }

        //   flat 30 × 6 mm, easy way:
        //   leg to radius: use an inside radius of at least 40 mm while loaded
        //   outside face strain: use an inside radius of at least 20.08 mm while loaded
        //   flat 20 × 6 mm, hard way:
        //   keystoning: use an inside radius of at least 190.4 mm while loaded
        //   leg to radius: use an inside radius of at least 133.4 mm while loaded
        //   outside face strain: use an inside radius of at least 66.93 mm while loaded
        //   round tube 25 × 2 mm:
        //   tube ovality: use an inside radius of at least 302.9 mm while loaded
        //   tube wrinkling: use an inside radius of at least 300.1 mm while loaded
        //   leg to radius: use an inside radius of at least 166.7 mm while loaded
        //   tube wall thinning: use an inside radius of at least 100.1 mm while loaded
        //   outside face strain: use an inside radius of at least 83.66 mm while loaded
        //   tube radius in diameters: use an inside radius of at least 62.51 mm while loaded
        #endregion
        Promised("q23");
    }

    [Fact]
    public void Kinked_tube()
    {
        #region q24
        var tube = new RoundTube(Mm(25), Mm(2)).Section;
        foreach (double radius in new[] { 60, 100, 250 })
        {
            var loaded = BendAnalysis.Of(tube, Steel).LoadedTo(BendRadius.Centroid(Mm(radius)));
            foreach (bool held in new[] { false, true })
            {
                var settings = new DistortionSettings(new(holdsTube: held));
                var report = DistortionReport.Of(loaded, settings);
                var diameters = report.Find(DistortionCheck.TubeRatio)!.Level;
                var oval = report.Find(DistortionCheck.TubeOvality)!.Level;
                var ripples = report.Find(DistortionCheck.TubeWrinkling)!.Level;
                string how = held ? "held in shape" : "free";
                Console.WriteLine(
                    $"{radius} mm, {how}: diameters {diameters}, oval {oval}, ripples {ripples}");
            }
        }

        //   60 mm, free: diameters Medium, oval High, ripples High
        //   60 mm, held in shape: diameters Low, oval Medium, ripples Medium
        //   100 mm, free: diameters Low, oval High, ripples High
        //   100 mm, held in shape: diameters Low, oval Medium, ripples Medium
        //   250 mm, free: diameters Low, oval Medium, ripples Medium
        //   250 mm, held in shape: diameters Low, oval Medium, ripples Medium
        #endregion
        Promised("q24");
    }

    [Fact]
    public void Acceptable_ovality()
    {
        #region q25
        var ovality = TubeShape.MeasuredOvality(Mm(25.7), smallest: Mm(24.2), nominal: Mm(25));
        Console.WriteLine($"tube: {ovality.Percent:F1} %"); // tube: 6.0 %

        // The ring itself, measured across in four directions.
        var ring = OutOfRound.Of([.. new[] { (0, 601.5), (45, 600.0), (90, 598.0), (135, 599.5) }
            .Select(at => new DiameterReading(Angle.FromDegrees(at.Item1), Mm(at.Item2)))]);
        Console.WriteLine(
            $"ring: {ring.Difference.Millimeters:F1} mm, {ring.Ovality.Percent:F2} %");
        //   ring: 3.5 mm, 0.58 %
        Console.WriteLine($"squeeze at {ring.LongAxis!.Value.Degrees:F0} degrees");
        //   squeeze at 4 degrees
        #endregion
        Promised("q25");
    }

    [Fact]
    public void Cracks()
    {
        #region q26
        var square = new SquareBar(Mm(12)).Section;
        Grade[] grades =
        [
            Grades.Find("S235JR", "t <= 16 mm"),
            Grades.Find("1018", "cold drawn bar (ASTM A108)"),
            Grades.Find("6061-T6", "t <= 0.249 in"),
        ];
        foreach (var grade in grades)
        {
            var bar = BendAnalysis.Of(square, grade.ToMaterial());
            var loaded = bar.LoadedTo(BendRadius.Inside(Mm(60)));
            double strain = loaded.OuterFiberStrain.Percent;
            double elongation = grade.Tensile.Elongation!.Value.Percent;
            var risk = DistortionReport.Of(loaded).Find(DistortionCheck.OuterFiber)!.Level;
            Console.WriteLine($"{grade.Name}: {strain:F1} % of {elongation:F0} %, risk {risk}");
        }

        //   S235JR: 9.1 % of 26 %, risk Low
        //   1018: 9.1 % of 15 %, risk Medium
        //   6061-T6: 9.1 % of 8 %, risk High

        // Plate in ship structures, inside radius of ten thicknesses: t / (2r + t).
        var flat = BendAnalysis.Of(new FlatBar(Mm(30), Mm(6)).EasyWay, Steel);
        var plate = flat.LoadedTo(BendRadius.Inside(Mm(60)));
        Console.WriteLine($"{plate.OuterFiberStrain.Percent:F1} %"); // 4.8 %
        #endregion
        Promised("q26");
    }

    [Fact]
    public void Weaker_or_harder()
    {
        #region q27
        var bar = BendAnalysis.Of(new FlatBar(Mm(30), Mm(6)).EasyWay, Steel);
        var loaded = bar.LoadedFor(BendRadius.InsideDiameter(Mm(600)), Release.Free);
        var ring = loaded.Release(Release.Free);
        Console.WriteLine(
            $"left in the inside face {ring.ResidualStressAt(Mm(0), Mm(15)).Megapascals:F0} MPa");
        //   left in the inside face 142 MPa
        Console.WriteLine(
            $"left in the outside face {ring.ResidualStressAt(Mm(6), Mm(15)).Megapascals:F0} MPa");
        //   left in the outside face -142 MPa
        Console.WriteLine(
            $"the outside yielded at 290 MPa, at last at {loaded.StressAt(Mm(6)).Megapascals:F0} MPa");
        //   the outside yielded at 290 MPa, at last at 306 MPa
        var asked = new DistortionSettings(rules: [StrainRule.FivePercent]);
        var rule = DistortionReport.Of(loaded, asked).Find(DistortionCheck.StrainRule)!;
        Console.WriteLine(
            $"{loaded.OuterFiberStrain.Percent:F1} %, five percent rule: {rule.Level}");
        //   1.2 %, five percent rule: Low
        #endregion
        Promised("q27");
    }
}
