using BendMath.Csv;
using BendMath.Forming.Bumps;
using BendMath.Forming.ThreePoint;
using BendMath.Json;
using BendMath.Learning;
using BendMath.Measurement;
using BendMath.Tests.Json;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on learning, compiled and run. What the page prints behind <c>//</c> is what the code gives.</summary>
public sealed class LearningSnippets
{
    private static readonly EqualAngle Angle = new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));

    private static readonly BarMaterial Steel = new(
        "mild steel", new LinearHardening(Pressure.FromGigapascals(210), Pressure.FromMegapascals(290), Pressure.FromMegapascals(1500)), Density.FromKilogramsPerCubicMeter(7850));

    private static readonly DieRack Rack = new(new[] { 200, 250, 300, 360 }.Select(radius => new Die($"{radius}", Length.FromMillimeters(radius), ReferenceFace.InsideOfBar)));

    private readonly List<string> _printed = [];

    [Fact]
    public void Second_ring()
    {
        DieRack rack = Rack;
        #region second-ring
        var bending = BendAnalysis.Of(Angle.FlangeOut, Steel);
        var bender = new ThreePointSetup(halfSpan: Length.FromMillimeters(130), noseRadius: Length.FromMillimeters(10));
        var first = new MeasuredRing(
            rack.Find("250")!, bending, RingReading.TapeAroundInside(Length.FromMillimeters(1476)), Release.Free,
            new MarkedLength(Length.FromMillimeters(1502), UnitsNet.Angle.FromDegrees(360)), "14 March");
        var correction = RingDiagnosis.Of(first, new WrapBending(bender));
        foreach (var explanation in correction.Hypotheses)
        {
            WriteLine(explanation.Sentence);
        }

        WriteLine(TrialRing.ToTellApart(correction, rack, measuringError: Length.FromMillimeters(1)).Sentence);
        WriteLine(LengthPreservingFiber.Of([first], bending.Section)!.Sentence);
        #endregion
        Promised("second-ring");
    }

    [Fact]
    public void Fit_and_advice()
    {
        DieRack rack = Rack;
        var bending = BendAnalysis.Of(Angle.FlangeOut, Steel);
        #region fit-and-advice
        MeasuredRing Ring(string die, double insideDiameter) => new(
            rack.Find(die)!, bending, BendRadius.InsideDiameter(Length.FromMillimeters(insideDiameter)), Release.Free);

        MeasuredRing[] rings = [Ring("200", 373), Ring("250", 468), Ring("250", 471), Ring("300", 566), Ring("360", 680), Ring("360", 686)];
        var fit = RingFit.Of(rings, bending, new WrapBending());
        foreach (string sentence in fit.Sentences)
        {
            WriteLine(sentence);
        }

        var wanted = BendRadius.InsideDiameter(Length.FromMillimeters(565));
        var advice = DieChoice.For(rack, bending, wanted, fit.Model, Release.Free, tolerance: Length.FromMillimeters(4));
        foreach (string sentence in advice.Sentences)
        {
            WriteLine(sentence);
        }

        WriteLine(TrialRing.ToNarrow(fit, rack, wanted, Release.Free).Sentence);
        #endregion
        Promised("fit-and-advice");
    }

    [Fact]
    public void What_to_change()
    {
        DieRack rack = Rack;
        var bending = BendAnalysis.Of(Angle.FlangeOut, Steel);
        var bender = new ThreePointSetup(Length.FromMillimeters(130), Length.FromMillimeters(10));
        #region what-to-change
        var bumping = new BumpBending(bender, feed: Length.FromMillimeters(40));
        var wanted = BendRadius.InsideDiameter(Length.FromMillimeters(565));
        foreach (var change in ShopChange.For(bumping, bending, rack.Find("300")!, rack, wanted, Release.Free))
        {
            WriteLine(change.Sentence);
        }
        #endregion
        Promised("what-to-change");
    }

    [Fact]
    public void Ring_files()
    {
        IReadOnlyList<MeasuredRing> rings = RingSets.Every;
        #region ring-files
        string json = MeasuredRingFile.Write(rings);
        string csv = MeasuredRingCsv.Write(rings, decimalComma: true);
        var again = MeasuredRingCsv.Read(csv);
        foreach (var fault in again.Faults)
        {
            Console.WriteLine(fault); // row 3, width: "width" is missing; …
        }
        #endregion
        Assert.True(again.IsSound);
        Assert.Equal(json, MeasuredRingFile.Write(again.Rings));
    }

    private void WriteLine(string line) => _printed.Add(line);

    /// <summary>What the page prints below the region is what the region gave, line by line.</summary>
    private void Promised(string region)
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "concepts", "learning.md")).ReplaceLineEndings("\n");
        int start = page.IndexOf("LearningSnippets.cs#" + region, StringComparison.Ordinal);
        Assert.True(start > 0, $"the page must show {region}");
        int text = page.IndexOf("```text\n", start, StringComparison.Ordinal) + "```text\n".Length;
        string[] shown = page[text..page.IndexOf("\n```", text, StringComparison.Ordinal)].Split('\n');
        Assert.True(shown.SequenceEqual(_printed), $"the page must print below {region}:\n{string.Join("\n", _printed)}");
    }
}
