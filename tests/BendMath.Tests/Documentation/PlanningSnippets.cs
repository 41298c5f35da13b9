using BendMath.Forming.Variation;
using BendMath.Json;
using BendMath.Planning.Worksheets;
using BendMath.Stock.Tolerances;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on plans, compiled and run. What the page prints is what the code gives. Invented data.</summary>
public sealed class PlanningSnippets
{
    private static readonly EqualAngle Rim = new(Length.FromMillimeters(30), Length.FromMillimeters(3), AngleFillets.Of(Length.FromMillimeters(5), Length.FromMillimeters(2.5)));

    private static readonly BarMaterial Steel = new(
        "mild steel",
        new LinearHardening(Pressure.FromGigapascals(205), Pressure.FromMegapascals(280), Pressure.FromMegapascals(1000)),
        Density.FromKilogramsPerCubicMeter(7850),
        yieldRange: new PressureRange(Pressure.FromMegapascals(235), Pressure.FromMegapascals(355)));

    private static readonly Die Die = new("R240", Length.FromMillimeters(240), ReferenceFace.InsideOfBar);

    private readonly List<string> _printed = [];

#pragma warning disable xUnit1051 // the page shows the calls without a token
    [Fact]
    public void Ranges()
    {
        #region ranges
        var bending = BendAnalysis.Of(Rim.FlangeOut, Steel);
        var scatter = new InputVariation(
            yield: Steel.YieldRange, mill: MillTolerance.En10056(Rim));
        var wrap = new WrapBending();
        var turn = Angle.FromDegrees(360);
        var bounds = RingBounds.Of(
            wrap, bending, Die, Release.Free, turn, scatter);
        var least = bounds.InsideDiameter!.Low.Millimeters;
        var most = bounds.InsideDiameter.High.Millimeters;
        WriteLine($"bounds {least:F1} to {most:F1} mm");
        foreach (var one in bounds.Contributions)
        {
            WriteLine($"{one.Input} {one.Share.Percent:F0} % of the spread");
        }

        var rings = MonteCarloSample.Of(
            wrap, bending, Die, Release.Free, turn, scatter, count: 2000, seed: 1);
        var low = rings.InsideDiameterBelow(Ratio.FromPercent(5)).Millimeters;
        var high = rings.InsideDiameterBelow(Ratio.FromPercent(95)).Millimeters;
        WriteLine($"90 of 100 rings between {low:F1} and {high:F1} mm");
        var wanted = BendRadius.InsideDiameter(Length.FromMillimeters(495));
        var chance = rings.ChanceWithin(wanted, Length.FromMillimeters(5)).Percent;
        WriteLine($"within 5 mm of 495 mm in {chance:F0} of 100 rings");
        #endregion
        Promised("ranges");
    }

    [Fact]
    public void Job()
    {
        #region job
        var certified = Steel.WithYield(Pressure.FromMegapascals(280));
        var job = new RingJob(
            "planter rim",
            BendAnalysis.Of(Rim.FlangeOut, certified),
            new WantedRing(
                BendRadius.InsideDiameter(Length.FromMillimeters(500)),
                ArcExtent.FullRing),
            new Bender(new DieRack([Die]), new WrapBending()),
            new CuttingRules(EndAllowance.None, kerf: Length.FromMillimeters(2)));
        var ring = RingPlan.For(job).Ring!.Free.InsideDiameter.Millimeters;
        WriteLine($"{job.Wanted}: {ring:F1} mm inside diameter");

        var harder = job.WithMaterial(
            certified.WithYield(Pressure.FromMegapascals(355)));
        ring = RingPlan.For(harder).Ring!.Free.InsideDiameter.Millimeters;
        WriteLine($"the same with 355 MPa: {ring:F1} mm inside diameter");

        try
        {
            job.With(scatter: new InputVariation(stroke: Length.FromMillimeters(0.2)));
        }
        catch (ArgumentException refused)
        {
            WriteLine($"{ArgumentFault.Of(refused)}");
        }
        #endregion
        Promised("job");
    }

    [Fact]
    public void Workings()
    {
        #region workings
        var bending = BendAnalysis.Of(Rim.FlangeOut, Steel);
        var loaded = bending.LoadedTo(
            BendRadius.Inside(Length.FromMillimeters(240)));
        foreach (var working in PlanWorksheet.Of(loaded).Take(3))
        {
            WriteLine($"{working}");
        }
        #endregion
        Promised("workings");
    }

    [Fact]
    public void Cut_list()
    {
        RingPlan[] plans = [.. RingJobFile.Read(Json.JobTexts.Sound).Jobs.Select(entry => RingPlan.For(entry.Job))];
        #region cut-list
        var cuts = PlanCuts.For(
            plans, leastUsefulOffcut: Length.FromMillimeters(300));
        foreach (var group in cuts.List!.Groups)
        {
            var mass = cuts.BarMassOf(group).Kilograms;
            Console.WriteLine($"{group.BarCount} × {group.Name}, {mass:F1} kg");
        }
        #endregion
        Assert.Equal(plans.Length, cuts.Plans.Count);
    }
#pragma warning restore xUnit1051

    private void WriteLine(FormattableString line) => _printed.Add(FormattableString.Invariant(line));

    private void Promised(string region)
    {
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "concepts", "planning.md")).ReplaceLineEndings("\n");
        int start = page.IndexOf("PlanningSnippets.cs#" + region, StringComparison.Ordinal);
        Assert.True(start > 0, $"the page must show {region}");
        int text = page.IndexOf("```text\n", start, StringComparison.Ordinal) + "```text\n".Length;
        string[] shown = page[text..page.IndexOf("\n```", text, StringComparison.Ordinal)].Split('\n');
        Assert.True(shown.SequenceEqual(_printed), $"the page must print below {region}:\n{string.Join("\n", _printed)}");
    }
}
