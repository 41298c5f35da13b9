using BendMath;
using BendMath.Csv;
using BendMath.Forming.Pairs;
using BendMath.Learning;
using BendMath.Plotting;
using UnitsNet;

namespace PackageConsumer;

/// <summary>Rings of invented sizes, kept as CSV and drawn: what needs the packages that are not declared clean for trimming.</summary>
public static class Drawer
{
    /// <summary>0 when a list of rings comes back from CSV as it was and a figure of them is drawn.</summary>
    public static int KeepAndDraw()
    {
        OrientedSection flat = new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5)).EasyWay;
        BarMaterial steel =
            new("mild steel", new PerfectlyPlastic(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290)),
                Density.FromKilogramsPerCubicMeter(7850));
        BendAnalysis bending = BendAnalysis.Of(flat, steel.WithSofterUnloading(Ratio.FromPercent(90)));
        DieRack rack = new([Made("A", 200), Made("B", 300)]);
        MeasuredRing[] rings = [Measured(rack[0], 418), Measured(rack[1], 640), Measured(rack[1], 644)];

        MeasuredRingCsv reading = MeasuredRingCsv.Read(MeasuredRingCsv.Write(rings, decimalComma: true));
        foreach (CsvFault fault in reading.Faults)
        {
            Console.WriteLine(fault);
        }

        if (!reading.Rings.Select(ring => (ring.Die, ring.Measured.Value, ring.Analysis.Material))
            .SequenceEqual(rings.Select(ring => (ring.Die, ring.Measured.Value, ring.Analysis.Material))))
        {
            Console.WriteLine("the rings did not come back from CSV as they were");
            return 4;
        }

        RingFit fit = RingFit.Of(reading.Rings, bending, new WrapBending());
        DieChoice advice =
            DieChoice.For(rack, bending, BendRadius.InsideDiameter(Length.FromMillimeters(640)), fit.Model,
                Release.Free, Length.FromMillimeters(5));
        BendFigure figure = BendFigure.OfDies(advice, inInches: false, fit);
        string svg = figure.ToSvg();
        byte[] png = figure.ToPng();
        Console.WriteLine(
            FormattableString.Invariant(
                $"{rings.Length} rings kept; \"{figure.Title}\" drawn in {svg.Length} characters and {png.Length} bytes"));
        return svg.StartsWith("<?xml", StringComparison.Ordinal) && png.Length > 8 && png[1] == 'P' && png[2] == 'N' && png[3] == 'G' ? 0
            : 5;

        static Die Made(string name, double radius) => new(
            name, Length.FromMillimeters(radius), ReferenceFace.InsideOfBar,
                mate: MatingDie.OfFace(Length.FromMillimeters(radius + 10), Length.FromMillimeters(100)));

        MeasuredRing Measured(Die die, double insideDiameter) =>
            new(die, bending, BendRadius.InsideDiameter(Length.FromMillimeters(insideDiameter)), Release.Free);
    }
}
