using BendMath.Evidence;
using BendMath.Planning.Worksheets;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>The code of the page on sheets, compiled and run. What the page shows below it is what the code gives.</summary>
public sealed class SheetSnippets
{
    private readonly List<string> _printed = [];

    [Fact]
    public void Sheet()
    {
        #region sheet
        var steel = new BarMaterial(
            "mild steel", new PerfectlyPlastic(Pressure.FromGigapascals(205), Pressure.FromMegapascals(280)), Density.FromKilogramsPerCubicMeter(7850));
        var flat = new FlatBar(Length.FromMillimeters(25), Length.FromMillimeters(5));
        var bent = BendAnalysis.Of(flat.EasyWay, steel).LoadedTo(BendRadius.Inside(Length.FromMillimeters(200)));
        foreach (WorkedStep line in PlanWorksheet.Of(bent))
        {
            WriteLine(line);
        }
        #endregion
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "recipes", "sheets.md")).ReplaceLineEndings("\n");
        int text = page.IndexOf("```text\n", StringComparison.Ordinal) + "```text\n".Length;
        string[] shown = page[text..page.IndexOf("\n```", text, StringComparison.Ordinal)].Split('\n');
        Assert.True(shown.SequenceEqual(_printed), $"the page must print:\n{string.Join("\n", _printed)}");
    }

    private void WriteLine(WorkedStep line) => _printed.Add(line.ToString());
}
