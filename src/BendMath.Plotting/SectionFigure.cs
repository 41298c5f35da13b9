using System.Text;
using BendMath.Plotting;

namespace BendMath;

/// <summary>
/// The picture of a section as it lies in the bender, y upward from the inside face and z to the right, drawn to equal scales: the bar filled, with its holes, the inside and outside face,
/// the direction to the center of the bend, the centroid, the equal-area axis, the extents and the distances between parallel faces. It is black and gray: nothing is told by color.
/// Immutable and thread-safe; no setting of the plotting library is changed.
/// </summary>
/// <remarks>Curves are drawn as chords that stay within a ten-thousandth of the larger extent of the arc; every number comes from the exact outline.</remarks>
public sealed class SectionFigure
{
    /// <summary>Narrowest figure, in pixels.</summary>
    public const int LeastWidth = 320;

    /// <summary>Lowest figure, in pixels.</summary>
    public const int LeastHeight = 240;

    /// <summary>Largest width and height of a figure, in pixels.</summary>
    public const int Most = 6000;

    private const int Wide = 640;

    private const int High = 480;

    /// <summary>Makes the figure of a section.</summary>
    /// <param name="section">The section in its orientation.</param>
    /// <param name="unit">Unit of axes, labels and dimensions.</param>
    /// <param name="name">What the title calls the bar, such as the designation of a standard size, in one line; null for <see cref="OrientedSection.StockName"/>, which is in millimeters. The orientation follows it.</param>
    /// <exception cref="ArgumentNullException">The section is null.</exception>
    /// <exception cref="ArgumentException">The name is empty or holds control characters.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a defined value.</exception>
    public SectionFigure(OrientedSection section, FigureUnit unit, string? name = null)
    {
        Section = section ?? throw new ArgumentNullException(nameof(section));
        Unit = unit is FigureUnit.Millimeters or FigureUnit.Inches
            ? unit
            : throw new ArgumentOutOfRangeException(nameof(unit), $"{nameof(unit)} must be a defined {nameof(FigureUnit)}, but is {unit:D}.");
        if (name is not null && (string.IsNullOrWhiteSpace(name) || name.Any(char.IsControl)))
        {
            throw new ArgumentException($"{nameof(name)} must be one line of printable characters and not empty.", nameof(name));
        }

        string bar = name ?? section.StockName;
        Title = section.Orientation.Length == 0 ? bar : $"{bar}, {section.Orientation}";
    }

    /// <summary>What is drawn.</summary>
    public OrientedSection Section { get; }

    /// <summary>Unit of axes, labels and dimensions.</summary>
    public FigureUnit Unit { get; }

    /// <summary>Name and orientation, as printed above the figure.</summary>
    public string Title { get; }

    /// <summary>
    /// A new plot, to go on with: the caller owns it and may add to it or change it. It is laid out for the given size; at another size scales stay equal, but labels may crowd.
    /// </summary>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>. Text and lines grow with the figure, so that twice the size is the same picture, finer.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    [CLSCompliant(false)]
    public ScottPlot.Plot ToPlot(int width = Wide, int height = High)
    {
        Pixels(width, LeastWidth, nameof(width));
        Pixels(height, LeastHeight, nameof(height));
        return SectionDrawing.Draw(this, width, height);
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
    public void SaveSvg(Stream stream, int width = Wide, int height = High) => Save(stream, () => Encoding.UTF8.GetBytes(ToSvg(width, height)));

    /// <summary>Writes the figure as PNG.</summary>
    /// <param name="stream">Where to; it stays open.</param>
    /// <param name="width">Width in pixels, from <see cref="LeastWidth"/> to <see cref="Most"/>.</param>
    /// <param name="height">Height in pixels, from <see cref="LeastHeight"/> to <see cref="Most"/>.</param>
    /// <exception cref="ArgumentNullException">The stream is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width or the height is outside its range.</exception>
    public void SavePng(Stream stream, int width = Wide, int height = High) => Save(stream, () => ToPng(width, height));

    /// <summary>The title.</summary>
    public override string ToString() => Title;

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
            throw new ArgumentOutOfRangeException(name, FormattableString.Invariant($"{name} must be {least} to {Most} pixels, but is {value}."));
        }
    }
}
