using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Plotting;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on forming models, compiled and run. What the page prints behind <c>//</c> is what the code gives.</summary>
public sealed class BumpSnippets
{
    [Fact]
    public void Bumps()
    {
        string folder = Directory.CreateTempSubdirectory("bendmath").FullName;
        #region bumps
        var flat = new FlatBar(width: Length.FromMillimeters(20), thickness: Length.FromMillimeters(8));
        var steel = new BarMaterial("S275", new LinearHardening(
            elasticModulus: Pressure.FromGigapascals(205),
            yieldStress: Pressure.FromMegapascals(280),
            tangentModulus: Pressure.FromMegapascals(1500)), Density.FromKilogramsPerCubicMeter(7850));
        var bending = BendAnalysis.Of(flat.EasyWay, steel);
        var bender = new ThreePointSetup(halfSpan: Length.FromMillimeters(60), noseRadius: Length.FromMillimeters(6));
        var model = new BumpBending(bender, feed: Length.FromMillimeters(10));
        var length = Length.FromMillimeters(760);
        var stroke = Length.FromMillimeters(12.5);

        // Every bump at full stroke, and the same with lighter first bites.
        var plain = model.BendWhole(bending, length, stroke);
        Console.WriteLine($"kink {plain.FirstBiteKink:F1}"); // kink 2.1
        var bumps = model.PassWithLighterFirstBites(bending, length, stroke);
        var bar = model.Bend(bending, length, bumps);
        Console.WriteLine($"first stroke {bumps[0].Stroke.Millimeters:F1} mm, kink {bar.FirstBiteKink:F1}"); // first stroke 4.8 mm, kink 1.0
        Console.WriteLine(bar.Trim()); // cut at 53.8 mm and 667.6 mm, turn 360°, end gap 0.94 mm

        using (var file = File.Create(Path.Combine(folder, "bar.png")))
        {
            BendFigure.OfCurvature(bar, inInches: false).SavePng(file);
        }

        #endregion

        string[] printed =
        [
            FormattableString.Invariant($"kink {plain.FirstBiteKink:F1}"),
            FormattableString.Invariant($"first stroke {bumps[0].Stroke.Millimeters:F1} mm, kink {bar.FirstBiteKink:F1}"),
            bar.Trim().ToString(),
        ];
        Assert.Equal(Promised("bumps"), printed);
        Assert.True(new FileInfo(Path.Combine(folder, "bar.png")).Length > 10_000);
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>What stands behind <c>WriteLine(…); //</c> in a region.</summary>
    private static IEnumerable<string> Promised(string region) => File
        .ReadAllLines(Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Documentation", "BumpSnippets.cs"))
        .Select(line => line.Trim())
        .SkipWhile(line => line != "#region " + region)
        .TakeWhile(line => line != "#endregion")
        .Where(line => line.Contains("WriteLine", StringComparison.Ordinal))
        .Select(line => line[(line.IndexOf("; // ", StringComparison.Ordinal) + 5)..]);
}
