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
public sealed class BarCurvatureFigure : BendFigure
{
    /// <summary>Makes the figure of a bumped bar.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="unit">Unit of places and radii; curvature counts in turns of one radian per meter or per inch.</param>
    /// <param name="name">What the title says, in one line; null for the section and the number of bumps.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="ArgumentException">The name is empty or holds control characters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a defined value.</exception>
    public BarCurvatureFigure(BumpedBar bar, FigureUnit unit, string? name = null)
        : base(unit, Titled(bar ?? throw new ArgumentNullException(nameof(bar)), name)) => Bar = bar;

    /// <summary>What is drawn.</summary>
    public BumpedBar Bar { get; }

    private protected override ScottPlot.Plot Draw(int width, int height) => BarCurvatureDrawing.Draw(this, width, height);

    private static string Titled(BumpedBar bar, string? name) =>
        Named(name, Invariant($"{bar.Analysis.Section}, {bar.Outcomes.Count} {(bar.Outcomes.Count == 1 ? "bump" : "bumps")}"));
}
