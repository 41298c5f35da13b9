using System.Text;
using BendMath.Forming.Bumps;
using BendMath.Learning;
using BendMath.Plotting.Drawing;

namespace BendMath.Plotting;

/// <summary>
/// A picture to print, as SVG, PNG or a plot to go on with. It is black and gray: nothing is told by color. No setting of the plotting
/// library is changed. Immutable and thread-safe.
/// </summary>
public abstract class BendFigure
{
    /// <summary>Narrowest figure, in pixels.</summary>
    public const int LeastWidth = 320;

    /// <summary>Lowest figure, in pixels.</summary>
    public const int LeastHeight = 240;

    /// <summary>Largest width and height of a figure, in pixels.</summary>
    public const int Most = 6000;

    private const int Wide = 640;

    private const int High = 480;

    private protected BendFigure(bool inInches, string title)
    {
        IsInInches = inInches;
        Title = title;
    }

    /// <summary>Whether axes, labels and dimensions are in inches, printed to 0.001; otherwise in millimeters, printed to 0.01.</summary>
    public bool IsInInches { get; }

    /// <summary>What is shown, as printed above the figure.</summary>
    public string Title { get; }

    /// <summary>
    /// The picture of a section as it lies in the bender, y upward from the inside face and z to the right, drawn to equal scales: the bar
    /// filled, with its holes, the inside and outside face, the direction to the center of the bend, the centroid, the equal-area axis, the
    /// extents and the distances between parallel faces.
    /// </summary>
    /// <param name="section">The section in its orientation.</param>
    /// <param name="inInches">Whether axes, labels and dimensions are in inches; otherwise in millimeters.</param>
    /// <param name="name">What the title calls the bar, such as the designation of a standard size, in one line; null for
    /// <see cref="BarStock.Name"/>, which is in millimeters. The orientation follows it.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentException">The name is empty or holds control characters.</exception>
    /// <remarks>
    /// Curves are drawn as chords that stay within a ten-thousandth of the larger extent of the arc; every number comes from the exact
    /// outline.
    /// </remarks>
    public static BendFigure OfSection(OrientedSection section, bool inInches = false, string? name = null) =>
        new SectionFigure(section, inInches, name);

    /// <summary>
    /// The curvature along a bumped bar, let go: facets between the bumps, both tails, the kink of a first bite where there is one, the
    /// mean with its radius. Places count along the unbent bar from its start.
    /// </summary>
    /// <param name="bar">The bar.</param>
    /// <param name="inInches">Whether places and radii are in inches and curvature in turns of one radian per inch; otherwise in
    /// millimeters and per meter.</param>
    /// <param name="name">What the title says, in one line; null for the section and the number of bumps.</param>
    /// <exception cref="ArgumentNullException">The bar is null.</exception>
    /// <exception cref="ArgumentException">The name is empty or holds control characters.</exception>
    /// <remarks>
    /// The curve passes through 2,000 places evenly along the bar, every place bumped and the middle between each and the next.
    /// </remarks>
    public static BendFigure OfCurvature(BumpedBar bar, bool inInches = false, string? name = null) =>
        new BarCurvatureFigure(bar, inInches, name);

    /// <summary>
    /// The finished ring against the die: what the model says, what the fit to measured rings says with its 95 % interval, or bounds where
    /// nothing was measured, the measured rings, the wanted ring with its tolerance, the dies of the rack and the best of them. Diameters
    /// are those of the inside of the ring.
    /// </summary>
    /// <param name="choice">The dies against a wanted ring, asked with a tolerance.</param>
    /// <param name="inInches">Whether radii and diameters are in inches; otherwise in millimeters.</param>
    /// <param name="fit">The fit whose model the choice was asked with, so that an odd ring is marked; null for none.</param>
    /// <param name="name">What the title says, in one line; null for the section and what is drawn.</param>
    /// <exception cref="ArgumentNullException">The choice is null.</exception>
    /// <exception cref="ArgumentException">The choice has no tolerance, the fit is not the one it rests on, or the name is empty or holds
    /// control characters.</exception>
    /// <remarks>
    /// Lines pass through 25 places evenly between the ends, every die of the rack and every die a ring was measured on; bounds, where
    /// nothing was measured, through the dies of the rack and both ends. Where the dies of the rack differ in nose or mate, nothing stands
    /// between them, and each is drawn by itself. Rings measured of another bar, of another metal, on a die of another nose or mate, or let
    /// go in another way are counted in words and not drawn.
    /// </remarks>
    public static BendFigure OfDies(DieChoice choice, bool inInches = false, RingFit? fit = null, string? name = null) =>
        new DieChoiceFigure(choice, inInches, fit, name);

    /// <summary>
    /// A new plot, to go on with: the caller owns it and may add to it or change it. It is laid out for the given size; at another size
    /// labels may crowd.
    /// </summary>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>. Text and lines grow with the figure, so
    /// that twice the size is the same picture, finer.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    [CLSCompliant(false)]
    public ScottPlot.Plot ToPlot(int width = Wide, int height = High)
    {
        Pixels(width, LeastWidth, nameof(width));
        Pixels(height, LeastHeight, nameof(height));
        return Draw(width, height);
    }

    /// <summary>The figure as the text of an SVG file.</summary>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    public string ToSvg(int width = Wide, int height = High)
    {
        using ScottPlot.Plot plot = ToPlot(width, height);
        return SvgIdentifiers.Renumbered(plot.GetSvgXml(width, height));
    }

    /// <summary>The figure as the bytes of a PNG file.</summary>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    public byte[] ToPng(int width = Wide, int height = High)
    {
        using ScottPlot.Plot plot = ToPlot(width, height);
        return plot.GetImageBytes(width, height, ScottPlot.ImageFormat.Png);
    }

    /// <summary>Writes the figure as SVG in UTF-8.</summary>
    /// <param name="stream">Where to; it stays open.</param>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    public void SaveSvg(Stream stream, int width = Wide, int height = High) =>
        Save(stream, () => Encoding.UTF8.GetBytes(ToSvg(width, height)));

    /// <summary>Writes the figure as PNG.</summary>
    /// <param name="stream">Where to; it stays open.</param>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    public void SavePng(Stream stream, int width = Wide, int height = High) => Save(stream, () => ToPng(width, height));

    /// <summary>The title.</summary>
    public override string ToString() => Title;

    private protected abstract ScottPlot.Plot Draw(int width, int height);

    /// <summary>A name in one line, or another for none.</summary>
    private protected static string Named(string? name, string otherwise) => name is null ? otherwise
        : string.IsNullOrWhiteSpace(name) || name.Any(char.IsControl)
            ? throw new ArgumentException($"{nameof(name)} must be one line of printable characters and not empty.", nameof(name))
        : name;

    private static void Save(Stream stream, Func<byte[]> content)
    {
        Stream open = stream ?? throw new ArgumentNullException(nameof(stream));
        byte[] bytes = content();
        open.Write(bytes, 0, bytes.Length);
    }

    private static void Pixels(int value, int least, string name)
    {
        if (value < least || value > Most)
        {
            throw new ArgumentOutOfRangeException(name, Invariant($"{name} must be {least} to {Most} pixels, but is {value}."));
        }
    }
}
