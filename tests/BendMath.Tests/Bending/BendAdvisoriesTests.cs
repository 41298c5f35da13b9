using BendMath.Evidence;
using BendMath.Tests.Forming;
using UnitsNet;

namespace BendMath.Tests.Bending;

/// <summary>
/// The error of strain without thinning, from a calculation with logarithmic strain: blank up to 1 %, radius up to 0.3 % at three depths
/// (docs/limitations.md).
/// </summary>
public sealed class BendAdvisoriesTests
{
    [Theory]
    [InlineData(5, null)]
    [InlineData(4.99, "up to 1 %")]
    [InlineData(3, "up to 1 %")]
    [InlineData(2.99, "more than 1 %")]
    public void A_tight_radius_is_advised_below_five_depths_and_strongly_below_three(double depths, string? said)
    {
        BendAnalysis analysis = BendAnalysis.Of(new SquareBar(Length.FromMillimeters(12)).Section, Workshop.Steel);
        IReadOnlyList<Advisory> advisories = analysis.LoadedTo(Workshop.Inside(12 * depths)).Advisories;
        if (said is null)
        {
            Assert.Empty(advisories);
            return;
        }

        Advisory advisory = Assert.Single(advisories);
        Assert.Equal("tight-radius", advisory.Code);
        Assert.Contains(said, advisory.Message, StringComparison.Ordinal);
        Assert.False(advisory.IsMinor);
    }
}
