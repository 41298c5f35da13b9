using System.Text;
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

    private protected BendFigure(FigureUnit unit, string title)
    {
        Unit = unit is FigureUnit.Millimeters or FigureUnit.Inches
            ? unit
            : throw new ArgumentOutOfRangeException(nameof(unit),
                $"{nameof(unit)} must be a defined {nameof(FigureUnit)}, but is {unit:D}.");
        Title = title;
    }

    /// <summary>Unit of axes, labels and dimensions.</summary>
    public FigureUnit Unit { get; }

    /// <summary>What is shown, as printed above the figure.</summary>
    public string Title { get; }

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
