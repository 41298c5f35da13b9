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
internal sealed class DieChoiceFigure : BendFigure
{
    public DieChoiceFigure(DieChoice choice, bool inInches, RingFit? fit = null, string? name = null)
        : base(inInches, Titled(choice ?? throw new ArgumentNullException(nameof(choice)), name))
    {
        Choice = choice.Tolerance is not null
            ? choice
            : throw new ArgumentException("choice must be asked with a tolerance, but has none.", nameof(choice));
        Fit = fit is null || ReferenceEquals(fit.Model, choice.Model)
            ? fit
            : throw new ArgumentException(
                $"fit must be the one whose model the choice was asked with, {choice.Model}, but is {fit}.", nameof(fit));
    }

    public DieChoice Choice { get; }

    public RingFit? Fit { get; }

    private protected override ScottPlot.Plot Draw(int width, int height) => DieChoiceDrawing.Draw(this, width, height);

    private static string Titled(DieChoice choice, string? name) => Named(name, $"{choice.Analysis.Section}: ring against die");
}
