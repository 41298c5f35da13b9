using BendMath.Distortion;
using BendMath.Forming.Variation;
using BendMath.Plotting;
using BendMath.Sections.Outlines;
using BendMath.Stock.Standard;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the pages, compiled and run. What a page prints behind <c>//</c> is what the code gives.</summary>
public sealed class Snippets
{
    [Fact]
    public void First_ring()
    {
        #region first-ring
        var angle = new EqualAngle(
            leg: Length.FromMillimeters(30), thickness: Length.FromMillimeters(3),
            AngleFillets.Of(root: Length.FromMillimeters(5), toe: Length.FromMillimeters(2.5)));
        var steel = new BarMaterial("S235", new LinearHardening(
            elasticModulus: Pressure.FromGigapascals(210),
            yieldStress: Pressure.FromMegapascals(290),
            tangentModulus: Pressure.FromMegapascals(1500)), Density.FromKilogramsPerCubicMeter(7850));
        var bending = BendAnalysis.Of(angle.FlangeOut, steel);

        // What does a bar become that is held at an inside radius of 240 mm and let go?
        var ring = bending.LoadedTo(BendRadius.Inside(Length.FromMillimeters(240))).Release(Release.Free).Ring;
        Console.WriteLine($"{ring.InsideDiameter.Millimeters:F1} mm inside diameter"); // 495.7 mm inside diameter

        // And what does it take to end at 500 mm?
        var needed = bending.LoadedFor(BendRadius.InsideDiameter(Length.FromMillimeters(500)), Release.Free);
        var blank = needed.Release(Release.Free).Ring.BlankLengthFor(Angle.FromDegrees(360));
        Console.WriteLine($"inside radius {needed.InsideRadius.Millimeters:F1} mm"); // inside radius 242.1 mm
        Console.WriteLine($"blank {blank.Millimeters:F1} mm"); // blank 1595.3 mm
        #endregion

        string[] printed = [
            FormattableString.Invariant($"{ring.InsideDiameter.Millimeters:F1} mm inside diameter"),
            FormattableString.Invariant($"inside radius {needed.InsideRadius.Millimeters:F1} mm"),
            FormattableString.Invariant($"blank {blank.Millimeters:F1} mm"),
        ];
        Assert.Equal(Promised("first-ring"), printed);
    }

    [Fact]
    public void Yield_range()
    {
        #region yield-range
        var flat = new FlatBar(width: Length.FromMillimeters(25), thickness: Length.FromMillimeters(5));
        var die = new Die("R250", Length.FromMillimeters(250), ReferenceFace.InsideOfBar);
        var mild = new BarMaterial(
            "mild steel",
            new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290)),
            Density.FromKilogramsPerCubicMeter(7850),
            yieldRange: new PressureRange(Pressure.FromMegapascals(235), Pressure.FromMegapascals(355)));
        var scan = RingBounds.Of(
            new WrapBending(), BendAnalysis.Of(flat.EasyWay, mild), die, Release.Free, ArcExtent.FullRing.Turn, new InputVariation(mild.YieldRange));
        Console.WriteLine($"{scan.InsideDiameter!.Low.Millimeters:F1} to {scan.InsideDiameter.High.Millimeters:F1} mm"); // 602.6 to 671.6 mm
        #endregion

        string[] printed = [FormattableString.Invariant($"{scan.InsideDiameter.Low.Millimeters:F1} to {scan.InsideDiameter.High.Millimeters:F1} mm")];
        Assert.Equal(Promised("yield-range"), printed);
    }

    [Fact]
    public void Slopes_and_sweep()
    {
        #region slopes-and-sweep
        var tube = new RoundTube(outsideDiameter: Length.FromMillimeters(25), wall: Length.FromMillimeters(2));
        var steel = new BarMaterial(
            "steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290)), Density.FromKilogramsPerCubicMeter(7850));
        var bending = BendAnalysis.Of(tube.Section, steel);
        var slopes = bending.LoadedTo(BendRadius.Inside(Length.FromMillimeters(300))).Release(Release.Free).Sensitivity;
        Console.WriteLine(slopes); // 1.1023 per loaded radius, 0.0564 mm per MPa of yield, 0.6227 per thickness

        double[] loaded = [0.200, 0.300, 0.400];
        double[] finished = new double[loaded.Length];
        BendSweep.Of(bending).FinishedRadii(loaded, finished, Release.Free);
        Console.WriteLine(string.Join(", ", finished.Select(meters => $"{1000 * meters:F1} mm"))); // 207.1 mm, 315.6 mm, 427.6 mm
        #endregion

        Assert.Equal(
            Promised("slopes-and-sweep"),
            [slopes.ToString(), string.Join(", ", finished.Select(meters => FormattableString.Invariant($"{1000 * meters:F1} mm")))]);
    }

    [Fact]
    public void Drawn_outline()
    {
        #region drawn-outline
        OutlinePoint At(double x, double y) => new(Length.FromMillimeters(x), Length.FromMillimeters(y));
        var rim = new OutlineLoop([
            OutlineEdge.Line(At(0, 0), At(40, 0)),
            OutlineEdge.Arc(start: At(40, 0), end: At(40, 10), center: At(40, 5), counterClockwise: true),
            OutlineEdge.Line(At(40, 10), At(0, 10)),
            OutlineEdge.Arc(start: At(0, 10), end: At(0, 0), center: At(0, 5), counterClockwise: true),
        ]);
        var hole = OutlineLoop.Circle(At(20, 5), Length.FromMillimeters(2));
        var bar = new CustomBar("flat with round edges and a hole", new Outline([rim, hole]));
        foreach (var advisory in bar.Advisories)
        {
            Console.WriteLine(advisory.Code); // reversed-winding
        }

        // Upright in the bender, the left end of the drawing outside.
        var upright = bar.TurnedBy(Angle.FromDegrees(-90));
        Console.WriteLine($"{upright.Properties.PlasticModulus.CubicCentimeters:F2} cm³"); // 5.73 cm³
        var end = upright.Outline.Outer.Edges.First(edge => edge.IsArc);
        Console.WriteLine($"{end.Radius?.Millimeters:F1} mm about y = {end.Center?.Y.Millimeters:F1} mm"); // 5.0 mm about y = 5.0 mm
        #endregion

        string[] printed = [
            Assert.Single(bar.Advisories).Code,
            FormattableString.Invariant($"{upright.Properties.PlasticModulus.CubicCentimeters:F2} cm³"),
            FormattableString.Invariant($"{end.Radius?.Millimeters:F1} mm about y = {end.Center?.Y.Millimeters:F1} mm"),
        ];
        Assert.Equal(Promised("drawn-outline"), printed);
    }

    [Fact]
    public void Mill_tolerance()
    {
        #region mill-tolerance
        var angle = new EqualAngle(
            leg: Length.FromMillimeters(50), thickness: Length.FromMillimeters(4),
            AngleFillets.Of(root: Length.FromMillimeters(7), toe: Length.FromMillimeters(3.5)));
        var tolerance = MillTolerance.En10056(angle);
        foreach (BarStock bar in new[] { tolerance.Lightest, angle, tolerance.Heaviest })
        {
            var section = bar.Lying(Orientation.FlangeOut)!.Properties;
            Console.WriteLine($"{bar}: {section.SecondMomentAboutBendingAxis.CentimetersToTheFourth:F2} cm⁴");
        }

        // angle 49 × 49 × 3.5 mm: 7.44 cm⁴
        // angle 50 × 50 × 4 mm: 8.97 cm⁴
        // angle 51 × 51 × 4.5 mm: 10.63 cm⁴
        #endregion

        string[] printed = [.. new[] { tolerance.Lightest, angle, tolerance.Heaviest }.Select(bar => FormattableString.Invariant(
            $"// {bar}: {bar.Orientations[0].Properties.SecondMomentAboutBendingAxis.CentimetersToTheFourth:F2} cm⁴"))];
        Assert.Equal(Orientation.FlangeOut, angle.Orientations[0].Orientation);
        Assert.Equal(Region("mill-tolerance").Where(line => line.StartsWith("// angle", StringComparison.Ordinal)), printed);
    }

    [Fact]
    public void Standard_size()
    {
        #region standard-size
        var size = StandardSizes.Find("2 x 2 x 1/8 angle");
        Console.WriteLine(size); // AISC v16.0 L2X2X1/8

        if (size.Stock is EqualAngle angle)
        {
            Console.WriteLine(angle.Fillets); // root 5.08 mm, toe 1.905 mm
        }

        // On the rack a tube has its nominal wall; the tables calculate with less.
        var tube = StandardSizes.Find("HSS 2 x 2 x 1/8");
        Console.WriteLine(tube.Stock); // square tube 50.8 × 3.175 mm
        Console.WriteLine(tube.WithDesignWall()); // square tube 50.8 × 2.946 mm

        // Two standards list this one, and a near miss names its neighbors.
        var pipe = StandardSizes.Find("CHS 42,4 x 3,2", SizeSystem.En10210);
        StandardSizes.TryFind("L2x2x5/64", null, out _, out var fault);
        Console.WriteLine(pipe); // EN 10210-2 CHS 42.4x3.2
        Console.WriteLine(fault); // The designation must be a listed size, but is "L2x2x5/64"; the nearest sizes are AISC v16.0 L2X2X1/8, AISC v16.0 L2X2X3/16, US bar-size L1-3/4x1-3/4x1/8.
        #endregion

        EqualAngle two = Assert.IsType<EqualAngle>(size.Stock);
        string[] printed = [size.ToString(), two.Fillets.ToString(), tube.Stock.ToString(), tube.WithDesignWall().ToString(), pipe.ToString(), fault!];
        Assert.Equal(Promised("standard-size"), printed);
    }

    [Fact]
    public void Distortion_report()
    {
        #region distortion
        var steel = new BarMaterial(
            "mild steel",
            new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500)),
            Density.FromKilogramsPerCubicMeter(7850),
            elongation: Ratio.FromPercent(26));
        var flat = new FlatBar(width: Length.FromMillimeters(25), thickness: Length.FromMillimeters(5));
        var bend = BendAnalysis.Of(flat.HardWay, steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(240)));

        // The bender guides the bar sideways every 200 mm.
        var report = DistortionReport.Of(bend, new DistortionSettings(new(unsupportedLength: Length.FromMillimeters(200))));
        var worst = report.Findings[0];
        Console.WriteLine($"{worst.Check}: {worst.Level}"); // rolling over: High
        Console.WriteLine(string.Join("; or ", report.Advice)); // guide the bar sideways at least every 24.77 mm; or lay it otherwise (easy way), which makes another ring
        Console.WriteLine(LateralBuckling.Of(bend, DistortionSettings.Default)); // buckles sideways at 49.5 mm between supports
        #endregion

        string[] printed = [$"{worst.Check}: {worst.Level}", string.Join("; or ", report.Advice), LateralBuckling.Of(bend, DistortionSettings.Default)!.ToString()];
        Assert.Equal(Promised("distortion"), printed);
    }

    [Fact]
    public void Section_figure()
    {
        string folder = Directory.CreateTempSubdirectory("bendmath").FullName;
        #region section-figure
        var size = StandardSizes.Find("L2X2X1/8");
        var section = ((EqualAngle)size.Stock).FlangeOut;
        var figure = BendFigure.OfSection(section, inInches: true, size.FullName);
        using (var file = File.Create(Path.Combine(folder, "section.png")))
        {
            figure.SavePng(file, width: 1280, height: 960);
        }

        var svg = figure.ToSvg(); // 640 × 480 pixels
        #endregion
        Assert.StartsWith("<?xml", svg, StringComparison.Ordinal);
        Assert.True(new FileInfo(Path.Combine(folder, "section.png")).Length > 10_000);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>What stands behind <c>WriteLine(…); //</c> in a region.</summary>
    private static IEnumerable<string> Promised(string region) => Region(region)
        .Where(line => line.Contains("WriteLine", StringComparison.Ordinal))
        .Select(line => line[(line.IndexOf("; // ", StringComparison.Ordinal) + 5)..]);

    private static IEnumerable<string> Region(string region)
    {
        string[] lines = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Documentation", "Snippets.cs"));
        return lines
            .Select(line => line.Trim())
            .SkipWhile(line => line != "#region " + region)
            .TakeWhile(line => line != "#endregion");
    }
}
