using BendMath.Learning;
using BendMath.Plotting.Drawing;

namespace BendMath.Plotting;

/// <summary>
/// The finished ring against the die: what the model says, what the fit to measured rings says with its 95 % interval, or bounds where
/// nothing was measured, the measured rings, the wanted ring with its tolerance, the dies of the rack and the best of them. Diameters are
/// those of the inside of the ring.
/// </summary>
/// <remarks>
/// Lines pass through 25 places evenly between the ends, every die of the rack and every die a ring was measured on; bounds, where nothing
/// was measured, through the dies of the rack and both ends. Where the dies of the rack differ in nose or mate, nothing stands between
/// them, and each is drawn by itself. Rings measured of another bar, of another metal, on a die of another nose or mate, or let go in
/// another way are counted in words and not drawn.
/// </remarks>
public sealed class DieAdviceFigure : BendFigure
{
    /// <summary>Makes the figure of an advice.</summary>
    /// <param name="advice">The advice.</param>
    /// <param name="unit">Unit of radii and diameters.</param>
    /// <param name="fit">The fit whose model the advice was asked with, so that an odd ring is marked; null for none.</param>
    /// <param name="name">What the title says, in one line; null for the section and what is drawn.</param>
    /// <exception cref="ArgumentNullException">The advice is null.</exception>
    /// <exception cref="ArgumentException">The fit is not the one the advice rests on, or the name is empty or holds control
    /// characters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a defined value.</exception>
    public DieAdviceFigure(DieAdvice advice, FigureUnit unit, RingFit? fit = null, string? name = null)
        : base(unit, Titled(advice ?? throw new ArgumentNullException(nameof(advice)), name))
    {
        Advice = advice;
        Fit = fit is null || ReferenceEquals(fit.Model, advice.Choice.Model)
            ? fit
            : throw new ArgumentException(
                $"fit must be the one whose model the advice was asked with, {advice.Choice.Model}, but is {fit}.", nameof(fit));
    }

    /// <summary>What is drawn.</summary>
    public DieAdvice Advice { get; }

    /// <summary>The fit behind it, or null.</summary>
    public RingFit? Fit { get; }

    private protected override ScottPlot.Plot Draw(int width, int height) => DieAdviceDrawing.Draw(this, width, height);

    private static string Titled(DieAdvice advice, string? name) => Named(name, $"{advice.Analysis.Section}: ring against die");
}
