using BendMath.Forming.Bumps;
using BendMath.Plotting.Drawing;

namespace BendMath.Plotting;

/// <summary>
/// The curvature along a bumped bar, let go: facets between the bumps, both tails, the kink of a first bite where there is one, the mean
/// with its radius. Places count along the unbent bar from its start.
/// </summary>
/// <remarks>
/// The curve passes through 2,000 places evenly along the bar, every place bumped and the middle between each and the next.
/// </remarks>
internal sealed class BarCurvatureFigure : BendFigure
{
    public BarCurvatureFigure(BumpedBar bar, bool inInches, string? name = null)
        : base(inInches, Titled(bar ?? throw new ArgumentNullException(nameof(bar)), name)) => Bar = bar;

    public BumpedBar Bar { get; }

    private protected override ScottPlot.Plot Draw(int width, int height) => BarCurvatureDrawing.Draw(this, width, height);

    private static string Titled(BumpedBar bar, string? name) =>
        Named(name, Invariant($"{bar.Analysis.Section}, {bar.Outcomes.Count} {(bar.Outcomes.Count == 1 ? "bump" : "bumps")}"));
}
