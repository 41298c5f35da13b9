using BendMath;
using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Plotting;
using BendMath.Plotting.Drawing;
using ScottPlot;
using UnitsNet;

namespace Figures;

/// <summary>
/// The pictures about three-point bending: a flat 20 × 8 mm, easy way, over a half-span of 60 mm. Metals and bender invented.
/// </summary>
internal static class BumpPictures
{
    private const int Width = 640, Height = 420;

    private const string Ordinate = "finished radius over that of the contacts";

    private const double FaceRadius = 0.135;

    private const double HalfSpan = 0.060, Nominal = 1 / 0.150, Modulus = 205e9;

    private static readonly FlatBar Flat = new(Length.FromMillimeters(20), Length.FromMillimeters(8));

    private static readonly BendAnalysis Steel =
        Of(new LinearHardening(Pressure.FromPascals(Modulus), Pressure.FromMegapascals(280), Pressure.FromMegapascals(1500)));

    /// <summary>
    /// Radii of the axis that the tests compute apart from the library, by a bar of layers fed through a bender with noses of 20, 50, 75,
    /// 100 and 120 mm.
    /// </summary>
    private static readonly double[] FedThrough = [97.2, 106.4, 115.9, 127.7, 138.8];

    private static readonly Metal[] Metals =
    [
        new("n = 0.3", Of(Power(0.3)), LinePattern.Dotted, 1.8),
        new("n = 0.2", Of(Power(0.2)), LinePattern.DenselyDashed, 1.6),
        new("n = 0.1", Of(Power(0.1)), LinePattern.Dashed, 1.6),
        new("no hardening", Of(new PerfectlyPlastic(Pressure.FromPascals(Modulus), Pressure.FromMegapascals(280))), LinePattern.Solid, 2.2),
    ];

    public static IEnumerable<Picture> All =>
    [
        Drawn("three-point-moment", "Moment along a bar pinched once", Moments),
        Drawn("three-point-curvature", "Curvature along the same bar, still pinched", Curvatures),
        Picture.Of("bumps-full-bites", BendFigure.OfCurvature(Bumped(lighter: false), inInches: false, "Every bump at full stroke")),
        Picture.Of("bumps-lighter-first-bites",
            BendFigure.OfCurvature(Bumped(lighter: true), inInches: false, "The same with lighter first bites")),
        Drawn("three-point-hardening", "How much tighter than the contacts? Hardening", Hardening),
        Drawn("three-point-bend", "How much tighter than the contacts? Stroke", Strokes),
        Drawn("three-point-feed", "The feed makes the ring wider", Feeds),
        Drawn("three-point-nose", "A blunt nose makes the ring wider", Noses),
    ];

    private static Picture Drawn(string name, string title, Func<string, Plot> draw) => new($"{name}.png", title, () =>
    {
        using Plot plot = draw(title);
        return plot.GetImageBytes(Width, Height, ImageFormat.Png);
    });

    private static Plot Moments(string title)
    {
        Chart chart = new(Width, Height, title, "distance from the nose over the half-span", "moment over that at first yield");
        chart.Limits(-1, 1, 0, 2.4);
        PinchedShape sharp = Pinched(0);
        PinchedShape face = Pinched(FaceRadius);
        double yield = Steel.LoadedAt(Steel.YieldCurvature).BendingMoment.NewtonMeters;
        chart.Line(-1, 1, 1, 1, 0.8, LinePattern.Dotted);
        chart.Words("first yield", 0, 1, Alignment.LowerCenter);
        chart.Curve(sharp.Places, Array.ConvertAll(sharp.Moments, m => m / yield), 2);
        chart.Curve(face.Places, Array.ConvertAll(face.Moments, m => m / yield), 2, LinePattern.Dashed);
        chart.Words("sharp nose: rises up to it", 0.09, 2.02, Alignment.MiddleLeft);
        chart.Words("face the bar lies on:\nlevel along the face", 0, face.Moments.Max() / yield - 0.07, Alignment.UpperCenter);
        return chart.Plot;
    }

    private static Plot Curvatures(string title)
    {
        Chart chart = new(Width, Height, title, "distance from the nose over the half-span", "curvature over that of the three contacts");
        PinchedShape sharp = Pinched(0);
        PinchedShape face = Pinched(FaceRadius);
        chart.Limits(-1, 1, 0, 4);
        chart.Line(-1, 1, 1, 1, 0.8, LinePattern.Dotted);
        chart.Words("circle of the contacts", -0.69, 0.98, Alignment.UpperLeft);
        chart.Curve(sharp.Places, Array.ConvertAll(sharp.Curvatures, k => k / Nominal), 2);
        chart.Curve(face.Places, Array.ConvertAll(face.Curvatures, k => k / Nominal), 2, LinePattern.Dashed);
        chart.Words("sharp nose: all of the bend\nin a short length", 0.13, 3, Alignment.MiddleLeft);
        chart.Words("face: everywhere the same", 0.97, 1.2, Alignment.LowerRight);
        return chart.Plot;
    }

    private static Plot Hardening(string title)
    {
        Chart chart = new(Width, Height, title, "hardening exponent n", Ordinate);
        chart.Limits(0, 0.5, 0.4, 1.1);
        double[] exponents = [.. Enumerable.Range(0, 51).Select(i => i / 100.0)];
        chart.Curve(exponents, Array.ConvertAll(exponents, n => (4 * n + 1) / (4 * n + 2)), 2);
        chart.Words("no elastic part: (4n + 1)/(4n + 2)", 0.3, 0.67, Alignment.UpperLeft);
        int line = 0;
        foreach ((double times,
            MarkerShape shape) in new[] { (8.0, MarkerShape.OpenSquare), (30, MarkerShape.FilledCircle),
                (100, MarkerShape.OpenTriangleUp) })
        {
            (double N, double Ratio)[] points =
                [.. Enumerable.Range(1, 19).Select(i => 0.025 * i).Select(n => (n, Ratio(Of(Power(n)), times, HalfSpan / 500))).Where(point => point.Item2 < 1.08)];
            chart.Marks([.. points.Select(point => point.N)], [.. points.Select(point => point.Ratio)], shape, 7);
            double at = 1.06 - 0.05 * line++;
            chart.Marks([0.02], [at], shape, 7);
            chart.Words($"contacts at {times:0} times the yield curvature", 0.026, at, Alignment.MiddleLeft);
        }

        return chart.Plot;
    }

    private static Plot Strokes(string title)
    {
        Chart chart = new(Width, Height, title, "curvature of the three contacts over the yield curvature", Ordinate);
        chart.Limits(0, 20, 0.4, 1.8);
        chart.Line(0, 1, 20, 1, 0.8, LinePattern.Dotted);
        chart.Words("wider than the contacts", 19.8, 1.005, Alignment.LowerRight);
        chart.Words("tighter", 19.8, 0.995, Alignment.UpperRight);
        double[] times = [.. Enumerable.Range(0, 120).Select(i => 1.05 * Math.Pow(20 / 1.05, i / 119.0))];
        foreach (Metal metal in Metals)
        {
            double[] ratios = Array.ConvertAll(times, t => Ratio(metal.Analysis, t, HalfSpan / 500));
            (double T, double R)[] shown = [.. times.Zip(ratios).Where(point => point.Second < 1.8)];
            chart.Curve([.. shown.Select(point => point.T)], [.. shown.Select(point => point.R)], metal.Width, metal.Pattern);
            chart.Words(metal.Name, 15.4, Ratio(metal.Analysis, 15.4, HalfSpan / 500), Alignment.LowerCenter);
        }

        return chart.Plot;
    }

    private static Plot Feeds(string title)
    {
        Chart chart = new(Width, Height, title, "feed over the half-span", "finished radius over that of a small feed");
        chart.Limits(0, 0.5, 1, 1.5);
        double[] feeds = [.. Enumerable.Range(1, 250).Select(i => 0.002 * i)];
        foreach (Metal metal in Metals)
        {
            double times = Nominal / metal.Analysis.YieldCurvature.InverseMeters;
            double least = Ratio(metal.Analysis, times, HalfSpan / 4000);
            double[] ratios = Array.ConvertAll(feeds, f => Ratio(metal.Analysis, times, f * HalfSpan) / least);
            chart.Curve([0, .. feeds], [1, .. ratios], metal.Width, metal.Pattern);
            bool lowest = metal == Metals[0];
            chart.Words(metal.Name, lowest ? 0.46 : 0.44, ratios[lowest ? 229 : 219] - (lowest ? 0.005 : 0),
                lowest ? Alignment.UpperLeft : Alignment.LowerRight);
        }

        return chart.Plot;
    }

    private static Plot Noses(string title)
    {
        Chart chart = new(Width, Height, title, "radius of the nose, to the axis of the bar (mm)", "finished radius of the axis (mm)");
        chart.Limits(0, 160, 60, 180);
        chart.Line(0, 150, 160, 150, 0.8, LinePattern.Dotted);
        chart.Words("circle through the contacts", 2, 150, Alignment.LowerLeft);
        chart.Line(60, 60, 160, 160, 1.2, LinePattern.Dashed);
        chart.Words("the nose itself", 88, 84, Alignment.MiddleLeft);
        chart.Words("the bar lies\non the nose", 143, 166, Alignment.MiddleRight);
        double[] radii = [.. Enumerable.Range(0, 79).Select(i => 4.0 + 2 * i).Where(r => r < 150)];
        chart.Curve(radii, Array.ConvertAll(radii, r =>
        {
            FormedBend formed =
                new IncrementalThreePointBending(
                    new ThreePointSetup(Length.FromMeters(HalfSpan), Length.FromMillimeters(r - 4))).FormAtStroke(Steel, Stroke(Nominal));
            return 1 / formed.RingWhen(Release.HeldFlat).Curvature.InverseMillimeters;
        }), 2.2);
        chart.Marks([20, 50, 75, 100, 120], FedThrough, MarkerShape.OpenCircle, 9);
        chart.Marks([6], [172], MarkerShape.OpenCircle, 9);
        chart.Words("a bar fed through pinch by pinch, slopes not small", 8, 172, Alignment.MiddleLeft);
        return chart.Plot;
    }

    /// <summary>A straight bar after one pinch, still closed.</summary>
    private static PinchedShape Pinched(double nose)
    {
        BumpedBar bar =
            new BumpBending(new ThreePointSetup(Length.FromMeters(HalfSpan), Length.FromMeters(nose)), Length.FromMeters(HalfSpan))
            .Bend(Steel, Length.FromMeters(2 * HalfSpan), [new Bump(Length.FromMeters(HalfSpan), Stroke(Nominal))]);
        BumpOutcome pinch = bar.Outcomes[0];
        double stiffness = Modulus * Steel.Section.Properties.SecondMomentAboutBendingAxis.MetersToTheFourth;
        double[] places = [.. Enumerable.Range(-400, 801).Select(i => i / 400.0)];
        double[] moments =
            Array.ConvertAll(places,
                x => Math.Min(pinch.PeakMoment.NewtonMeters, pinch.SupportForce.Newtons * HalfSpan * (1 - Math.Abs(x))));
        double[] curvatures =
            [.. places.Zip(moments, (x, m) => bar.PermanentCurvatureAt(Length.FromMeters(HalfSpan * (1 + x))).InverseMeters + m / stiffness)];
        return new(places, moments, curvatures);
    }

    private static BumpedBar Bumped(bool lighter)
    {
        BumpBending model = new(new ThreePointSetup(Length.FromMeters(HalfSpan), Length.Zero), Length.FromMillimeters(15));
        Length length = Length.FromMillimeters(660);
        return lighter
            ? model.Bend(Steel, length, model.PassWithLighterFirstBites(Steel, length, Stroke(Nominal)))
            : model.BendWhole(Steel, length, Stroke(Nominal));
    }

    private static double Ratio(BendAnalysis analysis, double timesYield, double feed)
    {
        // Small slopes: the ratio does not depend on the half-span, so a short one keeps the strokes of hard bends within it.
        double yield = analysis.YieldCurvature.InverseMeters;
        double nominal = timesYield * yield;
        double halfSpan = Math.Min(HalfSpan, 0.5 / nominal);
        double stroke = nominal * halfSpan * halfSpan / (1 + Math.Sqrt(1 - nominal * nominal * halfSpan * halfSpan));
        FormedBend formed =
            new BumpBending(new ThreePointSetup(Length.FromMeters(halfSpan), Length.Zero),
                Length.FromMeters(feed * halfSpan / HalfSpan)).FormAtStroke(analysis, Length.FromMeters(stroke));
        return formed.IsStraightWhen(Release.HeldFlat) ? double.PositiveInfinity
            : nominal / formed.RingWhen(Release.HeldFlat).Curvature.InverseMeters;
    }

    private static PowerHardening Power(double n) =>
        new(Pressure.FromPascals(Modulus), Pressure.FromPascals(280e6 * Math.Pow(Modulus / 280e6, n)), n);

    private static BendAnalysis Of(StressStrainLaw law) =>
        BendAnalysis.Of(Flat.EasyWay, new BarMaterial("invented", law, Density.FromKilogramsPerCubicMeter(7850)));

    private static Length Stroke(double nominal) =>
        Length.FromMeters(nominal * HalfSpan * HalfSpan / (1 + Math.Sqrt(1 - nominal * nominal * HalfSpan * HalfSpan)));

    /// <summary>Places over the half-span from the nose, moments and curvatures there.</summary>
    private sealed record PinchedShape(double[] Places, double[] Moments, double[] Curvatures);

    private sealed record Metal(string Name, BendAnalysis Analysis, LinePattern Pattern, double Width);
}
