using System.Globalization;
using BendMath.Forming.ThreePoint;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace BendMath.Tests.Forming;

/// <summary>
/// From which stroke on the ring is tighter than the three contacts, in yield curvatures: the numbers the page on forming models prints. A
/// flat the easy way over an edge; a power law that leaves the elastic line at yield. Found by bending forward.
/// </summary>
public sealed class TighterOrWiderTests
{
    [Fact]
    public void The_page_prints_where_the_ring_is_that_of_the_contacts()
    {
        string[] found = [.. new[] { 0, 0.1, 0.2, 0.3 }.Select(n => Equal(n).ToString("0.0", CultureInfo.InvariantCulture))];
        string said =
            $"about {found[0]} times the yield curvature without hardening, {found[1]} times with $n = 0.1$, {found[2]} with 0.2 "
                + $"and {found[3]} with 0.3";
        Assert.Contains(said, File.ReadAllText(Path.Combine(Repository.Root, "docs", "concepts", "forming.md")), StringComparison.Ordinal);
    }

    private static double Equal(double n)
    {
        Pressure modulus = Pressure.FromPascals(BumpCase.Modulus);
        double strain = BumpCase.Yield / BumpCase.Modulus;
        BendAnalysis analysis = BumpCase.Of(n == 0
            ? new PerfectlyPlastic(modulus, Pressure.FromPascals(BumpCase.Yield))
            : new PowerHardening(modulus, Pressure.FromPascals(BumpCase.Yield / Math.Pow(strain, n)), n));
        IncrementalThreePointBending model = new(BumpCase.Sharp);
        double yield = 2 * strain / BumpCase.Depth;
        return Brent.FindRoot(
            times => (BumpCase.Finished(model.FormAtStroke(analysis, BumpCase.Stroke(times * yield))) / (times * yield)) - 1, 1.5, 10, 1e-6,
                100);
    }
}
