using System.Globalization;
using UnitsNet;

namespace BendMath.Tests.Documentation;

/// <summary>
/// The code of the pages that answer questions, compiled and run. What stands behind <c>WriteLine(…); //</c>, or below it as comments
/// indented by three spaces (five to go on), is what the code prints.
/// </summary>
public abstract class RecipeSnippets
{
    #region shared
    // Invented: a workshop for hoops and rims of garden planters and cold frames, and its steel.
    protected static readonly BarMaterial Steel = new(
        "mild steel",
        new LinearHardening(MPa(210_000), yieldStress: MPa(290), tangentModulus: MPa(1500)),
        Density.FromKilogramsPerCubicMeter(7850),
        elongation: Ratio.FromPercent(26));

    protected static readonly Angle FullTurn = Angle.FromDegrees(360);

    // A metal as in textbooks, which yields and does not harden.
    protected static BarMaterial Yielding(string name, Pressure modulus, Pressure yieldStress) =>
        new(name, new PerfectlyPlastic(modulus, yieldStress), Steel.Density, poissonsRatio: 0.3);

    protected static Pressure MPa(double value) => Pressure.FromMegapascals(value);

    protected static Pressure Psi(double value) => Pressure.FromPoundsForcePerSquareInch(value);

    protected static Length Mm(double value) => Length.FromMillimeters(value);

    protected static Length Inches(double value) => Length.FromInches(value);

    // The ring that is wanted, after springback.
    protected static FinishedRing RingOf(BendAnalysis bar, BendRadius wanted) =>
        bar.LoadedFor(wanted, Release.Free).Release(Release.Free).Ring;
    #endregion

    /// <summary>Stands in for the console in the code of a page.</summary>
    protected Printer Console { get; } = new();

    /// <summary>What the region promises is what was printed since the test began.</summary>
    protected void Promised(string region)
    {
        Assert.NotEmpty(Console.Lines);
        Assert.Equal(Promises(region), Console.Lines);
    }

    private string[] Promises(string region)
    {
        List<string> promised = [];
        string file = Path.Combine(Repository.Root, "tests", "BendMath.Tests", "Documentation", GetType().Name + ".cs");
        foreach (string line in File.ReadLines(file).Select(line => line.Trim())
            .SkipWhile(line => line != "#region " + region).TakeWhile(line => line != "#endregion"))
        {
            if (line.StartsWith("//     ", StringComparison.Ordinal))
            {
                promised[^1] += " " + line[7..];
            }
            else if (line.StartsWith("//   ", StringComparison.Ordinal))
            {
                promised.Add(line[5..]);
            }
            else if (line.Contains("WriteLine", StringComparison.Ordinal) && line.Split("; // ", 2) is [_, var value])
            {
                promised.Add(value);
            }
        }

        return [.. promised];
    }

    protected sealed class Printer
    {
        private readonly List<string> _lines = [];

        public IReadOnlyList<string> Lines => _lines;

        public void WriteLine(FormattableString line) => _lines.Add(line.ToString(CultureInfo.InvariantCulture));

        public void WriteLine(object line) => _lines.Add(line.ToString()!);
    }
}
